using Clomwright.Building;
using Clomwright.Files;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>A house made and changed on the pages, without touching its file. Rank: by hand.</summary>
[Collection(nameof(SecondChromiumTests))]
public sealed class OwnHouseTests(Chromium chromium)
{
    private const string Ground = $"/ground/{HouseFolderCopy.Key}";

    /// <summary>The first job: from nothing to a lift sheet that can be printed, by the keyboard alone.</summary>
    [Fact]
    public async Task ByKeyboardAlone_ABlankPlotBecomesALiftSheet()
    {
        await using var open = await OpenPage.At(chromium, "/");
        var page = open.Page;
        await page.Locator("new-house form").WaitForAsync();
        await Tab(page, "el => el.name === 'length'");
        await page.Keyboard.TypeAsync("sixteen paces");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#reason-new-name")).ToBeVisibleAsync(); // nothing was called yet

        await Tab(page, "el => el.name === 'name'", back: true);
        await page.Keyboard.TypeAsync("Clay Hollow");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#reason-new-length")).ToContainTextAsync("sixteen paces");
        await Tab(page, "el => el.name === 'length'");
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("16");
        await page.Keyboard.PressAsync("Enter");

        await page.Locator("ground-plan svg").WaitForAsync();
        await page.Locator("[name='house.plan.insideDiameter']").WaitForAsync();
        await Tab(page, "el => el.name === 'house.plan.insideDiameter'");
        await Expect(page.Locator("[name='house.plan.insideDiameter']")).ToHaveValueAsync("16 ft");
        await Write(page, "15 ft 6 in");
        await Expect(page.Locator("[name='house.plan.insideDiameter']")).ToHaveValueAsync("15 ft 6 in");

        await Follow(page, "Wall");
        await page.Locator("[data-add=openings] button").WaitForAsync();
        await Tab(page, "el => el.name === 'way' && el.closest('[data-add=openings]') !== null");
        await page.Keyboard.PressAsync("ArrowDown"); // a door, then a window that stays shut
        await Tab(page, "el => el.type === 'submit' && el.closest('[data-add=openings]') !== null");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("[data-opening=window]").WaitForAsync();
        await Tab(page, "el => el.dataset.opening === 'window'", back: true);
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(page.Locator("opening-line [name=sill]")).ToHaveValueAsync("3 ft 1 in");
        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");

        await Follow(page, "Papers");
        await page.Locator("a[href*='of=lift-1']").First.WaitForAsync();
        await Tab(page, "el => el.tagName === 'A' && el.href.includes('/sheet/') && el.href.includes('of=lift-1')");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("svg title", new() { HasText = "Lift 1 of" }).First.WaitForAsync(new() { State = WaitForSelectorState.Attached });

        var house = HouseFile.Read(Path.Combine(Path.GetDirectoryName(open.HouseFile)!, "clay-hollow.house.json")).House!;
        Assert.Equal(["door", "window"], house.Openings.Select(o => o.Name));
        Assert.Equal(OpeningKind.Fixed, house.Openings[1].Kind);
        Assert.All(open.Complaints, complaint => Assert.Contains("422", complaint)); // the browser notes both refusals
    }

    /// <summary>The plan by its points, what lies under the wall, and the rules; every step is taken back.</summary>
    [Fact]
    public async Task PlanPoints_AreDraggedNudgedAndSnapped_AndRulesAreEntered()
    {
        await using var open = await OpenPage.At(chromium, Ground);
        var page = open.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Draw it by points" }).ClickAsync();
        var point = page.Locator(".plan-point").Nth(2);
        await point.WaitForAsync();
        var before = await point.GetAttributeAsync("aria-label");
        var box = (await point.Locator(".spot").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + 34, box.Y + 20, new() { Steps = 8 });
        await page.Mouse.UpAsync();
        await Expect(point).Not.ToHaveAttributeAsync("aria-label", before!);
        await page.Locator("clom-workbench[data-settled]").WaitForAsync();
        var dragged = await point.GetAttributeAsync("aria-label");
        await point.FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await Expect(point).Not.ToHaveAttributeAsync("aria-label", dragged!);
        await page.Keyboard.PressAsync("Control+z");
        await Expect(point).ToHaveAttributeAsync("aria-label", dragged!);
        await page.Keyboard.PressAsync("Control+z");
        await Expect(point).ToHaveAttributeAsync("aria-label", before!); // the whole drag is one step

        await page.GetByRole(AriaRole.Button, new() { Name = "Put a point after" }).ClickAsync();
        await Expect(page.Locator(".plan-point")).ToHaveCountAsync(9);
        await page.GetByRole(AriaRole.Button, new() { Name = "Snap to a circle" }).ClickAsync();
        await page.Locator("[name='house.plan.insideDiameter']").WaitForAsync();

        var question = await page.Locator(".ground-rules > .rule-row").First.GetAttributeAsync("data-row");
        var row = page.Locator($".ground-rules > .rule-row[data-row='{question}']");
        await row.Locator("[name=holds]").SelectOptionAsync("yes");
        await row.GetByRole(AriaRole.Button, new() { Name = "Answer" }).ClickAsync();
        await Expect(row.Locator(".reason")).ToContainTextAsync("Who answered"); // nobody is filled in
        await row.Locator("[name=by]").FillAsync("M. Invented");
        await row.Locator("[name=on]").FillAsync("2027-03-01");
        await row.GetByRole(AriaRole.Button, new() { Name = "Answer" }).ClickAsync();
        await Expect(row).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");
        var house = HouseFile.Read(open.HouseFile).House!;
        Assert.IsType<Plan.Round>(house.Plan);
        Assert.Contains(new Answer(question!, true, "M. Invented", new DateOnly(2027, 3, 1)), house.Rules.Answers);
        Assert.Empty(open.Complaints);
    }

