using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The page of days, in a real browser. Rank: by hand.</summary>
[Collection(nameof(Chromium))]
public sealed class DaysTests(Chromium chromium)
{
    [Fact]
    public async Task FewerPeople_MoveTheBand_AndItCanBeTakenBack()
    {
        await using var open = await AtDays(chromium);
        var page = open.Page;
        var half = page.Locator("[data-mark=lift-5] b");
        var was = await half.TextContentAsync();
        var people = page.Locator("[name='crew.people']");
        await people.FillAsync("3");
        await people.PressAsync("Enter");
        await Expect(half).Not.ToHaveTextAsync(was!, new() { Timeout = 60_000 });
        await page.Keyboard.PressAsync("Tab");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(half).ToHaveTextAsync(was!, new() { Timeout = 60_000 });

        await people.FillAsync("some");
        await people.PressAsync("Enter");
        await Expect(page.Locator("#reason-crew-people")).ToContainTextAsync("some");
        await people.FillAsync("0");
        await people.PressAsync("Enter");
        await Expect(page.Locator("#reason-crew-people")).ToBeVisibleAsync();
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task TheSlider_GrowsTheWall_ByKeyboard()
    {
        await using var open = await AtDays(chromium);
        var page = open.Page;
        var closed = page.Locator("svg.rising .laid.closed");
        var tape = page.Locator(".day .tape");
        await tape.FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await Expect(closed).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("End");
        await Expect(closed).ToHaveCountAsync(8);
        await Expect(page.Locator(".day-says")).ToContainTextAsync("poles are up");
        await page.Keyboard.PressAsync("Home");
        await page.GetByRole(AriaRole.Button, new() { Name = "On to the next lift" }).ClickAsync();
        await Expect(closed).ToHaveCountAsync(1);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task OtherWays_AreTriedWhenAsked_AndCanBeStopped()
    {
        await using var open = await AtDays(chromium);
        var page = open.Page;
        await Expect(page.Locator(".ways")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Try one more person" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Try one more person" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Try one more person" }).ClickAsync();
        await Expect(page.Locator(".ways tbody tr")).ToHaveCountAsync(4, new() { Timeout = 120_000 });
        Assert.Empty(open.Complaints);
    }

    internal static async Task<OpenPage> AtDays(Chromium chromium, int width = 1366, int height = 768, ColorScheme scheme = ColorScheme.Light, bool looks = false)
    {
        var open = await OpenPage.At(chromium, $"/days/{HouseFolderCopy.Key}", width, height, scheme, looks);
        await open.Page.Locator("svg.rising .laid, svg.rising .to-come").First.WaitForAsync(new() { Timeout = 90_000 });
        return open;
    }
}
