using System.Collections.Frozen;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>What builders of cob hold to, with or without a published source. The numbers stand in <c>data/rules/common-practice.json</c>.</summary>
internal static partial class CommonPractice
{
    /// <summary>The method of each computed rule.</summary>
    public static readonly FrozenDictionary<string, RuleMethod> Methods = new Dictionary<string, RuleMethod>
    {
        ["pier-width"] = PierWidth,
        ["opening-width"] = OpeningWidth,
        ["opening-share"] = OpeningShare,
        ["opening-corner"] = OpeningCorner,
        ["header-bearing"] = HeaderBearing,
        ["header-bearing-on-pad"] = HeaderBearingOnPad,
        ["header-thickness"] = HeaderThickness,
        ["cob-over-head"] = CobOverHead,
        ["pole-seat"] = PoleSeat,
        ["tee-spacing"] = TeeSpacing,
        ["tee-depth"] = TeeDepth,
        ["eave"] = Eave,
        ["drip-edge"] = Drip,
        ["niche-head"] = NicheHeadWidth,
        ["niche-back"] = NicheBack,
        ["niche-under-load"] = NicheUnderLoad,
        ["niche-pier"] = NichePier,
        ["niche-back-to-back"] = NicheBackToBack,
        ["bottle-cob"] = BottleCob,
        ["stem-height"] = StemHeight,
        ["stem-width"] = StemWidth,
        ["damp-break"] = DampBreak,
        ["trench-width"] = TrenchWidth,
        ["trench-depth"] = TrenchDepth,
        ["ground-fall"] = GroundFall,
        ["wall-slenderness"] = WallSlenderness,
        ["wall-taper"] = WallTaper,
        ["sealed-face"] = SealedFace,
        ["tossed-lift-height"] = TossedLiftHeight,
        ["tossed-lift-least"] = TossedLiftLeast,
        ["forked-lift-height"] = ForkedLiftHeight,
    }.ToFrozenDictionary();

    /// <summary>A rule on every opening: those that could not be placed are not checked, those that the rule is not about are left out.</summary>
    private static Sequence<Ruling> EachOpening(HouseGeometry house, string noneBecause, Func<OpeningPlace, Ruling?> rule)
    {
        var rulings = house.Openings.Select(rule).OfType<Ruling>().Concat(Unplaced(house)).ToSequence();
        return rulings.Count > 0 ? rulings : [Ruling.NotApplicable("wall", house.House.Openings.Count == 0 ? "no-openings" : noneBecause)];
    }

    /// <summary>Openings that geometry could not place.</summary>
    private static IEnumerable<Ruling> Unplaced(HouseGeometry house) =>
        from index in Enumerable.Range(0, house.House.Openings.Count)
        where house.Openings.All(place => place.Index != index)
        select Ruling.NotChecked(house.House.Openings[index].Name, "opening-not-placed");

    private static Ruling At(this Ruling ruling, OpeningPlace place) => ruling.At(place.Widest, place.Sill, place.Head);
}
