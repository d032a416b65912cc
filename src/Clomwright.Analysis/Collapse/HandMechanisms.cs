using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.WallByHand;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Collapse;

/// <summary>One way to fall, worked by hand on the pier that falls first by it.</summary>
/// <param name="Kind"><c>free</c>: tips square to the wall, nothing at its top; <c>crushes</c>: the same on a toe that crushes; <c>held</c>: bows out between foot and bond beam; <c>slides</c>; <c>tips</c>: along the wall; <c>cracks</c>: across, from corner to corner.</param>
/// <param name="Pier">As geometry addresses it; <c>wall</c> for the whole ring.</param>
/// <param name="Factor">Push over weight at which it moves.</param>
/// <param name="Outward">Whether it falls outward; null where it stays in the wall's line.</param>
/// <param name="How">How.</param>
public sealed record HandMechanism(string Kind, string Pier, double Factor, bool? Outward, Calculation How);

/// <summary>Works the hand mechanisms with the loads and weights of the blocks, so that the two may stand beside each other: each pier pushed by a share of its own weight and of what lands on it.</summary>
internal sealed class HandMechanisms
{
    /// <summary>Stations at which the height of a weight's middle is summed.</summary>
    private const int Slices = 48;

    private static readonly Source Mechanics = Sources.Get("mechanics");

    private readonly HouseGeometry geometry;
    private readonly WallSolid wall;
    private readonly WallNumbers numbers;
    private readonly PierLoads loads;
    private readonly WallState state;
    private readonly Symbol strength;

    /// <summary>The hand mechanisms of a house.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="numbers">The wall's numbers.</param>
    /// <param name="seats">Where poles press.</param>
    /// <param name="onLandings">What each presses, N.</param>
    /// <param name="strength">Characteristic strength of the cob, Pa.</param>
    public HandMechanisms(HouseGeometry geometry, WallNumbers numbers, Sequence<PoleSeat> seats, IEnumerable<double> onLandings, double strength)
    {
        (this.geometry, wall, this.numbers) = (geometry, geometry.Wall, numbers);
        loads = new PierLoads(geometry, seats, null);
        state = new WallState(StageStates.Combination("soilWet", Members.TimberSystem.Nds), "", 1, onLandings.ToSequence());
        this.strength = Worksheet.Computed("f_k", "characteristic-strength", strength, Dimension.Stress);
    }

    /// <summary>Every way, each on the pier that falls first by it.</summary>
    public Sequence<HandMechanism> All
    {
        get
        {
            var stretches = Stretch.Of(geometry);
            return
            [
                First(stretches.SelectMany(s => Planes(s).SelectMany(z => Both(outward => Square(s, z, outward, toe: false))))),
                First(stretches.SelectMany(s => Planes(s).SelectMany(z => Both(outward => Square(s, z, outward, toe: true))))),
                .. geometry.House.BondBeam is null ? (Sequence<HandMechanism>)[] : [First(stretches.SelectMany(s => Both(outward => Held(s, outward))))],
                Slides(),
                First(stretches.Select(Tips)),
                First(stretches.Select(Cracks)),
            ];
        }
    }

    private static HandMechanism First(IEnumerable<HandMechanism> all) => all.MinBy(m => m.Factor)!;

    private static IEnumerable<HandMechanism> Both(Func<bool, HandMechanism> one) => [one(true), one(false)];

    /// <summary>The levels at which a pier may turn: its foot, and the sill it stands beside.</summary>
    private IEnumerable<double> Planes(Stretch stretch) => new[] { wall.Base.Metres, stretch.Low }.Distinct();

