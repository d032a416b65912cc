using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The roof by itself.</summary>
internal static class RoofChecks
{
    private const int PolesLeast = 3;
    private const int PolesMost = 60;
    private const double PitchMost = 3;

    public static void Of(Roof? roof, Checks checks)
    {
        if (roof is null)
        {
            return;
        }

        _ = checks.NotNegative("roof.eave", roof.Eave) && checks.NotAbove("roof.eave", roof.Eave, Limits.Height);
        checks.Word("roof.species", roof.Species);
        if (roof.Secondaries is { } secondaries)
        {
            checks.Count("roof.secondaries.perBay", secondaries.PerBay, 1, 20);
            checks.Size("roof.secondaries.diameter", secondaries.Diameter, Limits.Thick);
        }

        checks.Size("roof.deck", roof.Deck, Limits.Thick);
        checks.Word("roof.deckMaterial", roof.DeckMaterial);
        SiteChecks.Layers("roof.layers", roof.Layers, checks);
        checks.Size("roof.edgeBoard", roof.EdgeBoard, Limits.Thick);
        checks.Bearing("roof.firstBearing", roof.FirstBearing);
        RoofFixingChecks.Of(roof, checks);
        switch (roof)
        {
            case Roof.Reciprocal reciprocal:
                Poles(reciprocal.Poles, roof.Landings, checks);
                checks.Size("roof.ringRadius", reciprocal.RingRadius, Limits.Plan);
                if (Pole(reciprocal.Pole, checks) && checks.NotNegative("roof.notch", reciprocal.Notch) && reciprocal.Notch >= reciprocal.Pole.Tip)
                {
                    checks.Error("roof.notch", "building.notch", ("notch", new Argument.Exact(reciprocal.Notch)), ("pole", new Argument.Exact(reciprocal.Pole.Tip)));
                }

                Joints(reciprocal, checks);
                break;
            case Roof.Radial radial:
                Poles(radial.Poles, roof.Landings, checks);
                Pole(radial.Pole, checks);
                checks.Positive("roof.pitch", radial.Pitch, PitchMost);
                _ = checks.NotNegative("roof.ringRadius", radial.RingRadius) && checks.NotAbove("roof.ringRadius", radial.RingRadius, Limits.Plan);
                break;
            case Roof.Shed shed:
                Rafters(shed.Pole, shed.Spacing, shed.Pitch, roof.Landings, checks);
                break;
            case Roof.Gable gable:
                Rafters(gable.Pole, gable.Spacing, gable.Pitch, roof.Landings, checks);
                break;
        }
    }

    private static void Joints(Roof.Reciprocal roof, Checks checks)
    {
        if (roof.Pin is { } pin)
        {
            checks.Size("roof.pin.diameter", pin.Diameter, Limits.Thick);
            checks.Size("roof.pin.washer", pin.Washer, Limits.Thick);
            checks.Word("roof.pin.material", pin.Material);
        }

        switch (roof.IfOneFails)
        {
            case IfOneFails.Strap strap:
                checks.Size("roof.ifOneFails.width", strap.Width, Limits.Thick);
                checks.Size("roof.ifOneFails.thickness", strap.Thickness, Limits.Thick);
                break;
            case IfOneFails.Post post:
                checks.Size("roof.ifOneFails.diameter", post.Diameter, Limits.Thick);
                checks.Size("roof.ifOneFails.footing", post.Footing, Limits.Plan);
                break;
        }
    }

    private static void Rafters(PoleSize pole, Length spacing, Slope pitch, Sequence<Angle> landings, Checks checks)
    {
        Pole(pole, checks);
        checks.Size("roof.spacing", spacing, Limits.Plan);
        checks.Positive("roof.pitch", pitch, PitchMost);
        Bearings(landings, checks);
    }

    private static bool Pole(PoleSize pole, Checks checks)
    {
        var sized = checks.Size("roof.poleDiameter", pole.Butt, Limits.Thick) && checks.Size("roof.poleDiameter", pole.Tip, Limits.Thick);
        if (sized && pole.Tip > pole.Butt)
        {
            checks.Error("roof.poleDiameter", "building.pole-ends", ("butt", new Argument.Exact(pole.Butt)), ("tip", new Argument.Exact(pole.Tip)));
        }

        return sized;
    }

    private static void Poles(int poles, Sequence<Angle> landings, Checks checks)
    {
        checks.Count("roof.poles", poles, PolesLeast, PolesMost);
        if (landings.Count > 0 && landings.Count != poles)
        {
            checks.Error("roof.landings", "building.landings-count", ("landings", landings.Count), ("poles", poles));
        }

        Bearings(landings, checks);
    }

    private static void Bearings(Sequence<Angle> landings, Checks checks)
    {
        var turned = 0.0;
        for (var i = 0; i < landings.Count; i++)
        {
            if (!checks.Bearing($"roof.landings[{i}]", landings[i]))
            {
                return;
            }

            var step = i == 0 ? 0 : Math.IEEERemainder(landings[i].Degrees - landings[i - 1].Degrees, 360);
            turned += step < 0 ? step + 360 : step;
            if (i > 0 && (step == 0 || turned >= 360))
            {
                checks.Error($"roof.landings[{i}]", "building.landings-order", ("bearing", landings[i]), ("before", landings[i - 1]));
                return;
            }
        }
    }
}
