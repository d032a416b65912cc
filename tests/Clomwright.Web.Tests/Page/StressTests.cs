using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The sheet of stress on the real page, in a real browser. Rank: by hand.</summary>
[Collection(nameof(SecondChromiumTests))]
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

    [Fact]
    public async Task AnOpeningDraggedOnTheSheet_MovesTheStressWithIt_AndTheWholeAnswerFollows()
    {
        await using var open = await AtStress(chromium);
        var page = open.Page;
        var (bars, band, outline) = (await Bars(page), await page.Locator("svg.stress .band-0").GetAttributeAsync("d"), await page.Locator("[data-opening=tub-window] .leaf").GetAttributeAsync("d"));
        var box = (await page.Locator("[data-opening=tub-window] .leaf").BoundingBoxAsync())!;
        var (x, y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        // All cases may be solved under a resting hand before anybody could ask: what stands on the way is noted in every frame.
        await page.EvaluateAsync(
            """
            () => {
              window.seen = [];
              const look = () => {
                if (document.querySelector('.stress-tightest.on-the-way')) {
                  const of = (part) => document.querySelector(part).getAttribute('d');
                  window.seen.push([document.querySelector('.standing-of').innerText, of('svg.stress .band-0'), of('[data-opening=tub-window] .leaf')]);
                }
                requestAnimationFrame(look);
              };
              requestAnimationFrame(look);
            }
            """);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + 20, y, new() { Steps = 5 });
        await page.WaitForFunctionAsync("() => window.seen.length > 0", null, new() { Timeout = 60_000 });
        var seen = (await page.EvaluateAsync<string[]>("() => window.seen.at(-1)"))!;
        Assert.Contains("On the way", seen[0], StringComparison.Ordinal);
        Assert.NotEqual(band, seen[1]);
        Assert.NotEqual(outline, seen[2]);
        // What nobody has asked the rules yet is never told as if they had answered.
        await Expect(page.Locator(".totals a")).ToContainTextAsync("NOT CHECKED");
        await page.Mouse.UpAsync();

        await Expect(page.Locator(".stress-tightest.on-the-way")).ToHaveCountAsync(0, new() { Timeout = 120_000 });
        await Expect(page.Locator(".standing-of")).ToHaveTextAsync("", new() { Timeout = 120_000 });
        Assert.NotEqual(bars, await Bars(page));
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task TheSearchForTheFall_ShowsHowFarItIs_IsStopped_AndGivesItsAnswer()
    {
        await using var open = await AtStress(chromium);
        var page = open.Page;
        var fall = page.Locator(".fall");
        await fall.GetByRole(AriaRole.Button, new() { Name = "Search for it" }).ClickAsync();
        await Expect(fall.GetByRole(AriaRole.Progressbar)).ToBeVisibleAsync();
        await fall.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true }).ClickAsync();
        await Expect(fall.GetByRole(AriaRole.Progressbar)).ToHaveCountAsync(0);
        await Expect(fall.Locator("dd")).ToHaveCountAsync(0);

        await fall.GetByRole(AriaRole.Button, new() { Name = "Search for it" }).ClickAsync();
        await Expect(fall.Locator("dd").First).ToContainTextAsync("%", new() { Timeout = 240_000 });
        await Expect(page.Locator("margin-list .finding", new() { HasText = "The push at which the house falls" }).First).Not.ToContainTextAsync("--deep");
        Assert.Empty(open.Complaints);
    }

    /// <summary>The sheet of stress, solved.</summary>
    public static async Task<OpenPage> AtStress(Chromium chromium, int width = 1366, int height = 768, ColorScheme scheme = ColorScheme.Light)
    {
        var open = await OpenPage.AtWall(chromium, width, height, scheme);
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Stress", Exact = true }).ClickAsync();
        await open.Page.Locator("svg.stress .band").First.WaitForAsync(new() { Timeout = 120_000, State = WaitForSelectorState.Attached });
        return open;
    }

    private static async Task<string> Bars(IPage page) => string.Join(',', await page.Locator(".stress-tightest b").AllInnerTextsAsync());
}
