using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The comfort page in a real browser. Rank: property, against what a person would see.</summary>
[Collection(nameof(Chromium))]
public sealed class ComfortTests(Chromium chromium)
{
    [Fact]
    public async Task WallSunAndFixes_AnswerTheirButtons()
    {
        await using var open = await OpenPage.At(chromium, $"/comfort/{HouseFolderCopy.Key}");
        var page = open.Page;
        await page.Locator("svg.cold-wall").WaitForAsync();

        // Seven parts, each with its bar.
        await Expect(page.Locator(".bars tr")).ToHaveCountAsync(7);

        // Another state of the wall is another sentence.
        var says = await page.Locator(".wall-says").TextContentAsync();
        await page.Locator(".comfort-wall .choices button").Nth(2).ClickAsync();
        await Expect(page.Locator(".wall-says")).Not.ToHaveTextAsync(says!);

        // Before sunrise there is no sun; in the middle of a winter's day there is some on the floor of a house with windows to the south.
        await page.Locator(".hour input").PressAsync("Home");
        await page.Locator(".hour input").PressAsync("End");
        await page.Locator(".comfort-sun .choices button").Nth(0).ClickAsync();
        await page.Locator(".hour input").EvaluateAsync("el => { el.value = String(Math.floor(Number(el.max) / 2)); el.dispatchEvent(new Event('input')); }");
        await Expect(page.Locator("svg.sun-plan .sun-patch")).Not.ToHaveCountAsync(0);

        // The fixes come when somebody asks for them; doing nothing stands first.
        await page.GetByRole(AriaRole.Button, new() { Name = "Try every fix on this house" }).ClickAsync();
        await Expect(page.Locator(".fixes tbody tr").First).ToContainTextAsync("Nothing", new() { Timeout = 60_000 });
        Assert.Empty(open.Complaints);
    }
}
