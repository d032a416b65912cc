using Clomwright.Analysis.Finishes;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis;
using Clomwright.Analysis.Comfort;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Collapse;
using Clomwright.Analysis.Structure;
using Clomwright.Analysis.WallByHand;
using Clomwright.Analysis.WallTrials;
using Clomwright.Analysis.WallTop;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;
using Clomwright.Study.Demands;
using Clomwright.Study.Mends;

namespace Clomwright.Study;

/// <summary>Everything that follows from one house: the table of contents of the program.</summary>
/// <remarks>
/// The passes stand below in the order in which they feed each other. Each is computed once, when it is first asked for, and is taken over
/// from an earlier study of the same house where everything it reads is equal; either way the answer is the same.
/// </remarks>
public sealed class HouseStudy
{
    private readonly Lazy<PlacedHouse> placed;
    private readonly Lazy<HouseQuantities> quantities, ofWall;
    private readonly Lazy<MixResult> mix;
    private readonly Lazy<SettingOut> settingOut;
    private readonly Lazy<RoofResult> roof;
    private readonly Lazy<WallTopResult> wallTop;
    private readonly Lazy<WallByHandResult> wallByHand;
    private readonly Lazy<FoundationResult> foundation;
    private readonly Lazy<FinishesResult> finishes;
    private readonly Awaited<Known<StructureResult>> structure;
    private readonly Awaited<Known<CollapseResult>> collapse;
    private readonly Lazy<Known<WallTrialsResult>> trials;
    private readonly Lazy<Sequence<Finding>> wallFindings;
    private readonly Lazy<Known<WeatherResult>> weather;
    private readonly Awaited<Known<DryingResult>> drying;
    private readonly Lazy<Known<FreshCob>> fresh;
    private readonly Lazy<Sequence<BlockReading>> blocks;
    private readonly Lazy<Known<MilestoneQuestion>> milestonesAsked;
    private readonly Lazy<Known<DryingMilestones>> milestones;
    private readonly Lazy<Known<StartYear>> startMonths;
    private readonly Lazy<Known<WallCover>> cover;
    private readonly Lazy<Known<DaysQuestion>> daysAsked, daysOutline;
    private readonly Lazy<DateOnly?> firstLift;
    private readonly Lazy<Sequence<BeamPiece>> beamPieces;
    private readonly Lazy<Sequence<PoleSeat>> seats;
    private readonly Lazy<Known<PlannedDaysResult>> daysPlanned;
    private readonly Lazy<ComfortResult> comfort;
    private readonly Lazy<Known<FixResults>> comfortFixes;
    private readonly Lazy<Known<FirstWinter>> firstWinter;
    private readonly Awaited<Known<DaysResult>> days;
    private readonly Lazy<FinishesResult> plastered;
    private readonly Lazy<Sequence<Finding>> findings;
    private readonly Lazy<Sequence<Diagnostic>> diagnostics;

