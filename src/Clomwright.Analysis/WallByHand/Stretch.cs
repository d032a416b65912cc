using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>A stretch of wall with what stands over half of the openings beside it: a pier, or the whole ring where nothing is open. Stations in m on the inside face at the wall base, heights in m.</summary>
internal sealed class Stretch
{
    private readonly HouseGeometry geometry;
    private readonly WallSolid wall;
    private readonly double whole;
    private readonly Void[] voids;
    private readonly Tract own, all;
    private readonly Dictionary<string, LevelCut> cuts = new(StringComparer.Ordinal);
    private readonly Dictionary<double, double> above = [];

    private Stretch(HouseGeometry geometry, Pier? pier, Span clear, Gap before, Gap after)
    {
        (this.geometry, Clear, Before, After) = (geometry, clear, before, after);
        wall = geometry.Wall;
        Address = pier?.Address ?? "wall";
        Low = pier?.Heights.From ?? wall.Base.Metres;
        High = pier?.Heights.To ?? wall.Top.Metres;
        whole = pier is null ? geometry.Curve.OffsetLength((wall.InsideOffset(Low) + wall.OutsideOffset(Low)) / 2) : (pier.WidthInside + 4 * pier.WidthMiddle + pier.WidthOutside) / 6;
        voids = [.. Voids.In(geometry, pier, clear)];
        (own, all) = (Tract.Of(geometry, clear), Tract.Of(geometry, Tributary));
    }

    /// <summary>As piers are addressed; <c>wall</c> for the whole ring.</summary>
    public string Address { get; }

    /// <summary>From jamb to jamb.</summary>
    public Span Clear { get; }

    /// <summary>What lies open on either side; nothing beside the whole ring.</summary>
    public Gap Before { get; }

    /// <summary>The other side, clockwise.</summary>
    public Gap After { get; }

    /// <summary>Where both openings begin: the higher of their sills.</summary>
    public double Low { get; }

    /// <summary>Where the lower of both ends.</summary>
    public double High { get; }

    /// <summary>Height from which it stands alone on at least one side: the lower of the sills, never under the wall base.</summary>
    public double Foot => Math.Max(wall.Base.Metres, Math.Min(Before.Sill, After.Sill) is var sill && double.IsFinite(sill) ? sill : wall.Base.Metres);

    /// <summary>From the middle of one opening to the middle of the next.</summary>
    public Span Tributary => new(Clear.From - Before.Width / 2, Clear.To + After.Width / 2);

    /// <summary>Every stretch of a house, clockwise.</summary>
    public static Stretch[] Of(HouseGeometry geometry)
    {
        var curve = geometry.Curve;
        if (geometry.Piers.Count == 0)
        {
            return [new Stretch(geometry, null, new Span(0, curve.Length), Gap.None, Gap.None)];
        }

        var n = geometry.Piers.Count;
        var clear = geometry.Piers.Select(p => p.Span).ToArray();
        var gaps = Enumerable.Range(0, n).Select(i => Gap.Of(geometry, clear[i].To, curve.Wrap(clear[(i + 1) % n].From - clear[i].To))).ToArray();
        return [.. Enumerable.Range(0, n).Select(i => new Stretch(geometry, geometry.Piers[i], clear[i], gaps[(i + n - 1) % n], gaps[i]))];
    }

    /// <summary>What is left of the wall in a level cut, less niches and what goes through; between sill and head the least of every height.</summary>
    /// <param name="where"><c>head</c>, <c>middle</c>, <c>sill</c> or <c>foot</c>.</param>
    public LevelCut Cut(string where) => cuts.TryGetValue(where, out var known) ? known : cuts[where] = Made(where);

    private LevelCut Made(string where)
    {
        var height = where switch
        {
            "head" => High,
            "foot" => wall.Base.Metres,
            "sill" => Low,
            _ => Math.Clamp((wall.Base.Metres + wall.Top.Metres) / 2, Low, Math.Max(Low, High)),
        };
        var width = whole + Before.Grown(height) + After.Grown(height);
        var (thickness, middle) = (wall.ThicknessAt(height), (wall.InsideOffset(height) + wall.OutsideOffset(height)) / 2);
        var lost = where is "head" or "foot" ? Voids.At(voids, height) : Voids.Most(voids, Low, High);
        var area = width * thickness;
        var left = Math.Max(area - lost.Area, 1e-6);
        return new LevelCut(where, height, width, thickness, left, middle - lost.Area * lost.OffCentre / left);
    }

    /// <summary>Cob above a height that comes down here, m3: over the pier itself, and half of what stands over and under the openings beside it.</summary>
    public double CobAbove(double height) =>
        above.TryGetValue(height, out var known) ? known : above[height] = ClearAbove(height) + (Before.CobAbove(height) + After.CobAbove(height)) / 2;

    /// <summary>Cob above a height over the pier itself, m3.</summary>
    public double ClearAbove(double height) => own.Above(height);

    /// <summary>Length on the outside face that wind blows at, m.</summary>
    public double Blown => all.Arc(wall.OutsideOffset(wall.Base.Metres));

    /// <summary>Length along the middle of the wall top, m.</summary>
    public double AtTop => all.Arc((wall.InsideOffset(wall.Top.Metres) + wall.OutsideOffset(wall.Top.Metres)) / 2);

    /// <summary>Length of the pier itself along the middle of the wall top, m.</summary>
    public double ClearAtTop => own.Arc((wall.InsideOffset(wall.Top.Metres) + wall.OutsideOffset(wall.Top.Metres)) / 2);

    /// <summary>Share of a load at a station that comes down here, and where along the wall it does, from the middle of the pier, m.</summary>
    /// <param name="station">Of its middle.</param>
    /// <param name="half">Half the length that it has spread over.</param>
    public (double Share, double Along) ShareOf(double station, double half)
    {
        double share = 0, moment = 0;
        foreach (var turn in (double[])[-1, 0, 1])
        {
            var (from, to) = (station - half + turn * geometry.Curve.Length, station + half + turn * geometry.Curve.Length);
            Add(Math.Max(from, Clear.From), Math.Min(to, Clear.To), _ => 1, null);
            Add(Math.Max(from, Clear.To), Math.Min(to, Clear.To + After.Width), x => (Clear.To + After.Width - x) / After.Width, Clear.To - After.Bearing / 2);
            Add(Math.Max(from, Clear.From - Before.Width), Math.Min(to, Clear.From), x => (x - Clear.From + Before.Width) / Before.Width, Clear.From + Before.Bearing / 2);
        }

        return (share, share > 0 ? moment / share - Clear.Middle : 0);

        void Add(double low, double high, Func<double, double> lever, double? jamb)
        {
            if (high > low)
            {
                var part = (high - low) / (2 * half) * lever((low + high) / 2);
                share += part;
                moment += part * (jamb ?? (low + high) / 2);
            }
        }
    }

    /// <summary>Whether a station lies on the pier itself.</summary>
    public bool Holds(double station) => geometry.Curve.Wrap(station - Clear.From) <= Clear.Width;
}

/// <summary>A level cut through a pier.</summary>
/// <param name="Where"><c>head</c>, <c>middle</c>, <c>sill</c>, <c>foot</c>, or <c>pole 3</c> for what spreads under a pole at the foot.</param>
/// <param name="Height">m from the finished floor.</param>
/// <param name="Width">b along the wall, m.</param>
/// <param name="Thickness">t, m.</param>
/// <param name="Area">A: what is left, m2.</param>
/// <param name="Centre">Of what is left, m outward from the inside curve.</param>
internal sealed record LevelCut(string Where, double Height, double Width, double Thickness, double Area, double Centre);
