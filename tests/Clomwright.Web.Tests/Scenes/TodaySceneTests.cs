using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Testing;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests.Scenes;

/// <summary>What the page of a day says of the bath house.</summary>
public sealed class TodaySceneTests
{
    private static SiteEntry Day(int day, int inches) => new($"day-{day:00000}", new DateTimeOffset(2027, 6, day, 18, 0, 0, TimeSpan.Zero), "Ada", new Seen.Day(new DateOnly(2027, 6, day)) { Raised = Length.FromInches(inches), People = 8 });

    private static TodayScene Scene(HouseStudy study, int day) => TodaySceneOf.Scene(study, new DateTime(2027, 6, day, 7, 30, 0), Phrasebook.English);

    /// <summary>Rank property: the lift that cob goes on, its height and its batches are those that the study counts; dates come from the day on which the top was laid, firm days rounded up, keying days down, so that neither promises more than the forecast.</summary>
    [Fact]
    public void ALoggedHouse_ItsLift_ItsTop_AndWhatIsSetIn()
    {
        var house = Houses.HeronPoint;
        var lifts = HouseStudy.Of(house).Geometry.Lifts;
        var rise = (int)Math.Round((lifts[0].Top - lifts[0].Bottom).Metres / 0.0254);
        var study = HouseStudy.Of(house, StudyOptions.Quick with { Record = new([Day(1, rise)]), Today = new DateOnly(2027, 6, 2) });
        var scene = Scene(study, 2);
        Assert.Equal(1, scene.At);
        Assert.Equal("Lift 2 of 8", scene.Lifts[1].Name);
        Assert.Equal(AmountText.In(Amount.Metres(lifts[1].Top.Metres), UnitSystem.Imperial), scene.Lifts[1].To);
        Assert.Equal($"{AmountText.In(Amount.Number(Math.Round(study.Quantities.Lifts[1].Batches!.Value * 2) / 2), UnitSystem.Imperial)} batches", scene.Lifts[1].Batches);
        Assert.Contains("1 June 2027", scene.Top[0]);
        var band = study.Drying.Value!.Lifts[0];
        Assert.Contains(Phrasebook.English.Say(new DateOnly(2027, 6, 1).AddDays((int)Math.Ceiling(band.DaysToNext.Low!.Value))), scene.Top[1]);
        Assert.Contains(Phrasebook.English.Say(new DateOnly(2027, 6, 1).AddDays((int)Math.Ceiling(band.DaysToNext.High!.Value))), scene.Top[1]);
        Assert.Contains(Phrasebook.English.Say(new DateOnly(2027, 6, 1).AddDays((int)Math.Floor(band.KeysFor.Low!.Value))), scene.Top[2]);

        // Everything that is placed in the wall stands with one lift, and only with one; what lies in the stem with the stem.
        var keys = scene.Lifts.SelectMany(l => l.SetIn).Select(i => i.Key).ToList();
        Assert.Equal(keys.Count, keys.Distinct().Count());
        var g = study.Geometry;
        Assert.Equal(g.Openings.Count, keys.Count(k => k.StartsWith("sill-", StringComparison.Ordinal)));
        Assert.Equal(g.Embeds.Count, keys.Concat(SetInList.OfStem(g).Select(i => i.Key)).Distinct().Count(k => k.StartsWith("embed-", StringComparison.Ordinal)));
        Assert.Equal(g.Niches.Count, keys.Count(k => k.StartsWith("niche-", StringComparison.Ordinal)));
        Assert.Equal(g.Tees.Count, keys.Count(k => k.StartsWith("tee-", StringComparison.Ordinal)));
        Assert.DoesNotContain("[", string.Join(" ", scene.Lifts.SelectMany(l => l.SetIn).Select(i => i.What).Concat(scene.Cautions).Concat(scene.WeatherDo).Concat(scene.Top).Append(scene.Plan)));
    }

    /// <summary>Rank: by hand. What nobody wrote is said, and never taken for fair weather or for a quiet day.</summary>
    [Fact]
    public void WhatNobodyWrote_IsSaid()
    {
        var bare = Houses.HeronPoint with { Crew = null, Site = Houses.HeronPoint.Site with { Emergency = null } };
        var scene = Scene(HouseStudy.Of(bare), 8);
        Assert.Null(scene.At);
        Assert.Empty(scene.Top);
        Assert.Contains("No day is planned", scene.Plan);
        Assert.Contains("Nobody wrote a forecast", scene.Weather);
        Assert.Equal(3, scene.WeatherDo.Count);
        Assert.Contains("number for help", Assert.Single(scene.CallNotes));

        var told = Houses.HeronPoint with
        {
            Site = Houses.HeronPoint.Site with { Forecast = [new SiteDay(new DateOnly(2027, 6, 8), new Temperature(21), new Temperature(9), Length.Zero)], Emergency = new() { Number = "+00 (0)12 34-5", Meet = "the gate", Contacts = [new Contact("nurse", "N. Invented", "555 0100")] } },
        };
        scene = Scene(HouseStudy.Of(told), 8);
        Assert.Empty(scene.WeatherDo);
        Assert.Equal(["+00012345", "5550100"], scene.Calls.Select(c => c.Dial));
        Assert.Contains("the gate", Assert.Single(scene.CallNotes));
    }
}
