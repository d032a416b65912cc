using Clomwright.Numerics.Frames;

namespace Clomwright.Analysis.Roof;

/// <summary>A reciprocal frame put to the general frame solver: poles as beams, ball joints at the feet, short stiff pegs that pass force and no moment at the touching points.</summary>
/// <remarks>It shares nothing with <see cref="SpatialEquilibrium"/> but the geometry. Being determinate, both must give the same forces whatever the stiffness.</remarks>
public static class SpatialFrame
{
    // Stiffer than any pole, but not so stiff that the factors lose digits.
    private const double PegDiameter = 0.3;

    /// <summary>Forces under loads along the poles, in the order of carrying; null when the solver finds it loose.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="loads">One for each pole, in the order of carrying.</param>
    /// <param name="elasticity">Of the poles.</param>
    public static SpatialForces? Solve(ReciprocalGeometry frame, IReadOnlyList<PoleLoad> loads, Elasticity elasticity)
    {
        var n = frame.Count;
        var crossings = Crossing.Of(frame);
        var nodes = new List<FrameNode>();
        var members = new List<FrameMember>();
        var onFrame = new List<FrameLoad>();
        for (var i = 0; i < n; i++)
        {
            var pole = frame.Poles[i];
            double[] places = [0, DistanceAlong(pole, crossings[(i + n - 1) % n].Contact), DistanceAlong(pole, crossings[i].Contact)];
            for (var j = 0; j < 3; j++)
            {
                nodes.Add(new FrameNode(pole.AxisAt(places[j]), j == 0 ? Freedom.Displacements : Freedom.None));
            }

            for (var j = 0; j < 2; j++)
            {
                var section = FrameSection.Round(pole.DiameterAt((places[j] + places[j + 1]) / 2));
                members.Add(new FrameMember(Foot(i) + j, Foot(i) + j + 1, section, elasticity));
            }

            for (var k = 0; k < loads[i].Stations.Count; k++)
            {
                Put(loads[i], k, pole, places, i, onFrame);
            }
        }

        var peg = FrameSection.Round(PegDiameter);
        for (var i = 0; i < n; i++)
        {
            nodes.Add(new FrameNode(crossings[i].Contact));
            members.Add(new FrameMember(Foot(i) + 2, nodes.Count - 1, peg, elasticity));
            members.Add(new FrameMember(Foot((i + 1) % n) + 1, nodes.Count - 1, peg, elasticity) { EndReleased = Freedom.Rotations });
        }

        if (FrameStiffness.Of(new Frame([.. nodes], [.. members])) is not FrameOutcome.Stiff { Stiffness: var stiffness })
        {
            return null;
        }

        var solved = stiffness.Solve(onFrame);
        var crossing = new Vector3[n];
        for (var i = 0; i < n; i++)
        {
            // The peg of the lower pole pushes the touching point with minus what the point does to the peg.
            var m = solved.Members[members.Count - 2 * n + 2 * i + 1];
            crossing[i] = -(m.End.Force.X * m.X + m.End.Force.Y * m.Y + m.End.Force.Z * m.Z);
        }

        return new SpatialForces(crossing, [.. Enumerable.Range(0, n).Select(i => solved.Reactions[Foot(i)].Force)]);
    }

    /// <summary>Plan distance along the axis at which a touching point is seen square to it.</summary>
    private static double DistanceAlong(PoleGeometry pole, Vector3 point)
    {
        var axis = new Vector3(pole.Along.East, pole.Along.North, pole.Slope);
        return (point - pole.AxisAt(0)).Dot(axis) / axis.Dot(axis);
    }

    private static int Foot(int pole) => 3 * pole;

    /// <summary>The load of one piece and the force at its outer station. What lies on an overhang goes to the nearest node with its moment: short stubs as members would cost digits.</summary>
    private static void Put(PoleLoad load, int index, PoleGeometry pole, double[] places, int at, List<FrameLoad> onFrame)
    {
        var x = load.Stations;
        OnPole(x[index], load.Point(index));
        if (index + 1 == x.Count)
        {
            return;
        }

        var (w1, w2) = load.Piece(index);
        double from = x[index], to = x[index + 1], slope = (w2 - w1) / (to - from);
        for (var j = -1; j < 3; j++)
        {
            var a = Math.Max(from, j < 0 ? from : places[j]);
            var b = Math.Min(to, j == 2 ? to : places[j + 1]);
            if (b <= a)
            {
                continue;
            }

            double atA = w1 + slope * (a - from), atB = w1 + slope * (b - from);
            if (j is 0 or 1)
            {
                var length = places[j + 1] - places[j];
                var c = pole.PitchCosine;
                onFrame.Add(new FrameLoad.Spread(2 * at + j, new Vector3(0, 0, -atA * c), new Vector3(0, 0, -atB * c), (a - places[j]) / length, (b - places[j]) / length));
            }
            else
            {
                var force = (b - a) * (atA + atB) / 2;
                var moment = (b - a) * (atA * (2 * a + b) + atB * (a + 2 * b)) / 6;
                Beyond(force, moment);
            }
        }

        void OnPole(double place, double force)
        {
            if (force != 0 && (place < 0 || place > places[2]))
            {
                Beyond(force, force * place);
            }
            else if (force != 0)
            {
                var j = place < places[1] ? 0 : 1;
                onFrame.Add(new FrameLoad.Point(2 * at + j, (place - places[j]) / (places[j + 1] - places[j]), new Vector3(0, 0, -force)));
            }
        }

        void Beyond(double force, double momentAboutFoot)
        {
            // A downward force at plan distance d past a node turns the pole there by d x (0, 0, -force).
            var j = momentAboutFoot / force < places[1] ? 0 : 2;
            var turn = momentAboutFoot - force * places[j];
            onFrame.Add(new FrameLoad.OnNode(Foot(at) + j, new Vector3(0, 0, -force), new Vector3(-turn * pole.Along.North, turn * pole.Along.East, 0)));
        }
    }
}
