namespace Clomwright.Web.Scenes;

/// <summary>The roof as the page draws it: lengths in metres, every word and every written number already text. Nothing is computed from it.</summary>
public sealed record RoofScene
{
    /// <summary>reciprocal, radial, shed, gable or none.</summary>
    public required string Kind { get; init; }

    /// <summary>Why nothing holds the roof, if nothing does.</summary>
    public required string? Trouble { get; init; }

    /// <summary>The knobs of this kind of roof.</summary>
    public required IReadOnlyList<KnobCard> Knobs { get; init; }

    /// <summary>The roof from above.</summary>
    public required RoofPlanView Plan { get; init; }

    /// <summary>The first pole from the side; null where no pole is placed.</summary>
    public required RoofSectionView? Section { get; init; }

    /// <summary>Pitch and what else follows, as label and value.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>States of load, in their order.</summary>
    public required IReadOnlyList<StageLine> Stages { get; init; }

    /// <summary>Which combination of loads asks most, in one sentence; null where none is known.</summary>
    public required string? Governs { get; init; }

    /// <summary>What has least to spare, at most five, tightest first.</summary>
    public required IReadOnlyList<TightLine> Tightest { get; init; }

    /// <summary>Findings of the roof and what carries it, and whatever else falls short in the house.</summary>
    public required IReadOnlyList<FindingLine> Findings { get; init; }

    /// <summary>Those findings counted.</summary>
    public required Totals Totals { get; init; }

    /// <summary>The findings of the whole house, counted.</summary>
    public required string House { get; init; }

    /// <summary>What is wrong or odd in the description.</summary>
    public required IReadOnlyList<DiagnosticLine> Diagnostics { get; init; }
}

/// <summary>A knob: where it stands on its tape and what is written in its blank.</summary>
/// <param name="Key">Which.</param>
/// <param name="Label">What it turns.</param>
/// <param name="Text">Its value as a builder writes it.</param>
/// <param name="Now">Where it stands, in steps.</param>
/// <param name="Least">The lowest mark of its tape.</param>
/// <param name="Most">The highest mark of its tape.</param>
/// <param name="Choices">Words to choose from instead of a tape, each as value and label; empty for a tape.</param>
public sealed record KnobCard(string Key, string Label, string Text, double Now, int Least, int Most, IReadOnlyList<KnobChoice> Choices);

/// <summary>One of the words that a knob may stand on.</summary>
public sealed record KnobChoice(string Value, string Label);

/// <summary>A state of load.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Name">In words.</param>
/// <param name="Crossing">Most at a crossing or inner support.</param>
/// <param name="Least">Least there.</param>
/// <param name="Opens">A crossing is pulled open.</param>
/// <param name="Plate">Most on the bond beam.</param>
/// <param name="Bending">Largest bending stress.</param>
/// <param name="Allowed">What the timber takes for so long; null where that is not checked.</param>
/// <param name="Use">Share of it that is used, in words.</param>
/// <param name="Standing">short, met or unchecked.</param>
/// <param name="NotChecked">Why it is not, where it is not.</param>
public sealed record StageLine(
    string Key, string Name, string? Crossing, string? Least, bool Opens, string? Plate, string? Bending, string? Allowed, string? Use, string Standing, string? NotChecked);

/// <summary>One of the tightest findings as a bar.</summary>
/// <param name="Id">The finding.</param>
/// <param name="Standing">short or met.</param>
/// <param name="What">Which thing and what is asked of it.</param>
/// <param name="Used">Share of the limit that is used, in words.</param>
/// <param name="Share">How much of the bar is filled; 1 is the limit, which stands at four fifths of its length.</param>
public sealed record TightLine(string Id, string Standing, string What, string Used, double Share);

/// <summary>The roof from above; points are [east, north].</summary>
public sealed record RoofPlanView
{
    /// <summary>Inside face at the wall top.</summary>
    public required double[][] Inside { get; init; }

    /// <summary>Outside face at the wall top.</summary>
    public required double[][] Outside { get; init; }

    /// <summary>Inner and outer edge of the bond beam; none without one.</summary>
    public required IReadOnlyList<double[][]> BondBeam { get; init; }

