using Clomwright.Evidence;
using Clomwright.Geometry.TakeOff;

namespace Clomwright.Geometry;

/// <summary>Takes off what a house needs, in batches of the crew's own measuring.</summary>
/// <remarks>
/// The crew lays some trial batches and writes down how much wall they raised; that fixes how much placed cob one batch makes, whatever the
/// soil, the bucket and the hands. Everything else is volumes as laid over that. Without a trial nothing is guessed.
/// </remarks>
public static class Quantities
{
    /// <summary>The quantities of a house.</summary>
    public static HouseQuantities Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var trial = BatchTrial.Of(geometry);
        var lifts = trial is null
            ? geometry.Lifts.Select(l => new LiftQuantities(l.Index, null, null, null)).ToSequence()
            : geometry.Lifts.Select(l => trial.Lift(l).Value).ToSequence();
        var whole = trial?.Whole();
        var orders = OrderLines.Of(geometry, whole?.Value);
        return new HouseQuantities
        {
            VolumePerBatch = trial?.PerBatch.Value,
            Batches = whole?.Value,
            Lifts = lifts,
            Orders = orders.Lines,
            Assumptions = trial is null ? orders.Assumptions : [Wastes.Cob, .. orders.Assumptions],
            Calculations = trial is null ? [] : [trial.PerBatch.How, whole!.How, .. geometry.Lifts.Where(l => l.LaidVolume > 0).Select(l => trial.Lift(l).How)],
        };
    }
}
