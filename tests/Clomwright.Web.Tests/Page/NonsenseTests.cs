using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>What is no sense, on every page that has blanks: it stays where it was written, with one sentence that says it again. Rank: by hand. The ground is in <see cref="OwnHouseTests"/>, what came in <see cref="ArrivedTests"/>, the sun's day in <see cref="RoundTests"/>.</summary>
[Collection(nameof(Chromium))]
public sealed class NonsenseTests(Chromium chromium)
{
    private const string Nonsense = "about as much as last time";

    [Fact]
    public async Task OfEarthWallRoofDaysRecordAndANewHouse_StaysWithItsReason()
    {
        await using var open = await OpenPage.At(chromium, $"/earth/{HouseFolderCopy.Key}");
        var page = open.Page;
        await page.Locator(".soil-triangle .field").First.WaitForAsync();

        // Of tests of one kind the first speaks for all: they are the same blanks.
        await EveryBlank(page, "earth-blank input", name => !name.Any(char.IsAsciiDigit) || name.Contains(".0.", StringComparison.Ordinal), 28);
        foreach (var kind in new[] { "bar", "drop", "block", "prism", "brick" })
        {
            var form = page.Locator($"[data-new={kind}]");
            var blanks = form.Locator("input");
            foreach (var blank in await blanks.AllAsync())
            {
                await blank.FillAsync(Nonsense);
            }

            await form.Locator("button").ClickAsync();
            await Expect(form.Locator(".reason")).ToBeVisibleAsync();
            Assert.All(await blanks.EvaluateAllAsync<string[]>("all => all.map(one => one.value)"), text => Assert.Equal(Nonsense, text));
        }

        await Follow(page, "Wall", "svg.unrolled .opening");
        await EveryBlank(page, "opening-line input", _ => true, 4);
        await Follow(page, "Roof", ".roof-from-above .pole-shape");
        await EveryBlank(page, ".knob input.blank, [data-knob] input.blank", _ => true, 7);
        await Follow(page, "Days", "[name='crew.people']");
        await EveryBlank(page, "earth-blank input:not(house-form *)", _ => true, 5);
        Assert.Empty(open.Complaints);

        await Follow(page, "Record", "form.a-day");
        await page.Locator("form.a-day details summary").ClickAsync();
        foreach (var name in new[] { "raised", "batches", "people", "hours", "lift" })
        {
            var blank = page.Locator($"form.a-day [name={name}]");
            await blank.FillAsync(Nonsense);
            await blank.PressAsync("Enter");
            await Expect(blank).ToHaveAttributeAsync("aria-invalid", "true");
            await Expect(page.Locator("#reason-day")).ToContainTextAsync(Nonsense);
            await Expect(blank).ToHaveValueAsync(Nonsense);
            await blank.FillAsync("");
        }

        await page.Locator("form.a-day [name=date]").FillAsync("");
        await page.Locator("form.a-day .write").ClickAsync();
        await Expect(page.Locator("#reason-day")).ToContainTextAsync("choose the day");
        await page.Locator(".other-entry summary").ClickAsync();
        await page.Locator(".other-entry .write").ClickAsync(); // nothing at all
        await Expect(page.Locator("#reason-other")).ToContainTextAsync("Not written");
        await page.Locator("[name=other-kind]").SelectOptionAsync("as-built");
        await page.Locator("[name=other-what]").SelectOptionAsync("tub-window");
        await page.Locator("[name=other-measured]").SelectOptionAsync("width");
        await page.Locator("[name=other-found]").FillAsync(Nonsense);
        await page.Locator(".other-entry .write").ClickAsync();
        await Expect(page.Locator("#reason-other")).ToContainTextAsync(Nonsense);
        await Expect(page.Locator("[name=other-found]")).ToHaveValueAsync(Nonsense);

        await page.GetByRole(AriaRole.Link, new() { Name = "Another house" }).ClickAsync();
        await page.Locator("new-house [name=shape]").SelectOptionAsync("oval");
        foreach (var (name, sense) in new[] { ("name", "Clay Hollow"), ("length", "16"), ("width", "12") })
        {
            var blank = page.Locator($"new-house [name={name}]");
            await blank.FillAsync(name == "name" ? "!?" : Nonsense);
            await page.Locator("new-house button[type=submit]").ClickAsync();
            await Expect(page.Locator($"#reason-new-{name}")).ToBeVisibleAsync();
            await Expect(blank).ToHaveValueAsync(name == "name" ? "!?" : Nonsense);
            await blank.FillAsync(sense);
        }

        Assert.False(File.Exists(Record.SqliteRecord.Beside(open.HouseFile)));
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(open.HouseFile)!, "*.house.json"));
        Assert.All(open.Complaints, complaint => Assert.Contains("422", complaint)); // the browser notes what was not written
    }

    /// <summary>Every blank takes no nonsense: it is marked, said again in its sentence, and kept.</summary>
    private static async Task EveryBlank(IPage page, string blanks, Func<string, bool> wanted, int least)
    {
        string[] names = [.. (await page.Locator(blanks).EvaluateAllAsync<string[]>("all => all.map(one => one.name)")).Where(wanted)];
        Assert.True(names.Length >= least, $"only {string.Join(", ", names)}");
        foreach (var name in names)
        {
            var blank = page.Locator(blanks).And(page.Locator($"[name='{name}']"));
            await blank.FillAsync(Nonsense);
            await blank.PressAsync("Enter");
            await Expect(blank).ToHaveAttributeAsync("aria-invalid", "true");
            await Expect(blank).ToHaveValueAsync(Nonsense);
            await Expect(page.Locator($"#{await blank.GetAttributeAsync("aria-describedby")}")).ToContainTextAsync(Nonsense);
        }
    }

    private static async Task Follow(IPage page, string to, string until)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = to, Exact = true }).ClickAsync();
        await page.Locator(until).First.WaitForAsync();
    }
}
