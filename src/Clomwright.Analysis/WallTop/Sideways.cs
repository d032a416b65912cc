using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Which sideways force is asked for.</summary>
internal enum SidewaysPart
{
    /// <summary>What goes through roof and bond beam: the roof, and what leans on it of the faces across.</summary>
    Beam,

    /// <summary>What comes to the wall top: the roof and the upper half of the wall.</summary>
    Top,

    /// <summary>All of it, at the stem.</summary>
    House,
}

/// <summary>Sideways forces of wind and earthquake on a house under its roof, in a combination.</summary>
/// <remarks>Wind pushes on half the wall and the height of the roof at the bond beam, on all of both at the stem; an earthquake shakes the roof as it stands in the combination, and the wall (<see cref="ShakenHouse"/>).</remarks>
internal sealed class Sideways
{
    private static readonly Source Mechanics = Sources.Get("mechanics");

    private readonly HouseGeometry geometry;
    private readonly RoofResult roof;
    private readonly ShakenHouse shaken;

    /// <summary>Only where the wind on the roof and its weight are known.</summary>
    public Sideways(HouseGeometry geometry, RoofResult roof)
    {
        (this.geometry, this.roof) = (geometry, roof);
        shaken = new ShakenHouse(geometry, HeightOf(roof));
    }

    /// <summary>Of the cob, m.</summary>
    public double Height => shaken.Height;

    /// <summary>Of a circle as large as the house outside, m.</summary>
    public double Width => geometry.EvenWidth;

    /// <summary>What belongs in the sums and is not known; null when all is.</summary>
    public static Message? Missing(RoofResult roof) =>
        roof.Combined.States.Count > 0 ? roof.Wind.NotChecked : roof.Combined.Missing.Count > 0 ? roof.Combined.Missing[0] : new Message("analysis.roof.none");

    /// <summary>The whole house in an earthquake under its heaviest lasting roof: for what was assumed.</summary>
    public Known<SeismicLoad> Heaviest => shaken.Under(RoofWeight("soilWet") ?? RoofWeight("decked") ?? 0);

    private double RoofHeight => HeightOf(roof);

    /// <summary>Height of the roof's inner ends over their feet, m; 0 where they lie lower or no roof is known.</summary>
    public static double HeightOf(RoofResult roof) => (roof.Reciprocal.Value?.Geometry.Poles ?? roof.Plain.Value?.Places)?.Max(p => p.HeightAt(p.TangentDistance)) is > 0 and var rise ? rise : 0;

    private double WindAcross => roof.Wind.Value!.WallsAcross;

    private double Snow => Seismic.SnowWeight(roof.Snow.Value, Width);

    /// <summary>Sideways force in a combination, N.</summary>
    public Known<Calculated<double>> Force(Combination combination, string sense, SidewaysPart part)
    {
        var sheet = new Worksheet(part switch { SidewaysPart.House => "cob-on-stem", SidewaysPart.Top => "on-wall-top", _ => "beam-on-cob" });
        if (combination.Factor(LoadKind.Wind) is > 0 and var blow)
        {
            var tall = (part == SidewaysPart.House ? Height : Height / 2) + RoofHeight;
            var value = blow * WindAcross * Width * tall;
            sheet.Step(
                "sideways-wind", "H", "k*p*b_w*h_w", value, Dimension.Force, Mechanics, Worksheet.Code("k", "wind-factor", blow, Dimension.Number, combination.Source),
                Worksheet.Computed("p", "wind-across", WindAcross, Dimension.AreaLoad), Worksheet.Computed("b_w", "house-width", Width, Dimension.Length), Worksheet.Computed("h_w", "wind-height", tall, Dimension.Length));
            return new Calculated<double>(value, sheet.Done);
        }

        var weight = Standing(sense);
        var shaking = shaken.Under(weight);
        if (shaking.Value is not { } load)
        {
            return shaking.NotChecked!;
        }

        var factor = combination.Factor(LoadKind.Earthquake);
        var k = Worksheet.Code("k", "earthquake-factor", factor, Dimension.Number, combination.Source);
        if (part == SidewaysPart.House)
        {
            sheet.Step("sideways-earthquake", "H", "k*V", factor * load.BaseShear, Dimension.Force, Mechanics, k, Worksheet.Computed("V", "seismic-base-shear", load.BaseShear, Dimension.Force));
            return new Calculated<double>(factor * load.BaseShear, sheet.Done);
        }

        var f = Worksheet.Computed("F", "earthquake-at-top", load.LevelForces[0], Dimension.Force);
        if (part == SidewaysPart.Top)
        {
            sheet.Step("sideways-earthquake", "H", "k*F", factor * load.LevelForces[0], Dimension.Force, Mechanics, k, f);
            return new Calculated<double>(factor * load.LevelForces[0], sheet.Done);
        }

        return new Calculated<double>(shaken.Steps(sheet, load, weight, factor, combination.Source).Value.Si, sheet.Done);
    }

    /// <summary>What turns the whole house over its foot in a combination, N m.</summary>
    public Known<Calculated<double>> Turning(Combination combination, string sense)
    {
        var sheet = new Worksheet("house-overturning");
        if (combination.Factor(LoadKind.Wind) is > 0)
        {
            var force = Force(combination, sense, SidewaysPart.House).Value!;
            var h = Worksheet.Computed("H", "sideways-wind", force.Value, Dimension.Force);
            var tall = Height + RoofHeight;
            sheet.Step("turning-wind", "M", "H*h_w/2", force.Value * tall / 2, Dimension.Moment, Mechanics, h, Worksheet.Computed("h_w", "wind-height", tall, Dimension.Length));
            return new Calculated<double>(force.Value * tall / 2, sheet.Done);
        }

        var shaking = shaken.Under(Standing(sense));
        if (shaking.Value is not { } load)
        {
            return shaking.NotChecked!;
        }

        var factor = combination.Factor(LoadKind.Earthquake);
        var moment = factor * (load.LevelForces[0] * Height + load.LevelForces[1] * Height / 4);
        sheet.Step(
            "turning-earthquake", "M", "k*(F*h + F_w*h/4)", moment, Dimension.Moment, Mechanics, Worksheet.Code("k", "earthquake-factor", factor, Dimension.Number, combination.Source),
            Worksheet.Computed("F", "earthquake-at-top", load.LevelForces[0], Dimension.Force), Worksheet.Computed("F_w", "earthquake-at-foot", load.LevelForces[1], Dimension.Force),
            Worksheet.Computed("h", "wall-height", Height, Dimension.Length));
        return new Calculated<double>(moment, sheet.Done);
    }

    /// <summary>What shakes: roof and wall, N.</summary>
    public (double Roof, double Wall) Weights(string sense) => (Standing(sense), shaken.Wall);

    private double Standing(string sense) => (RoofWeight(sense == "up-dry" ? "soilDry" : "decked") ?? 0) + Snow;

    private double? RoofWeight(string stage) => (roof.Reciprocal.Value?.Stage(stage) ?? roof.Plain.Value!.Stage(stage)).Value?.TotalLoad;
}
