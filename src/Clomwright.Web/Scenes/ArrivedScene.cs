namespace Clomwright.Web.Scenes;

/// <summary>A frame that came in another size, and the ways to go on with it, each tried.</summary>
public sealed record ArrivedScene
{
    /// <summary>The house that it was tried on.</summary>
    public required long Revision { get; init; }

    /// <summary>As 2027-06-08.</summary>
    public required string Today { get; init; }

    /// <summary>The opening.</summary>
    public required string Opening { get; init; }

    /// <summary>What is drawn and what came.</summary>
    public required string Line { get; init; }

    /// <summary>What came, in words for the site record.</summary>
    public required string Came { get; init; }

    /// <summary>The opening as it is drawn, on every picture. Points are [x, y] as in a view.</summary>
    public required IReadOnlyList<double[][]> Drawn { get; init; }

    /// <summary>Left and right of what every picture shows, m on the view.</summary>
    public required double[] Across { get; init; }

    /// <summary>The lowest height shown.</summary>
    public required double Bottom { get; init; }

    /// <summary>The highest height shown.</summary>
    public required double Top { get; init; }

    /// <summary>In the place that was drawn first, to send it back last.</summary>
    public required IReadOnlyList<WayCard> Ways { get; init; }
}

/// <summary>One way to go on.</summary>
public sealed record WayCard
{
    /// <summary>asitcame, shift, sill or refuse.</summary>
    public required string Kind { get; init; }

    /// <summary>What is done.</summary>
    public required string What { get; init; }

    /// <summary>What is worse for it, in short.</summary>
    public required string Says { get; init; }

    /// <summary>Nothing is worse.</summary>
    public required bool Good { get; init; }

    /// <summary>What would be wrong in the description; such a way cannot be taken.</summary>
    public required string? Wrong { get; init; }

    /// <summary>What falls short or has no answer any more.</summary>
    public required IReadOnlyList<FindingLine> Breaks { get; init; }

    /// <summary>What else is said otherwise, each with what was said before.</summary>
    public required IReadOnlyList<FindingLine> Changed { get; init; }

    /// <summary>The wall as it would be, from inside, the opening in the middle.</summary>
    public required FaceView View { get; init; }

    /// <summary>Its piers.</summary>
    public required IReadOnlyList<PierLine> Piers { get; init; }
}

/// <summary>How far the trying is, then what was found; or what is wrong with what was written, and at which blank.</summary>
public sealed record ArrivedAnswer(double Share, ArrivedScene? Scene, string? Trouble, string? Blank);
