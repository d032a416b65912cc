using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>Wind and earthquake along the piers, from every direction.</summary>
/// <remarks>
/// Each pier is cut into pieces that turn no more than a quarter of a circle; each stands by itself from the lower sill beside it and tips where the load on it leaves its outline. Nothing is counted of what the
/// cob over the heads and under the sills does for it. What comes to the wall top is shared as if it moved as one flat plate on pieces as stiff as they are strong: shares that balance the force and its twist, so
/// that no more than that can be asked of pieces that give way slowly. In an earthquake the force passes the middle by 5 % of the width on either side.
/// </remarks>
internal sealed class InPlane
{
    private const int Directions = 24;
    private const double Twist = 0.05;

    private static readonly Source Mechanics = Sources.Get("mechanics");

    private readonly HouseGeometry geometry;
    private readonly PierLoads loads;
    private readonly WallNumbers numbers;
    private readonly CobStrength cob;
    private readonly double dryCob, width;
    private readonly PlanPoint middle;
    private readonly Sideways sideways;
    private readonly Dictionary<Stretch, (CutShape Shape, double Along, double Across)[]> shapes = [];

    public InPlane(HouseGeometry geometry, Sideways sideways, PierLoads loads, WallNumbers numbers, CobStrength cob, double dryCob)
    {
        (this.geometry, this.sideways, this.loads, this.numbers, this.cob, this.dryCob) = (geometry, sideways, loads, numbers, cob, dryCob);
        (middle, width) = PlanMiddle.Of(geometry);
    }

    private double Tension => numbers["wall-tension-share"] * cob.Characteristic / cob.Divisor;

    /// <summary>Each pier in the state and direction that use it most; why not where the shares cannot be found.</summary>
    public IEnumerable<(CheckedMember Check, PierAlong? Along)> Of(IReadOnlyList<Stretch> stretches, IReadOnlyList<WallState> states)
    {
        Message? missing = null;
        var worst = new (MemberCheck Check, PierAlong Along)?[stretches.Count];
        foreach (var state in states)
        {
            var force = sideways.Force(state.Combination, state.Sense, SidewaysPart.Top);
            Piece[] pieces = [.. stretches.SelectMany((s, i) => Pieces(s, i, state))];
            if (force.Value is not { } top || Plate.Of(pieces) is not { } plate)
            {
                missing ??= force.NotChecked ?? new Message("analysis.wall.no-plate");
                continue;
            }

            foreach (var (piece, along, across) in plate.Worst(Directions, state.Combination.Factor(LoadKind.Earthquake) > 0 ? Twist * width : 0))
            {
                var check = Check(top, state, piece, along, across);
                if (worst[piece.Stretch] is not { } before || check.Check.Use > before.Check.Use)
                {
                    worst[piece.Stretch] = check;
                }
            }
        }

        return stretches.Select((s, i) => worst[i] is { } found
            ? (new CheckedMember("wall-in-plane", s.Address, found.Check), (PierAlong?)found.Along)
            : (new CheckedMember("wall-in-plane", s.Address, missing ?? new Message("analysis.roof.none")), null));
    }

    private IEnumerable<Piece> Pieces(Stretch stretch, int number, WallState state)
    {
        var cut = stretch.Cut("sill");
        var pieces = Shapes(stretch, cut);
        var count = pieces.Length;
        var n = Math.Max(0, state.Dead * dryCob * stretch.CobAbove(stretch.Low) + loads.OnTop(stretch, state)) / count;
        var (area, height) = (cut.Area / count, geometry.Wall.Top.Metres - stretch.Foot);
        foreach (var (shape, along, across) in pieces)
        {
            yield return new Piece
            {
                Stretch = number, Load = n, Area = area, Thickness = cut.Thickness, Height = height, Reach = along, Along = shape.Along, Across = shape.Across,
                ArmAlong = (shape.Middle - middle).Cross(shape.Along), ArmAcross = (shape.Middle - middle).Cross(shape.Across),
                Rocking = PierStrength.Rocking(n, 2 * along, area / (2 * along), height, cob.Allowable),
                Sliding = PierStrength.Sliding(n, area / cut.Thickness, cut.Thickness, 0, numbers["wall-joint-friction"]),
                Cracking = PierStrength.Cracking(n, area / cut.Thickness, cut.Thickness, height, Tension),
                RockingAcross = PierStrength.Rocking(n, 2 * across, area / (2 * across), height, cob.Allowable),
            };
        }
    }

    private (CutShape Shape, double Along, double Across)[] Shapes(Stretch stretch, LevelCut cut)
    {
        if (shapes.TryGetValue(stretch, out var known))
        {
            return known;
        }

        var curve = geometry.Curve;
        var turn = stretch.Clear.Width >= curve.Length * (1 - 1e-12) ? 2 * Math.PI : Math.Abs(curve.Turning(stretch.Clear.From, stretch.Clear.To));
        var count = Math.Max(1, (int)Math.Ceiling(turn / (Math.PI / 2) - 1e-9));
        var (inside, outside) = (geometry.Wall.InsideOffset(cut.Height), geometry.Wall.OutsideOffset(cut.Height));
        return shapes[stretch] = [.. Enumerable.Range(0, count)
            .Select(i => CutShape.Of(curve, stretch.Clear.From + stretch.Clear.Width * i / count, stretch.Clear.From + stretch.Clear.Width * (i + 1) / count, inside, outside))
            .Select(shape => (shape, shape.Reach(shape.Along), shape.Reach(shape.Across)))];
    }

