using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Views;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>Rank property: however many strips the ring is cut into, each opening stands on one of them, whole, where there is cob between openings to cut.</summary>
public sealed class StripCutTests
{
    // 336: found by the long run of random houses. Its door reaches further through the leaning foot than through the cob, and was cut beside that.
    [Fact]
    public void EachOpening_StandsOnOneStrip()
    {
        StandOnOneStrip(Drawn.One(Houses.LongestNames, 20261126, 336));
        Assert.Empty(Drawn.Faults(Houses.LongestNames, 0, Counts.Of(40, 500), "strips of random houses", StandOnOneStrip));
    }

    private static void StandOnOneStrip(House house)
    {
        var geometry = FromBuilding.Of(house);
        foreach (var face in Enum.GetValues<Face>())
        {
            for (var count = 1; count <= 3; count++)
            {
                var cuts = StripCuts.Of(geometry, face, count);
                var strips = Enumerable.Range(0, cuts.Count - 1).Select(i => new WallStrip(geometry, face, 20, cuts[i], cuts[i + 1], default)).ToArray();
                Assert.All(geometry.Openings, opening => Assert.Single(strips.SelectMany(s => s.Laid(Unrolled.Outline(geometry, opening, face)).Select(o => (s, o))), laid =>
                    laid.o.Bounds.Left > laid.s.Corner.X - 1e-6 && laid.o.Bounds.Right < laid.s.Right + 1e-6));
                Assert.Equal(geometry.Openings.Count, strips.Sum(s => geometry.Openings.Sum(o => s.Laid(Unrolled.Outline(geometry, o, face)).Count())));
            }
        }
    }
}
