using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Setting;

namespace Clomwright.Papers.Sheets;

/// <summary>Every calculation behind the numbers, line by line: equation, symbols, numbers, source and tag.</summary>
/// <remarks>A calculation made alike for many places is printed in full for the first and as a row of results for the others.</remarks>
internal static class CalculationSheet
{
    /// <summary>Beside each other on a lying sheet.</summary>
    private const int Columns = 3;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        if (scene.Set.Calculations.Count == 0)
        {
            return [];
        }

        List<Block> blocks = [new Paragraph(say.Say("calculations.note"), Styles.Body)];
        foreach (var alike in scene.Set.Calculations.GroupBy(Kind))
        {
            blocks.AddRange(Told(say, [.. alike]));
        }

        return Draft.FlowAcross(Columns, new SheetHead("calculations", say.Say("calculations.title")), scene.Set.Options.Paper.OfficeList(), blocks, say);
    }

    /// <summary>Same steps, same equations.</summary>
    private static string Kind(Calculation calculation) => string.Join('|', calculation.Steps.Select(s => s.Key + s.Equation));

    private static string Named(Wording say, Calculation calculation) => Wording.Dotted(say.Say(calculation.Title), calculation.Place is { } place ? Place(say, place) : "");

    /// <summary>Of what it is, in words: a part of the shell by its name, else as the subject of a finding.</summary>
    /// <remarks>A part with linings is the part and the author's names of them, between plus signs.</remarks>
    private static string Place(Wording say, string place) =>
        place.Split(" + ") is [var part, _, ..] ? Place(say, part) + place[part.Length..]
        : place.Contains('-', StringComparison.Ordinal) ? say.NameOf($"papers.comfort.name.{place}", say.Subject(place)) : say.Subject(place);

    private static IEnumerable<Block> Told(Wording say, IReadOnlyList<Calculation> alike)
    {
        var first = alike[0];
        yield return new Heading(Named(say, first)) { Above = 4 };
        var known = new HashSet<string>();
        foreach (var step in first.Steps)
        {
            yield return Worked(say, step, known) with { Above = 2 };
            known.Add(step.Result.Name);
        }

        if (alike.Count > 1)
        {
            yield return new LeadIn(say.Say("calculations.others", ("n", alike.Count - 1)));
            yield return Results(say, [.. alike.Skip(1)], first);
        }
    }

    private static Working Worked(Wording say, Step step, HashSet<string> known) => new(
        say.Say(step.Result.What),
        say.One(step.Result.Value),
        Formula.Equation(step.Result.Name, Equation.Parse(step.Equation).Term, Styles.Body),
        say.Say(step.Source),
        [.. step.Symbols.Select(s => new WorkingSymbol(Formula.Symbol(s.Name, Styles.Small), say.Say(s.What), say.One(s.Value), From(say, s, known)))]);

    private static string From(Wording say, Symbol symbol, HashSet<string> known) =>
        known.Contains(symbol.Name) ? say.Say("calculations.above") : Wording.Dotted(say.Say(Names.Of(symbol.Tag, symbol.Source)), symbol.Source is { } source ? say.Say(source) : "");

    /// <summary>The other places: what came out of the last steps, as many as the paper is wide.</summary>
    private static Table Results(Wording say, IReadOnlyList<Calculation> others, Calculation first)
    {
        var alike = others.All(c => c.Place is not null && c.Title == first.Title);
        const int Most = 4;
        var from = Math.Max(0, first.Steps.Count - Most);
        return new Table(
            [new(say.Say("calculations.place")) { Grows = 1 }, .. first.Steps.Skip(from).Select(s => new Column(say.Say(s.Result.What), Drawing.Anchor.End))],
            [.. others.Select(c => new Row([new Cell(alike ? Place(say, c.Place!) : Named(say, c)), .. c.Steps.Skip(from).Select(s => new Cell(say.One(s.Result.Value)))]))]) { Above = 1, Pad = 0.3, Lettering = Styles.Small };
    }
}