    private HouseStudy(House house, StudyOptions options, Earlier before)
    {
        (House, Options, Before) = (house, options, before);
        placed = new(() => PlacedOf(house, before.Study));
        ofWall = new(() => Clomwright.Geometry.Quantities.Of(Geometry));
        beamPieces = new(() => Analysis.WallTop.FromRoof.Pieces(Geometry));
        quantities = new(() => HouseOrders.Of(house, WallQuantities, Geometry.Tees.Count, beamPieces.Value, Roof, Finishes));
        mix = new(() => FromTests.Of(house.Mix, Quantities));
        settingOut = new(() => SettingOuts.Of(Geometry));
        roof = new(() => RoofOf(house, Geometry, before.Study));
        seats = new(() => Analysis.WallTop.FromRoof.Seats(Geometry, Roof, beamPieces.Value));
        wallTop = new(() => Analysis.WallTop.FromRoof.Of(Geometry, Roof, Mix.Strength.Settled, beamPieces.Value, seats.Value));
        wallByHand = new(() => FromPiers.Of(Geometry, Roof, WallTop.Seats, Mix.Strength, DryingNumbers.Of(house.Assumed, DryingCase.Middle, KnownToDrying.OfCob(Geometry, Mix))));
        foundation = new(() => FoundationOf(house, Geometry, Roof, before.Study));
        finishes = new(() => Analysis.Finishes.FromGeometry.Of(Geometry, FinishInputs.None with { Months = MonthsOf(Weather) }));
        findings = new(() => RuleBook.Check(Geometry, [.. FromResults.Of(Geometry, Roof, WallTop, Mix), .. OfWallByHand.Demands(House, Roof, WallByHand, Mix), .. OfFoundation.Demands(House, Foundation), .. OfFinishes.Demands(House, Finishes),
            .. OfDrying.Demands(House, Fresh, Milestones, Finishes)], Mix).Concat(NotAsked).ToSequence());
        structure = new(watch => StructureOf(house, Geometry, Roof, WallTop, Mix, before.Study, watch));
        collapse = new(watch => CollapseOf(house, Geometry, Roof, WallTop, Mix, options, before.Study, watch));
        trials = new(() => TrialsOf(this, before.Study));
        wallFindings = new(() => RuleBook.CheckWall(Geometry, [.. OfStructure.Demands(Structure, Mix), OfCollapse.Demand(Collapse), .. OfWallTrials.Demands(Trials, Structure, WallByHand, Mix)]));
        weather = new(() => FromSite.Of(house.Site));
        fresh = new(() => FromWeather.Fresh(Geometry, KnownToDrying.OfCob(Geometry, Mix)));
        blocks = new(() => FromWeather.Blocks(Geometry, KnownToDrying.OfCob(Geometry, Mix)));
        milestonesAsked = new(() => Asked(house, Rising, Roof, Mix));
        milestones = new(() => MilestonesOf(milestonesAsked.Value, Weather, before.Study));
        drying = new(watch => DryingOf(this, before.Study, watch));
        startMonths = new(() => StartMonthsOf(house, Geometry, Roof, Mix, Weather, before.Study));
        cover = new(() => Analysis.Drying.Cover.Of(Geometry));
        daysOutline = new(() => DaysOf.Outline(this));
        firstLift = new(() => FirstLiftOf(this, before.Study));
        comfort = new(() => ComfortOf(this, before.Study));
        comfortFixes = new(() => ComfortFixesOf(this, before.Study));
        firstWinter = new(() => Analysis.Comfort.FromRoof.FirstWinterOf(Geometry, Roof, Weather, Mix.DryDensity.Value, Comfort, Drying));
        daysAsked = new(() => DaysOf.Question(this));
        daysPlanned = new(() => DaysAsked.Value is { } asked ? PlannedDays.Of(asked) : DaysAsked.NotChecked!);
        days = new(watch => DaysAsked.Value is { } asked ? Analysis.Days.FromDrying.Of(asked, watch) : DaysAsked.NotChecked!);
        plastered = new(() => Finishes.WithReady(PlasterOf(Drying)));
        diagnostics = new(() => [.. HouseDiagnostics.Of(House), .. Geometry.Diagnostics, .. FromWall.Remarks(Geometry), .. AssumedKeys.Remarks(House), .. ComfortKeys.Remarks(House)]);
    }

    /// <summary>The description.</summary>
    public House House { get; }

    /// <summary>What was asked for.</summary>
    public StudyOptions Options { get; }

    /// <summary>The study that this one may take passes over from.</summary>
    internal Earlier Before { get; }

    /// <summary>Where everything is.</summary>
    public HouseGeometry Geometry => placed.Value.Geometry;

    /// <summary>What it takes, in the builder's units.</summary>
    public HouseQuantities Quantities => quantities.Value;

    /// <summary>The same without what roof, plasters and floor take.</summary>
    public HouseQuantities WallQuantities => ofWall.Value;

    /// <summary>What soil, mix and their tests say: recipe, next test, strength.</summary>
    public MixResult Mix => mix.Value;

    /// <summary>How to mark it on the ground.</summary>
    public SettingOut SettingOut => settingOut.Value;

    /// <summary>What holds the roof, and what it asks of the wall.</summary>
    public RoofResult Roof => roof.Value;

    /// <summary>Headers, tees and bond beam under that roof.</summary>
    public WallTopResult WallTop => wallTop.Value;

    /// <summary>Where each pole presses on the wall: of the wall top what is known at once.</summary>
    public Sequence<PoleSeat> Seats => seats.Value;

    /// <summary>The wall worked by hand: piers, what tips and slides it, green and wet.</summary>
    public WallByHandResult WallByHand => wallByHand.Value;

    /// <summary>What comes down on stem and ground, and how trench and drain lie.</summary>
    public FoundationResult Foundation => foundation.Value;

