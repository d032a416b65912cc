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
