using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>What comes down on a level cut.</summary>
/// <param name="Cob">Cob above, factor not counted, N.</param>
/// <param name="Plaster">Plaster above, N.</param>
/// <param name="Beam">Bond beam, and wall raised on it to reach a shed's rafters, N.</param>
/// <param name="Roof">Of the poles in the state, its factors counted, N; negative lifts.</param>
/// <param name="Total">N: k_D (Cob + Plaster + Beam) + Roof, N.</param>
/// <param name="Line">Where it comes down, m outward from the inside curve.</param>
/// <param name="Along">Where it comes down along the wall, m from the middle of the cut.</param>
internal readonly record struct PierLoad(double Cob, double Plaster, double Beam, double Roof, double Total, double Line, double Along);

/// <summary>Takes loads down to level cuts of piers.</summary>
/// <remarks>
/// A pole's force spreads 1 out for 2 down on either side, from the bond beam to the highest head; what then lies over an opening goes to both jambs by the lever rule, as a simply supported
/// header would send it. Cob and bond beam over an opening go half to each side.
/// </remarks>
internal sealed class PierLoads
{
    private readonly HouseGeometry geometry;
    private readonly WallSolid wall;
    private readonly Landing[] poles;
    private readonly double[] lines;
    private readonly double[]? raised;
    private readonly Dictionary<Stretch, (double Share, double Along)[]> shares = [];
    private readonly Dictionary<(int Pole, Stretch Stretch), PoleSpread?> spreads = [];
    private readonly Dictionary<LevelCut, Standing> standing = new(ReferenceEqualityComparer.Instance);
    private readonly double[] ahead, behind;
    private readonly double plasterIn, plasterOut, middleOfTop, beamLine, beamWeight;

    public PierLoads(HouseGeometry geometry, Sequence<PoleSeat> seats, double[]? raised)
    {
        (this.geometry, wall, this.raised) = (geometry, geometry.Wall, raised);
        poles = [.. geometry.Landings.Where(l => !l.Secondary)];
        middleOfTop = (wall.InsideOffset(wall.Top.Metres) + wall.OutsideOffset(wall.Top.Metres)) / 2;
        beamLine = middleOfTop + (geometry.House.BondBeam?.Offset.Metres ?? 0);
        lines = [.. poles.Select((_, i) => seats.Count == poles.Length ? middleOfTop + seats[i].OffCentre : beamLine)];
        beamWeight = geometry.House.BondBeam is { } beam ? beam.Width.Metres * beam.Depth.Metres * TakeDown.BeamWeight : 0;
        plasterIn = Depth(Face.Inside);
        plasterOut = Depth(Face.Outside);
        ahead = [.. poles.Select((_, i) => Next(i, 1))];
        behind = [.. poles.Select((_, i) => Next(i, -1))];
        Half = Math.Clamp((wall.Top.Metres - (geometry.Openings.Max(o => (double?)o.Head) ?? wall.Top.Metres)) / 2, Math.Min(0.1, geometry.Curve.Length / 2), geometry.Curve.Length / 2);
    }

    /// <summary>Half the length that a pole's force has spread over where it meets the heads, m.</summary>
    public double Half { get; }

    /// <summary>How many poles land.</summary>
    public int Poles => poles.Length;

    /// <summary>Everything that comes down on a cut of a stretch.</summary>
    /// <param name="stretch">The stretch.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="state">The state.</param>
    public PierLoad On(Stretch stretch, LevelCut cut, WallState state)
    {
        if (!standing.TryGetValue(cut, out var stands))
        {
            standing[cut] = stands = Stands(stretch, cut);
        }

        double roof = 0, roofMoment = 0, roofLine = 0;
        var shares = SharesOf(stretch);
        for (var i = 0; i < Math.Min(poles.Length, state.Reactions.Count); i++)
        {
            var (share, along) = shares[i];
            var force = share * state.Reactions[i];
            (roof, roofMoment, roofLine) = (roof + force, roofMoment + force * along, roofLine + force * lines[i]);
        }

        var total = state.Dead * (stands.Cob + stands.Plaster + stands.Beam + stands.Raised) + roof;
        var (across, moment) = (state.Dead * stands.Across + roofLine, roofMoment + state.Dead * stands.Moment);
        return new(
            stands.Cob, stands.Plaster, stands.Beam + stands.Raised, roof, total, total > 0 ? across / total : cut.Centre, total > 0 ? moment / total - stands.Grown : 0);
    }

