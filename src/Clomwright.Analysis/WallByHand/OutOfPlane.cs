using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>Each pier with what stands over the openings beside it against wind and earthquake square to it, as rigid bodies that nothing holds in tension; the curve of the wall is not counted.</summary>
/// <remarks>
/// The edge that it turns about lies inside the face by the depth that carries the load at the pressure allowed. Dry cob of the least weight holds it down. Where poles lift, what they lift comes off the weight
/// of the wall, through the tees.
/// </remarks>
internal sealed class OutOfPlane(HouseGeometry geometry, RoofResult roof, PierLoads loads, IReadOnlyList<WallState> states, double dryCob, Cited<double> allowed)
{
    private static readonly Source Mechanics = Sources.Get("mechanics"), Block = Sources.Get("magenes-calvi-memory");

    private readonly WallSolid wall = geometry.Wall;

    private double Height => (wall.Top - wall.Base).Metres;

    /// <summary>Free at its top, then held there.</summary>
    public IEnumerable<CheckedMember> Of(Stretch stretch, Message? missing)
    {
        string free = $"{stretch.Address}, free at its top", held = $"{stretch.Address}, held at its top";
        return missing is { } why || states.Count == 0
            ? [new("wall-out-of-plane", free, missing ?? new Message("analysis.roof.none")), new("wall-out-of-plane", held, missing ?? new Message("analysis.roof.none"))]
            : [Hardest(free, Ways(stretch).SelectMany(w => new[] { wall.Base.Metres, stretch.Low }.Distinct().Select(z => (Way: w, Plane: z))), (one, kept) => Free(one.Way, one.Plane, kept)), Hardest(held, Ways(stretch), Held)];
    }

    /// <summary>Every case by its numbers, the hardest once more with its steps put down.</summary>
    private static CheckedMember Hardest<T>(string subject, IEnumerable<T> cases, Func<T, bool, (double Use, Func<MemberCheck> Told)> check) =>
        new("wall-out-of-plane", subject, check(cases.MaxBy(c => check(c, false).Use)!, true).Told());

    private IEnumerable<Way> Ways(Stretch stretch) => states.SelectMany(s => new[] { 1, -1 }.Select(sign => new Way(stretch, s, sign)));

    private (double Use, Func<MemberCheck> Told) Free(Way way, double plane, bool kept)
    {
        var sheet = new Worksheet("wall-free", kept);
        var push = Push(sheet, way);
        var h = Worksheet.Computed("h_p", "height-over-plane", wall.Top.Metres - plane, Dimension.Length);
        var turns = sheet.Step("wall-turns", "M", "q*h_p^2/2", push.Value.Si * h.Value.Si * h.Value.Si / 2, Dimension.Moment, Mechanics, push, h);
        var cut = way.Stretch.Cut(plane <= wall.Base.Metres ? "foot" : "sill");
        var (n, w) = Weights(sheet, way, way.Stretch.CobAbove(plane));
        var c = Crushed(sheet, n, w, cut.Area / cut.Thickness);
        Symbol edge = Line("y_b", "line-edge", Lee(way, plane)), yn = Line("y_N", "line-load", way.Sign * loads.TopLine(way.Stretch, way.State)), yw = Line("y_W", "line-weight", way.Sign * loads.CobLine(plane));
        var holds = Math.Max(1e-3, n.Value.Si * (edge.Value.Si - c.Value.Si - yn.Value.Si) + w.Value.Si * (edge.Value.Si - c.Value.Si - yw.Value.Si));
        var held = sheet.Step("wall-holds", "M_R", "max(0.001*Nm, N*(y_b - c - y_N) + W*(y_b - c - y_W))", holds, Dimension.Moment, Mechanics, n, edge, c, yn, w, yw, NewtonMetre);
        return (turns.Value.Si / held.Value.Si, () => new MemberCheck(way.State.Combination.Key, way.State.Sense, turns.Value, held.Value, sheet.Done));
    }

    private (double Use, Func<MemberCheck> Told) Held(Way way, bool kept)
    {
        var sheet = new Worksheet("wall-held", kept);
        var push = Push(sheet, way);
        var (low, top) = (wall.Base.Metres, wall.Top.Metres);
        var (n, w) = Weights(sheet, way, way.Stretch.CobAbove(low));
        var waist = way.Stretch.Cut("sill");
        var c = Crushed(sheet, n, w, waist.Area / waist.Thickness);
        var perVolume = way.Stretch.CobAbove(low) is var all && all > 0 ? w.Value.Si / all : 0;
        var bowed = new BowedWall(
            Height, n.Value.Si, way.Sign * loads.TopLine(way.Stretch, way.State), w.Value.Si, way.Sign * loads.CobLine(low), Lee(way, low) - c.Value.Si,
            x => (perVolume * way.Stretch.CobAbove(top - x), way.Sign * loads.CobLine(top - x)), x => -Lee(way with { Sign = -way.Sign }, top - x) + c.Value.Si);
        var (weakest, x) = Rocking.Weakest(bowed);
        var (upper, line) = bowed.Above(x);
        Symbol h = Worksheet.Computed("h", "wall-height", Height, Dimension.Length), depth = Worksheet.Computed("x", "hinge-depth", x, Dimension.Length);
        var holds = sheet.Step(
            "wall-bows", "q_R", "max(0.001*N_m, 2*(N*(y_N - y_h) + W_u*(y_u - y_h) + x/h*(N*(y_b - y_N) + W*(y_b - y_W)))/(x*(h - x)))", Math.Max(1e-3, weakest), Dimension.LineLoad, Mechanics,
            n, Line("y_N", "line-load", bowed.LoadLine), Line("y_h", "line-hinge", bowed.Hinge(x)), Worksheet.Computed("W_u", "weight-over-hinge", upper, Dimension.Force), Line("y_u", "line-over-hinge", line),
            depth, h, Line("y_b", "line-edge", bowed.Edge), w, Line("y_W", "line-weight", bowed.WeightLine), Worksheet.Code("N_m", "newton-per-metre", 1, Dimension.LineLoad, Sources.Get("mechanics")));
        sheet.Step(
            "wall-top-held", "H_t", "q*h/2 - (N*(y_b - y_N) + W*(y_b - y_W))/h",
            push.Value.Si * Height / 2 - (n.Value.Si * (bowed.Edge - bowed.LoadLine) + w.Value.Si * (bowed.Edge - bowed.WeightLine)) / Height, Dimension.Force, Mechanics,
            push, h, n, Line("y_b", "line-edge", bowed.Edge), Line("y_N", "line-load", bowed.LoadLine), w, Line("y_W", "line-weight", bowed.WeightLine));
        return (push.Value.Si / holds.Value.Si, () => new MemberCheck(way.State.Combination.Key, way.State.Sense, push.Value, holds.Value, sheet.Done));
    }

