using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules.Tests;

/// <summary>Houses checked with their tests of the mix read.</summary>
internal static class Checked
{
    public static Sequence<Finding> Of(House house)
    {
        var geometry = FromBuilding.Of(house);
        return RuleBook.Check(geometry, mix: Mix(geometry));
    }

    public static MixResult Mix(HouseGeometry geometry) => FromTests.Of(geometry.House.Mix, Quantities.Of(geometry));
}
