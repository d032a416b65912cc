using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Foundation;

/// <summary>The foundation under a wall and its roof.</summary>
public static class FromWall
{
    /// <summary>Load take-down, stem and ground pressure, frost and drain. Total: what is missing is said in the result.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    public static FoundationResult Of(HouseGeometry geometry, RoofResult roof)
    {
        var loads = new TakeDown(geometry);
        Sequence<FoundationStage> stages =
        [
            new("bareWall", loads.Of(null)),
            .. ((string[])["soilWet", "soilWetSnow"]).Select(key => new FoundationStage(key, Under(loads, roof, key))),
        ];
        var known = stages.Where(s => s.Strips.Is).SelectMany(s => s.Strips.Value!.Strips.Select(strip => (Stage: s.Key, Strip: strip))).ToArray();
        var unknown = stages[0].Strips.NotChecked;
        return new FoundationResult
        {
            Stages = stages,
            Stem = unknown ?? Stem(geometry, known),
            Ground = unknown ?? Ground(geometry, known),
            Frost = Frozen(geometry),
            Drain = Drains.Of(geometry, loads.Line),
            Assumptions =
            [
                new Assumption("cob-standing", new Message("analysis.assumed.cob-standing"), new Amount(TakeDown.CobDensity, Dimension.Density), Sources.Get("wellerlehm")),
                new Assumption("plaster-weight", new Message("analysis.assumed.plaster-weight"), new Amount(TakeDown.PlasterDensity, Dimension.Density), Sources.Get("plaster-weight-memory")),
            ],
        };
    }

    private static Known<StripLoads> Under(TakeDown loads, RoofResult roof, string stage)
    {
        if (roof.Plain.Value is { Kind: "shed" })
        {
            return new Message("analysis.foundation.high-wall");
        }

        var forces = roof.Reciprocal.Value?.Stage(stage) ?? roof.Plain.Value?.Stage(stage);
        return forces is not { } known ? (roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : roof.Plain.NotChecked!)
            : known.Value is { } there ? loads.Of(there.PlateReaction)
            : known.NotChecked!;
    }

    private static Known<FoundationCheck> Stem(HouseGeometry geometry, (string Stage, StripLoad Strip)[] known)
    {
        if (StemMaterial.Find(geometry.House.Stem.Material)?.Allowable is not { } allowable)
        {
            return Message.Of("analysis.foundation.stem-strength", ("material", geometry.House.Stem.Material));
        }

        return Hardest(known, s => s.StemPressure, allowable.Value);
    }

    private static Known<FoundationCheck> Ground(HouseGeometry geometry, (string Stage, StripLoad Strip)[] known) =>
        geometry.House.Site.SoilBearing is { } bearing ? Hardest(known, s => s.GroundPressure, bearing.Pascals) : new Message("analysis.foundation.no-bearing");

    private static Known<FoundationCheck> Hardest((string Stage, StripLoad Strip)[] known, Func<StripLoad, Known<Calculated<double>>> pressure, double allowed)
    {
        if (known.Select(k => pressure(k.Strip).NotChecked).FirstOrDefault(why => why is not null) is { } why)
        {
            return why;
        }

        var (stage, strip) = known.MaxBy(k => pressure(k.Strip).Value!.Value);
        return new FoundationCheck(strip.Subject, stage, new Amount(pressure(strip).Value!.Value, Dimension.Stress), new Amount(allowed, Dimension.Stress));
    }

    private static Known<FoundationCheck> Frozen(HouseGeometry geometry) =>
        geometry.House.Trench is not { } trench ? new Message("analysis.foundation.no-trench")
        : geometry.House.Site.FrostDepth is not { } frost ? new Message("analysis.foundation.no-frost")
        : new FoundationCheck("trench", "", frost, trench.Depth);
}
