using System.Collections.Immutable;

namespace Clomwright.Numerics.Solid;

/// <summary>A body ready to be solved: a grid, what its cells are filled with, and what holds it.</summary>
/// <param name="Grid">The grid.</param>
/// <param name="Materials">The materials that cells name by number.</param>
/// <param name="Cells">The fill of every cell.</param>
/// <param name="Supports">What holds the body.</param>
public sealed record SolidModel(SolidGrid Grid, ImmutableArray<ElasticMaterial> Materials, SolidCells Cells, SolidSupports Supports);
