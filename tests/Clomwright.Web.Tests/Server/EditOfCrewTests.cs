using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Testing;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Tests.Server;

/// <summary>From a blank of the crew to an edit of it. Rank: by hand and property.</summary>
public sealed class EditOfCrewTests
{
    [Theory]
    [InlineData("crew.people", "12")]
    [InlineData("crew.skill", "skilled")]
    [InlineData("crew.work-start", "2027-07-05")]
    [InlineData("crew.days-per-week", "6")]
    [InlineData("crew.hours-per-day", "6.5")]
    [InlineData("crew.begins", "trench")]
    [InlineData("crew.roof-on", "2027-09-01")]
    [InlineData("crew.roof-on", "")]
    public void Written_StandsInTheBlank_AsItWasWritten_InTheFileToo(string key, string text)
    {
        var edit = Change(key, text, out var reason);
        Assert.Null(reason);
        var changed = edit!.Apply(Houses.HeronPoint);
        var read = HouseDocument.Read(HouseWriter.Write(changed)).House!;
        Assert.Equal(text, CrewBlanks.Of(changed).Single(blank => blank.Key == key).Text);
        Assert.Equal(text, CrewBlanks.Of(read).Single(blank => blank.Key == key).Text);
    }

    [Theory]
    [InlineData("crew.people", "some", "web.days.not-whole")]
    [InlineData("crew.people", "-3", "web.days.not-whole")]
    [InlineData("crew.people", "0", "building.count")]
    [InlineData("crew.people", "501", "building.count")]
    [InlineData("crew.days-per-week", "8", "building.count")]
    [InlineData("crew.hours-per-day", "0", "building.zero")]
    [InlineData("crew.hours-per-day", "", "web.earth.needed")]
    [InlineData("crew.skill", "clever", "web.earth.not-choice")]
    [InlineData("crew.work-start", "midsummer", "web.earth.not-day")]
    [InlineData("crew.cook", "yes", "web.earth.gone")]
    public void WhatTheDescriptionWouldCallWrong_IsRefused_InOneSentence(string key, string text, string reason)
    {
        Assert.Null(Change(key, text, out var why));
        Assert.Equal(reason, why!.Key);
    }

    /// <summary>The first day of work is always some day: nothing written leaves it.</summary>
    [Fact]
    public void NoFirstDay_LeavesTheOneThereWas() => Assert.Equal(Houses.HeronPoint.Crew!.Start, Change("crew.work-start", "", out _)!.Apply(Houses.HeronPoint).Crew!.Start);

    [Fact]
    public void AHouseWithoutACrew_HasNoBlanks() => Assert.Empty(CrewBlanks.Of(Houses.HeronPoint with { Crew = null }));

    private static Edit? Change(string key, string text, out Message? reason) => EditOf.Change(new Change.Enter(key, text), Houses.HeronPoint, _ => null, out reason);
}
