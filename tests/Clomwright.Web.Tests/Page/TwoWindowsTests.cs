using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>Two windows on one house, in a real browser. Rank: by hand.</summary>
[Collection(nameof(SecondChromiumTests))]
public sealed class TwoWindowsTests(Chromium chromium)
{
    [Fact]
    public async Task WhatOneWindowChanges_TheOtherShows_AndFileAndHistoryAreWhole()
    {
        await using var open = await OpenPage.AtWall(chromium);
        var one = open.Page;
        var other = await one.Context.NewPageAsync();
        await other.GotoAsync(one.Url);
        foreach (var window in new[] { one, other })
        {
            await window.Locator("[data-opening=tub-window]").FocusAsync();
            await Expect(Sill(window)).ToHaveValueAsync("3 ft 2 in", Patient);
        }

        // One after the other, each on what the other left.
        await Write(one, "3 ft 3 in");
        await Expect(Sill(other)).ToHaveValueAsync("3 ft 3 in", Patient);
        await Write(other, "3 ft 1 in");
        await Expect(Sill(one)).ToHaveValueAsync("3 ft 1 in", Patient);

        // Either takes the last step back, whoever made it, and either saves.
        await one.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(Sill(other)).ToHaveValueAsync("3 ft 3 in", Patient);
        await other.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Expect(one.GetByRole(AriaRole.Button, new() { Name = "Save" })).ToBeDisabledAsync(new() { Timeout = 30_000 });
        Assert.Equal(Length.FromInches(39), await Written(open));
        await other.GetByRole(AriaRole.Button, new() { Name = "Take back" }).ClickAsync();
        await Expect(Sill(one)).ToHaveValueAsync("3 ft 2 in", Patient);
        Assert.Equal(Length.FromInches(39), await Written(open));

        // Both at once: whatever comes last stands in both, and in the file.
        await Task.WhenAll(Write(one, "3 ft 0 in"), Write(other, "3 ft 4 in"));
        await OpenPage.Until(one, "() => document.querySelector('[name=sill]').value !== '3 ft 2 in'");
        for (var i = 0; i < 300 && await Sill(one).InputValueAsync() != await Sill(other).InputValueAsync(); i++)
        {
            await Task.Delay(100);
        }

        var agreed = await Sill(one).InputValueAsync();
        Assert.Equal(agreed, await Sill(other).InputValueAsync());
        Assert.Contains(agreed, (string[])["3 ft", "3 ft 4 in"]);
        await one.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Expect(other.GetByRole(AriaRole.Button, new() { Name = "Save" })).ToBeDisabledAsync(new() { Timeout = 30_000 });
        Assert.Equal(Length.FromInches(agreed == "3 ft" ? 36 : 40), await Written(open));
        Assert.Empty(open.Complaints);
    }

    private static LocatorAssertionsToHaveValueOptions Patient { get; } = new() { Timeout = 30_000 };

    private static ILocator Sill(IPage window) => window.Locator("[name=sill]");

    private static async Task Write(IPage window, string sill)
    {
        await Sill(window).FillAsync(sill);
        await Sill(window).PressAsync("Enter");
    }

    private static async Task<Length> Written(OpenPage open) => HouseDocument.Read(await File.ReadAllBytesAsync(open.HouseFile)).House!.Openings.Single(o => o.Name == "tub-window").Sill;
}
