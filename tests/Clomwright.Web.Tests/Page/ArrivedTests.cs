using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Record;
using Clomwright.Study;
using Clomwright.Testing;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>A window arrives in another size: from the wall to the new papers on the real page, in a real browser. Rank: by hand; what is listed is held against the record, what is taken against the file.</summary>
[Collection(nameof(Chromium))]
public sealed class ArrivedTests(Chromium chromium)
{
    private const string Window = "tub-window";

    [Fact]
    public async Task AWindowInAnotherSize_IsTriedAndTaken_AndExactlyThePapersThatChangedAreHandedOutAnew()
    {
        // Without a climate: what weather would say is NOT CHECKED, and half of the time that papers take goes there.
        await using var open = await OpenPage.AtWall(chromium, house: Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { Climate = null } });
        var page = open.Page;
        var before = await File.ReadAllTextAsync(open.HouseFile);
        await page.Locator($"[data-opening={Window}]").FocusAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Another size came" }).ClickAsync();
        await Expect(page.Locator("[name=opening]")).ToHaveValueAsync(Window);

        // The first set hangs on the wall.
        var line = page.Locator(".issue-line");
        await page.GetByRole(AriaRole.Button, new() { Name = "Which papers are other ones" }).ClickAsync();
        await Expect(line).ToContainTextAsync("Nothing was handed out yet", Patient);
        await page.Locator("[name=issue-to]").FillAsync(" ");
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand them out as A" }).ClickAsync();
        await Expect(page.Locator("#reason-issue")).ToContainTextAsync("Not handed out", Patient);
        await page.Locator("[name=issue-to]").FillAsync("the crew at the wall");
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand them out as A" }).ClickAsync();
        await Expect(line).ToContainTextAsync("It is the first", Patient);

        // Nonsense stays, each with its sentence, on a phone too; what is drawn already is none.
        await page.SetViewportSizeAsync(390, 844);
        var (width, height, reason) = (page.Locator("[name=came-width]"), page.Locator("[name=came-height]"), page.Locator("#reason-arrived"));
        foreach (var (wide, high, said) in new[] { ("a hand wider", "40", "a hand wider"), ("30 in", "tall", "tall"), ("0", "40", "above 0"), ("26", "3'4\"", "nothing has to change") })
        {
            await width.FillAsync(wide);
            await height.FillAsync(high);
            await height.PressAsync("Enter");
            await Expect(reason).ToContainTextAsync(said, Patient);
            await Expect(width).ToHaveValueAsync(wide);
            await Expect(height).ToHaveValueAsync(high);
            await Expect(page.Locator(".way-card")).ToHaveCountAsync(0);
            await Expect(reason).ToBeInViewportAsync();
            await Expect(height).ToBeInViewportAsync();
        }

        await page.SetViewportSizeAsync(1366, 768);

        // 762 mm are 30 in to the nanometre: 4 in more than drawn.
        await width.FillAsync("762 mm");
        await height.PressAsync("Enter");
        await Expect(page.Locator(".way-card")).ToHaveCountAsync(4, new() { Timeout = 60_000 });
        await Expect(reason).ToHaveCountAsync(0);
        Assert.Equal(["asitcame", "shift", "sill", "refuse"], await page.Locator(".way-card").EvaluateAllAsync<string[]>("all => all.map(one => one.dataset.way)"));
        Assert.Equal(before, await File.ReadAllTextAsync(open.HouseFile));

        // As it came something breaks: by what, by whose rule. Moved a little it does not. Each picture has the drawn outline over it.
        var came = page.Locator("[data-way=asitcame]");
        var broken = came.Locator(".breaks .finding.short");
        await Expect(broken).ToHaveCountAsync(1);
        await broken.Locator("button").ClickAsync();
        await Expect(broken.Locator(".more .by")).Not.ToBeEmptyAsync();
        await came.Locator(".changes summary").ClickAsync();
        await came.Locator(".changes .finding button").First.ClickAsync();
        await Expect(came.Locator(".changes .more")).ToContainTextAsync("Before:");
        await Expect(page.Locator("[data-way=shift] .breaks")).ToHaveCountAsync(0);
        await Expect(page.Locator("[data-way=shift] .way-says")).ToHaveTextAsync("Nothing is worse than as drawn.");
        Assert.Equal(4, await page.Locator(".way-picture .as-drawn").CountAsync());
        await EveryPageTests.Clean(open);
        await page.SetViewportSizeAsync(390, 844);
        await EveryPageTests.Clean(open);
        await page.SetViewportSizeAsync(1366, 768);

