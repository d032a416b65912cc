using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;

namespace Clomwright.Analysis.Members;

/// <summary>Adjustment factors of the NDS for allowable stress. SI in and out; the sizes that tables print in inches are turned inside.</summary>
public static class Nds
{
    private const double Inch = 0.0254;

    /// <summary>C_D of the shortest load in a combination: permanent 0.9, snow and standing water 1.15, roof live 1.25, wind and earthquake 1.6 (table 2.3.2).</summary>
    public static double Duration(Combination combination)
    {
        var factor = 0.9;
        foreach (var term in combination.Terms)
        {
            factor = Math.Max(factor, term.Factor == 0 ? 0.9 : term.Kind switch
            {
                LoadKind.Snow or LoadKind.Rain => 1.15,
                LoadKind.RoofLive => 1.25,
                LoadKind.Wind or LoadKind.Earthquake => 1.6,
                _ => 0.9,
            });
        }

        return factor;
    }

    /// <summary>C_b = (l_b + 0.375)/l_b with l_b in inches, for bearings under 6 in that end 3 in or more from the piece's end; 1 beyond.</summary>
    /// <param name="length">l_b along the grain, m.</param>
    public static double BearingArea(double length) => length < 6 * Inch ? (length / Inch + 0.375) / (length / Inch) : 1;

    /// <summary>C_L of a rectangular beam from F_bE/F_b*.</summary>
    public static double BeamStability(double ratio)
    {
        var half = (1 + ratio) / 1.9;
        return half - Math.Sqrt(half * half - ratio / 0.95);
    }

    /// <summary>F_bE = 1.20 E_min'/R_B^2 with R_B^2 = l_e d/b^2, Pa.</summary>
    public static double BucklingStress(double leastModulus, double effectiveLength, double depth, double width) =>
        1.2 * leastModulus * width * width / (effectiveLength * depth);

    /// <summary>C_P of a column from F_cE/F_c*, c 0.8 sawn and 0.85 round (3.7.1).</summary>
    public static double ColumnStability(double ratio, double c)
    {
        var half = (1 + ratio) / (2 * c);
        return half - Math.Sqrt(half * half - ratio / c);
    }

    /// <summary>Hankinson: F at an angle to the grain between along and across.</summary>
    /// <param name="along">F_c along the grain.</param>
    /// <param name="across">F_c across the grain.</param>
    /// <param name="angle">Between load and grain, radians.</param>
    public static double AtAngle(double along, double across, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return along * across / (along * sin * sin + across * cos * cos);
    }

    /// <summary>C_F for bending of No.1 and No.2 dimension lumber 2 to 4 in thick, by depth; 1 for other forms.</summary>
    public static double Size(TimberForm form, double depth) => form != TimberForm.Dimension ? 1 : (depth / Inch) switch
    {
        <= 4.01 => 1.5,
        <= 6.01 => 1.3,
        <= 8.01 => 1.2,
        <= 10.01 => 1.1,
        <= 12.01 => 1.0,
        _ => 0.9,
    };

    /// <summary>C_F of a round over 13.5 in: (12/d)^(1/9) on the square of equal area.</summary>
    public static double RoundSize(double diameter) => diameter <= 13.5 * Inch ? 1 : Math.Pow(12 * Inch / (diameter * Math.Sqrt(Math.PI) / 2), 1.0 / 9);

    /// <summary>V' of an end notched on its tension side: (2/3) F_v' A_n (d_n/d)^2, N.</summary>
    /// <param name="shear">F_v', Pa.</param>
    /// <param name="netArea">A_n, m2.</param>
    /// <param name="share">d_n/d left.</param>
    public static double NotchedShear(double shear, double netArea, double share) => 2.0 / 3 * shear * netArea * share * share;

    /// <summary>Moment that a round carries: F_b' pi d^3/32 = F_b' C^3/(32 pi^2), N m.</summary>
    public static double RoundMoment(double bending, double diameter) => bending * Math.PI * Math.Pow(diameter, 3) / 32;

    /// <summary>K_cr on the long-term part of sagging: 1.5 dry, 2.0 green.</summary>
    public static double Creep(bool green) => green ? 2.0 : 1.5;

    /// <summary>Pounds per square inch, for tables.</summary>
    public static double Psi => UsUnits.Psi;
}
