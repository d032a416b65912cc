using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>The roof of a placed house.</summary>
public static class FromGeometry
{
    /// <summary>Left past the far crossing for the pin: 12 in.</summary>
    private const double Tail = 0.3048;

    /// <summary>Cut on to the charlie stick so that the last pole can slide under: 2 in.</summary>
    private const double Settle = 0.0508;

    /// <summary>Of a charlie stick nobody described, m.</summary>
    public static double CharlieDiameter => CharlieChecks.Diameter;

    /// <summary>Side of the pad under it, m.</summary>
    public static double CharliePad => CharlieChecks.Pad;

    /// <summary>What holds the roof and what it asks of the wall. Total: what is missing is said in the result.</summary>
    public static RoofResult Of(HouseGeometry geometry)
    {
        var house = geometry.House;
        return house.Roof switch
        {
            null => Without(new Message("analysis.roof.none")),
            Building.Roof.Reciprocal reciprocal => Reciprocal(geometry, house, reciprocal),
            _ => Plain(geometry, house, house.Roof),
        };
    }

    /// <summary>Between rafters side by side, m; null where they run to a middle.</summary>
    private static double? SpacingOf(Building.Roof roof) => roof switch
    {
        Building.Roof.Shed shed => shed.Spacing.Metres,
        Building.Roof.Gable gable => gable.Spacing.Metres,
        _ => null,
    };

    private static RoofResult Plain(HouseGeometry geometry, House house, Building.Roof roof)
    {
        var found = PlainLayout.Of(geometry, roof);
        if (found.Value is not { } layout)
        {
            return Without(found.NotChecked!);
        }

        var weights = RoofWeights.Of(roof, Eye.Closed);
        var slope = layout.Poles.Average(p => p.Pitch);
        var axis = house.Wall.Top.Metres + (house.BondBeam?.Depth.Metres ?? 0) + layout.Poles[0].DiameterAt(0) / 2;
        var snow = SnowOn(house, slope);
        var eaveOffset = geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres;
        var wind = WindOn(house, geometry, layout.Poles, slope, axis, eaveOffset);
        var stages = new RoofStages(layout.Shares, new PlainStatics(layout), new RoofCases(layout.Shares, weights, roof, Eye.Closed), weights, roof, snow);
        var combined = Combine(house, stages, weights, slope, snow, wind);
        var result = PlainRoof.Of(layout, stages, weights, combined, house.BondBeam, roof.Seat);
        var spans = roof switch
        {
            Building.Roof.Shed shed => DeckSpans.Strips(layout.Poles, shed.Spacing.Metres, roof),
            Building.Roof.Gable gable => DeckSpans.Strips(layout.Poles, gable.Spacing.Metres, roof),
            _ => DeckSpans.Round(layout.Poles, roof),
        };
        var loads = OnDeck(house, roof, weights, slope, snow, wind);
        var deck = DeckChecks.Of(spans, loads, roof, weights.Poles);
        var system = weights.Poles.Value?.System ?? TimberSystem.Nds;
        Sequence<CombinedState> all = combined.States.Count == 0 ? [] : [.. combined.States, .. StageStates.Of(result.Stages, system)];
        var push = Pushed(geometry, layout.Poles, stages, weights, snow, wind);
        Sequence<CheckedMember> fixings =
        [
            .. DeckFixing.Of(spans, layout.Poles, loads, push, roof, weights.Poles),
            .. SeatFixing.Of([.. RafterChecks.Seats(layout)], layout.Poles.Min(p => p.EaveReach / p.PitchCosine), weights.Poles, all, push, roof.Seat, house.BondBeam),
        ];
        var (flue, clear) = Flues.Of(geometry, roof, layout.Poles, 0, slope);
        Sequence<CheckedMember> supports =
        [
            .. SecondaryEnds.Of(spans, loads, roof, weights.Poles, house.BondBeam), .. InnerSupport.Of(layout, roof, weights.Poles, all, result.Stages, axis, house.Site),
            .. Only(clear), .. Only(SoilSlip.Of(roof, slope, weights.LayersWet)), .. Only(HighEnds.Of(layout.Poles, roof.Seat)), .. Only(SpacingOf(roof) is { } spacing ? RoofEnds.Of(geometry, layout.Poles, roof.FirstBearing.Radians, spacing, eaveOffset) : null),
        ];
        var skin = roof is Building.Roof.Radial
            ? RoofSkins.Round(geometry, roof, layout.Shares, 0, geometry.Curve.Centre, eaveOffset, open: false, flue)
            : RoofSkins.Strips(geometry, roof, layout.Shares, eaveOffset, flue);
        return new RoofResult
        {
            Everyday = Everyday(house, stages, weights, slope, snow, wind),
            Reciprocal = new Message("analysis.roof.not-reciprocal"), Plain = result, Spans = spans, Deck = deck, Fixings = fixings, Supports = supports, Flue = flue, Skin = skin, Snow = snow, Wind = wind, LayersWet = weights.LayersWet, LayersDry = weights.LayersDry,
            Assumptions = [.. weights.Assumptions, .. snow.Value?.Assumptions ?? [], .. wind.Value?.Assumptions ?? [], .. OnRoof(), .. Fixed(roof), .. skin.Assumptions],
            Calculations = [.. Steps([.. result.Checks, .. deck, .. fixings, .. supports]), skin.How, .. Common(weights, snow, wind)],
        };
    }

