using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Statics of plain roofs: simple spans to a post or a high wall, or straight legs that lean on each other.</summary>
/// <remarks>
/// Every rafter bends as a simple span between its foot and its inner support, with its overhangs. Two legs that only lean on each other at heights z1, z2 over spans b1, b2 push each other with
/// <c>H = (M1 b2 + M2 b1)/(z1 b2 + z2 b1)</c> and carry <c>V = (M1 - H z1)/b1</c> from the first to the second: the three-hinged arch. A ring is taken as pairs facing each other.
/// </remarks>
internal sealed class PlainStatics(PlainLayout layout) : IStatics
{
    public double[] Inner(double[] moments) => [.. moments.Select((m, i) => m / layout.Poles[i].Far)];

    public RoofForces Of(PoleLoad[] loads, double? modulus)
    {
        var n = layout.Poles.Count;
        var thrust = new double[n];
        var lift = new double[n];
        for (var i = 0; i < n; i++)
        {
            (thrust[i], lift[i]) = At(i, loads);
        }

        var plate = new double[layout.Landings];
        var load = new double[layout.Landings];
        var rafter = Enumerable.Repeat(-1, layout.Landings).ToArray();
        for (var i = 0; i < n; i++)
        {
            load[layout.Feet[i]] += loads[i].Total;
            plate[layout.Feet[i]] += loads[i].Total - lift[i];
            rafter[layout.Feet[i]] = i;
            if (layout.Ends[i] >= 0)
            {
                plate[layout.Ends[i]] += lift[i];
                rafter[layout.Ends[i]] = i;
            }
        }

        var diagrams = layout.Poles.Select((pole, i) =>
        {
            var inner = loads[i].PlateMoment / pole.Far;
            return PoleDiagram.Of(pole, loads[i], loads[i].Total - inner, 0, inner);
        }).ToArray();
        var stress = diagrams.Select(PoleStress.Of).ToArray();
        return new RoofForces
        {
            Load = Sequence.Create<double>(load),
            LoadMoment = Each(i => loads[i].PlateMoment),
            CrossingForce = Each(i => lift[i]),
            CrossingForceInSpace = Each(i => lift[i]),
            Governing = Each(i => lift[i]),
            CrossingSidewaysInSpace = Each(i => thrust[i]),
            PlateReaction = Sequence.Create<double>(plate),
            PlateSidewaysInSpace = Each(i => thrust[i]),
            MomentAtPlate = Each(i => diagrams[i].MomentAtPlate),
            MomentAtHeel = Each(i => diagrams[i].MomentAtHeel),
            MomentAtNear = Each(i => diagrams[i].Moment[diagrams[i].GreatestMomentAt]),
            Shear = Each(i => diagrams[i].GreatestShear * layout.Poles[i].PitchCosine),
            ShearOfOverhang = Each(i => Math.Abs(diagrams[i].ShearOfOverhang) * layout.Poles[i].PitchCosine),
            BendingStress = Each(i => stress[i].Bending),
            BendingStressGross = Each(i => stress[i].BendingGross),
            ShearStress = Each(i => stress[i].Shear),
            Drop = modulus is { } e ? Each(i => diagrams[i].SinkAtNear(x => e * Math.PI * Math.Pow(layout.Poles[i].DiameterAt(x), 4) / 64)) : [],
        };

        Sequence<double> Each(Func<int, double> value) => rafter.Select(i => i < 0 ? 0 : value(i)).ToSequence();
    }

    private (double Thrust, double Lift) At(int i, PoleLoad[] loads)
    {
        var pole = layout.Poles[i];
        var other = layout.Partners[i];
        if (other < 0)
        {
            return (0, loads[i].PlateMoment / pole.Far);
        }

        var facing = layout.Poles[other];
        double z1 = pole.Slope * pole.Far, z2 = facing.Slope * facing.Far;
        var h = (loads[i].PlateMoment * facing.Far + loads[other].PlateMoment * pole.Far) / (z1 * facing.Far + z2 * pole.Far);
        return (h, (loads[i].PlateMoment - h * z1) / pole.Far);
    }
}
