namespace Clomwright.Web.Scenes;

/// <summary>The earth as the page shows it: jar, triangle, recipe, tests, strength. Every word and every written number already text.</summary>
public sealed record EarthScene
{
    /// <summary>The jar.</summary>
    public required JarView Jar { get; init; }

    /// <summary>The triangle of sand, silt and clay.</summary>
    public required TriangleView Triangle { get; init; }

    /// <summary>Plasticity, density and wetness, each with whether it was given, measured or assumed.</summary>
    public required IReadOnlyList<Figure> Soil { get; init; }

    /// <summary>What hand tests say and what they do not.</summary>
    public required IReadOnlyList<Figure> HandTests { get; init; }

    /// <summary>Blanks of the recipe.</summary>
    public required IReadOnlyList<BlankCard> Recipe { get; init; }

    /// <summary>Blanks of what the crew carries.</summary>
    public required IReadOnlyList<BlankCard> Carried { get; init; }

    /// <summary>The recipe as written, and as the target asks.</summary>
    public required IReadOnlyList<RecipeView> Recipes { get; init; }

    /// <summary>The next test.</summary>
    public required NextView Next { get; init; }

    /// <summary>Bars.</summary>
    public required TestTable Bars { get; init; }

    /// <summary>Limits that bars are held to: name, share and source.</summary>
    public required IReadOnlyList<Figure> BarLimits { get; init; }

    /// <summary>Prisms.</summary>
    public required TestTable Prisms { get; init; }

    /// <summary>Bricks broken by bending.</summary>
    public required TestTable Bricks { get; init; }

    /// <summary>Bricks dropped.</summary>
    public required TestTable Drops { get; init; }

    /// <summary>Blocks weighed as they dry.</summary>
    public required TestTable Blocks { get; init; }

    /// <summary>The strength that may be counted on.</summary>
    public required StrengthView Strength { get; init; }

    /// <summary>What has least to spare of what is asked of the earth.</summary>
    public required IReadOnlyList<TightLine> Tightest { get; init; }

    /// <summary>Findings about the earth, and whatever else falls short.</summary>
    public required IReadOnlyList<FindingLine> Findings { get; init; }

    /// <summary>These findings counted.</summary>
    public required Totals Totals { get; init; }

    /// <summary>The findings of the whole house, counted.</summary>
    public required string House { get; init; }

    /// <summary>What is wrong or odd in the description.</summary>
    public required IReadOnlyList<DiagnosticLine> Diagnostics { get; init; }
}

/// <summary>A blank to write in, or words to choose from.</summary>
/// <param name="Key">Its address.</param>
/// <param name="Name">Which field of its part.</param>
/// <param name="Label">What it asks for.</param>
/// <param name="Text">What stands in it.</param>
/// <param name="Choices">Empty for a blank to write in.</param>
public sealed record BlankCard(string Key, string Name, string Label, string Text, IReadOnlyList<KnobChoice> Choices);

/// <summary>The jar: its blanks, its layers, when to mark it.</summary>
/// <param name="Blanks">Heights, column and water.</param>
/// <param name="Layers">From the bottom; empty while a layer is missing.</param>
/// <param name="Column">Height of the water's surface, m; null where nobody said.</param>
/// <param name="Label">The picture, said aloud.</param>
/// <param name="Times">When each size has settled: what, and after how long.</param>
/// <param name="Missing">What is missing for layers or times.</param>
/// <param name="Temperature">The water's temperature and whether it is given or assumed; null without times.</param>
public sealed record JarView(
    IReadOnlyList<BlankCard> Blanks, IReadOnlyList<JarLayer> Layers, double? Column, string Label, IReadOnlyList<Figure> Times, IReadOnlyList<string> Missing, string? Temperature);

/// <summary>A layer in the jar.</summary>
/// <param name="Kind">sand, silt or clay.</param>
/// <param name="Bottom">m from the bottom of the jar.</param>
/// <param name="Top">m.</param>
/// <param name="Text">Its share of the mass, in words.</param>
public sealed record JarLayer(string Kind, double Bottom, double Top, string Text);

/// <summary>The triangle. Points are [right, up] in shares of one: sand at [0, 0], silt at [1, 0], clay at [0.5, 1].</summary>
/// <param name="Fields">The twelve classes.</param>
/// <param name="Soil">The soil of the jar; null until it is read.</param>
/// <param name="Class">Key of its class; null until it is read.</param>
/// <param name="Named">The soil and its class in words, or why it is not known.</param>
/// <param name="Shares">Sand, silt and clay in words; null until it is read.</param>
/// <param name="Source">Whose classes they are.</param>
public sealed record TriangleView(IReadOnlyList<TriangleField> Fields, double[]? Soil, string? Class, string Named, string? Shares, string Source);

/// <summary>A class in the triangle.</summary>
/// <param name="Key">Of the class.</param>
/// <param name="Name">In words.</param>
/// <param name="Outline">Its corners.</param>
/// <param name="Middle">Where its name stands.</param>
public sealed record TriangleField(string Key, string Name, double[][] Outline, double[] Middle);

/// <summary>One batch in what the crew carries.</summary>
/// <param name="Key">written or target.</param>
/// <param name="Title">In words.</param>
/// <param name="Lines">Soil, clay, sand, water, straw.</param>
/// <param name="Missing">Why it is not known; null when it is.</param>
public sealed record RecipeView(string Key, string Title, IReadOnlyList<Figure> Lines, string? Missing);

/// <summary>The next test and why.</summary>
public sealed record NextView(string Key, string What, string Because);

/// <summary>Tests of one kind.</summary>
/// <param name="Rows">As they stand in the house file.</param>
/// <param name="New">Blanks of one to be added.</param>
public sealed record TestTable(IReadOnlyList<TestRow> Rows, IReadOnlyList<BlankCard> New);

/// <summary>One test.</summary>
/// <param name="Title">Which, in words.</param>
/// <param name="Blanks">What was measured.</param>
/// <param name="Reads">What it comes to.</param>
/// <param name="Counts">It says something of the mix in the wall.</param>
/// <param name="Notes">How it stands against limits, or why it does not count.</param>
public sealed record TestRow(string Title, IReadOnlyList<BlankCard> Blanks, string Reads, bool Counts, IReadOnlyList<string> Notes);

/// <summary>The strength that may be counted on.</summary>
/// <param name="Tag">measured or assumed.</param>
/// <param name="Word">The same in words.</param>
/// <param name="Lines">Characteristic, allowed, mean, scatter.</param>
/// <param name="Why">Whose, when and how.</param>
/// <param name="ByRule">What published rules make of the sample, or why they make nothing.</param>
/// <param name="Missing">What is missing, in the order in which it matters.</param>
public sealed record StrengthView(string Tag, string Word, IReadOnlyList<Figure> Lines, string Why, IReadOnlyList<Figure> ByRule, IReadOnlyList<string> Missing);
