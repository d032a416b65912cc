using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using CsCheck;

namespace Clomwright.Geometry.Tests;

/// <summary>A house that is placed after another takes over what stands alike: that must not show.</summary>
public sealed class PlacedHouseTests
{
    private static readonly Gen<(int What, int Which, int By)> Edits = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 40], Gen.Int[-900, 900]);

    // Property, against the same house placed from nothing: every number and every remark is the same, to the last bit, however a house came about.
    [Fact]
    public void WhatWasTakenOver_IsAsPlacedFromNothing() =>
        Gen.Select(Houses.Plausible, Edits.Array[6]).ForAll(
            (house, edits) =>
            {
                var placed = FromBuilding.Place(house);
                foreach (var edit in edits)
                {
                    house = Edited(house, edit.What, edit.Which, Length.FromMillimetres(edit.By));
                    placed = FromBuilding.Place(house, placed);
                    AreSame(FromBuilding.Of(house), placed.Geometry);
                }
            },
            iter: Counts.Of(30, 3_000));

    // By hand: of six openings one is moved, and only that one is cut again.
    [Fact]
    public void OneOpeningMoved_LeavesTheOthersAsTheyStand()
    {
        var house = Houses.HeronPoint;
        var placed = FromBuilding.Place(house);
        var again = FromBuilding.Place(Edited(house, 0, 2, Length.FromMillimetres(30)), placed);
        var moved = house.Openings[2].Name;
        Assert.All(again.Openings, opening => Assert.Equal(opening.Opening.Name != moved, placed.Openings.Any(before => ReferenceEquals(before, opening))));
        Assert.All(again.Headers, header => Assert.Equal(header.Over.Opening.Name != moved, placed.Headers.Any(before => ReferenceEquals(before, header))));
    }

    private static House Edited(House house, int what, int which, Length by)
    {
        Sequence<T> With<T>(Sequence<T> all, Func<T, T> change) => all.Select((one, i) => all.Count > 0 && i == which % all.Count ? change(one) : one).ToSequence();
        Sequence<T> Without<T>(Sequence<T> all) => all.Where((_, i) => i != which % all.Count).ToSequence();
        Along Moved(Along along) => along.Bearing is { } bearing ? Along.At(new Angle(bearing.Degrees + by.Metres * 20)) : along.Station is { } station ? Along.At(station + by) : along;
        return what switch
        {
            0 or 1 => house with { Openings = With(house.Openings, o => o with { Sill = o.Sill + by }) },
            2 or 3 => house with { Openings = With(house.Openings, o => o with { Along = Moved(o.Along) }) },
            4 => house with { Openings = With(house.Openings, o => o with { Width = o.Width + by }) },
            5 => house with { Openings = Without(house.Openings) },
            6 => house with { Niches = With(house.Niches, n => n with { Along = Moved(n.Along), Sill = n.Sill + by }) },
            7 => house with { Openings = With(house.Openings, o => o with { Header = o.Header is { } header ? header with { Bearing = header.Bearing + by } : null }) },
            8 => house with { Wall = house.Wall with { Top = house.Wall.Top + by } },
            _ => house with { Name = house.Name + "'" },
        };
    }

    private static void AreSame(HouseGeometry expected, HouseGeometry actual)
    {
        Assert.Equal(expected.Measures, actual.Measures);
        Assert.Equal(expected.Lifts, actual.Lifts);
        Assert.Equal(expected.Openings, actual.Openings);
        Assert.Equal(expected.Piers, actual.Piers);
        Assert.Equal(expected.Niches, actual.Niches);
        Assert.Equal(expected.Embeds, actual.Embeds);
        Assert.Equal(expected.Landings, actual.Landings);
        Assert.Equal(expected.Tees, actual.Tees);
        Assert.Equal(expected.Diagnostics, actual.Diagnostics);
    }
}
