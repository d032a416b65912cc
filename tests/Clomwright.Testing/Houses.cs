using Clomwright.Building;
using Clomwright.Evidence;
using CsCheck;

namespace Clomwright.Testing;

/// <summary>Houses to test with: random plausible ones, plain ones of one shape, and one complete house written by hand.</summary>
public static partial class Houses
{
    /// <summary>The longest name that a description may give (see <c>HouseDiagnostics.NameLengthMax</c>).</summary>
    private const int LongestName = 40;

    /// <summary>Plausible houses of every plan shape and roof kind, 1 to 7 openings by bearing or station, in either unit system. Their openings do not overlap and their heads fit under the wall top.</summary>
    public static Gen<House> Plausible { get; } = Gen.Enum<UnitSystem>().SelectMany(units => Of(new Tape(units), PlanDraws.Any, same => same));

    /// <summary>Plausible houses with a circle as plan.</summary>
    public static Gen<House> PlausibleRound { get; } = Gen.Enum<UnitSystem>().SelectMany(units => Of(new Tape(units), PlanDraws.Round, same => same));

    /// <summary>Plausible houses with an ellipse as plan.</summary>
    public static Gen<House> PlausibleOval { get; } = Gen.Enum<UnitSystem>().SelectMany(units => Of(new Tape(units), PlanDraws.Oval, same => same));

    /// <summary>Plausible houses with a rounded rectangle as plan.</summary>
    public static Gen<House> PlausibleRoundedRectangle { get; } = Gen.Enum<UnitSystem>().SelectMany(units => Of(new Tape(units), PlanDraws.RoundedRectangle, same => same));

    /// <summary>Plausible houses with a smooth path as plan.</summary>
    public static Gen<House> PlausiblePath { get; } = Gen.Enum<UnitSystem>().SelectMany(units => Of(new Tape(units), PlanDraws.Path, same => same));

    /// <summary>Plausible houses in which every name is as long and as wide as a name may be: for tests of layout.</summary>
    public static Gen<House> LongestNames { get; } = Gen.Enum<UnitSystem>().SelectMany(units => Of(new Tape(units), PlanDraws.Any, Longest))
        .Select(house => house with { Name = new string('W', LongestName) });

    /// <summary>A house without openings: stem 8 in above the floor, wall top 8 ft 2 in, 14 in at the top, no taper, lifts of 12 in.</summary>
    public static House Plain(Plan plan) => new()
    {
        Id = "plain",
        Name = "Plain house",
        Plan = plan,
        Stem = new Stem(Length.FromInches(20), Length.FromInches(8)),
        Wall = new Wall(Length.FromFeet(8, 2), Length.FromInches(14)),
        Lifts = new LiftPlan { Height = Length.FromInches(12) },
    };

    /// <summary>A plain house on a circle.</summary>
    public static House Round(Length insideDiameter) => Plain(new Plan.Round(insideDiameter));

    /// <summary>A plain house on an ellipse.</summary>
    public static House Oval(Length insideLength, Length insideWidth) => Plain(new Plan.Oval(insideLength, insideWidth));

    /// <summary>A plain house on a rounded rectangle.</summary>
    public static House RoundedRectangle(Length insideLength, Length insideWidth, Length cornerRadius) => Plain(new Plan.RoundedRectangle(insideLength, insideWidth, cornerRadius));

    /// <summary>A plain house on a smooth path through points.</summary>
    public static House Path(params PlanPosition[] points) => Plain(new Plan.Path(points.ToSequence()));

    /// <summary>A door of 3 ft by 6 ft 8 in with a header, by bearing.</summary>
    public static Opening Door(string name, double bearing) => new()
    {
        Name = name, Kind = OpeningKind.Door, Along = Along.At(new Angle(bearing)),
        Width = Length.FromFeet(3), Height = Length.FromFeet(6, 8), Sill = Length.Zero, Header = Header(12),
    };

    /// <summary>A fixed window with its sill at 3 ft and a header, by bearing.</summary>
    public static Opening Window(string name, double bearing, Length width, Length height) => new()
    {
        Name = name, Kind = OpeningKind.Fixed, Along = Along.At(new Angle(bearing)),
        Width = width, Height = height, Sill = Length.FromFeet(3), Header = Header(12),
    };

