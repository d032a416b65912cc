using System.Diagnostics;
using Clomwright.Testing;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clomwright.Web.Tests.Page;

/// <summary>Somebody works on one house for long: drags, looks at stress and water, turns the wall, takes all back, while a second window is opened anew again and again. Memory stays level. Rank: property.</summary>
/// <remarks>
/// Three minutes in <c>./test</c>, where the hand rests between rounds so that the other page tests have the machine, 30 minutes without a rest with <c>--long</c>. The first third is for getting warm. Both ends of the page are
/// measured with the house as it was, on the same sheet.
/// </remarks>
[Collection(nameof(ThirdChromiumTests))]
public sealed class LongSessionTests(Chromium chromium, ITestOutputHelper output)
{
    private const double MiB = 1024 * 1024;

    /// <summary>
    /// Nobody can ask a running program to collect, and its collector lets garbage lie as long as there is room. So it is given room for one solved wall, its drying and a few studies, and no more: it dies when what it keeps
    /// does not fit. A round makes some thirty studies of some MB each: were they kept, thirty minutes would ask for gigabytes.
    /// </summary>
    private const long HeapMostMiB = 384;

    /// <summary>What one wall of this house holds outside the heap while it is solved or in hand, in the chunks that it is lent in: 90 MB in two of 64 MiB.</summary>
    private const double WallMiB = 128;

    /// <summary>Walls at once: the one in hand, the one solved for the house as it rests, and one still being solved for the house as it was.</summary>
    private const int Walls = 3;

    /// <summary>Code compiled on the way, stacks, buffers of the connections, and what the system's allocator keeps for each thread.</summary>
    private const double OtherMiB = 128;

    /// <summary>A working day of the pace of <c>--long</c> has to end within half the memory of an old laptop.</summary>
    private const double LaptopHalfMiB = 2048;

    /// <summary>Collected before it is read. Code that got compiled and caches of the browser's own are a few MB; a scene of the wall kept by each change would be 0.2 MB, in thirty minutes a gigabyte.</summary>
    private const double PageMayGrowMiB = 6;

    /// <summary>The page shows the same house on the same sheet: as many elements, but for what the browser keeps of its own for the control that was used last.</summary>
    private const double NodesMayGrow = 1.1;

    private static readonly TimeSpan Session = TimeSpan.FromSeconds(Counts.Of(180, 1800));
    private static readonly TimeSpan Pace = TimeSpan.FromSeconds(Counts.Of(20, 0));

    /// <summary>After which nothing is solved any more, for the least of it.</summary>
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(10);

    private static readonly TimeSpan Day = TimeSpan.FromHours(8);

    [Fact]
    public async Task WorkingForLong_OnOneHouse_KeepsMemoryLevel()
    {
        Assert.SkipUnless(chromium.Browser is not null, $"no Chromium at {Chromium.Path}; install Debian's chromium or set CLOM_CHROMIUM");
        using var folder = new HouseFolderCopy();
        await using var program = await RunningProgram.On(folder.Path, HeapMostMiB * 1024 * 1024);
        var bare = ResidentMemory.Now(program.Process);
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1366, Height = 768 }, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultTimeout(120_000);
        var complaints = new List<string>();
        var page = await Window(context, program.Address, complaints);
        var other = await Window(context, program.Address, complaints);
        await page.BringToFrontAsync();

        await using var resident = ResidentMemory.Of(program.Process);
        var clock = Stopwatch.StartNew();
        var rounds = 0;
        PageMemory? warm = null;
        while (clock.Elapsed < Session || rounds < 6)
        {
            var begun = clock.Elapsed;
            await Round(page, other);
            rounds++;
            if (warm is null && clock.Elapsed > Session / 3)
            {
                warm = await Measured(page);
            }

            await Task.Delay(TimeSpan.FromSeconds(Math.Max(0, (begun + Pace - clock.Elapsed).TotalSeconds)));
        }

        var third = clock.Elapsed.TotalSeconds / 3;
        var (middle, last) = (resident.Mean(third, 2 * third), resident.Mean(2 * third, 3 * third));
        var end = await Measured(page);
        await Task.Delay(Rest);
        var rest = resident.Least(clock.Elapsed.TotalSeconds - Rest.TotalSeconds);
        foreach (var line in resident.Table(Math.Max(30, Math.Round(third / 10))))
        {
            output.WriteLine(line);
        }

        output.WriteLine($"{rounds} rounds in {3 * third:0} s, {program.Process.TotalProcessorTime.TotalSeconds:0} s of processor time. Server: bare {bare:0} MiB, mean of the second third {middle:0}, of the last {last:0}, most {resident.Most:0}, at rest {rest:0}. Page warm: {warm}; at the end: {end}.");
        Assert.False(program.Process.HasExited);
        Assert.InRange(resident.Most, 0, bare + HeapMostMiB + Walls * WallMiB + OtherMiB);
        Assert.InRange(rest, 0, bare + HeapMostMiB + WallMiB + OtherMiB);
        Assert.InRange(last, 0, middle + MayGrow(middle, third, rounds));
        Assert.InRange(end.MiB, 0, warm!.MiB + PageMayGrowMiB);
        Assert.InRange(end.Nodes, 0, (int)(warm.Nodes * NodesMayGrow));
        Assert.Empty(complaints);
    }

    /// <summary>
    /// From one third to the next. Long: what would, kept up for a working day, still end within half an old laptop's memory. Short: half of what it would be if each round left one wall behind; garbage that comes and goes hides less.
    /// </summary>
    private static double MayGrow(double middle, double third, int rounds) =>
        Counts.Long ? (LaptopHalfMiB - middle) * third / Day.TotalSeconds : rounds / 3.0 * WallMiB / 2;

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

    /// <summary>What is left of the page when everything without a use was collected.</summary>
    private static async Task<PageMemory> Measured(IPage page)
    {
        var cdp = await page.Context.NewCDPSessionAsync(page);
        for (var i = 0; i < 3; i++)
        {
            await cdp.SendAsync("HeapProfiler.collectGarbage");
        }

        var heap = (await cdp.SendAsync("Runtime.getHeapUsage"))!.Value.GetProperty("usedSize").GetDouble();
        var nodes = (await cdp.SendAsync("Memory.getDOMCounters"))!.Value.GetProperty("nodes").GetInt32();
        await cdp.DetachAsync();
        return new(heap / MiB, nodes);
    }

    private sealed record PageMemory(double MiB, int Nodes)
    {
        public override string ToString() => $"{MiB:0.0} MiB in {Nodes} nodes";
    }
}
