using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Moment and shear along one pole of a reciprocal frame, in plan terms: vertical shear in N and moment in N m, sagging positive.</summary>
/// <remarks>
/// Going inward from the eave: the plate lifts with A at 0, the neighbour before presses with P_near at a, the neighbour after lifts with P_far at b.
/// The shear and axial force across and along the sloping axis are V cos(beta) and -V sin(beta).
/// </remarks>
public sealed class PoleDiagram
{
    private readonly Sequence<double> stations;
    private readonly double[] before;
    private readonly double[] after;
    private readonly double[] moment;
    private readonly PoleLoad load;

    private PoleDiagram(PoleGeometry pole, PoleLoad load, double[] before, double[] after, double[] moment)
    {
        Pole = pole;
        this.load = load;
        stations = load.Stations;
        this.before = before;
        this.after = after;
        this.moment = moment;
    }

    /// <summary>The pole.</summary>
    public PoleGeometry Pole { get; }

    /// <summary>Plan distances of the stations, m.</summary>
    public Sequence<double> Stations => stations;

    /// <summary>Vertical shear just outside each station, N.</summary>
    public IReadOnlyList<double> ShearBefore => before;

    /// <summary>Vertical shear just inside each station, N.</summary>
    public IReadOnlyList<double> ShearAfter => after;

    /// <summary>Moment at each station, N m.</summary>
    public IReadOnlyList<double> Moment => moment;

    /// <summary>Moment over the plate; negative from an overhang.</summary>
    public double MomentAtPlate => moment[IndexOf(0)];

    /// <summary>Moment at the near crossing, where the notch for the neighbour is cut.</summary>
    public double MomentAtNear => moment[IndexOf(Pole.Near)];

    /// <summary>Shear just outside the plate: what hangs over it.</summary>
    public double ShearOfOverhang => before[IndexOf(0)];

    /// <summary>Moment where the seat on the plate is deepest, at the bond beam's lower edge; over the plate without one.</summary>
    public double MomentAtHeel => MomentAt(Pole.Heel.At);

    /// <summary>Shear just inside the near crossing: about minus the crossing force.</summary>
    public double ShearOnStub => after[IndexOf(Pole.Near)];

    /// <summary>Largest shear anywhere, without sign.</summary>
    public double GreatestShear
    {
        get
        {
            double most = 0;
            for (var j = 0; j < after.Length; j++)
            {
                most = Math.Max(most, Math.Max(Math.Abs(before[j]), Math.Abs(after[j])));
            }

            return most;
        }
    }

    /// <summary>Station with the largest moment, without sign.</summary>
    public int GreatestMomentAt => Enumerable.Range(0, moment.Length).MaxBy(j => Math.Abs(moment[j]));

    /// <summary>The diagram of one pole; its load must have stations at the plate and both crossings.</summary>
    public static PoleDiagram Of(PoleGeometry pole, PoleLoad load, double plate, double near, double far)
    {
        var x = load.Stations.AsSpan();
        var before = new double[x.Length];
        var after = new double[x.Length];
        var moment = new double[x.Length];
        double v = 0, m = 0;
        for (var j = 0; j < x.Length; j++)
        {
            before[j] = v;
            moment[j] = m;
            v -= load.Point(j);
            v += x[j] == 0 ? plate : 0;
            v -= x[j] == pole.Near ? near : 0;
            v += x[j] == pole.Far ? far : 0;
            after[j] = v;
            if (j + 1 < x.Length)
            {
                var h = x[j + 1] - x[j];
                var (w1, w2) = load.Piece(j);
                m += v * h - h * h * (2 * w1 + w2) / 6;
                v -= h * (w1 + w2) / 2;
            }
        }

        return new PoleDiagram(pole, load, before, after, moment);
    }

    /// <summary>y: how far the near crossing would sink if foot and far crossing stood still, m, by virtual work over the sloping length.</summary>
    /// <param name="stiffness">E I at a plan distance, N m2. The shortening by shear and axial force is left out.</param>
    public double SinkAtNear(Func<double, double> stiffness)
    {
        double a = Pole.Near, b = Pole.Far, sum = 0;
        for (var j = 0; j + 1 < stations.Count; j++)
        {
            if (stations[j] >= 0 && stations[j + 1] <= b)
            {
                var h = stations[j + 1] - stations[j];
                for (var g = 0; g < 3; g++)
                {
                    var t = Gauss[g];
                    var x = stations[j] + t * h;
                    var unit = x <= a ? x * (b - a) / b : a * (b - x) / b;
                    sum += Weight[g] * h * MomentWithin(j, t) * unit / stiffness(x);
                }
            }
        }

        return sum / Pole.PitchCosine;
    }

    /// <summary>Moment at any distance; nothing beyond both ends.</summary>
    public double MomentAt(double distance)
    {
        for (var j = 0; j + 1 < stations.Count; j++)
        {
            if (stations[j] <= distance && distance <= stations[j + 1] && stations[j + 1] > stations[j])
            {
                return MomentWithin(j, (distance - stations[j]) / (stations[j + 1] - stations[j]));
            }
        }

        return 0;
    }

    /// <summary>Place of a station.</summary>
    public int IndexOf(double distance) => stations.AsSpan().IndexOf(distance);

    private double MomentWithin(int piece, double share)
    {
        var h = stations[piece + 1] - stations[piece];
        var (w1, w2) = load.Piece(piece);
        var x = share * h;
        return moment[piece] + after[piece] * x - w1 * x * x / 2 - (w2 - w1) / h * x * x * x / 6;
    }

    // Three-point Gauss rule on 0..1: exact for the fourth-degree product of a cubic moment and a linear one.
    private static readonly double[] Gauss = [0.5 - Math.Sqrt(0.15), 0.5, 0.5 + Math.Sqrt(0.15)];
    private static readonly double[] Weight = [5.0 / 18, 8.0 / 18, 5.0 / 18];
}
