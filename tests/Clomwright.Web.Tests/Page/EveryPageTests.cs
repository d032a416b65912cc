using Microsoft.Playwright;

namespace Clomwright.Web.Tests.Page;

/// <summary>Every page, at desk and phone size, light and dark. axe-core's rules are those of WCAG 2, A and AA; rank: published.</summary>
[Collection(nameof(SecondChromiumTests))]
public sealed class EveryPageTests(Chromium chromium)
{
    private const string Wall = $"/wall/{HouseFolderCopy.Key}";

    private const string Roof = $"/roof/{HouseFolderCopy.Key}";

    private const string Earth = $"/earth/{HouseFolderCopy.Key}";

    private const string Ground = $"/ground/{HouseFolderCopy.Key}";

    private const string Record = $"/record/{HouseFolderCopy.Key}";

    private const string Comfort = $"/comfort/{HouseFolderCopy.Key}";

    public static TheoryData<string, int, int, ColorScheme> Pages()
    {
        var data = new TheoryData<string, int, int, ColorScheme>();
        foreach (var path in (string[])["/", Ground, Earth, Wall, Roof, Comfort, Record, $"/arrived/{HouseFolderCopy.Key}?of=tub-window", $"/papers/{HouseFolderCopy.Key}", $"/sheet/{HouseFolderCopy.Key}?of=lift-1", $"/print/{HouseFolderCopy.Key}?of=lifts", "/wall/no-such-house", Wall + "?greet"])
        {
            data.Add(path, 1366, 768, ColorScheme.Light);
            data.Add(path, 390, 844, ColorScheme.Light);
        }

        data.Add(Wall, 1366, 768, ColorScheme.Dark);
        data.Add(Roof, 1366, 768, ColorScheme.Dark);
        data.Add(Earth, 1366, 768, ColorScheme.Dark);
        data.Add(Record, 1366, 768, ColorScheme.Dark);
        data.Add(Comfort, 1366, 768, ColorScheme.Dark);
        data.Add(Comfort, 683, 384, ColorScheme.Light);
        data.Add(Earth, 683, 384, ColorScheme.Light);
        data.Add(Roof, 683, 384, ColorScheme.Light);
        data.Add(Wall, 683, 384, ColorScheme.Light); // 1366 by 768 at 200 % zoom
        return data;
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Page_InChromium_HasNoAxeViolationsAndNothingOutsideTheWindow(string path, int width, int height, ColorScheme scheme)
    {
        await using var open = await OpenPage.At(chromium, path, width, height, scheme, looks: true);
        await open.Page.Locator("clom-workbench[data-ready]").WaitForAsync();
        await Clean(open);
    }

    [Theory]
    [InlineData(1366, 768, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(1366, 768, ColorScheme.Dark)]
    [InlineData(683, 384, ColorScheme.Light)]
    public async Task PageOfDays_InChromium_HasNoAxeViolationsAndNothingOutsideTheWindow(int width, int height, ColorScheme scheme)
    {
        await using var open = await DaysTests.AtDays(chromium, width, height, scheme, looks: true);
        await Clean(open);
        await open.Page.Locator(".day .tape").PressAsync("End");
        await Clean(open);
    }

    internal static async Task Clean(OpenPage open)
    {
        Assert.Equal("", string.Join("\n", await Axe.Violations(open.Page)));

        var outside = await open.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.Equal(0, outside);
    }

    [Theory]
    [InlineData(1366, 768, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(1366, 768, ColorScheme.Dark)]
    public async Task SheetOfWater_InChromium_HasNoAxeViolationsAndNothingOutsideTheWindow(int width, int height, ColorScheme scheme)
    {
        await using var open = await WaterTests.AtWater(chromium, width, height, scheme, looks: true);
        await Clean(open);
        await open.Page.Locator(".day .tape").PressAsync("End");
        await Clean(open);
    }

    [Theory]
    [InlineData(1366, 768, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(1366, 768, ColorScheme.Dark)]
    public async Task SheetOfStress_InChromium_HasNoAxeViolationsAndNothingOutsideTheWindow(int width, int height, ColorScheme scheme)
    {
        await using var open = await StressTests.AtStress(chromium, width, height, scheme);
        await Clean(open);
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Search for it" }).ClickAsync();
        await Clean(open);
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true }).ClickAsync();
    }

    [Theory]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(1366, 768, ColorScheme.Dark)]
    public async Task ADayInHand_InChromium_HasNoAxeViolationsAndNothingOutsideTheWindow(int width, int height, ColorScheme scheme)
    {
        await using var open = await RecordTests.AtRecord(chromium, width, height, scheme);
        await open.Page.Locator("[name=date]").FillAsync("2026-06-08");
        await open.Page.Locator("[name=raised]").FillAsync("9");
        await open.Page.Locator("[name=raised]").PressAsync("Enter");
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Correct 8 June 2026" }).ClickAsync();
        await open.Page.GetByText("More of the day").ClickAsync();
        await open.Page.Locator("[name=people]").FillAsync("many");
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Write the correction" }).ClickAsync();
        await open.Page.Locator("#reason-day").WaitForAsync();
        await Clean(open);
    }

    [Fact]
    public async Task FirstPage_ByKeyboardAlone_LeadsToTheWallAndAnOpeningMoves()
    {
        await using var open = await OpenPage.At(chromium, "/");
        var page = open.Page;
        await page.Locator(".house h3 a").WaitForAsync();
        await Tab(page, "el => el.closest('h3') !== null");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("svg.unrolled .opening").First.WaitForAsync();
        await Tab(page, "el => el.dataset.opening === 'tub-window'");
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(page.Locator("[name=sill]")).ToHaveValueAsync("3 ft 3 in");
    }

    [Fact]
    public async Task LiftSheets_OneLinkFromTheFirstPage_AreReadyToPrint()
    {
        await using var open = await OpenPage.At(chromium, "/", looks: true);
        var page = open.Page;
        await page.Context.AddInitScriptAsync("window.print = () => { window.printed = true; }");
        var printing = await page.RunAndWaitForPopupAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Lift sheets, to print" }).ClickAsync());
        await OpenPage.Until(printing,
            "() => window.printed === true && document.querySelectorAll('.print-sheet svg').length === document.querySelectorAll('.print-sheet').length");
        var titles = await printing.Locator(".print-sheet svg > title").AllTextContentsAsync();
        Assert.All(Enumerable.Range(1, 8), lift => Assert.Contains($"Lift {lift} of 8", titles));
    }

    private static async Task Tab(IPage page, string until)
    {
        for (var i = 0; i < 60; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>($"() => ({until})(document.activeElement)"))
            {
                return;
            }
        }

        Assert.Fail($"The Tab key never came to {until}.");
    }
}
