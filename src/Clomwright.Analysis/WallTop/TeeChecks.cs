using Clomwright.Analysis.Anchorage;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Each tee and each strap with its anchor against the uplift of the poles near it, in the worst combination.</summary>
/// <remarks>A pole's uplift goes to the two of them on either side of it by the lever rule along the bond beam. The cob one can lift ends half-way to the next and at the edge of an opening whose head is above its bar; the straight prism is counted.</remarks>
internal static class TeeChecks
{
    /// <summary>Tees and straps, in two lists.</summary>
    public static (Sequence<CheckedMember> Tees, Sequence<CheckedMember> Straps) Of(HouseGeometry geometry, CombinedStates combined, double dryCobWeight, Sequence<HoldDown> holds)
    {
        var poles = geometry.Landings.Where(l => !l.Secondary).ToArray();
        var lifted = combined.States.Where(s => s.Combination.DeadIsLeast).Select(s => (State: s, Shares: Shares(geometry, holds, poles, s))).ToArray();
        var checks = holds.Select((hold, k) => (hold.Strap, Checks: Check(geometry, combined, dryCobWeight, holds, k, lifted).ToArray())).ToArray();
        return (Those(strap: false), Those(strap: true));

        Sequence<CheckedMember> Those(bool strap) => checks.Where(c => c.Strap is not null == strap).SelectMany(c => c.Checks).ToSequence();
    }

    public static string Subject(TeePlace tee) => FormattableString.Invariant($"tee {tee.Number}");

    private static IEnumerable<CheckedMember> Check(
        HouseGeometry geometry, CombinedStates combined, double dryCobWeight, Sequence<HoldDown> holds, int k, (CombinedState State, double[] Shares)[] lifted)
    {
        var hold = holds[k];
        var key = hold.Strap is null ? "tee-uplift" : "strap-uplift";
        if (lifted.Length == 0)
        {
            return [new(key, hold.Subject, combined.Missing.Count > 0 ? combined.Missing[0] : new Message("analysis.roof.none"))];
        }

        var (state, shares) = lifted.MaxBy(x => x.Shares[k]);
        var room = Room(geometry, holds, k);
        if (!hold.InSolidCob || !(room > 0))
        {
            return [new(key, hold.Subject, new Message("analysis.walltop.tee-in-opening"))];
        }

        var thickness = geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres);
        var held = TeeAnchor.Allowable(dryCobWeight, thickness, hold.Depth, Math.Min(hold.Bar, room), 0, Math.Max(room, 1e-3));
        var lift = Math.Max(0, shares[k]);
        var demand = lift / (state.Combination.Form == Loads.LoadForm.Strength ? 1.5 : 1);
        return
        [
            new(key, hold.Subject, new MemberCheck(
                state.Combination.Key, state.Sense, new Amount(demand, Dimension.Force), new Amount(held.Value, Dimension.Force), held.How, demand > 0 ? Amount.Metres(demand / held.Value * hold.Depth) : null)),
            .. hold.Strap is { } strap ? [StrapPull.Of(strap, hold.Subject, demand, state)] : TeeFixings.Of(geometry.House, geometry.House.Tees!, hold.Subject, lift, state),
        ];
    }

    /// <summary>Uplift that comes to each in one state, N.</summary>
    private static double[] Shares(HouseGeometry geometry, Sequence<HoldDown> holds, Landing[] poles, CombinedState state)
    {
        var shares = new double[holds.Count];
        var length = geometry.Curve.Length;
        for (var i = 0; i < poles.Length && shares.Length > 0; i++)
        {
            var lift = -state.Forces.PlateReaction[i];
            if (lift <= 0)
            {
                continue;
            }

            var (before, after) = (0, 0);
            double back = double.PositiveInfinity, on = double.PositiveInfinity;
            for (var k = 0; k < shares.Length; k++)
            {
                var ahead = geometry.Curve.Wrap(holds[k].Station - poles[i].Station);
                (after, on) = ahead < on ? (k, ahead) : (after, on);
                (before, back) = length - ahead < back ? (k, length - ahead) : (before, back);
            }

            var share = on + back > 0 ? back / (on + back) : 0.5;
            shares[after] += lift * share;
            shares[before] += lift * (1 - share);
        }

        return shares;
    }

    /// <summary>Length of wall that one can call its own, m: twice the way to what comes first on either side.</summary>
    private static double Room(HouseGeometry geometry, Sequence<HoldDown> holds, int index)
    {
        var hold = holds[index];
        var nearest = geometry.Curve.Length / 2;
        for (var k = 0; k < holds.Count; k++)
        {
            nearest = k == index ? nearest : Math.Min(nearest, HoldDowns.Apart(geometry, holds[k].Station, hold.Station) / 2);
        }

        foreach (var opening in geometry.Openings.Where(o => o.Head > hold.BarHeight))
        {
            nearest = Math.Min(nearest, HoldDowns.Apart(geometry, opening.Widest.Middle, hold.Station) - opening.Widest.Width / 2);
        }

        return 2 * nearest;
    }
}
