using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry.TakeOff;

/// <summary>The crew's trial: how much placed cob one batch makes, and what follows from it.</summary>
internal sealed record BatchTrial(HouseGeometry Geometry, Calculated<double> PerBatch)
{
    private static Source Own => Sources.Get("wall-geometry");

    private Symbol PerBatchSymbol => PerBatch.How.Steps[^1].Result;

    private static Symbol Waste => new("w", new Message("geometry.symbol.waste-cob"), Amount.Fraction(Wastes.Cob.Share()), Tag.Assumed, Wastes.Cob.Source);

    /// <summary>The trial of a house; null where the crew has not made one, or what is written of it cannot be.</summary>
    public static BatchTrial? Of(HouseGeometry geometry)
    {
        var batch = geometry.House.Mix.Batch;
        if (batch is null || batch.TrialBatches < 1 || batch.RingLength.Nanometres <= 0 || batch.Raised.Nanometres <= 0)
        {
            return null;
        }

        var started = Math.Max(batch.StartedAt.Metres, geometry.Wall.Base.Metres);
        var ring = AsLaid(geometry, started, started + batch.Raised.Metres);
        return ring > 0 && double.IsFinite(ring) ? new BatchTrial(geometry, VolumePerBatch(geometry, batch, ring)) : null;
    }

    /// <summary>Batches for the whole wall.</summary>
    public Calculated<double> Whole()
    {
        var laid = Geometry.Lifts.Sum(l => l.LaidVolume);
        var batches = laid * (1 + Wastes.Cob.Share()) / PerBatch.Value;
        var step = new Step(
            "batches", "V_laid*(1+w)/V_b", [Laid(laid), Waste, PerBatchSymbol],
            new Symbol("N", new Message("geometry.symbol.batches"), Amount.Number(batches), Tag.Computed), Own);
        return new Calculated<double>(batches, new Calculation("batches", new Message("geometry.calculation.batches"), [step]));
    }

    /// <summary>One lift in batches.</summary>
    public Calculated<LiftQuantities> Lift(LiftSlice lift)
    {
        var share = 1 + Wastes.Cob.Share();
        var batches = lift.LaidVolume * share / PerBatch.Value;
        var height = (lift.Top - lift.Bottom).Metres;
        var gross = AsLaid(Geometry, lift.Bottom.Metres, lift.Top.Metres);
        var perRun = gross * share / (Geometry.Curve.Length * PerBatch.Value);
        var rise = batches > 0 ? height / batches : (double?)null;
        var count = new Symbol("N", new Message("geometry.symbol.batches-of-lift"), Amount.Number(batches), Tag.Computed);
        var steps = new List<Step>
        {
            new("lift-batches", "V_laid*(1+w)/V_b", [Laid(lift.LaidVolume), Waste, PerBatchSymbol], count, Own),
            new(
                "batches-per-run", "V_solid*(1+w)/(L*V_b)",
                [
                    new Symbol("V_solid", new Message("geometry.symbol.solid-volume"), new Volume(gross), Tag.Computed, Own),
                    Waste, RingLength(Geometry), PerBatchSymbol,
                ],
                new Symbol("N_run", new Message("geometry.symbol.batches-per-run"), Amount.Number(perRun), Tag.Computed), Own),
        };
        if (rise is { } risen)
        {
            steps.Add(new Step(
                "rise-per-batch", "h/N", [new Symbol("h", new Message("geometry.symbol.lift-height"), lift.Top - lift.Bottom, Tag.Given), count],
                new Symbol("h_b", new Message("geometry.symbol.rise-per-batch"), Amount.Metres(risen), Tag.Computed), Own));
        }

        var title = Message.Of("geometry.calculation.lift", ("number", lift.Number));
        return new Calculated<LiftQuantities>(
            new LiftQuantities(lift.Index, batches, rise, perRun), new Calculation($"lift-{lift.Number}", title, steps.ToSequence()));
    }

    private static Calculated<double> VolumePerBatch(HouseGeometry geometry, Batch batch, double ring)
    {
        var trial = batch.RingLength.Metres / geometry.Curve.Length * ring;
        var volume = new Symbol("V_trial", new Message("geometry.symbol.trial-volume"), new Volume(trial), Tag.Computed);
        var perBatch = trial / batch.TrialBatches;
        var ofTrial = new Step(
            "trial-volume", "l/L*V_ring",
            [
                new Symbol("l", new Message("geometry.symbol.trial-length"), batch.RingLength, Tag.Measured), RingLength(geometry),
                new Symbol("V_ring", new Message("geometry.symbol.ring-volume"), new Volume(ring), Tag.Computed, Own),
            ],
            volume, Own);
        var ofBatch = new Step(
            "volume-per-batch", "V_trial/n", [volume, new Symbol("n", new Message("geometry.symbol.trial-batches"), Amount.Count(batch.TrialBatches), Tag.Measured)],
            new Symbol("V_b", new Message("geometry.symbol.volume-per-batch"), new Volume(perBatch), Tag.Computed), Own);
        return new Calculated<double>(perBatch, new Calculation("volume-per-batch", new Message("geometry.calculation.volume-per-batch"), [ofTrial, ofBatch]));
    }

    /// <summary>Volume of the whole ring without openings between two heights, m3, as laid: the first lift fills the stem's width.</summary>
    private static double AsLaid(HouseGeometry geometry, double bottom, double top)
    {
        var (wall, stem, curve) = (geometry.Wall, geometry.House.Stem, geometry.Curve);
        var firstTop = geometry.Lifts.Count > 0 ? Math.Min(top, geometry.Lifts[0].Top.Metres) : bottom;
        var above = WallBands.Trimmed(wall, Math.Max(bottom, firstTop), top).Volume(curve);
        return firstTop <= bottom || stem.Width.Nanometres <= 0
            ? WallBands.Trimmed(wall, bottom, top).Volume(curve)
            : above + WallBands.AsLaid(stem, wall, WallBands.Trimmed(wall, bottom, firstTop)).Sum(band => band.Volume(curve));
    }

    private static Symbol RingLength(HouseGeometry geometry) =>
        new("L", new Message("geometry.symbol.ring-length"), Amount.Metres(geometry.Curve.Length), Tag.Computed, Own);

    private static Symbol Laid(double volume) => new("V_laid", new Message("geometry.symbol.laid-volume"), new Volume(volume), Tag.Computed, Own);
}
