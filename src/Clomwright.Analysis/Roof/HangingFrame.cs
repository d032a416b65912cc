using Clomwright.Numerics.Frames;

namespace Clomwright.Analysis.Roof;

/// <summary>A strapped frame after the loss of one pole: the pole that rested on it hangs in the strap from the pole after it, and the deck of the bays beside the gap holds what pulls within their planes.</summary>
/// <remarks>
/// The strap lies along the stub that is gone, from the far end of the pole before to the near crossing of the pole after. Of each newton that it pulls, the part along the pole stays in the pole and the part square to it in plan in the
/// deck of its bay; only what is then left upright lifts: <c>sin(beta) (1 - cos(omega))</c> for equal poles, which is little, the strap being nearly in the plane of the deck. Where a bay is taken as the flat through the pole and its
/// neighbour's seat it may be less: mu is the least of both poles both ways. The poles left are a frame of one pole fewer, with the strap as one of its crossings; the lost pole's load goes half to each of its neighbours.
/// What fixes the strap to the poles is not looked at.
/// </remarks>
internal sealed class HangingFrame
{
    private HangingFrame(int lost, double lift, double along, double tension, double[] crossing) => (Lost, Lift, Along, Tension, Crossing) = (lost, lift, along, tension, crossing);

    /// <summary>Place of the lost pole in the order of carrying.</summary>
    public int Lost { get; }

    /// <summary>mu: what each newton of strap lifts.</summary>
    public double Lift { get; }

    /// <summary>What each newton of strap asks of the deck of a bay beside the gap, along the bay: the harder of both.</summary>
    public double Along { get; }

    /// <summary>T: pull of the strap, N.</summary>
    public double Tension { get; }

    /// <summary>P at the far crossings of the poles left, from the one after the lost one on, N; the last hangs.</summary>
    public IReadOnlyList<double> Crossing { get; }

    /// <summary>The frame without one pole; null where the strap lies in or under the plane of a bay and lifts nothing.</summary>
    /// <param name="frame">Before the loss.</param>
    /// <param name="moment">M_i of each pole about its seat before the loss, in the order of carrying, N m.</param>
    /// <param name="lost">Place of the pole that is lost.</param>
    /// <param name="sudden">What everything is multiplied by.</param>
    public static HangingFrame? Of(ReciprocalGeometry frame, ReadOnlySpan<double> moment, int lost, double sudden)
    {
        var n = frame.Count;
        int before = (lost + n - 1) % n, after = (lost + 1) % n;
        var strap = Direction(frame.Poles[lost]).Unit();
        var (hangs, alongHanging) = Beside(frame.Poles[before], frame.Poles[(before + n - 1) % n], strap);
        var (holds, alongHolding) = Beside(frame.Poles[after], frame.Poles[(after + 1) % n], strap);
        var lift = Math.Min(hangs, holds);
        if (n < 4 || !(lift > 1e-9))
        {
            return null;
        }

        var left = n - 1;
        double[] near = new double[left], far = new double[left], load = new double[left];
        for (var k = 0; k < left; k++)
        {
            var i = (after + k) % n;
            near[k] = frame.Poles[i].Near;
            far[k] = frame.Poles[i].Far;
            load[k] = sudden * (moment[i] + (i == before || i == after ? moment[lost] / 2 : 0));
        }

        var crossing = CyclicEquilibrium.Forces(near, far, load);
        return new HangingFrame(lost, lift, Math.Max(alongHanging, alongHolding), crossing[^1] / lift, crossing);
    }

    /// <summary>What a unit of strap at a pole comes to: upright, pole and deck having taken their parts, and square to the pole in plan.</summary>
    private static (double Lift, double Square) Beside(PoleGeometry pole, PoleGeometry neighbour, Vector3 strap)
    {
        var own = Direction(pole);
        var normal = own.Cross(neighbour.AxisAt(0) - pole.AxisAt(0));
        var upright = strap.Z - pole.Slope * (own.X * strap.X + own.Y * strap.Y);
        return (Math.Min(upright, normal.Dot(strap) / normal.Z), Math.Abs(own.X * strap.Y - own.Y * strap.X));
    }

    private static Vector3 Direction(PoleGeometry pole) => new(pole.Along.East, pole.Along.North, pole.Slope);
}
