using Clomwright.Analysis.Drying;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>The foot of a lift sheet: what is tried before the next lift, the window forecast on each side of the house, and what to do when it has passed.</summary>
internal static class LiftWindow
{
    /// <summary>In one piece: on the foot of the sheet where it fits, else on its back.</summary>
    public static Block Of(Scene scene, LiftSlice lift) => new Stack([.. Blocks(scene, lift)]) { Above = 4 };

    private static IEnumerable<Block> Blocks(Scene scene, LiftSlice lift)
    {
        var say = scene.Say;
        var last = lift.Number == scene.Geometry.Lifts.Count;
        yield return new Heading(say.Say(last ? "lift.ready-top" : "lift.ready")) { Above = 4 };
        yield return new Table([new("") { Grows = 1 }], [.. ((string[])["lift.test-stick", "lift.test-thumb", "lift.test-foot", "lift.test-shade"]).Select(k => new Row(new Cell(say.Say(k)) { Tick = true }))]) { Above = 1, Pad = 0.35 };
        if (scene.Set.Drying is { Value: { } drying })
        {
            yield return Bands(scene, drying, lift);
            yield return new WindowRows([.. Rows(scene, drying, lift)], say.Say("lift.days-after"), [say.Say("lift.go"), say.Say("lift.wait")], say.Book.Marked) { Above = 2.5 };
            yield return new Paragraph(say.Say("lift.window-note"), Styles.Small) { Above = 1 };
        }
        else
        {
            yield return new Paragraph(Unknown(scene), Styles.BodyStrong) { Above = 1.5 };
        }

        yield return new Paragraph(say.Say(last ? "lift.ready-last" : "lift.window-passed"), Styles.Body) { Above = 1.5 };
        yield return new Facts([.. ((string[])["lift.laid-on", "lift.firm-from", "lift.keys-until", "lift.checked-by"]).Select(k => new Fact(say.Say(k), ""))], Styles.Body) { Above = 3 };
    }

    /// <summary>Warnings of the forecast at a lift; 0 for those of the whole wall.</summary>
    public static IEnumerable<string> Warnings(Scene scene, int lift) =>
        scene.Set.Drying is { Value: { } drying } ? drying.LiftWarnings.Where(w => w.Lift == lift).Select(w => Sentence(scene.Say.Say(w.Words))) : [];

    private static string Unknown(Scene scene) => scene.Say.Say("lift.window-unknown", ("because", scene.Set.Drying is { NotChecked: { } because } ? scene.Say.Say(because) : scene.Say.Say("not-known")));

    private static Facts Bands(Scene scene, DryingResult drying, LiftSlice lift)
    {
        var say = scene.Say;
        var band = drying.Lifts[lift.Index];
        return new Facts(
        [
            new Fact(say.Say(lift.Number == scene.Geometry.Lifts.Count ? "lift.beam-in" : "lift.next-in"), say.Say("drying.days", ("days", say.Days(band.DaysToNext.Low, band.DaysToNext.High))), say.Say("drying.forecast")),
            new Fact(say.Say("lift.keys-for"), say.Say("drying.days", ("days", say.Days(band.KeysFor.Low, band.KeysFor.High))), say.Say("drying.forecast")),
            Range(scene, "lift.stands", drying.HeightToday, say.Say("lift.stands-cap", ("cap", Amount.Metres(drying.PracticeCap)))),
            Range(scene, "lift.settles", band.Settles, say.Say("drying.forecast")),
        ], Styles.BodyStrong) { Above = 2.5 };
    }

    private static Fact Range(Scene scene, string key, Band band, string note)
    {
        var say = scene.Say;
        string Both(Func<Amount, string> text) => (band.Low, band.High) switch
        {
            ({ } a, { } b) when text(Amount.Metres(a)) != text(Amount.Metres(b)) => text(Amount.Metres(a)) + " – " + text(Amount.Metres(b)),
            ({ } a, _) => text(Amount.Metres(a)),
            _ => say.Say("not-known"),
        };
        return new Fact(say.Say(key), Both(say.One), Wording.Dotted(Both(say.Other), note));
    }

    private static IEnumerable<WindowRow> Rows(Scene scene, DryingResult drying, LiftSlice lift) =>
        Forecasts.Sides(drying).Select(side =>
        {
            var window = Forecasts.Together([.. side.Bays.Select(b => drying.WindowOf(lift.Number, b))]);
            return new WindowRow(
                Forecasts.Faces(scene, side.Wind), string.Join(", ", side.Bays.Select(b => Forecasts.Between(scene, drying.Bays[b])).Distinct()),
                (window.Firm.Fast, window.Firm.Slow), window.Firm.Middle, (window.Keys.Fast, window.Keys.Slow), window.Keys.Middle,
                scene.Say.Say("lift.window-words", ("firm", scene.Say.Days(window.Firm)), ("keys", scene.Say.Days(window.Keys))));
        });

    private static string Sentence(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..] + ".";
}
