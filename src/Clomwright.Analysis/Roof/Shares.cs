using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>How a roof is shared out to its poles. Lists are in the order of <see cref="Poles"/>.</summary>
internal interface IShares
{
    /// <summary>The poles; for plain roofs each rafter lies as a pole whose far crossing is its inner support.</summary>
    Sequence<PoleGeometry> Poles { get; }

    /// <summary>Stations of each pole.</summary>
    IReadOnlyList<Sequence<double>> Stations { get; }

    /// <summary>Area on plan that no pole's share covers: the ring of a reciprocal frame, m2.</summary>
    double RingArea { get; }

    /// <summary>Ways out from the middle, of length 1, to try wind and drifts from.</summary>
    IReadOnlyList<PlanPoint> Ways { get; }

    /// <summary>Loads of a pressure on plan, Pa downward.</summary>
    PoleLoad[] Pressure(Func<RoofPoint, double> onPlan);

    /// <summary>Loads along the poles themselves, N for each metre of plan length.</summary>
    PoleLoad[] Along(Func<PoleGeometry, double, double> perMetre);

    /// <summary>What stands along the eave, N for each metre of it.</summary>
    PoleLoad[] AtEave(double perMetre);

    /// <summary>The same force on every pole at its touching point.</summary>
    PoleLoad[] AtRing(double force);

    /// <summary>A force on one pole at the station nearest to a plan distance.</summary>
    PoleLoad[] OnOne(int pole, double distance, double force);
}

/// <summary>What loads along the poles do.</summary>
internal interface IStatics
{
    /// <summary>Forces; how far things sink only with a modulus, Pa.</summary>
    RoofForces Of(PoleLoad[] loads, double? modulus);

    /// <summary>Forces at the inner supports from first moments about the plate, N.</summary>
    double[] Inner(double[] moments);
}

/// <summary>Statics of a reciprocal frame.</summary>
internal sealed class ReciprocalStatics(ReciprocalGeometry frame, SpatialEquilibrium space) : IStatics
{
    private readonly double[] near = frame.NearDistances;
    private readonly double[] far = frame.FarDistances;

    public RoofForces Of(PoleLoad[] loads, double? modulus) => RoofForces.Of(frame, space, loads, modulus);

    public double[] Inner(double[] moments) => CyclicEquilibrium.Forces(near, far, moments);
}