    private (MemberCheck Check, PierAlong Along) Check(Calculated<double> top, WallState state, Piece piece, double along, double across)
    {
        var sheet = new Worksheet("wall-in-plane");
        var carried = top.How.Steps[^1];
        var h = sheet.Step(carried.Key, carried.Result.Name, carried.Equation, top.Value, Dimension.Force, carried.Source, [.. carried.Symbols]);
        Symbol n = Worksheet.Computed("N", "piece-load", piece.Load, Dimension.Force), a = Worksheet.Computed("a", "piece-reach", piece.Reach, Dimension.Length), area = Worksheet.Computed("A", "pier-area", piece.Area, Dimension.Area);
        Symbol t = Worksheet.Computed("t", "pier-thickness", piece.Thickness, Dimension.Length), tall = Worksheet.Computed("h_v", "piece-height", piece.Height, Dimension.Length);
        var source = cob.Assumption?.Source ?? Sources.Get("en-1990-d");
        var fa = Worksheet.Cited("f_a", "cob-allowed", new Cited<double>(cob.Allowable, source, cob.Tag), Dimension.Stress);
        var rocking = sheet.Step("piece-rocking", "V_r", "max(0, N*a/h_v*(1 - N/(A*0.85*f_a)))", piece.Rocking, Dimension.Force, Sources.Get("magenes-calvi-memory"), n, a, tall, area, fa);
        var sliding = sheet.Step("piece-sliding", "V_s", "mu*N", piece.Sliding, Dimension.Force, Sources.Get("en-1996-memory"), numbers.Symbol("mu", "wall-joint-friction"), n);
        var ft = sheet.Step(
            "cob-tension", "f_t", "k_t*f_k/d", Tension, Dimension.Stress, Sources.Get("li-noori-2021"), numbers.Symbol("k_t", "wall-tension-share"),
            Worksheet.Cited("f_k", "characteristic-strength", new Cited<double>(cob.Characteristic, source, cob.Tag), Dimension.Stress),
            Worksheet.Assumed("d", "strength-divisor", cob.Divisor, Dimension.Number, Sources.Get("mix-judgement")));
        var cracking = sheet.Step(
            "piece-cracking", "V_d", "A*f_t/min(1.5, max(1, h_v*t/A))*sqrt(1 + N/(A*f_t))", piece.Cracking, Dimension.Force, Sources.Get("turnsek-cacovic-memory"), area, ft, tall, t, n);
        var holds = sheet.Step("piece-holds", "V", "max(0.001*Nw, min(V_r, min(V_s, V_d)))", Math.Max(1e-3, piece.Holds), Dimension.Force, Mechanics, rocking, sliding, cracking, Worksheet.Code("Nw", "newton", 1, Dimension.Force, Sources.Get("mechanics")));
        var over = Worksheet.Computed("V_n", "piece-holds-across", Math.Max(1e-3, piece.HoldsAcross), Dimension.Force);
        var asked = top.Value * (along + across * holds.Value.Si / over.Value.Si);
        var part = sheet.Step(
            "pier-part", "F_p", "H*(s_a + s_n*V/V_n)", asked, Dimension.Force, Mechanics, h, Worksheet.Computed("s_a", "pier-part-along", along, Dimension.Number),
            Worksheet.Computed("s_n", "pier-part-across", across, Dimension.Number), holds, over);
        return (new MemberCheck(state.Combination.Key, state.Sense, part.Value, holds.Value, sheet.Done), new PierAlong("", piece.Mode, piece.Rocking, piece.Sliding, piece.Cracking, along));
    }
}

/// <summary>A piece of a pier that stands along the wall.</summary>
internal sealed record Piece
{
    /// <summary>Number of its stretch.</summary>
    public required int Stretch { get; init; }

    /// <summary>From end to end, clockwise.</summary>
    public required PlanPoint Along { get; init; }

    /// <summary>Square to that.</summary>
    public required PlanPoint Across { get; init; }

    /// <summary>Turning moment about the middle of the house of a force of one along it, m.</summary>
    public required double ArmAlong { get; init; }

    /// <summary>The same across it, m.</summary>
    public required double ArmAcross { get; init; }

    /// <summary>N, N.</summary>
    public required double Load { get; init; }

    /// <summary>m2.</summary>
    public required double Area { get; init; }

    /// <summary>m.</summary>
    public required double Thickness { get; init; }

    /// <summary>From where it stands alone to the wall top, m.</summary>
    public required double Height { get; init; }

    /// <summary>From its middle to where it tips along the wall, m.</summary>
    public required double Reach { get; init; }

    /// <summary>N.</summary>
    public required double Rocking { get; init; }

    /// <summary>N.</summary>
    public required double Sliding { get; init; }

    /// <summary>N.</summary>
    public required double Cracking { get; init; }

    /// <summary>Tipping across the wall, N.</summary>
    public required double RockingAcross { get; init; }

    public double Holds => Math.Min(Rocking, Math.Min(Sliding, Cracking));

    public double HoldsAcross => Math.Min(RockingAcross, Sliding);

    public string Mode => Rocking <= Math.Min(Sliding, Cracking) ? "rocking" : Sliding <= Cracking ? "sliding" : "cracking";
}