    private static RoofResult Reciprocal(HouseGeometry geometry, House house, Building.Roof.Reciprocal roof)
    {
        var shape = Shape(geometry, roof);
        if (shape is not ReciprocalShape.Frame { Geometry: var frame })
        {
            return Without(shape is ReciprocalShape.Impossible { Because: var because } ? because : new Message("analysis.reciprocal.winding"));
        }

        var plateOffset = Offset(geometry);
        var eaveOffset = geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres;
        var turn = roof.Turn == Turn.Clockwise ? 1 : -1;
        var rays = TangentRays.Of(geometry.Curve, frame.Centre, frame.RingRadius, turn, plateOffset, eaveOffset);
        var space = SpatialEquilibrium.Of(frame);
        if (rays is null || space is null)
        {
            return Without(rays is null ? new Message("analysis.reciprocal.ring-inside-wall") : new Message("analysis.reciprocal.rolls"));
        }

        var weights = RoofWeights.Of(roof, roof.Eye);
        var axis = AxisHeight(house, frame);
        var snow = SnowOn(house, frame.MeanRadialPitch);
        var wind = WindOn(house, geometry, frame.Poles, frame.MeanRadialPitch, axis, eaveOffset);
        var shares = new Tributary(frame, rays);
        var stages = new RoofStages(shares, new ReciprocalStatics(frame, space), new RoofCases(shares, weights, roof, roof.Eye), weights, roof, snow);
        var result = Checked(ReciprocalRoof.Of(frame, space, stages, weights, axis, Settle), [.. space.Crossings], house, roof, stages, weights, snow, wind);
        var spans = DeckSpans.Round(frame.Poles, roof);
        var loads = OnDeck(house, roof, weights, frame.MeanRadialPitch, snow, wind);
        var deck = DeckChecks.Of(spans, loads, roof, weights.Poles);
        var push = Pushed(geometry, frame.Poles, stages, weights, snow, wind);
        Sequence<CombinedState> all = result.Combined.States.Count == 0 ? [] : [.. result.Combined.States, .. StageStates.Of(result, weights.Poles.Value?.System ?? TimberSystem.Nds)];
        Sequence<CheckedMember> fixings =
        [
            .. DeckFixing.Of(spans, frame.Poles, loads, push, roof, weights.Poles),
            .. SeatFixing.Of(SeatCheck.Places(frame), frame.Poles.Min(p => p.EaveReach / p.PitchCosine), weights.Poles, all, push, roof.Seat, house.BondBeam),
        ];
        var (flue, clear) = Flues.Of(geometry, roof, frame.Poles, roof.Eye == Eye.Closed ? 0 : frame.RingRadius, frame.MeanRadialPitch);
        Sequence<CheckedMember> supports =
            [.. SecondaryEnds.Of(spans, loads, roof, weights.Poles, house.BondBeam), .. Only(clear), .. Only(SoilSlip.Of(roof, frame.MeanRadialPitch, weights.LayersWet))];
        var skin = RoofSkins.Round(geometry, roof, shares, frame.RingRadius, frame.Centre, eaveOffset, roof.Eye != Eye.Closed, flue);
        return new RoofResult
        {
            Everyday = Everyday(house, stages, weights, frame.MeanRadialPitch, snow, wind),
            Reciprocal = result, Plain = new Message("analysis.roof.is-reciprocal"), Spans = spans, Deck = deck, Fixings = fixings, Supports = supports, Flue = flue, Skin = skin, Snow = snow, Wind = wind, LayersWet = weights.LayersWet, LayersDry = weights.LayersDry,
            Assumptions =
            [
                .. weights.Assumptions, .. snow.Value?.Assumptions ?? [], .. wind.Value?.Assumptions ?? [], .. OnRoof(), .. Fixed(roof), .. skin.Assumptions,
                new Assumption("pole-tail", new Message("analysis.assumed.pole-tail"), Amount.Metres(Tail), Sources.Get("common-practice")),
                new Assumption("charlie-settle", new Message("analysis.assumed.charlie-settle"), Amount.Metres(Settle), Sources.Get("common-practice")),
                .. PinChecks.Assumed(roof), .. CharlieChecks.Assumed(),
                new Assumption("people-lift", new Message("analysis.assumed.people-lift"), new Amount(222.4, Dimension.Force), Sources.Get("planning-lift")),
            ],
            Calculations = [.. ReciprocalSteps.Of(result), .. Steps([.. result.Checks, .. result.Pins, .. result.WaysOut, .. result.Charlie, .. deck, .. fixings, .. supports]), skin.How, .. Common(weights, snow, wind)],
        };
    }

