using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>A house of one's own to begin with: a ring of wall on a stem with a door, and nothing that has to be known of the place. What is usual stands in it to be changed; common practice, no source.</summary>
public static class BlankPlot
{
    /// <summary>The house.</summary>
    /// <param name="id">The author's short key.</param>
    /// <param name="name">The name that papers print.</param>
    /// <param name="units">Which units come first; its sizes are round in them.</param>
    /// <param name="plan">The inside face.</param>
    public static House Make(string id, string name, UnitSystem units, Plan plan)
    {
        Length Tape(long inches, long millimetres) => units == UnitSystem.Imperial ? Length.FromInches(inches) : Length.FromMillimetres(millimetres);
        return new House
        {
            Id = id, Name = name, Units = units, Plan = plan,
            Site = new Site { Grade = Tape(-12, -300) },
            Trench = new Trench(Tape(24, 600), Tape(24, 600)),
            Stem = new Stem(Tape(20, 500), Tape(8, 200)) { DampBreak = "slate" },
            Wall = new Wall(Tape(96, 2400), Tape(14, 360), new Slope(0.04)),
            Lifts = new LiftPlan { Height = Tape(12, 300) },
            Openings =
            [
                new Opening
                {
                    Name = "door", Kind = OpeningKind.Door, Along = Along.At(new Angle(180)), Width = Tape(36, 900), Height = Tape(80, 2000), Sill = Length.Zero,
                    Header = new Header(3, Tape(4, 100), Tape(6, 150), Tape(12, 300), units == UnitSystem.Imperial ? "douglas-fir-no2" : "c24"),
                },
            ],
            Rules = new RuleChoices { Adopted = ["common-practice"] },
        };
    }

    /// <summary>A plan of a shape and size, for a plot: across for a circle, else long and wide.</summary>
    /// <param name="shape">A word of <see cref="PlanShaping.Shapes"/>.</param>
    /// <param name="length">Across, or the longer inside dimension.</param>
    /// <param name="width">The shorter inside dimension; not asked of a circle.</param>
    /// <param name="units">Whose tape marks round off what is drawn.</param>
    public static Plan PlanOf(string shape, Length length, Length width, UnitSystem units) => shape switch
    {
        "round" => new Plan.Round(length),
        "oval" => new Plan.Oval(length, width),
        "path" => PlanShaping.As(new Plan.Oval(length, width), "path", units),
        _ => PlanShaping.As(new Plan.Oval(length, width), "rounded-rectangle", units),
    };
}
