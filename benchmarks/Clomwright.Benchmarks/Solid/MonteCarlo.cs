using System.Globalization;
using Clomwright.Numerics.Solid;

namespace Clomwright.Benchmarks.Solid;

/// <summary>
/// Many houses that differ: every cell with a stiffness of its own, or the same house under other loads. One sample to a processor for the first,
/// eight loads at a time for the second; beside CHOLMOD, which keeps its analysis and has a process for each processor.
/// </summary>
internal static class MonteCarlo
{
    private const int StiffSamples = 40;
    private const int Loads = 400;
    private const int Seed = 20261126;

    public static int Run(string[] arguments)
    {
        var rounds = Array.IndexOf(arguments, "--rounds") is >= 0 and var at ? int.Parse(arguments[at + 1], CultureInfo.InvariantCulture) : 3;
        var size = SolidSize.All.FirstOrDefault(size => arguments.Contains(size.Name)) is { Around: > 0 } named ? named : SolidSize.Of("20k");
        using var folder = new TemporaryFolder();
        if (CholmodPeer.Compile(folder.Path) is not { } cholmod)
        {
            return 1;
        }

        var matrix = Path.Combine(folder.Path, "matrix");
        var house = new RingHouse(size);
        SparseMatrix.Write(matrix, house.At(RingHouse.Start), RingHouse.LoadOn(house.At(RingHouse.Start)));
        using var peer = CholmodPeer.Start(cholmod, matrix, Path.Combine(folder.Path, "solution"), threads: 1);
        var processors = Environment.ProcessorCount;
        using var samples = new Samples(house, processors);
        samples.Stiff(processors);
        samples.Load(2 * 8);
        var (stiff, loads, peers) = (new List<Measure>(), new List<Measure>(), new List<(double Factor, double Solve)>());
        for (var round = 0; round < rounds; round++)
        {
            stiff.Add(Measure.Of(() => samples.Stiff(StiffSamples)));
            peers.AddRange(CholmodPeer.Orders.Select(order => peer.Ask(order)).Select(run => (run[1], run[2])));
            loads.Add(Measure.Of(() => samples.Load(Loads)));
        }

        var best = peers.Chunk(CholmodPeer.Orders.Length).Select(runs => (New: runs.Min(r => r.Factor + r.Solve), Loads: runs.Min(r => r.Solve))).ToArray();
        var (stiffEach, loadEach) = (Measure.Median(stiff).Wall / StiffSamples, Measure.Median(loads).Wall / Loads);
        var (peerNew, peerLoad) = (Measure.Median(best.Select(b => b.New)) / processors, Measure.Median(best.Select(b => b.Loads)) / processors);
        Console.WriteLine($"{processors} processors, .NET {Environment.Version}, load {File.ReadAllText("/proc/loadavg").Trim()}; {size.Name}, {rounds} rounds, seed {Seed}; medians");
        Console.WriteLine();
        Console.WriteLine("| sample | ours, a second (processor ms each) | best CHOLMOD, a second on as many processors | ratio |");
        Console.WriteLine("|---|---|---|---|");
        Console.WriteLine($"| new stiffness in every cell: factor and solution | {1e3 / stiffEach:f0} ({Measure.Median(stiff).Processor / StiffSamples:f1}) | {1e3 / peerNew:f1} | {peerNew / stiffEach:f1} |");
        Console.WriteLine($"| other loads, eight together | {1e3 / loadEach:f0} ({Measure.Median(loads).Processor / Loads:f2}) | {1e3 / peerLoad:f0}, one at a time | {peerLoad / loadEach:f1} |");
        return 0;
    }

    private sealed class Samples : IDisposable
    {
        private readonly SolidModel start;
        private readonly NodalLoad weight;
        private readonly ElasticBody[] bodies;
        private int sample;

        public Samples(RingHouse house, int processors)
        {
            start = house.At(RingHouse.Start);
            weight = RingHouse.LoadOn(start);
            bodies = [.. Enumerable.Range(0, processors).Select(_ => new ElasticBody(start, threads: 1))];
        }

        /// <summary>Samples with a stiffness in every cell spread by a fifth, all processors together.</summary>
        public void Stiff(int count) => Parallel.For(0, bodies.Length, processor =>
        {
            for (var i = processor; i < count; i += bodies.Length)
            {
                var random = new Random(Seed + Interlocked.Increment(ref sample));
                var cells = start.Cells.Select((_, fill) => fill with { Stiffness = Math.Exp(0.2 * Normal(random)) });
                bodies[processor].Become(start with { Cells = cells });
                _ = bodies[processor].Solve(weight);
            }
        });

        /// <summary>Loads that differ in size, eight together, all processors together.</summary>
        public void Load(int count) => Parallel.For(0, bodies.Length, processor =>
        {
            var random = new Random(Seed + processor);
            for (var i = 8 * processor; i < count; i += 8 * bodies.Length)
            {
                NodalLoad[] loads = [.. Enumerable.Range(0, 8).Select(_ => Math.Exp(0.1 * Normal(random)) * weight)];
                _ = bodies[processor].Solve(loads);
            }
        });

        public void Dispose() => Array.ForEach(bodies, body => body.Dispose());

        private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }
}
