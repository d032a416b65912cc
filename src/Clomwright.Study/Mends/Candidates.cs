using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study.Mends;

/// <summary>What might mend a finding, likeliest first. Whether it does is found out by trying.</summary>
internal static partial class Candidates
{
    /// <summary>Changes worth trying for a finding that falls short; none where we know of none.</summary>
    public static IEnumerable<Edit> For(HouseStudy study, Finding finding)
    {
        var comparison = ((Verdict.FallsShort)finding.Verdict).Comparisons is [var first, ..] ? first : null;
        if (comparison is null)
        {
            return [];
        }

        var need = new Need(study, finding.Subject, comparison);
        return finding.Rule.Key switch
        {
            "pier-width" => PierWidth(need),
            "opening-width" => OpeningWidth(need),
            "opening-share" => OpeningShare(need),
            "header-bearing" or "header-bearing-on-pad" => HeaderBearing(need),
            "header-thickness" => HeaderThickness(need),
            "cob-over-head" => CobOverHead(need),
            "pole-seat" => PoleSeat(need),
            "tee-spacing" => Tees(need, tees => tees with { Spacing = need.Limit }),
            "tee-depth" => Tees(need, tees => tees with { Depth = need.Limit }),
            "eave" => Eave(need),
            "drip-edge" => need.House.Roof is { Drip: { } drip } dripping ? [new Edit.ChangeRoof(dripping with { Drip = drip with { Down = need.Limit } })] : [],
            "niche-head" => Niche(need, niche => new Edit.ChangeNiche(niche.Name, niche with { Head = NicheHead.Arch })),
            "niche-back" => Niche(need, niche => new Edit.ChangeNiche(niche.Name, niche with { Depth = niche.Depth - need.Gap })),
            "niche-under-load" or "niche-pier" or "niche-back-to-back" => NicheElsewhere(need),
            "stem-height" => StemHeight(need),
            "stem-width" => [new Edit.ChangeStem(need.House.Stem with { Width = need.House.Stem.Width + need.Gap })],
            "wall-slenderness" => Slenderness(need),
            "wall-edge-pressure" => [.. WiderPier(need).Take(2), .. ThickerWall(need), .. LighterRoof(need)],
            "wall-under-pole" => [.. WiderBeam(need), .. ThickerWall(need), .. LighterRoof(need)],
            "tossed-lift-height" or "forked-lift-height" => [new Edit.ChangeLifts(new LiftPlan { Height = need.Limit, Method = need.House.Lifts.Method })],
            "bottle-cob" => BottleSpacing(need),
            "sealed-face" => SealedFace(need),
            "pole-bending-crossing" or "pole-bending-plate" or "pole-foot" or "pole-stub" or "rafter-bending" or "rafter-combined" or "stage-bending" => Stronger(need, Math.Cbrt),
            "pole-shear" or "rafter-shear" or "stage-shear" => Stronger(need, Math.Sqrt),
            "ring-sag" or "rafter-sag" => Stronger(need, ratio => Math.Pow(ratio, 0.25)),
            "pole-seat-bearing" => [.. WiderBeam(need), .. Stronger(need, ratio => ratio * ratio)],
            "pole-crossing-bearing" => DeeperNotch(need),
            "crossing-opens" => [.. Pinned(need), .. BiggerPins(need), .. WiderRing(need)],
            "pin-strength" => [.. BiggerPins(need), .. WiderRing(need)],
            "pole-loss" => WaysOut(need),
            "secondaries-and-deck" => Decking(need),
            "stage-actions" => need.Subject.EndsWith("on its seat", StringComparison.Ordinal) ? [.. WiderBeam(need), .. Stronger(need, ratio => ratio * ratio)] : Stronger(need, Math.Cbrt),
            "deck-uplift" => MoreNails(need),
            "roof-diaphragm" => Braced(need),
            "seat-bolt" => SeatBolts(need),
            "seat-edge" => SeatEdges(need),
            "secondary-ends" => SecondaryEnds(need),
            "centre-post" or "compression-ring" => InnerSupports(need),
            "flue-clear" => FlueElsewhere(need),
            "soil-slip" => Battened(need),
            "crossing-pinned" => Pinned(need),
            "tee-uplift" => DeeperTees(need),
            "strap-uplift" => DeeperAnchor(need),
            "strap-pull" => WiderStrap(need),
            "tee-gap" => RoomForTees(need),
            "tee-leg" or "tee-bar" => ThickerTees(need),
            "tee-bolt" => TeeBolts(need),
            "bond-beam-tension" => WiderBeam(need),
            "bond-beam-bolts" => BeamBolts(need),
            "bond-beam-lap" => LongerBeamLap(need),
            "bond-beam-bending" => DeeperBeam(need),
            "bearing-stress" => SpreadFurther(need),
            "lap-places" => ShorterLap(need),
            "lateral-path" => Sideways(need),
            "header-sag" => [.. DeeperHeader(need, Math.Cbrt), .. OneMorePiece(need)],
            "header-bending" => [.. DeeperHeader(need, Math.Sqrt), .. OneMorePiece(need)],
            "header-shear" => DeeperHeader(need, ratio => ratio),
            "header-pressure" or "wall-header-bearing" => LongerBearing(need),
            "wall-soil" => StemOverGrade(need),
            "stem-bearing" => WiderStem(need),
            "ground-bearing" => WiderTrench(need),
            "middle-third" => Centred(need),
            "trench-width" => need.House.Trench is { } narrow ? [new Edit.ChangeTrench(narrow with { Width = need.Limit })] : [],
            "trench-depth" or "trench-frost" => DeeperTrench(need),
            "ground-fall" => [new Edit.ChangeSite(need.House.Site with { GroundFall = new Slope(need.Comparison.Limit.Si) })],
            "drain-outlet" => LowerOutlet(need),
            "drain-fall" => SteeperFall(need),
            "dry-stem" => [new Edit.ChangeStem(need.House.Stem with { Width = need.Up(need.House.Stem.Width.Metres * need.Ratio) }), .. WiderStem(need)],
            "door-clear" => ShorterLeaf(need),
            "door-sill" => SillOnFloor(need),
            "stem-over-floor" => StemHeight(need),
            "floor-drain" => ThickerDrain(need),
            "floor-over-grade" => EarthOverGrade(need),
            "lime-coat" => ThinnerCoats(need with { IsLime = true }),
            "earth-coat" => ThinnerCoats(need),
            "lath-lap" => LongerLap(need),
            "seat-centre" => CentredBeam(need),
            "mix-shrinkage" or "cob-strength" or "cob-strength-bracing" or "modulus-of-rupture" => RecipesTried(need),
            "fresh-height" or "wall-green" => LowerLifts(need),
            "roof-landing" or "wall-roof-day" => LaterRoof(need),
            "plaster-dry" => LaterPlaster(need),
            "plaster-season" => PlasterInSeason(need),
            "frost-young" => AnotherStart(need),
            "pier-load" or "pier-edge" => [.. WiderPier(need), .. LighterRoof(need)],
            "wall-out-of-plane" or "house-overturning" => ThickerAllUp(need),
            _ => [],
        };
    }

