using Clomwright.Numerics;

namespace Clomwright.Geometry.Cuts;

/// <summary>
/// The outline of a hole seen square on: at each height the share of the half width that is open. Straight jambs from the sill to the
/// springing, then an arc; a round hole is all arc.
/// </summary>
internal sealed record Outline
{
    private readonly double arcCentre;
    private readonly double arcRise;
    private readonly double arcShare;
    private readonly double arcFrom;

    private Outline(double sill, double springing, double head, double arcCentre, double arcRise, double arcShare)
    {
        Sill = sill;
        Springing = springing;
        Head = head;
        this.arcCentre = arcCentre;
        this.arcRise = arcRise;
        this.arcShare = arcShare;
        arcFrom = head > springing ? Math.Asin(Math.Clamp((springing - arcCentre) / arcRise, -1, 1)) : 0;
    }

    public double Sill { get; }

    public double Springing { get; }

    public double Head { get; }

    /// <summary>Whether it is a circle or ellipse without straight jambs.</summary>
    public bool IsRound => Springing == Sill && arcFrom < 0;

    /// <summary>Whether it has straight jambs all the way up.</summary>
    public bool IsStraight => Springing == Head;

    /// <summary>A height at which it is as wide as it gets.</summary>
    public double WidestAt => IsRound ? arcCentre : Sill;

    public static Outline Rectangle(double sill, double height) => new(sill, sill + height, sill + height, sill, 1, 1);

    public static Outline Ellipse(double sill, double height) => new(sill, sill, sill + height, sill + height / 2, height / 2, 1);

    /// <summary>Straight jambs with an arc of a circle on top; where the rise is more than half the width, half an ellipse.</summary>
    public static Outline Arched(double sill, double height, double halfWidth, double rise)
    {
        var head = sill + height;
        if (rise > halfWidth)
        {
            return new Outline(sill, head - rise, head, head - rise, rise, 1);
        }

        var radius = (halfWidth * halfWidth + rise * rise) / (2 * rise);
        return new Outline(sill, head - rise, head, head - radius, radius, radius / halfWidth);
    }

    /// <summary>Share of the half width that is open at a height, 0 to 1.</summary>
    public double ShareAt(double height)
    {
        if (height < Sill || height > Head)
        {
            return 0;
        }

        var x = (height - arcCentre) / arcRise;
        return height < Springing || Head <= Springing ? 1 : Math.Min(1, arcShare * Math.Sqrt(Math.Max(0, 1 - x * x)));
    }

    /// <summary>The heights between which it is open at a share of the half width, 0 at its middle to 1 at the jamb; equal ones where it is not.</summary>
    public (double Low, double High) HeightsAt(double share)
    {
        if (IsStraight)
        {
            return (Sill, Head);
        }

        var x = share / arcShare;
        var rise = arcRise * Math.Sqrt(Math.Max(0, 1 - x * x));
        return IsRound ? (arcCentre - rise, arcCentre + rise) : (Sill, Math.Max(Springing, arcCentre + rise));
    }

    /// <summary>How fast the share of the half width grows going up, 1/m; 0 on straight jambs, without bound at a crown.</summary>
    public double ShareSlopeAt(double height)
    {
        if (height < Springing || Head <= Springing)
        {
            return 0;
        }

        var x = (height - arcCentre) / arcRise;
        return -arcShare * x / (arcRise * Math.Sqrt(Math.Max(0, 1 - x * x)));
    }

    /// <summary>Heights from sill to head at which to draw it: the ends of its straight jambs and even steps of angle along its arc.</summary>
    public IEnumerable<double> Steps(int arcSteps)
    {
        if (!IsRound)
        {
            yield return Sill;
        }

        if (IsStraight)
        {
            yield return Head;
            yield break;
        }

        for (var i = 0; i < arcSteps; i++)
        {
            yield return arcCentre + arcRise * Math.Sin(arcFrom + (Math.PI / 2 - arcFrom) * i / arcSteps);
        }

        yield return Head;
    }

    /// <summary>Integral over height of a function of share and height, between two heights cut at given ones.</summary>
    public double Integrate(Func<double, double, double> function, double bottom, double top, ReadOnlySpan<double> cuts)
    {
        var sum = 0.0;
        var (low, high) = (Math.Max(bottom, Sill), Math.Min(top, Springing));
        if (high > low)
        {
            sum += GaussRule.Four.Integrate(z => function(1, z), low, high, cuts);
        }

        (low, high) = (Math.Max(bottom, Springing), Math.Min(top, Head));
        if (high > low)
        {
            sum += GaussRule.Twelve.Integrate(OverArc, Angle(low), Angle(high));
        }

        return sum;

        double OverArc(double angle)
        {
            var (sin, cos) = Math.SinCos(angle);
            return arcRise * cos * function(arcShare * cos, arcCentre + arcRise * sin);
        }

        double Angle(double height) => Math.Asin(Math.Clamp((height - arcCentre) / arcRise, -1, 1));
    }
}
