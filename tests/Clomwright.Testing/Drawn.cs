using CsCheck;

namespace Clomwright.Testing;

/// <summary>Random things one by one, each from the seed and its own number: a long run says how far it is, goes on after a failure and names every one, and any of them is drawn again alone.</summary>
public static class Drawn
{
    /// <summary>A long run says how far it is after so many.</summary>
    private const int SaidEvery = 50;

    /// <summary>The thing with that number.</summary>
    /// <param name="gen">What is drawn.</param>
    /// <param name="seed">The seed of a run.</param>
    /// <param name="number">From 0.</param>
    public static T One<T>(Gen<T> gen, uint seed, int number) => One(gen, seed, number, null, out _);

    /// <summary>The same, with what CsCheck holds to be its size.</summary>
    /// <param name="gen">What is drawn.</param>
    /// <param name="seed">The seed of a run.</param>
    /// <param name="number">From 0.</param>
    /// <param name="least">Drawing may stop where it becomes larger than this; null draws all of it.</param>
    /// <param name="size">How large it is.</param>
    public static T One<T>(Gen<T> gen, uint seed, int number, Size? least, out Size size)
    {
        ArgumentNullException.ThrowIfNull(gen);
        return gen.Generate(new PCG((uint)number, seed), least, out size);
    }

    /// <summary>Checks so many that follow from <see cref="Counts.Seed"/>.</summary>
    /// <param name="gen">What is drawn.</param>
    /// <param name="first">Number of the first.</param>
    /// <param name="count">How many.</param>
    /// <param name="what">Names the run where it says how far it is.</param>
    /// <param name="check">Throws where one does not hold.</param>
    /// <returns>A line for each that did not hold; none for a run that holds.</returns>
    public static IReadOnlyList<string> Faults<T>(Gen<T> gen, int first, int count, string what, Action<T> check)
    {
        ArgumentNullException.ThrowIfNull(check);
        List<string> faults = [];
        for (var number = first; number < first + count; number++)
        {
            try
            {
                check(One(gen, Counts.Seed, number));
            }
            catch (Exception failed)
            {
                faults.Add(FormattableString.Invariant($"number {number} of seed {Counts.Seed}: {failed.Message}"));
                Console.Error.WriteLine($"{what}: {faults[^1]}");
            }

            if ((number - first + 1) % SaidEvery == 0)
            {
                Console.Error.WriteLine(FormattableString.Invariant($"{what}: {number - first + 1} of {count} drawn from seed {Counts.Seed}, {faults.Count} did not hold"));
            }
        }

        return faults;
    }
}