    private static IEnumerable<Calculation> Steps(Sequence<CheckedMember> checks) => checks.Select(c => c.How).OfType<Calculation>();

    private static Sequence<Assumption> OnRoof() =>
    [
        new Assumption("worker", new Message("analysis.assumed.worker"), new Amount(RoofStages.Worker, Dimension.Force), Sources.Get("asce7-16-memory")),
        new Assumption("soil-heap", new Message("analysis.assumed.soil-heap"), new Amount(RoofStages.Heap, Dimension.Force), Sources.Get("common-practice")),
    ];

    private static Sequence<Calculation> Common(RoofWeights weights, Known<SnowLoad> snow, Known<WindLoad> wind) =>
        [.. Steps(weights.LayersDry), .. Steps(weights.LayersWet), .. snow.Value is { } s ? (Sequence<Calculation>)[s.How] : [], .. wind.Value?.How ?? []];

    /// <summary>The frame as its landings, ring and poles make it.</summary>
    public static ReciprocalShape Shape(HouseGeometry geometry, Building.Roof.Reciprocal roof)
    {
        var centre = geometry.Curve.Centre;
        var ring = roof.RingRadius.Metres;
        var clockwise = roof.Turn == Turn.Clockwise;
        var eave = geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres;
        var plate = geometry.Landings.FirstOrDefault(l => !l.Secondary);
        var rays = plate is null ? null : TangentRays.Of(geometry.Curve, centre, ring, clockwise ? 1 : -1, 0, eave);
        var poles = geometry.Landings.Where(l => !l.Secondary).Select(landing =>
        {
            var v = landing.Point - centre;
            var radius = v.Norm;
            double reach = 0;
            if (rays is not null && radius > ring)
            {
                var touch = Math.Atan2(v.East, v.North) + (clockwise ? 1 : -1) * Math.Acos(ring / radius);
                reach = Math.Max(0, rays.ToEave(touch) - Math.Sqrt(radius * radius - ring * ring));
            }

            return new PoleOnPlan(landing.Point, reach, roof.Pole.Butt.Metres, roof.Pole.Tip.Metres, roof.Notch.Metres, 0, Tail);
        }).ToSequence();
        return ReciprocalFrame.Of(new ReciprocalPlan(centre, ring, roof.Turn, poles)) switch
        {
            ReciprocalShape.Frame { Geometry: var frame } => new ReciprocalShape.Frame(frame with { SideBySide = roof.SideBySide, Poles = frame.Poles.Select(p => LevelSeat.On(geometry, p)).ToSequence() }),
            var impossible => impossible,
        };
    }

