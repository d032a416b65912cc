using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>Turns what the page asks into an edit of the description, or one sentence why it cannot be.</summary>
internal static class EditOf
{
    /// <summary>Where an opening stands now, m along the inside face.</summary>
    public delegate double? StationOf(string opening);

    /// <summary>The edit, or null and the reason.</summary>
    public static Edit? Change(Change change, House house, StationOf stationOf, out Message? reason, double roomiest = 0)
    {
        return change switch
        {
            Change.OfRoof ofRoof => EditOfRoof.Change(ofRoof, house, out reason),
            Change.Enter enter when enter.Blank.StartsWith(CrewBlanks.Prefix, StringComparison.Ordinal) => EditOfCrew.Change(enter, house, out reason),
            Change.Enter enter when enter.Blank.StartsWith(EditOfPlaces.Prefix, StringComparison.Ordinal) => EditOfPlaces.Change(enter, house, roomiest, out reason),
            Change.OfPart ofPart => EditOfPlaces.Change(ofPart, house, roomiest, out reason),
            Change.OfPoint ofPoint => EditOfPlaces.Change(ofPoint, house, roomiest, out reason),
            Change.OfBlank ofEarth => EditOfEarth.Change(ofEarth, house, out reason),
            Change.OfOpening ofOpening => OfOpening(ofOpening, house, stationOf, out reason),
            _ => throw new ArgumentOutOfRangeException(nameof(change)),
        };
    }

    private static Edit? OfOpening(Change.OfOpening change, House house, StationOf stationOf, out Message? reason)
    {
        reason = null;
        if (Movable.Find(house, change.Opening) is not { } part)
        {
            reason = Message.Of("web.no-opening", ("name", change.Opening));
            return null;
        }

        var grid = Grid.Of(house.Units);
        switch (change)
        {
            case Change.Move move when Sane(move.Station) && Sane(move.Sill ?? 0):
                return part.To(Along.At(grid.Nearest(move.Station)), move.Sill is { } sill ? grid.Nearest(sill) : null);

            case Change.Nudge nudge when stationOf(change.Opening) is { } station:
                var step = nudge.Large ? grid.Large : grid.Fine;
                var along = nudge.Along == 0 ? part.Along : Along.At((part.Along.Station ?? grid.Nearest(station)) + step * Math.Sign(nudge.Along));
                return part.To(along, nudge.Up == 0 ? null : part.Up + step * Math.Sign(nudge.Up));

            case Change.Write write when house.Openings.FirstOrDefault(o => o.Name == change.Opening) is { } opening:
                return LengthText.TryParse(write.Text, grid.WhenBare, out var length, out reason) ? Written(opening, write.Field, length) : null;

            default:
                reason = Message.Of("web.no-place", ("name", change.Opening));
                return null;
        }
    }

    /// <summary>Whatever is moved along the wall and up it: an opening, a niche, something built in.</summary>
    /// <param name="Along">Where it is described to stand.</param>
    /// <param name="Up">Its sill, or its middle.</param>
    /// <param name="To">The edit that moves it.</param>
    private sealed record Movable(Along Along, Length Up, Func<Along, Length?, Edit> To)
    {
        public static Movable? Find(House house, string name) =>
            house.Openings.FirstOrDefault(o => o.Name == name) is { } opening ? new(opening.Along, opening.Sill, (along, sill) => new Edit.MoveOpening(name, along, sill))
            : house.Niches.FirstOrDefault(n => n.Name == name) is { } niche ? new(niche.Along, niche.Sill, (along, sill) => new Edit.MoveNiche(name, along, sill))
            : house.Embeds.FirstOrDefault(e => e.Name == name) is { } embed ? new(embed.Along, embed.Height, (along, height) => new Edit.MoveEmbed(name, along, height))
            : null;
    }

    private static Edit Written(Opening opening, OpeningField field, Length length) => field switch
    {
        OpeningField.Station => new Edit.MoveOpening(opening.Name, Along.At(length)),
        OpeningField.Sill => new Edit.MoveOpening(opening.Name, opening.Along, length),
        OpeningField.Width => new Edit.ResizeOpening(opening.Name, length, opening.Height),
        _ => new Edit.ResizeOpening(opening.Name, opening.Width, length),
    };

    private static bool Sane(double metres) => double.IsFinite(metres) && Math.Abs(metres) < 1e4;

    /// <summary>The steps that a builder's tape is read in.</summary>
    private sealed record Grid(Length Fine, Length Large, Unit WhenBare)
    {
        private static readonly Grid Imperial = new(Length.FromInches(1), Length.FromInches(6), Units.Inch);
        private static readonly Grid Metric = new(Length.FromMillimetres(10), Length.FromMillimetres(100), Units.Millimetre);

        public static Grid Of(UnitSystem units) => units == UnitSystem.Imperial ? Imperial : Metric;

        public Length Nearest(double metres) => Length.Nearest(metres).RoundedTo(Fine);
    }
}
