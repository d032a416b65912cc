using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Finishes;

/// <summary>What buckets of loose material come to when they are laid.</summary>
/// <remarks>
/// Earth: the dry mass of clay soil and sand over the dry mass of a cubic metre of laid plaster; straw, manure and paste lie between the grains and add nothing. Lime: the putty fills
/// the voids of the sand and only what is over adds to it.
/// </remarks>
internal static class MixYield
{
    /// <summary>Buckets laid from one batch, with its steps put down; null where the mix has neither clay nor lime with sand, nor clay alone.</summary>
    public static Symbol? Of(PlasterParts parts, Worksheet sheet)
    {
        var sand = Worksheet.Given("p_s", "parts-sand", parts.Sand ?? 0, Dimension.Number);
        if (parts.Lime is > 0 and var lime && parts.Clay is null or 0)
        {
            if (parts.Sand is not > 0)
            {
                return null;
            }

            var voids = PlasterMaterial.Number("sand-voids");
            return sheet.Step(
                "batch-laid", "y", "p_s + max(0, p_l - v*p_s)", sand.Value.Si + Math.Max(0, lime - voids.Value * sand.Value.Si), Dimension.Number, voids.Source,
                Worksheet.Given("p_l", "parts-lime", lime, Dimension.Number), sand, Worksheet.Cited("v", "sand-voids", voids, Dimension.Number));
        }

        if (parts.Clay is not > 0 || parts.Lime is > 0)
        {
            return null;
        }

        var (soil, loose, laid) = (PlasterMaterial.Number("soil-loose"), PlasterMaterial.Number("sand-loose"), PlasterMaterial.Number("plaster-laid"));
        return sheet.Step(
            "batch-laid", "y", "(p_c*rho_c + p_s*rho_s)/rho_p", (parts.Clay.Value * soil.Value + sand.Value.Si * loose.Value) / laid.Value, Dimension.Number, laid.Source,
            Worksheet.Given("p_c", "parts-clay", parts.Clay.Value, Dimension.Number), Worksheet.Cited("rho_c", "soil-loose", soil, Dimension.Density), sand,
            Worksheet.Cited("rho_s", "sand-loose", loose, Dimension.Density), Worksheet.Cited("rho_p", "plaster-laid", laid, Dimension.Density));
    }

    /// <summary>The parts that are there, in the order in which they are named.</summary>
    public static IEnumerable<(string Key, double Buckets)> Named(PlasterParts parts)
    {
        (string Key, double? Buckets)[] all = [("clay", parts.Clay), ("lime", parts.Lime), ("sand", parts.Sand), ("straw", parts.Straw), ("manure", parts.Manure), ("paste", parts.Paste)];
        return all.Where(p => p.Buckets is > 0).Select(p => (p.Key, p.Buckets!.Value));
    }

    /// <summary>Each part of a volume to be laid, loose.</summary>
    public static Sequence<Ingredient> Loose(PlasterParts parts, double laid, double perBatch) =>
        Named(parts).Select(p => new Ingredient(p.Key, p.Buckets, laid * p.Buckets / perBatch)).ToSequence();

    /// <summary>Batches for a volume, put down; or why not.</summary>
    public static Known<Calculated<double>> Batches(Symbol volume, Symbol perBatch, Volume? bucket, Worksheet sheet)
    {
        if (bucket is not { CubicMetres: > 0 } size)
        {
            return new Message("analysis.finishes.no-bucket");
        }

        var count = volume.Value.Si / (perBatch.Value.Si * size.CubicMetres);
        sheet.Step("plaster-batches", "N", "V/(y*V_k)", count, Dimension.Number, Sources.Get("wall-geometry"), volume, perBatch, Worksheet.Given("V_k", "bucket-volume", size.CubicMetres, Dimension.Volume));
        return new Calculated<double>(count, sheet.Done);
    }
}
