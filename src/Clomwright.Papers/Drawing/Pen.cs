namespace Clomwright.Papers.Drawing;

/// <summary>Named line weights. Weight is the one accent of these papers; there is no colour.</summary>
public enum Weight
{
    /// <summary>Hatching and rulings of tables, 0.13 mm.</summary>
    Hair,

    /// <summary>Dimension lines, lift lines, leaders, 0.18 mm.</summary>
    Thin,

    /// <summary>Outlines of things seen, 0.35 mm.</summary>
    Medium,

    /// <summary>Outlines of things cut, 0.6 mm.</summary>
    Heavy,

    /// <summary>The rule under a title and the ground line, 1.0 mm.</summary>
    Bold,
}

/// <summary>How a line is broken.</summary>
public enum Dash
{
    /// <summary>Unbroken.</summary>
    Solid,

    /// <summary>Hidden things.</summary>
    Dashed,

    /// <summary>Faint guides.</summary>
    Dotted,

    /// <summary>Axes and centre lines.</summary>
    Chain,
}

/// <summary>A line as drawn.</summary>
public readonly record struct Pen(Weight Weight, Dash Dash = Dash.Solid)
{
    /// <summary>Width on paper, mm.</summary>
    public double Width => Weight switch
    {
        Weight.Hair => 0.13,
        Weight.Thin => 0.18,
        Weight.Medium => 0.35,
        Weight.Heavy => 0.6,
        _ => 1.0,
    };

    /// <summary>Lengths of line and gap in turn, mm; empty for an unbroken line.</summary>
    public ReadOnlySpan<double> Pattern => Dash switch
    {
        Dash.Dashed => Dashed,
        Dash.Dotted => Dotted,
        Dash.Chain => Chain,
        _ => default,
    };

    private static ReadOnlySpan<double> Dashed => [2, 1];

    private static ReadOnlySpan<double> Dotted => [0.3, 1];

    private static ReadOnlySpan<double> Chain => [6, 1, 1, 1];
}

/// <summary>What an area is filled with.</summary>
public enum Tone
{
    /// <summary>Black.</summary>
    Ink,

    /// <summary>White, over what lies below.</summary>
    Paper,
}
