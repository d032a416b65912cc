using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The sheet of stress on the real page, in a real browser. Rank: by hand.</summary>
[Collection(nameof(Chromium))]
public sealed class StressTests(Chromium chromium)
{
    [Fact]
    public async Task Stress_ShowsBandsPiersAndCases_AndFollowsAChange()
    {
        await using var open = await OpenPage.AtWall(chromium, 1366, 768, ColorScheme.Light);
        var page = open.Page;
        await Expect(page.Locator(".totals a")).ToContainTextAsync("NOT CHECKED");
        await page.GetByRole(AriaRole.Button, new() { Name = "Stress", Exact = true }).ClickAsync();
        await page.Locator("svg.stress .band").First.WaitForAsync(new() { Timeout = 120_000, State = WaitForSelectorState.Attached });
        await Expect(page.Locator("svg.stress .pier-edges [data-pier]")).ToHaveCountAsync(6);
        await Expect(page.Locator(".stress-tightest li")).ToHaveCountAsync(6);
        await Expect(page.Locator(".stress-tightest .case").First).Not.ToBeEmptyAsync();
        Assert.NotEmpty(await page.Locator("svg.stress .band-0").GetAttributeAsync("d") ?? "");
        var before = await page.Locator(".stress-tightest b").AllInnerTextsAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Cutting", Exact = true }).ClickAsync();
        await page.Locator("[data-opening=tub-window]").FocusAsync();
        for (var i = 0; i < 4; i++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowRight");
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Stress", Exact = true }).ClickAsync();
        await page.WaitForFunctionAsync(
            "was => { const now = [...document.querySelectorAll('.stress-tightest b')].map(b => b.innerText); return now.length > 0 && now.join() !== was; }", string.Join(',', before), new() { Timeout = 120_000 });
        Assert.Empty(open.Complaints);
    }
}
