using System.Text.Json;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The house in the round on the real page, drawn by the browser's own software. Rank: by hand.</summary>
[Collection(nameof(Chromium))]
public sealed class RoundTests(Chromium chromium)
{
    private const string Path = $"/round/{HouseFolderCopy.Key}";

    /// <summary>What the page itself complains of: drivers that draw in software say that they are slow.</summary>
    private static readonly Predicate<string> OfPage = complaint => !complaint.StartsWith("[.WebGL", StringComparison.Ordinal);

    [Fact]
    public async Task View_FromTheWall_ShowsEveryPart_TurnsByKeyboard_AndGrowsByTheDay()
    {
        await using var open = await OpenPage.AtWall(chromium, 800, 560); // drawn in software: a small window is enough
        var page = open.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "In the round" }).ClickAsync();
        await OpenPage.Until(page, "() => Number(document.querySelector('round-page')?.dataset.bodies) > 0");

        // Every body that the server knows is drawn, by the author's names.
        var told = JsonDocument.Parse(await page.EvaluateAsync<string>("async (house) => JSON.stringify((await (await fetch(`/api/houses/${house}/round`)).json()).bodies.map(b => b.name))", HouseFolderCopy.Key));
        var names = told.RootElement.EnumerateArray().Select(e => e.GetString()!).ToArray();
        Assert.All((string[])["wall", "stem", "bond beam", "tee 1", "pole 1", "pole 2", "glass tub-window", "header south-window"], name => Assert.Contains(name, names));
        Assert.Equal(names.Length.ToString(System.Globalization.CultureInfo.InvariantCulture), await page.Locator("round-page").GetAttributeAsync("data-bodies"));

        // It is no blank sheet, and turning shows another side.
        var before = await Colours(page);
        Assert.True(before.Count > 60, $"{before.Count} colours");
        var picture = page.Locator(".round-picture");
        await Expect(page.Locator(".round-seen")).ToHaveTextAsync("Seen from SW.");
        await picture.PressAsync("ArrowRight");
        await Expect(page.Locator(".round-seen")).ToHaveTextAsync("Seen from S.");
        Assert.NotEqual(before.Sum, (await Colours(page)).Sum);
        await picture.PressAsync("Home");
        Assert.Equal(before.Sum, (await Colours(page)).Sum);
        await picture.PressAsync("Enter");
        await Expect(page.Locator(".round-seen")).Not.ToHaveTextAsync("Seen from SW.");

        // Cut open by a plane that the keyboard moves.
        await page.GetByRole(AriaRole.Button, new() { Name = "cut level" }).ClickAsync();
        var cut = await Colours(page);
        await picture.PressAsync("PageDown");
        Assert.NotEqual(cut.Sum, (await Colours(page)).Sum);
        await page.GetByRole(AriaRole.Button, new() { Name = "whole" }).ClickAsync();

        // Laid by the first day: the lowest lift, no roof, nothing that is set higher.
        await page.Locator("[name=by-day]").CheckAsync();
        await page.Locator(".day .tape").WaitForAsync();
        await page.Locator(".day .tape").PressAsync("Home");
        await OpenPage.Until(page, "all => Number(document.querySelector('round-page').dataset.bodies) < all / 2", names.Length);
        await page.Locator(".day .tape").PressAsync("End");
        await OpenPage.Until(page, "least => Number(document.querySelector('round-page').dataset.bodies) === least", names.Count(n => n != "bond beam" && !n.StartsWith("pole ", StringComparison.Ordinal) && !n.StartsWith("secondary ", StringComparison.Ordinal)));
        Assert.DoesNotContain(open.Complaints, OfPage);
    }

    [Theory]
    [InlineData(1366, 768)]
    [InlineData(390, 844)]
    public async Task View_WithSunAndStress_HasNoAxeViolationsAndNothingOutsideTheWindow(int width, int height)
    {
        await using var open = await OpenPage.At(chromium, Path, width, height);
        var page = open.Page;
        await OpenPage.Until(page, "() => Number(document.querySelector('round-page')?.dataset.bodies) > 0");
        await page.Locator("[name=sun]").CheckAsync();
        await page.Locator("[name=sun-day]").FillAsync("2027-03-21");
        await Expect(page.Locator(".sun-says")).ToContainTextAsync("of floor in the sun");
        if (width > 1000)
        {
            // A day that is none is said, and stays as it was left.
            await page.Locator("[name=sun-day]").FillAsync("");
            await Expect(page.Locator(".sun-says")).ToContainTextAsync("A day is written like");
            await Expect(page.Locator("[name=sun-day]")).ToHaveAttributeAsync("aria-invalid", "true");
            await Expect(page.Locator("[name=sun-day]")).ToHaveValueAsync("");
            await page.Locator("[name=sun-day]").FillAsync("2027-03-21");
            await Expect(page.Locator(".sun-says")).ToContainTextAsync("of floor in the sun");
            await page.GetByRole(AriaRole.Button, new() { Name = "stress", Exact = true }).ClickAsync();
            await page.Locator(".round-part .water-legend").WaitForAsync();
        }

        await EveryPageTests.Clean(open);
        Assert.DoesNotContain(open.Complaints, OfPage);
    }

    [Fact]
    public async Task WithoutWebGl_ThePageSaysSo_AndShowsPlanAndSection()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var page = open.Page;
        await page.EvaluateAsync("() => { const of = HTMLCanvasElement.prototype.getContext; HTMLCanvasElement.prototype.getContext = function (kind, ...rest) { return kind.startsWith('webgl') ? null : of.call(this, kind, ...rest); }; }");
        await page.GetByRole(AriaRole.Link, new() { Name = "In the round" }).ClickAsync();
        await Expect(page.Locator(".round-flat .reason")).ToContainTextAsync("WebGL");
        await page.Locator(".round-flat svg.plan").WaitForAsync();
        await OpenPage.Until(page, "() => document.querySelector('.round-flat img')?.naturalWidth > 0");
    }

    /// <summary>How many colours the picture has, and a number that another picture would not have.</summary>
    private static async Task<(int Count, double Sum)> Colours(IPage page)
    {
        var read = await page.EvaluateAsync<double[]>(
            """
            () => {
              const still = document.querySelector('round-page').still(400);
              const { data } = still.getContext('2d').getImageData(0, 0, still.width, still.height);
              const seen = new Set();
              let sum = 0;
              for (let i = 0; i < data.length; i += 4) { const colour = data[i] * 65536 + data[i + 1] * 256 + data[i + 2]; seen.add(colour); sum = (sum * 31 + colour) % 2147483647; }
              return [seen.size, sum];
            }
            """);
        return ((int)read[0], read[1]);
    }
}
