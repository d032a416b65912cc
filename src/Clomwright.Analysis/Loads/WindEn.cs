using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>EN 1991-1-4 with recommended values: c_dir = c_season = c_o = k_l = 1, air of 1.25 kg/m3. Hipped-roof coefficients are recalled, and rounded to the unkind side.</summary>
public static class WindEn
{
    private const double Air = 1.25;

    internal static Known<WindLoad> Of(BasicWind speed, string? exposure, WindShape shape)
    {
        if (PeakPressure(speed.MetresPerSecond, exposure, shape.MeanHeight) is not { } peak)
        {
            return Message.Of("analysis.loads.exposure-unknown", ("exposure", exposure ?? "-"), ("known", "0, I, II, III, IV"));
        }

        var memory = Sources.Get("en-1991-memory");
        var degrees = shape.Slope * 180 / Math.PI;
        var up = Between(degrees, [-1.2, -0.8, -0.5, 0.0]);
        var down = Between(degrees, [0.0, 0.2, 0.7, 0.7]);
        var lee = Between(degrees, [-0.6, -1.0, -0.7, -0.6]);
        var sheet = new Worksheet("wind-roof");
        var q = Worksheet.Computed("q_p", "velocity-pressure", peak.Value, Dimension.AreaLoad);
        return new WindLoad
        {
            Edition = speed.Edition,
            Velocity = peak.Value,
            WindwardUp = Net("wind-windward-up", "p_1", up, 0.2),
            LeewardUp = Net("wind-leeward-up", "p_2", lee, 0.2),
            WindwardDown = Net("wind-windward-down", "p_3", down, -0.3),
            LeewardDown = Net("wind-leeward-down", "p_4", lee, -0.3),
            WallIn = Net("wind-wall-in", "p_5", 0.8, -0.3),
            WallOut = Net("wind-wall-out", "p_6", -1.2, 0.2),
            EaveUp = Net("wind-eave-up", "p_7", up, 0.8),
            FreeWall = Net("wind-free-wall", "p_8", 2.1, 0),
            WallsAcross = sheet.Step(
                "wind-walls-across", "p_9", "q_p*(c_w - c_l)", peak.Value * (0.8 + 0.5), Dimension.AreaLoad, memory, q,
                Worksheet.Code("c_w", "wind-windward", 0.8, Dimension.Number, memory), Worksheet.Code("c_l", "wind-leeward", -0.5, Dimension.Number, memory)).Value.Si,
            How = [peak.How, sheet.Done],
            Assumptions =
            [
                new("wind-enclosed", new Message("analysis.assumed.wind-enclosed"), Amount.Number(0.2), memory),
                new("wind-as-hip", new Message("analysis.assumed.wind-as-hip"), Amount.Number(up), memory),
                new("wind-flat-ground", new Message("analysis.assumed.wind-flat-ground"), Amount.Number(1), memory),
            ],
        };

        double Net(string step, string symbol, double outside, double inside) => sheet.Step(
            step, symbol, "q_p*(c_pe - c_pi)", peak.Value * (outside - inside), Dimension.AreaLoad, memory, q,
            Worksheet.Code("c_pe", "wind-coefficient", outside, Dimension.Number, memory), Worksheet.Code("c_pi", "wind-inside", inside, Dimension.Number, memory)).Value.Si;
    }

    /// <summary>q_p = (1 + 7 I_v) rho v_m^2/2; null for a terrain that is not 0, I, II, III or IV.</summary>
    /// <param name="speed">v_b, m/s.</param>
    /// <param name="terrain">Terrain category.</param>
    /// <param name="height">z above the ground, m.</param>
    public static Calculated<double>? PeakPressure(double speed, string? terrain, double height)
    {
        (double Z0, double Least)? roughness = terrain switch
        {
            "0" => (0.003, 1), "I" => (0.01, 1), "II" => (0.05, 2), "III" => (0.3, 5), "IV" => (1.0, 10), _ => null,
        };
        if (roughness is not { } r)
        {
            return null;
        }

        var source = Sources.Get("en-1991-1-4");
        var memory = Sources.Get("en-1991-memory");
        var sheet = new Worksheet("wind-velocity");
        var z0 = Worksheet.Code("z_0", "wind-roughness", r.Z0, Dimension.Length, terrain is "0" or "III" ? source : memory);
        var least = Worksheet.Code("z_min", "wind-least-height", r.Least, Dimension.Length, terrain is "0" or "III" ? source : memory);
        var h = Worksheet.Computed("h", "mean-roof-height", height, Dimension.Length);
        var vb = Worksheet.Given("v_b", "wind-speed", speed, Dimension.Speed);
        var rho = Worksheet.Code("rho", "air-density", Air, Dimension.Density, source);
        var zValue = Math.Max(height, r.Least);
        var z = sheet.Step("wind-height", "z", "max(h, z_min)", zValue, Dimension.Length, source, h, least);
        var krValue = 0.19 * Math.Pow(r.Z0 / 0.05, 0.07);
        var kr = sheet.Step("wind-terrain-factor", "k_r", "0.19*(z_0/0.05)^0.07", krValue, Dimension.Number, source, z0);
        var crValue = krValue * Math.Log(zValue / r.Z0);
        var cr = sheet.Step("wind-roughness-factor", "c_r", "k_r*ln(z/z_0)", crValue, Dimension.Number, source, kr, z, z0);
        var vm = sheet.Step("wind-mean-speed", "v_m", "c_r*v_b", crValue * speed, Dimension.Speed, source, cr, vb);
        var ivValue = 1 / Math.Log(zValue / r.Z0);
        var iv = sheet.Step("wind-turbulence", "I_v", "1/ln(z/z_0)", ivValue, Dimension.Number, source, z, z0);
        var q = (1 + 7 * ivValue) * 0.5 * Air * crValue * speed * crValue * speed;
        sheet.Step("velocity-pressure", "q_p", "(1 + 7*I_v)*0.5*rho*v_m^2", q, Dimension.AreaLoad, source, iv, rho, vm);
        return new(q, sheet.Done);
    }

    private static double Between(double degrees, double[] at)
    {
        double[] slopes = [5, 15, 30, 45];
        var d = Math.Clamp(degrees, 5, 45);
        var j = d < 15 ? 0 : d < 30 ? 1 : 2;
        return at[j] + (at[j + 1] - at[j]) * (d - slopes[j]) / (slopes[j + 1] - slopes[j]);
    }
}
