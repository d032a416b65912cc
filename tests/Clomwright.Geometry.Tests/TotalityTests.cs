using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Whatever the description, placing it answers; what is wrong is said with its place.</summary>
public sealed class TotalityTests
{
    private static readonly Gen<Length> Silly = Gen.Frequency(
        (4, Gen.Long[-5_000_000_000, 9_000_000_000].Select(n => new Length(n))), (1, Gen.Long.Select(n => new Length(n))),
        (1, Gen.OneOf(0L, 1L, -1L, long.MaxValue, long.MinValue).Select(n => new Length(n))));

    private static readonly Gen<Angle> AnyAngle = Gen.Frequency(
        (5, Gen.Double[-720, 720]), (1, Gen.OneOf(double.NaN, double.PositiveInfinity, 1e300, -0.0, 90, 89.999999))).Select(d => new Angle(d));

    private static readonly Gen<Slope> AnySlope = Gen.Frequency((5, Gen.Double[-0.3, 0.3]), (1, Gen.OneOf(double.NaN, double.NegativeInfinity, 1e9, -5))).Select(s => new Slope(s));

    private static readonly Gen<Along> AnyAlong = Gen.Frequency(
        (6, AnyAngle.Select(Along.At)), (3, Silly.Select(Along.At)), (1, Gen.Select(AnyAngle, Silly).Select((a, s) => new Along(a, s))), (1, Gen.Const(default(Along))));

    private static readonly Gen<Plan> AnyPlan = Gen.OneOf<Plan>(
        Silly.Select(d => (Plan)new Plan.Round(d)),
        Gen.Select(Silly, Silly).Select((a, b) => (Plan)new Plan.Oval(a, b)),
        Gen.Select(Silly, Silly, Silly).Select((a, b, r) => (Plan)new Plan.RoundedRectangle(a, b, r)),
        Gen.Select(Silly, Silly).Select((e, n) => new PlanPosition(e, n)).Array[0, 12].Select(p => (Plan)new Plan.Path(p.ToSequence())),
        Gen.Select(Gen.Long[-3_000_000_000, 3_000_000_000], Gen.Long[-3_000_000_000, 3_000_000_000]).Select((e, n) => new PlanPosition(new Length(e), new Length(n))).Array[0, 9].Select(p => (Plan)new Plan.Path(p.ToSequence())));

    private static readonly Gen<Opening> AnyOpening = Gen.Select(Gen.Select(AnyAlong, Silly, Silly, Silly), Gen.Select(AnyAngle, AnyAngle), Gen.Enum<OpeningShape>(), Gen.Select(Silly, Silly, Silly, Silly), Gen.Int[-2, 5], Gen.Bool)
        .Select((size, splay, shape, more, pieces, framed) => new Opening
        {
            Name = $"o{pieces}", Kind = OpeningKind.Fixed, Along = size.Item1, Width = size.Item2, Height = size.Item3, Sill = size.Item4, Shape = shape, Rise = framed ? more.Item1 : null,
            Splay = new Splay(splay.Item1, splay.Item2), Frame = framed ? new Frame(more.Item1, more.Item2, more.Item3, more.Item4) { Setback = more.Item4 } : null,
            Header = pieces == 0 ? null : new Header(pieces, more.Item1, more.Item2, more.Item3),
        });

    private static readonly Gen<Niche> AnyNiche = Gen.Select(AnyAlong, Silly, Silly, Silly, Silly, Gen.Enum<Face>(), Gen.Enum<NicheHead>())
        .Select((a, w, h, d, s, face, head) => new Niche { Name = "n", Along = a, Width = w, Height = h, Depth = d, Sill = s, Face = face, Head = head });

    private static readonly Gen<Embed> AnyEmbed = Gen.Select(AnyAlong, Silly, Silly, Silly, Silly, Gen.Int[-3, 2000], Gen.Enum<EmbedKind>(), Gen.Bool)
        .Select((a, h, w, d, s, count, kind, through) => new Embed { Name = "e", Kind = kind, Along = a, Height = h, Width = w, Depth = d, Spacing = s, Count = count, Through = through });

    private static readonly Gen<Roof?> AnyRoof = Gen.Select(Gen.Int[-1, 50], Silly, AnyAngle, AnyAngle.Array[0, 6], Gen.Int[-1, 4], Gen.Int[0, 4]).Select((poles, length, first, landings, between, kind) =>
    {
        Roof? roof = kind switch
        {
            0 => new Roof.Reciprocal(poles, length, PoleSize.Even(length)) { Eave = length },
            1 => new Roof.Radial(poles, PoleSize.Even(length), new Slope(0.2)) { Eave = length },
            2 => new Roof.Shed(PoleSize.Even(length), length, new Slope(0.2)) { Eave = length },
            3 => new Roof.Gable(PoleSize.Even(length), length, new Slope(0.2)) { Eave = length },
            _ => null,
        };
        return roof is null ? null : roof with { FirstBearing = first, Landings = landings.ToSequence(), Secondaries = between < 0 ? null : new Secondaries(between, length) };
    });

