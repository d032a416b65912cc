using Clomwright.Building;
using Clomwright.Evidence;
using static Clomwright.Rules.Tests.AtTheLimit.LimitCase;

namespace Clomwright.Rules.Tests.AtTheLimit;

/// <summary>Houses exactly at the limits of the model cob code.</summary>
internal static class IrcCobCases
{
    public static IEnumerable<LimitCase> All =>
    [
        Case("seismic-category", "site", "Sds of 0.5 exactly", side => On(site => site with { SeismicSds = 0.5 + side * 1e-9 })),
        Case("seismic-category", "site", "Sd1 of 0.2 exactly", side => On(site => site with { SeismicSd1 = 0.2 + side * 1e-9 })),
        Case("seismic-category", "site", "S1 of 0.75 exactly", side => On(site => site with { SeismicS1 = 0.75 + side * 1e-9 })),
        Case("wall-top-over-grade", "wall", "a wall top 20 ft above grade", side => Bare with { Wall = Bare.Wall with { Top = In(228) + Nm(side) } }),
        Case("wall-thickness-least", "wall", "a wall 10 in thick", side => Bare with { Wall = Bare.Wall with { ThicknessAtTop = In(10) - Nm(side) } }),
        Case("wall-thickness-most", "wall", "a wall 24 in thick", side => Bare with { Wall = Bare.Wall with { ThicknessAtTop = In(24) + Nm(side) } }),
        Case("wind-speed", "site", "110 mph where 110 mph is entered", side => On(site => site with { WindSpeed = new Speed(Si("110 mph", Dimension.Speed) + side * 1e-6) }), "110 mph"),
        Case("ground-snow", "site", "50 psf where 50 psf is entered", side => On(site => site with { GroundSnow = new Stress(Si("50 psf", Dimension.AreaLoad) + side * 1e-3) }), "50 psf"),
        Case("mix-shrinkage", "test bar 1", "a bar of 24 in that shortened by 1 in", side => Bare with { Mix = new Mix { TestBars = [new TestBar(In(24), In(1) + Nm(side))] } }),
        Case("cob-strength", "mix", "five prisms that broke at 960 lbf", side => Crushed(960 - side)),
        Case("cob-strength-bracing", "mix", "five prisms that broke at 1360 lbf", side => Crushed(1360 - side)),
        Case("modulus-of-rupture", "brick 1", "a brick that broke at 50 psi where 50 psi is entered", side => Bare with
        {
            Mix = new Mix { Bricks = [new Brick(In(10), In(4), In(10), new Force(Si("50 psi", Dimension.Stress) * 2 * 0.254 * 0.1016 * 0.1016 / (3 * 0.254) - side * 1e-6), 30)] },
        }, "50 psi"),
        Case("wall-height", "wall", "8 ft of cob where 8 ft is entered", side => Bare with { Wall = Bare.Wall with { Top = In(104) + Nm(side) } }, "8 ft"),
        Case("wall-slenderness", "wall top", "96 in of cob, 12 in thick, where 8 is entered", side => Bare with { Wall = Bare.Wall with { Top = In(104) + Nm(side) } }, "8"),
        Case("stem-height", "stem", "a stem 8 in above grade where 8 in is entered", side => Bare with { Site = Bare.Site with { Grade = Nm(side) } }, "8 in"),
        Case("header-bearing", "window/header", "a header that bears 10 in where 10 in is entered", side => Bare with
        {
            Openings =
            [
                new Opening
                {
                    Name = "window", Kind = OpeningKind.Fixed, Along = Along.At(In(60)), Width = In(24), Height = In(40), Sill = In(36),
                    Header = new Header(3, In(4), In(6), In(10) - Nm(side)),
                },
            ],
        }, "10 in"),
    ];

    private static LimitCase Case(string rule, string subject, string what, Func<int, House> house, string? entered = null) =>
        new("irc-cob", rule, subject, what, house) { Entered = entered };

    private static House On(Func<Site, Site> site) => Bare with { Site = site(Bare.Site) };

    private static House Crushed(double pounds) =>
        Bare with { Mix = new Mix { Prisms = [.. Enumerable.Repeat(new Prism(In(4), In(4), In(8), new Force(Si($"{pounds} lbf", Dimension.Force)), 40), 5)] } };

    private static double Si(string text, Dimension dimension) =>
        QuantityText.TryParse(text, dimension, out var value, out var problem) ? value.Si : throw new ArgumentException(problem!.Key, nameof(text));

    private static Length In(long inches) => Length.FromInches(inches);

    private static Length Nm(int count) => new(count);
}
