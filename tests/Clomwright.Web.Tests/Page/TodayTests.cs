using Clomwright.Record;
using Clomwright.Web.Tests.Sharing;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>The page of a day and the letting in of phones, in a real browser of a phone's size. Rank: by hand; axe-core's rules are those of WCAG 2, A and AA, the size of what is touched that of its 2.5.5: published.</summary>
[Collection(nameof(SecondChromiumTests))]
public sealed class TodayTests(Chromium chromium)
{
    private const string Place = $"/today/{HouseFolderCopy.Key}";

    [Fact]
    public async Task ADayWithoutSignal_IsKept_SentOnce_AndSavedAsOneFile()
    {
        await using var open = await OpenPage.At(chromium, Place, 390, 844);
        var page = open.Page;
        await page.Locator(".hero").WaitForAsync();
        await Expect(page.Locator(".hero h2")).ToContainTextAsync("Lift 1 of 8");
        await Clean(page);

        // What is no sense stands in its blank again, with its sentence; nothing is written of it.
        foreach (var name in new[] { "raised", "people", "batches" })
        {
            await page.Locator($"[name={name}]").FillAsync(NonsenseTests.Nonsense);
            await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
            await Expect(page.Locator($"[name={name}]")).ToHaveAttributeAsync("aria-invalid", "true");
            await Expect(page.Locator("#wrong-day")).ToContainTextAsync(NonsenseTests.Nonsense);
            await Expect(page.Locator($"[name={name}]")).ToHaveValueAsync(NonsenseTests.Nonsense);
            await Expect(page.Locator(".waits")).ToBeHiddenAsync();
            await page.Locator($"[name={name}]").FillAsync("");
        }

        await Clean(page);
        await page.GetByText("Bring in what was copied elsewhere").First.ClickAsync();
        await page.Locator("[name=copied]").FillAsync(NonsenseTests.Nonsense);
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring in what was copied elsewhere" }).ClickAsync();
        await Expect(page.Locator(".ends .wrong")).ToContainTextAsync("not what was copied");
        await Expect(page.Locator("[name=copied]")).ToHaveValueAsync(NonsenseTests.Nonsense);
        Assert.False(File.Exists(SqliteRecord.Beside(open.HouseFile)));

        await Write(page, "2026-06-08", "9", "7");
        await Expect(page.Locator("#wrong-day")).ToHaveCountAsync(0);
        await Expect(page.Locator("#write .told")).ToContainTextAsync("ring up 9 in", new() { Timeout = 30_000 });
        var tick = page.Locator(".ticks input").First;
        await tick.CheckAsync();

        await page.Context.SetOfflineAsync(true);
        await Write(page, "2026-06-09", "4", "5");
        await Write(page, "2026-06-10", "nine", "5");
        await Expect(page.Locator("header")).ToContainTextAsync("No signal", new() { Timeout = 30_000 });
        await Expect(page.Locator(".waits")).ToContainTextAsync("2 entries are kept");
        Assert.Single(Entries(open));

        // Saved as one file: opened from the disk, with no server to ask, it shows and keeps the same.
        var saving = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Save as one file" }).ClickAsync());
        var file = Path.Combine(Path.GetDirectoryName(open.HouseFile)!, saving.SuggestedFilename);
        await saving.SaveAsAsync(file);
        var saved = await page.Context.NewPageAsync();
        await saved.GotoAsync(new Uri(file).ToString());
        await Expect(saved.Locator("header")).ToContainTextAsync("This is a saved file");
        await Expect(saved.Locator(".hero h2")).ToContainTextAsync("Lift 1 of 8");
        await Expect(saved.Locator(".ticks input").First).ToBeCheckedAsync();
        await Write(saved, "2026-06-11", "3", "4");
        await Expect(saved.Locator(".waits")).ToContainTextAsync("3 entries are kept");
        await saved.GetByRole(AriaRole.Button, new() { Name = "Copy what is not sent" }).ClickAsync();
        var copied = await saved.Locator(".waits textarea").InputValueAsync();
        Assert.Equal(3, copied.Split('\n').Length);

        // The machine is back: what waited is sent once, what it does not take is said, and a second sending of the copied ones adds only what is new.
        await page.Context.SetOfflineAsync(false);
        await Expect(page.Locator(".waits")).ToContainTextAsync("Not taken", new() { Timeout = 60_000 });
        await Expect(page.Locator(".waits")).ToContainTextAsync("One entry is kept");
        Assert.Equal(2, Entries(open).Count);
        await page.GetByRole(AriaRole.Button, new() { Name = "Throw it away" }).ClickAsync();
        await page.Locator("[name=copied]").FillAsync(copied);
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring in what was copied elsewhere" }).ClickAsync();
        await Expect(page.Locator(".waits")).ToContainTextAsync("Not taken", new() { Timeout = 60_000 });
        Assert.Equal([8, 9, 11], Entries(open).Select(e => e.What.On!.Value.Day));
        await page.ReloadAsync();

        // The ring has grown into the second lift meanwhile.
        await Expect(page.Locator(".hero h2")).ToContainTextAsync("Lift 2 of 8", new() { Timeout = 60_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "The lift below" }).ClickAsync();
        await Expect(page.Locator(".ticks input").First).ToBeCheckedAsync(new() { Timeout = 60_000 });
    }

