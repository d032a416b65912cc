using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>A stove in a round room.</summary>
public class StoveTests
{
    // Analytic: in a circle of radius R, a stove with its middle at distance e from the centre, its back outward, b deep and w wide: the nearest wall behind it is at the corners,
    // sqrt(R^2 - w^2/4) - e - b/2; before its door, sqrt(R^2 - w^2/4) + e - b/2; beside it, sqrt(R^2 - (e + b/2)^2) - w/2. 0.01 mm: between points 8 mm apart the wall is taken straight.
    [Fact]
    public void Sides_OfAStoveInACircle_AreAtTheirDistances()
    {
        const double R = 3, E = 2, W = 0.6, B = 0.5;
        var house = Houses.Round(Length.FromMillimetres(6000)) with
        {
            Stove = new Stove(Length.FromMillimetres(600), Length.FromMillimetres(500))
            {
                Bearing = new Angle(120), Distance = Length.FromMillimetres(2000), Facing = new Angle(300), ClearBack = Length.FromMillimetres(400), ClearFront = Length.FromMillimetres(900),
            },
        };
        var place = StovePlace.Of(FromBuilding.Of(house))!;
        double To(string key) => place.Sides.Single(s => s.Key == key).ToWall;
        Assert.Equal(Math.Sqrt(R * R - W * W / 4) - E - B / 2, To("back"), 1e-5);
        Assert.Equal(Math.Sqrt(R * R - W * W / 4) + E - B / 2, To("front"), 1e-5);
        Assert.Equal(Math.Sqrt(R * R - (E + B / 2) * (E + B / 2)) - W / 2, To("left"), 1e-5);
        Assert.Equal(To("left"), To("right"), 1e-5);
        Assert.Null(place.Sides.Single(s => s.Key == "left").Clear);

        // The zone is the body moved out by what is typed, and not at all where nothing is: 0.4 + 0.5 + 0.9 long, 0.6 wide.
        Assert.Equal(1.8, (place.Zone[0] - place.Zone[1]).Norm, 1e-9);
        Assert.Equal(0.6, (place.Zone[1] - place.Zone[2]).Norm, 1e-9);
    }

    [Fact]
    public void AHouseWithoutOne_HasNone() => Assert.Null(StovePlace.Of(FromBuilding.Of(Houses.Round(Length.FromMillimetres(6000)))));
}
