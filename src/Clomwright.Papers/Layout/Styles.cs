using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>The few sizes of lettering on these papers, by the height of their digits.</summary>
internal static class Styles
{
    /// <summary>Small print, tags, the foot of a sheet.</summary>
    public static readonly Lettering Small = Lettering.Tall(1.65);

    /// <summary>Small print that has to be seen.</summary>
    public static readonly Lettering SmallStrong = Lettering.Strong(1.65);

    /// <summary>Running text and table cells.</summary>
    public static readonly Lettering Body = Lettering.Tall(2.1);

    /// <summary>Headings of tables, and what matters in running text.</summary>
    public static readonly Lettering BodyStrong = Lettering.Strong(2.1);

    /// <summary>Numbers that are held against a tape, where a sheet has many of them.</summary>
    public static readonly Lettering Tape = Lettering.Strong(2.6);

    /// <summary>Sizes to try for them: the smaller where the larger takes a sheet more.</summary>
    public static readonly Lettering[] Tapes = [Tape, BodyStrong];

    /// <summary>Headings within a sheet.</summary>
    public static readonly Lettering Heading = Lettering.Strong(2.7);

    /// <summary>Numbers that the crew reads at arm's length.</summary>
    public static readonly Lettering Reading = Lettering.Strong(3.5);

    /// <summary>The same, where there are many.</summary>
    public static readonly Lettering ReadingPlain = Lettering.Tall(3.5);

    /// <summary>The numbers of the day.</summary>
    public static readonly Lettering Large = Lettering.Strong(5.5);

    /// <summary>Title of a sheet.</summary>
    public static readonly Lettering Title = Lettering.Strong(4.6);
}
