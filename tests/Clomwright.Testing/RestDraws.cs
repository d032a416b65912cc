using Clomwright.Building;
using Clomwright.Evidence;
using CsCheck;

namespace Clomwright.Testing;

/// <summary>Random sites, roofs and crews.</summary>
internal static class RestDraws
{
    public static Gen<Site> Site(Tape tape, Length stemTop) =>
        from latitude in Gen.Int[-550, 650].Select(n => n / 10.0).OrNull()
        from longitude in Gen.Int[-1800, 1800].Select(n => n / 10.0).OrNull()
        from elevation in Gen.Int[0, 2500].Select(n => Length.FromMillimetres(1000L * n)).OrNull()
        from climate in Gen.OneOf("portland-or", "santa-fe-nm", "exeter-gb").OrNothing()
        from below in tape.Between(16, 24)
        from loads in Gen.OneOf("asce7-16", "asce7-22", "en1990").OrNothing()
        from snow in Gen.Int[0, 30].Select(n => new Stress(100.0 * n)).OrNull()
        from wind in Gen.Int[25, 60].Select(n => new Speed(n)).OrNull()
        from exposure in Gen.OneOf("B", "C", "D").OrNothing()
        from seismic in Gen.Int[0, 80].Select(n => n / 100.0).OrNull()
        from frost in tape.Between(0, 40).OrNull()
        from bearing in Gen.Int[50, 300].Select(n => new Stress(1000.0 * n)).OrNull()
        from months in Month.Array[12].Select(m => m.ToSequence())
        from rarely in Gen.Int[0, 9] // A house of its own months is a house whose drying is run.
        from foretold in Gen.Select(Date, Day.Array[0, 3], (first, days) => days.Select((d, i) => d with { Date = first.AddDays(i) }).ToSequence())
        let own = rarely == 0 && climate is null && latitude is not null
        select new Site
        {
            Latitude = latitude, Longitude = longitude, Elevation = elevation, Climate = climate, Months = own ? months : [], Grade = stemTop - below, Loads = loads,
            GroundSnow = snow, WindSpeed = wind, Exposure = exposure, SeismicSds = seismic, SeismicSd1 = seismic / 2, SeismicS1 = seismic / 2,
            SiteClass = exposure is null ? null : "D", RiskCategory = loads is null ? null : "II", FloodZone = loads is null ? null : "X", Termites = exposure is null ? null : "moderate to heavy", Weathering = climate is null ? null : "severe", EnergyZone = climate is null ? null : "5B",
            IceBarrier = latitude is null ? null : "no", FrostDepth = frost, SoilBearing = bearing, Forecast = foretold,
        };

    private static Gen<SiteDay> Day { get; } =
        from low in Gen.Int[-30, 25]
        from range in Gen.Int[0, 20]
        from rain in Gen.Int[0, 40]
        from wind in Gen.Int[0, 120].Select(n => new Speed(n / 10.0)).OrNull()
        from sun in Gen.Int[0, 300].Select(n => n / 10.0).OrNull()
        select new SiteDay(default, new Temperature(low + range), new Temperature(low), Length.FromMillimetres(rain)) { Wind = wind, Sun = sun };

    private static Gen<SiteMonth> Month { get; } =
        from low in Gen.Int[-30, 25]
        from range in Gen.Int[0, 20]
        from dew in Gen.Int[-10, 0]
        from wind in Gen.Int[0, 120]
        from sun in Gen.Int[0, 300]
        from wet in Gen.Int[0, 28]
        from rain in Gen.Int[0, 200]
        select new SiteMonth(
            new Temperature(low + range), new Temperature(low), new Temperature(low + dew), new Speed(wind / 10.0), sun / 10.0, Length.FromMillimetres(wet == 0 ? 0 : rain), wet);

