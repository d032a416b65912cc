using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>What is wrong is said once, with its place, and the rest still stands.</summary>
public sealed class DiagnosticsTests
{
    private static readonly House Room = Houses.Round(Length.FromMillimetres(4000));

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static Opening Window(double bearing) => Houses.Window($"w{bearing}", bearing, Mm(700), Mm(900)) with { Header = null };

    private static Niche Niche(double bearing) => new() { Name = $"n{bearing}", Along = Along.At(new Angle(bearing)), Width = Mm(300), Height = Mm(400), Depth = Mm(100), Sill = Mm(1200) };

    private static Embed Peg(double bearing) => new() { Name = "peg", Kind = EmbedKind.Peg, Along = Along.At(new Angle(bearing)), Height = Mm(1400), Width = Mm(30), Depth = Mm(200) };

    private static PlanPosition At(long east, long north) => new(Mm(east), Mm(north));

    private static House With(params Opening[] openings) => Room with { Openings = openings.ToSequence() };

    private static Diagnostic Only(House house)
    {
        var g = FromBuilding.Of(house);
        var found = Assert.Single(g.Diagnostics);
        Assert.True(double.IsFinite(g.Measures.GrossVolume));
        var said = Phrasebook.English.Say(found.What, UnitSystem.Metric);
        Assert.DoesNotContain("{", said, StringComparison.Ordinal);
        return found;
    }

    private static void Says(string path, string key, House house, Severity severity = Severity.Error)
    {
        var found = Only(house);
        Assert.Equal((path, "geometry." + key, severity), (found.Path, found.What.Key, found.Severity));
    }

    [Fact]
    public void OverlappingOpenings_LeaveOutTheLaterOneInTheFile()
    {
        var house = With(Window(40), Window(50));
        Says("openings[1]", "openings-overlap", house);
        Assert.Equal("w40", Assert.Single(FromBuilding.Of(house).Openings).Opening.Name);
    }

    [Fact]
    public void OpeningsThatDoNotFitTheWall_AreLeftOut()
    {
        Says("openings[0].height", "head-above-wall", With(Window(40) with { Sill = Mm(1700) }));
        Says("openings[0].height", "head-below-cob", With(Window(40) with { Sill = Length.Zero, Height = Mm(150) }));
        Says("openings[0].width", "opening-wider-than-wall", With(Window(40) with { Width = Mm(13_000) }));
        Says("openings[0].width", "opening-wider-than-curve", With(Window(40) with { Width = Mm(4100) }));
    }

    [Fact]
    public void BearingsOnAHollowPlan_AskForAStation()
    {
        var room = Houses.Path(At(-3000, 3000), At(3000, 3000), At(3000, 1400), At(-600, 1000), At(-600, -1000), At(3000, -1400), At(3000, -3000), At(-3000, -3000));
        var house = room with { Plan = room.Plan with { Centre = At(1500, 2200), ZeroBearing = new Angle(0) }, Openings = [Houses.Window("w", 180, Mm(500), Mm(500)) with { Header = null }] };
        var found = FromBuilding.Of(house).Diagnostics;
        Assert.Contains(found, d => d.Path == "openings[0].bearing" && d.What.Key == "geometry.bearing-meets-twice");
    }

    [Fact]
    public void StationBeyondTheRing_IsCountedOnRoundWithAWarning()
    {
        var house = With(Window(0) with { Along = Along.At(Mm(14_000)) });
        Says("openings[0].station", "station-off-ring", house, Severity.Warning);
        Assert.Equal(14 - 4 * Math.PI, FromBuilding.Of(house).Openings[0].Station, 1e-12);
    }