    /// <summary>Plasters, lath and floor.</summary>
    public FinishesResult Finishes => finishes.Value;

    /// <summary>The whole wall as one elastic body; or why it is not known. Computed when somebody asks: <see cref="Findings"/> do not wait for it, <see cref="AllFindings"/> do.</summary>
    public Known<StructureResult> Structure => structure.Value;

    /// <summary>The same for one who waits and may give up: the same answer as <see cref="Structure"/>, and kept.</summary>
    /// <param name="watch">Who waits.</param>
    /// <exception cref="OperationCanceledException">The one who waited gave up; nothing is kept.</exception>
    public Known<StructureResult> StructureFor(Watch watch) => structure.For(watch);

    /// <summary>The push at which the house falls; or why it is not known. Only in a deep study, and computed when somebody asks.</summary>
    public Known<CollapseResult> Collapse => collapse.Value;

    /// <summary>The model of the wall rising, young under its roof, soaked, settled and pushed, and what it hangs on; or why that is not known. Only in a deep study, and computed when somebody asks.</summary>
    public Known<WallTrialsResult> Trials => trials.Value;

    /// <summary>The same for one who waits and may give up: the same answer as <see cref="Collapse"/>, and kept.</summary>
    /// <param name="watch">Who waits.</param>
    /// <exception cref="OperationCanceledException">The one who waited gave up; nothing is kept.</exception>
    public Known<CollapseResult> CollapseFor(Watch watch) => collapse.For(watch);

    /// <summary>The mean days of the site's climate; or why they are not known.</summary>
    public Known<WeatherResult> Weather => weather.Value;

    /// <summary>What the cob stands on the day it is laid; or why that is not known.</summary>
    public Known<FreshCob> Fresh => fresh.Value;

    /// <summary>Blocks that the crew weighed, read; in the order of the house file.</summary>
    public Sequence<BlockReading> Blocks => blocks.Value;

    /// <summary>When lifts are laid, and, where a day is planned for them, when the roof may land and plaster may go on; or why that is not known.</summary>
    public Known<DryingMilestones> Milestones => milestones.Value;

    /// <summary>How the wall dries, bay by bay; or why that is not known. Computed when somebody asks: no finding waits for it.</summary>
    public Known<DryingResult> Drying => drying.Value;

    /// <summary>How the wall dries, for one who waits and may give up; the same answer as <see cref="Drying"/>, and kept.</summary>
    /// <param name="watch">Who waits.</param>
    /// <exception cref="OperationCanceledException">The one who waited gave up; nothing is kept.</exception>
    public Known<DryingResult> DryingFor(Watch watch) => drying.For(watch);

    /// <summary>The same wall begun in each month of the year. Computed when somebody asks.</summary>
    public Known<StartYear> StartMonths => startMonths.Value;

    /// <summary>What a forecast of days asks before anybody asks how the wall dries; or why it cannot.</summary>
    internal Known<DaysQuestion> DaysOutline => daysOutline.Value;

    /// <summary>The day on which the first lift is laid: the first day of work where the stem is there, else the day by which half of the drawn seasons have one. Null where nobody can tell.</summary>
    public DateOnly? FirstLift => firstLift.Value;

    /// <summary>The placed house with its crew beginning on the wall: what drying reads.</summary>
    internal HouseGeometry Rising => House.Crew is not { Begins: not WorkBegins.Wall } crew ? Geometry
        : Geometry with { House = House with { Crew = FirstLift is { } first ? crew with { Start = first } : null } };

    /// <summary>The job day by day if nothing is lost: what each day is for; or why that is not known.</summary>
    public Known<PlannedDaysResult> DaysPlanned => daysPlanned.Value;

    /// <summary>Who does what, day by day; or why that is not known.</summary>
    /// <param name="planner">Puts named people to their work; the plain plan where none is given.</param>
    public Known<CrewBoard> BoardBy(Func<RotaQuestion, RotaResult>? planner = null) => CrewBoard.Of(this, planner);

    /// <summary>What a host has ready by when; or why that is not known.</summary>
    public Known<HostList> Host => HostList.Of(this);

    /// <summary>What there is to do on a wet day.</summary>
    public UnderCover UnderCover => UnderCover.Of(this);

    /// <summary>What a forecast of days asks; or why it cannot.</summary>
    public Known<DaysQuestion> DaysAsked => daysAsked.Value;

