using Clomwright.Analysis.Mix;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>A weighed block of the house file, read.</summary>
/// <param name="Number">Its place in the house file, from 1.</param>
/// <param name="Fit">What it tells; or why it tells nothing.</param>
public sealed record BlockReading(int Number, Known<BlockFit> Fit);

/// <summary>Turns the blocks that a crew weighed into the diffusivity of its own cob.</summary>
internal static class BlockReadings
{
    /// <summary>Two standard errors either way: about nineteen in twenty.</summary>
    private const double Errors = 2;

    /// <summary>Every block, in the order of the house file.</summary>
    /// <param name="mix">The mix with its blocks.</param>
    /// <param name="numbers">What is assumed of cob, of the air beside the block and of the scale.</param>
    public static Sequence<BlockReading> Of(Building.Mix mix, DryingNumbers numbers) =>
        mix.Blocks.Select((block, i) => new BlockReading(i + 1, Of(mix, block, numbers))).ToSequence();

    /// <summary>The mean of what the blocks tell, weighed by how sure each is; null where none tells anything.</summary>
    /// <param name="readings">Blocks read.</param>
    /// <param name="numbers">Holds how far batches of one mix differ.</param>
    public static KnownNumber? Diffusivity(Sequence<BlockReading> readings, DryingNumbers numbers)
    {
        var fits = readings.Select(r => r.Fit.Value).OfType<BlockFit>().ToList();
        if (fits.Count == 0)
        {
            return null;
        }

        double Weight(BlockFit f) => 1 / Math.Max(1e-6, f.DiffusivityError * f.DiffusivityError);
        var weights = fits.Sum(Weight);
        var middle = fits.Sum(f => Weight(f) * Math.Log(f.Diffusivity)) / weights;
        var between = fits.Count < 2 ? 0 : fits.Sum(f => Weight(f) * Math.Pow(Math.Log(f.Diffusivity) - middle, 2)) / weights / (fits.Count - 1);
        var batches = numbers["drying-block-batches"];
        var error = Math.Sqrt(Math.Max(1 / weights, between) + batches * batches / fits.Count);
        return new("drying-diffusivity", Math.Exp(middle), Math.Exp(middle + Errors * error), Math.Exp(middle - Errors * error), Tag.Measured);
    }

    private static Known<BlockFit> Of(Building.Mix mix, Building.DryingBlock block, DryingNumbers numbers)
    {
        if (!Registers.OfThisMix(mix, block.Trial))
        {
            return Message.Of("analysis.left-out.mix", ("trial", block.Trial!));
        }

        if (block.DryMass is not { } dry)
        {
            return new Message("analysis.drying.block-not-dry");
        }

        if (block.OpenFaces is not (1 or 2))
        {
            return Message.Of("analysis.drying.block-faces", ("faces", block.OpenFaces));
        }

        double[] sides = [.. ((double[])[block.Width.Metres, block.Depth.Metres, block.Height.Metres]).Order()];
        if (!(sides[0] > 0))
        {
            return new Message("analysis.drying.block-odd");
        }

        // With one face open it is half of a block twice as thick that is open at both.
        var halves = block.OpenFaces == 1 ? 2 : 1;
        var first = block.Weighings.Count > 0 ? block.Weighings[0].Day : 0;
        return BlockCalibration.Of(
            new TestBlock(
                halves * sides[0], sides[1] * sides[2], halves * dry.Kilograms, numbers["drying-block-temperature"], numbers["drying-block-humidity"],
                block.Weighings.Select(w => (w.Day - first, halves * w.Mass.Kilograms)).ToSequence(), halves * numbers["drying-block-scale"]),
            WallRun.EarthOf(numbers));
    }
}
