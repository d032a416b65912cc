namespace Clomwright.Geometry;

/// <summary>A chord of a circle with the rise of the arc over it: what a string and a rule measure, and what a fixed triangle is cut to.</summary>
/// <param name="Radius">Of the circle, m.</param>
/// <param name="Chord">Straight from end to end, m.</param>
public readonly record struct CircleChord(double Radius, double Chord)
{
    /// <summary>Half the angle at the centre, radians.</summary>
    public double HalfAngle => Math.Asin(Math.Clamp(Chord / (2 * Radius), -1, 1));

    /// <summary>Along the circle from end to end, m.</summary>
    public double Arc => 2 * Radius * HalfAngle;

    /// <summary>Versine: from the middle of the chord to the arc, m.</summary>
    public double Rise => 2 * Radius * Math.Pow(Math.Sin(HalfAngle / 2), 2);

    /// <summary>From the centre to the chord, m.</summary>
    public double FromCentre => Radius * Math.Cos(HalfAngle);

    /// <summary>Angle between the chord and the line from its end to the crown of the arc, radians: the fixed triangle's two equal angles.</summary>
    public double TriangleAngle => HalfAngle / 2;

    /// <summary>One of the equal chords that a circle is divided into.</summary>
    public static CircleChord OfParts(double radius, int parts) => new(radius, 2 * radius * Math.Sin(Math.PI / parts));

    /// <summary>The circle of a chord and its rise.</summary>
    public static CircleChord OfRise(double chord, double rise) => new((chord * chord / 4 + rise * rise) / (2 * rise), chord);

    /// <summary>From the chord to the arc at a distance from the chord's middle, m.</summary>
    public double OffsetAt(double fromMiddle) => Math.Sqrt(Radius * Radius - fromMiddle * fromMiddle) - FromCentre;
}
