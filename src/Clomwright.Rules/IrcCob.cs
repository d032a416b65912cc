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
        ["mix-shrinkage"] = MixShrinkage,
        ["cob-strength"] = CobStrength,
        ["cob-strength-bracing"] = CobStrength,
        ["wall-height"] = WallHeight,
        ["wall-slenderness"] = CommonPractice.WallSlenderness,
        ["stem-height"] = CommonPractice.StemHeight,
        ["header-bearing"] = CommonPractice.AnyHeaderBearing,
    }.ToFrozenDictionary();

    /// <summary>Total shortening of each shrinkage bar of the size asked.</summary>
    private static Sequence<Ruling> MixShrinkage(HouseGeometry house, Amount most)
    {
        var bars = house.House.Mix.TestBars;
        return bars.Count == 0
            ? [Ruling.NotChecked("mix", "no-test-bars")]
            : bars.Select((bar, i) => bar.Length == BarLength
                ? new Ruling($"test bar {i + 1}", Require.AtMost(bar.Shrinkage, most))
                : Ruling.NotChecked($"test bar {i + 1}", "test-bar-size")).ToSequence();
    }

    /// <summary>
    /// Crushing strength of five prisms dried without an oven. How the appendix reads five results is not known here: every one at the
    /// number or above is met under any reading, every one below it falls short under any, and anything between is not checked.
    /// </summary>
    private static Sequence<Ruling> CobStrength(HouseGeometry house, Amount least)
    {
        var prisms = house.House.Mix.Prisms.Where(p => p is { Oven: false } && p.Width == PrismSide && p.Depth == PrismSide && p.Height == PrismHeight).ToList();
        if (prisms.Count < PrismCount)
        {
            return [Ruling.NotChecked("mix", house.House.Mix.Prisms.Count == 0 ? "no-prisms" : "too-few-prisms")];
        }

        var strengths = prisms.Select(p => Exactly.Near(new Stress(p.FailureLoad.Newtons / (p.Width.Metres * p.Depth.Metres)), least)).ToList();
        var lowest = Require.AtLeast(strengths.MinBy(s => s.Si), least);
        var highest = Require.AtLeast(strengths.MaxBy(s => s.Si), least);
        return (lowest, highest) switch
        {
            (Verdict.Met, _) => [new Ruling("mix", lowest)],
            (_, Verdict.FallsShort) => [new Ruling("mix", highest)],
            _ => [Ruling.NotChecked("mix", "prisms-on-both-sides")],
        };
    }

    private static Sequence<Ruling> WallHeight(HouseGeometry house, Amount most) =>
        [new Ruling("wall", Require.AtMost(house.Wall.Top - house.Wall.Base, most))];

    private static readonly Length BarLength = Length.FromInches(24);
    private static readonly Length PrismSide = Length.FromInches(4);
    private static readonly Length PrismHeight = Length.FromInches(8);
    private const int PrismCount = 5;
}
