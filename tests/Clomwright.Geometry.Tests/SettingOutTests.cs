using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class SettingOutTests
{
    [Theory]
    [InlineData(25, 0.08013, 4.58857)]
    [InlineData(50, 0.04002, 2.29244)]
    public void CircleChord_OfFour_HasThePublishedRiseAndAngle(double radius, double rise, double degrees)
    {
        // Published: fixed triangle over three points of a circle, "circle layout" page of geocities.ws: R 25, c 4 and R 50, c 4; digits as printed.
        var chord = new CircleChord(radius, 4);
        Assert.Equal(rise, chord.Rise, 5e-6);
        Assert.Equal(degrees, chord.HalfAngle * 180 / Math.PI, 5e-6);
    }

    [Fact]
    public void CircleChord_OfPavingCircle_StandsThePublishedWayFromTheCentre() =>
        // Published: pavingexpert.com, setting out 5: R 1800, chord 1662, centre to chord 1597 (mm, whole).
        Assert.Equal(1597, new CircleChord(1800, 1662).FromCentre, 0.5);

    [Theory]
    [InlineData(8, 2.29610, 0.22836)]
    [InlineData(12, 1.55291, 0.10222)]
    [InlineData(16, 1.17054, 0.05764)]
    public void CircleChord_OfEqualParts_HasTheChordAndRiseOfTheFormulas(int parts, double length, double rise)
    {
        // Analytic: c = 2 R sin(pi/n), v = R (1 - cos(pi/n)), R = 3, worked by hand to five places.
        var chord = CircleChord.OfParts(3, parts);
        Assert.Equal(length, chord.Chord, 5e-6);
        Assert.Equal(rise, chord.Rise, 5e-6);
        Assert.Equal(2 * Math.PI * 3 / parts, chord.Arc, 1e-13);
        Assert.Equal(chord.Rise, chord.OffsetAt(0), 1e-13);
        Assert.Equal(0, chord.OffsetAt(chord.Chord / 2), 1e-13);
        Assert.Equal(3, CircleChord.OfRise(chord.Chord, chord.Rise).Radius, 1e-12);
    }

    [Theory]
    [InlineData(6, 5, 5, 3, 4)]
    [InlineData(5, 4, 3, 3.2, 2.4)]
    public void TwoPegs_RightTriangles_AreFound(double apart, double first, double second, double x, double y)
    {
        // Analytic: Pythagorean triangles.
        var place = TwoPegs.Of(apart, first, second, 0.005);
        Assert.Equal(x, place.Along, 1e-14);
        Assert.Equal(y, place.Across, 1e-14);
    }

    [Theory]
    [InlineData(6, 5, 5)]
    [InlineData(5, 4, 3)]
    [InlineData(2, 5, 5)]
    [InlineData(9.5, 5, 5)]
    public void TwoPegs_Errors_AreTheFirstOrderEffectOfEachTape(double apart, double first, double second)
    {
        // Independent: central differences of the place in each tape, combined as independent errors of 5 mm.
        const double h = 1e-6;
        TwoPegs At(double a, double b) => TwoPegs.Of(apart, a, b, 0.005);
        double Combined(Func<TwoPegs, double> part) => 0.005 * Math.Sqrt(
            Math.Pow((part(At(first + h, second)) - part(At(first - h, second))) / (2 * h), 2) + Math.Pow((part(At(first, second + h)) - part(At(first, second - h))) / (2 * h), 2));
        var place = At(first, second);
        Assert.Equal(1, place.ErrorAlong / Combined(p => p.Along), 1e-7);
        Assert.Equal(1, place.ErrorAcross / Combined(p => p.Across), 1e-7);
    }

    [Fact]
    public void Marks_OfAnyPlausibleHouse_AreFoundAgainFromBothTapes() =>
        Houses.Plausible.ForAll(house =>
        {
            var g = FromBuilding.Of(house);
            var layout = SettingOuts.Of(g);
            var along = 1 / layout.PegDistance * (layout.PegB - layout.PegA);
            Assert.Equal(layout.Marks.Select(m => m.Station).Order(), layout.Marks.Select(m => m.Station));
            Assert.Equal("zero", layout.Marks[0].Name);
            Assert.Equal(2 * g.Openings.Count, layout.Marks.Count(m => m.Name.Contains("/jamb", StringComparison.Ordinal)));
            foreach (var mark in layout.Marks)
            {
                var found = TwoPegs.Of(layout.PegDistance, mark.FromA, mark.FromB, 0.005);
                var arm = mark.Point - layout.PegA;
                Assert.Equal(arm.Dot(along), found.Along, 1e-9);
                Assert.Equal(Math.Abs(arm.Cross(along)), found.Across, 1e-9);
                Assert.InRange(mark.ErrorAlong, 0, 0.02);
                Assert.InRange(mark.ErrorAcross, 0, 0.02);
                Assert.Equal(mark.FromCentre, (mark.Point - layout.Centre).Norm, 1e-12);
            }

            Assert.All(layout.Lines, line => Assert.Equal(g.Curve.OffsetLength(line.Offset), line.Length, 1e-12));
        }, iter: Counts.Of(20, 1000));

    [Fact]
    public void Pegs_SeeTheCentreAtARightAngle_ClearOfTheTrench()
    {
        var house = Houses.HeronPoint;
        var layout = SettingOuts.Of(FromBuilding.Of(house));
        Assert.Equal(0, (layout.PegA - layout.Centre).Dot(layout.PegB - layout.Centre), 1e-9);
        var outermost = layout.Lines.Max(l => l.Offset);
        Assert.Equal(layout.Lines.Single(l => l.Key == "trench-outside").Offset, outermost);
        Assert.All(layout.Marks, m => Assert.True(Math.Min(m.FromA, m.FromB) > outermost + 1));
    }

    [Fact]
    public void OffsetTable_OfARoundHouse_IsOneRowOfRadii()
    {
        var house = Houses.Round(Length.FromMillimetres(4000));
        var table = OffsetTables.At(FromBuilding.Of(house with { Wall = house.Wall with { OutsideTaper = new Slope(0.1) } }), 1);
        var row = Assert.Single(table.Rows);
        Assert.True(table.IsRound);
        Assert.Equal(2, row.Inside, 1e-13);
        Assert.Equal(2 + 0.3556 + 0.1 * (2.4892 - 1), row.Outside, 1e-13);
    }

    [Fact]
    public void OffsetTable_OfAnOval_FollowsTheEllipseAndStandsOffItByTheThickness()
    {
        // Analytic: radius of an ellipse at an angle from its long axis; on both axes the normal is the ray, so the difference is the thickness.
        var table = OffsetTables.At(FromBuilding.Of(Houses.Oval(Length.FromMillimetres(5000), Length.FromMillimetres(3600))), 0.2032, 16);
        Assert.Equal(16, table.Rows.Count);
        Assert.False(table.IsRound);
        foreach (var row in table.Rows)
        {
            var (sin, cos) = Math.SinCos(row.Bearing);
            Assert.Equal(1 / Math.Sqrt(cos * cos / 6.25 + sin * sin / 3.24), row.Inside, 1e-12);
        }

        Assert.All([0, 4, 8, 12], i => Assert.Equal(0.3556, table.Rows[i].Outside - table.Rows[i].Inside, 1e-12));
    }

    [Fact]
    public void Landings_OfEqualBearings_AreMarkedByArcAndByChord()
    {
        // Analytic: n = 12 chords of a circle of radius 2 m and half the wall.
        var roof = new Roof.Reciprocal(12, Length.FromFeet(2), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromFeet(2), FirstBearing = new Angle(10) };
        var landings = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000)) with { Roof = roof }).Landings;
        Assert.Equal(12, landings.Count);
        var chord = CircleChord.OfParts(2 + 0.1778, 12);
        Assert.All(landings, l => Assert.Equal(chord.Chord, l.ChordToNext, 1e-12));
        Assert.All(landings, l => Assert.Equal(chord.Arc, l.ArcToNext, 1e-12));
        Assert.Equal("pole 1", landings[0].Name);
        Assert.Equal(10 * Math.PI / 180, landings[0].Bearing, 1e-13);
    }

    [Fact]
    public void Secondaries_StandAtEqualBearingsBetweenTheirNeighbours()
    {
        var roof = new Roof.Radial(6, PoleSize.Even(Length.FromInches(6)), new Slope(0.3)) { Eave = Length.FromFeet(2), Secondaries = new Secondaries(2, Length.FromInches(4)) };
        var landings = FromBuilding.Of(Houses.Oval(Length.FromMillimetres(5000), Length.FromMillimetres(4000)) with { Roof = roof }).Landings;
        Assert.Equal(18, landings.Count);
        Assert.Equal(["pole 1", "secondary 1", "secondary 2", "pole 2"], landings.Take(4).Select(l => l.Name));
        Assert.All(landings.Index(), l => Assert.Equal(0, Math.IEEERemainder(l.Item.Bearing - l.Index * Math.PI / 9, 2 * Math.PI), 1e-12));
        Assert.Equal(landings.Sum(l => l.ArcToNext), FromBuilding.Of(Houses.Oval(Length.FromMillimetres(5000), Length.FromMillimetres(4000))).Curve.OffsetLength(0.1778), 1e-11);
    }

    [Fact]
    public void Rafters_OfAShed_CrossThePlateOnBothSides()
    {
        // Analytic: parallel lines 0.6 m apart, the middle one through the centre, cross a circle of radius r at 2 sqrt(r^2 - x^2) apart.
        var roof = new Roof.Shed(PoleSize.Even(Length.FromInches(6)), Length.FromMillimetres(600), new Slope(0.2)) { Eave = Length.FromFeet(2), FirstBearing = new Angle(90) };
        var landings = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000)) with { Roof = roof }).Landings;
        var low = landings.Single(l => l.Name == "pole 4 low");
        var high = landings.Single(l => l.Name == "pole 4 high");
        Assert.Equal(14, landings.Count);
        Assert.Equal(0, low.Point.North, 1e-9);
        Assert.Equal(2 * 2.1778, (low.Point - high.Point).Norm, 1e-9);
        Assert.True(low.Point.East > 0);
    }

    [Fact]
    public void Tees_StandEvenlyAtMostTheirSpacingApart()
    {
        var g = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000)) with { Tees = new Tees(Length.FromFeet(4), Length.FromInches(24), Length.FromInches(24)) });
        Assert.Equal((int)Math.Ceiling(2 * Math.PI * 2.1778 / 1.2192), g.Tees.Count);
        Assert.All(g.Tees.Index(), t => Assert.Equal(t.Index * g.Curve.Length / g.Tees.Count, t.Item.Station, 1e-11));
        Assert.Equal(74 * 0.0254, g.Tees[0].BarHeight, 1e-12);
        Assert.Equal(5, g.Tees[0].Lift);
    }
}