    /// <summary>When the job would be done, through a thousand seasons: a forecast, not permission.</summary>
    public Known<DaysResult> Days => days.Value;

    /// <summary>The same for somebody who waits; kept once it is there, so that nobody waits twice.</summary>
    /// <param name="watch">Is told how far it is and may give up.</param>
    /// <exception cref="OperationCanceledException">They gave up; the next who asks begins anew.</exception>
    public Known<DaysResult> DaysFor(Watch watch) => days.For(watch);

    /// <summary>What other ways and other weeks would bring: takes some seconds, and is not kept.</summary>
    /// <param name="watch">Is told how far it is and may give up.</param>
    /// <exception cref="OperationCanceledException">They gave up.</exception>
    public Known<DaysChoices> DaysChoicesFor(Watch watch) => DaysChoicesOf.Of(this, watch);

    /// <summary>What it takes to cover the wall until it has a roof.</summary>
    public Known<WallCover> Cover => cover.Value;

    /// <summary>How warm, dry and light it will be: facts, no verdict. Computed when somebody asks.</summary>
    public ComfortResult Comfort => comfort.Value;

    /// <summary>What each fix would bring to its warmth; or why that is not known. Each takes as long as a year: computed when somebody asks.</summary>
    public Known<FixResults> ComfortFixes => comfortFixes.Value;

    /// <summary>The wall in the first winter; or why that is not known. Asks the forecast of drying.</summary>
    public Known<FirstWinter> FirstWinter => firstWinter.Value;

    /// <summary>Plasters, lath and floor, with the forecast of when plaster may go on. Computed when somebody asks.</summary>
    public FinishesResult FinishesDried => plastered.Value;

    /// <summary>What the adopted rules say, quick enough to follow a hand: what asks for the model of the whole wall is not checked here.</summary>
    public Sequence<Finding> Findings => findings.Value;

    /// <summary>What the rules say of where everything stands, and of all else what they said of this house before somebody took a part of it in hand: quicker by far than <see cref="Findings"/>.</summary>
    /// <param name="before">The <see cref="Findings"/> of before.</param>
    public Sequence<Finding> FindingsInHand(Sequence<Finding> before) => RuleBook.CheckPlaces(Geometry, before);

    /// <summary>What the model of the whole wall says. Computed when somebody asks.</summary>
    public Sequence<Finding> WallFindings => wallFindings.Value;

    /// <summary>All that the rules say, the model of the whole wall solved.</summary>
    public Sequence<Finding> AllFindings => [.. Findings.Where(f => f.Clause.Body != RuleBook.WallModel), .. WallFindings];

    /// <summary>Quick findings counted; "not checked" is never among the met.</summary>
    public Tally Tally => Tally.Of(Findings);

    /// <summary>All findings counted.</summary>
    public Tally FullTally => Tally.Of(AllFindings);

    /// <summary>What is wrong or odd in the description itself.</summary>
    public Sequence<Diagnostic> Diagnostics => diagnostics.Value;

    /// <summary>Values nobody gave that something leaned on.</summary>
    public Sequence<Assumption> Assumptions => Quantities.Assumptions.Concat(Mix.Assumptions).Concat(Roof.Assumptions).Concat(WallTop.Assumptions).Concat(WallByHand.Assumptions).Concat(Foundation.Assumptions).Concat(Finishes.Assumptions).Concat(Analysis.FreeZone.FromGeometry.Of(Geometry).Assumptions).Concat(Structure.Value?.Assumptions ?? []).Concat(Collapse.Value?.Assumptions ?? []).Concat(Trials.Value?.Assumptions ?? []).Distinct().ToSequence();

    /// <summary>The calculations behind the numbers, for papers to print. Those of gaps over frames run the forecast of drying: made when somebody asks, and by no finding.</summary>
    public Sequence<Calculation> Calculations => [.. Quantities.Calculations, .. Mix.Calculations, .. Roof.Calculations, .. WallTop.Calculations, .. WallByHand.Calculations, .. Foundation.Calculations, .. Structure.Value?.Calculations ?? [], .. Collapse.Value?.Calculations ?? [], .. Trials.Value?.Calculations ?? [], .. Finishes.Calculations, .. Cover.Value is { } cover ? [cover.How] : (Sequence<Calculation>)[],
        .. Comfort.Calculations, .. Drying.Value?.Calculations ?? Fresh.Value?.Calculations ?? []];

