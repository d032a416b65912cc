using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Templates;

namespace Clomwright.Papers;

/// <summary>Full-size templates of one house: a wedge for each leaning face, boards for its curves, forms for arches and niches, mitres of the bond beam, the storey pole and the strip of radii.</summary>
public static class TemplateBook
{
    /// <summary>What each template is for, then every template cut into tiles of paper, each with a square to check the printer by, crosses to lay neighbours by and a small map.</summary>
    /// <remarks>Keys: <c>templates</c>, then <c>template-taper-outside</c> and, tile by tile, <c>template-taper-outside-2</c> and on.</remarks>
    public static Sequence<Sheet> Of(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var scene = new Scene(set);
        Tiling[] tilings = [.. All(scene).Select(t => Tiling.Of(t, SheetFrame.Content(scene.Portrait)))];
        Draft[] drafts = [.. TemplatesSheet.Of(scene).Concat(tilings.SelectMany(t => Tiles(scene, t))).Select(d => d.Drawn(scene.Say))];
        var revision = RevisionBlocks.Compared(scene, "templates", drafts);
        return drafts.Select((d, i) => d.Finish(i + 1, drafts.Length, scene.Imprint with { Set = revision }, scene.Say)).ToSequence();
    }

    /// <summary>Every template whole, on a sheet as large as it needs: for a plotter or a print shop.</summary>
    public static Sequence<Sheet> Whole(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var scene = new Scene(set);
        return All(scene).Select(t => WholeTemplate.Of(scene, t)).ToSequence();
    }

    /// <summary>In the order in which they are wanted.</summary>
    internal static IEnumerable<Template> All(Scene scene) => [.. Strips.Of(scene), .. CurveBoards.Of(scene), .. Forms.Of(scene), .. Mitres.Of(scene)];

    private static IEnumerable<Draft> Tiles(Scene scene, Tiling tiling)
    {
        var say = scene.Say;
        for (var i = 0; i < tiling.Tiles; i++)
        {
            var key = "template-" + tiling.Template.Key + (i == 0 ? "" : FormattableString.Invariant($"-{i + 1}"));
            var tile = say.Say("template.tile", ("n", i + 1), ("count", tiling.Tiles));
            var words = new TileWords(say.Say("template.square"), [say.Say("template.square-check"), say.Say("template.join"), say.Say("template.paper")], tile);
            var title = tiling.Tiles == 1 ? tiling.Template.Title : say.Say("template.tile-title", ("title", tiling.Template.Title), ("n", i + 1));
            yield return new Draft(new SheetHead(key, title, Clock.Drawing, say.Say("template.full-size")) { GoesOn = i > 0 }, scene.Portrait, [new TilePage(tiling, i, words)]);
        }
    }
}
