using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;
using RoofOf = Clomwright.Analysis.Roof.FromGeometry;

namespace Clomwright.Analysis.Tests.WallTop;

public sealed class WallTopTests
{
    private static (HouseGeometry Geometry, RoofResult Roof, WallTopResult Top) Of(House house)
    {
        var geometry = Placing.Of(house);
        var roof = RoofOf.Of(geometry);
        return (geometry, roof, FromRoof.Of(geometry, roof));
    }

    // Rank analytic: simple span under an even load (w L^2/8), a triangle (w L^2/12) and a force in the middle (P L/4 - P b/8 when spread over b).
    // 1e-4: the span is cut into 200 pieces.
    [Fact]
    public void SpanLoad_GivesTheHandbookMoments()
    {
        var even = new SpanLoad(2).Even(500).Solve();
        Near.Relative(500 * 4 / 8.0, even.Moment, 1e-9);
        Near.Relative(500, even.First, 1e-9);
        Near.Relative(500 * 4 / 12.0, new SpanLoad(2).Peak(500).Solve().Moment, 1e-4);
        var patch = new SpanLoad(2).Patch(1000, 1, 0.4).Solve();
        Near.Relative(1000 * 2 / 4.0 - 1000 * 0.4 / 8, patch.Moment, 1e-4);
        var off = new SpanLoad(2).Patch(1000, 0.5, 0.2).Solve();
        Near.Relative(750, off.First, 1e-9);
        Assert.Equal(0, new SpanLoad(2).Patch(1000, -0.5, 0.2).Solve().Moment, 1e-9);
        Near.Relative(500, new SpanLoad(2).Patch(1000, 0, 0.2).Solve() is var half ? half.First + half.Second : 0, 1e-9);
    }

    // Rank independent: where no pole lands near, a header carries its cob alone, worked here from wall and opening.
    [Fact]
    public void Header_AwayFromPoles_CarriesItsCob()
    {
        var (geometry, _, top) = Of(Houses.HeronPoint);
        Assert.NotEmpty(top.Headers);
        Assert.All(top.Headers, h => Assert.True(h.Check.Is, $"{h.Subject} {h.Check.NotChecked?.Key}"));
        var door = geometry.Openings.Single(o => o.Opening.Name == "door");
        var header = door.Header!;
        var height = geometry.Wall.Top.Metres - header.Top;
        var beam = 0.254 * 0.2032 * 5500;
        var cob = 19_000 * height * geometry.Wall.ThicknessAt(header.Top + height / 2) + beam;
        var check = top.Headers.Single(h => h.Key == "header-bending" && h.Subject == "door/header").Check.Value!;
        var span = 0.9144 + 0.3048;
        var least = cob * span * span / 8 / (header.TotalWidth * Math.Pow(0.1524, 2) / 6);
        Assert.True(check.Demand.Si >= least * (1 - 1e-9), $"{check.Demand.Si} {least}");
        Near.Relative(cob, check.How.Steps.Single(s => s.Key == "header-cob").Result.Value.Si, 1e-9);
        Printed.Holds(top.Calculations);
        Printed.HaveWords(top.Assumptions);
    }

    // Rank independent: at each end half the span's cob and what stands on the end's outer half, worked here; were it to arch, a triangle half as high as the span in its place; over width and 80 kPa.
    [Fact]
    public void HeaderEnds_AwayFromPoles_AskForTheirCob()
    {
        var house = Houses.Round(Length.FromFeet(18)) with
        {
            Site = new Site { Loads = "asce7-16", GroundSnow = new Stress(1500), WindSpeed = new Speed(45), Exposure = "B" },
            Wall = Houses.Round(Length.FromFeet(18)).Wall with { Top = Length.FromFeet(10) },
            Openings = [Houses.Door("door", 0) with { Header = new Header(3, Length.FromInches(4), Length.FromInches(6), Length.FromInches(12)) }],
            // Its nearest poles land 45 degrees, 7 ft, away: their spread at 45 degrees ends before the header does.
            Roof = new Building.Roof.Reciprocal(4, Length.FromInches(33), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromInches(24), Deck = Length.FromInches(1), FirstBearing = new Angle(45) },
        };
        var (geometry, _, top) = Of(house);
        var place = geometry.Openings.Single();
        var header = place.Header!;
        var height = geometry.Wall.Top.Metres - header.Top;
        var thickness = geometry.Wall.ThicknessAt(header.Top + height / 2);
        double width = place.Opening.Width.Metres, bearing = 0.3048, span = width + bearing;
        var cob = 19_000 * height * thickness;
        var even = cob * (span + bearing) / 2;
        var perLength = header.TotalWidth * 80_000;
        Assert.True(height > span / 2);
        Assert.Equal(2, top.HeaderEnds.Count);
        Assert.All(top.HeaderEnds, e =>
        {
            Near.Relative(even, e.Force, 1e-9);
            // w_c (width + 2 l)/2 = b p_a l, solved for l.
            Near.Relative(cob * width / 2 / (perLength - cob), e.Needed!.Value, 1e-9);
            Near.Relative(19_000 * thickness * (span * span / 8 + height * bearing / 2), e.Arched!.Value, 1e-9);
            // The triangle with the length that would do: its force is what that length may carry.
            var l = e.NeededArched!.Value;
            Near.Relative(perLength * l, 19_000 * thickness * ((width + l) * (width + l) / 8 + height * l / 2), 1e-9);
        });
        Near.Relative(even / (header.TotalWidth * bearing), top.Headers.Single(h => h.Key == "header-bearing").Check.Value!.Demand.Si, 1e-9);
        Printed.Holds(top.Calculations);
    }

