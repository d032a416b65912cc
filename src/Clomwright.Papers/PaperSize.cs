namespace Clomwright.Papers;

/// <summary>The paper of the drawings. Cards and lists take the smaller paper of the same family.</summary>
public enum PaperSize
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>420 by 297 mm for drawings, A4 for cards and lists.</summary>
    A3,

    /// <summary>8 1/2 by 11 in.</summary>
    Letter,

    /// <summary>17 by 11 in for drawings, Letter for cards and lists.</summary>
    Tabloid,
}

/// <summary>Sizes of paper, mm.</summary>
internal static class PaperSizes
{
    /// <summary>For drawings, lying and standing.</summary>
    public static (double Width, double Height)[] Drawing(this PaperSize paper)
    {
        var (width, height) = paper switch
        {
            PaperSize.A4 => (297, 210),
            PaperSize.A3 => (420, 297),
            PaperSize.Letter => (279.4, 215.9),
            _ => (431.8, 279.4),
        };
        return [(width, height), (height, width)];
    }

    /// <summary>For cards and lists.</summary>
    public static (double Width, double Height) Portrait(this PaperSize paper) =>
        paper is PaperSize.A4 or PaperSize.A3 ? (210, 297) : (215.9, 279.4);

    /// <summary>For the pocket: half of a sheet.</summary>
    public static (double Width, double Height) Pocket(this PaperSize paper) =>
        paper is PaperSize.A4 or PaperSize.A3 ? (148, 210) : (139.7, 215.9);
}
