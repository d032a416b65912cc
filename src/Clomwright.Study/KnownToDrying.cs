using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study;

/// <summary>What other passes tell the pass of drying about this house.</summary>
internal static class KnownToDrying
{
    public static Sequence<KnownNumber> Of(HouseGeometry geometry, RoofResult roof, MixResult mix) =>
        [.. LoadOnWall(geometry, roof), .. OfCob(geometry, mix)];

    /// <summary>What soil, recipe and specimens tell, without the roof.</summary>
    public static Sequence<KnownNumber> OfCob(HouseGeometry geometry, MixResult mix) => Cob(geometry.House.Mix, mix).Numbers(geometry.House.Lifts.Method, geometry.House.Assumed);

    /// <summary>The roof with its soil wet, spread evenly over the ring, in place of the load assumed.</summary>
    private static Sequence<KnownNumber> LoadOnWall(HouseGeometry geometry, RoofResult roof) =>
        (roof.Reciprocal.Value?.Stage("soilWet") ?? roof.Plain.Value?.Stage("soilWet"))?.Value is { } forces && double.IsFinite(forces.TotalLoad) && forces.TotalLoad > 0
            ? [KnownNumber.Sure("drying-roof-load", forces.TotalLoad / geometry.Curve.Length, Tag.Computed)]
            : [];

    private static MeasuredCob Cob(Building.Mix written, MixResult mix) => new()
    {
        ClayOfSoil = mix.Cob.Value is { } cob ? cob.Clay / cob.ClayOfSoil : null,
        SoilLimits = written.SoilTests is { LiquidLimit: not null, PlasticLimit: not null } ? (mix.LiquidLimit.Value, mix.PlasticLimit.Value) : null,
        Index = mix.Jar.Is ? mix.Cob.Value?.Index : null,
        Water = mix.MixingWater.Assumption is null ? mix.MixingWater.Value : null,
        DryDensity = mix.DryDensity.Value,
        DryDensityAssumed = mix.DryDensity.Assumption,
        Strength = mix.Strength is { Tag: Tag.Measured, Mean: { } mean } strength ? (mean, strength.Characteristic) : null,
    };
}
