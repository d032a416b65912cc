using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>One bay of the wall through time: lifts stacked as they are laid, each three rows of cells, the topmost a thin crust.</summary>
internal sealed class BayRun
{
    public const int RowsInLift = 3;
    public const double Day = 86_400;
    private const double Crust = 0.015;
    private const double Gravity = 9.80665;
    private const int Intervals = 12;
    private const double Grading = 1.8;

    /// <summary>kg/m3: about 0.03 % of the dry mass, root mean square over the wall, each step.</summary>
    private const double StepTolerance = 0.5;
    private readonly DiffusionStrip strip;
    private readonly Earth earth;
    private readonly Strength strength;
    private readonly double[] laid, thickness;
    private readonly double foot;
    private readonly int skinNode;

    public BayRun(Medium medium, Earth earth, Strength strength, double[] heights, double[] thickness, double skinDepth, double foot)
    {
        (this.earth, this.strength, this.thickness, this.foot) = (earth, strength, thickness, foot);
        laid = new double[heights.Length];
        var shares = Nodes;
        double[] rows = [.. heights.SelectMany(h => new[] { h / 2, h / 2 - Math.Min(Crust, h / 4), Math.Min(Crust, h / 4) })];
        strip = new(medium, new(shares, rows, [.. thickness.SelectMany(t => Enumerable.Repeat(t, RowsInLift))])) { Tolerance = StepTolerance };
        skinNode = Math.Max(1, Array.FindIndex(shares, s => s * thickness[0] > skinDepth));
    }

    /// <summary>Where nodes lie through the wall, as shares of its thickness.</summary>
    public static double[] Nodes => StripGrid.Graded(Intervals, Grading);

    public int Lifts => strip.Rows / RowsInLift;

    public int Steps => strip.Steps;

    public Outflow Out => strip.Out;

    public double Held => strip.Held;

    public double Lay(double water)
    {
        laid[Lifts] = water;
        var before = strip.Held;
        strip.Place(RowsInLift, water * earth.DryDensity);
        return strip.Held - before;
    }

    /// <summary>How much of the weather the faces of a lift take part in.</summary>
    public void Shelter(int lift, double share)
    {
        for (var r = 0; r < RowsInLift; r++)
        {
            strip.Shelter(lift * RowsInLift + r, lift == 0 && r == 0 ? share * foot : share);
        }
    }

    public void Take(BayRun other)
    {
        strip.Take(other.strip);
        other.laid.CopyTo(laid, 0);
    }

    public void Advance(double from, double to, DayPatterns days) => strip.Advance(from, to, days);

    /// <summary>Mean water content of a lift.</summary>
    public double Water(int lift) => strip.Mean(lift * RowsInLift, (lift + 1) * RowsInLift) / earth.DryDensity;

    /// <summary>Water content of the thin layer on top of the topmost lift.</summary>
    public double CrustWater => strip.Mean(strip.Rows - 1) / earth.DryDensity;

    /// <summary>Water content as deep as the skin goes, the wetter of the two faces, in the upper half of a lift.</summary>
    public double SkinWater(int lift)
    {
        var (row, last) = (lift * RowsInLift + 1, strip.Grid.Nodes - 1);
        double Layer(bool first)
        {
            double sum = 0, size = 0;
            for (var i = 0; i <= skinNode; i++)
            {
                var node = first ? i : last - i;
                var share = strip.Grid.NodeShares[node];
                sum += share * strip[row, node];
                size += share;
            }

            return sum / size;
        }

        return Math.Max(Layer(true), Layer(false)) / earth.DryDensity;
    }

    /// <summary>Strength over stress of the weakest band, with a further height of fresh cob on top and a load on the wall.</summary>
    /// <param name="more">m.</param>
    /// <param name="water">Of what comes on top.</param>
    /// <param name="lineLoad">N/m.</param>
    public double Safety(double more = 0, double water = 0, double lineLoad = 0)
    {
        var above = more * earth.WetDensity(water) * Gravity;
        var least = double.PositiveInfinity;
        for (var lift = Lifts - 1; lift >= 0; lift--)
        {
            for (var r = RowsInLift - 1; r >= 0; r--)
            {
                var row = lift * RowsInLift + r;
                var now = strip.Mean(row) / earth.DryDensity;
                above += strip.Grid.Heights[row] * earth.WetDensity(now) * Gravity;
                least = Math.Min(least, strength.Compressive(now) / (above + lineLoad / thickness[lift]));
            }
        }

        return least;
    }

    /// <summary>How near the topmost lift is to taking the next, 1 and more when it may: the stack carries it and the faces of the topmost lift have a skin.</summary>
    public double Ready(double next, double water, double safety, double skin) =>
        Math.Min(strength.Compressive(SkinWater(Lifts - 1)) / (2 * skin), Safety(next, water) / safety);

}
