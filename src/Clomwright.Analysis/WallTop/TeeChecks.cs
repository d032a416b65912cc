using Clomwright.Analysis.Anchorage;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Each tee against the uplift of the poles near it, in the worst combination.</summary>
/// <remarks>A pole's uplift goes to the two tees on either side of it by the lever rule along the bond beam. The cob a tee can lift ends half-way to the next tee and at the edge of an opening whose head is above its bar; the straight prism is counted.</remarks>
internal static class TeeChecks
{
    public static Sequence<CheckedMember> Of(HouseGeometry geometry, CombinedStates combined, double dryCobWeight)
    {
        if (geometry.House.Tees is not { } made || geometry.Tees.Count == 0)
        {
            return [];
        }

        var poles = geometry.Landings.Where(l => !l.Secondary).ToArray();
        var lifted = combined.States.Where(s => s.Combination.DeadIsLeast).Select(s => (State: s, Shares: Shares(geometry, poles, s))).ToArray();
        return geometry.Tees.SelectMany((tee, k) =>
        {
            var subject = Subject(tee);
            if (lifted.Length == 0)
            {
                return [new CheckedMember("tee-uplift", subject, combined.Missing.Count > 0 ? combined.Missing[0] : new Message("analysis.roof.none"))];
            }

            var (state, shares) = lifted.MaxBy(x => x.Shares[k]);
            var room = Room(geometry, k);
            if (!tee.InSolidCob || !(room > 0))
            {
                return [new CheckedMember("tee-uplift", subject, new Message("analysis.walltop.tee-in-opening"))];
            }

            var thickness = geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres);
            var held = TeeAnchor.Allowable(dryCobWeight, thickness, made.Depth.Metres, Math.Min(made.Bar.Metres, room), 0, Math.Max(room, 1e-3));
            var demand = Math.Max(0, shares[k]) / (state.Combination.Form == Loads.LoadForm.Strength ? 1.5 : 1);
            var depth = demand / held.Value * made.Depth.Metres;
            return (CheckedMember[])
            [
                new("tee-uplift", subject, new MemberCheck(
                    state.Combination.Key, state.Sense, new Amount(demand, Dimension.Force), new Amount(held.Value, Dimension.Force), held.How, demand > 0 ? Amount.Metres(depth) : null)),
                .. TeeFixings.Of(geometry.House, made, subject, Math.Max(0, shares[k]), state),
            ];
        }).ToSequence();
    }

    public static string Subject(TeePlace tee) => FormattableString.Invariant($"tee {tee.Number}");

    /// <summary>Uplift that comes to each tee in one state, N.</summary>
    private static double[] Shares(HouseGeometry geometry, Landing[] poles, CombinedState state)
    {
        var shares = new double[geometry.Tees.Count];
        var length = geometry.Curve.Length;
        for (var i = 0; i < poles.Length; i++)
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
                var ahead = geometry.Curve.Wrap(geometry.Tees[k].Station - poles[i].Station);
                (after, on) = ahead < on ? (k, ahead) : (after, on);
                (before, back) = length - ahead < back ? (k, length - ahead) : (before, back);
            }

            var share = on + back > 0 ? back / (on + back) : 0.5;
            shares[after] += lift * share;
            shares[before] += lift * (1 - share);
        }

        return shares;
    }

    /// <summary>Length of wall that a tee can call its own, m: twice the way to what comes first on either side.</summary>
    private static double Room(HouseGeometry geometry, int index)
    {
        var tee = geometry.Tees[index];
        var length = geometry.Curve.Length;
        var nearest = length / 2;
        foreach (var other in geometry.Tees.Where(t => t != tee))
        {
            nearest = Math.Min(nearest, Apart(other.Station) / 2);
        }

        foreach (var opening in geometry.Openings.Where(o => o.Head > tee.BarHeight))
        {
            var middle = geometry.Curve.Wrap(opening.Widest.Middle);
            nearest = Math.Min(nearest, Apart(middle) - opening.Widest.Width / 2);
        }

        return 2 * nearest;

        double Apart(double station)
        {
            var d = Math.Abs(station - tee.Station) % length;
            return Math.Min(d, length - d);
        }
    }
}
