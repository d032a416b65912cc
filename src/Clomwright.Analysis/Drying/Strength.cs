namespace Clomwright.Analysis.Drying;

/// <summary>Which published law gives undrained strength from the liquidity index.</summary>
public enum PlasticLaw
{
    /// <summary>Vardanega and Haigh 2014: 1.7 kPa at the liquid limit, 35 times that at the plastic limit.</summary>
    VardanegaHaigh,

    /// <summary>Wroth and Wood 1978: 100 times.</summary>
    WrothWood,

    /// <summary>Whyte 1982.</summary>
    Whyte,
}

/// <summary>How strong cob is while it dries. Water contents as shares of the dry mass, stresses in Pa.</summary>
/// <param name="LiquidLimit">LL of the part finer than 425 um.</param>
/// <param name="PlasticLimit">PL.</param>
/// <param name="Dry">Compressive strength at rest with the air, Pa.</param>
/// <param name="Equilibrium">Water content at rest with the air, where <paramref name="Dry"/> holds.</param>
/// <param name="Law">While plastic.</param>
public sealed record Strength(double LiquidLimit, double PlasticLimit, double Dry, double Equilibrium, PlasticLaw Law = PlasticLaw.VardanegaHaigh)
{
    /// <summary>LI = (w - PL)/(LL - PL).</summary>
    public double LiquidityIndex(double water) => (water - PlasticLimit) / (LiquidLimit - PlasticLimit);

    /// <summary>su of plastic earth, Pa.</summary>
    public static double Undrained(PlasticLaw law, double liquidityIndex) => law switch
    {
        PlasticLaw.WrothWood => 170_000 * Math.Exp(-4.6 * liquidityIndex),
        PlasticLaw.Whyte => 1_600 * Math.Exp(4.23 * (1 - liquidityIndex)),
        _ => 1_700 * Math.Pow(35, 1 - liquidityIndex),
    };

    /// <summary>k of the gain below the plastic limit: f = f_dry exp(-k (w - w_eq)), met at the plastic limit by 2 su.</summary>
    public double Gain => Math.Log(Dry / (2 * Undrained(Law, 0))) / (PlasticLimit - Equilibrium);

    /// <summary>Unconfined compressive strength, Pa: 2 su while plastic, exponential below the plastic limit, continuous there; never more than dry.</summary>
    public double Compressive(double water) =>
        water >= PlasticLimit ? 2 * Undrained(Law, LiquidityIndex(water)) : Math.Min(Dry, Dry * Math.Exp(-Gain * (water - Equilibrium)));

    /// <summary>The water content at which a compressive strength is reached.</summary>
    public double WaterAt(double compressive)
    {
        if (compressive >= Dry)
        {
            return Equilibrium;
        }

        if (compressive >= 2 * Undrained(Law, 0))
        {
            return Equilibrium + Math.Log(Dry / compressive) / Gain;
        }

        var (wet, firm) = (Undrained(Law, 1), Undrained(Law, 0));
        return PlasticLimit + (LiquidLimit - PlasticLimit) * Math.Log(2 * firm / compressive) / Math.Log(firm / wet);
    }

    /// <summary>Height that a free lift of one earth can stand, m: 2 su over unit weight and safety.</summary>
    /// <param name="undrained">su, Pa.</param>
    /// <param name="unitWeight">gamma of the wet cob, N/m3.</param>
    /// <param name="safety">FS.</param>
    public static double FreeHeight(double undrained, double unitWeight, double safety = 1) => 2 * undrained / (unitWeight * safety);

    /// <summary>The same by the yield stress of a fluid laid in layers, m: sqrt 3 su/gamma.</summary>
    public static double LayerHeight(double undrained, double unitWeight) => Math.Sqrt(3) * undrained / unitWeight;

    /// <summary>Height of an upright cut, m: 4 su/gamma. Not for a lift with both sides free.</summary>
    public static double CutHeight(double undrained, double unitWeight) => 4 * undrained / unitWeight;
}
