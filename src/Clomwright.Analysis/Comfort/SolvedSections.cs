using System.Collections.Concurrent;
using Clomwright.Numerics.Conduction;

namespace Clomwright.Analysis.Comfort;

/// <summary>Sections that are solved once, however many houses that differ elsewhere have them. May be asked from several threads. Any two are equal: what is known already changes no answer.</summary>
internal sealed class SolvedSections
{
    private readonly ConcurrentDictionary<string, Lazy<SteadySection>> known = new(StringComparer.Ordinal);

    /// <summary>A section between airs.</summary>
    public SteadySection Of(PaintedSection drawn, params SectionAir[] airs) =>
        known.GetOrAdd($"{drawn.Written} {string.Join(';', airs)}", _ => new(() => SteadySection.Of(drawn.Grid(), airs))).Value;

    public override bool Equals(object? obj) => obj is SolvedSections;

    public override int GetHashCode() => 0;
}