    private static readonly Gen<House> AnyHouse =
        from plan in AnyPlan
        from turned in Gen.Select(AnyAngle, AnyAngle, Gen.Select(Silly, Silly, Gen.Bool).Select((e, n, given) => given ? new PlanPosition(e, n) : (PlanPosition?)null))
        from wall in Gen.Select(Silly, Silly, AnySlope, AnySlope).Select((top, t, o, i) => new Wall(top, t, o, i))
        from stem in Gen.Select(Silly, Silly, Silly).Select((w, top, inside) => new Stem(w, top) { InsideOffset = w.Nanometres % 2 == 0 ? inside : null })
        from lifts in Gen.Select(Silly, Silly.Array[0, 6]).Select((h, tops) => new LiftPlan { Height = h.Nanometres % 3 == 0 ? null : h, Tops = tops.ToSequence() })
        from openings in AnyOpening.Array[0, 6]
        from niches in AnyNiche.Array[0, 3]
        from embeds in AnyEmbed.Array[0, 3]
        from roof in AnyRoof
        from beam in Gen.Select(Silly, Silly, Silly).Select((a, b, c) => new BondBeam(a, b, c))
        from tees in Gen.Select(Silly, Silly, Silly).Select((a, b, c) => new Tees(a, b, c))
        from batch in Gen.Select(Silly, Silly, Silly, Gen.Int[-1, 4], Gen.Double[-1, 5]).Select((a, b, c, n, k) => new Batch(k, new Volume(k), n, a, b, c))
        from trench in Gen.Select(Silly, Silly).Select((a, b) => new Trench(a, b))
        from grade in Silly
        select new House
        {
            Id = "silly", Name = "Silly", Plan = plan with { Bearing = turned.Item1, ZeroBearing = turned.Item2, Centre = turned.Item3 }, Wall = wall, Stem = stem, Lifts = lifts,
            Openings = openings.ToSequence(), Niches = niches.ToSequence(), Embeds = embeds.ToSequence(), Roof = roof, BondBeam = beam, Tees = tees, Trench = trench,
            Site = new Site { Grade = grade }, Mix = new Mix { Batch = batch, Recipe = new Recipe { Soil = 3, Sand = -1, Straw = new Mass(double.NaN) } },
        };

    private static void Answers(House house)
    {
        var g = FromBuilding.Of(house);
        Quantities.Of(g);
        SettingOuts.Of(g);
        OffsetTables.At(g, 1.2);
        Turning.Best(g);
        foreach (var place in g.Openings)
        {
            Unrolled.Outline(g, place, Face.Inside);
            Unrolled.Outline(g, place, Face.Outside);
        }

        Assert.True(double.IsFinite(g.Measures.GrossVolume) && double.IsFinite(g.Measures.NetVolume) && g.Curve.Length > 0);
        Assert.All(g.Diagnostics, d => Assert.False(string.IsNullOrEmpty(Phrasebook.English.Say(d.What, UnitSystem.Metric))));
    }

    /// <summary>A beam wider than its house by far, or a peg beyond the horizon, under rafters a hair apart: an answer, and at once.</summary>
    [Theory]
    [InlineData(-4e12, 0)]
    [InlineData(4e12, 0)]
    [InlineData(0, 4e15)]
    public void RaftersOfASillyHouse_AreCountedBeforeTheyAreLaid(double offsetNanometres, double centreNanometres) => Answers(StarterHouse.Make() with
    {
        BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(4), new Length((long)offsetNanometres)),
        Plan = StarterHouse.Make().Plan with { Centre = centreNanometres == 0 ? null : new PlanPosition(new Length((long)centreNanometres), Length.Zero) },
        Roof = new Roof.Shed(PoleSize.Even(Length.FromInches(6)), Length.FromMillimetres(50), new Slope(0.2)) { Eave = Length.FromFeet(2), FirstBearing = new Angle(17) },
    });

    [Fact]
    public void SillyHouses_NeverThrow() => AnyHouse.ForAll(Answers, iter: Counts.Of(150, 20_000));

    [Fact]
    public void PlausibleHousesWithOneSillyThing_NeverThrow() =>
        Gen.Select(Houses.Plausible, AnyHouse, Gen.Int[0, 6]).ForAll((house, silly, which) => Answers(which switch
        {
            0 => house with { Openings = [.. house.Openings, .. silly.Openings] },
            1 => house with { Niches = silly.Niches, Embeds = silly.Embeds },
            2 => house with { Wall = silly.Wall },
            3 => house with { Stem = silly.Stem, Trench = silly.Trench, Site = silly.Site },
            4 => house with { Plan = silly.Plan },
            5 => house with { Roof = silly.Roof, BondBeam = silly.BondBeam, Tees = silly.Tees },
            _ => house with { Lifts = silly.Lifts, Mix = silly.Mix },
        }), iter: Counts.Of(60, 20_000));
}
