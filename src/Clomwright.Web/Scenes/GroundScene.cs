namespace Clomwright.Web.Scenes;

/// <summary>The plan and what lies under the wall, as the page draws them. Lengths in metres.</summary>
public sealed record GroundScene
{
    /// <summary>The plan with its openings and zero mark.</summary>
    public required PlanKey Plan { get; init; }

    /// <summary>The points through which a plan is drawn, east and north, clockwise; empty for a plan of another shape.</summary>
    public required IReadOnlyList<GroundPoint> Points { get; init; }

    /// <summary>Where bearings are sighted from.</summary>
    public required double[] Peg { get; init; }

    /// <summary>Across and along of the plan, and what is inside it.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>A cut through wall, stem, trench and floor.</summary>
    public required SectionView Section { get; init; }

    /// <summary>What the rules adopted may be, and whether they are.</summary>
    public required IReadOnlyList<BodyLine> Bodies { get; init; }

    /// <summary>Questions that a person has to answer, and what was answered.</summary>
    public required IReadOnlyList<QuestionLine> Questions { get; init; }

    /// <summary>Clauses of adopted rules whose number somebody has to read in the code.</summary>
    public required IReadOnlyList<LimitLine> Limits { get; init; }

    /// <summary>The findings of the whole house, counted.</summary>
    public required string House { get; init; }

    /// <summary>What is wrong or odd in the description.</summary>
    public required IReadOnlyList<DiagnosticLine> Diagnostics { get; init; }
}

/// <summary>A point of a drawn plan.</summary>
/// <param name="At">East and north.</param>
/// <param name="Label">Its number and place, said aloud.</param>
public sealed record GroundPoint(double[] At, string Label);

/// <summary>A cut, outward to the right and up.</summary>
/// <param name="Label">The picture, said aloud.</param>
/// <param name="Parts">What is cut: a kind for its hatch, and an outline.</param>
/// <param name="Lines">Levels: a kind, from, to and words.</param>
/// <param name="Extent">Left, right, bottom, top.</param>
public sealed record SectionView(string Label, IReadOnlyList<SectionPart> Parts, IReadOnlyList<SectionLine> Lines, double[] Extent);

/// <summary>A part that is cut.</summary>
/// <param name="Kind">cob, stem, trench, beam or floor.</param>
/// <param name="Outline">Corners.</param>
public sealed record SectionPart(string Kind, double[][] Outline);

/// <summary>A level in a cut.</summary>
/// <param name="Kind">floor, grade, frost or damp.</param>
/// <param name="From">Left end.</param>
/// <param name="To">Right end.</param>
/// <param name="Words">Beside it.</param>
public sealed record SectionLine(string Kind, double[] From, double[] To, string Words);

/// <summary>A body of rules that may be adopted.</summary>
/// <param name="Name">Of its title, in words.</param>
/// <param name="Blank">Adopted or not.</param>
public sealed record BodyLine(string Name, Forms.FormBlank Blank);

/// <summary>A question to a person.</summary>
/// <param name="Question">Our rule key.</param>
/// <param name="Ask">In words.</param>
/// <param name="Answer">Path of the answer that stands; null where none does.</param>
/// <param name="Blanks">What is written to answer it, by key, or of the answer that stands.</param>
public sealed record QuestionLine(string Question, string Ask, string? Answer, IReadOnlyList<Forms.FormBlank> Blanks);

/// <summary>A number to be read in a code.</summary>
/// <param name="Body">Body and edition.</param>
/// <param name="Rule">Our rule key.</param>
/// <param name="Name">The clause and what it asks, in words.</param>
/// <param name="Entered">Path of the number that stands; null where none does.</param>
/// <param name="Blanks">What is written to enter it, by key, or of the number that stands.</param>
public sealed record LimitLine(string Body, string Rule, string Name, string? Entered, IReadOnlyList<Forms.FormBlank> Blanks);
