using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Views;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>What is built in, warned of and told as a question stands on the sheet of those whom it concerns.</summary>
public sealed class RightSheetTests
{
    private static string Words(IEnumerable<Sheet> sheets, string key) =>
        string.Join(' ', sheets.Where(s => s.Key == key || (s.Key.StartsWith(key + "-", StringComparison.Ordinal) && int.TryParse(s.Key[(key.Length + 1)..], out _))).SelectMany(s => s.Texts()).Select(t => t.Words));

    // The drain goes through the stem at 2 in: masons set it, and nobody looks for it in the cob.
    [Fact]
    public void WhatLiesInTheStem_IsOnTheSheetOfTheFoundation()
    {
        Assert.Contains("tub-drain", Words(Papers.HeronPointSite, "foundation"), StringComparison.Ordinal);
        Assert.DoesNotContain("tub-drain", Words(Papers.HeronPointSite, "lift-1"), StringComparison.Ordinal);
        Assert.Contains("With the stem", Words(Papers.HeronPointSite, "embed-register"), StringComparison.Ordinal);
    }

    // By hand: a stem of 12 in with a door whose sill is at 0 has the lowest blocks of its frame at 8 in, in the stone.
    [Fact]
    public void BlocksOfAFrameInTheStem_AreOnTheSheetOfTheFoundation()
    {
        var geometry = FromBuilding.Of(Houses.HeronPoint with { Stem = Houses.HeronPoint.Stem with { Top = Length.FromInches(12) } });
        Assert.Equal([("door", 8 * 0.0254)], StemContents.Of(geometry).Deadmen.Select(d => (d.Opening.Opening.Name, Math.Round(d.Height, 9))));
        Assert.DoesNotContain(LiftContents.Of(geometry, geometry.Lifts[0]).Deadmen, d => d.Height < 12 * 0.0254);
        Assert.Contains("fixing blocks", Words(FoundationSheet.Of(new Scene(Papers.HeronPoint with { Geometry = geometry })).Select((d, i) => d.Finish(i + 1, 9, new Imprint("x", Papers.Date, null), new Wording(UnitSystem.Imperial, Phrasebook.English))), "foundation"), StringComparison.Ordinal);
    }

    // A header is warned of on the sheets of the lifts on which one is lifted in, and on no other.
    [Fact]
    public void Headers_AreWarnedOf_WhereTheyAreLiftedIn()
    {
        var g = Papers.HeronPoint.Geometry;
        var warned = g.Lifts.Where(l => Words(Papers.HeronPointSite, Ids.Lift(l.Number)).Contains("Set a header only on cob", StringComparison.Ordinal)).Select(l => l.Number);
        Assert.Equal(g.Openings.Where(o => o.Header is not null).Select(o => g.Lifts.First(l => l.Takes(o.Header!.Bottom)).Number).Distinct().Order(), warned);
    }

    [Fact]
    public void FramingPlan_WarnsOfPolesThatFall() => Assert.Contains("fixed at one end is not held", Words(Papers.HeronPointSite, "roof-plan"), StringComparison.Ordinal);

    // A sleeve as wide as a stove pipe, 8 in, is warned of with its lift; pipes for water are not.
    [Fact]
    public void WideSleeves_AreWarnedOf()
    {
        Embed sleeve = new() { Name = "pipe", Kind = EmbedKind.Sleeve, Along = Along.At(new Angle(300)), Height = Length.FromInches(80), Width = Length.FromInches(8), Through = true };
        bool Hot(Embed embed) => HotSleeves.Any(FromBuilding.Of(Houses.HeronPoint with { Embeds = [embed] }).Embeds);
        Assert.True(Hot(sleeve));
        Assert.False(Hot(sleeve with { Width = Length.FromInches(3) }));
        Assert.False(HotSleeves.Any(Papers.HeronPoint.Geometry.Embeds));
    }

    // "0 fall short" may not stand alone where the model of the wall has shares over the whole.
    [Fact]
    public void SharesOverTheWhole_AreSaidToBeQuestions()
    {
        var wall = Papers.HeronPoint.Structure!.Value.Value!;
        var over = wall.Piers.Sum(p => (p.Across.Use > 1 ? 1 : 0) + (p.Along.Use > 1 ? 1 : 0));
        Assert.True(over > 0);
        Assert.Equal(over, WallNoteSheet.Over(new Scene(Papers.HeronPoint)).Count);
        var hand = WallByHandSheet.Over(new Scene(Papers.HeronPoint));
        Assert.Equal(Papers.HeronPoint.WallByHand!.InPlane.Count(m => m.Check.Value?.Use > 1), hand.Count - Papers.HeronPoint.WallByHand.OutOfPlane.Concat(Papers.HeronPoint.WallByHand.Joints).Append(Papers.HeronPoint.WallByHand.Overturning).Count(m => m.Check.Value?.Use > 1));
        Assert.Contains($"{hand.Count} of {hand.Of} of the wall by hand, {over} of {2 * wall.Piers.Count} of piers in its model", Words(Papers.HeronPointOffice, "note"), StringComparison.Ordinal);
        Assert.Contains($"{hand.Count} of {hand.Of} are over 100", Words(Papers.HeronPointOffice, "wall-by-hand"), StringComparison.Ordinal);
        Assert.Contains($"{over} of {2 * wall.Piers.Count} over 100 %, questions", Words(Papers.HeronPointOffice, "wall-note").Replace('\u00a0', ' ').Replace('\u202f', ' '), StringComparison.Ordinal);
    }

    // Bottles seen from outside are numbered from right to left: so is their list.
    [Fact]
    public void Bottles_AreListedInTheOrderOfTheDrawing()
    {
        // The ruler at the edge of the sheet has its numbers under each other.
        var signs = Papers.HeronPointSite.Single(s => s.Key == "bottles").Texts().Where(t => t.Words is "1" or "2" or "3" or "4" or "5")
            .GroupBy(t => Math.Round(t.At.X, 1)).Where(column => column.Count() < 5).SelectMany(column => column).OrderBy(t => Math.Round(t.At.Y, 1)).ThenBy(t => t.At.X);
        Assert.Equal("54321" + "54321", string.Concat(signs.Select(t => t.Words)));
    }
}
