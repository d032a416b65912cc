using Clomwright.Building;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>Outlines as points, between a left and a right edge.</summary>
internal static class Outlines
{
    private const int Bend = 24;

    public static double[][] Box(double left, double right, double bottom, double top) =>
        [Pen.Point(left, bottom), Pen.Point(right, bottom), Pen.Point(right, top), Pen.Point(left, top)];

    public static double[][] Opening(Opening opening, double left, double right)
    {
        var (bottom, top) = (opening.Sill.Metres, (opening.Sill + opening.Height).Metres);
        return opening.Shape switch
        {
            OpeningShape.Round => Round(left, right, bottom, top),
            OpeningShape.Arched => Arched(left, right, bottom, top, (opening.Rise ?? default).Metres),
            _ => Box(left, right, bottom, top),
        };
    }

    public static double[][] Niche(NichePlace niche, double left, double right) => niche.Niche.Head == NicheHead.Arch
        ? Arched(left, right, niche.Bottom, niche.Top, Math.Min((right - left) / 2, niche.Top - niche.Bottom))
        : Box(left, right, niche.Bottom, niche.Top);

    private static double[][] Round(double left, double right, double bottom, double top) =>
        [.. Enumerable.Range(0, 2 * Bend).Select(i => OnEllipse(left, right, (bottom + top) / 2, (top - bottom) / 2, Math.PI * i / Bend))];

    private static double[][] Arched(double left, double right, double bottom, double top, double rise) =>
    [
        Pen.Point(left, bottom), Pen.Point(right, bottom),
        .. Enumerable.Range(0, Bend + 1).Select(i => OnEllipse(left, right, top - rise, rise, Math.PI * i / Bend)),
    ];

    private static double[] OnEllipse(double left, double right, double middle, double rise, double angle) =>
        Pen.Point((left + right) / 2 + (right - left) / 2 * Math.Cos(angle), middle + rise * Math.Sin(angle));
}
