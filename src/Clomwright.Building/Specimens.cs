using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>A mix that was tried.</summary>
/// <param name="Name">What tests call it: <c>B</c>.</param>
/// <param name="Recipe">Its parts.</param>
public sealed record MixTrial(string Name, Recipe Recipe)
{
    /// <summary>When it was mixed.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>A remark.</summary>
    public string? Note { get; init; }
}

/// <summary>A shrinkage bar.</summary>
/// <param name="Length">Of the wet bar.</param>
/// <param name="Shrinkage">Total shortening when dry.</param>
public sealed record TestBar(Length Length, Length Shrinkage)
{
    /// <summary>Across the wet bar.</summary>
    public Length? Width { get; init; }

    /// <summary>How deep the wet bar was.</summary>
    public Length? Depth { get; init; }

    /// <summary>Whether it cracked across and the pieces were pushed together before it was read.</summary>
    public bool Cracked { get; init; }

    /// <summary>The trial it was made of; null for the mix of the recipe.</summary>
    public string? Trial { get; init; }

    /// <summary>When it was read.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Who read it.</summary>
    public string? Tester { get; init; }
}

/// <summary>How a compression specimen was formed.</summary>
public enum SpecimenShape
{
    /// <summary>Four-sided and taller than wide, or of any other proportion.</summary>
    Prism,

    /// <summary>As tall as wide.</summary>
    Cube,

    /// <summary>Round: width and depth are its diameter.</summary>
    Cylinder,
}

/// <summary>What a specimen was made from.</summary>
public enum SpecimenOrigin
{
    /// <summary>A batch mixed to be tested.</summary>
    Batch,

    /// <summary>The cob that was being laid on the wall.</summary>
    Wall,
}

/// <summary>A compression specimen crushed.</summary>
/// <param name="Width">Of the loaded face.</param>
/// <param name="Depth">Of the loaded face.</param>
/// <param name="Height">In the direction of load.</param>
/// <param name="FailureLoad">At which it broke.</param>
/// <param name="CuredDays">Days of drying.</param>
/// <param name="Oven">Dried in an oven.</param>
public sealed record Prism(Length Width, Length Depth, Length Height, Force FailureLoad, int CuredDays, bool Oven = false)
{
    /// <summary>How it was formed.</summary>
    public SpecimenShape Shape { get; init; }

    /// <summary>What it was made from.</summary>
    public SpecimenOrigin From { get; init; }

    /// <summary>The trial it was made of; null for the mix of the recipe.</summary>
    public string? Trial { get; init; }

    /// <summary>What it weighed when it was crushed.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Water in it when it was crushed, by dry mass.</summary>
    public Share? Moisture { get; init; }

    /// <summary>When it was crushed.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Who crushed it.</summary>
    public string? Tester { get; init; }
}

/// <summary>A brick laid on two bars and broken by a third in the middle.</summary>
/// <param name="Width">Across, square to the span.</param>
/// <param name="Depth">In the direction of load.</param>
/// <param name="Span">Between the two bars.</param>
/// <param name="FailureLoad">At which it broke.</param>
/// <param name="CuredDays">Days of drying.</param>
/// <param name="Oven">Dried in an oven.</param>
public sealed record Brick(Length Width, Length Depth, Length Span, Force FailureLoad, int CuredDays, bool Oven = false)
{
    /// <summary>The trial it was made of; null for the mix of the recipe.</summary>
    public string? Trial { get; init; }

    /// <summary>When it was broken.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Who broke it.</summary>
    public string? Tester { get; init; }
}

/// <summary>What a dropped brick did.</summary>
public enum DropOutcome
{
    /// <summary>It stayed whole, or lost no more than a corner.</summary>
    Whole,

    /// <summary>It broke in two.</summary>
    Halved,

    /// <summary>It broke to pieces.</summary>
    Shattered,
}

/// <summary>A dry brick dropped on a corner onto hard ground.</summary>
/// <param name="Height">Of the fall.</param>
/// <param name="Outcome">What it did.</param>
public sealed record Drop(Length Height, DropOutcome Outcome)
{
    /// <summary>The trial it was made of; null for the mix of the recipe.</summary>
    public string? Trial { get; init; }

    /// <summary>When.</summary>
    public DateOnly? Date { get; init; }
}

/// <summary>How a brick was worn by water.</summary>
public enum ErosionKind
{
    /// <summary>A jet of 50 kPa from 470 mm.</summary>
    Spray,

    /// <summary>100 ml dripped from 400 mm.</summary>
    Drip,
}

/// <summary>A brick worn by water.</summary>
/// <param name="Kind">Spray or drip.</param>
/// <param name="Depth">Of the pit.</param>
/// <param name="Minutes">How long; a drip runs 20 to 60 minutes.</param>
public sealed record Erosion(ErosionKind Kind, Length Depth, double Minutes)
{
    /// <summary>The trial it was made of; null for the mix of the recipe.</summary>
    public string? Trial { get; init; }

    /// <summary>When.</summary>
    public DateOnly? Date { get; init; }
}

/// <summary>A block of the wall's own mix weighed as it dries, to find how fast this wall dries.</summary>
/// <param name="Width">Of the fresh block.</param>
/// <param name="Depth">Of the fresh block.</param>
/// <param name="Height">Of the fresh block.</param>
/// <param name="OpenFaces">Faces that air reaches, 1 to 6.</param>
public sealed record DryingBlock(Length Width, Length Depth, Length Height, int OpenFaces)
{
    /// <summary>Its mass when fully dry; null until it is.</summary>
    public Mass? DryMass { get; init; }

    /// <summary>The trial it was made of; null for the mix of the recipe.</summary>
    public string? Trial { get; init; }

    /// <summary>Its mass over the days, in order.</summary>
    public Sequence<Weighing> Weighings { get; init; }
}

/// <summary>One weighing.</summary>
/// <param name="Day">Days since the block was made.</param>
/// <param name="Mass">What it weighed.</param>
public sealed record Weighing(double Day, Mass Mass);
