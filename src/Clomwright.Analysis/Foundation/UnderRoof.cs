using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Roof;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Foundation;

/// <summary>The states in which a roof presses on the wall.</summary>
internal static class UnderRoof
{
    public static IEnumerable<FoundationStage> Of(HouseGeometry geometry, TakeDown loads, RoofResult roof)
    {
        var raised = Raised(geometry, roof.Plain.Value);
        foreach (var key in (string[])["soilWet", "soilWetSnow"])
        {
            yield return new FoundationStage(key, Stage(loads, roof, key, raised));
        }

        // Wall and stem are taken at their weight, so only combinations that leave them so may be read.
        var states = roof.Combined.States.Where(s => s.Combination.Form == LoadForm.AllowableStress && s.Forces.PlateReaction.Count > 0).ToList();
        if (states.Count == 0)
        {
            yield break;
        }

        CombinedState[] hardest = [states.MaxBy(s => s.Forces.PlateReaction.Max())!, states.MaxBy(s => s.Forces.PlateReaction.Sum())!];
        foreach (var state in hardest.Distinct())
        {
            yield return new FoundationStage("combined", loads.Of(state.Forces.PlateReaction, raised)) { Combination = state.Combination.Key, Sense = state.Sense };
        }
    }

    private static Known<StripLoads> Stage(TakeDown loads, RoofResult roof, string stage, double[]? raised)
    {
        var forces = roof.Reciprocal.Value?.Stage(stage) ?? roof.Plain.Value?.Stage(stage);
        return forces is not { } known ? (roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : roof.Plain.NotChecked!)
            : known.Value is { } there ? loads.Of(there.PlateReaction, raised)
            : known.NotChecked!;
    }

    /// <summary>The wall under the upper ends of a shed's rafters, raised to reach them and built of cob as thick as the wall top: the heaviest that it may be, m at each landing; null for other roofs.</summary>
    public static double[]? Raised(HouseGeometry geometry, PlainResult? plain)
    {
        if (plain is not { Kind: "shed" })
        {
            return null;
        }

        var landings = geometry.Landings.Where(l => !l.Secondary).ToArray();
        var raised = new double[landings.Length];
        foreach (var rafter in plain.Places)
        {
            var end = rafter.Foot + rafter.Far * rafter.Along;
            var nearest = Enumerable.Range(0, landings.Length).MinBy(i => (landings[i].Point - end).Norm);
            raised[nearest] = Math.Max(raised[nearest], rafter.Slope * rafter.Far);
        }

        return raised;
    }
}
