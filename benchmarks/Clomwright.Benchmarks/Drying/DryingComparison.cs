using System.Globalization;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Benchmarks.Drying;

/// <summary>Our steps and SciPy's stiff integrators on the same nodes, tables and hours; errors against the same steps made very small.</summary>
internal static class DryingComparison
{
    private const double OurTolerance = 0.5;
    private const int Rounds = 5;

    public static int Run()
    {
        Console.WriteLine($"{Environment.ProcessorCount} processors, .NET {Environment.Version}, load {File.ReadAllText("/proc/loadavg").Trim()}");
        var wall = new HourlyWall();
        _ = Whole(wall, out _);
        var times = new List<Measure>();
        var strips = new DiffusionStrip[HourlyWall.BayCount];
        for (var round = 0; round < Rounds; round++)
        {
            times.Add(Measure.Of(() => strips = Whole(wall, out _)));
        }

        var (median, least) = (Measure.Median(times), Measure.Least(times));
        Console.WriteLine($"Whole wall, surroundings of every hour included: {median.Wall:f0} ms wall ({least.Wall:f0}), {median.Processor:f0} ms processor ({least.Processor:f0}); "
            + $"{strips.Average(s => s.Steps):f0} steps a bay, {strips.Average(s => s.Rejected):f0} rejected, {wall.Grid.Rows * wall.Grid.Nodes} unknowns");

        var path = Path.GetTempFileName();
        try
        {
            var conditions = wall.Conditions(7);
            var ours = wall.Simulate(conditions, OurTolerance, double.PositiveInfinity);
            var exact = wall.Simulate(conditions, 2e-4, 900);
            var one = new List<Measure>();
            for (var round = 0; round < Rounds; round++)
            {
                one.Add(Measure.Of(() => wall.Simulate(conditions, OurTolerance, double.PositiveInfinity)));
            }

            Write(path, wall, conditions, exact);
            var time = Measure.Median(one);
            Console.WriteLine($"One bay: {time.Wall:f2} ms wall, {time.Processor:f2} ms processor; error {Error(ours, exact, wall):e2} kg/m3");
            foreach (var method in (string[])["LSODA 1e-2 1", "LSODA 1e-3 0.1", "LSODA 1e-4 0.01", "BDF 1e-2 1", "BDF 1e-3 0.1"])
            {
                using var peer = new Peer("/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, "Peers", "drying_peer.py"), path]);
                var answer = peer.Ask(method);
                Console.WriteLine($"SciPy {method}: {answer[0]:f0} ms wall, {answer[1]:f0} ms processor; error {answer[2]:e2} kg/m3; {answer[3]:f0} right-hand sides; {answer[0] / time.Wall:f0}x wall, {answer[1] / time.Processor:f0}x processor");
            }
        }
        finally
        {
            File.Delete(path);
        }

        return 0;
    }

    private static DiffusionStrip[] Whole(HourlyWall wall, out int steps)
    {
        var strips = new DiffusionStrip[HourlyWall.BayCount];
        for (var bay = 0; bay < strips.Length; bay++)
        {
            strips[bay] = wall.Simulate(wall.Conditions(bay), OurTolerance, double.PositiveInfinity);
        }

        steps = strips.Sum(s => s.Steps);
        return strips;
    }

    /// <summary>Root mean square over the volume at the last day, kg/m3.</summary>
    private static double Error(DiffusionStrip a, DiffusionStrip b, HourlyWall wall)
    {
        double sum = 0, size = 0;
        for (var row = 0; row < a.Rows; row++)
        {
            for (var node = 0; node < wall.Grid.Nodes; node++)
            {
                var volume = wall.Grid.Heights[row] * wall.Grid.Thicknesses[row] * wall.Grid.NodeShares[node];
                sum += volume * (a[row, node] - b[row, node]) * (a[row, node] - b[row, node]);
                size += volume;
            }
        }

        return Math.Sqrt(sum / size);
    }

    private static void Write(string path, HourlyWall wall, Condition[][] conditions, DiffusionStrip exact)
    {
        using var writer = new BinaryWriter(File.Create(path));
        void All(ReadOnlySpan<double> values)
        {
            writer.Write((long)values.Length);
            foreach (var value in values)
            {
                writer.Write(value);
            }
        }

        All(wall.Grid.Shares);
        All(wall.Grid.Heights);
        All(wall.Grid.Thicknesses);
        All(wall.Medium.Table);
        All([wall.Earth.Full * wall.Earth.DryDensity, HourlyWall.LaidWater * wall.Earth.DryDensity, HourlyWall.DaysApart, HourlyWall.DayCount, HourlyWall.LiftCount]);
        All([.. conditions.SelectMany(day => day).SelectMany(c => new[]
        {
            c.ScaleA, c.ScaleB, c.First.P, c.First.Q, c.First.R, c.First.S, c.Last.P, c.Last.Q, c.Last.R, c.Last.S, c.Top.P, c.Top.Q, c.Top.R, c.Top.S,
        })]);
        All(exact.ToArray());
    }
}
