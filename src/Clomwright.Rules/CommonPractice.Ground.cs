using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

internal static partial class CommonPractice
{
    private static Sequence<Ruling> TrenchWidth(HouseGeometry house, Amount least) =>
        house.House.Trench is { } trench ? [new Ruling("trench", Require.AtLeast(trench.Width, least))] : [Ruling.NotChecked("trench", "no-trench-described")];

    /// <summary>Depth below the highest outside grade at its shallowest, where the fall of the drain begins.</summary>
    private static Sequence<Ruling> TrenchDepth(HouseGeometry house, Amount least) =>
        house.House.Trench is { } trench ? [new Ruling("trench", Require.AtLeast(trench.Depth, least))] : [Ruling.NotChecked("trench", "no-trench-described")];

    private static Sequence<Ruling> GroundFall(HouseGeometry house, Amount least) =>
        house.House.Site.GroundFall is { } fall ? [new Ruling("ground", Require.AtLeast(Exactly.Near(fall, least), least))] : [Ruling.NotChecked("ground", "no-ground-fall")];
}
