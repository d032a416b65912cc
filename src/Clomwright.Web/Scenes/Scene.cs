namespace Clomwright.Web.Scenes;

/// <summary>What the page draws: lengths in metres, every word and every written number already text. Nothing is computed from it.</summary>
public sealed record Scene : IAfterAnother
{
    /// <summary>The scene that the page has; null where this is a whole one.</summary>
    internal Scene? Before { get; init; }

    object? IAfterAnother.Before => Before;

    /// <summary>Length of the ring along the inside face at the wall base.</summary>
    public required double Ring { get; init; }

    /// <summary>The lowest height shown.</summary>
    public required double Bottom { get; init; }

    /// <summary>The highest height shown: the top of the bond beam.</summary>
    public required double Top { get; init; }

    /// <summary>The ruler of heights.</summary>
    public required IReadOnlyList<Tick> Heights { get; init; }

    /// <summary>Lifts, bottom up.</summary>
    public required IReadOnlyList<LiftLine> Lifts { get; init; }

    /// <summary>inside or outside: where the wall is seen from.</summary>
    public required string Face { get; init; }

    /// <summary>The wall unrolled, from that side.</summary>
    public required FaceView View { get; init; }

    /// <summary>Openings, in the order of the house file.</summary>
    public required IReadOnlyList<OpeningCard> Openings { get; init; }

    /// <summary>Niches and what is built in, in the order of the house file.</summary>
    public required IReadOnlyList<BuiltInCard> Parts { get; init; }

    /// <summary>Piers, clockwise.</summary>
    public required IReadOnlyList<PierLine> Piers { get; init; }

    /// <summary>Findings: what falls short first, then what is not checked, then what a person judges, then what is met. Only new ones where <see cref="Order"/> says how they go with those of before.</summary>
    public required IReadOnlyList<FindingLine> Findings { get; init; }

    /// <summary>Something is in hand: findings that are <see cref="FindingLine.Computed"/> are those of a moment ago.</summary>
    public bool InHand { get; init; }

    /// <summary>The number under which this was sent.</summary>
    public long Edition { get; init; }

    /// <summary>The number of the scene that the page has and may keep; null where all is here.</summary>
    public long? Since { get; init; }

    /// <summary>For every finding, in order, its place among those of <see cref="Since"/>, or -1 - k for number k of <see cref="Findings"/>; null where all are here.</summary>
    public IReadOnlyList<int>? Order { get; init; }

    /// <summary>Findings counted.</summary>
    public required Totals Totals { get; init; }

    /// <summary>Amounts, as label and value.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>The plan.</summary>
    public required PlanKey Plan { get; init; }

    /// <summary>What is wrong or odd in the description.</summary>
    public required IReadOnlyList<DiagnosticLine> Diagnostics { get; init; }
}

/// <summary>A mark on a ruler.</summary>
public sealed record Tick(double At, string? Label, bool Major);

/// <summary>One lift, in words.</summary>
public sealed record LiftLine(string Number, double Bottom, double Top, string TopText, string Volume, string? Batches, string? Rise);

/// <summary>An opening, in words, and how far it may be dragged.</summary>
public sealed record OpeningCard
{
    /// <summary>The author's name.</summary>
    public required string Name { get; init; }

    /// <summary>Its path, as in diagnostics.</summary>
    public required string Path { get; init; }

    /// <summary>Said aloud: where it stands and how large it is.</summary>
    public required string Label { get; init; }

    /// <summary>What it is, kebab case.</summary>
    public required string Kind { get; init; }

    /// <summary>Station of its middle.</summary>
    public required double Station { get; init; }

    /// <summary>Sill.</summary>
    public required double Sill { get; init; }

    /// <summary>The lowest sill it can be dragged to.</summary>
    public required double SillMin { get; init; }

    /// <summary>The highest sill it can be dragged to.</summary>
    public required double SillMax { get; init; }

    /// <summary>Dragged along the wall only.</summary>
    public required bool AlongOnly { get; init; }

    /// <summary>What stands in the blanks of its sentence.</summary>
    public required OpeningFields Fields { get; init; }

    /// <summary>Why it could not be placed, if it could not.</summary>
    public string? Trouble { get; init; }
}

/// <summary>A niche or something built in, and how far it may be dragged.</summary>
/// <param name="Name">The author's name.</param>
/// <param name="Path">Its path, as in diagnostics.</param>
/// <param name="Kind">niche, or the kind of what is built in.</param>
/// <param name="Label">Said aloud: what it is and where it stands.</param>
/// <param name="Station">Of its middle, of the first of a row; null where it could not be placed.</param>
/// <param name="Sill">Its sill, or its middle.</param>
/// <param name="SillMin">The lowest it can be dragged to.</param>
/// <param name="SillMax">The highest.</param>
public sealed record BuiltInCard(string Name, string Path, string Kind, string Label, double? Station, double Sill, double SillMin, double SillMax);

/// <summary>The blanks of an opening's sentence, written as a builder writes.</summary>
public sealed record OpeningFields(string Station, string Sill, string Width, string Height);

/// <summary>A pier, in words. <see cref="Standing"/> is the worst of what the rules say of it.</summary>
public sealed record PierLine(string Address, string Label, string Width, string Standing);

/// <summary>A finding, in words.</summary>
public sealed record FindingLine
{
    /// <summary>Stays the same from scene to scene: rule body, rule, subject.</summary>
    public required string Id { get; init; }

    /// <summary>The number at its place on the drawing; none for what is met.</summary>
    public required int? Number { get; init; }

    /// <summary>short, unchecked, judgement, met or none.</summary>
    public required string Standing { get; init; }

    /// <summary>What the rule is about.</summary>
    public required string Title { get; init; }

    /// <summary>Which thing.</summary>
    public required string Subject { get; init; }

    /// <summary>What was found, compared, or is missing.</summary>
    public required string Sentence { get; init; }

    /// <summary>Whose rule it is, and how sure we are of it.</summary>
    public required string By { get; init; }

    /// <summary>Rivals, reasons, what would mend it.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Said of what was computed of the house, which takes longer than a hand waits; not of where everything stands alone.</summary>
    public bool Computed { get; init; }
}

/// <summary>Findings counted, and the line that says so.</summary>
public sealed record Totals(int Met, int FallsShort, int Unchecked, int Judgement, string Line);

/// <summary>A label and its value.</summary>
public sealed record Figure(string Label, string Value);

/// <summary>A diagnostic, in words.</summary>
public sealed record DiagnosticLine(string Path, string Sentence, bool Error);
