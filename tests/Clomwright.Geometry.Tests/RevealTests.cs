using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Reveals of openings in a round wall against closed forms.</summary>
/// <remarks>Rank: analytic. Tolerance 1e-8 m2: Gauss rules on smooth functions; a square millimetre is 1e-6.</remarks>
public sealed class RevealTests
{
    private const double Radius = 2;
    private const double Thick = 0.35;
    private const double Half = 0.45;
    private const double High = 1.1;

    private static House Plumb(Opening opening) => Houses.Round(Length.FromMillimetres(4000)) with
    {
        Wall = new Wall(Length.FromMillimetres(2500), Length.FromMillimetres(350)), Openings = [opening], Niches = [], Embeds = [],
    };

    private static Opening Window(OpeningShape shape = OpeningShape.Rectangular, double splay = 0) => new()
    {
        Name = "window", Kind = OpeningKind.Fixed, Along = Along.At(new Angle(40)), Width = Length.FromMillimetres(900), Height = Length.FromMillimetres(shape == OpeningShape.Round ? 900 : 1100),
        Sill = Length.FromMillimetres(700), Shape = shape, Rise = shape == OpeningShape.Arched ? Length.FromMillimetres(450) : null, Splay = new Splay(new Angle(splay), default),
    };

    private static RevealArea Of(House house, Face face) => Reveals.Of(FromBuilding.Of(house)).Openings.Single(r => r.Face == face);

    /// <summary>Integral from -a to a of sqrt(r^2 - u^2).</summary>
    private static double Segment(double r, double a) => a * Math.Sqrt(r * r - a * a) + r * r * Math.Asin(a / r);

    [Fact]
    public void Rectangular_InAPlumbRoundWall_HasTheClosedForm()
    {
        var inside = Of(Plumb(Window()), Face.Inside);
        var deep = Thick / 2 + Radius - Math.Sqrt(Radius * Radius - Half * Half);
        Assert.Equal(2 * High * deep, inside.Jambs, 1e-8);
        var flat = 2 * Half * (Thick / 2 + Radius) - Segment(Radius, Half);
        Assert.Equal(flat, inside.Head, 1e-8);
        Assert.Equal(flat, inside.Sill, 1e-8);

        var outside = Of(Plumb(Window()), Face.Outside);
        var shallow = Math.Sqrt((Radius + Thick) * (Radius + Thick) - Half * Half) - Radius - Thick / 2;
        Assert.Equal(2 * High * shallow, outside.Jambs, 1e-8);
        Assert.Equal(Segment(Radius + Thick, Half) - 2 * Half * (Radius + Thick / 2), outside.Head, 1e-8);
    }

    // A jamb that leans by k from half the wall's depth meets the circle of radius r where (half + k x)^2 + (r + t/2 - x)^2 = r^2, x measured inward from the middle of the wall. 0.1 µm: far finer than cob.
    [Fact]
    public void Splay_InARoundWall_OpensAsTheClosedFormSays()
    {
        var geometry = FromBuilding.Of(Plumb(Window(splay: 15)));
        var opens = Splays.Of(geometry, geometry.Openings[0], Face.Inside)!;
        var (k, far) = (Math.Tan(15 * Math.PI / 180), Radius + Thick / 2);
        double a = 1 + k * k, b = 2 * (Half * k - far), c = Half * Half + far * far - Radius * Radius;
        var x = (-b - Math.Sqrt(b * b - 4 * a * c)) / (2 * a);
        Assert.Equal(k * x, opens.Before, 1e-7);
        Assert.Equal(k * x, opens.After, 1e-7);
        Assert.Equal(2 * (Half + k * x), opens.Width, 1e-7);
        Assert.Equal(0.7, opens.Height, 1e-9);
        Assert.Null(Splays.Of(geometry, geometry.Openings[0], Face.Outside));
    }

    [Fact]
    public void Frame_TakesItsDepthFromTheReveals()
    {
        var framed = Window() with { Frame = new Frame(Length.FromMillimetres(880), Length.FromMillimetres(1060), Length.FromMillimetres(100), Length.FromMillimetres(40)) };
        foreach (var face in Enum.GetValues<Face>())
        {
            // 50 mm less of depth on each jamb, and of the soffit over its width.
            Assert.Equal(Of(Plumb(Window()), face).Jambs - 2 * High * 0.05, Of(Plumb(framed), face).Jambs, 1e-8);
            Assert.Equal(Of(Plumb(Window()), face).Head - 2 * Half * 0.05, Of(Plumb(framed), face).Head, 1e-8);
        }
    }

