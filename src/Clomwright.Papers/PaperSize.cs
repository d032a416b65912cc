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

    /// <summary>36 by 24 in for the drawings of the office, Tabloid for those of the site, Letter for cards and lists.</summary>
    ArchD,
}

/// <summary>One format of paper, mm, and whether its foot keeps room for a licence and a seal.</summary>
internal readonly record struct Format(double Width, double Height)
{
    /// <summary>A sheet of the office set: licence block and an empty box for the seal stand in its foot.</summary>
    public bool Sealed { get; init; }

    /// <summary>A format of the site folder.</summary>
    public static implicit operator Format((double Width, double Height) paper) => new(paper.Width, paper.Height);
}

/// <summary>Sizes of paper, mm.</summary>
internal static class PaperSizes
{
    /// <summary>For drawings of the site folder, lying and standing.</summary>
    public static Format[] Drawing(this PaperSize paper)
    {
        Format lying = paper switch
        {
            PaperSize.A4 => (297, 210),
            PaperSize.A3 => (420, 297),
            PaperSize.Letter => (279.4, 215.9),
            _ => (431.8, 279.4),
        };
        return [lying, (lying.Height, lying.Width)];
    }

    /// <summary>For drawings of the office set, lying: never smaller than A3 or Tabloid, so that a whole house stands on one at a usual scale.</summary>
    public static Format Office(this PaperSize paper) => (paper switch
    {
        PaperSize.A4 or PaperSize.A3 => (Format)(420, 297),
        PaperSize.ArchD => (914.4, 609.6),
        _ => (431.8, 279.4),
    }) with { Sealed = true };

    /// <summary>For wide lists and calculations of the office set, lying: a sheet that an office printer takes.</summary>
    public static Format OfficeList(this PaperSize paper) => (paper is PaperSize.A4 or PaperSize.A3 ? (Format)(420, 297) : (431.8, 279.4)) with { Sealed = true };

    /// <summary>For cards and lists.</summary>
    public static Format Portrait(this PaperSize paper) =>
        paper is PaperSize.A4 or PaperSize.A3 ? (210, 297) : (215.9, 279.4);

    /// <summary>For the pocket: half of a sheet.</summary>
    public static Format Pocket(this PaperSize paper) =>
        paper is PaperSize.A4 or PaperSize.A3 ? (148, 210) : (139.7, 215.9);
}
