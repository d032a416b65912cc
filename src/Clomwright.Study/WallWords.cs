using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Study.Demands;

namespace Clomwright.Study;

/// <summary>What the cases of the wall's model are called.</summary>
public static class WallWords
{
    /// <summary>A stage, or a combination with the roof's pattern and the way that wind or shaking goes.</summary>
    public static Message Case(WallCase one) => one.Soil is { } side
        ? Message.Of("study.wall-case.soil", ("case", Bare(one)), ("side", new Amount(side, Dimension.Angle)))
        : Bare(one);

    private static Message Bare(WallCase one) =>
        StageStates.Is(one.Sense) ? Stages.Of(one.Sense)
        : one.From is { } from ? Message.Of(
            "study.wall-case.from", ("combination", one.Combination), ("sense", new Message($"study.sense.{one.Sense}")),
            ("acting", Message.Of(one.Shakes ? "study.demand.wall-shaking" : "study.demand.wall-wind", ("from", new Amount(from, Dimension.Angle)))))
        : Message.Of("study.stage.combined", ("combination", one.Combination), ("sense", new Message($"study.sense.{one.Sense}")));

    /// <summary>Where a zone of tension is.</summary>
    public static Message Place(TensionZone zone) => zone.Near is { } name
        ? Message.Of("study.place.near", ("name", name))
        : Message.Of("study.place.along", ("station", Amount.Metres(zone.Station)), ("height", Amount.Metres(zone.Height)));
}