    [Fact]
    public void FramesAndHeadersOutsideTheWall_AreSaid()
    {
        Says("openings[0].frame.setback", "frame-out-of-wall", With(Window(40) with { Frame = new Frame(Mm(680), Mm(850), Mm(100), Mm(40)) { Setback = Mm(300) } }));
        Says("openings[0].header.depth", "header-above-wall", With(Window(40) with { Sill = Mm(1500), Header = new Header(2, Mm(100), Mm(150), Mm(300)) }));
        Says("openings[0].header.bearing", "header-longer-than-curve", With(Window(40) with { Header = new Header(2, Mm(100), Mm(150), Mm(1800)) }));
        Says("openings[0].header.bearing", "header-reaches-opening", With(Window(40) with { Header = new Header(2, Mm(100), Mm(150), Mm(500)) }, Window(65) with { Height = Mm(1200) }));
        Says("openings[1].header.bearing", "headers-overlap", With(Window(40) with { Header = new Header(2, Mm(100), Mm(150), Mm(500)) }, Window(80) with { Header = new Header(2, Mm(100), Mm(150), Mm(500)) }));
    }

    [Fact]
    public void HeadersThatMeet_AreNotCountedTwice()
    {
        // Property: two headers that overlap displace less than both alone, and as much as one of the joined length within the clip's small slant.
        Opening Carried(double bearing) => Window(bearing) with { Header = new Header(2, Mm(60), Mm(150), Mm(500)) };
        var alone = FromBuilding.Of(With(Carried(40))).Measures.HeaderVolume;
        var both = FromBuilding.Of(With(Carried(40), Carried(80))).Measures.HeaderVolume;
        Assert.InRange(both, alone, 1.98 * alone);
    }

    [Fact]
    public void NichesThatCannotStand_AreLeftOut()
    {
        Says("niches[0]", "niche-in-opening", With(Window(40)) with { Niches = [Niche(45)] });
        Says("niches[1]", "niches-overlap", Room with { Niches = [Niche(40), Niche(44)] });
        Says("niches[1]", "niches-overlap", Room with { Niches = [Niche(40) with { Depth = Mm(200) }, Niche(40) with { Face = Face.Outside, Depth = Mm(200) }] });
        Says("niches[0].sill", "niche-off-wall", Room with { Niches = [Niche(40) with { Sill = Mm(2300) }] });
        Says("niches[0].depth", "niche-through-wall", Room with { Niches = [Niche(40) with { Depth = Mm(353) }] });
        Says("niches[0].width", "niche-wider-than-curve", Room with { Niches = [Niche(40) with { Width = Mm(4200), Height = Mm(900) }] });
        Assert.Empty(FromBuilding.Of(Room with { Niches = [Niche(40), Niche(40) with { Face = Face.Outside }] }).Diagnostics);
    }

    [Fact]
    public void EmbedsThatCannotStand_AreSaid()
    {
        Says("embeds[0]", "embed-in-opening", With(Window(40)) with { Embeds = [Peg(41)] });
        Says("embeds[0]", "embed-in-niche", Room with { Niches = [Niche(40)], Embeds = [Peg(40)] }, Severity.Warning);
        Says("embeds[0].height", "embed-above-wall", Room with { Embeds = [Peg(40) with { Height = Mm(2600) }] });
        Says("embeds[0].depth", "embed-deeper-than-wall", Room with { Embeds = [Peg(40) with { Depth = Mm(500) }] });
        Says("embeds[0].spacing", "embed-row-too-long", Room with { Embeds = [Peg(40) with { Count = 30, Spacing = Mm(600) }] });
    }

    [Fact]
    public void ImpossiblePlans_AreStoodInForByACircle()
    {
        Says("plan.points", "path-crosses-itself", Houses.Path(At(-2000, -2000), At(2000, 2000), At(2000, -2000), At(-2000, 2000)));
        Says("plan.points[3]", "path-point-twice", Houses.Path(At(0, 2000), At(2000, 0), At(0, -2000), At(0, 2000), At(-2000, 0)));
        Says("plan.insideWidth", "oval-too-flat", Houses.Oval(Mm(9000), Mm(400)));
        Assert.True(FromBuilding.Of(Houses.Path(At(-2000, -2000), At(2000, 2000), At(2000, -2000), At(-2000, 2000))).Curve.Area > 1);
        Assert.Contains(FromBuilding.Of(Houses.Path(At(0, 0), At(3000, 3))).Diagnostics.Concat(HouseDiagnostics.Of(Houses.Path(At(0, 0), At(3000, 3)))), d => d.Path == "plan.points");
    }

