using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>What is set against a face, measured against sectors of rings and counted cells.</summary>
public sealed class LiningTests
{
    private static House Plumb => Houses.Round(Length.FromMillimetres(6000)) with
    {
        Wall = new Wall(Length.FromMillimetres(2500), Length.FromMillimetres(400)), Stem = new Stem(Length.FromMillimetres(500), Length.FromMillimetres(300)), Openings = [],
    };

    private static LiningPlace Of(House house, Lining lining) => LiningPlaces.Of(FromBuilding.Of(house with { Comfort = new Comfort { Linings = [lining] } })).Single();

    private static Lining Coat(Face face) => new("coat", face, "light-earth", Length.FromMillimetres(200)) { From = new Angle(290), To = new Angle(70) };

    // Analytic: 140 of 360 degrees of a ring 0.2 m deep against a plumb wall 2.2 m high; outside at 3.4 m, inside at 3 m.
    [Theory]
    [InlineData(Face.Outside, 3.4, 3.6)]
    [InlineData(Face.Inside, 2.8, 3.0)]
    public void OnARoundWall_ItIsASectorOfARing(Face face, double inner, double outer)
    {
        var place = Of(Plumb, Coat(face));
        Assert.Equal(140.0 / 360 * Math.PI * (outer * outer - inner * inner) * 2.2, place.Volume, 1e-6);
        Assert.Equal(140.0 / 360 * 2 * Math.PI * (face == Face.Outside ? inner : outer) * 2.2, place.Area, 1e-6);
    }

    // Analytic: without ends it goes all round; from the ground it lies against the stem, 0.05 m further out, first.
    [Fact]
    public void AgainstTheStem_ItFollowsTheStem()
    {
        var place = Of(Plumb, new Lining("foot", Face.Outside, "foam-glass", Length.FromMillimetres(100)) { Bottom = Length.FromMillimetres(-200), Top = Length.FromMillimetres(800) });
        Assert.Equal(Math.PI * (3.55 * 3.55 - 3.45 * 3.45) * 0.5 + Math.PI * (3.5 * 3.5 - 3.4 * 3.4) * 0.5, place.Volume, 1e-6);
    }

    // Counted: cells of a polar grid that no opening covers; one window behind the coat, one not. Within a thousandth, the cells' size.
    [Fact]
    public void Openings_AreTakenOut()
    {
        var house = Plumb with { Openings = [Houses.Window("in", 340, Length.FromMillimetres(900), Length.FromMillimetres(800)), Houses.Window("beside", 180, Length.FromMillimetres(900), Length.FromMillimetres(800))] };
        var window = FromBuilding.Of(house).Openings.Single(o => o.Opening.Name == "in");
        const int Around = 2000, Deep = 40, High = 400;
        var sum = 0.0;
        for (var i = 0; i < Deep; i++)
        {
            var r = 3.4 + (i + 0.5) * 0.2 / Deep;
            var cell = r * (140 * Math.PI / 180 / Around) * (0.2 / Deep) * (2.2 / High);
            for (var j = 0; j < Around; j++)
            {
                var u = r * Math.Sin((290 + (j + 0.5) * 140 / Around - 340) * Math.PI / 180);
                for (var k = 0; k < High; k++)
                {
                    var z = 0.3 + (k + 0.5) * 2.2 / High;
                    sum += Math.Abs(u) < 0.45 && z > window.Sill && z < window.Head ? 0 : cell;
                }
            }
        }

        Assert.Equal(1, Of(house, Coat(Face.Outside)).Volume / sum, 1e-3);
    }
}
