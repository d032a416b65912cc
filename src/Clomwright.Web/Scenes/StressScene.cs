namespace Clomwright.Web.Scenes;

/// <summary>The stress of a wall: null while it is being worked out; or one sentence why there is none.</summary>
/// <param name="Scene">The picture; null until it is there.</param>
/// <param name="Trouble">Why there is none.</param>
public sealed record StressAnswer(StressScene? Scene, string? Trouble);

/// <summary>What the wall carries while an opening is in hand.</summary>
/// <param name="Revision">Of the house that it was worked out for.</param>
/// <param name="Picture">The picture, in the few cases that governed when the opening was taken in hand; null where the wall cannot be followed there.</param>
/// <param name="NotFollowed">Why there is no picture, in a sentence; null where there is one.</param>
public sealed record LiveAnswer(long Revision, StressPicture? Picture, string? NotFollowed);

/// <summary>What the wall carries by the model of the whole wall, as the page draws it. Points as in <see cref="FaceView"/>; every word already text.</summary>
public sealed record StressScene
{
    /// <summary>Why nothing is known; null when it is.</summary>
    public required string? NotChecked { get; init; }

    /// <summary>inside or outside: where the wall is seen from.</summary>
    public required string Face { get; init; }

    /// <summary>Of the house that it was worked out for.</summary>
    public required long Revision { get; init; }

    /// <summary>The hatchings, each laid over those before it.</summary>
    public required IReadOnlyList<StressBand> Bands { get; init; }

    /// <summary>The dots of tension.</summary>
    public required StressBand Tension { get; init; }

    /// <summary>The wall; null where nothing is known.</summary>
    public required StressPicture? Picture { get; init; }

    /// <summary>Where the wall may crack first, hardest first.</summary>
    public required IReadOnlyList<string> Zones { get; init; }

    /// <summary>What the model says of itself: foot, size, balance, and what moved when it was made finer.</summary>
    public required IReadOnlyList<string> Trust { get; init; }

    /// <summary>What the rules say of it.</summary>
    public required IReadOnlyList<FindingLine> Findings { get; init; }

    /// <summary>All findings of the house counted, these among them.</summary>
    public required Totals Totals { get; init; }
}

/// <summary>What changes while an opening is moved.</summary>
public sealed record StressPicture
{
    /// <summary>The stress of the face.</summary>
    public required StressField Field { get; init; }

    /// <summary>The hardest edge of each pier.</summary>
    public required IReadOnlyList<StressMark> Piers { get; init; }

    /// <summary>What has least to spare, tightest first, with the case that governs it.</summary>
    public required IReadOnlyList<StressLine> Tightest { get; init; }
}

/// <summary>The stress of a face at the middles of its stacks, in whole hundredths; into openings and timber it is carried on.</summary>
/// <param name="X">Where the middle of each column of stacks lies, m from the left edge, ascending.</param>
/// <param name="Y">Heights: the foot, the middle of each row, the top, m.</param>
/// <param name="Pressed">Pressure as a share of what is allowed, a byte for each stack, column by column, from the foot up; base 64.</param>
/// <param name="Pulled">The same for tension, as a share of the level from which it counts.</param>
public sealed record StressField(IReadOnlyList<double> X, IReadOnlyList<double> Y, string Pressed, string Pulled);

/// <summary>A hatching and what it stands for.</summary>
/// <param name="Says">In words.</param>
/// <param name="From">From how many hundredths on.</param>
public sealed record StressBand(string Says, int From);

/// <summary>The hardest edge of a pier.</summary>
/// <param name="Pier">Its address.</param>
/// <param name="Used">Share of what is allowed, in words.</param>
/// <param name="At">Where; one for each turn of the ring that shows it.</param>
public sealed record StressMark(string Pier, string Used, IReadOnlyList<double[]> At);

/// <summary>One thing that has little to spare.</summary>
/// <param name="What">Which.</param>
/// <param name="Standing">What the rule says; none where no rule was asked.</param>
/// <param name="Used">Share of what is allowed, in words.</param>
/// <param name="Share">How much of the bar is filled; 1 is the limit, which stands at four fifths of its length.</param>
/// <param name="Governs">The case that governs.</param>
public sealed record StressLine(string What, string Standing, string Used, double Share, string Governs);