    private static ReciprocalResult Checked(
        ReciprocalResult result, Crossing[] crossings, House house, Building.Roof.Reciprocal roof, RoofStages stages, RoofWeights weights, Known<SnowLoad> snow, Known<WindLoad> wind)
    {
        var combined = Combine(house, stages, weights, result.Geometry.MeanRadialPitch, snow, wind);
        var uplift = combined.States.Count == 0 ? [] : result.Poles.Select(p => Math.Max(0, combined.States.Max(s => -s.Forces.PlateReaction[p.Number - 1]))).ToSequence();
        var staged = StageStates.Of(result, weights.Poles.Value?.System ?? TimberSystem.Nds);
        Sequence<CombinedState> all = combined.States.Count == 0 ? [] : [.. combined.States, .. staged];
        result = result with
        {
            Combined = combined, Checks = PoleChecks.Of(result, weights.Poles, combined, house.BondBeam, roof.Seat), Uplift = uplift,
            StageChecks = combined.States.Count == 0 ? [] : PoleChecks.Of(result, weights.Poles, new CombinedStates(staged, []), house.BondBeam, roof.Seat),
            Pins = PinChecks.Of(result.Geometry, crossings, weights.Poles, roof, all), Charlie = CharlieChecks.Of(result.Raising, weights.Poles, house.Site),
        };
        return result with { WaysOut = LossChecks.Of(result, roof, weights.Poles, house.Site, all) };
    }

    private static CombinedStates Combine(House house, RoofStages stages, RoofWeights weights, double slope, Known<SnowLoad> snow, Known<WindLoad> wind)
    {
        var edition = LoadEditions.Parse(house.Site.Loads);
        var european = weights.Poles.Value?.System == TimberSystem.En;
        if (european && edition is not LoadEdition.En1990)
        {
            return new([], [new Message("analysis.members.systems")]);
        }

        var form = european ? LoadForm.Strength : LoadForm.AllowableStress;
        return RoofCombinations.Of(stages, edition, form, snow, wind, Live(edition, stages.Cases.Areas.Max(), slope), house.Site.SeismicSds);
    }

    /// <summary>Where timber is held against factored loads, the same loads unfactored; null where they are so anyhow.</summary>
    private static CombinedStates? Everyday(House house, RoofStages stages, RoofWeights weights, double slope, Known<SnowLoad> snow, Known<WindLoad> wind) =>
        weights.Poles.Value?.System == TimberSystem.En && LoadEditions.Parse(house.Site.Loads) is LoadEdition.En1990 and var edition
            ? RoofCombinations.Of(stages, edition, LoadForm.AllowableStress, snow, wind, Live(edition, stages.Cases.Areas.Max(), slope), house.Site.SeismicSds)
            : null;

    private static double Live(LoadEdition? edition, double area, double slope) =>
        edition == LoadEdition.En1990 ? RoofLiveLoad.En().Value : RoofLiveLoad.Asce(area, Math.Tan(slope)).Value;

