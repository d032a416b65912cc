namespace Clomwright.Numerics.Factorisation;

/// <summary>A symmetric positive definite matrix given as a sum of small matrices, one for each patch of a sheet, plus a diagonal.</summary>
/// <remarks>
/// Every column has <see cref="DofsPerColumn"/> places; those in use are its active degrees of freedom. What is not active is no part of the
/// matrix at all. The factor asks from several threads at once, so reading must be safe in parallel.
/// </remarks>
public interface ISheetMatrix
{
    /// <summary>How columns and patches lie.</summary>
    SheetShape Shape { get; }

    /// <summary>Places in each column: a vector over the sheet has Columns x DofsPerColumn entries, column after column.</summary>
    int DofsPerColumn { get; }

    /// <summary>The largest diagonal entry that a patch adds: pivots below 1e-12 of it are taken for a mechanism.</summary>
    double LargestDiagonal { get; }

    /// <summary>The places of a column that are active, ascending.</summary>
    ReadOnlySpan<short> Active(int column);

    /// <summary>Whether a patch adds nothing.</summary>
    bool IsEmpty(int patch);

    /// <summary>Adds a patch to the matrix.</summary>
    void AddPatch(int patch, in PatchTarget target);

    /// <summary>What is added to the diagonal at the places of a column (all of them), or nothing.</summary>
    ReadOnlySpan<double> Diagonal(int column);
}
