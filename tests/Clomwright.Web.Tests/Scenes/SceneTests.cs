using System.Text.Json;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Testing;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests.Scenes;

/// <summary>From a study to what is drawn. Rank: property, against the geometry that it is drawn from.</summary>
public sealed class SceneTests
{
    /// <summary>Coordinates are rounded to a tenth of a millimetre.</summary>
    private const double Rounding = 1e-4;

    [Fact]
    public void EveryOpening_OfAnyPlausibleHouse_IsDrawnInBothViewsWithinTheWall() =>
        Houses.Plausible.ForAll(
            house =>
            {
                var study = HouseStudy.Of(house);
                var scene = Of(study);
                Assert.Equal(house.Openings.Count, scene.Openings.Count);
                foreach (var view in (FaceView[])[scene.View, Of(study, Face.Outside).View])
                {
                    Assert.All(view.Openings, opening => Assert.NotEmpty(opening.Outlines));
                    Assert.All(view.Openings.SelectMany(opening => opening.Outlines).SelectMany(outline => outline), point =>
                        Assert.InRange(point[1], -Rounding, scene.Top + Rounding));
                    Assert.All(view.Piers.SelectMany(pier => pier.Boxes), box =>
                    {
                        Assert.InRange(box[0], -Rounding, box[1]);
                        Assert.InRange(box[1], box[0], view.Length + Rounding);
                    });
                }
            },
            iter: Counts.Of(60, 3_000));

    [Fact]
    public void PierBoxes_FromInside_AreAsWideAsThePierInPlan() =>
        Houses.Plausible.ForAll(
            house =>
            {
                var study = HouseStudy.Of(house);
                var view = Of(study).View;
                foreach (var (pier, drawn) in study.Geometry.Piers.Zip(view.Piers))
                {
                    // Two ends of each of at most two boxes are rounded.
                    Assert.Equal(Math.Max(0, pier.Span.Width), drawn.Boxes.Sum(box => box[1] - box[0]), 4 * Rounding);
                }
            },
            iter: Counts.Of(60, 3_000));

    [Fact]
    public void OutsideView_RunsToTheLeft_AndIsAsLongAsTheFace()
    {
        var study = HouseStudy.Of(Houses.Round(Length.FromFeet(14)));
        var (inside, outside) = (Of(study).View, Of(study, Face.Outside).View);
        var radius = Length.FromFeet(7).Metres;

        // Closed forms: a circle's inside face is 2 pi r, its outside face at the base 2 pi (r + t).
        Assert.Equal(2 * Math.PI * radius, inside.Length, Rounding);
        Assert.Equal(2 * Math.PI * (radius + study.Geometry.Wall.ThicknessAt(study.Geometry.Wall.Base.Metres)), outside.Length, Rounding);
        Assert.Equal(inside.Along.Order(), inside.Along);
        Assert.Equal(outside.Along.OrderDescending(), outside.Along);
        Assert.Equal((0, inside.Length), (inside.Along[0], inside.Along[^1]));
        Assert.Equal((outside.Length, 0), (outside.Along[0], outside.Along[^1]));
    }

    [Fact]
    public void Findings_InTheScene_AreThoseOfTheStudyAndNothingMissingCountsAsMet() =>
        Houses.Plausible.ForAll(
            house =>
            {
                var study = HouseStudy.Of(house with { Rules = house.Rules with { Adopted = ["common-practice", "irc-cob@2021"] } });
                var scene = Of(study);
                var tally = study.Tally;
                Assert.Equal(
                    (tally.Met, tally.Short, tally.NotChecked, tally.NeedsJudgement),
                    (Count("met"), Count("short"), Count("unchecked"), Count("judgement")));
                Assert.Equal(scene.Findings.Count, scene.Findings.Select(f => f.Id).Distinct().Count());
                Assert.All(scene.Findings.Where(f => f.Number is not null), f => Assert.Contains(scene.View.Marks, mark => mark.Id == f.Id));

                int Count(string standing) => scene.Findings.Count(f => f.Standing == standing);
            },
            iter: Counts.Of(40, 2_000));

    [Fact]
    public void OpeningThatOverlapsAnother_IsStillDrawnAndSaysWhy()
    {
        var heron = Houses.HeronPoint;
        var door = heron.Openings.Single(o => o.Name == "door");
        var scene = Of(HouseStudy.Of(heron with { Openings = heron.Openings.Plus(door with { Name = "twin", Kind = OpeningKind.Fixed, Leaf = null }) }));

        var twin = scene.Openings.Single(o => o.Name == "twin");
        Assert.Contains("overlaps", twin.Trouble);
        Assert.NotEmpty(scene.View.Openings.Single(o => o.Name == "twin").Outlines);
    }

    [Fact]
    public void AnyHouse_HoweverSilly_GivesASceneThatCanBeSent() =>
        Gen.Select(Houses.Plausible, Gen.Int[-3000, 3000].Select(mm => Length.FromMillimetres(mm)), Gen.Int[0, 6]).ForAll(
            (house, length, what) =>
            {
                var silly = what switch
                {
                    0 => house with { Wall = house.Wall with { Top = length } },
                    1 => house with { Openings = house.Openings.Select(o => o with { Width = length, Height = length }).ToSequence() },
                    2 => house with { Plan = new Plan.Round(length) },
                    3 => house with { Plan = new Plan.Path([default, new(length, default), new(length + length, default)]) },
                    4 => house with { Wall = house.Wall with { ThicknessAtTop = length, OutsideTaper = new Slope(-3) } },
                    5 => house with { Niches = house.Niches.Select(n => n with { Depth = length, Width = length * 20 }).ToSequence(), Lifts = new LiftPlan { Height = Length.Zero } },
                    _ => house with { BondBeam = new BondBeam(length, length, length), Tees = new Tees(length, length, length), Stem = house.Stem with { Top = length } },
                };
                var scene = Of(HouseStudy.Of(silly));
                JsonSerializer.Serialize(scene, JsonSerializerOptions.Web);
            },
            iter: Counts.Of(60, 3_000));

    private static Scene Of(HouseStudy study, Face face = Face.Inside) => FromStudy.Scene(study, face, Phrasebook.English, study.Diagnostics);
}