        // One is taken, by the same history as every change.
        var take = page.Locator("[data-way=shift] .act-line button");
        await take.ClickAsync();
        await Expect(page.Locator(".taken")).ToContainTextAsync("Taken: tub-window moved 2 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(page.Locator(".taken")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it back again" }).ClickAsync();
        await Expect(page.Locator(".masthead .totals")).ToContainTextAsync(" 0 short");

        // Papers that the file does not say are not handed out.
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand them out as B" }).ClickAsync(new() { Timeout = 60_000 });
        await Expect(page.Locator("#reason-issue")).ToContainTextAsync("not saved", Patient);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved");
        var taken = HouseFile.Read(open.HouseFile).House!.Openings.Single(o => o.Name == Window);
        Assert.Equal((Length.FromInches(30), Length.FromInches(40)), (taken.Width, taken.Height));
        Assert.Equal(0, HouseStudy.Of(HouseFile.Read(open.HouseFile).House!).Tally.Short);
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand them out as B" }).ClickAsync();
        await Expect(line).ToContainTextAsync("Set B was handed out", Patient);

        // Exactly what the record says differs is listed to hang up, and as much of A to take down.
        var issues = new SqliteRecord(SqliteRecord.Beside(open.HouseFile)).Read().Record.Issues;
        Assert.Equal([("A", "the crew at the wall"), ("B", "the crew at the wall")], issues.Select(i => (i.Revision, i.To)));
        var (a, b) = (Prints(issues[0]), Prints(issues[1]));
        Assert.Equal(b.Count(s => a.GetValueOrDefault(s.Key) != s.Value), await Listed(page, ".hang-up"));
        Assert.Equal(a.Count(s => b.GetValueOrDefault(s.Key) != s.Value), await Listed(page, ".take-down"));
        await Expect(page.Locator(".take-down [data-sheet=opening-tub-window]")).ToContainTextAsync("set A");
        await Expect(page.Locator(".hang-up [data-sheet=opening-tub-window]")).ToContainTextAsync("changed");
        await Expect(page.Locator("[data-sheet=opening-door]")).ToHaveCountAsync(0);

        // They can be printed, with the letter, also by whom it comes later.
        var pdf = await page.Context.APIRequest.GetAsync(new Uri(new Uri(page.Url), (await page.GetByRole(AriaRole.Link, new() { Name = "Only the sheets that changed" }).GetAttributeAsync("href"))!).ToString());
        Assert.Equal("%PDF-", System.Text.Encoding.ASCII.GetString((await pdf.BodyAsync())[..5]));
        await page.GotoAsync(new Uri(new Uri(page.Url), $"/sheet/{HouseFolderCopy.Key}?of=opening-tub-window&set=B").ToString());
        await Expect(page.Locator(".print-sheet svg")).ToContainTextAsync("changed since A", new() { Timeout = 60_000 });
        await page.GotoAsync(new Uri(new Uri(page.Url), $"/record/{HouseFolderCopy.Key}").ToString());
        await Expect(page.Locator(".others")).ToContainTextAsync("revision B");
        Assert.All(open.Complaints, said => Assert.Contains("422", said)); // the browser notes both refusals
    }

    private static LocatorAssertionsToContainTextOptions Patient { get; } = new() { Timeout = 90_000 };

    private static Dictionary<(string, string), string> Prints(Seen.Issue issue) => issue.Drawn.ToDictionary(s => (s.Part, s.Key), s => s.Print);

    private static Task<int> Listed(IPage page, string list) => page.Locator($"{list} li").EvaluateAllAsync<int>("all => all.reduce((sum, one) => sum + Number(one.dataset.count), 0)");
}
