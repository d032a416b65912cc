namespace Clomwright.Analysis.WallTop;

/// <summary>Moment and shear of a simple span under an even load and patches of load. N/m, m.</summary>
internal sealed class SpanLoad(double span)
{
    private const int Pieces = 200;

    private readonly double[] perMetre = new double[Pieces];

    /// <summary>The same load all along.</summary>
    public SpanLoad Even(double load)
    {
        for (var k = 0; k < Pieces; k++)
        {
            perMetre[k] += load;
        }

        return this;
    }

    /// <summary>A triangle with its greatest load in the middle.</summary>
    public SpanLoad Peak(double most)
    {
        for (var k = 0; k < Pieces; k++)
        {
            perMetre[k] += most * (1 - Math.Abs(2 * (k + 0.5) / Pieces - 1));
        }

        return this;
    }

    /// <summary>A force spread evenly over a width, its middle at a distance from the span's first end; what falls outside the span is not its own.</summary>
    public SpanLoad Patch(double force, double middle, double width)
    {
        var h = span / Pieces;
        for (var k = 0; k < Pieces; k++)
        {
            var overlap = Math.Min((k + 1) * h, middle + width / 2) - Math.Max(k * h, middle - width / 2);
            perMetre[k] += overlap > 0 ? force / width * overlap / h : 0;
        }

        return this;
    }

    /// <summary>Reactions at both ends, N, and the greatest moment, N m.</summary>
    public (double First, double Second, double Moment) Solve()
    {
        var h = span / Pieces;
        double second = 0, total = 0;
        for (var k = 0; k < Pieces; k++)
        {
            total += perMetre[k] * h;
            second += perMetre[k] * h * (k + 0.5) * h / span;
        }

        double shear = total - second, moment = 0, most = 0;
        for (var k = 0; k < Pieces; k++)
        {
            // Within a piece the shear may pass through nothing: the greatest moment lies there.
            var zero = perMetre[k] > 0 ? Math.Clamp(shear / perMetre[k], 0, h) : h;
            most = Math.Max(most, moment + shear * zero - perMetre[k] * zero * zero / 2);
            moment += shear * h - perMetre[k] * h * h / 2;
            shear -= perMetre[k] * h;
        }

        return (total - second, second, most);
    }
}