    /// <summary>What a finding lacks, rounded up to what a tape can read.</summary>
    private sealed record Need(HouseStudy Study, string Subject, Comparison Comparison)
    {
        private static readonly Length QuarterInch = new(Length.PerInch / 4);
        private static readonly Length FiveMillimetres = Length.FromMillimetres(5);

        /// <summary>The finding is about a lime coat.</summary>
        public bool IsLime { get; init; }

        public House House => Study.House;

        public HouseGeometry Geometry => Study.Geometry;

        public Length Limit => Length.Nearest(Comparison.Limit.Si);

        /// <summary>Demand over what may be used of the capacity.</summary>
        public double Ratio => Comparison.Provided.Si / Comparison.Limit.Si;

        public Length Gap => Up(Math.Abs(Comparison.Limit.Si - Comparison.Provided.Si));

        /// <summary>The author's name in an address such as <c>door/header</c>.</summary>
        public string Name => Subject.Split('/')[0];

        public Opening? Opening => House.Openings.FirstOrDefault(o => o.Name == Name);

        public Length Up(double metres) => Up(metres, House.Units == UnitSystem.Imperial ? QuarterInch : FiveMillimetres);

        /// <summary>A thickness of pole or timber, in whole inches or centimetres.</summary>
        public Length Stock(double metres) => Up(metres, StockStep);

        public Length StockStep => House.Units == UnitSystem.Imperial ? Length.FromInches(1) : Length.FromMillimetres(10);

        private static Length Up(double metres, Length grain)
        {
            var rounded = Length.Nearest(metres).RoundedTo(grain);
            return rounded.Metres < metres ? rounded + grain : rounded;
        }
    }
}
