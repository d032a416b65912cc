using System.Globalization;

namespace Clomwright.Benchmarks.Solid;

/// <summary>Runs our side and the peers in turns and prints medians and ratios.</summary>
internal static class SolidComparison
{
    private const int DragsInRound = 24;

    public static int Run(string[] arguments)
    {
        var rounds = Array.IndexOf(arguments, "--rounds") is >= 0 and var at ? int.Parse(arguments[at + 1], CultureInfo.InvariantCulture) : 3;
        var withSciPy = arguments.Contains("--scipy");
        var sizes = SolidSize.All.Where(size => arguments.Contains(size.Name)).ToArray();
        using var folder = new TemporaryFolder();
        if (CholmodPeer.Compile(folder.Path) is not { } cholmod)
        {
            return 1;
        }

        Console.WriteLine($"{Environment.ProcessorCount} processors, .NET {Environment.Version}, load {File.ReadAllText("/proc/loadavg").Trim()}");
        foreach (var size in sizes.Length > 0 ? sizes : SolidSize.All)
        {
            Compare(size, cholmod, folder.Path, rounds, withSciPy);
        }

        return 0;
    }

    private static void Compare(SolidSize size, string cholmod, string folder, int rounds, bool withSciPy)
    {
        var (matrix, solution) = (Path.Combine(folder, $"{size.Name}.matrix"), Path.Combine(folder, $"{size.Name}.solution"));
        using var ours = Ours(size, matrix);
        ours.Ask("drag");
        using var single = CholmodPeer.Start(cholmod, matrix, solution, threads: 1);
        using var both = CholmodPeer.Start(cholmod, matrix, solution, threads: 2);
        var peers = CholmodPeer.Orders.SelectMany(order => new[] { (Name: $"{order}, 1 thread", Order: order, Peer: single), (Name: $"{order}, 2 threads", Order: order, Peer: both) })
            .ToDictionary(peer => peer.Name, peer => (peer.Order, peer.Peer, Runs: new List<double[]>()));
        var (drags, fulls, streams) = (new List<double[]>(), new List<double[]>(), new List<double[]>());
        for (var round = 0; round < rounds; round++)
        {
            foreach (var (order, peer, runs) in peers.Values)
            {
                runs.Add(peer.Ask(order));
                for (var i = 0; i < DragsInRound / peers.Count; i++)
                {
                    drags.Add(ours.Ask("drag"));
                }
            }

            fulls.Add(ours.Ask("full"));
            streams.Add(ours.Ask("stream"));
        }

        var scipy = new List<double[]>();
        if (withSciPy)
        {
            using var python = new Peer("/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, "Peers", "scipy_peer.py"), matrix]);
            scipy.Add(python.Ask("solve"));
        }

        var difference = ours.Ask($"check {solution}")[0];
        Report(size, drags, fulls, streams, peers.Select(peer => (peer.Key, peer.Value.Runs)).ToList(), scipy, difference);
    }

    private static void Report(
        SolidSize size, List<double[]> drags, List<double[]> fulls, List<double[]> streams, List<(string Name, List<double[]> Runs)> peers,
        List<double[]> scipy, double difference)
    {
        static Measure At(IEnumerable<double[]> runs) => Measure.Median([.. runs.Select(run => new Measure(run[0], run[1]))]);
        static Measure Least(IEnumerable<double[]> runs) => Measure.Least([.. runs.Select(run => new Measure(run[0], run[1]))]);
        static double Column(IEnumerable<double[]> runs, int column) => Measure.Median(runs.Select(run => run[column]));
        var (drag, least, full, stream) = (At(drags), Least(drags), At(fulls), Measure.Median(streams.Select(run => run[0])));
        Console.WriteLine();
        Console.WriteLine($"## {size.Name}: {size.Dofs} degrees of freedom, {fulls[0][5]:f0} of them solid; {drags.Count} drags, {fulls.Count} rounds; medians (least), ms");
        Console.WriteLine();
        Console.WriteLine("| what | wall | processor |");
        Console.WriteLine("|---|---|---|");
        Console.WriteLine($"| drag by one cell, displacements and stresses everywhere | {drag.Wall:f1} ({least.Wall:f1}) | {drag.Processor:f1} ({least.Processor:f1}) |");
        Console.WriteLine($"| of it renewal, solution, stress | {Column(drags, 2):f1}, {Column(drags, 3):f1}, {Column(drags, 4):f1} | |");
        Console.WriteLine($"| new cells and load, apart | {Column(drags, 5):f1} | |");
        Console.WriteLine($"| factor and solution from nothing | {full.Wall:f1} ({Least(fulls).Wall:f1}) | {full.Processor:f1} |");
        Console.WriteLine($"| reading {fulls[0][2] / 1e6:f1} M numbers of the factor once | {stream:f1} | |");
        var totals = peers.Select(peer => (peer.Name, Runs: peer.Runs.Select(run => new[] { run[0] + run[1] + run[2], run[3] }).ToList(), peer.Runs)).ToList();
        foreach (var (name, total, runs) in totals)
        {
            Console.WriteLine(
                $"| CHOLMOD {name}: analyze + factorize + solve | {At(total).Wall:f1} ({Least(total).Wall:f1}) = {Column(runs, 0):f0} + {Column(runs, 1):f0} + {Column(runs, 2):f0} | {At(total).Processor:f1} ({Least(total).Processor:f1}) |");
        }

        if (scipy.Count > 0)
        {
            Console.WriteLine($"| SciPy splu, MMD | {scipy[0][0]:f0} | {scipy[0][1]:f0} |");
        }

        var best = totals.MinBy(peer => At(peer.Runs).Wall);
        var (wall, processor) = (At(best.Runs).Wall, totals.Min(peer => At(peer.Runs).Processor));
        var bytes = totals.Min(peer => Column(peer.Item3, 4));
        Console.WriteLine();
        Console.WriteLine($"Best CHOLMOD by wall: {best.Name}. Ratios at medians:");
        Console.WriteLine($"drag {wall / drag.Wall:f1}x wall, {processor / drag.Processor:f1}x processor; full {wall / full.Wall:f1}x wall, {processor / full.Processor:f1}x processor;");
        Console.WriteLine($"drag {drag.Wall / stream:f2} readings of the factor; memory {fulls[0][3] / 1e6:f0} MB of ours to {bytes / 1e6:f0} MB of CHOLMOD's own ({fulls[0][3] / bytes:f2}x),");
        Console.WriteLine($"largest process {fulls[^1][4] / 1e6:f0} MB to {totals.Min(peer => Column(peer.Item3, 5)) / 1e6:f0} MB; fronts {Column(drags, 6):f0}, {Column(drags, 7) / 1e9:f3} GF a drag, {fulls[0][6] / 1e9:f2} GF full; largest difference {difference:e1}");
    }

    private static Peer Ours(SolidSize size, string matrix) => new(
        Environment.ProcessPath!,
        (string[])[.. Path.GetFileNameWithoutExtension(Environment.ProcessPath!) == "dotnet" ? [Environment.GetCommandLineArgs()[0]] : Array.Empty<string>(), "solid-child", size.Name, matrix]);
}