    private HandMechanism Square(Stretch stretch, double plane, bool outward, bool toe)
    {
        var kind = toe ? "crushes" : "free";
        var sheet = new Worksheet($"fall-{kind}");
        var (n, w, z, h) = Weights(stretch, plane);
        var sign = outward ? 1 : -1;
        Symbol edge = Line("y_b", "line-edge", outward ? wall.OutsideOffset(plane) : -wall.InsideOffset(plane)), yn = Line("y_N", "line-load", sign * loads.TopLine(stretch, state)), yw = Line("y_W", "line-weight", sign * loads.CobLine(plane));
        if (!toe)
        {
            var free = Math.Max(0, n.Value.Si * (edge.Value.Si - yn.Value.Si) + w.Value.Si * (edge.Value.Si - yw.Value.Si)) / (n.Value.Si * h.Value.Si + w.Value.Si * z.Value.Si);
            sheet.Step("fall-free", "l", "max(0, N*(y_b - y_N) + W*(y_b - y_W))/(N*h_p + W*z_W)", free, Dimension.Number, Mechanics, n, edge, yn, w, yw, h, z);
            return Told(kind, stretch, free, outward, sheet);
        }

        var cut = stretch.Cut(plane <= wall.Base.Metres ? "foot" : "sill");
        var b = Worksheet.Computed("b", "pier-width", cut.Area / cut.Thickness, Dimension.Length);
        var c = sheet.Step(
            "edge-crushed", "c", "(N + W)/(2*0.85*f_k*b)", Rocking.Crushed(n.Value.Si + w.Value.Si, strength.Value.Si, b.Value.Si), Dimension.Length, Sources.Get("magenes-calvi-memory"), n, w, strength, b);
        var crushed = Math.Max(0, n.Value.Si * (edge.Value.Si - c.Value.Si - yn.Value.Si) + w.Value.Si * (edge.Value.Si - c.Value.Si - yw.Value.Si)) / (n.Value.Si * h.Value.Si + w.Value.Si * z.Value.Si);
        sheet.Step("fall-crushes", "l", "max(0, N*(y_b - c - y_N) + W*(y_b - c - y_W))/(N*h_p + W*z_W)", crushed, Dimension.Number, Mechanics, n, edge, c, yn, w, yw, h, z);
        return Told(kind, stretch, crushed, outward, sheet);
    }

    private HandMechanism Held(Stretch stretch, bool outward)
    {
        var sheet = new Worksheet("fall-held");
        var (low, top, sign) = (wall.Base.Metres, wall.Top.Metres, outward ? 1 : -1);
        var (n, w, _, h) = Weights(stretch, low);
        var volume = stretch.CobAbove(low);
        double Lee(double z) => outward ? wall.OutsideOffset(z) : -wall.InsideOffset(z);
        double Windward(double z) => outward ? wall.InsideOffset(z) : -wall.OutsideOffset(z);
        var bowed = new BowedWall(
            top - low, n.Value.Si, sign * loads.TopLine(stretch, state), w.Value.Si, sign * loads.CobLine(low), Lee(low),
            x => (volume > 0 ? w.Value.Si / volume * stretch.CobAbove(top - x) : 0, sign * loads.CobLine(top - x)), x => Windward(top - x));
        var (weakest, depth) = Rocking.Weakest(bowed);
        var (upper, line) = bowed.Above(depth);
        var x = Worksheet.Computed("x", "hinge-depth", depth, Dimension.Length);
        var q = sheet.Step(
            "wall-bows", "q_R", "2*(N*(y_N - y_h) + W_u*(y_u - y_h) + x/h_p*(N*(y_b - y_N) + W*(y_b - y_W)))/(x*(h_p - x))", weakest, Dimension.LineLoad, Mechanics,
            n, Line("y_N", "line-load", bowed.LoadLine), Line("y_h", "line-hinge", bowed.Hinge(depth)), Worksheet.Computed("W_u", "weight-over-hinge", upper, Dimension.Force), Line("y_u", "line-over-hinge", line),
            x, h, Line("y_b", "line-edge", bowed.Edge), w, Line("y_W", "line-weight", bowed.WeightLine));
        var factor = Math.Max(0, weakest) * (top - low) / w.Value.Si;
        sheet.Step("fall-held", "l", "max(0, q_R)*h_p/W", factor, Dimension.Number, Mechanics, q, h, w);
        return Told("held", stretch, factor, outward, sheet);
    }

    private HandMechanism Slides()
    {
        var sheet = new Worksheet("fall-slides");
        var friction = numbers["wall-joint-friction"];
        sheet.Step("fall-slides", "l", "mu", friction, Dimension.Number, Mechanics, numbers.Symbol("mu", "wall-joint-friction"));
        return new HandMechanism("slides", "wall", friction, null, sheet.Done);
    }

