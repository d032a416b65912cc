using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>The still picture of the house in the round.</summary>
public sealed class RoundPictureTests
{
    [Fact]
    public void ThePicture_StandsAtTheCornerThatTheOpeningsFace_AndDrawsWhatIsThere()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var picture = RoundPicture.Of(study.Geometry, study.Roof);

        // Analytic: door, east, tub and south windows look between east and south; arch and moon west.
        Assert.Equal("south-east", picture.Corner);
        string[] drawn = [.. picture.Lines.Select(l => l.Of).Distinct()];
        Assert.Superset(new HashSet<string> { "wall", "stem", "bond beam", "leaf door", "glass south-window", "pole 1", RoundPicture.Deck, RoundPicture.Ground }, drawn.ToHashSet());

        // Analytic: the lowest line is where the stem meets the ground on the side of the viewer: grade cos(rise) less the reach of the stem sin(rise), to the 4 mm that the line keeps clear.
        var geometry = study.Geometry;
        var toward = picture.From.Toward;
        var reach = Enumerable.Range(0, 3600).Max(i => (geometry.Curve.At(geometry.Curve.Length * i / 3600, geometry.Stem.Outside) - geometry.Curve.Centre).Dot(toward));
        var grade = geometry.House.Site.Grade!.Value.Metres;
        var lowest = picture.Lines.SelectMany(l => l.Points).Min(p => p.Height);
        Assert.Equal(grade * Math.Sqrt(2.0 / 3) - reach * Math.Sqrt(1.0 / 3), lowest, 0.005);
    }
}