    [Fact]
    public void Splayed_JambLine_MeetsTheCircleWhereTheQuadraticSays()
    {
        var inside = Of(Plumb(Window(splay: 20)), Face.Inside);
        var k = Math.Tan(20 * Math.PI / 180);
        // (Half + k x)^2 + (Radius + Thick / 2 - x)^2 = Radius^2, x from the frame line toward the room.
        var (a, b, c) = (1 + k * k, 2 * (Half * k - Radius - Thick / 2), Half * Half + (Radius + Thick / 2) * (Radius + Thick / 2) - Radius * Radius);
        var x = (-b - Math.Sqrt(b * b - 4 * a * c)) / (2 * a);
        Assert.Equal(2 * High * x * Math.Sqrt(1 + k * k), inside.Jambs, 1e-8);
        // The soffit: the trapezium from the frame line to the chord between the two corners, and the circle's segment beyond it.
        var corner = Half + k * x;
        var bulge = Segment(Radius, corner) - 2 * corner * (Radius + Thick / 2 - x);
        Assert.Equal(x * (Half + corner) - bulge, inside.Head, 1e-8);
    }

    [Fact]
    public void Round_IsThePeriodicIntegralRoundTheTube()
    {
        // Rank: independent. The trapezoidal rule converges faster than any power on a smooth periodic function.
        const int Steps = 400;
        var sum = Enumerable.Range(0, Steps).Sum(i => Thick / 2 + Radius - Math.Sqrt(Radius * Radius - Math.Pow(Half * Math.Cos(2 * Math.PI * i / Steps), 2)));
        var inside = Of(Plumb(Window(OpeningShape.Round)), Face.Inside);
        Assert.Equal(Half * 2 * Math.PI / Steps * sum, inside.Head, 1e-6);
        Assert.Equal(0, inside.Jambs);
        Assert.Equal(0, inside.Sill);
    }

    [Fact]
    public void Semicircle_IsHalfTheTube()
    {
        var round = Of(Plumb(Window(OpeningShape.Round)), Face.Inside).Head;
        Assert.Equal(round / 2, Of(Plumb(Window(OpeningShape.Arched)), Face.Inside).Head, 1e-6);
    }

    [Fact]
    public void Leaning_FaceGivesTheMeanDepth()
    {
        // On a plumb outside and a leaning inside face the depth at the jamb changes with height; on the axis of a shallow hole it is the mean, so the jambs of a narrow opening are height times mean depth.
        var narrow = Window() with { Width = Length.FromMillimetres(20) };
        var house = Plumb(narrow) with { Wall = new Wall(Length.FromMillimetres(2500), Length.FromMillimetres(350), default, new Slope(0.05)) };
        var geometry = FromBuilding.Of(house);
        var jamb = (geometry.Wall.InsideOffset(0.7) + geometry.Wall.OutsideOffset(0.7)) / 2;
        var mean = jamb - geometry.Wall.InsideOffset(0.7 + High / 2);
        // 2e-4: a half width of 10 mm on a circle of 2 m stands back by 0.025 mm on each of two jambs 1.1 m high.
        Assert.Equal(2 * High * mean, Reveals.Of(geometry).Openings.Single(r => r.Face == Face.Inside).Jambs, 2e-4);
    }

    [Fact]
    public void BelowTheStem_NothingIsCounted()
    {
        var door = Window() with { Kind = OpeningKind.Door, Sill = Length.Zero, Height = Length.FromMillimetres(2000) };
        var house = Plumb(door);
        var high = 2.0 - house.Stem.Top.Metres;
        var deep = Thick / 2 + Radius - Math.Sqrt(Radius * Radius - Half * Half);
        Assert.Equal(2 * high * deep, Of(house, Face.Inside).Jambs, 1e-8);
        Assert.Equal(0, Of(house, Face.Inside).Sill);
    }

    [Theory]
    [InlineData(Face.Inside)]
    [InlineData(Face.Outside)]
    public void Niche_GivesBackAndSidesAndTakesItsMouth(Face face)
    {
        var niche = new Niche { Name = "lamp", Face = face, Along = Along.At(new Angle(200)), Width = Length.FromMillimetres(400), Height = Length.FromMillimetres(500), Depth = Length.FromMillimetres(120), Sill = Length.FromMillimetres(900), Head = NicheHead.Flat };
        var area = Reveals.Of(FromBuilding.Of(Plumb(Window()) with { Niches = [niche] })).Niches.Single();
        var r = face == Face.Inside ? Radius : Radius + Thick;
        Assert.Equal(0.4 * 0.5, area.Back, 1e-9);
        Assert.Equal(0.5 * 2 * r * Math.Asin(0.2 / r), area.Mouth, 1e-8);
        // From the curved face to the back at 120 mm behind the face's middle.
        var back = face == Face.Inside ? Radius + 0.12 : Radius + Thick - 0.12;
        var (jamb, level) = (Math.Abs(back - Math.Sqrt(r * r - 0.04)), Math.Abs(0.4 * back - Segment(r, 0.2)));
        Assert.Equal(2 * 0.5 * jamb + 2 * level, area.Sides, 1e-8);
    }
}