    [Fact]
    public void CurvesTighterThanTheWall_AreSaid()
    {
        var bean = Houses.Path(At(0, 1200), At(1500, 2200), At(3000, 0), At(1500, -2000), At(-1500, -2000), At(-3000, 0), At(-1500, 2200));
        Says("plan", "hollow-tighter-than-wall", bean with { Wall = bean.Wall with { ThicknessAtTop = Mm(900) } });
        Assert.Empty(FromBuilding.Of(bean with { Wall = bean.Wall with { ThicknessAtTop = Mm(200) } }).Diagnostics);
        Says("wall.insideTaper", "inside-face-folds", Houses.RoundedRectangle(Mm(5000), Mm(4000), Mm(300)) is var h ? h with { Wall = h.Wall with { InsideTaper = new Slope(-0.15) } } : h);
    }

    [Fact]
    public void PegsAndZeroMarks_MustSeeTheWall()
    {
        Says("plan.centre", "centre-outside", Room with { Plan = Room.Plan with { Centre = At(5000, 0) } });
        var room = Houses.Path(At(-3000, 3000), At(3000, 3000), At(3000, 1400), At(-600, 1000), At(-600, -1000), At(3000, -1400), At(3000, -3000), At(-3000, -3000));
        Assert.Contains(FromBuilding.Of(room with { Plan = room.Plan with { Centre = At(1500, 2200), ZeroBearing = new Angle(180) } }).Diagnostics, d => d.What.Key == "geometry.zero-bearing-meets-twice");
    }

    [Fact]
    public void LiftsThatDoNotFitTheWall_AreSaidAndStillAddUp()
    {
        House Lifted(params long[] inches) => Room with { Lifts = new LiftPlan { Tops = inches.Select(Length.FromInches).ToSequence() } };
        foreach (var house in new[] { Lifted(20, 40, 60), Lifted(20, 40, 98, 120), Lifted(20, 15, 98) })
        {
            var g = FromBuilding.Of(house);
            Assert.Equal(g.Wall.Top, g.Lifts[^1].Top);
            Assert.Equal(1, g.Lifts.Sum(l => l.GrossVolume) / g.Measures.GrossVolume, 1e-12);
            Assert.NotEmpty(g.Diagnostics.Concat(HouseDiagnostics.Of(house)));
        }
    }

    [Fact]
    public void WhatIsWrongByItself_IsSaidOnceByTheDescription()
    {
        // Property: the description's own checks and those of its placing never name the same place twice over.
        House[] houses =
        [
            With(Window(40) with { Width = Mm(-5) }), With(Window(40) with { Along = default }), With(Window(40) with { Along = Along.At(new Angle(double.NaN)) }),
            Room with { Wall = Room.Wall with { Top = Mm(-100) } }, Room with { Wall = Room.Wall with { ThicknessAtTop = Length.Zero } },
            Room with { Niches = [Niche(3) with { Depth = Length.Zero }] }, Houses.Round(Length.Zero), Houses.RoundedRectangle(Mm(4000), Mm(3000), Mm(2000)),
            Room with { Lifts = new LiftPlan() }, Room with { Tees = new Tees(Length.Zero, Mm(600), Mm(600)) }, With(Window(40) with { Splay = new Splay(new Angle(-4), new Angle(300)) }),
        ];
        Assert.All(houses, house =>
        {
            var own = HouseDiagnostics.Of(house);
            var both = own.Concat(FromBuilding.Of(house).Diagnostics).ToArray();
            Assert.NotEmpty(own);
            Assert.Equal(both.Length, both.Select(d => d.Path).Distinct().Count());
        });
    }

    [Fact]
    public void Landings_ThatAreNotOnePerPole_AreSaid()
    {
        var roof = new Roof.Reciprocal(4, Mm(500), PoleSize.Even(Mm(150))) { Eave = Mm(600), Landings = [new Angle(0), new Angle(100), new Angle(230)] };
        var g = FromBuilding.Of(Room with { Roof = roof });
        Assert.Equal(3, g.Landings.Count);
        Assert.Contains(g.Diagnostics.Concat(HouseDiagnostics.Of(Room with { Roof = roof })), d => d.Path == "roof.landings");
    }
}
