using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The one upright bolt or lag screw that holds a pole to the bond beam: pulled where the pole lifts, sheared where it is pushed, in every combination and stage.</summary>
/// <remarks>
/// Sideways comes what the pole itself pushes its seat with and, where wind or earthquake act, 2H/n: the share of the pole whose stretch of ring runs along the force (<see cref="RoofPush"/>), added as if both went one way. The bolt bears across the grain of pole and beam. Shares of
/// pull and shear add. It stands in the middle of the beam, four diameters from every edge it can push toward and seven from the butt end.
/// </remarks>
internal sealed class SeatFixing
{
    /// <summary>A washer nobody gave, in diameters of the bolt.</summary>
    public const double WasherWidth = 3;

    /// <summary>Root over shank of a lag screw (NDS table L2: 0.71 to 0.77).</summary>
    private const double LagRoot = 0.7;

    /// <summary>Diameters that a lag screw must reach into the beam, and for its full value across itself.</summary>
    private const double LagLeast = 4, LagFull = 8;

    private readonly IReadOnlyList<SeatCheck.Place> places;
    private readonly Timber timber;
    private readonly Timber plate;
    private readonly BondBeam beam;
    private readonly RoofPush push;
    private readonly Metal metal = Metal.Find("steel-bolt")!;
    private readonly double diameter, washer, flat;
    private readonly double? lag;

    private SeatFixing(IReadOnlyList<SeatCheck.Place> places, Timber timber, Timber plate, BondBeam beam, RoofPush push, SeatMade seat)
    {
        (this.places, this.timber, this.plate, this.beam, this.push) = (places, timber, plate, beam, push);
        diameter = seat.Bolt!.Value.Metres;
        washer = seat.Washer?.Metres ?? WasherWidth * diameter;
        flat = LevelSeat.DepthOf(seat);
        lag = seat.Lag?.Metres;
    }

    private bool European => timber.System == TimberSystem.En;