    private static Known<DeckLoads> OnDeck(House house, Building.Roof roof, RoofWeights weights, double slope, Known<SnowLoad> snow, Known<WindLoad> wind)
    {
        var edition = LoadEditions.Parse(house.Site.Loads);
        return DeckLoads.Of(weights, slope, edition, snow.Value, wind.Value, Live(edition, 0, slope), house.Site.SeismicSds, RoofCases.Brim(roof));
    }

    private static Known<RoofPush> Pushed(HouseGeometry geometry, Sequence<PoleGeometry> poles, RoofStages stages, RoofWeights weights, Known<SnowLoad> snow, Known<WindLoad> wind)
    {
        var (wet, why) = stages.SoilWet;
        return RoofPush.Of(
            geometry, Offset(geometry), poles.Max(p => p.HeightAt(p.TangentDistance)), (wet?.Sum(l => l.Total), why), snow.Value, wind, weights.Poles.Value?.System == TimberSystem.En);
    }

    private static CheckedMember[] Only(CheckedMember? check) => check is null ? [] : [check];

    private static IEnumerable<Assumption> Fixed(Building.Roof roof) => [.. SoilSlip.Assumed(roof), .. DeckFixing.Assumed(roof), .. SeatFixing.Assumed(roof.Seat)];

    private static RoofResult Without(Message because) => new()
    {
        Reciprocal = because, Plain = because, Snow = because, Wind = because, LayersWet = because, LayersDry = because, Assumptions = [], Calculations = [],
    };

    /// <summary>Offset of the bond-beam line from the inside curve, from where the first pole landed.</summary>
    private static double Offset(HouseGeometry geometry)
    {
        var landing = geometry.Landings.First(l => !l.Secondary);
        return (landing.Point - geometry.Curve.At(landing.Station)).Dot(geometry.Curve.Normal(landing.Station));
    }

    /// <summary>Height of the pole axes over their feet, from the finished floor: wall, bond beam and half a pole, not let in.</summary>
    private static double AxisHeight(House house, ReciprocalGeometry frame)
    {
        var pole = frame.Poles[0];
        return house.Wall.Top.Metres + (house.BondBeam?.Depth.Metres ?? 0) + pole.DiameterAt(0) / (2 * pole.PitchCosine);
    }

    private static Known<SnowLoad> SnowOn(House house, double slope)
    {
        if (LoadEditions.Parse(house.Site.Loads) is not { } edition)
        {
            return new Message("analysis.loads.no-edition");
        }

        return house.Site.GroundSnow is { } ground
            ? SnowOnRoof.Of(new GroundSnow(edition, ground.Pascals), slope, house.Site.RiskCategory, house.Roof?.EdgeBoard is not null)
            : new Message("analysis.loads.no-snow");
    }

    private static Known<WindLoad> WindOn(House house, HouseGeometry geometry, Sequence<PoleGeometry> poles, double slope, double axis, double eaveOffset)
    {
        if (LoadEditions.Parse(house.Site.Loads) is not { } edition)
        {
            return new Message("analysis.loads.no-edition");
        }

        if (house.Site.WindSpeed is not { } speed)
        {
            return new Message("analysis.loads.no-wind");
        }

        var grade = house.Site.Grade?.Metres ?? 0;
        var top = poles.Max(p => p.HeightAt(p.TangentDistance));
        var eave = poles.Min(p => p.HeightAt(-p.EaveReach));
        var width = 2 * Math.Sqrt(geometry.Curve.OffsetArea(eaveOffset) / Math.PI);
        return WindOnHouse.Of(
            new BasicWind(edition, speed.MetresPerSecond), house.Site.Exposure, new WindShape(axis + (top + eave) / 2 - grade, slope, width, house.Site.Elevation?.Metres ?? 0));
    }

    private static Sequence<Calculation> Steps(Known<Calculated<double>> known) => known.Value is { } value ? [value.How] : [];
}
