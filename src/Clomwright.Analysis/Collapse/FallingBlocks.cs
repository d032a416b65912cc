using Clomwright.Geometry;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.RigidBlocks;

namespace Clomwright.Analysis.Collapse;

/// <summary>How the blocks move as the wall falls, and the work that this takes and gives for each metre that the fastest block moves.</summary>
internal sealed class FallingBlocks
{
    private readonly HouseGeometry geometry;
    private readonly WallBlocks blocks;
    private readonly BlockSheet sheet;
    private readonly LimitLoadAnswer answer;
    private readonly double fastest;

    public FallingBlocks(HouseGeometry geometry, WallBlocks blocks, BlockSheet sheet, LimitLoadAnswer answer)
    {
        (this.geometry, this.blocks, this.sheet, this.answer) = (geometry, blocks, sheet, answer);
        fastest = Columns.Max(column => Speed(column).Norm);
    }

    /// <summary>Work that raises weight, N m for each metre.</summary>
    public double Raised => -Columns.Sum(column => Work(sheet.Blocks[column]!.Dead, column)) / fastest;

    /// <summary>Work that pulls held joints apart, N m for each metre.</summary>
    public double Parted
    {
        get
        {
            var sum = 0.0;
            foreach (var joint in sheet.Joints.Where(j => j.Strength.TensionPa > 0))
            {
                var share = joint.Strength.TensionPa * joint.Area / joint.Points.Count;
                sum += joint.Points.Sum(p => share * joint.Normal.Dot(At(joint.First, p) - (joint.Second is { } other ? At(other, p) : Vector3.Zero)));
            }

            return sum / fastest;
        }
    }

    /// <summary>Work of a push as large as the weight, N m for each metre.</summary>
    public double Pushed => Columns.Sum(column => Work(sheet.Blocks[column]!.Live, column)) / fastest;

    /// <summary>Every block.</summary>
    public IEnumerable<MovingBlock> Moving
    {
        get
        {
            foreach (var column in Columns)
            {
                var block = blocks.Blocks[column]!;
                var (speed, station) = (1 / fastest * Speed(column), (block.From + block.To) / 2);
                var (normal, tangent) = (geometry.Curve.Normal(station), geometry.Curve.Tangent(station));
                yield return new MovingBlock(
                    block, speed.X * normal.East + speed.Y * normal.North, speed.X * tangent.East + speed.Y * tangent.North, speed.Z, [.. Corners(column, block)]);
            }
        }
    }

    private IEnumerable<int> Columns => Enumerable.Range(0, blocks.Blocks.Count).Where(column => blocks.Blocks[column] is not null);

    private IEnumerable<MovingCorner> Corners(int column, WallBlock block)
    {
        foreach (var height in (double[])[block.Bottom, block.Top])
        {
            var (inside, outside) = blocks.Faces(block, height);
            foreach (var station in (double[])[block.From, block.To])
            {
                foreach (var offset in (double[])[inside, outside])
                {
                    var speed = 1 / fastest * At(column, blocks.Point(station, offset, height));
                    yield return new MovingCorner(station, offset, height, speed.X, speed.Y, speed.Z);
                }
            }
        }
    }

    private Vector3 Speed(int column) => new(answer.Rates[6 * column], answer.Rates[6 * column + 1], answer.Rates[6 * column + 2]);

    private Vector3 Turn(int column) => new(answer.Rates[6 * column + 3], answer.Rates[6 * column + 4], answer.Rates[6 * column + 5]);

    private Vector3 At(int column, Vector3 point) => Speed(column) + Turn(column).Cross(point - blocks.Centre(column));

    private double Work(Wrench load, int column) => load.Force.Dot(Speed(column)) + load.Moment.Dot(Turn(column));
}
