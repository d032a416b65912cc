using Clomwright.Geometry.Solids;
using Clomwright.Study;

namespace Clomwright.Papers.Tests;

/// <summary>The surface of a roof as sections and elevations draw it.</summary>
public sealed class RoofDrawnTests
{
    // Property: no half of the deck between two poles of a ring stands upright, so that a cut shows no step in it. 0.05 m2: an upright one has nothing.
    [Fact]
    public void TheDeckOfARing_HasNoUprightHalves()
    {
        foreach (var (c, _) in RoofShell.Of(Papers.HeronPoint.Geometry, Papers.HeronPoint.Roof)!.Facets())
        {
            Assert.True(InPlan(c[0], c[1], c[2]) > 0.05);
            Assert.True(InPlan(c[0], c[2], c[3]) > 0.05);
        }

        static double InPlan(SpacePoint a, SpacePoint b, SpacePoint c) => Math.Abs((b.East - a.East) * (c.North - a.North) - (b.North - a.North) * (c.East - a.East)) / 2;
    }
}
