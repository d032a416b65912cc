using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Views;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>What a sheet is made from: the set of papers and its words.</summary>
internal sealed record Scene(PaperSet Set)
{
    private readonly Lazy<RoundPicture> round = new(() => RoundPicture.Of(Set.Geometry, Set.Roof));

    public Wording Say { get; } = new(Set.Units, Phrasebook.In(Set.Options.Language));

    public HouseGeometry Geometry => Set.Geometry;

    public House House => Set.House;

    /// <summary>The house in the round, worked out once.</summary>
    public RoundPicture Round => round.Value;

    /// <summary>What every sheet says of the book.</summary>
    public Imprint Imprint => new(House.Name, Set.Options.Date, Set.Options.Revision);

    /// <summary>Its sheets belong to the office set.</summary>
    public bool Office { get; init; }

    /// <summary>Paper of cards and lists.</summary>
    public Format Portrait => Set.Options.Paper.Portrait() with { Sealed = Office };

    /// <summary>The letter of an opening: clockwise from the zero mark.</summary>
    public string Letter(OpeningPlace opening) =>
        Ids.Letter(Geometry.Openings.TakeWhile(o => o.Index != opening.Index).Count());

    /// <summary>A length in both systems, for a cell: the first in its line, the other under it.</summary>
    public Layout.Cell Cell(Amount amount, string more = "") => new(Say.One(amount), Wording.Dotted(Say.Other(amount), more));

    /// <summary>A computed length in metres, for a cell.</summary>
    public Layout.Cell Metres(double metres, string more = "") => Cell(Amount.Metres(metres), more);

    /// <summary>A length read at the wall in one cell and, small, the other units in the next.</summary>
    public Layout.Cell[] Pair(Amount amount, Drawing.Lettering lettering, string more = "") =>
        [new(Say.One(amount)) { Lettering = lettering }, new(Wording.Dotted(Say.Other(amount), more)) { Lettering = Layout.Styles.Small }];

    /// <summary>A bearing from the centre peg, 0 for due north.</summary>
    public static Amount Bearing(double radians) => new(radians > 2 * Math.PI - 0.0008 ? 0 : radians, Dimension.Angle);

    /// <summary>A large number with its tag.</summary>
    public Layout.Fact Fact(string key, Amount amount, Tag tag) => new(Say.Say(key), Say.One(amount), Wording.Dotted(Say.Other(amount), Say.Say(tag)));

    /// <summary>Sentences that nobody may read over, as one paragraph; nothing where there are none.</summary>
    public IEnumerable<Layout.Block> Strong(Sequence<Message> sentences, double above) =>
        sentences.Count == 0 ? [] : [new Layout.Paragraph(string.Join(" ", sentences.Select(Say.Say)), Layout.Styles.BodyStrong) { Above = above }];

    /// <summary>A large number that is not known, and why.</summary>
    public Layout.Fact Unknown(string key, string because) => new(Say.Say(key), Say.Say("not-known"), Say.Say(because));
}
