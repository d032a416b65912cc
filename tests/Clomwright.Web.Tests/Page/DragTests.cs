using System.Text.RegularExpressions;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Study;
using Clomwright.Testing;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The main job on the real page, in a real browser. Rank: by hand; the limit is common practice, 2 ft of cob between openings.</summary>
[Collection(nameof(Chromium))]
public sealed partial class DragTests(Chromium chromium)
{
    private const string Pier = "pier tub-window|south-window";
    private const string Said = "pier tub-window to south-window";

    [Fact]
    public async Task WindowDraggedTowardItsNeighbour_PierFallsShort_IsSeenTakenBackPutAgainAndSaved()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var page = open.Page;
        var before = await File.ReadAllTextAsync(open.HouseFile);
        var pier = page.Locator($"[data-pier='{Pier}']").First;
        await Expect(pier).Not.ToHaveClassAsync(Short());

        await Drag(page, "tub-window", 0.45);

        await Expect(pier).ToHaveClassAsync(Short());
        var finding = page.Locator("margin-list .finding.short", new() { HasText = Said }).First;
        await Expect(finding).ToBeVisibleAsync();
        var number = await finding.Locator(".number").TextContentAsync();
        await Expect(page.Locator("svg.unrolled .number.short", new() { HasText = number })).ToBeVisibleAsync();
        await Expect(page.Locator(".saved")).ToContainTextAsync("Changed");

        await finding.Locator("button").ClickAsync();
        await Expect(page.Locator("svg.unrolled .pointed").First).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(pier).Not.ToHaveClassAsync(Short());
        Assert.Equal(before, await File.ReadAllTextAsync(open.HouseFile));

        await page.GetByRole(AriaRole.Button, new() { Name = "Put it back again" }).ClickAsync();
        await Expect(pier).ToHaveClassAsync(Short());
        var station = await page.Locator("[name=station]").InputValueAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");
        Assert.NotEqual(before, await File.ReadAllTextAsync(open.HouseFile));

        await page.ReloadAsync();
        await Expect(pier).ToHaveClassAsync(Short());
        await page.Locator("[data-opening=tub-window]").FocusAsync();
        await Expect(page.Locator("opening-line [name=station]")).ToHaveValueAsync(station);
        Assert.Empty(open.Complaints);
    }

    /// <summary>The house was left with a pier too narrow: from the totals to the finding, to the pier, mended by hand, saved.</summary>
    [Fact]
    public async Task AFailingPier_IsFoundInTheMargin_AndMendedByDrag_AndSaved()
    {
        var drawn = HouseStudy.Of(Houses.HeronPoint).Geometry.Openings.Single(o => o.Opening.Name == "tub-window").Station;
        var narrow = new Edit.MoveOpening("tub-window", Along.At(Length.Nearest(drawn + 0.4))).Apply(Houses.HeronPoint);
        await using var open = await OpenPage.AtWall(chromium, house: narrow);
        var page = open.Page;
        var pier = page.Locator($"[data-pier='{Pier}']").First;
        await Expect(pier).ToHaveClassAsync(Short());
        await Expect(page.Locator(".masthead .totals")).Not.ToContainTextAsync(" 0 short");

        // Who follows the margin is shown the pier, its numbers, and whose rule it is.
        await page.Locator(".masthead .totals a").ClickAsync();
        var finding = page.Locator("margin-list .finding.short", new() { HasText = Said }).Filter(new() { HasText = "Cob between two openings" }).First;
        await finding.Locator("button").ClickAsync();
        await Expect(finding.Locator(".says")).ToContainTextAsync("at least 2 ft");
        await Expect(finding.Locator(".more .by")).Not.ToBeEmptyAsync();
        await Expect(page.Locator("svg.unrolled .pointed").First).ToBeInViewportAsync();

        // Too little is not enough; far enough is, and while it is dragged the finding says how far it is.
        var said = await finding.Locator(".says").TextContentAsync();
        await Drag(page, "tub-window", -0.1);
        await Expect(finding.Locator(".says")).Not.ToHaveTextAsync(said!);
        await Expect(pier).ToHaveClassAsync(Short());
        await Drag(page, "tub-window", -0.3);
        await Expect(pier).Not.ToHaveClassAsync(Short());
        await Expect(finding).ToHaveCountAsync(0);
        await Expect(page.Locator(".masthead .totals")).ToContainTextAsync(" 0 short");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");

        // By the file alone, with a study from nothing: no rule falls short any more.
        var mended = HouseFile.Read(open.HouseFile).House!;
        Assert.NotEqual(narrow, mended);
        Assert.Equal(0, HouseStudy.Of(mended).Tally.Short);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task ArrowKeys_OnAnOpening_MoveItByAnInchAndShiftByMore()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var page = open.Page;
        await page.Locator("[data-opening=tub-window]").FocusAsync();
        var sill = page.Locator("[name=sill]");
        await Expect(sill).ToHaveValueAsync("3 ft 2 in");

        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(sill).ToHaveValueAsync("3 ft 3 in");
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await Expect(sill).ToHaveValueAsync("3 ft 9 in");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(sill).ToHaveValueAsync("3 ft 2 in");
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task ArrowRight_FromOutside_MovesToTheRightOnTheScreen()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var page = open.Page;
        var outside = page.GetByRole(AriaRole.Button, new() { Name = "from outside" });
        await outside.ClickAsync();
        await Expect(outside).ToHaveAttributeAsync("aria-pressed", "true");
        var before = await page.Locator("[data-opening=tub-window] .leaf").BoundingBoxAsync();

        await page.Locator("[data-opening=tub-window]").FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");

        await OpenPage.Until(page, "x => document.querySelector('[data-opening=tub-window] .leaf').getBoundingClientRect().x > x + 5", (double)before!.X);
    }

    [Fact]
    public async Task NonsenseWritten_StaysWithItsReason_AndSenseIsTaken()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var page = open.Page;
        await page.Locator("[data-opening=tub-window]").FocusAsync();
        var width = page.Locator("[name=width]");

        await width.FillAsync("as wide as the door");
        await width.PressAsync("Enter");
        await Expect(page.Locator("#reason-width")).ToContainTextAsync("as wide as the door");
        await Expect(width).ToHaveValueAsync("as wide as the door");
        await Expect(width).ToHaveAttributeAsync("aria-invalid", "true");

        await width.FillAsync("2'4\"");
        await width.PressAsync("Enter");
        await Expect(width).ToHaveValueAsync("2 ft 4 in");
        await Expect(page.Locator("#reason-width")).ToHaveCountAsync(0);

        await width.FillAsync("nonsense");
        await width.PressAsync("Enter");
        await Expect(page.Locator("#reason-width")).ToBeVisibleAsync();
        await width.PressAsync("Escape");
        await Expect(width).ToHaveValueAsync("2 ft 4 in");
        Assert.Empty(open.Complaints);
    }

    private static async Task Drag(IPage page, string opening, double metres)
    {
        var box = await page.Locator($"[data-opening={opening}] .leaf").BoundingBoxAsync();
        var wall = await page.Locator(".cob").BoundingBoxAsync();
        var ring = await page.EvaluateAsync<double>("() => document.querySelector('unrolled-wall').scene.view.length");
        var (x, y) = (box!.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync((float)(x + metres * wall!.Width / ring), y + 3, new() { Steps = 12 });
        await page.Mouse.UpAsync();
    }

    [GeneratedRegex(@"\bshort\b")]
    private static partial Regex Short();
}
