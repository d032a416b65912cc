using Clomwright.Building;
using Microsoft.Playwright;

namespace Clomwright.Web.Tests.Page;

/// <summary>A running workbench on a folder of its own with one house, and a page that looks at it.</summary>
public sealed class OpenPage : IAsyncDisposable
{
    private readonly HouseFolderCopy? folder;
    private readonly RunningWorkbench workbench;
    private readonly IBrowserContext context;

    private OpenPage(HouseFolderCopy? folder, RunningWorkbench workbench, IBrowserContext context, IPage page) =>
        (this.folder, this.workbench, this.context, Page) = (folder, workbench, context, page);

    public IPage Page { get; }

    /// <summary>What the page complained of.</summary>
    public List<string> Complaints { get; } = [];

    public string HouseFile => folder?.HouseFile ?? throw new InvalidOperationException("A standing house is for looking at.");

    /// <summary>Opens a page of the workbench, or skips the test where there is no Chromium.</summary>
    /// <param name="chromium">The browser.</param>
    /// <param name="path">Of the page.</param>
    /// <param name="width">Of the window.</param>
    /// <param name="height">Of the window.</param>
    /// <param name="scheme">Light or dark.</param>
    /// <param name="looks">Whether the test only looks: then all of them share one workbench, and no house is written.</param>
    /// <param name="house">Another house than the complete one; only where the test does more than look.</param>
    public static async Task<OpenPage> At(Chromium chromium, string path, int width = 1366, int height = 768, ColorScheme scheme = ColorScheme.Light, bool looks = false, House? house = null)
    {
        Assert.SkipUnless(chromium.Browser is not null, $"no Chromium at {Chromium.Path}; install Debian's chromium or set CLOM_CHROMIUM");
        var folder = looks ? null : new HouseFolderCopy(house);
        var workbench = folder is null ? (await chromium.Standing).Workbench : await folder.Start();
        var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultTimeout(60_000);
        var page = await context.NewPageAsync();
        var open = new OpenPage(folder, workbench, context, page);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                open.Complaints.Add(message.Text);
            }
        };
        page.PageError += (_, error) => open.Complaints.Add(error);
        await page.GotoAsync(new Uri(workbench.Address, path).ToString());
        return open;
    }

    /// <summary>The wall page, with the wall drawn.</summary>
    public static async Task<OpenPage> AtWall(Chromium chromium, int width = 1366, int height = 768, ColorScheme scheme = ColorScheme.Light, bool looks = false, House? house = null)
    {
        var open = await At(chromium, $"/wall/{HouseFolderCopy.Key}", width, height, scheme, looks, house);
        await open.Page.Locator("svg.unrolled .opening").First.WaitForAsync();
        return open;
    }

    /// <summary>Waits until something holds in a page; the page's own rules let no text be run as a program, so it is asked again and again, for a minute at most: a busy machine is slow, not broken.</summary>
    public static async Task Until(IPage page, string holds, object? argument = null)
    {
        for (var i = 0; i < 600; i++)
        {
            if (await page.EvaluateAsync<bool>(holds, argument))
            {
                return;
            }

            await Task.Delay(100);
        }

        Assert.Fail($"It never came to hold: {holds}");
    }

    public async ValueTask DisposeAsync()
    {
        await context.CloseAsync();
        if (folder is not null)
        {
            await workbench.DisposeAsync();
            folder.Dispose();
        }
    }
}
