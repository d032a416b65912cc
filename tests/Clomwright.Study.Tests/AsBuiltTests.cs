using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>What was found otherwise than drawn. Rank: by hand.</summary>
public sealed class AsBuiltTests
{
    private static SiteEntry Found(string id, string part, Measured what, double inches, string? corrects = null) =>
        new(id, new DateTimeOffset(2027, 6, 9, 12, 0, 0, TimeSpan.Zero), "Ada", new Seen.AsBuilt(new DateOnly(2027, 6, 9), part, what, new Length((long)Math.Round(inches * Length.PerInch)))) { Corrects = corrects };

    [Fact]
    public void TheLastMeasuringThatStands_IsMarkedWhereItDiffers()
    {
        var geometry = Geometry.FromBuilding.Of(Houses.HeronPoint);
        var window = geometry.Openings.First(o => o.Opening.Kind != OpeningKind.Door);
        var drawn = window.Opening.Sill.Metres / 0.0254;
        var record = new SiteRecord(
        [
            Found("aaaaa-aaaaa", window.Opening.Name, Measured.Sill, drawn + 2), Found("aaaaa-aaaab", window.Opening.Name, Measured.Sill, drawn + 1, "aaaaa-aaaaa"),
            Found("aaaaa-aaaac", window.Opening.Name, Measured.Width, window.Opening.Width.Metres / 0.0254), Found("aaaaa-aaaad", "no such part", Measured.Width, 3), Found("aaaaa-aaaae", window.Opening.Name, Measured.Depth, 3),
        ]);
        var mark = Assert.Single(AsBuiltMarks.Of(geometry, record));
        Assert.Equal((window.Opening.Name, Measured.Sill, window.Opening.Sill), (mark.Part, mark.What, mark.Drawn));
        Assert.Equal(drawn + 1, mark.Found.Metres / 0.0254, 1e-9);
        Assert.Equal((window.Station, window.Sill), (mark.Station, mark.Bottom));
        Assert.Contains("found", Phrasebook.English.Say(mark.Words, UnitSystem.Imperial), StringComparison.Ordinal);
    }
}