    [Fact]
    public async Task APhone_IsLetInByItsCode_SeesToday_AndIsCutOff()
    {
        Assert.SkipUnless(chromium.Browser is not null, $"no Chromium at {Chromium.Path}");
        await using var house = await SharedHouse.Start();
        await using var desk = await chromium.Browser!.NewContextAsync(new() { ViewportSize = new() { Width = 1366, Height = 768 } });
        await using var hand = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, ColorScheme = ColorScheme.Dark });
        var own = await desk.NewPageAsync();
        await own.GotoAsync(new Uri(house.Workbench.Address, $"/phones/{HouseFolderCopy.Key}").ToString());
        await own.GetByLabel("read, and write the record").CheckAsync();
        await own.GetByRole(AriaRole.Button, new() { Name = "Show a code" }).ClickAsync();
        var link = await own.Locator(".code .address").TextContentAsync();
        await Clean(own);
        await own.SetViewportSizeAsync(390, 844);
        await Clean(own);

        var phone = await hand.NewPageAsync();
        await phone.GotoAsync(link!);
        await Clean(phone);
        Assert.DoesNotContain("#", phone.Url);
        await phone.GetByLabel("Your name").FillAsync("   ");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Let this phone in" }).ClickAsync();
        await Expect(phone.Locator("#wrong")).ToContainTextAsync("Write a name");
        await phone.GetByLabel("Your name").FillAsync("Ada");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Let this phone in" }).ClickAsync();
        await phone.Locator(".hero").WaitForAsync(new() { Timeout = 60_000 });
        await Clean(phone);
        await Write(phone, "2026-06-08", NonsenseTests.Nonsense, "7");
        await Expect(phone.Locator("#wrong-day")).ToContainTextAsync(NonsenseTests.Nonsense);
        await Expect(phone.Locator("[name=raised]")).ToHaveValueAsync(NonsenseTests.Nonsense);
        Assert.False(File.Exists(SqliteRecord.Beside(house.Folder.HouseFile)));
        await Write(phone, "2026-06-08", "9", "7");
        await Expect(phone.Locator("#write .told")).ToContainTextAsync("ring up 9 in", new() { Timeout = 30_000 });
        Assert.Equal("Ada", Assert.Single(new SqliteRecord(SqliteRecord.Beside(house.Folder.HouseFile)).Read().Record.Entries).Author);
        await Expect(own.GetByText("The code is used up")).ToBeVisibleAsync(new() { Timeout = 20_000 });

        await own.GetByRole(AriaRole.Button, new() { Name = "Let Ada in no more" }).ClickAsync();
        await Expect(own.GetByText("Ada is cut off")).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await Write(phone, "2026-06-09", "4", "5");
        await Expect(phone.Locator("header")).ToContainTextAsync("let in no more", new() { Timeout = 60_000 });
        await Expect(phone.Locator(".waits")).ToContainTextAsync("One entry is kept");
    }

    private static Evidence.Sequence<Building.SiteEntry> Entries(OpenPage open) => new SqliteRecord(SqliteRecord.Beside(open.HouseFile)).Read().Record.Entries;

    private static async Task Write(IPage page, string date, string raised, string people)
    {
        await page.Locator("[name=date]").FillAsync(date);
        await page.Locator("[name=raised]").FillAsync(raised);
        await page.Locator("[name=people]").FillAsync(people);
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
    }

    /// <summary>axe finds nothing, nothing stands outside the window, and on the page of a day nothing that is touched is smaller than 44 px.</summary>
    private static async Task Clean(IPage page)
    {
        var axe = await page.RunAxe();
        Assert.True(axe.Violations.Length == 0, string.Join("\n", axe.Violations.Select(v => $"{v.Id}: {v.Help}: {v.Nodes[0].Html}")));
        Assert.Equal(0, await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth"));
        Assert.Equal("", await page.EvaluateAsync<string>("""
            () => [...document.querySelectorAll('#today :is(button, a, summary, textarea, select, input:not([type=checkbox]), .ticks label)')]
              .filter((e) => e.checkVisibility()).map((e) => [e.outerHTML.slice(0, 80), e.getBoundingClientRect()]).filter(([, box]) => box.height < 44 || box.width < 44).map(([html, box]) => `${html} ${box.width} x ${box.height}`).join('\n')
            """));
    }
}
