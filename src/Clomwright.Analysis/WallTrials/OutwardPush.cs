using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.WallTrials;

/// <summary>The outward push of a roof: rafters that lean on each other, or a reciprocal frame whose crossings slip. Every pole is taken to push as hard as the hardest in any state.</summary>
internal sealed class OutwardPush
{
    private OutwardPush(bool slipping, double outward, double round, double turns, Calculated<double> holds) => (Slipping, Outward, Round, Turns, Holds) = (slipping, outward, round, turns, holds);

    public bool Slipping { get; }

    /// <summary>Of one pole, N.</summary>
    public double Outward { get; }

    /// <summary>Round the ring, N.</summary>
    public double Round { get; }

    /// <summary>What turns a pole's own stretch about its outside edge, N m.</summary>
    public double Turns { get; }

    /// <summary>What holds it: its dry weight and no roof, N m; the steps of both.</summary>
    public Calculated<double> Holds { get; }

    /// <summary>The push of a roof; or why there is none.</summary>
    public static Known<OutwardPush> Of(HouseGeometry geometry, RoofResult roof, double dryCob)
    {
        var poles = geometry.Landings.Count(l => !l.Secondary);
        if (poles == 0)
        {
            return new Message("analysis.roof.none");
        }

        if (roof.Reciprocal.Value is { } frame)
        {
            return frame.Joints.Value is { } joints
                ? Made(geometry, true, joints.OutwardWithoutFriction, Math.Sqrt(Math.Max(0, joints.ThrustWithoutFriction * joints.ThrustWithoutFriction - joints.OutwardWithoutFriction * joints.OutwardWithoutFriction)), poles, dryCob)
                : frame.Joints.NotChecked!;
        }

        return roof.Plain.Value is { } plain
            ? plain.Thrust > 0 ? Made(geometry, false, plain.Thrust, 0, poles, dryCob) : new Message("analysis.trials.no-push")
            : roof.Plain.NotChecked!;
    }

    /// <summary>The push at every landing.</summary>
    /// <param name="wall">On which.</param>
    /// <param name="sense">Which way round the ring: 1 clockwise, -1 against.</param>
    public NodalLoad On(TrialWall wall, double sense)
    {
        var landings = wall.Geometry.Landings.Where(l => !l.Secondary).ToArray();
        var sum = Loading.None(wall.Body.Grid);
        for (var i = 0; i < landings.Length; i++)
        {
            var out_ = wall.Geometry.Curve.Normal(landings[i].Station);
            sum += wall.Basis.At(i, new Vector3(Outward * out_.East + sense * Round * out_.North, Outward * out_.North - sense * Round * out_.East, 0));
        }

        return sum;
    }

    private static OutwardPush Made(HouseGeometry geometry, bool slipping, double outward, double round, int poles, double dryCob)
    {
        var wall = geometry.Wall;
        double low = wall.Base.Metres, top = wall.Top.Metres;
        var mechanics = Sources.Get("mechanics");
        var sheet = new Worksheet("outward-push");
        var h = Worksheet.Computed("h", "wall-height", top - low, Dimension.Length);
        var turns = sheet.Step("push-turns", "M", "H*h", outward * (top - low), Dimension.Moment, mechanics, Worksheet.Computed("H", slipping ? "push-slipping" : "push-thrust", outward, Dimension.Force), h);
        var share = sheet.Step(
            "push-share", "W", "rho*g*V/n_p", dryCob * geometry.Measures.NetVolume / poles, Dimension.Force, mechanics,
            Worksheet.Assumed("rho", "cob-density-dry", dryCob / UsUnits.Gravity, Dimension.Density, Sources.Get("cob-density-memory")), UsUnits.GravitySymbol,
            Worksheet.Computed("V", "wall-net", geometry.Measures.NetVolume, Dimension.Volume), Worksheet.Computed("n_p", "poles", poles, Dimension.Number));
        double Moment(double z) => (wall.OutsideOffset(z) * wall.OutsideOffset(z) - wall.InsideOffset(z) * wall.InsideOffset(z)) / 2;
        var middle = (low + top) / 2;
        var lever = wall.OutsideOffset(low) - (Moment(low) + 4 * Moment(middle) + Moment(top)) / (wall.ThicknessAt(low) + 4 * wall.ThicknessAt(middle) + wall.ThicknessAt(top));
        var holds = sheet.Step("push-holds", "M_R", "W*x_W", share.Value.Si * lever, Dimension.Moment, mechanics, share, Worksheet.Computed("x_W", "weight-from-outside-edge", lever, Dimension.Length));
        return new OutwardPush(slipping, outward, round, turns.Value.Si, new Calculated<double>(holds.Value.Si, sheet.Done));
    }
}
