namespace Clomwright.Papers.Drawing;

/// <summary>A place on paper: millimetres from the top left corner, x to the right, y down.</summary>
public readonly record struct PaperPoint(double X, double Y)
{
    /// <summary>Sum.</summary>
    public static PaperPoint operator +(PaperPoint a, PaperPoint b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static PaperPoint operator -(PaperPoint a, PaperPoint b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>A multiple.</summary>
    public static PaperPoint operator *(double k, PaperPoint a) => new(k * a.X, k * a.Y);

    /// <summary>Distance from the corner, mm.</summary>
    public double Norm => Math.Sqrt(X * X + Y * Y);

    /// <summary>Turned about the corner, degrees, clockwise as seen on paper.</summary>
    public PaperPoint Turned(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new PaperPoint(X * cos - Y * sin, X * sin + Y * cos);
    }
}

/// <summary>An upright rectangle on paper, mm.</summary>
public readonly record struct PaperBox(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width, mm.</summary>
    public double Width => Right - Left;

    /// <summary>Height, mm.</summary>
    public double Height => Bottom - Top;

    /// <summary>Its middle.</summary>
    public PaperPoint Centre => new((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>A box from its corner and size.</summary>
    public static PaperBox At(double left, double top, double width, double height) => new(left, top, left + width, top + height);

    /// <summary>The smallest box round some points.</summary>
    public static PaperBox Around(params IEnumerable<PaperPoint> points)
    {
        double left = double.PositiveInfinity, top = double.PositiveInfinity, right = double.NegativeInfinity, bottom = double.NegativeInfinity;
        foreach (var p in points)
        {
            left = Math.Min(left, p.X);
            right = Math.Max(right, p.X);
            top = Math.Min(top, p.Y);
            bottom = Math.Max(bottom, p.Y);
        }

        return new PaperBox(left, top, right, bottom);
    }

    /// <summary>Smaller by a margin on every side; larger for a negative one.</summary>
    public PaperBox Inset(double margin) => new(Left + margin, Top + margin, Right - margin, Bottom - margin);

    /// <summary>Moved.</summary>
    public PaperBox Moved(double dx, double dy) => new(Left + dx, Top + dy, Right + dx, Bottom + dy);

    /// <summary>Whether the insides of two boxes share anything.</summary>
    public bool Overlaps(PaperBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether another box lies in this one.</summary>
    public bool Holds(PaperBox other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    /// <summary>The smallest box round two.</summary>
    public PaperBox With(PaperBox other) =>
        new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));
}