    // Rank property: the end nearer to a pole asks for the longer bearing, and mirrored the other does.
    [Theory]
    [InlineData(10, false)]
    [InlineData(-10, true)]
    public void HeaderEnd_NearerToAPole_AsksForMore(double pole, bool left)
    {
        var house = Houses.HeronPoint with { Openings = [Houses.HeronPoint.Openings[0] with { Along = Along.At(new Angle(0)) }], Roof = ((Building.Roof.Reciprocal)Houses.HeronPoint.Roof!) with { FirstBearing = new Angle(pole) } };
        var ends = Of(house).Top.HeaderEnds;
        Assert.True(ends.Single(e => e.Left == left).Needed > ends.Single(e => e.Left != left).Needed);
    }

    // Rank property: with the length that an end asks, the harder end presses with exactly what the cob is allowed. 1e-6: written lengths are whole nanometres.
    [Fact]
    public void HeaderEnd_WithTheLengthItAsks_UsesTheCobWhole()
    {
        var house = Houses.HeronPoint;
        for (var i = 0; i < 3; i++)
        {
            var needed = Of(house).Top.HeaderEnds.Where(e => e.Opening == "door").Max(e => e.Needed!.Value);
            var door = house.Openings.Single(o => o.Name == "door");
            house = new Edit.ChangeOpening("door", door with { Header = door.Header! with { Bearing = Length.Nearest(needed) } }).Apply(house);
        }

        Near.Relative(1, Of(house).Top.Headers.Single(h => h is { Key: "header-bearing", Subject: "door/header" }).Check.Value!.Use, 1e-6);
    }

    // Rank property: a pole landing over a header makes it work harder than one turned away.
    [Fact]
    public void PoleOverAHeader_MakesItWorkHarder()
    {
        static House Turned(double degrees) => Houses.Round(Length.FromFeet(18)) with
        {
            Site = new Site { Loads = "asce7-16", GroundSnow = new Stress(1500), WindSpeed = new Speed(45), Exposure = "B" },
            Openings = [Houses.Door("door", 90)],
            Roof = new Building.Roof.Reciprocal(8, Length.FromInches(33), PoleSize.Even(Length.FromInches(8)))
            {
                Eave = Length.FromInches(24), Deck = Length.FromInches(1), FirstBearing = new Angle(degrees), Layers = [new Layer("soil", Length.FromInches(6), "ordinary-earth")],
            },
        };
        double Use(double degrees, string key) => Of(Turned(degrees)).Top.Headers.Single(h => h.Key == key).Check.Value!.Use;
        Assert.True(Use(0, "header-bending") > 1.3 * Use(22.5, "header-bending"));
        Assert.True(Use(0, "header-bearing") > Use(22.5, "header-bearing"));
    }

    // Rank property: what the tees are given is what the poles lift, and a planted house asks little of them.
    [Fact]
    public void Tees_ShareTheUpliftOfTheWorstState()
    {
        var bare = Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { WindSpeed = new Speed(85), Exposure = "D" } };
        var (_, roof, top) = Of(bare);
        Assert.Equal(roof.Reciprocal.Value!.Uplift.Max() > 0, top.Tees.Any(t => t.Check.Value is { Demand.Si: > 0 }));
        var worst = roof.Reciprocal.Value.Combined.States.Where(s => s.Combination.DeadIsLeast).Max(s => s.Forces.PlateReaction.Sum(a => Math.Max(0, -a)));
        Assert.True(top.Tees.Where(t => t.Key == "tee-uplift").Max(t => t.Check.Value?.Demand.Si ?? 0) <= worst);
        Printed.Holds(top.Calculations);
    }

    // Rank analytic: on a circle n equal pieces have the chord 2 R sin(pi/n), the mitre pi/n and the rise R (1 - cos(pi/n)).
    [Fact]
    public void BeamPieces_OnACircle_AreTheChords()
    {
        var house = Houses.Round(Length.FromFeet(16)) with { BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(4), Length.Zero) };
        var pieces = Of(house).Top.BeamPieces;
        var n = pieces.Count;
        var radius = Length.FromFeet(8).Metres + 0.3556 / 2;
        Assert.All(pieces, p =>
        {
            Near.Relative(2 * radius * Math.Sin(Math.PI / n), p.Chord, 1e-9);
            Near.Relative(Math.PI / n, p.Mitre, 1e-9);
            Near.Relative(radius * (1 - Math.Cos(Math.PI / n)), p.Rise, 1e-9);
        });
        Assert.True(pieces[0].Rise <= 0.2 * 0.254);
    }

    // Rank property: whatever the house, each header and tee is a number or a reason, and what is printed holds.
    [Fact]
    public void AnyPlausibleHouse_GivesNumbersOrReasons() => Houses.Plausible.ForAll(
        house =>
        {
            var (geometry, _, top) = Of(house);
            Printed.Holds(top.Calculations);
            Assert.All([.. top.Headers, .. top.Tees], c => Assert.True(!c.Check.Is || (double.IsFinite(c.Check.Value!.Use) && c.Check.Value.Use >= 0), c.Key));
            Assert.Equal(geometry.Tees.Count, top.Tees.Count(t => t.Key == "tee-uplift"));
        },
        iter: Counts.Of(15, 1000));

    [Fact]
    public void HouseWithoutARoof_ChecksNoHeader() => Assert.All(
        Of(Houses.HeronPoint with { Roof = null }).Top.Headers, h => Assert.Equal("analysis.roof.none", h.Check.NotChecked!.Key));
}
