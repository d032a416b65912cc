namespace Clomwright.Geometry;

/// <summary>A place found with a tape from each of two pegs.</summary>
/// <remarks>
/// With pegs a distance c apart and tapes r1, r2: x = (r1^2 - r2^2 + c^2)/(2 c) along the line from the first peg, y = sqrt(r1^2 - x^2) square
/// to it. For independent tape errors of standard deviation s: s_x = s sqrt(r1^2 + r2^2)/c, s_y = s/y sqrt((r1 - x r1/c)^2 + (x r2/c)^2). Best
/// where the tapes cross near a right angle; the error grows as 1 / sin of the crossing angle.
/// </remarks>
/// <param name="Along">x, m.</param>
/// <param name="Across">y, m.</param>
/// <param name="ErrorAlong">Standard error of x, m.</param>
/// <param name="ErrorAcross">Standard error of y, m; infinite on the line between the pegs.</param>
public readonly record struct TwoPegs(double Along, double Across, double ErrorAlong, double ErrorAcross)
{
    /// <summary>The place that two tapes give; not a number where they do not meet.</summary>
    /// <param name="apart">Distance between the pegs, m.</param>
    /// <param name="first">Tape from the first peg, m.</param>
    /// <param name="second">Tape from the second peg, m.</param>
    /// <param name="tapeError">Standard error of each tape, m.</param>
    public static TwoPegs Of(double apart, double first, double second, double tapeError)
    {
        var x = (first * first - second * second + apart * apart) / (2 * apart);
        var y = Math.Sqrt(first * first - x * x);
        var (slopeFirst, slopeSecond) = (first - x * first / apart, x * second / apart);
        return new TwoPegs(
            x, y,
            tapeError * Math.Sqrt(first * first + second * second) / apart,
            tapeError / y * Math.Sqrt(slopeFirst * slopeFirst + slopeSecond * slopeSecond));
    }
}
