using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>A roof of another kind over the same wall: what both kinds have stays, what only the new one has is a usual first size to be changed.</summary>
public static class RoofShaping
{
    /// <summary>The words of the kinds, as the house file has them; the first is no roof.</summary>
    public static Sequence<string> Kinds => ["none", "reciprocal", "radial", "shed", "gable"];

    /// <summary>The word of a roof's kind.</summary>
    public static string KindOf(Roof? roof) => roof switch { null => "none", Roof.Reciprocal => "reciprocal", Roof.Radial => "radial", Roof.Shed => "shed", _ => "gable" };

    /// <summary>The roof as another kind; null for none. The same roof for a kind that it has, or a word that is none.</summary>
    /// <remarks>Poles, pitch and spacing that a kind needs and the old one did not have are common practice without a source: eight poles, 1 in 6, 24 in or 600 mm.</remarks>
    public static Roof? As(Roof? roof, string kind, UnitSystem units)
    {
        if (kind == KindOf(roof) || !Kinds.Contains(kind))
        {
            return roof;
        }

        var imperial = units == UnitSystem.Imperial;
        Length Tape(long inches, long millimetres) => imperial ? Length.FromInches(inches) : Length.FromMillimetres(millimetres);
        var pole = roof switch { Roof.Reciprocal r => r.Pole, Roof.Radial r => r.Pole, Roof.Shed r => r.Pole, Roof.Gable r => r.Pole, _ => PoleSize.Even(Tape(6, 150)) };
        var poles = roof switch { Roof.Reciprocal r => r.Poles, Roof.Radial r => r.Poles, _ => 8 };
        var ring = roof switch { Roof.Reciprocal r => r.RingRadius, Roof.Radial { CentrePost: false } r => r.RingRadius, _ => Tape(18, 450) };
        var pitch = roof switch { Roof.Radial r => r.Pitch, Roof.Shed r => r.Pitch, Roof.Gable r => r.Pitch, _ => new Slope(1.0 / 6) };
        var spacing = roof switch { Roof.Shed r => r.Spacing, Roof.Gable r => r.Spacing, _ => Tape(24, 600) };
        var eave = roof?.Eave ?? Tape(24, 600);
        Roof? made = kind switch
        {
            "reciprocal" => new Roof.Reciprocal(poles, ring, pole) { Eave = eave },
            "radial" => new Roof.Radial(poles, pole, pitch) { Eave = eave, RingRadius = ring },
            "shed" => new Roof.Shed(pole, spacing, pitch) { Eave = eave },
            "gable" => new Roof.Gable(pole, spacing, pitch) { Eave = eave },
            _ => null,
        };
        var round = roof is Roof.Reciprocal or Roof.Radial && made is Roof.Reciprocal or Roof.Radial;
        return made is null || roof is null ? made : made with
        {
            Species = roof.Species, Secondaries = roof.Secondaries, Deck = roof.Deck, DeckMaterial = roof.DeckMaterial, Layers = roof.Layers, EdgeBoard = roof.EdgeBoard,
            DeckNails = roof.DeckNails, Braces = roof.Braces, Seat = roof.Seat, Flue = roof.Flue, Overflow = roof.Overflow, Drip = roof.Drip, Battens = roof.Battens,
            SheetRoll = roof.SheetRoll, FirstBearing = roof.FirstBearing, Landings = round ? roof.Landings : [],
        };
    }
}
