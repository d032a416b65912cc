using System.Collections.Immutable;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Cracking;

/// <summary>A state of a cracking body.</summary>
/// <param name="Displacement">The displacement of every node.</param>
/// <param name="Cracks">What every cell is up to; nothing in empty ones.</param>
/// <param name="Steps">Newton's steps taken to it.</param>
/// <param name="Unbalanced">Forces left over as a share of the load.</param>
/// <param name="IsInEquilibrium">Whether they are small enough to count as none.</param>
public sealed record CrackedState(Displacement Displacement, ImmutableArray<CellCracks> Cracks, int Steps, double Unbalanced, bool IsInEquilibrium);

/// <summary>Cracks in one cell, smeared.</summary>
/// <param name="Opening">Mean of the largest strain that its stress does not account for: times the cell's size, about how far cracks gape.</param>
/// <param name="Cracked">Share of its eight points at the bound of tension.</param>
/// <param name="Crushed">Share of its eight points at the bound of pressure.</param>
public readonly record struct CellCracks(double Opening, double Cracked, double Crushed);