    /// <summary>Of that, what is the same in every state.</summary>
    private Standing Stands(Stretch stretch, LevelCut cut)
    {
        const double Cob = TakeDown.CobDensity * UsUnits.Gravity;
        var (cob, plaster, beam) = (Cob * stretch.CobAbove(cut.Height), Plaster(stretch.AtTop, cut.Height), beamWeight * stretch.AtTop);
        var clear = Cob * stretch.ClearAbove(cut.Height) + Plaster(stretch.ClearAtTop, cut.Height) + beamWeight * stretch.ClearAtTop;
        var beside = cob + plaster + beam - clear;
        double raisedWeight = 0, raisedMoment = 0;
        for (var i = 0; i < poles.Length; i++)
        {
            var (share, along) = SharesOf(stretch)[i];
            var high = share * Raised(i);
            (raisedWeight, raisedMoment) = (raisedWeight + high, raisedMoment + high * along);
        }

        var half = stretch.Clear.Width / 2;
        double after = Beside(stretch.After), before = Beside(stretch.Before), afterUnder = Under(stretch.After), beforeUnder = Under(stretch.Before);
        var across = cob * CobLine(cut.Height) + plaster * PlasterLine(cut.Height) + (beam + raisedWeight) * beamLine;
        var moment = raisedMoment + after * (half - stretch.After.Bearing / 2) - before * (half - stretch.Before.Bearing / 2)
            + afterUnder * (half + stretch.After.Width / 4) - beforeUnder * (half + stretch.Before.Width / 4);
        return new(cob, plaster, beam, raisedWeight, across, moment, (stretch.After.Grown(cut.Height) - stretch.Before.Grown(cut.Height)) / 2);

        // Half of what lies beside comes from the jamb, under the header's end; cob under a sill stands where it is.
        double Under(Gap gap) => Cob * gap.CobUnder(cut.Height) / 2;
        double Beside(Gap gap) => beside * Share(gap, gap == stretch.After ? stretch.Before : stretch.After, cut.Height) - Under(gap);
    }

    /// <summary>On the top of a stretch, the least that may be there: bond beam with its factor, poles with theirs, N; negative lifts.</summary>
    public double OnTop(Stretch stretch, WallState state)
    {
        var sum = state.Dead * beamWeight * stretch.AtTop;
        for (var i = 0; i < Math.Min(poles.Length, state.Reactions.Count); i++)
        {
            sum += state.Reactions[i] * SharesOf(stretch)[i].Share;
        }

        return sum;
    }

    /// <summary>What spreads under one pole down to the foot, with the wall it stands on: never past half-way to the next pole, nor past the jambs.</summary>
    public (LevelCut Cut, PierLoad Load)? Under(int pole, Stretch stretch, WallState state)
    {
        if (pole >= state.Reactions.Count || Spread(pole, stretch) is not { } under)
        {
            return null;
        }

        var (cut, foot, force) = (under.Cut, under.Cut.Height, state.Reactions[pole]);
        var (cob, plaster, beam) = (TakeDown.CobDensity * UsUnits.Gravity * under.Cob, Plaster(under.AtTop, foot), beamWeight * under.AtTop + Raised(pole));
        var total = state.Dead * (cob + plaster + beam) + force;
        var across = state.Dead * (cob * CobLine(foot) + plaster * PlasterLine(foot) + beam * beamLine) + force * lines[pole];
        return (cut, new(cob, plaster, beam, force, total, total > 0 ? across / total : cut.Centre, total > 0 ? force * under.Along / total : 0));
    }

    private PoleSpread? Spread(int pole, Stretch stretch)
    {
        if (spreads.TryGetValue((pole, stretch), out var known))
        {
            return known;
        }

        var curve = geometry.Curve;
        var foot = wall.Base.Metres;
        var station = stretch.Clear.From + curve.Wrap(poles[pole].Station - stretch.Clear.From);
        if (station > stretch.Clear.To)
        {
            return spreads[(pole, stretch)] = null;
        }

        var spread = (wall.Top.Metres - foot) / 2;
        var open = stretch.Before.Openings.Length > 0;
        var from = Math.Max(station - Math.Min(spread, behind[pole] / 2), open ? stretch.Clear.From - stretch.Before.Grown(foot) : double.NegativeInfinity);
        var to = Math.Min(station + Math.Min(spread, ahead[pole] / 2), open ? stretch.Clear.To + stretch.After.Grown(foot) : double.PositiveInfinity);
        var (thickness, middle, tract) = (wall.ThicknessAt(foot), (wall.InsideOffset(foot) + wall.OutsideOffset(foot)) / 2, Tract.Of(geometry, new Span(from, to)));
        var width = tract.Arc(middle);
        return spreads[(pole, stretch)] = new PoleSpread(new LevelCut(poles[pole].Name, foot, width, thickness, width * thickness, middle), tract.Above(foot), tract.Arc(middleOfTop), station - (from + to) / 2);
    }

