using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>What jar, limits, recipe and specimens tell of the cob in the wall; null where they do not. Water and limits as shares of the dry minerals.</summary>
/// <remarks>
/// Sand thins a clay's plasticity in proportion (Skempton 1953: index = activity times clay). Limits measured on the soil move along that line towards the point of the
/// plasticity chart, half-way between its lines, where the index is nothing: LL = PL = 0.218/1.63. Where limits were not measured, the water that the crew mixes by feel tells
/// them: it lies at the consistency of the method, PL = w - LI PI. That needs no second guess of limits beside a known water.
/// </remarks>
public sealed record MeasuredCob
{
    private const double NoPlasticity = 0.218 / 1.63;
    private const double NearlyFull = 0.98;
    private const double Grains = 2.65;
    private const double LeastPlasticLimit = 0.08;
    private const double LeastIndex = 0.02;

    /// <summary>Clay of the cob over that of the soil, by mass: how far sand thins it.</summary>
    public double? ClayOfSoil { get; init; }

    /// <summary>LL and PL measured on the soil.</summary>
    public (double Liquid, double Plastic)? SoilLimits { get; init; }

    /// <summary>PI of the cob from the clay that a jar showed, with what was assumed.</summary>
    public Settled<double>? Index { get; init; }

    /// <summary>Water as mixed, what the straw drinks not counted, as the recipe or the author's target has it.</summary>
    public double? Water { get; init; }

    /// <summary>Density of the dry cob, kg/m3: of dried specimens, else the one assumption of it that recipe and orders lean on too.</summary>
    public double? DryDensity { get; init; }

    /// <summary>That assumption; null where specimens told it.</summary>
    public Assumption? DryDensityAssumed { get; init; }

    /// <summary>Mean and characteristic strength of dry specimens, Pa.</summary>
    public (double Mean, double Characteristic)? Strength { get; init; }

    /// <summary>The numbers of drying that follow.</summary>
    /// <param name="method">How the wall is laid.</param>
    /// <param name="said">What the house file says of drying's numbers: it comes first.</param>
    public Sequence<KnownNumber> Numbers(LiftMethod method, Sequence<AssumedNumber> said)
    {
        var known = new List<KnownNumber>();
        DryingNumbers In(DryingCase way) => DryingNumbers.Of(said, way, known.ToSequence());
        var liquidity = "drying-liquidity-" + WallRun.Word(method);
        if (!said.Any(a => a.Key is "drying-liquid-limit" or "drying-plastic-limit" || a.Key == liquidity))
        {
            known.AddRange(Limits(liquidity, In));
        }

        var wettest = WallRun.LaidWater(In(DryingCase.Slow), method);
        var shrinkage = new Shrinkage(Grains, In(DryingCase.Middle)["drying-shrink-limit"], In(DryingCase.Middle)["drying-shrink-share"]);
        // A dried specimen has shrunk; and no more water goes in than there are pores.
        var laid = DryDensity is { } dry ? dry * (1 - shrinkage.Volume(WallRun.LaidWater(In(DryingCase.Middle), method))) : In(DryingCase.Middle)["drying-dry-density"];
        var densest = 1000 / (wettest / NearlyFull + 1 / Grains);
        if (DryDensity is not null || laid > densest)
        {
            known.Add(KnownNumber.Sure("drying-dry-density", Math.Min(laid, densest), DryDensityAssumed is null ? Tag.Computed : Tag.Assumed) with { Assumption = DryDensityAssumed });
        }

        if (Strength is { } strength)
        {
            known.Add(new("drying-dry-strength", strength.Mean, strength.Mean, Math.Min(strength.Mean, Math.Max(strength.Characteristic, strength.Mean / 4)), Tag.Measured));
        }

        return known.Where(k => !said.Any(a => a.Key == k.Key)).ToSequence();
    }

    private IEnumerable<KnownNumber> Limits(string liquidity, Func<DryingCase, DryingNumbers> numbers)
    {
        var (middle, fast, slow) = (numbers(DryingCase.Middle)[liquidity], numbers(DryingCase.Fast)[liquidity], numbers(DryingCase.Slow)[liquidity]);
        if (SoilLimits is { } soil && ClayOfSoil is { } thinned)
        {
            var (liquid, plastic) = (NoPlasticity + thinned * (soil.Liquid - NoPlasticity), NoPlasticity + thinned * (soil.Plastic - NoPlasticity));
            if (liquid - plastic < LeastIndex || plastic < LeastPlasticLimit)
            {
                yield break;
            }

            yield return KnownNumber.Sure("drying-liquid-limit", liquid, Tag.Computed);
            yield return KnownNumber.Sure("drying-plastic-limit", plastic, Tag.Computed);
            if (Water is { } mixed)
            {
                // The spread of the method stays: a recipe in buckets is no surer.
                var index = (mixed - plastic) / (liquid - plastic);
                yield return new(liquidity, index, index + fast - middle, index + slow - middle, Tag.Computed);
            }
        }
        else if (Index is { } estimated && Water is { } felt && estimated.Value >= LeastIndex && felt - middle * estimated.Value >= LeastPlasticLimit)
        {
            var plastic = felt - middle * estimated.Value;
            yield return Estimated("drying-plastic-limit", plastic, "analysis.assumed.drying-plastic-limit-felt");
            yield return Estimated("drying-liquid-limit", plastic + estimated.Value, "analysis.assumed.drying-liquid-limit-felt");
        }

        KnownNumber Estimated(string key, double value, string word) => KnownNumber.Sure(key, value, Tag.Assumed) with
        {
            Assumption = new Assumption(
                key, Message.Of(word, ("water", Amount.Fraction(Water!.Value)), ("index", Amount.Fraction(Index!.Value.Value))), Amount.Fraction(value), Sources.Get("skempton-1953")),
        };
    }
}