    /// <summary>What pushes each metre of height: wind on the pier and half the openings beside it, or the code's share of their weight.</summary>
    private Symbol Push(Worksheet sheet, Way way)
    {
        var (combination, stretch) = (way.State.Combination, way.Stretch);
        if (combination.Factor(LoadKind.Wind) is > 0 and var blow)
        {
            var p = way.Sign > 0 ? -roof.Wind.Value!.WallOut : roof.Wind.Value!.WallIn;
            return sheet.Step(
                "push-wind", "q", "k*p*B", blow * p * stretch.Blown, Dimension.LineLoad, Mechanics, Worksheet.Code("k", "wind-factor", blow, Dimension.Number, combination.Source),
                Worksheet.Computed("p", "wind-on-wall", p, Dimension.AreaLoad), Worksheet.Computed("B", "pier-and-halves", stretch.Blown, Dimension.Length));
        }

        var (factor, site) = (combination.Factor(LoadKind.Earthquake), geometry.House.Site);
        var share = Seismic.SquareToWall(site.SeismicSds ?? 0, site.RiskCategory);
        var weight = TakeDown.CobDensity * UsUnits.Gravity * stretch.CobAbove(wall.Base.Metres);
        return sheet.Step(
            "push-earthquake", "q", "k*a*W_s/h", factor * share * weight / Height, Dimension.LineLoad, Sources.Get("asce7-05-wall-forces"), Worksheet.Code("k", "earthquake-factor", factor, Dimension.Number, combination.Source),
            Worksheet.Code("a", "square-to-wall", share, Dimension.Number, Sources.Get("asce7-05-wall-forces")), Worksheet.Computed("W_s", "pier-weight-standing", weight, Dimension.Force), Worksheet.Computed("h", "wall-height", Height, Dimension.Length));
    }

    /// <summary>What presses on the top, and the weight of the wall less what the poles lift.</summary>
    private (Symbol Load, Symbol Weight) Weights(Worksheet sheet, Way way, double volume)
    {
        var onTop = loads.OnTop(way.Stretch, way.State);
        var n = Worksheet.Computed("N", "least-on-top", Math.Max(0, onTop), Dimension.Force);
        var weight = Math.Max(0, way.State.Dead * dryCob * volume + Math.Min(0, onTop));
        var w = sheet.Step(
            "least-weight", "W", "max(0, k_D*gamma*V - U)", weight, Dimension.Force, Mechanics, Worksheet.Computed("k_D", "dead-factor", way.State.Dead, Dimension.Number),
            Worksheet.Assumed("gamma", "cob-weight-dry", dryCob, Dimension.Number, Sources.Get("cob-density-memory")), Worksheet.Computed("V", "pier-cob-volume", volume, Dimension.Volume),
            Worksheet.Computed("U", "pier-lifted", Math.Max(0, -onTop), Dimension.Force));
        return (n, w);
    }

    private Symbol Crushed(Worksheet sheet, Symbol n, Symbol w, double width)
    {
        var b = Worksheet.Computed("b", "pier-width", width, Dimension.Length);
        return sheet.Step(
            "edge-crushed", "c", "(N + W)/(2*0.85*f_a*b)", Rocking.Crushed(n.Value.Si + w.Value.Si, allowed.Value, width), Dimension.Length, Block, n, w, Worksheet.Cited("f_a", "cob-allowed", allowed, Dimension.Stress), b);
    }

    /// <summary>The face that it is pushed to at a height, in the direction of the push.</summary>
    private double Lee(Way way, double height) => way.Sign > 0 ? wall.OutsideOffset(height) : -wall.InsideOffset(height);

    private static Symbol Line(string name, string word, double value) => Worksheet.Computed(name, word, value, Dimension.Length);

    private static Symbol NewtonMetre => Worksheet.Code("Nm", "newton-metre", 1, Dimension.Moment, Sources.Get("mechanics"));

    /// <summary>One state pushing outward (1) or inward (-1).</summary>
    private readonly record struct Way(Stretch Stretch, WallState State, int Sign);
}
