using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Study;
using StageResult = Clomwright.Analysis.Known<Clomwright.Study.StageBending>;

namespace Clomwright.Papers.Sheets;

/// <summary>A pole or rafter as the crew handles it. Marks are in m along it from its butt at the eave.</summary>
/// <param name="Place">Where it lies.</param>
/// <param name="Card">Its card in a reciprocal frame; null for a rafter.</param>
/// <param name="SeatMark">To the middle of its seat on the bond beam.</param>
/// <param name="CutLength">To cut.</param>
/// <param name="Mass">When green, kg; null when the timber is not known.</param>
/// <param name="People">To lift it; null when its mass is not known.</param>
internal sealed record RoofPole(PoleGeometry Place, PoleCard? Card, double SeatMark, double CutLength, double? Mass, int? People)
{
    public int Number => Place.Number;

    /// <summary>Marks from the butt: seat, and for a pole of a ring the two crossings.</summary>
    public IReadOnlyList<(string Key, double At)> Marks => Card is null
        ? [("seat", SeatMark), ("upper", SeatMark + Place.LengthToFar)]
        : [("seat", SeatMark), ("near", Card.NearMark), ("far", Card.FarMark)];
}

/// <summary>What the sheets of the roof read of it.</summary>
internal static class RoofPoles
{
    /// <summary>All poles by number; none when the roof is not known.</summary>
    public static IReadOnlyList<RoofPole> Of(RoofResult roof) => roof switch
    {
        { Reciprocal.Value: { } frame } =>
        [
            .. frame.Poles.Select(card => new RoofPole(frame.Geometry.Poles.First(p => p.Number == card.Number), card, card.SeatMark, card.CutLength, card.Mass, card.People)),
        ],
        { Plain.Value: { } plain } => [.. plain.Rafters.Zip(plain.Places, (r, p) => new RoofPole(p, null, p.EaveReach / p.PitchCosine, r.Length, r.Mass, r.People))],
        _ => [],
    };

    /// <summary>How many poles lie side by side in every place; 2 in a doubled frame.</summary>
    public static int SideBySide(RoofResult roof) => roof.Reciprocal.Value?.Geometry.SideBySide ?? 1;

    /// <summary>How many there are.</summary>
    public static int Count(RoofResult roof) => SideBySide(roof) * Of(roof).Count;

    /// <summary>Why the roof is not known.</summary>
    public static Message Why(RoofResult roof) =>
        roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : roof.Plain.NotChecked ?? new Message("analysis.roof.none");

    /// <summary>Station of a pole's foot along the bond-beam line.</summary>
    public static double Station(Scene scene, RoofPole pole) => scene.Geometry.Landings.MinBy(l => (l.Point - pole.Place.Foot).Norm)!.BeamStation;

    /// <summary>The states of the roof; none when it is not known.</summary>
    public static IReadOnlyList<RoofStage> Stages(RoofResult roof) => [.. roof.Reciprocal.Value?.Stages ?? roof.Plain.Value?.Stages ?? []];

    /// <summary>Bending in a state, or why it is not known.</summary>
    public static StageResult Bending(RoofResult roof, string stage) => roof switch
    {
        { Reciprocal.Value: { } frame } => StageBending.Of(frame, stage),
        { Plain.Value: { } plain } => StageBending.Of(plain, stage),
        _ => Why(roof),
    };

    /// <summary>A bar that says that something is not checked, and why.</summary>
    public static Block NotChecked(Scene scene, Message why) => new Cautions(scene.Say.Say("not-checked"), [scene.Say.Say(why)]);

    /// <summary>A number, or why it is not known.</summary>
    public static Fact Fact(Scene scene, string key, Amount? amount, Message why) => amount is { } known
        ? scene.Fact(key, known, Tag.Computed)
        : new Fact(scene.Say.Say(key), scene.Say.Say("not-checked"), scene.Say.Say(why));

    /// <summary>A mass, or that it is not known.</summary>
    public static Cell Mass(Scene scene, RoofPole pole) => pole.Mass is { } kg ? scene.Cell(new Amount(kg, Dimension.Mass)) : new Cell(scene.Say.Say("not-checked"));
}
