using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>What is cut into the poles: the flat of their seats, notches at crossings, tips over a post.</summary>
internal static class PoleSeats
{
    /// <summary>How deep the flat of a seat is.</summary>
    public static string Flat(Scene scene) => scene.Say.Say("pole-cards.flat", ("depth", scene.Say.One(Amount.Metres(LevelSeat.DepthOf(scene.House.Roof?.Seat)))));

    /// <summary>How deep a pole is notched at its crossings; empty where it is not.</summary>
    public static string Notch(Scene scene, RoofPole pole) => pole.Place.Notch > 0 ? scene.Say.Say("pole-cards.notch", ("depth", Amount.Metres(pole.Place.Notch))) : "";

    /// <summary>How the tip of a pole is cut that meets others over a post; empty without one, and where all are cut alike.</summary>
    public static string Tip(Scene scene, IReadOnlyList<RoofPole> poles, RoofPole pole) =>
        PostDrawing.Of(scene.Geometry) is null || Tips(scene, poles).Distinct().Count() == 1 ? "" : Tips(scene, poles).ElementAt(poles.TakeWhile(p => p.Number != pole.Number).Count());

    private static IEnumerable<string> Tips(Scene scene, IReadOnlyList<RoofPole> poles)
    {
        Sequence<PoleGeometry> places = [.. poles.Select(p => p.Place)];
        return poles.Select((_, i) => PostTips.Cuts(places, i)).Select(c => scene.Say.Say("pole-cards.tip", ("left", new Amount(c.Left, Dimension.Angle)), ("right", new Amount(c.Right, Dimension.Angle))));
    }

    /// <summary>What all cards share: how tips over a post are cut where all are alike, and whose number the depth of a seat is.</summary>
    public static string Shared(Scene scene, IReadOnlyList<RoofPole> poles)
    {
        var say = scene.Say;
        var alike = PostDrawing.Of(scene.Geometry) is not null && Tips(scene, poles).Distinct().ToArray() is [var cut] ? say.Say("pole-cards.tips-alike", ("cut", cut)) + " " : "";
        return alike + say.Say("pole-cards.seat-tag", ("tag", say.Say(scene.House.Roof?.Seat?.Flat is null ? Tag.Assumed : Tag.Given)));
    }

    /// <summary>What a seat of that depth comes to where it is cut level, and what nobody has said or checked of it.</summary>
    public static IEnumerable<Paragraph> Note(Scene scene, IReadOnlyList<RoofPole> poles)
    {
        var (say, seat) = (scene.Say, scene.House.Roof?.Seat);
        if (scene.House.BondBeam is not { } beam)
        {
            yield break;
        }

        var (pole, cut) = poles.Select(p => (p, Cut: p.Place.Seat!)).MaxBy(p => p.Cut.Outer);
        var level = cut.Inner >= 0
            ? say.Say("pole-cards.seat-level", ("width", beam.Width), ("outer", Amount.Metres(cut.Outer)), ("inner", Amount.Metres(cut.Inner)))
            : say.Say("pole-cards.seat-short", ("width", beam.Width), ("outer", Amount.Metres(cut.Outer)), ("full", Amount.Metres(cut.Full)), ("share", Amount.Fraction(cut.Full / pole.Place.DiameterAt(0))));
        yield return new Paragraph(string.Join(" ", say.Say("pole-cards.seat-how", ("depth", Amount.Metres(cut.Depth))), level, say.Say("pole-cards.seat-open")), Styles.Body) { Above = 2 };
    }

    /// <summary>What nobody has said of the upper ends of rafters that run from wall to wall over a level bond beam; nothing where there is nothing open.</summary>
    public static IEnumerable<Block> HighEnds(Scene scene, RoofResult roof) =>
        roof.Supports.FirstOrDefault(c => c.Key == "high-ends") is { Check.NotChecked: { } open } ? [RoofPoles.NotChecked(scene, open)] : [];
}