    /// <summary>Edge of the roof; null without a roof.</summary>
    public required double[][]? Eave { get; init; }

    /// <summary>Openings below, cut through the wall.</summary>
    public required IReadOnlyList<PlanOpening> Openings { get; init; }

    /// <summary>The circle of the ring as a polygon; null where there is none.</summary>
    public required double[][]? Ring { get; init; }

    /// <summary>Poles in the order in which they are drawn: each lies over those before it.</summary>
    public required IReadOnlyList<PoleShape> Poles { get; init; }

    /// <summary>The end of the last pole drawn once more, where it lies over the first; open outlines.</summary>
    public required IReadOnlyList<double[][]> Over { get; init; }

    /// <summary>Where poles land on the bond beam.</summary>
    public required IReadOnlyList<LandingShape> Landings { get; init; }

    /// <summary>Where findings point.</summary>
    public required IReadOnlyList<PlanMark> Marks { get; init; }

    /// <summary>West, east, south and north of what is drawn.</summary>
    public required double[] Extent { get; init; }
}

/// <summary>A pole in plan.</summary>
/// <param name="Number">As written on it.</param>
/// <param name="Label">Said aloud.</param>
/// <param name="Outline">Its corners; of two side by side also the line where they touch.</param>
/// <param name="Butt">Where its number stands, past the eave.</param>
/// <param name="Standing">The worst of what the rules say of it.</param>
/// <param name="Tightest">None is nearer to what it can carry.</param>
public sealed record PoleShape(string Number, string Label, double[][] Outline, double[] Butt, string Standing, bool Tightest);

/// <summary>A landing, and how far its seat is from the nearest opening.</summary>
/// <param name="At">On the bond beam.</param>
/// <param name="Secondary">Of a pole between the main ones.</param>
/// <param name="Margin">Distance to the nearest opening; null where there is none.</param>
/// <param name="LabelAt">Where that is written.</param>
/// <param name="Standing">What the rule of the seat says.</param>
public sealed record LandingShape(double[] At, bool Secondary, string? Margin, double[] LabelAt, string Standing);

/// <summary>Where a finding points in plan.</summary>
public sealed record PlanMark(string Id, double[] At);

/// <summary>A pole from the side, from the eave on the left to the ring; points are [along the pole in plan from its foot, up from the axis at the bond beam].</summary>
public sealed record RoofSectionView
{
    /// <summary>Said aloud.</summary>
    public required string Label { get; init; }

    /// <summary>The pole.</summary>
    public required double[][] Pole { get; init; }

    /// <summary>The cob under it, cut off below.</summary>
    public required double[][] Wall { get; init; }

    /// <summary>The bond beam; null without one.</summary>
    public required double[][]? BondBeam { get; init; }

    /// <summary>Deck and layers from the bottom up.</summary>
    public required IReadOnlyList<LayerShape> Layers { get; init; }

    /// <summary>The edge board; null without one.</summary>
    public required double[][]? EdgeBoard { get; init; }

    /// <summary>Poles that cross this one, cut: [along, up, diameter].</summary>
    public required IReadOnlyList<double[]> Crossings { get; init; }

    /// <summary>Post, ring, ridge or high wall that carries the upper end, as a line; empty for a reciprocal frame.</summary>
    public required double[][] Support { get; init; }

    /// <summary>Notes on the drawing: text, the point it belongs to.</summary>
    public required IReadOnlyList<SectionNote> Notes { get; init; }

    /// <summary>Left, right, bottom and top of what is drawn.</summary>
    public required double[] Extent { get; init; }
}

/// <summary>A layer in section.</summary>
/// <param name="Name">As the author calls it, with its depth.</param>
/// <param name="Kind">deck, thin, layer or top.</param>
/// <param name="Outline">Its outline.</param>
/// <param name="Pin">A point in it that a label may be led from.</param>
public sealed record LayerShape(string Name, string Kind, double[][] Outline, double[] Pin);

/// <summary>A written measure in section.</summary>
/// <param name="Kind">pitch, rise, drop or eave.</param>
/// <param name="Text">What is written.</param>
/// <param name="From">One end of what is measured.</param>
/// <param name="To">Its other end.</param>
public sealed record SectionNote(string Kind, string Text, double[] From, double[] To);