    /// <summary>Three full-sawn 5 by 6 in pieces.</summary>
    private static Header Header(long bearingInches) => new(3, Length.FromInches(5), Length.FromInches(6), Length.FromInches(bearingInches));

    private static string Longest(string name) => name + "-" + new string('w', LongestName - 1 - name.Length);

    private static Gen<House> Of(Tape tape, Func<Tape, Gen<PlanDraw>> plans, Func<string, string> name) =>
        from plan in plans(tape)
        from stemTop in tape.Between(0, 14)
        from wallTop in tape.Between(86, 104)
        from thickness in tape.Between(12, 18)
        from outside in Gen.Int[0, 14]
        from inside in Gen.Int[0, 4]
        from liftHeight in tape.Between(8, 24)
        from method in Gen.Enum<LiftMethod>()
        let wall = new Wall(wallTop, thickness, new Slope(outside / 200.0), new Slope(inside / 200.0))
        let stem = new Stem(tape.AtLeast(thickness.Inches + (outside + inside) / 200.0 * (wallTop - stemTop).Inches + 1), stemTop, method == LiftMethod.Forked ? "dry-stone" : "mortared-stone") { DampBreak = outside % 2 == 0 ? "slate" : null }
        from cut in new WallDraws(tape, plan, stem, wall, name).All
        from site in RestDraws.Site(tape, stemTop)
        from floor in Gen.Select(Gen.OneOf("gravel", "earth base", "earth finish"), tape.Between(1, 6), (n, d) => FinishDraws.Layer(n, d)).Array[0, 3]
        from trench in tape.Between(18, 30).Select(d => new Trench(stem.Width + tape.AtLeast(4), d)).OrNothing()
        from beam in tape.Between(3, 5).Select(d => new BondBeam(tape.AtLeast(10), d, Length.Zero)).OrNothing()
        from tees in tape.Between(24, 48).Select(s => new Tees(s, tape.AtLeast(24), tape.AtLeast(24))).OrNothing()
        from roof in RestDraws.Roof(tape, plan.LeastRadius).OrNothing()
        from finishes in Gen.Select(Gen.Enum<Face>(), Gen.OneOf("earth-plaster", "lime-plaster"), tape.Between(0.5, 1.5).OrNull(), (f, m, d) => FinishDraws.Finish(tape, f, m, d)).Array[0, 2]
        from mix in MixDraws.Mix(tape)
        from crew in RestDraws.Crew.OrNothing()
        from rules in RestDraws.Rules
        from notes in Gen.OneOf("Invented for a test.", "Invented: \"quotes\", back\\slash, tab\t and two\nlines, 45° and Łódź.").OrNothing()
        select new House
        {
            Id = "random-house", Name = name("house"), Notes = notes, Units = tape.Units, Site = site, Plan = plan.Plan,
            Floor = new Floor { Layers = floor.OrderBy(l => l.Role).ToSequence(), Oil = floor.Length > 1 ? new FloorOil("linseed", floor.Length) : null }, Trench = trench, Stem = stem, Wall = wall,
            Lifts = inside == 0 ? new LiftPlan { Tops = Tops(stemTop, wallTop, liftHeight), Method = method } : new LiftPlan { Height = liftHeight, Method = method },
            Openings = cut.Openings, Niches = cut.Niches, Embeds = cut.Embeds, BondBeam = beam, Tees = tees, Roof = roof,
            Finishes = finishes.ToSequence(), TestPanels = finishes.Select((f, i) => FinishDraws.Panel($"panel {i + 1}", f)).ToSequence(), Mix = mix, Assumed = crew is null ? [] : [new AssumedNumber("drying-wind", crew.HoursPerDay / 20) { Note = "an invented guess" }], Crew = crew, Rules = rules,
        };

    private static Sequence<Length> Tops(Length bottom, Length top, Length height)
    {
        var tops = new List<Length>();
        for (var next = bottom + height; next < top; next += height)
        {
            tops.Add(next);
        }

        tops.Add(top);
        return tops.ToSequence();
    }
}
