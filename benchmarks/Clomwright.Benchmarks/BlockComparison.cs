using System.Globalization;
using Clomwright.Numerics.RigidBlocks;
using Clomwright.Numerics.Tests.RigidBlocks;

namespace Clomwright.Benchmarks;

/// <summary>The limit load of a ring of rigid blocks with a door and two windows by our interior point, and by GLOP (Google.OrTools) on the same joints, turn by turn.</summary>
internal static class BlockComparison
{
    private const int Rounds = 3;

    public static int Run(string[] sizes)
    {
        foreach (var size in sizes.Length == 0 ? ["24x6"] : sizes)
        {
            var numbers = size.Split('x').Select(part => int.Parse(part, CultureInfo.InvariantCulture)).ToArray();
            Compare(numbers[0], numbers[1]);
        }

        return 0;
    }

    private static void Compare(int around, int up)
    {
        var sheet = Stacks.House(around, up, new JointStrength(0.6, 5000), withHeader: true);
        _ = LimitLoad.Of(sheet);
        var (ours, peer) = (new List<Measure>(), new List<Measure>());
        var (factor, expected) = (0.0, 0.0);
        for (var round = 0; round < Rounds; round++)
        {
            ours.Add(Measure.Of(() => factor = LimitLoad.Of(sheet).StaticFactor));
            peer.Add(Measure.Of(() => expected = LinearProgramme.Largest(sheet)));
        }

        Print($"{around} x {up}: ours, two threads", Measure.Median(ours), factor);
        Print($"{around} x {up}: GLOP", Measure.Median(peer), expected);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  GLOP takes {Measure.Median(peer).Wall / Measure.Median(ours).Wall:F1} times as long by the clock, {Measure.Median(peer).Processor / Measure.Median(ours).Processor:F1} times the processor time"));
    }

    private static void Print(string what, Measure time, double factor) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-34} wall {time.Wall,9:F1} ms, processor {time.Processor,9:F1} ms, load factor {factor:F6}"));
}