    /// <summary>A niche is added, dragged and typed; a frame is described; a layer is put on the roof; nothing but the pages is touched.</summary>
    [Fact]
    public async Task OnWallAndRoof_PartsAreAddedMovedChangedAndTakenOut()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var page = open.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a niche" }).ClickAsync();
        var niche = page.Locator("[data-built='niche']");
        await niche.WaitForAsync();
        await Expect(page.Locator("[data-chosen='niche']")).ToBeVisibleAsync(); // what was added is chosen
        var depth = page.Locator("[data-chosen='niche'] input[name$='.depth']");
        var sill = page.Locator("[data-chosen='niche'] input[name$='.sill']");
        await Expect(sill).ToHaveValueAsync("4 ft");
        await depth.FillAsync("deep enough");
        await depth.PressAsync("Enter");
        await Expect(page.Locator("[data-chosen='niche'] .reason")).ToContainTextAsync("deep enough");
        await Expect(depth).ToHaveValueAsync("deep enough");
        await depth.FillAsync("100 mm");
        await depth.PressAsync("Enter");
        await Expect(page.Locator("[data-chosen='niche'] .reason")).ToHaveCountAsync(0);
        await niche.FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await Expect(sill).ToHaveValueAsync("4 ft 6 in");

        var lamp = page.Locator("[data-built='lamp']");
        await lamp.ScrollIntoViewIfNeededAsync();
        var box = (await lamp.Locator(".niche").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2 + 40, new() { Steps = 6 });
        await page.Mouse.UpAsync();
        await Expect(page.Locator("[data-chosen='lamp']")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Roof", Exact = true }).ClickAsync();
        await page.GetByText("All of the roof").ClickAsync();
        var layers = page.Locator("[data-part^='roof.layers['].level-4");
        var count = await Count(layers, 1) + 1;
        await page.Locator("[data-add='roof.layers'] button").ClickAsync();
        await Expect(layers).ToHaveCountAsync(count);
        await layers.Last.Locator("input[name$='.material']").FillAsync("gravel");
        await layers.Last.Locator("input[name$='.material']").PressAsync("Enter");
        await layers.Last.GetByRole(AriaRole.Button, new() { Name = "Move up" }).ClickAsync();
        await Expect(layers.Nth(count - 2).Locator("input[name$='.material']")).ToHaveValueAsync("gravel");
        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");
        var house = HouseFile.Read(open.HouseFile).House!;
        Assert.Equal(100, house.Niches.Single(n => n.Name == "niche").Depth.Metres * 1000, 1e-6);
        Assert.InRange(house.Niches[0].Sill.Metres, 0.3, Testing.Houses.HeronPoint.Niches[0].Sill.Metres - 0.1); // some 28 px down, at 60 to 110 px to the metre
        Assert.Equal("gravel", house.Roof!.Layers[count - 2].Material);
        Assert.Empty(open.Complaints);
    }

    /// <summary>Every blank to write in on the ground page: what is no sense stays, with one sentence; what is words is taken as words.</summary>
    [Fact]
    public async Task NonsenseEverywhere_StaysWithItsReason()
    {
        await using var open = await OpenPage.At(chromium, Ground);
        var page = open.Page;
        await page.Locator("clom-workbench[data-ready]").WaitForAsync();
        await page.Locator("[data-part=site] input").First.WaitForAsync();
        var names = await page.Locator("house-form earth-blank input").EvaluateAllAsync<string[]>("all => all.map(one => one.name)");
        Assert.True(names.Length > 40, $"only {names.Length} blanks");
        var refused = 0;
        foreach (var name in names)
        {
            var blank = page.Locator($"earth-blank input[name='{name}']");
            await blank.FillAsync("about as much as last time");
            await blank.PressAsync("Enter");
            await OpenPage.Until(page, """
                () => document.querySelector('clom-workbench').hasAttribute('data-settled') && new Promise(done => requestAnimationFrame(() => setTimeout(() => done(document.querySelector('clom-workbench').hasAttribute('data-settled')), 20)))
                """);
            refused += await blank.GetAttributeAsync("aria-invalid") == "true" ? 1 : 0;
            await Expect(blank).ToHaveValueAsync("about as much as last time");
        }

        Assert.True(refused > names.Length * 0.55, $"{refused} of {names.Length} were refused");
        var added = NonsenseTests.Read(await page.Locator("main.ground").EvaluateAsync<string>(NonsenseTests.Adds, NonsenseTests.Nonsense));
        Assert.True(added.Length > 2, $"only {added.Length} rows to add");
        Assert.All(added, one => Assert.True(one is { Invalid: true, Text: NonsenseTests.Nonsense, Reason.Length: > 12 }, one.ToString()));
        Assert.Empty(open.Complaints);
    }

    private static async Task<int> Count(ILocator what, int least)
    {
        await what.Nth(least - 1).WaitForAsync();
        return await what.CountAsync();
    }

    private static async Task Write(IPage page, string text)
    {
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync(text);
        await page.Keyboard.PressAsync("Enter");
    }

    private static async Task Follow(IPage page, string link)
    {
        await Tab(page, $"el => el.tagName === 'A' && el.textContent.trim() === '{link}'", back: true);
        await page.Keyboard.PressAsync("Enter");
    }

    private static async Task Tab(IPage page, string until, bool back = false)
    {
        for (var i = 0; i < 160; i++)
        {
            if (await page.EvaluateAsync<bool>($"() => ({until})(document.activeElement)"))
            {
                return;
            }

            await page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
        }

        Assert.Fail($"The Tab key never came to {until}.");
    }
}
