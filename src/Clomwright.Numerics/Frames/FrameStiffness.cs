using System.Collections.Immutable;

namespace Clomwright.Numerics.Frames;

/// <summary>A frame with its stiffness factorised: any number of loads can be put on it.</summary>
public sealed class FrameStiffness
{
    private readonly MemberElement[] elements;
    private readonly double[][,] turns;
    private readonly int[] unknown;
    private readonly Profile profile;
    private readonly int size;

    private FrameStiffness(Frame frame, MemberElement[] elements, double[][,] turns, int[] unknown, Profile profile, int size)
    {
        Frame = frame;
        this.elements = elements;
        this.turns = turns;
        this.unknown = unknown;
        this.profile = profile;
        this.size = size;
    }

    /// <summary>The frame.</summary>
    public Frame Frame { get; }

    /// <summary>Assembles and factorises.</summary>
    public static FrameOutcome Of(Frame frame)
    {
        var elements = new MemberElement[frame.Members.Length];
        var turns = new double[elements.Length][,];
        for (var m = 0; m < elements.Length; m++)
        {
            var member = frame.Members[m];
            if (MemberElement.Of(member, frame.Nodes[member.Start].Position, frame.Nodes[member.End].Position) is not { } element)
            {
                return new FrameOutcome.BadMember(m);
            }

            elements[m] = element;
            turns[m] = element.Turn();
        }

        var order = Numbering.Of(frame.Nodes.Length, [.. frame.Members.Select(m => (m.Start, m.End))]);
        var unknown = new int[6 * frame.Nodes.Length];
        var owner = new List<int>();
        foreach (var node in order)
        {
            for (var d = 0; d < 6; d++)
            {
                var held = ((int)frame.Nodes[node].Held >> d) % 2 == 1;
                unknown[6 * node + d] = held ? -1 : owner.Count;
                if (!held)
                {
                    owner.Add(6 * node + d);
                }
            }
        }

        var profile = Assemble(frame, elements, turns, unknown, owner.Count);
        var loose = profile.Factorise(1e-13);
        return loose < 0
            ? new FrameOutcome.Stiff(new FrameStiffness(frame, elements, turns, unknown, profile, owner.Count))
            : new FrameOutcome.Mechanism(owner[loose] / 6, (Freedom)(1 << (owner[loose] % 6)));
    }

    /// <summary>Movements, reactions and end forces under loads.</summary>
    public FrameSolution Solve(params IReadOnlyList<FrameLoad> loads)
    {
        var ends = new double[elements.Length][];
        for (var m = 0; m < ends.Length; m++)
        {
            ends[m] = new double[12];
        }

        var onNodes = new double[unknown.Length];
        foreach (var load in loads)
        {
            switch (load)
            {
                case FrameLoad.OnNode n:
                    double[] six = [n.Force.X, n.Force.Y, n.Force.Z, n.Moment.X, n.Moment.Y, n.Moment.Z];
                    for (var d = 0; d < 6; d++)
                    {
                        onNodes[6 * n.Node + d] += six[d];
                    }

                    break;
                case FrameLoad.Spread s:
                    elements[s.Member].AddSpread(s, ends[s.Member]);
                    break;
                case FrameLoad.Point p:
                    elements[p.Member].AddPoint(p.At, p.Force, ends[p.Member]);
                    break;
            }
        }

        for (var m = 0; m < ends.Length; m++)
        {
            elements[m].Release(ends[m]);
        }

        // One step of refinement with residuals from the members themselves takes the rounding of the factors out.
        var moved = new double[unknown.Length];
        for (var pass = 0; pass < 2; pass++)
        {
            var balance = Unbalanced(moved, onNodes, ends);
            var right = new double[size];
            for (var d = 0; d < unknown.Length; d++)
            {
                if (unknown[d] >= 0)
                {
                    right[unknown[d]] = balance[d];
                }
            }

            profile.Solve(right);
            for (var d = 0; d < unknown.Length; d++)
            {
                moved[d] += unknown[d] >= 0 ? right[unknown[d]] : 0;
            }
        }

        return Result(moved, onNodes, ends, loads);
    }

