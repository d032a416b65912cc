using System.Collections.Frozen;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>
/// The model cob code: International Residential Code 2021 Appendix AU, 2024 Appendix BK. The numbers, and how far each section could be
/// read, stand in <c>data/rules/irc-cob@*.json</c>. Rules that common practice has too are computed by the same methods.
/// </summary>
internal static partial class IrcCob
{
    /// <summary>The method of each computed rule.</summary>
    public static readonly FrozenDictionary<string, RuleMethod> Methods = new Dictionary<string, RuleMethod>
    {
        ["seismic-category"] = SeismicGate,
        ["wall-top-over-grade"] = WallTopOverGrade,
        ["wall-thickness-least"] = ThicknessLeast,
        ["wall-thickness-most"] = ThicknessMost,
        ["wind-speed"] = WindSpeed,
        ["ground-snow"] = GroundSnow,
        ["wall-height"] = WallHeight,
        ["wall-slenderness"] = CommonPractice.WallSlenderness,
        ["stem-height"] = CommonPractice.StemHeight,
        ["header-bearing"] = CommonPractice.AnyHeaderBearing,
    }.ToFrozenDictionary();

    private static Sequence<Ruling> WallHeight(HouseGeometry house, Amount most) =>
        [new Ruling("wall", Require.AtMost(house.Wall.Top - house.Wall.Base, most))];
}
