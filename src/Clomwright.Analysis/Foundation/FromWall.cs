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
        Sequence<FoundationStage> stages = [new("bareWall", loads.Of(null)), .. UnderRoof.Of(geometry, loads, roof)];
        var known = stages.Where(s => s.Strips.Is).SelectMany(s => s.Strips.Value!.Strips.Select(strip => new Pressed(s, strip))).ToArray();
        var unknown = stages[0].Strips.NotChecked;
        var drain = Drains.Of(geometry);
        var estimate = FrostEstimates.Of(geometry.House.Site.Freezing);
        return new FoundationResult
        {
            Stages = stages,
            Stem = unknown ?? Stem(geometry, known),
            Ground = unknown ?? Ground(geometry, known),
            Joints =
            [
                new("cob on stem", unknown ?? Farthest(known, s => s.StemPressure.NotChecked is { } why ? why : Same(s.StemShare))),
                new("stem foot", unknown ?? Farthest(known, s => Share(s.FootEccentricity))),
                new("trench", unknown ?? Farthest(known, s => Share(s.TrenchEccentricity))),
            ],
            DryStem = StemMaterial.Find(geometry.House.Stem.Material) is { Dry: true } && geometry.House.Site.Grade is { } grade && grade < geometry.Wall.Base && geometry.House.Stem.Width.Nanometres > 0
                ? (geometry.Wall.Base - grade).Metres / geometry.House.Stem.Width.Metres
                : null,
            Capacities = GroundCapacities.Of(geometry.House),
            Frost = Frozen(geometry),
            FrostEstimate = estimate,
            Drain = drain,
            Missing = stages.First(s => s.Key == "soilWetSnow").Strips.NotChecked ?? (roof.Combined.Missing is [var first, ..] ? first : null),
            Assumptions =
            [
                new Assumption("cob-standing", new Message("analysis.assumed.cob-standing"), new Amount(TakeDown.CobDensity, Dimension.Density), Sources.Get("wellerlehm")),
                new Assumption("plaster-weight", new Message("analysis.assumed.plaster-weight"), new Amount(TakeDown.PlasterDensity, Dimension.Density), Sources.Get("plaster-weight-memory")),
                .. drain.Is && geometry.House.Trench is { OutletBearing: null }
                    ? (Sequence<Assumption>)[new Assumption("drain-leaves", new Message("analysis.assumed.drain-leaves"), Amount.Metres(0), Sources.Get("common-practice"))]
                    : [],
            ],
        };
    }

    /// <summary>What looks like a slip in what was written of the drain; none most of the time. Cheap: no load is taken down.</summary>
    public static Sequence<Diagnostic> Remarks(HouseGeometry geometry) => Drains.Of(geometry).Value?.UnitSlip is { } slip
        ? [new Diagnostic(geometry.House.Trench is { Fall: not null } ? "trench.fall" : "trench.outlet", slip, Severity.Warning)]
        : [];

    private static Known<FoundationCheck> Stem(HouseGeometry geometry, Pressed[] known)
    {
        if (geometry.House.Stem.AllowedPressure is { } given)
        {
            return Hardest(known, s => s.StemPressure, given.Pascals);
        }

        if (StemMaterial.Find(geometry.House.Stem.Material)?.Allowable is not { } allowable)
        {
            return Message.Of("analysis.foundation.stem-strength", ("material", new Argument.Material(geometry.House.Stem.Material)));
        }

        var check = Hardest(known, s => s.StemPressure, allowable.Value);
        return check.Value is { } held ? held with { From = allowable.Source } : check;
    }

    private static Known<FoundationCheck> Ground(HouseGeometry geometry, Pressed[] known) =>
        geometry.House.Site.SoilBearing is { } bearing ? Hardest(known, s => s.GroundPressure, bearing.Pascals) : new Message("analysis.foundation.no-bearing");

    private static Known<FoundationCheck> Hardest(Pressed[] known, Func<StripLoad, Known<Calculated<double>>> pressure, double allowed) =>
        Most(known, s => pressure(s) is { } p && p.Value is { } value ? Same(value.Value) : p.NotChecked!, Dimension.Stress, allowed);

    private static Known<FoundationCheck> Farthest(Pressed[] known, Func<StripLoad, Known<Settled>> share) => Most(known, share, Dimension.Fraction, 1);

    private static Known<FoundationCheck> Most(Pressed[] known, Func<StripLoad, Known<Settled>> of, Dimension dimension, double capacity)
    {
        var all = known.Select(k => (k.Stage, k.Strip, Value: of(k.Strip))).ToArray();
        if (all.FirstOrDefault(a => !a.Value.Is) is { Strip: not null } lacks)
        {
            return lacks.Value.NotChecked!;
        }

        var (stage, strip, most) = all.MaxBy(a => a.Value.Value!.Si);
        return new FoundationCheck(strip.Subject, stage.Key, new Amount(most.Value!.Si, dimension), new Amount(capacity, dimension)) { Combination = stage.Combination, Sense = stage.Sense };
    }

    private static Known<Settled> Same(double si) => new Settled(si);

    private static Known<Settled> Share(Known<Calculated<double>> share) => share.Value is { } known ? new Settled(known.Value) : share.NotChecked!;

    private static Known<FoundationCheck> Frozen(HouseGeometry geometry) =>
        geometry.House.Trench is not { } trench ? new Message("analysis.foundation.no-trench")
        : geometry.House.Site.FrostDepth is not { } frost ? NoFrost(geometry)
        : new FoundationCheck("trench", "", frost, trench.Depth);

    private static Message NoFrost(HouseGeometry geometry) => FrostEstimates.Of(geometry.House.Site.Freezing).Value is { } estimate
        ? Message.Of("analysis.foundation.frost-estimate", ("berggren", Amount.Metres(estimate.Berggren)), ("stefan", Amount.Metres(estimate.Stefan)))
        : new Message("analysis.foundation.no-frost");

    private sealed record Pressed(FoundationStage Stage, StripLoad Strip);

    private sealed record Settled(double Si);
}