    /// <summary>At most three tried changes that mend a finding; none for one that does not fall short.</summary>
    public Sequence<Mend> MendsOf(Finding finding) => TriedFor(finding).Mends;

    /// <summary>The same, and where nothing mends it what was tried in vain and why.</summary>
    public Attempts TriedFor(Finding finding) => Mends.MendsOf.Finding(this, finding);

    /// <summary>The study of a house.</summary>
    /// <param name="house">The description; it may be incomplete or wrong, the rest is still computed.</param>
    /// <param name="options">What is asked for.</param>
    /// <param name="earlier">A study whose passes may be taken over where their inputs are equal.</param>
    public static HouseStudy Of(House house, StudyOptions options, HouseStudy? earlier = null) => new(house, options, Earlier.Of(earlier));

    /// <summary>The quick study of a house.</summary>
    public static HouseStudy Of(House house) => Of(house, StudyOptions.Quick);

    private static PlacedHouse PlacedOf(House house, HouseStudy? earlier) =>
        earlier is not { placed.IsValueCreated: true } ? FromBuilding.Place(house)
        : WhatIsRead.ByGeometry(earlier.House) == WhatIsRead.ByGeometry(house) ? earlier.placed.Value.Of(house)
        : FromBuilding.Place(house, earlier.placed.Value);

    private static RoofResult RoofOf(House house, HouseGeometry geometry, HouseStudy? earlier) =>
        earlier is { roof.IsValueCreated: true } && WhatIsRead.ByRoof(earlier.House) == WhatIsRead.ByRoof(house)
            ? earlier.Roof
            : Analysis.Roof.FromGeometry.Of(geometry);

    private static Known<DryingResult> DryingOf(HouseStudy study, HouseStudy? earlier, Watch? watch) =>
        earlier is { drying.IsValueCreated: true } && ReferenceEquals(earlier.Roof, study.Roof) && WhatIsRead.ByDrying(earlier.House) == WhatIsRead.ByDrying(study.House) && earlier.FirstLift == study.FirstLift
            ? earlier.Drying
            : FromWeather.Of(study.Rising, study.Weather, KnownToDrying.Of(study.Geometry, study.Roof, study.Mix), watch);

    /// <summary>When the first lift is laid: asked of drawn seasons only where something has to be built before it.</summary>
    private static DateOnly? FirstLiftOf(HouseStudy study, HouseStudy? earlier) =>
        study.House.Crew is not { } crew ? null
        : crew.Begins == WorkBegins.Wall ? crew.Start
        : study.DaysOutline.Value is not { } asked ? null
        : earlier is { firstLift.IsValueCreated: true } && earlier.DaysOutline.Value is { } before && before.Crew == asked.Crew && before.Amounts == asked.Amounts && before.Log == asked.Log && earlier.House.Site == study.House.Site && earlier.House.Assumed == study.House.Assumed ? earlier.FirstLift
        : Analysis.Days.FirstLift.Of(asked);

    /// <summary>As far as the house plans a day: no further.</summary>
    private static Known<MilestoneQuestion> Asked(House house, HouseGeometry geometry, RoofResult roof, MixResult mix)
    {
        var goal = house.Finishes.Any(f => f.Start is not null) ? DryingGoal.Plaster : house.Crew?.RoofOn is not null ? DryingGoal.Roof : DryingGoal.Walls;
        return FromWeather.Question(geometry, goal == DryingGoal.Walls ? KnownToDrying.OfCob(geometry, mix) : KnownToDrying.Of(geometry, roof, mix), goal);
    }

    private static Known<DryingMilestones> MilestonesOf(Known<MilestoneQuestion> asked, Known<WeatherResult> weather, HouseStudy? earlier) =>
        asked.Value is not { } question ? asked.NotChecked!
        : earlier is { milestones.IsValueCreated: true } && earlier.milestonesAsked.Value.Value == question ? earlier.Milestones
        : FromWeather.MilestonesOf(question, weather);

    private static Known<StartYear> StartMonthsOf(House house, HouseGeometry geometry, RoofResult roof, MixResult mix, Known<WeatherResult> weather, HouseStudy? earlier) =>
        earlier is { startMonths.IsValueCreated: true } && ReferenceEquals(earlier.Roof, roof) && WhatIsRead.ByDrying(earlier.House) == WhatIsRead.ByDrying(house)
            ? earlier.StartMonths
            : FromWeather.ByMonth(geometry, weather, KnownToDrying.Of(geometry, roof, mix));

