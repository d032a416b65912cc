namespace Clomwright.Numerics;

/// <summary>Random numbers by their place instead of by their order: Philox 4x32 with ten rounds (Salmon, Moraes, Dror, Shaw 2011, Parallel random numbers: as easy as 1, 2, 3).</summary>
/// <remarks>The same seed, stream and place give the same number on every machine and thread; nothing is remembered between calls.</remarks>
/// <param name="Seed">Which sequence of all.</param>
public readonly record struct Philox(ulong Seed)
{
    private const int Rounds = 10;

    /// <summary>Four words of a counter under a key.</summary>
    public static (uint A, uint B, uint C, uint D) Block((uint A, uint B, uint C, uint D) counter, (uint A, uint B) key)
    {
        var (a, b, c, d) = counter;
        var (k, l) = key;
        for (var round = 0; round < Rounds; round++)
        {
            var (first, second) = ((ulong)0xD2511F53 * a, (ulong)0xCD9E8D57 * c);
            (a, b, c, d) = ((uint)(second >> 32) ^ b ^ k, (uint)second, (uint)(first >> 32) ^ d ^ l, (uint)first);
            unchecked
            {
                k += 0x9E3779B9;
                l += 0xBB67AE85;
            }
        }

        return (a, b, c, d);
    }

    /// <summary>A number from 0, below 1, 53 bits of it.</summary>
    /// <param name="stream">Which of the independent streams.</param>
    /// <param name="place">Which number of it.</param>
    public double Uniform(ulong stream, ulong place) => Pair(stream, place).First;

    /// <summary>A number of the standard normal distribution (Box and Muller 1958).</summary>
    /// <param name="stream">Which of the independent streams.</param>
    /// <param name="place">Which number of it.</param>
    public double Normal(ulong stream, ulong place)
    {
        var (u, v) = Pair(stream, place);
        return Math.Sqrt(-2 * Math.Log(1 - u)) * Math.Cos(2 * Math.PI * v);
    }

    private (double First, double Second) Pair(ulong stream, ulong place)
    {
        var (a, b, c, d) = Block(((uint)place, (uint)(place >> 32), (uint)stream, (uint)(stream >> 32)), ((uint)Seed, (uint)(Seed >> 32)));
        return (Whole(a, b), Whole(c, d));
    }

    private static double Whole(uint high, uint low) => ((ulong)high << 21 ^ low >> 11) * (1.0 / (1UL << 53));
}
