using System.Collections.Immutable;

namespace Clomwright.Numerics.Frames;

/// <summary>What a frame does under its loads.</summary>
/// <param name="Movements">Displacement and turn of each node, global axes.</param>
/// <param name="Reactions">Of the supports on each node, global axes; zero where nothing is held.</param>
/// <param name="Members">Forces in each member.</param>
/// <param name="Unbalanced">Largest force or moment left over at any node that is free to move: the rounding error, N or N m.</param>
public sealed record FrameSolution(ImmutableArray<Wrench> Movements, ImmutableArray<Wrench> Reactions, ImmutableArray<MemberForces> Members, double Unbalanced);

/// <summary>Forces in one member.</summary>
/// <param name="X">Its own x axis, from its first end to its second.</param>
/// <param name="Y">Its own y axis.</param>
/// <param name="Z">Its own z axis.</param>
/// <param name="Length">Between its ends, m.</param>
/// <param name="Start">Of the node on its first end, own axes.</param>
/// <param name="End">Of the node on its second end, own axes.</param>
/// <param name="Loads">The loads on it.</param>
public sealed record MemberForces(Vector3 X, Vector3 Y, Vector3 Z, double Length, Wrench Start, Wrench End, ImmutableArray<FrameLoad> Loads)
{
    /// <summary>What the part beyond a section does to the part before it, own axes: axial tension positive, and shears and moments as they act on the positive face.</summary>
    /// <param name="share">Place of the section as a share of the length; a point load at the place itself is counted as before it.</param>
    public Wrench At(double share)
    {
        var x = share * Length;
        var force = Start.Force;
        var moment = Start.Moment + new Vector3(-x, 0, 0).Cross(Start.Force);
        foreach (var load in Loads)
        {
            switch (load)
            {
                case FrameLoad.Point p when p.At <= share:
                    Add(p.At, p.Force);
                    break;
                case FrameLoad.Spread s when s.From < share && s.To > s.From:
                    var to = Math.Min(s.To, share);
                    var run = (to - s.From) * Length;
                    var atTo = s.AtFrom + (to - s.From) / (s.To - s.From) * (s.AtTo - s.AtFrom);
                    // Two Gauss points carry the force and the first moment of an evenly varying load exactly.
                    for (var g = -1; g <= 1; g += 2)
                    {
                        var t = 0.5 + g * Math.Sqrt(3) / 6;
                        Add(s.From + t * (to - s.From), run / 2 * (s.AtFrom + t * (atTo - s.AtFrom)));
                    }

                    break;
            }
        }

        return new Wrench(-force, -moment);

        void Add(double at, Vector3 global)
        {
            var own = new Vector3(global.Dot(X), global.Dot(Y), global.Dot(Z));
            force += own;
            moment += new Vector3(at * Length - x, 0, 0).Cross(own);
        }
    }
}