    /// <summary>Days from the last cob, not from the first lift.</summary>
    private static Known<PlasterReady> PlasterOf(Known<DryingResult> drying)
    {
        if (drying.Value is not { } d)
        {
            return drying.NotChecked!;
        }

        double? After(WallDrying wall) => wall.PlasterDay is { } day ? day - wall.Lifts[^1].LaidDay : null;
        return After(d.Fast) is { } low ? new PlasterReady(low, After(d.Slow)) : new Message("study.drying-not-reached");
    }

    private static Known<Months> MonthsOf(Known<WeatherResult> weather) => weather.Value is { } w
        ? new Months(w.Climate.Months.Select(m => new MonthRange(m.Number, m.High, m.Low)).ToSequence())
        : weather.NotChecked!;

    private static ComfortResult ComfortOf(HouseStudy study, HouseStudy? earlier) =>
        earlier is { comfort.IsValueCreated: true } && WhatIsRead.ByComfort(earlier.House) == WhatIsRead.ByComfort(study.House)
            ? earlier.Comfort
            : Analysis.Comfort.FromRoof.Of(study.Geometry, study.Roof, study.Weather, study.Mix.DryDensity.Value);

    private static Known<FixResults> ComfortFixesOf(HouseStudy study, HouseStudy? earlier) =>
        earlier is { comfortFixes.IsValueCreated: true } && WhatIsRead.ByComfort(earlier.House) == WhatIsRead.ByComfort(study.House)
            ? earlier.ComfortFixes
            : Analysis.Comfort.FromRoof.FixesOf(study.Geometry, study.Roof, study.Weather, study.Mix.DryDensity.Value, study.Comfort);

    private static FoundationResult FoundationOf(House house, HouseGeometry geometry, RoofResult roof, HouseStudy? earlier) =>
        earlier is { foundation.IsValueCreated: true } && ReferenceEquals(earlier.Roof, roof) && WhatIsRead.ByFoundation(earlier.House) == WhatIsRead.ByFoundation(house)
            ? earlier.Foundation
            : FromWall.Of(geometry, roof);

    private Sequence<Finding> NotAsked => RuleBook.CheckWall(Geometry, [.. OfStructure.Demands(new Message("study.structure.not-asked"), Mix), OfCollapse.Demand(new Message("study.collapse.not-deep")), .. OfWallTrials.Demands(new Message("study.trials.not-deep"), new Message("study.trials.not-deep"), null, Mix)]);

    private static Known<StructureResult> StructureOf(House house, HouseGeometry geometry, RoofResult roof, WallTopResult top, MixResult mix, HouseStudy? earlier, Watch? watch) =>
        earlier is { structure.IsValueCreated: true } && ReferenceEquals(earlier.Roof, roof) && WhatIsRead.ByStructure(earlier.House) == WhatIsRead.ByStructure(house)
            ? earlier.Structure
            : FromWallTop.Of(geometry, roof, top, mix.Strength, watch: watch);

    private static Known<CollapseResult> CollapseOf(House house, HouseGeometry geometry, RoofResult roof, WallTopResult top, MixResult mix, StudyOptions options, HouseStudy? earlier, Watch? watch) =>
        !options.Deep ? new Message("study.collapse.not-deep")
        : earlier is { Options.Deep: true, collapse.IsValueCreated: true } && ReferenceEquals(earlier.Roof, roof) && WhatIsRead.ByStructure(earlier.House) == WhatIsRead.ByStructure(house) ? earlier.Collapse
        : Analysis.Collapse.FromRoof.Of(geometry, roof, top.Seats, mix.Strength.Characteristic, watch);

    private static Known<WallTrialsResult> TrialsOf(HouseStudy study, HouseStudy? earlier) =>
        !study.Options.Deep ? new Message("study.trials.not-deep")
        : earlier is { Options.Deep: true, trials.IsValueCreated: true } && ReferenceEquals(earlier.Roof, study.Roof) && WhatIsRead.ByTrials(earlier.House) == WhatIsRead.ByTrials(study.House) ? earlier.Trials
        : Analysis.WallTrials.FromDrying.Of(study.Geometry, study.Roof, study.WallTop, study.Mix.Strength, study.Drying, KnownToDrying.Of(study.Geometry, study.Roof, study.Mix), study.Structure);
}
