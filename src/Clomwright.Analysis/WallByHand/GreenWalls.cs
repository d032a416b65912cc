using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;
using EarthStrength = Clomwright.Analysis.Drying.Strength;
using WallTopOf = Clomwright.Analysis.WallTop.FromRoof;

namespace Clomwright.Analysis.WallByHand;

/// <summary>The wall while it is built.</summary>
/// <remarks>
/// Its foot is taken to have dried to its plastic limit while it stands free; what lies on it is wet where it presses and dry where it holds. The curve of the wall is not counted: a ring stands more. At a free end
/// the wind's coefficient grows with length over height (EN 1991-1-4 table 7.9, zone A without a return, recalled).
/// </remarks>
internal sealed class GreenWalls
{
    private static readonly (double Ratio, double Coefficient)[] Ends = [(3, 2.3), (5, 2.9), (10, 3.4)];

    private static readonly Source Mechanics = Sources.Get("mechanics");

    private readonly HouseGeometry geometry;
    private readonly RoofResult roof;
    private readonly WallNumbers numbers;
    private readonly DryingNumbers drying;
    private readonly Stretch[] stretches;
    private readonly EarthStrength cob;
    private readonly double foot, laidWater, lowestSill;

    public GreenWalls(HouseGeometry geometry, RoofResult roof, WallNumbers numbers, DryingNumbers drying)
    {
        (this.geometry, this.roof, this.numbers, this.drying) = (geometry, roof, numbers, drying);
        stretches = Stretch.Of(geometry);
        cob = WallRun.StrengthOf(drying, WallRun.EarthOf(drying));
        laidWater = WallRun.LaidWater(drying, geometry.House.Lifts.Method);
        foot = geometry.Wall.Base.Metres;
        lowestSill = geometry.Openings.Min(o => (double?)Math.Max(o.Sill, foot)) ?? double.PositiveInfinity;
    }

    private double Green => cob.Compressive(cob.PlasticLimit);

    public GreenWall Build()
    {
        var full = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        var open = double.IsFinite(lowestSill);
        var wind = Wind();
        var middle = Free("away from its ends", full, end: false, wind);
        Sequence<CheckedMember> free = open ? [middle, Free("at a free end", full, end: true, wind)] : [middle];
        var lifts = geometry.Lifts.Select(Lift).ToSequence();
        var drop = new PoleDrops(geometry, roof, numbers, WallTopOf.DryCob).Of(Green, cob.Compressive(laidWater) / 2);
        return new GreenWall
        {
            Lifts = lifts.Select(l => l.Told).ToSequence(), Free = free,
            BraceMiddle = Brace(full, end: false, wind), BraceEnd = open ? Brace(full, end: true, wind) : null,
            PoleDrop = drop,
            Calculations =
            [
                .. lifts.Count > 0 ? (Sequence<Calculation>)[lifts[^1].How] : [], .. free.Select(f => f.How).OfType<Calculation>(),
                .. drop.How is { } dropped ? (Sequence<Calculation>)[dropped] : [],
            ],
        };
    }

    /// <summary>Coefficient of a free end for a wall as long as the ring.</summary>
    /// <param name="ratio">Length over height.</param>
    public static double EndCoefficient(double ratio)
    {
        if (ratio <= Ends[0].Ratio)
        {
            return Ends[0].Coefficient;
        }

        for (var i = 1; i < Ends.Length; i++)
        {
            if (ratio <= Ends[i].Ratio)
            {
                return Ends[i - 1].Coefficient + (Ends[i].Coefficient - Ends[i - 1].Coefficient) * (ratio - Ends[i - 1].Ratio) / (Ends[i].Ratio - Ends[i - 1].Ratio);
            }
        }

        return Ends[^1].Coefficient;
    }

