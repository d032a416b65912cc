using System.Text.Json;
using System.Text.RegularExpressions;
using Clomwright.Testing;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>
/// What is no sense, on every page that has blanks, also in what is folded away: it stays where it was written, with one sentence that says it again, and nothing is changed by it. Rank: by hand.
/// The ground is in <see cref="OwnHouseTests"/>, what came in <see cref="ArrivedTests"/>, the page of a day and a phone's own blanks in <see cref="TodayTests"/>, the sun's day in <see cref="RoundTests"/>.
/// </summary>
[Collection(nameof(Chromium))]
public sealed partial class NonsenseTests(Chromium chromium)
{
    internal const string Nonsense = "about as much as last time";

    [Fact]
    public async Task OfEarthWallRoofDaysRecordAndANewHouse_StaysWithItsReason()
    {
        await using var open = await OpenPage.At(chromium, $"/earth/{HouseFolderCopy.Key}");
        var page = open.Page;
        var before = await File.ReadAllTextAsync(open.HouseFile);
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
            await Expect(form.Locator(".reason")).ToContainTextAsync(Nonsense);
            await Expect(form.Locator("[aria-invalid=true]")).ToHaveCountAsync(1); // the one that the sentence names
            Assert.All(await blanks.EvaluateAllAsync<string[]>("all => all.map(one => one.value)"), text => Assert.Equal(Nonsense, text));
        }

        await Unfold(page, "details.more", "[data-part^=mix]", 20);

        await Follow(page, "Wall", "svg.unrolled .opening");
        await EveryBlank(page, "opening-line input", _ => true, 4);
        await Unfold(page, "details.more", "[data-part=wall]", 8);
        await Unfold(page, "details.part-chosen", "[data-part^=openings]", 10);
        await page.GetByRole(AriaRole.Button, new() { Name = "lamp", Exact = true }).ClickAsync();
        await Unfold(page, "div[data-chosen=lamp]", "[data-part^=niches]", 6);
        await page.Locator("[data-kind=embed] .part-names button").First.ClickAsync();
        await Unfold(page, "div[data-chosen]:not([data-chosen=lamp])", "[data-part^=embeds]", 6);
        await Follow(page, "Roof", ".roof-from-above .pole-shape");
        await EveryBlank(page, ".knob input.blank, [data-knob] input.blank", _ => true, 7);
        await Unfold(page, "details.more", "[data-part=roof]", 25);
        await Follow(page, "Comfort", "details.more > summary");
        await Unfold(page, "details.more", "[data-part=comfort]", 4);
        await Follow(page, "Days", "[name='crew.people']");
        await EveryBlank(page, "earth-blank input:not(house-form *)", _ => true, 5);
        await Unfold(page, "details.more", "[data-part=crew]", 3);
        await Expect(page.Locator(".saved")).ToContainTextAsync("All is saved"); // nothing of all that changed anything
        Assert.Equal(before, await File.ReadAllTextAsync(open.HouseFile));
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

        Assert.Equal(before, await File.ReadAllTextAsync(open.HouseFile));
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

    /// <summary>What is folded away: it is unfolded by what names it, every blank in it that takes no words takes no nonsense, and no more does what is written to add something.</summary>
    /// <param name="page">The page.</param>
    /// <param name="within">What it is in; what is folded is pressed.</param>
    /// <param name="part">The part of the house that is there then.</param>
    /// <param name="least">How many blanks of their own kind there are at least.</param>
    private static async Task Unfold(IPage page, string within, string part, int least)
    {
        if (within.StartsWith("details", StringComparison.Ordinal))
        {
            await page.Locator($"{within} > summary").ClickAsync();
        }

        var form = page.Locator(within).Locator("house-form").Filter(new() { Has = page.Locator(part) });
        var places = Files.HousePlaces.Of(Houses.HeronPoint);
        await form.Locator("earth-blank input").First.WaitForAsync();
        // Of parts of one kind the first speaks for all; a name, a note or a material may be any words, and FormTests writes them.
        string[] names = [.. (await form.Locator("earth-blank :is(input, textarea)").EvaluateAllAsync<string[]>("all => all.map(one => one.name)"))
            .Where(name => places.At(name["house.".Length..]) is { Kind: not Files.PlaceKind.Text }).DistinctBy(name => Places().Replace(name, ""))];
        Assert.True(names.Length >= least, $"only {string.Join(", ", names)}");
        var told = Read(await form.EvaluateAsync<string>(Writes, new { names, text = Nonsense }));
        Assert.All(told, one => Assert.True(one is { Invalid: true, Text: Nonsense } && one.Reason.Contains(Nonsense, StringComparison.Ordinal), one.ToString()));
        var added = Read(await form.EvaluateAsync<string>(Adds, Nonsense));
        Assert.All(added, one => Assert.True(one is { Invalid: true, Text: Nonsense } && one.Reason.Contains(Nonsense, StringComparison.Ordinal), one.ToString()));
    }

    /// <summary>What came of nonsense in a blank: whether it is marked, what stands in it, what its sentence says.</summary>
    internal sealed record Told(string Name, bool Invalid, string Text, string Reason);

    internal static Told[] Read(string told) => JsonSerializer.Deserialize<Told[]>(told, JsonSerializerOptions.Web)!;

    /// <summary>Writes in one blank after another as a hand would, and waits for its sentence: hundreds of times that is slow from outside.</summary>
    private const string Writes = """
        async (form, { names, text }) => {
          const told = [];
          for (const name of names) {
            const blank = form.querySelector(`[name="${name}"]`);
            blank.focus();
            blank.value = text;
            blank.dispatchEvent(new Event('input', { bubbles: true }));
            blank.dispatchEvent(new Event('change', { bubbles: true }));
            for (const end = performance.now() + 10000; performance.now() < end && blank.getAttribute('aria-invalid') !== 'true';) await new Promise((done) => setTimeout(done, 4));
            const reason = document.getElementById(blank.getAttribute('aria-describedby'));
            told.push({ name, invalid: blank.getAttribute('aria-invalid') === 'true', text: blank.value, reason: reason?.checkVisibility() ? reason.textContent : '' });
          }
          return JSON.stringify(told);
        }
        """;

    /// <summary>Writes in every blank of every row that adds something, and tells of the one that is marked.</summary>
    internal const string Adds = """
        async (form, text) => {
          const told = [];
          const seen = new Set();
          for (const row of form.querySelectorAll('form.add-part')) {
            const blanks = [...row.querySelectorAll('input')];
            const kind = row.dataset.add.replace(/\[\d+\]/g, '');
            if (blanks.length === 0 || seen.has(kind)) continue;
            seen.add(kind);
            const folded = row.closest('details:not([open])');
            if (folded) folded.querySelector('summary').click();
            for (const blank of blanks) {
              blank.value = text;
              blank.dispatchEvent(new Event('input', { bubbles: true }));
            }
            row.querySelector('button[type=submit]').click();
            const marked = () => row.querySelector('input[aria-invalid=true]');
            for (const end = performance.now() + 10000; performance.now() < end && !marked();) await new Promise((done) => setTimeout(done, 4));
            const reason = row.querySelector('.reason');
            told.push({ name: row.dataset.add, invalid: marked() !== null && row.querySelectorAll('[aria-invalid=true]').length === 1, text: blanks.every((blank) => blank.value === text) ? text : 'not all kept', reason: reason?.checkVisibility() ? reason.textContent : '' });
          }
          return JSON.stringify(told);
        }
        """;

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Places();

    private static async Task Follow(IPage page, string to, string until)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = to, Exact = true }).ClickAsync();
        await page.Locator(until).First.WaitForAsync();
    }
}
