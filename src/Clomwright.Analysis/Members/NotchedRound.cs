namespace Clomwright.Analysis.Members;

/// <summary>A round section with a flat cut across it, bending in the plane square to the cut. SI.</summary>
/// <remarks>The cut is taken flat over the whole width, though a saddle notch leaves a little more. With R the radius, h the distance of the cut from the middle and
/// theta = acos(h/R): the piece lost has the area R^2 (theta - sin cos) and about the middle the second moment R^4/4 (theta - sin cos + 2 sin^3 cos).</remarks>
public readonly record struct NotchedRound
{
    private NotchedRound(double area, double secondMoment, double sectionModulus, bool whole)
    {
        Area = area;
        SecondMoment = secondMoment;
        SectionModulus = sectionModulus;
        ShearFactor = whole ? 4.0 / 3 : 1.5;
    }

    /// <summary>What is left, m2.</summary>
    public double Area { get; }

    /// <summary>About its own centroid, m4.</summary>
    public double SecondMoment { get; }

    /// <summary>To its further edge, m3.</summary>
    public double SectionModulus { get; }

    /// <summary>Largest shear stress over the mean one: 4/3 for a full round, 3/2 once it is cut.</summary>
    public double ShearFactor { get; }

    /// <summary>A round of a diameter with a notch of a depth; a notch as deep as the diameter leaves nothing.</summary>
    public static NotchedRound Of(double diameter, double notch)
    {
        var r = diameter / 2;
        if (!(notch > 0))
        {
            return new(Math.PI * r * r, Math.PI * Math.Pow(r, 4) / 4, Math.PI * Math.Pow(r, 3) / 4, true);
        }

        if (notch >= diameter)
        {
            return new(0, 0, 0, false);
        }

        var h = r - notch;
        var theta = Math.Acos(h / r);
        var (sin, cos) = Math.SinCos(theta);
        var lost = r * r * (theta - sin * cos);
        var lostMoment = 2.0 / 3 * Math.Pow(r * sin, 3);
        var area = Math.PI * r * r - lost;
        var below = lostMoment / area;
        var second = Math.Pow(r, 4) / 4 * (Math.PI - theta + sin * cos - 2 * sin * sin * sin * cos) - area * below * below;
        return new(area, second, second / Math.Max(h + below, r - below), false);
    }
}