    public static Gen<Roof> Roof(Tape tape, double leastRadius)
    {
        var shared =
            from eave in tape.Between(18, 36)
            from perBay in Gen.Int[0, 2]
            from deck in tape.Between(0.75, 2).OrNull()
            from layers in Gen.Select(Gen.OneOf("planted soil", "drain mat", "membrane", "insulation"), tape.Between(0.25, 6), (n, d) => new Layer(n, d, n == "planted soil" ? "ordinary-earth" : null)).Array[0, 4]
            from board in tape.Between(4, 9).OrNull()
            from first in Gen.Int[0, 719]
            select (eave, secondaries: perBay == 0 ? null : new Secondaries(perBay, tape.AtLeast(4)), deck, layers: layers.ToSequence(), board, first: new Angle(first / 2.0));
        var pole =
            from butt in tape.Between(6, 10)
            from thinner in Gen.Int[0, 4]
            select new PoleSize(butt, butt - tape.Step * (2 * thinner));
        var poles = Gen.Int[7, 13];
        var pitch = Gen.Int[4, 60].Select(n => new Slope(n / 100.0));
        return Gen.OneOf<Roof>(
            from n in poles
            from size in pole
            from ring in tape.Between(0.15 * leastRadius, 0.35 * leastRadius)
            from turn in Gen.Enum<Turn>()
            from joint in Gen.Enum<PoleJoint>()
            from eye in Gen.Enum<Eye>()
            from s in shared
            select (Roof)new Roof.Reciprocal(n, ring, size)
            {
                Turn = turn, Joint = joint, Eye = eye, Notch = joint == PoleJoint.Notched ? tape.AtLeast(1) : Length.Zero,
                Eave = s.eave, Secondaries = s.secondaries, Deck = s.deck, Layers = s.layers, EdgeBoard = s.board, FirstBearing = s.first,
                Landings = n % 3 == 0 ? Enumerable.Range(0, n).Select(i => new Angle((s.first.Degrees + Math.Round(720.0 * i / n) / 2) % 360)).ToSequence() : [],
            },
            from n in poles
            from size in pole
            from slope in pitch
            from post in Gen.Bool
            from s in shared
            select (Roof)new Roof.Radial(n, size, slope)
            {
                CentrePost = post, RingRadius = post ? Length.Zero : tape.AtLeast(12), Eye = post ? Eye.Closed : Eye.Glazed,
                Eave = s.eave, Secondaries = s.secondaries, Deck = s.deck, Layers = s.layers, EdgeBoard = s.board, FirstBearing = s.first,
            },
            from size in pole
            from slope in pitch
            from spacing in tape.Between(24, 48)
            from s in shared
            select (Roof)new Roof.Shed(size, spacing, slope) { Eave = s.eave, Deck = s.deck, Layers = s.layers, EdgeBoard = s.board, FirstBearing = s.first },
            from size in pole
            from slope in pitch
            from spacing in tape.Between(24, 48)
            from s in shared
            select (Roof)new Roof.Gable(size, spacing, slope) { Eave = s.eave, Deck = s.deck, Layers = s.layers, FirstBearing = s.first, Species = "larch-pole" });
    }

    public static Gen<Crew> Crew =>
        from n in Gen.Int[1, 24]
        from skill in Gen.Enum<Skill>()
        from start in Date
        from days in Gen.Int[1, 7]
        from halves in Gen.Int[6, 20]
        from roof in Date.OrNull()
        from begins in Gen.Enum<WorkBegins>()
        from members in Member.Array[Math.Min(n, 6)]
        from named in Gen.Bool
        select new Crew(n, skill, start, days, halves / 2.0)
        {
            RoofOn = roof, Begins = begins, Members = named && n <= 6 ? members.Select((m, i) => m with { Name = $"Helper {i + 1}" }).ToSequence() : [],
        };

    private static Gen<CrewMember> Member =>
        from knows in Gen.Enum<CrewSkill>().Array[0, 3]
        from wishes in Gen.Enum<CrewSkill>().Array[0, 2]
        from cannot in Gen.Enum<CannotDo>().Array[0, 2]
        from away in Date.Array[0, 2]
        select new CrewMember("-") { Knows = [.. knows.Distinct()], Wishes = [.. wishes.Distinct()], Cannot = [.. cannot.Distinct()], Away = [.. away.Distinct()] };

    public static Gen<RuleChoices> Rules =>
        from cob in Gen.OneOf("irc-cob@2021", "irc-cob@2024").OrNothing()
        from day in Date
        from entered in Gen.Int[0, 1]
        from ticked in Gen.Bool.Array[0, 3]
        select new RuleChoices
        {
            Adopted = cob is null ? ["common-practice"] : ["common-practice", cob],
            Entered = entered == 0 || cob is null ? [] : [new EnteredLimit(cob, "header-bearing", "12 in", "R. Reader", day)],
            Answers = ticked.Select((yes, i) => new Answer(i == 0 ? "ground-services" : i == 1 ? "ground-flood" : "ground-access", yes, "R. Reader", day, yes ? null : "ask again")).ToSequence(),
        };

    public static Gen<DateOnly> Date { get; } = Gen.Int[0, 2000].Select(n => new DateOnly(2026, 1, 1).AddDays(n));
}
