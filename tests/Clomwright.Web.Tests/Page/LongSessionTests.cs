using System.Diagnostics;
using Clomwright.Testing;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>Somebody works on one house for long: drags, looks at stress and water, turns the wall, takes all back, while a second window is opened anew again and again. Memory stays level. Rank: property.</summary>
/// <remarks>45 s in <c>./test</c>, 30 minutes with <c>--long</c>; the first third is for getting warm (on a busy machine one round). Both ends are measured with the house as it was, on the same sheet.</remarks>
[Collection(nameof(Chromium))]
public sealed class LongSessionTests(Chromium chromium, ITestOutputHelper output)
{
    private const double MiB = 1024 * 1024;

    /// <summary>
    /// Nobody can ask a running program to collect, and its collector lets garbage lie as long as there is room. So it is given room for one solved wall, its drying and a few studies, and no more: it dies when what it keeps
    /// does not fit. A round makes some thirty studies of some MB each: were they kept, thirty minutes would ask for gigabytes.
    /// </summary>
    private const long HeapMostMiB = 384;

    /// <summary>
    /// Beside the heap: what an opening in hand and a wall being solved hold (90 MB each), which the system's allocator keeps for the next where it was given back, thread by thread, and the program's code, stacks and buffers
    /// (200 MB). Generous, for the allocator owes nothing: were what is in hand not given back, thirty minutes would end gigabytes higher.
    /// </summary>
    private const double ServerMostMiB = HeapMostMiB + 800;

    /// <summary>Collected before it is read. Code that got compiled and caches of the browser's own are a few MB; a scene of the wall kept by each change would be 0.2 MB, in thirty minutes a gigabyte.</summary>
    private const double PageMayGrowMiB = 6;

    /// <summary>The page shows the same house on the same sheet: as many elements, but for what the browser keeps of its own for the control that was used last.</summary>
    private const double NodesMayGrow = 1.1;

    private static readonly TimeSpan Session = TimeSpan.FromSeconds(Counts.Of(45, 1800));

    [Fact]
    public async Task WorkingForLong_OnOneHouse_KeepsMemoryLevel()
    {
        Assert.SkipUnless(chromium.Browser is not null, $"no Chromium at {Chromium.Path}; install Debian's chromium or set CLOM_CHROMIUM");
        using var folder = new HouseFolderCopy();
        await using var program = await RunningProgram.On(folder.Path, HeapMostMiB * 1024 * 1024);
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1366, Height = 768 }, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultTimeout(120_000);
        var complaints = new List<string>();
        var page = await Window(context, program.Address, complaints);
        var other = await Window(context, program.Address, complaints);
        await page.BringToFrontAsync();

        var clock = Stopwatch.StartNew();
        var rounds = 0;
        Memory? warm = null;
        while (clock.Elapsed < Session || warm is null || rounds < 3)
        {
            await Round(page, other);
            rounds++;
            program.Process.Refresh();
            output.WriteLine($"round {rounds}, {clock.Elapsed.TotalSeconds:0} s: server {program.Process.WorkingSet64 / MiB:0} MiB");
            if (warm is null && clock.Elapsed > Session / 3)
            {
                warm = await Measured(page, program.Process);
                output.WriteLine($"warm after {rounds} rounds: {warm}");
            }
        }

        var end = await Measured(page, program.Process);
        output.WriteLine($"at the end, {rounds} rounds, {clock.Elapsed.TotalSeconds:0} s: {end}");
        Assert.False(program.Process.HasExited);
        Assert.InRange(end.ServerMiB, 0, ServerMostMiB);
        Assert.InRange(end.PageMiB, 0, warm.PageMiB + PageMayGrowMiB);
        Assert.InRange(end.Nodes, 0, (int)(warm.Nodes * NodesMayGrow));
        Assert.Empty(complaints);
    }

    private static async Task<IPage> Window(IBrowserContext context, Uri address, List<string> complaints)
    {
        var page = await context.NewPageAsync();
        page.PageError += (_, error) => complaints.Add(error);
        await page.GotoAsync(new Uri(address, $"/wall/{HouseFolderCopy.Key}").ToString());
        await page.Locator("svg.unrolled .opening").First.WaitForAsync();
        return page;
    }

    private static async Task Round(IPage page, IPage other)
    {
        await Sheet(page, "Cutting");
        await Drag(page, 60, 16);
        await Sheet(page, "Stress");
        await page.Locator("svg.stress .band").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await Drag(page, 12, 8);
        await Expect(page.Locator(".stress-tightest.on-the-way")).ToHaveCountAsync(0, new() { Timeout = 120_000 });
        await Sheet(page, "Water");
        await Sheet(page, "Cutting");
        foreach (var face in new[] { "from outside", "from inside" })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = face }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Button, new() { Name = face })).ToHaveAttributeAsync("aria-pressed", "true");
        }

        var back = page.GetByRole(AriaRole.Button, new() { Name = "Take back" });
        while (await back.IsEnabledAsync())
        {
            await back.ClickAsync();
            await Settled(page);
        }

        await other.ReloadAsync();
        await other.Locator("svg.unrolled .opening").First.WaitForAsync();
    }

    private static Task Sheet(IPage page, string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();

    private static async Task Drag(IPage page, float by, int steps)
    {
        var box = (await page.Locator("[data-opening=tub-window] .leaf").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + box.Width / 2 + by, box.Y + box.Height / 2, new() { Steps = steps });
        await page.Mouse.UpAsync();
        await Settled(page);
    }

    private static Task Settled(IPage page) => page.Locator("clom-workbench[data-settled]").WaitForAsync(new() { State = WaitForSelectorState.Attached });

    /// <summary>What there is at rest: of the server the least of a second, of the page what is left when everything without a use was collected.</summary>
    private static async Task<Memory> Measured(IPage page, Process server)
    {
        var cdp = await page.Context.NewCDPSessionAsync(page);
        for (var i = 0; i < 3; i++)
        {
            await cdp.SendAsync("HeapProfiler.collectGarbage");
        }

        var heap = (await cdp.SendAsync("Runtime.getHeapUsage"))!.Value.GetProperty("usedSize").GetDouble();
        var nodes = (await cdp.SendAsync("Memory.getDOMCounters"))!.Value.GetProperty("nodes").GetInt32();
        await cdp.DetachAsync();
        var least = long.MaxValue;
        for (var i = 0; i < 10; i++)
        {
            await Task.Delay(100);
            server.Refresh();
            least = Math.Min(least, server.WorkingSet64);
        }

        return new(least / MiB, heap / MiB, nodes);
    }

    private sealed record Memory(double ServerMiB, double PageMiB, int Nodes)
    {
        public override string ToString() => $"server {ServerMiB:0} MiB, page {PageMiB:0.0} MiB in {Nodes} nodes";
    }
}
