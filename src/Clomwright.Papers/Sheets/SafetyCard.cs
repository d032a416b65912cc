using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Read aloud every morning before anyone lifts a tool.</summary>
internal static class SafetyCard
{
    private static readonly string[] Everyone = ["stop", "wall", "roof", "falls", "lifting", "feet", "dust", "lime", "power", "fire", "heat", "visitors"];

    private static readonly string[] Asked = ["aider", "weather", "new", "hurt", "walls", "platforms"];

    public static IEnumerable<Draft> Of(Wording say, PaperSize paper, string key = "safety-card") => Draft.Flow(new SheetHead(key, say.Say("safety.title")), paper.Portrait(),
    [
        new Paragraph(say.Say("safety.how"), Styles.Body),
        new Heading(say.Say("safety.asked")) { Above = 3 },
        new Table([new("") { Grows = 1 }], [.. Asked.Select(k => new Row(new Cell(say.Say("safety.ask-" + k)) { Tick = true, Lettering = Styles.Heading }))]) { Above = 0.8, Pad = 0.5 },
        new Heading(say.Say("safety.everyone")) { Above = 3 },
        new Table([new(""), new("") { Grows = 1 }], [.. Everyone.Select(k => new Row(new Cell(say.Say("safety.word-" + k)) { Lettering = Styles.Heading }, new Cell(say.Say("safety.rule-" + k)) { Lettering = Lettering.Tall(2.5) }))]) { Above = 0.8, Pad = 0.8 },
        new Heading(say.Say("safety.read")) { Above = 3 },
        new Table(
            [new(say.Say("daily.date")) { Grows = 1 }, new(say.Say("safety.read-by")) { Grows = 2 }, new(say.Say("safety.new-people")) { Grows = 3 }, new(say.Say("safety.danger-today")) { Grows = 4 }],
            [.. Enumerable.Range(0, 6).Select(_ => new Row("", "", "", ""))]) { Above = 0.8, Pad = 2.6 },
    ], say);
}
