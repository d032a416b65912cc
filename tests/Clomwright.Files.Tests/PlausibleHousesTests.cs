using Clomwright.Building;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>What the random houses promise to every other test.</summary>
public class PlausibleHousesTests
{
    [Fact]
    public void Names_are_unique_and_no_longer_than_allowed() =>
        Gen.OneOf(Houses.Plausible, Houses.LongestNames).ForAll(house =>
        {
            var names = house.Openings.Select(o => o.Name).Concat(house.Niches.Select(n => n.Name)).Concat(house.Embeds.Select(e => e.Name)).ToList();
            Assert.Equal(names.Count, names.Distinct().Count());
            Assert.All(names, name => Assert.InRange(name.Length, 1, 40));
        }, iter: Counts.Of(200, 2_000));

    [Fact]
    public void Every_plan_shape_roof_kind_and_count_of_openings_occurs()
    {
        var houses = new System.Collections.Concurrent.ConcurrentBag<House>();
        Houses.Plausible.ForAll(houses.Add, iter: 400);
        Assert.Equal(4, houses.Select(h => h.Plan.GetType()).Distinct().Count());
        Assert.Equal(5, houses.Select(h => h.Roof?.GetType()).Distinct().Count());
        Assert.Equal([1, 2, 3, 4, 5, 6, 7], houses.Select(h => h.Openings.Count).Distinct().Order());
        Assert.Equal(2, houses.SelectMany(h => h.Openings).Select(o => o.Along.Station is null).Distinct().Count());
    }

    [Fact]
    public void Nothing_is_wrong_with_them_by_themselves() =>
        Gen.OneOf(Houses.Plausible, Houses.LongestNames).ForAll(house => Assert.Empty(HouseDiagnostics.Of(house)), iter: Counts.Of(300, 10_000));

    [Fact]
    public void Nothing_is_wrong_with_Heron_Point() => Assert.Empty(HouseDiagnostics.Of(Houses.HeronPoint));
}
