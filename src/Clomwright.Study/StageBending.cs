using Clomwright.Analysis;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Study.Demands;

namespace Clomwright.Study;

/// <summary>Bending of the poles of a roof in one state of load, held against their timber under a load of that duration.</summary>
/// <param name="Stress">Largest bending stress of any pole, at the net section where it is notched, Pa; against timber of EN 1995 with the partial factor of the state.</param>
/// <param name="Strength">Least bending strength of any section that is checked, brought to the duration of the state, Pa.</param>
public sealed record StageBending(double Stress, double Strength)
{
    /// <summary>Share of the strength that is used; more than 1 falls short.</summary>
    public double Use => Stress / Strength;

    /// <summary>A state of load in words.</summary>
    public static Message Named(string stage) => Stages.Named(stage);

    /// <summary>A state of a reciprocal frame, or why it is not held against its timber.</summary>
    public static Known<StageBending> Of(ReciprocalResult frame, string stage)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return Of(frame.Stage(stage), stage, [.. frame.Checks.Where(c => c.Key is "pole-bending-crossing" or "pole-bending-plate")], frame.Combined);
    }

    /// <summary>A state of a plain roof, or why it is not held against its timber.</summary>
    public static Known<StageBending> Of(PlainResult plain, string stage)
    {
        ArgumentNullException.ThrowIfNull(plain);
        return Of(plain.Stage(stage), stage, [.. plain.Checks.Where(c => c.Key == "rafter-bending")], plain.Combined);
    }

    private static Known<StageBending> Of(Known<RoofForces> forces, string stage, CheckedMember[] held, CombinedStates combined) =>
        forces.Value is not { } known ? forces.NotChecked!
        : Array.Find(held, c => !c.Check.Is) is { } unknown ? unknown.Check.NotChecked!
        : held.Length == 0 || combined.States.Count == 0 ? new Message("analysis.roof.no-timber")
        : new StageBending(
            StageStates.Factor(stage, Stages.System(combined)) * known.BendingStress.Max(),
            held.Min(c => Stages.AtOnce(c.Check.Value!, combined)) * Stages.Factor(stage, Stages.System(combined)));
}