    private FrameSolution Result(double[] moved, double[] onNodes, double[][] ends, IReadOnlyList<FrameLoad> loads)
    {
        var left = Unbalanced(moved, onNodes, ends);
        double worst = 0;
        for (var d = 0; d < unknown.Length; d++)
        {
            if (unknown[d] >= 0)
            {
                worst = Math.Max(worst, Math.Abs(left[d]));
                left[d] = 0;
            }
        }

        var members = ImmutableArray.CreateBuilder<MemberForces>(elements.Length);
        for (var m = 0; m < elements.Length; m++)
        {
            var e = EndForces(m, moved, ends[m]);
            members.Add(new MemberForces(elements[m].X, elements[m].Y, elements[m].Z, elements[m].Length, Six(e, 0), Six(e, 6), [.. loads.Where(l => On(l, m))]));
        }

        var nodes = Frame.Nodes.Length;
        return new FrameSolution(
            [.. Enumerable.Range(0, nodes).Select(n => Six(moved, 6 * n))], [.. Enumerable.Range(0, nodes).Select(n => Six(left, 6 * n) is var r ? new Wrench(-r.Force, -r.Moment) : default)],
            members.MoveToImmutable(), worst);
    }

    private static bool On(FrameLoad load, int member) => load is FrameLoad.Spread s ? s.Member == member : load is FrameLoad.Point p && p.Member == member;

    private static Wrench Six(double[] v, int at) => new(new Vector3(v[at], v[at + 1], v[at + 2]), new Vector3(v[at + 3], v[at + 4], v[at + 5]));

    /// <summary>Forces of the nodes on a member's ends, own axes: stiffness times movement less the loads' own end forces.</summary>
    private double[] EndForces(int m, double[] moved, double[] loads)
    {
        var member = Frame.Members[m];
        var own = new double[12];
        for (var r = 0; r < 12; r++)
        {
            for (var c = 0; c < 12; c++)
            {
                own[r] += turns[m][r, c] * moved[6 * (c < 6 ? member.Start : member.End) + c % 6];
            }
        }

        var ends = new double[12];
        for (var r = 0; r < 12; r++)
        {
            ends[r] = -loads[r];
            for (var c = 0; c < 12; c++)
            {
                ends[r] += elements[m].Condensed[r, c] * own[c];
            }
        }

        return ends;
    }

    private double[] Unbalanced(double[] moved, double[] onNodes, double[][] ends)
    {
        var left = (double[])onNodes.Clone();
        for (var m = 0; m < elements.Length; m++)
        {
            var member = Frame.Members[m];
            var e = EndForces(m, moved, ends[m]);
            for (var c = 0; c < 12; c++)
            {
                for (var r = 0; r < 12; r++)
                {
                    left[6 * (c < 6 ? member.Start : member.End) + c % 6] -= turns[m][r, c] * e[r];
                }
            }
        }

        return left;
    }

    private static Profile Assemble(Frame frame, MemberElement[] elements, double[][,] turns, int[] unknown, int size)
    {
        var first = Enumerable.Range(0, size).ToArray();
        var places = new int[elements.Length][];
        for (var m = 0; m < elements.Length; m++)
        {
            var member = frame.Members[m];
            places[m] = [.. Enumerable.Range(0, 12).Select(d => unknown[6 * (d < 6 ? member.Start : member.End) + d % 6])];
            var lowest = places[m].Where(p => p >= 0).DefaultIfEmpty(int.MaxValue).Min();
            foreach (var p in places[m].Where(p => p >= 0))
            {
                first[p] = Math.Min(first[p], lowest);
            }
        }

        var profile = new Profile(first);
        for (var m = 0; m < elements.Length; m++)
        {
            var k = Turned(elements[m].Condensed, turns[m]);
            for (var r = 0; r < 12; r++)
            {
                for (var c = r; c < 12; c++)
                {
                    if (places[m][r] >= 0 && places[m][c] >= 0)
                    {
                        profile.Add(places[m][r], places[m][c], k[r, c]);
                    }
                }
            }
        }

        return profile;
    }

    private static double[,] Turned(double[,] k, double[,] t)
    {
        var kt = new double[12, 12];
        var result = new double[12, 12];
        for (var r = 0; r < 12; r++)
        {
            for (var c = 0; c < 12; c++)
            {
                for (var i = 0; i < 12; i++)
                {
                    kt[r, c] += k[r, i] * t[i, c];
                }
            }
        }

        for (var r = 0; r < 12; r++)
        {
            for (var c = 0; c < 12; c++)
            {
                for (var i = 0; i < 12; i++)
                {
                    result[r, c] += t[i, r] * kt[i, c];
                }
            }
        }

        return result;
    }
}