    private (GreenLift Told, Calculation How) Lift(LiftSlice lift)
    {
        var (top, height) = (lift.Top.Metres, lift.Top.Metres - foot);
        var hardest = stretches.SelectMany(s => new[] { s.Cut("foot"), s.Cut("sill") }.Where(c => c.Height < top)
            .Select(c => (Cut: c, Volume: Math.Max(0, s.CobAbove(c.Height) - s.CobAbove(top))))).MaxBy(x => x.Volume / x.Cut.Area);
        var word = WallRun.Word(geometry.House.Lifts.Method);
        var sheet = new Worksheet("green-wall");
        var v = Worksheet.Computed("V", "pier-cob-volume", hardest.Volume, Dimension.Volume);
        var area = Worksheet.Computed("A", "pier-area", hardest.Cut.Area, Dimension.Area);
        var wet = Worksheet.Assumed("rho", "cob-density-wet", WallTopOf.WetCob / UsUnits.Gravity, Dimension.Density, Sources.Get("cob-density-memory"));
        var pressure = sheet.Step("green-pressure", "s", "rho*g*V/A", WallTopOf.WetCob * hardest.Volume / hardest.Cut.Area, Dimension.Stress, Mechanics, wet, UsUnits.GravitySymbol, v, area);
        var needed = sheet.Step(
            "green-needed", "f_n", "F*s", drying["drying-safety-" + word] * pressure.Value.Si, Dimension.Stress, Sources.Get("drying-judgement"), drying.Symbol("F", "drying-safety-" + word), pressure);
        var water = Math.Min(laidWater, cob.WaterAt(needed.Value.Si));
        var standing = new FreeStanding(geometry.Wall, height, WallTopOf.DryCob, Green);
        var (air, middle, safety) = (numbers["wall-air-density"], numbers["wall-gust-middle"], numbers["wall-gust-safety"]);
        var end = top > lowestSill ? EndCoefficient(geometry.Curve.Length / height) : (double?)null;
        var holds = standing.Put(sheet);
        Symbol h = Worksheet.Computed("h", "wall-height-now", height, Dimension.Length), c = end is { } tip ? Worksheet.Code("C", "wind-free-end", tip, Dimension.Number, Sources.Get("en-1991-memory")) : numbers.Symbol("C", "wall-gust-middle");
        var gust = standing.Gust(end ?? middle, air, safety);
        var told = sheet.Step(
            "green-gust", "v", "sqrt(2*2*M_R/(h^2*F_v*rho_a*C*m))", Math.Sqrt(4 * holds.Value.Si / (height * height * safety * air * (end ?? middle))), Dimension.Speed, Mechanics,
            holds, h, numbers.Symbol("F_v", "wall-gust-safety"), numbers.Symbol("rho_a", "wall-air-density"), c, Worksheet.Code("m", "one-metre", 1, Dimension.Length, Sources.Get("mechanics")));
        var low = height < numbers["wall-lee-height"];
        var leave = sheet.Step("green-leave", "v_l", "min(v, v_m)", Math.Min(told.Value.Si, numbers["wall-gust-firm"]), Dimension.Speed, Sources.Get("masonry-bracing-2012"), told, numbers.Symbol("v_m", "wall-gust-firm"));
        return (new GreenLift(
            lift.Number, height, pressure.Value.Si, needed.Value.Si, water, standing.Gust(middle, air), end is { } e ? standing.Gust(e, air) : null,
            low ? null : leave.Value.Si, low ? null : Math.Min(gust, numbers["wall-gust-fresh"])), sheet.Done with { Place = $"lift {lift.Number}" });
    }

    /// <summary>The combination of the site's edition in which least weight stands against wind; or why there is none.</summary>
    private (Known<WindLoad> Wind, Combination? By) Wind()
    {
        var form = roof.Combined.States is [{ } first, ..] ? first.Combination.Form : LoadForm.AllowableStress;
        return LoadEditions.Parse(geometry.House.Site.Loads) is not { } edition ? (new Message("analysis.loads.no-edition"), null)
            : (roof.Wind, Combinations.Of(edition, form).FirstOrDefault(c => c.DeadIsLeast && c.Factor(LoadKind.Wind) > 0)
                ?? Combinations.Of(edition, LoadForm.Strength).First(c => c.DeadIsLeast && c.Factor(LoadKind.Wind) > 0));
    }

    private CheckedMember Free(string subject, double height, bool end, (Known<WindLoad> Wind, Combination? By) asked)
    {
        if (asked.Wind.Value is not { } wind || asked.By is not { } by)
        {
            return new CheckedMember("free-wall", subject, asked.Wind.NotChecked ?? new Message("analysis.loads.no-edition"));
        }

        var sheet = new Worksheet("free-wall");
        var standing = new FreeStanding(geometry.Wall, height, by.Factor(LoadKind.Dead) * WallTopOf.DryCob, Green);
        var holds = standing.Put(sheet);
        var pressure = Worksheet.Computed("p", "wind-free-wall", wind.FreeWall, Dimension.AreaLoad);
        var more = EndOver(height, end, wind.Edition);
        var turns = sheet.Step(
            "free-wall-turns", "M", "k*p*k_e*h^2/2*m", by.Factor(LoadKind.Wind) * wind.FreeWall * more * height * height / 2, Dimension.Force, Mechanics,
            Worksheet.Code("k", "wind-factor", by.Factor(LoadKind.Wind), Dimension.Number, by.Source), pressure, Worksheet.Code("k_e", "wind-end-over-middle", more, Dimension.Number, Sources.Get("en-1991-memory")),
            Worksheet.Computed("h", "wall-height", height, Dimension.Length), Worksheet.Code("m", "one-metre", 1, Dimension.Length, Sources.Get("mechanics")));
        return new CheckedMember("free-wall", subject, new MemberCheck(by.Key, "up", turns.Value, holds.Value, sheet.Done));
    }

    /// <summary>Wind at a free end over that on the middle of the wall.</summary>
    private double EndOver(double height, bool end, LoadEdition edition) =>
        end ? Math.Max(1, EndCoefficient(geometry.Curve.Length / height) / (edition == LoadEdition.En1990 ? 2.1 : numbers["wall-gust-middle"])) : 1;

    /// <summary>Found by halving: less wall stands longer.</summary>
    private double? Brace(double full, bool end, (Known<WindLoad> Wind, Combination? By) asked)
    {
        if (asked.Wind.Value is not { } wind || asked.By is not { } by || Stands(full))
        {
            return null;
        }

        var (low, high) = (1e-3, full);
        for (var i = 0; i < 50; i++)
        {
            var half = (low + high) / 2;
            (low, high) = Stands(half) ? (half, high) : (low, half);
        }

        return low;

        bool Stands(double height) => new FreeStanding(geometry.Wall, height, by.Factor(LoadKind.Dead) * WallTopOf.DryCob, Green).Tips >= by.Factor(LoadKind.Wind) * wind.FreeWall * EndOver(height, end, wind.Edition);
    }
}