    /// <summary><c>seat-bolt</c> and <c>seat-edge</c>.</summary>
    /// <param name="places">The poles where they sit.</param>
    /// <param name="reach">Least length along a pole from its seat to its butt end, m.</param>
    /// <param name="known">Their timber.</param>
    /// <param name="states">Every combination and stage.</param>
    /// <param name="push">What pushes the roof sideways.</param>
    /// <param name="seat">As described; null where it is not.</param>
    /// <param name="beam">The bond beam; null where there is none.</param>
    public static Sequence<CheckedMember> Of(IReadOnlyList<SeatCheck.Place> places, double reach, Known<Timber> known, Sequence<CombinedState> states, Known<RoofPush> push, SeatMade? seat, BondBeam? beam)
    {
        if (known.Value is not { } timber)
        {
            return None(known.NotChecked!);
        }

        if (push.Value is not { } sideways || states.Count == 0)
        {
            return None(push.NotChecked ?? new Message("analysis.roof.no-timber"));
        }

        if (beam is null)
        {
            return None(new Message("analysis.members.no-beam"));
        }

        if (Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres) is not { } plate || plate.System != timber.System)
        {
            return None(Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(beam.Material))));
        }

        if (seat?.Bolt is not { } bolt)
        {
            return [new("seat-bolt", "poles", Message.Of("analysis.seat.no-bolt", ("lift", Most(states, places, (s, p) => -s.Forces.PlateReaction[p.Index])), ("side", Most(states, places, (s, p) => Side(s, p, sideways, places.Count)))))];
        }

        if (bolt.Metres < Dowel.DiameterMin)
        {
            return None(new Message("analysis.walltop.bolt-thin"));
        }

        var fixing = new SeatFixing(places, timber, plate, beam, sideways, seat);
        return fixing.Why() is { } why ? None(why) : [fixing.Bolt(states), fixing.Edge(reach)];

        static Sequence<CheckedMember> None(Message because) => [new("seat-bolt", "poles", because)];
    }

    /// <summary>Values nobody gave.</summary>
    public static IEnumerable<Assumption> Assumed(SeatMade? seat)
    {
        if (seat?.Flat is null)
        {
            yield return new Assumption("seat-depth", new Message("analysis.assumed.seat-depth"), Amount.Metres(LevelSeat.Usual), Sources.Get("common-practice"));
        }

        if (seat is { Bolt: { } bolt, Washer: null, Lag: null })
        {
            yield return new Assumption("seat-washer", new Message("analysis.assumed.seat-washer"), Amount.Metres(WasherWidth * bolt.Metres), Sources.Get("common-practice"));
        }
    }

    private static Amount Most(Sequence<CombinedState> states, IReadOnlyList<SeatCheck.Place> places, Func<CombinedState, SeatCheck.Place, double> force) =>
        new(Math.Max(0, states.Max(s => places.Max(p => force(s, p)))), Dimension.Force);

    private static double Side(CombinedState s, SeatCheck.Place p, RoofPush push, int count) => Math.Abs(s.Forces.PlateSidewaysInSpace[p.Index]) + 2 * push.Force(s.Combination) / count;

    private Message? Why()
    {
        if (lag is not { } length)
        {
            return null;
        }

        if (European)
        {
            return new Message("analysis.seat.lag-en");
        }

        var reach = places.Min(p => InBeam(p));
        return reach < LagLeast * diameter - 1e-9
            ? Message.Of("analysis.seat.lag-short", ("length", Amount.Metres(length)), ("reach", Amount.Metres(Math.Max(0, reach))), ("least", Amount.Metres(LagLeast * diameter)))
            : null;
    }

    private double InPole(SeatCheck.Place p) => p.Diameter - flat;

    private double InBeam(SeatCheck.Place p) => lag is { } length ? Math.Min(length - InPole(p), beam.Depth.Metres) : beam.Depth.Metres;

    private static double Lift(CombinedState s, SeatCheck.Place p) => Math.Max(0, -s.Forces.PlateReaction[p.Index]);

    private double Steel => (European ? PinChecks.BoltShareEn : PinChecks.BoltShare) * PinChecks.Threads * metal.Breaks(timber.System).Value * Math.PI / 4 * diameter * diameter;

    private Timber Weaker => plate.AcrossGrain.Value < timber.AcrossGrain.Value ? plate : timber;

    private double Washer(CombinedState s) =>
        Weaker.AcrossGrain.Value * (European ? Strength.Factor(timber, s.Combination) : 1) * Math.PI / 4 * Math.Max(0, washer * washer - diameter * diameter);

    private double Thread(SeatCheck.Place p) => Math.Min(InBeam(p), lag!.Value / 2 + 0.0127);

    private double Pulled(CombinedState s, SeatCheck.Place p) => lag is null
        ? Math.Min(Steel, Washer(s))
        : Math.Min(Steel, Nail.PullOfLag(diameter, Thread(p), plate.SpecificGravity!.Value) * Strength.Factor(timber, s.Combination));

    private double Sheared(CombinedState s, SeatCheck.Place p)
    {
        var factor = Strength.Factor(timber, s.Combination);
        if (European)
        {
            return factor * NailEn.Across(diameter, InPole(p), InBeam(p), DowelEn.Bearing(Density, diameter), DowelEn.YieldMoment(diameter, metal.Breaks(timber.System).Value));
        }

        return factor * Dowel.Modes(Shank, Main(p), Side(p), Dowel.Yield.Value, Math.PI / 2).SingleShear * Reaching(p);
    }

    private double Shank => lag is null ? diameter : LagRoot * diameter;

    private double Reaching(SeatCheck.Place p) => lag is null ? 1 : Math.Min(1, InBeam(p) / (LagFull * diameter));

    private DowelMember Main(SeatCheck.Place p) => new(InPole(p), Dowel.BearingAcross(timber.SpecificGravity!.Value, Shank));

    private DowelMember Side(SeatCheck.Place p) => new(InBeam(p), Dowel.BearingAcross(plate.SpecificGravity!.Value, Shank));

    private double Density => Math.Min(DowelEn.Density(timber), DowelEn.Density(plate));

    private CheckedMember Bolt(Sequence<CombinedState> states)
    {
        var (state, place) = Hardest.Of(states, places, Use);
        var (sheet, mechanics, steel) = (new Worksheet("seat-bolt"), Sources.Get("mechanics"), Sources.Get("steel-memory"));
        var h = push.Force(state.Combination) > 0 ? push.Steps(sheet, state.Combination) : Worksheet.Computed("H", "sideways-none", 0, Dimension.Force);
        var own = Worksheet.Computed("H_p", "seat-pushed", Math.Abs(state.Forces.PlateSidewaysInSpace[place.Index]), Dimension.Force);
        var side = sheet.Step("seat-side", "F", "H_p + 2*H/n", Side(state, place, push, places.Count), Dimension.Force, mechanics, own, h, Worksheet.Computed("n", "poles-count", places.Count, Dimension.Count));
        var shear = PrintShear(sheet, state, place);
        var lift = Worksheet.Computed("T", "seat-lift", Lift(state, place), Dimension.Force);
        var d = Worksheet.Given("D", "bolt-diameter", diameter, Dimension.Length);
        var ts = sheet.Step("pin-steel", "T_s", "k_b*k_n*F_u*pi*D^2/4", Steel, Dimension.Force, steel, Worksheet.Code("k_b", "bolt-share", European ? PinChecks.BoltShareEn : PinChecks.BoltShare, Dimension.Number, steel),
            Worksheet.Code("k_n", "bolt-threads", PinChecks.Threads, Dimension.Number, steel), Worksheet.Cited("F_u", "metal-ultimate", metal.Breaks(timber.System), Dimension.Stress), d);
        var tw = lag is null ? PrintWasher(sheet, state, d) : PrintLag(sheet, state, place, d);
        var use = sheet.Step("pin-use", "use", $"T/min(T_s, {tw.Name}) + F/{shear.Name}", Use(state, place), Dimension.Number, steel, lift, ts, tw, side, shear);
        return new CheckedMember("seat-bolt", place.Subject, new MemberCheck(state.Combination.Key, state.Sense, use.Value, Amount.Number(1), sheet.Done, Amount.Metres(diameter * Math.Sqrt(use.Value.Si))));
    }

    private Symbol PrintWasher(Worksheet sheet, CombinedState state, Symbol d)
    {
        var across = Strength.Across(sheet, Weaker, state.Combination);
        return sheet.Step("washer-capacity", "T_w", $"{across.Name}*pi*(d_w^2 - D^2)/4", Washer(state), Dimension.Force, Sources.Get("mechanics"), across, Worksheet.Given("d_w", "washer-diameter", washer, Dimension.Length), d);
    }

    private Symbol PrintLag(Worksheet sheet, CombinedState state, SeatCheck.Place place, Symbol d)
    {
        var memory = Sources.Get("nds-memory");
        var cd = Worksheet.Code("C_D", "duration-factor", Nds.Duration(state.Combination), Dimension.Number, Sources.Get("nds-duration"));
        return sheet.Step("lag-pull", "T_l", "1800*G^(3/2)*(D/inch)^(3/4)*(p_t/inch)*lb*C_D", Nail.PullOfLag(diameter, Thread(place), plate.SpecificGravity!.Value) * cd.Value.Si, Dimension.Force, memory,
            Worksheet.Cited("G", "gravity-beam", plate.SpecificGravity, Dimension.Number), d, Worksheet.Computed("p_t", "screw-thread", Thread(place), Dimension.Length), UsUnits.InchSymbol, UsUnits.PoundSymbol, cd);
    }

    private Symbol PrintShear(Worksheet sheet, CombinedState state, SeatCheck.Place p)
    {
        if (European)
        {
            var memory = Sources.Get("en-1995-memory");
            var f = NailEn.Steps(sheet, "bolt-diameter", diameter, InPole(p), InBeam(p), DowelEn.Bearing(Density, diameter), DowelEn.YieldMoment(diameter, metal.Breaks(timber.System).Value));
            var mod = Worksheet.Code("k_mod", "duration-en", Ec5.Duration(state.Combination), Dimension.Number, memory);
            var gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));
            return sheet.Step("bolt-held", "F_d", "k_mod*F_v/gamma_M", Sheared(state, p), Dimension.Force, memory, mod, f, gamma);
        }

        var z = Dowel.Steps(sheet, Shank, Main(p), Side(p), Math.PI / 2, 1);
        var cd = Worksheet.Code("C_D", "duration-factor", Nds.Duration(state.Combination), Dimension.Number, Sources.Get("nds-duration"));
        return lag is null
            ? sheet.Step("bolt-held", "Z_1", "Z*C_D", Sheared(state, p), Dimension.Force, Sources.Get("nds-memory"), z, cd)
            : sheet.Step("bolt-held", "Z_1", "Z*C_D*k_p", Sheared(state, p), Dimension.Force, Sources.Get("nds-memory"), z, cd, Worksheet.Computed("k_p", "lag-reaching", Reaching(p), Dimension.Number));
    }

    private double Use(CombinedState s, SeatCheck.Place p) => Lift(s, p) / Pulled(s, p) + Side(s, p, push, places.Count) / Sheared(s, p);

    /// <summary>From the bolt to the nearest edge of beam and pole, and to the butt end: whichever is tightest.</summary>
    private CheckedMember Edge(double reach)
    {
        var (sheet, memory) = (new Worksheet("seat-edge"), Sources.Get(European ? "en-1995-memory" : "nds-memory"));
        var d = Worksheet.Given("D", "bolt-diameter", diameter, Dimension.Length);
        double there = Math.Min(beam.Width.Metres, places.Min(p => p.Diameter)) / 2, edge = Dowel.LoadedEdgeAcross * diameter;
        var end = European ? Math.Max(DowelEn.EndLeast, DowelEn.EndInTension * diameter) : Dowel.EndInTension * diameter;
        if (end / Math.Max(reach, 1e-9) > edge / there)
        {
            var asked = European
                ? sheet.Step("bolt-end-asked", "a_3", "max(0.08*m, 7*D)", end, Dimension.Length, memory, d, Worksheet.Code("m", "metre", 1, Dimension.Length, Sources.Get("si-brochure-9")))
                : sheet.Step("bolt-end-asked", "a_3", "7*D", end, Dimension.Length, memory, d);
            return new("seat-edge", "butt end", new MemberCheck("", "place", asked.Value, Amount.Metres(reach), sheet.Done));
        }

        var beside = sheet.Step("bolt-edge", "a_4", "4*D", edge, Dimension.Length, memory, d);
        return new("seat-edge", "edges", new MemberCheck("", "place", beside.Value, Amount.Metres(there), sheet.Done));
    }
}
