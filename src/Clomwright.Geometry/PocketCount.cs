using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Ten numbers a builder can type without a house file: one lift of one wall, and the crew's own trial.</summary>
/// <param name="RingLength">Along the inside face at the wall base, all round.</param>
/// <param name="OpeningWidths">Widths of the openings that pass through the lift, together.</param>
/// <param name="Bottom">Height at which the lift begins.</param>
/// <param name="Top">Height at which it ends.</param>
/// <param name="ThicknessAtBottom">Of the wall where the lift begins.</param>
/// <param name="ThicknessAtTop">Of the wall where it ends.</param>
/// <param name="TrialBatches">Batches laid in the trial.</param>
/// <param name="TrialLength">Length of wall that the trial raised, along the inside face.</param>
/// <param name="TrialRaised">How much it rose.</param>
/// <param name="People">On the wall today.</param>
public sealed record PocketNumbers(
    Length RingLength, Length OpeningWidths, Length Bottom, Length Top, Length ThicknessAtBottom, Length ThicknessAtTop,
    int TrialBatches, Length TrialLength, Length TrialRaised, int People);

/// <summary>What the ten numbers come to. A number that cannot be had is null.</summary>
/// <param name="Rise">Of the lift, m.</param>
/// <param name="Volume">Of cob in the lift, m3.</param>
/// <param name="Batches">To lay it.</param>
/// <param name="RisePerBatch">How much the whole ring rises for one batch, m.</param>
/// <param name="BatchesEach">Batches for each person.</param>
/// <param name="How">The steps.</param>
public sealed record PocketCount(double Rise, double Volume, double? Batches, double? RisePerBatch, double? BatchesEach, Calculation How)
{
    /// <summary>Counts one lift from ten typed numbers.</summary>
    /// <remarks>
    /// The middle of a wall of thickness t that closes on itself runs pi t farther than its inside face (Steiner), whatever its plan.
    /// Openings are taken out at their width times the mean thickness. The trial was as thick as this lift on the mean.
    /// </remarks>
    public static PocketCount Of(PocketNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        var rise = (numbers.Top - numbers.Bottom).Metres;
        var thickness = (numbers.ThicknessAtBottom.Metres + numbers.ThicknessAtTop.Metres) / 2;
        var source = Sources.Get("steiner");
        var t = Of("t", "thickness", Amount.Metres(thickness), Tag.Computed);
        Symbol[] walls = [Of("L", "ring", numbers.RingLength, Tag.Given), Of("w", "openings", numbers.OpeningWidths, Tag.Given), t];
        var run = numbers.RingLength.Metres + Math.PI * thickness - numbers.OpeningWidths.Metres;
        var volume = run * thickness * rise;
        List<Step> steps =
        [
            new("mean-thickness", "(a+b)/2", [Of("a", "thickness-bottom", numbers.ThicknessAtBottom, Tag.Given), Of("b", "thickness-top", numbers.ThicknessAtTop, Tag.Given)], t, source),
            new("lift-run", "L+pi*t-w", walls.ToSequence(), Of("r", "run", Amount.Metres(run), Tag.Computed), source),
            new("lift-volume", "r*t*h", [Of("r", "run", Amount.Metres(run), Tag.Computed), t, Of("h", "rise", Amount.Metres(rise), Tag.Computed)], Of("V", "volume", new Volume(volume), Tag.Computed), source),
        ];
        double? batches = null, risePerBatch = null;
        var perBatch = numbers.TrialLength.Metres * numbers.TrialRaised.Metres * thickness / Math.Max(1, numbers.TrialBatches);
        if (perBatch > 0 && numbers.TrialBatches > 0)
        {
            batches = volume / perBatch;
            risePerBatch = rise / batches;
            steps.Add(new(
                "batches",
                "V*n/(l*e*t)",
                [
                    Of("V", "volume", new Volume(volume), Tag.Computed), Of("n", "trial-batches", Amount.Count(numbers.TrialBatches), Tag.Measured),
                    Of("l", "trial-length", numbers.TrialLength, Tag.Measured), Of("e", "trial-raised", numbers.TrialRaised, Tag.Measured), t,
                ],
                Of("N", "batches", Amount.Number(volume / perBatch), Tag.Computed),
                source));
        }

        var how = new Calculation("pocket-count", new Message("papers.pocket.calculation"), steps.ToSequence());
        return new PocketCount(rise, volume, batches, risePerBatch, numbers.People > 0 ? batches / numbers.People : null, how);
    }

    private static Symbol Of(string name, string what, Amount value, Tag tag) => new(name, new Message("papers.pocket." + what), value, tag);
}
