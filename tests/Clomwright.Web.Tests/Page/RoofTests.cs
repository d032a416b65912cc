using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>Knobs turned on the real page, in a real browser. Rank: by hand.</summary>
[Collection(nameof(Chromium))]
public sealed partial class RoofTests(Chromium chromium)
{
    [Fact]
    public async Task SoilTurnedUp_UntilAMarginFallsShort_IsSeenTakenBackPutAgainSavedAndReadBack()
    {
        await using var open = await AtRoof();
        var page = open.Page;
        var before = await File.ReadAllTextAsync(open.HouseFile);
        await Expect(page.Locator("tr.short")).ToHaveCountAsync(0);
        var soil = page.Locator("[name=soil]");
        await Expect(soil).ToHaveValueAsync("4 in");

        await Pull(page, "soil", 0.98f);

        var finding = page.Locator("margin-list .finding.short", new() { HasText = "Bending in the stages" }).First;
        await Expect(finding).ToBeVisibleAsync();
        await Expect(page.Locator("tr.short").First).ToBeVisibleAsync();
        await Expect(page.Locator(".tight").First).ToHaveClassAsync(Short());
        await Expect(page.Locator("tr[data-stage=soilWet] .use")).Not.ToHaveTextAsync("33.3 %");
        var number = await finding.Locator(".number").TextContentAsync();
        await Expect(page.Locator(".roof-from-above .number.short", new() { HasText = number })).ToBeVisibleAsync();
        await finding.Locator("button").ClickAsync();
        await Expect(page.Locator(".roof-from-above .number.on")).ToHaveCountAsync(1);
        Assert.NotEqual("4 in", await soil.InputValueAsync());

        // One pull is one step back, however many marks it went over.
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(soil).ToHaveValueAsync("4 in");
        await Expect(page.Locator("tr.short")).ToHaveCountAsync(0);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take back" })).ToBeDisabledAsync();
        Assert.Equal(before, await File.ReadAllTextAsync(open.HouseFile));

        await page.GetByRole(AriaRole.Button, new() { Name = "Put it back again" }).ClickAsync();
        await Expect(finding).ToBeVisibleAsync();
        var deep = await soil.InputValueAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");

        await page.ReloadAsync();
        await Expect(soil).ToHaveValueAsync(deep);
        await Expect(finding).ToBeVisibleAsync();
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task ButtonsAndKeys_StepAKnob_AndAHeldButtonIsOneStepBack()
    {
        await using var open = await AtRoof();
        var page = open.Page;
        var eave = page.Locator("[name=eave]");
        await page.Locator("[data-knob=eave] .step").Last.ClickAsync();
        await Expect(eave).ToHaveValueAsync("2 ft 5 in");
        await eave.PressAsync("ArrowDown");
        await Expect(eave).ToHaveValueAsync("2 ft 4 in");

        await page.Locator("[data-knob=poles] .step").Last.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("[name=poles]")).ToHaveValueAsync("9");
        await Expect(page.Locator(".pole-number")).ToHaveCountAsync(9);

        await page.Locator("[data-knob=ring] .step").Last.HoverAsync();
        await page.Mouse.DownAsync();
        await OpenPage.Until(page, "() => { const at = document.querySelector('[data-knob=ring] .tape').value; return Number(at) >= 34; }");
        await page.Mouse.UpAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(page.Locator("[name=ring]")).ToHaveValueAsync("2 ft 6 in");
        await Expect(page.Locator("[name=poles]")).ToHaveValueAsync("9");

        await page.Locator("[data-knob=soil] .tape").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.Locator("[name=soil]")).ToHaveValueAsync("4 1/2 in");
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task NonsenseWritten_StaysWithItsReason_AndSenseIsTaken()
    {
        await using var open = await AtRoof();
        var page = open.Page;
        var eave = page.Locator("[name=eave]");
        await eave.FillAsync("as far as it goes");
        await eave.PressAsync("Enter");
        await Expect(page.Locator("#reason-eave")).ToContainTextAsync("as far as it goes");
        await Expect(eave).ToHaveValueAsync("as far as it goes");
        await Expect(eave).ToHaveAttributeAsync("aria-invalid", "true");

        await eave.FillAsync("3'1\"");
        await eave.PressAsync("Enter");
        await Expect(eave).ToHaveValueAsync("3 ft 1 in");
        await Expect(page.Locator("#reason-eave")).ToHaveCountAsync(0);

        await eave.FillAsync("0.9 m");
        await eave.PressAsync("Enter");
        await Expect(eave).ToHaveValueAsync("900 mm");
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task RingTooWide_SaysWhy_AndComesBack()
    {
        await using var open = await AtRoof();
        var page = open.Page;
        var ring = page.Locator("[name=ring]");
        await ring.FillAsync("20 ft");
        await ring.PressAsync("Enter");
        await Expect(page.Locator(".no-roof")).ToBeVisibleAsync();
        await Expect(page.Locator(".pole-shape")).ToHaveCountAsync(0);
        await ring.FillAsync("2 ft 6 in");
        await ring.PressAsync("Enter");
        await Expect(page.Locator(".no-roof")).ToHaveCountAsync(0);
        await Expect(page.Locator(".pole-number")).ToHaveCountAsync(8);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task FromWallToRoofAndBack_TheSameChangeIsThere()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var page = open.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Roof", Exact = true }).ClickAsync();
        await page.Locator("[data-knob=bearing] .step").Last.ClickAsync();
        await Expect(page.Locator("[name=bearing]")).ToHaveValueAsync("1 deg");
        await page.GetByRole(AriaRole.Link, new() { Name = "Wall", Exact = true }).ClickAsync();
        await page.Locator("svg.unrolled .opening").First.WaitForAsync();
        await Expect(page.Locator(".saved")).ToContainTextAsync("Changed");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");
        Assert.Empty(open.Complaints);
    }

    private async Task<OpenPage> AtRoof()
    {
        var open = await OpenPage.At(chromium, $"/roof/{HouseFolderCopy.Key}");
        await open.Page.Locator(".roof-from-above .pole-shape").First.WaitForAsync();
        return open;
    }

    /// <summary>Pulls a knob's peg by the pointer to a share of its tape.</summary>
    private static async Task Pull(IPage page, string knob, float to)
    {
        var tape = page.Locator($"[data-knob={knob}] .tape");
        await tape.ScrollIntoViewIfNeededAsync();
        var box = (await tape.BoundingBoxAsync())!;
        var from = await tape.EvaluateAsync<float>("el => (el.value - el.min) / (el.max - el.min)");
        var y = box.Y + box.Height / 2;
        const float thumb = 13;
        await page.Mouse.MoveAsync(box.X + thumb / 2 + from * (box.Width - thumb), y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + thumb / 2 + to * (box.Width - thumb), y, new() { Steps = 14 });
        await page.Mouse.UpAsync();
    }

    [GeneratedRegex(@"\bshort\b")]
    private static partial Regex Short();
}
