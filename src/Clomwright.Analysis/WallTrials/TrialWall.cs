using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.WallTrials;

/// <summary>The body of the wall with what of it stands and how stiff that is, solved on a foot that lets go, and read as the finished wall is.</summary>
internal sealed class TrialWall(WallBody body, ElasticBody elastic, BasisLoads basis)
{
    private readonly double patch = body.Numbers["wall-stress-patch"];

    public WallBody Body => body;

    public BasisLoads Basis => basis;

    public HouseGeometry Geometry => body.Geometry;

    /// <summary>The lift that a row of cells belongs to: the one in which its middle lies; -1 for the bond beam.</summary>
    public int LiftOf(int row)
    {
        var middle = (body.Grid.Z[row] + body.Grid.Z[row + 1]) / 2;
        var lifts = Geometry.Lifts;
        return row >= body.CobRows ? -1 : Enumerable.Range(0, lifts.Count).FirstOrDefault(n => middle < lifts[n].Top.Metres, lifts.Count - 1);
    }

    /// <summary>The bay of a column of cells.</summary>
    public static int BayOf(SolidGrid grid, Sequence<Span> bays, double ring, int column)
    {
        var s = (grid.S[column] + grid.S[column + 1]) / 2;
        for (var b = 0; b < bays.Count; b++)
        {
            var along = (s - bays[b].From) % ring;
            if ((along < 0 ? along + ring : along) < bays[b].Width)
            {
                return b;
            }
        }

        return Enumerable.Range(0, bays.Count).MinBy(b => Math.Abs(Math.IEEERemainder(s - bays[b].Middle, ring)));
    }

    /// <summary>A model of the same grid on a foot that pushes only.</summary>
    public SolidModel Model(SolidCells cells, bool pushesOnly = true)
    {
        var bed = body.Numbers["wall-base-stiffness"];
        return body.Model with { Cells = cells, Supports = SolidSupports.Bed(body.Grid, cells, bed, bed / 2, pushesOnly) };
    }

    public WallSheet Sheet(SolidModel model) => new(body, patch, model);

    /// <summary>Solves; null where some of it would hang in the air.</summary>
    public Solved? Solve(SolidModel model, IReadOnlyList<NodalLoad> loads)
    {
        elastic.Become(model);
        if (elastic.LooseColumn is not null)
        {
            return null;
        }

        SolidAnswer[] answers = [.. elastic.Solve(loads)];
        return new Solved(answers, [.. elastic.CellStresses(answers)], model.Supports.Springs.Count(s => s.PushesOnly));
    }

    /// <summary>The sum of unit loads that a case is.</summary>
    public NodalLoad Load(WallCase one)
    {
        var sum = Loading.None(body.Grid);
        for (var i = 0; i < one.Coefficients.Length; i++)
        {
            sum = one.Coefficients[i] != 0 ? sum + one.Coefficients[i] * basis.All[i] : sum;
        }

        return sum;
    }

    /// <summary>What was solved.</summary>
    internal sealed record Solved(SolidAnswer[] Answers, CellStress[] Stresses, int Feet)
    {
        public bool Stands => Answers.All(a => a.IsInEquilibrium);

        /// <summary>Most of the foot that lets go in any of the loads.</summary>
        public double Lifted => Feet > 0 ? Answers.Max(a => a.Lifted.Length) / (double)Feet : 0;
    }
}
