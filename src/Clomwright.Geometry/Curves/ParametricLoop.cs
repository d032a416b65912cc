namespace Clomwright.Geometry.Curves;

/// <summary>A closed curve by a parameter of its own, walked clockwise, in pieces that are analytic each.</summary>
internal abstract class ParametricLoop
{
    /// <summary>Parameters at which analytic pieces begin; the last value ends the loop.</summary>
    public abstract ReadOnlySpan<double> Seams { get; }

    /// <summary>Whether the curvature or its slope jumps at the seams.</summary>
    public abstract bool SeamsAreBreaks { get; }

    /// <summary>Area enclosed, m2.</summary>
    public abstract double Area { get; }

    /// <summary>Centroid of the area.</summary>
    public abstract PlanPoint Centroid { get; }

    /// <summary>Point and first two derivatives. The piece is the one that holds the parameter, or named where the parameter is a seam.</summary>
    public abstract (PlanPoint Point, PlanPoint First, PlanPoint Second) At(int piece, double parameter);

    /// <summary>Length of the first derivative.</summary>
    public double Speed(int piece, double parameter) => At(piece, parameter).First.Norm;
}
