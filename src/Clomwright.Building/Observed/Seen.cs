using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What somebody saw or did on site, as they wrote it down: the closed set of what a site record holds. Nothing here is computed.</summary>
public abstract record Seen
{
    private Seen()
    {
    }

    /// <summary>The day it speaks of; null where it speaks of no day.</summary>
    public virtual DateOnly? On => null;

    /// <summary>One day of work: two numbers, and what else there is to say. Whatever nobody wrote is null or empty.</summary>
    /// <param name="Date">Which day; a record holds one entry for a day.</param>
    public sealed record Day(DateOnly Date) : Seen
    {
        /// <inheritdoc/>
        public override DateOnly? On => Date;

        /// <summary>How much the whole ring rose, in the mean over its length.</summary>
        public Length? Raised { get; init; }

        /// <summary>The lift that was worked on last, from 1 at the bottom: what lies below it is laid.</summary>
        public int? Lift { get; init; }

        /// <summary>Batches mixed and laid.</summary>
        public double? Batches { get; init; }

        /// <summary>How many people worked.</summary>
        public int? People { get; init; }

        /// <summary>Hours that each of them worked.</summary>
        public double? Hours { get; init; }

        /// <summary>What ended the laying of cob that day.</summary>
        public StoppedBy Stopped { get; init; }

        /// <summary>Tasks of the job finished on this day, by their keys (<c>stem</c>, <c>beam</c>, ...); <c>wall-top</c> for the cob.</summary>
        public Sequence<string> Done { get; init; }

        /// <summary>Names of those who came, as far as somebody wrote them.</summary>
        public Sequence<string> Who { get; init; }

        /// <summary>The weather of the day.</summary>
        public SeenWeather? Weather { get; init; }

        /// <summary>What else there is to say.</summary>
        public string? Notes { get; init; }
    }

    /// <summary>A test and what came of it.</summary>
    /// <param name="Date">Day of the test.</param>
    /// <param name="Test">Which: leak test of the roof, bar, prism, ...</param>
    /// <param name="Of">What was tested.</param>
    /// <param name="Result">What was read, in the tester's own words and units.</param>
    public sealed record Tested(DateOnly Date, string Test, string Of, string Result) : Seen
    {
        /// <inheritdoc/>
        public override DateOnly? On => Date;
    }

    /// <summary>Something that was measured in the wall and is perhaps not as drawn.</summary>
    /// <param name="Date">Day of the measuring.</param>
    /// <param name="Part">The author's name of the opening, niche or embed.</param>
    /// <param name="What">What was measured of it.</param>
    /// <param name="Found">As measured; heights are from the finished floor.</param>
    public sealed record AsBuilt(DateOnly Date, string Part, Measured What, Length Found) : Seen
    {
        /// <inheritdoc/>
        public override DateOnly? On => Date;
    }

    /// <summary>Something that came.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="What">Soil, sand, straw, timber, ...</param>
    /// <param name="Amount">How much, in the deliverer's own words and units.</param>
    public sealed record Delivery(DateOnly Date, string What, string Amount) : Seen
    {
        /// <inheritdoc/>
        public override DateOnly? On => Date;

        /// <summary>Whether it was what had been ordered; null where nobody looked.</summary>
        public bool? AsOrdered { get; init; }
    }

    /// <summary>Papers handed out.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Revision">Their revision letter.</param>
    /// <param name="Sheets">Keys of the sheets; empty for all.</param>
    /// <param name="To">To whom.</param>
    public sealed record Issue(DateOnly Date, string Revision, Sequence<string> Sheets, string To) : Seen
    {
        /// <inheritdoc/>
        public override DateOnly? On => Date;

        /// <summary>What was drawn on each sheet of the whole set, in page order; empty where somebody wrote the issue down by hand.</summary>
        public Sequence<DrawnSheet> Drawn { get; init; }
    }

    /// <summary>An earlier entry that should not count; it stays in the record.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Struck(string Why) : Seen;
}

/// <summary>What ended the laying of cob on a day.</summary>
public enum StoppedBy
{
    /// <summary>The end of the day, as far as anybody said.</summary>
    Evening,

    /// <summary>The wall could take no more.</summary>
    Wall,

    /// <summary>Rain.</summary>
    Rain,

    /// <summary>Cold.</summary>
    Cold,

    /// <summary>Other work, missing stuff, a feast.</summary>
    Other,
}

/// <summary>What was measured of a part.</summary>
public enum Measured
{
    /// <summary>Rough width.</summary>
    Width,

    /// <summary>Rough height.</summary>
    Height,

    /// <summary>Sill above the finished floor; of an embed its middle.</summary>
    Sill,

    /// <summary>Place along the inside face from the zero mark.</summary>
    Station,

    /// <summary>Depth into the wall.</summary>
    Depth,
}

/// <summary>The weather of one day as somebody saw it; null where nobody looked.</summary>
/// <param name="Rain">Of the day.</param>
/// <param name="High">Warmest.</param>
/// <param name="Low">Coldest.</param>
public sealed record SeenWeather(Length? Rain, Temperature? High, Temperature? Low);

/// <summary>A sheet as it was handed out.</summary>
/// <param name="Part">Which part of the papers it belongs to: <c>site</c>, <c>office</c>.</param>
/// <param name="Key">Its permanent key.</param>
/// <param name="Number">Its number as printed.</param>
/// <param name="Title">What stood at its head.</param>
/// <param name="Print">Hash of what is drawn on it, in hexadecimal digits; date, number and letter of revision are no part of it.</param>
public sealed record DrawnSheet(string Part, string Key, string Number, string Title, string Print);