    /// <summary>Middle of the cob above a height, m outward from the inside curve.</summary>
    public double CobLine(double height)
    {
        var (low, top) = (height, wall.Top.Metres);
        var half = (low + top) / 2;
        var ((atLow, lowMoment), (atHalf, halfMoment), (atTop, topMoment)) = (Level(low), Level(half), Level(top));
        return (lowMoment + 4 * halfMoment + topMoment) / (atLow + 4 * atHalf + atTop);

        (double Thickness, double Moment) Level(double z)
        {
            var (inside, outside) = (wall.InsideOffset(z), wall.OutsideOffset(z));
            return (outside - inside, (outside * outside - inside * inside) / 2);
        }
    }

    /// <summary>Where poles and bond beam press on a stretch in a state, m outward from the inside curve; the bond beam's line where nothing presses.</summary>
    public double TopLine(Stretch stretch, WallState state)
    {
        double force = 0, moment = 0;
        for (var i = 0; i < Math.Min(poles.Length, state.Reactions.Count); i++)
        {
            var part = Math.Max(0, state.Reactions[i]) * SharesOf(stretch)[i].Share;
            (force, moment) = (force + part, moment + part * lines[i]);
        }

        return force > 0 ? moment / force : beamLine;
    }

    private double Plaster(double length, double height) => TakeDown.PlasterDensity * UsUnits.Gravity * (wall.Top.Metres - height) * (plasterIn + plasterOut) * length;

    private double PlasterLine(double height)
    {
        var half = (height + wall.Top.Metres) / 2;
        return plasterIn + plasterOut > 0 ? (plasterOut * wall.OutsideOffset(half) + plasterIn * wall.InsideOffset(half)) / (plasterIn + plasterOut) : middleOfTop;
    }

    /// <summary>Of what stands over and under both openings beside a pier, the part on one side, by the cob there.</summary>
    private static double Share(Gap one, Gap other, double height) => one.CobAbove(height) + other.CobAbove(height) is var both && both > 0 ? one.CobAbove(height) / both : 0.5;

    /// <summary>Wall raised on the wall top to reach a shed's rafter, half-way to both next landings, N.</summary>
    private double Raised(int pole) =>
        raised is null ? 0 : TakeDown.CobDensity * UsUnits.Gravity * raised[pole] * wall.ThicknessAtTop.Metres * (ahead[pole] + behind[pole]) / 2;

    /// <summary>To the next pole clockwise (1) or back (-1), m; once round where there is only one.</summary>
    private double Next(int pole, int way) =>
        poles.Length < 2 ? geometry.Curve.Length : poles.Where((_, k) => k != pole).Min(p => geometry.Curve.Wrap(way * (p.Station - poles[pole].Station)));

    private (double Share, double Along)[] SharesOf(Stretch stretch) =>
        shares.TryGetValue(stretch, out var known) ? known : shares[stretch] = [.. poles.Select(p => stretch.ShareOf(p.Station, Half))];

    private double Depth(Face face) => geometry.House.Finishes.Where(f => f.Face == face).Sum(f => f.Thickness?.Metres ?? 0);

    /// <summary>What stands on a cut in every state: weights, N; their moments about the inside curve and about the middle of the cut, N m, factor not counted; how far the cut's middle has moved along, m.</summary>
    private readonly record struct Standing(double Cob, double Plaster, double Beam, double Raised, double Across, double Moment, double Grown);

    /// <summary>What one pole's force has spread over at the foot: the cut, the cob above it, m3, its length at the wall top, m, and how far the pole stands past its middle, m.</summary>
    private sealed record PoleSpread(LevelCut Cut, double Cob, double AtTop, double Along);
}
