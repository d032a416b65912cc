using System.Text.RegularExpressions;
using Clomwright.Record;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>Days written on the real page, in a real browser. Rank: by hand.</summary>
[Collection(nameof(Chromium))]
public sealed class RecordTests(Chromium chromium)
{
    /// <summary>The record page, ready to be written on.</summary>
    public static async Task<OpenPage> AtRecord(Chromium chromium, int width = 1366, int height = 768, Microsoft.Playwright.ColorScheme scheme = Microsoft.Playwright.ColorScheme.Light)
    {
        var open = await OpenPage.At(chromium, $"/record/{HouseFolderCopy.Key}", width, height, scheme);
        await open.Page.Locator("form.a-day").WaitForAsync();
        return open;
    }

    private static string RecordOf(OpenPage open) => SqliteRecord.Beside(open.HouseFile);

    [Fact]
    public async Task TwoNumbers_AreWritten_AreThereAfterReloading_AndTheHouseFileIsAsItWas()
    {
        await using var open = await AtRecord(chromium);
        var page = open.Page;
        var house = await File.ReadAllBytesAsync(open.HouseFile);
        await Expect(page.Locator(".days .none")).ToBeVisibleAsync();
        await page.Locator("[name=date]").FillAsync("2026-06-08");
        await page.Locator("[name=raised]").FillAsync("9");
        await page.Locator("[name=batches]").FillAsync("14");
        await page.Locator("[name=batches]").PressAsync("Enter");
        await Expect(page.Locator("[data-day='2026-06-08']")).ToContainTextAsync("14 batches");
        await Expect(page.Locator(".told")).ToHaveTextAsync("8 June 2026 is written.");
        await Expect(page.Locator("[name=raised]")).ToHaveValueAsync("");
        await page.ReloadAsync();
        await Expect(page.Locator("[data-day='2026-06-08']")).ToContainTextAsync("ring up 9 in");
        Assert.Equal(house, await File.ReadAllBytesAsync(open.HouseFile));
        Assert.Single(new SqliteRecord(RecordOf(open)).Read().Record.Entries);

        // The days of the job begin after it.
        await page.GetByRole(Microsoft.Playwright.AriaRole.Link, new() { Name = "Days", Exact = true }).ClickAsync();
        await Expect(page.GetByText("One day is written in the record up to 8 June 2026")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task ADay_IsCorrected_AndTheEarlierEntryIsKept_AndStruckOut()
    {
        await using var open = await AtRecord(chromium);
        var page = open.Page;
        await page.Locator("[name=date]").FillAsync("2026-06-08");
        await page.Locator("[name=raised]").FillAsync("9");
        await page.GetByText("More of the day").ClickAsync();
        await page.Locator("[name=people]").FillAsync("7");
        await page.GetByLabel("poles peeled").CheckAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        var day = page.Locator("[data-day='2026-06-08']");
        await Expect(day).ToContainTextAsync("poles peeled");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Correct 8 June 2026" }).ClickAsync();
        await Expect(page.Locator("[name=raised]")).ToHaveValueAsync("9 in");
        await page.Locator("[name=raised]").FillAsync("8 in");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Write the correction" }).ClickAsync();
        await Expect(day).ToContainTextAsync("ring up 8 in");
        await Expect(day).ToContainTextAsync("7 people");
        await Expect(page.Locator(".kept")).ToContainTextAsync("One more entry was corrected");
        Assert.Equal(2, new SqliteRecord(RecordOf(open)).Read().Record.Entries.Count);
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Correct 8 June 2026" }).ClickAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Strike it out" }).ClickAsync();
        await Expect(day).ToHaveCountAsync(0);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task ATest_ADelivery_AndAMeasure_AreWritten_AndStruckOut()
    {
        await using var open = await AtRecord(chromium, 390, 844);
        var page = open.Page;
        await page.GetByText("Write a test, something that came").ClickAsync();
        var write = page.Locator(".other-entry .write");
        await page.Locator("[name=other-what]").FillAsync("leak test");
        await page.Locator("[name=other-of]").FillAsync("roof");
        await page.Locator("[name=other-found]").FillAsync("dry after two days");
        await write.ClickAsync();
        await Expect(page.Locator(".others")).ToContainTextAsync("leak test of roof: dry after two days");
        await page.Locator("[name=other-kind]").SelectOptionAsync("as-built");
        await page.Locator("[name=other-what]").SelectOptionAsync("tub-window");
        await page.Locator("[name=other-measured]").SelectOptionAsync("width");
        await page.Locator("[name=other-found]").FillAsync("wide");
        await write.ClickAsync();
        await Expect(page.Locator("#reason-other")).ToContainTextAsync("Not written");
        await page.Locator("[name=other-found]").FillAsync("36 1/8");
        await write.ClickAsync();
        await Expect(page.Locator(".others")).ToContainTextAsync(new Regex("tub-window, rough width (36|3 ft) 1/8 in"));
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { NameRegex = new("Strike out: .*leak test") }).ClickAsync();
        await Expect(page.Locator(".others")).Not.ToContainTextAsync("leak test");
        Assert.Equal(3, new SqliteRecord(RecordOf(open)).Read().Record.Entries.Count);
        Assert.All(open.Complaints, said => Assert.Contains("422", said));
    }

    [Fact]
    public async Task WhatIsWrong_IsSaidAtItsBlank_AndNothingIsWritten()
    {
        await using var open = await AtRecord(chromium);
        var page = open.Page;
        await page.Locator("[name=raised]").FillAsync("nine");
        await page.Locator("[name=raised]").PressAsync("Enter");
        await Expect(page.Locator("[name=raised]")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator("#reason-day")).ToContainTextAsync("Not written");
        await page.Locator("[name=raised]").FillAsync("90");
        await page.Locator("[name=raised]").PressAsync("Enter");
        await Expect(page.Locator("#reason-day")).ToContainTextAsync("does not rise");
        Assert.False(File.Exists(RecordOf(open)));
    }
}
