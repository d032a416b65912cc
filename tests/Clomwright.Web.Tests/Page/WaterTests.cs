using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The sheet of water on the real page, in a real browser. Rank: by hand.</summary>
[Collection(nameof(Chromium))]
public sealed class WaterTests(Chromium chromium)
{
    [Fact]
    public async Task Day_ByKeyboardButtonAndWriting_GrowsTheWall()
    {
        await using var open = await AtWater(chromium);
        var page = open.Page;
        var standing = page.Locator(".water-lift .laid");
        await Expect(standing).ToHaveCountAsync(1);
        await Expect(page.Locator(".day-says b")).ToContainTextAsync("Day 0");

        await page.Locator(".day .tape").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.Locator("[name=day]")).ToHaveValueAsync("2");
        await Expect(page.Locator(".day-says b")).ToContainTextAsync("Day 2");
        await page.Keyboard.PressAsync("End");
        await Expect(standing).ToHaveCountAsync(8);
        await page.Keyboard.PressAsync("Home");
        await Expect(standing).ToHaveCountAsync(1);

        await page.GetByRole(AriaRole.Button, new() { Name = "On to the next lift" }).ClickAsync();
        await Expect(standing).Not.ToHaveCountAsync(1);

        var day = page.Locator("[name=day]");
        await day.FillAsync("midsummer");
        await day.PressAsync("Enter");
        await Expect(page.Locator("#reason-day")).ToContainTextAsync("midsummer");
        await Expect(standing).Not.ToHaveCountAsync(1);
        await day.FillAsync("0");
        await day.PressAsync("Enter");
        await Expect(page.Locator("#reason-day")).ToHaveCountAsync(0);
        await Expect(standing).ToHaveCountAsync(1);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task HouseChangedBetween_IsWorkedOutAgain_AndTheSheetOfCuttingIsStillThere()
    {
        await using var open = await AtWater(chromium);
        var page = open.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Cutting", Exact = true }).ClickAsync();
        await page.Locator("svg.unrolled .opening").First.WaitForAsync();
        await Expect(page.Locator("day-slider")).ToHaveCountAsync(0);
        var sill = page.Locator("[name=sill]");
        await page.Locator("[data-opening=tub-window]").FocusAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(sill).ToHaveValueAsync("3 ft 3 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Water", Exact = true }).ClickAsync();
        await page.Locator("svg.water .cell").First.WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "from outside" }).ClickAsync();
        await page.Locator("svg.water .cell").First.WaitForAsync();
        Assert.Empty(open.Complaints);
    }

    internal static async Task<OpenPage> AtWater(Chromium chromium, int width = 1366, int height = 768, ColorScheme scheme = ColorScheme.Light, bool looks = false)
    {
        var open = await OpenPage.AtWall(chromium, width, height, scheme, looks);
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Water", Exact = true }).ClickAsync();
        await open.Page.Locator("svg.water .cell").First.WaitForAsync(new() { Timeout = 60_000 });
        return open;
    }
}
