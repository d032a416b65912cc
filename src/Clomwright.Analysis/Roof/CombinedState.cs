using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>What a combination of loads does to a reciprocal frame, in one pattern.</summary>
/// <param name="Combination">The combination.</param>
/// <param name="Sense">The pattern: <c>even</c>, <c>one-sided</c>, <c>drift</c>, <c>up</c> with the deck on and the soil off, <c>up-dry</c> with dry soil.</param>
/// <param name="Forces">What it does.</param>
public sealed record CombinedState(Combination Combination, string Sense, RoofForces Forces);

/// <summary>All combinations of a roof.</summary>
/// <param name="States">Those that could be summed.</param>
/// <param name="Missing">Loads that belong in combinations and are not known: what depends on them is not checked.</param>
public sealed record CombinedStates(Sequence<CombinedState> States, Sequence<Message> Missing);

/// <summary>Where a check is hardest.</summary>
internal static class Hardest
{
    /// <summary>The state and the place with the largest use, the first of equals; there must be one of each.</summary>
    public static (CombinedState State, T At) Of<T>(Sequence<CombinedState> states, IReadOnlyList<T> places, Func<CombinedState, T, double> use)
    {
        var (state, at, most) = (states[0], places[0], double.NaN);
        foreach (var s in states)
        {
            foreach (var place in places)
            {
                if (use(s, place) is var here && here.CompareTo(most) > 0)
                {
                    (state, at, most) = (s, place, here);
                }
            }
        }

        return (state, at);
    }
}