    private HandMechanism Tips(Stretch stretch)
    {
        var sheet = new Worksheet("fall-tips");
        var (n, w, z, h) = Weights(stretch, stretch.Foot);
        var a = Worksheet.Computed("a", "piece-reach", Reach(stretch), Dimension.Length);
        var factor = (n.Value.Si + w.Value.Si) * a.Value.Si / (n.Value.Si * h.Value.Si + w.Value.Si * z.Value.Si);
        sheet.Step("fall-tips", "l", "(N + W)*a/(N*h_p + W*z_W)", factor, Dimension.Number, Mechanics, n, w, a, h, z);
        return Told("tips", stretch, factor, null, sheet);
    }

    /// <summary>From the middle of a pier to its end along the wall; of a pier that turns, of its pieces that turn no more than a quarter circle.</summary>
    private double Reach(Stretch stretch)
    {
        var curve = geometry.Curve;
        var turn = stretch.Clear.Width >= curve.Length * (1 - 1e-12) ? 2 * Math.PI : Math.Abs(curve.Turning(stretch.Clear.From, stretch.Clear.To));
        var count = Math.Max(1, (int)Math.Ceiling(turn / (Math.PI / 2) - 1e-9));
        var (inside, outside) = (wall.InsideOffset(stretch.Foot), wall.OutsideOffset(stretch.Foot));
        return Enumerable.Range(0, count)
            .Select(i => CutShape.Of(curve, stretch.Clear.From + stretch.Clear.Width * i / count, stretch.Clear.From + stretch.Clear.Width * (i + 1) / count, inside, outside))
            .Min(shape => shape.Reach(shape.Along));
    }

    private HandMechanism Cracks(Stretch stretch)
    {
        var sheet = new Worksheet("fall-cracks");
        var (n, w, _, _) = Weights(stretch, stretch.Low);
        var cut = stretch.Cut("sill");
        var tension = sheet.Step(
            "fall-crack-pull", "f_t", "k_t*f_k", numbers["wall-tension-share"] * strength.Value.Si, Dimension.Stress, Mechanics, numbers.Symbol("k_t", "wall-tension-share"), strength);
        Symbol area = Worksheet.Computed("A", "pier-area", cut.Area, Dimension.Area), shape = Worksheet.Computed("b_s", "fall-pier-shape", PierStrength.Shape(wall.Top.Metres - stretch.Foot, cut.Area / cut.Thickness), Dimension.Number);
        var factor = PierStrength.Cracking(n.Value.Si + w.Value.Si, cut.Area / cut.Thickness, cut.Thickness, wall.Top.Metres - stretch.Foot, tension.Value.Si) / (n.Value.Si + w.Value.Si);
        sheet.Step("fall-cracks", "l", "A*f_t/b_s*sqrt(1 + (N + W)/A/f_t)/(N + W)", factor, Dimension.Number, Sources.Get("turnsek-cacovic-memory"), area, tension, shape, n, w);
        return Told("cracks", stretch, factor, null, sheet);
    }

    /// <summary>What presses on the top, the cob above a level, how high its middle lies over that level, and the height over it.</summary>
    private (Symbol OnTop, Symbol Weight, Symbol Middle, Symbol Height) Weights(Stretch stretch, double plane)
    {
        var height = wall.Top.Metres - plane;
        var volume = stretch.CobAbove(plane);
        var middle = Enumerable.Range(0, Slices).Sum(i => stretch.CobAbove(plane + height * (i + 0.5) / Slices)) * height / Slices / Math.Max(volume, 1e-12);
        return (
            Worksheet.Computed("N", "fall-on-top", loads.OnTop(stretch, state), Dimension.Force), Worksheet.Computed("W", "fall-weight", TakeDown.CobDensity * UsUnits.Gravity * volume, Dimension.Force),
            Worksheet.Computed("z_W", "fall-middle", middle, Dimension.Length), Worksheet.Computed("h_p", "height-over-plane", height, Dimension.Length));
    }

    private static Symbol Line(string name, string word, double value) => Worksheet.Computed(name, word, value, Dimension.Length);

    private static HandMechanism Told(string kind, Stretch stretch, double factor, bool? outward, Worksheet sheet) => new(kind, stretch.Address, factor, outward, sheet.Done with { Place = stretch.Address });
}
