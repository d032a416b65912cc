using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers.Exports;

/// <summary>Quantities, schedules and findings of a house as tables for other programs, in the units that come first.</summary>
public static class HouseTables
{
    /// <summary>Keys, in order.</summary>
    public static Sequence<string> Keys { get; } = ["lifts", "orders", "openings", "headers", "niches", "embeds", "findings", "tally"];

    /// <summary>All tables. Lengths are in inches or metres, areas in ft2 or m2, volumes in yd3 or m3; what is not known is empty.</summary>
    public static Sequence<DataTable> Of(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var scene = new Scene(set);
        var findings = Findings(scene);
        return [Lifts(scene), Orders(scene), Openings(scene), Headers(scene), Niches(scene), Embeds(scene), findings, Tally(scene, findings)];
    }

    private static DataTable Lifts(Scene scene)
    {
        var batches = scene.Set.Quantities.Lifts.ToDictionary(l => l.Lift);
        return Table(scene, "lifts", ["number", "bottom|Length", "top|Length", "net|Volume", "laid|Volume", "batches", "rise|Length"],
            scene.Geometry.Lifts.Select(l => Row(
                N(l.Index + 1), In(scene, l.Bottom), In(scene, l.Top), In(scene, new Volume(l.NetVolume)), In(scene, new Volume(l.LaidVolume)),
                N(batches.GetValueOrDefault(l.Index)?.Batches), batches.GetValueOrDefault(l.Index)?.RisePerBatch is { } rise ? In(scene, Amount.Metres(rise)) : new DataCell.Empty())), 3, 4, 5);
    }

    private static DataTable Orders(Scene scene) => Table(scene, "orders", ["what", "supplier", "net", "waste", "order", "unit", "tag", "basis"],
        scene.Set.Quantities.Orders.Select(o =>
        {
            var unit = o.Order is { } much ? UnitOf(scene, much.Dimension) : o.Net is { } net ? UnitOf(scene, net.Dimension) : null;
            return Row(
                W(scene.Say.Say(o.What)), W(o.Supplier), o.Net is { } n ? In(scene, n) : new DataCell.Empty(), N(o.Waste), Ordered(scene, o), W(unit?.Symbol ?? ""), W(scene.Say.Say(o.Tag)), W(scene.Say.Say(o.Basis)));
        }));

    /// <summary>Net and waste where that is what is ordered; else the rounded number, as of things that are sold whole.</summary>
    private static DataCell Ordered(Scene scene, OrderLine line)
    {
        if (line.Order is not { } order || In(scene, order) is not DataCell.Number number)
        {
            return new DataCell.Empty();
        }

        var follows = line.Net is { } net && net.Dimension == order.Dimension && Math.Abs(net.Si * (1 + line.Waste) - order.Si) <= 1e-9 * Math.Abs(order.Si);
        return follows ? new DataCell.Formula("C{r}*(1+D{r})", number.Value) : number;
    }

    private static DataTable Openings(Scene scene) => Table(scene, "openings", ["sign", "name", "kind", "station|Length", "width|Length", "height|Length", "sill|Length", "head|Length", "area|Area", "volume|Volume"],
        scene.Geometry.Openings.Select(o =>
        {
            var (width, height) = ((DataCell.Number)In(scene, o.Opening.Width), (DataCell.Number)In(scene, o.Opening.Height));
            var square = scene.Say.First == UnitSystem.Imperial ? 144 : 1;
            return Row(
                W(scene.Letter(o)), W(o.Opening.Name), W(scene.Say.Say("kind." + o.Opening.Kind.ToString().ToLowerInvariant())), In(scene, Amount.Metres(o.Station)), width, height, In(scene, o.Opening.Sill),
                In(scene, Amount.Metres(o.Head)), new DataCell.Formula(square == 1 ? "E{r}*F{r}" : "E{r}*F{r}/144", width.Value * height.Value / square), In(scene, new Volume(o.Volume)));
        }), 4, 8, 9);

    private static DataTable Headers(Scene scene) => Table(scene, "headers", ["name", "pieces", "wide|Length", "deep|Length", "long|Length", "bottom|Length", "material"],
        scene.Geometry.Openings.Where(o => o is { Header: not null, Opening.Header: not null }).Select(o => Row(
            W(o.Opening.Name), N(o.Opening.Header!.Pieces), In(scene, o.Opening.Header.Width), In(scene, o.Opening.Header.Depth), In(scene, Amount.Metres(o.Header!.Length)), In(scene, Amount.Metres(o.Header.Bottom)),
            W(scene.Say.Material(o.Opening.Header.Material)))), 1);

    private static DataTable Niches(Scene scene) => Table(scene, "niches", ["name", "face", "station|Length", "bottom|Length", "width|Length", "height|Length", "depth|Length", "volume|Volume"],
        scene.Geometry.Niches.Select(n => Row(
            W(n.Niche.Name), W(FaceOf(scene, n.Niche.Face)), In(scene, Amount.Metres(n.Station)), In(scene, Amount.Metres(n.Bottom)), In(scene, n.Niche.Width), In(scene, n.Niche.Height), In(scene, n.Niche.Depth),
            In(scene, new Volume(n.Volume)))), 7);

    private static DataTable Embeds(Scene scene) => Table(scene, "embeds", ["name", "kind", "face", "station|Length", "height|Length", "lift"],
        scene.Geometry.Embeds.Select(e => Row(
            W(e.Address), W(scene.Say.Say("embed." + e.Embed.Kind.ToString().ToLowerInvariant())), W(e.Embed.Through ? scene.Say.Say("face.through") : FaceOf(scene, e.Embed.Face)),
            In(scene, Amount.Metres(e.Station)), In(scene, Amount.Metres(e.Height)), e.Lift >= 0 && e.Lift < scene.Geometry.Lifts.Count ? N(e.Lift + 1) : new DataCell.Empty())));

    private static DataTable Findings(Scene scene) => Table(scene, "findings", ["rule", "subject", "verdict", "says", "body", "clause", "source"],
        scene.Set.Findings.Select(f => Row(
            W(scene.Say.Say(f.Rule.Title)), W(scene.Say.Subject(f.Subject)), W(Verdict(scene, f.Verdict)), W(scene.Say.Reason(f.Verdict)), W(OfficeFindings.Body(scene.Say, f.Clause.Adopted)), W(f.Clause.Number), W(scene.Say.Say(f.Clause.Source)))));

    /// <summary>How many findings say what, counted by the reader.</summary>
    private static DataTable Tally(Scene scene, DataTable findings)
    {
        // One of each kind, for its name alone.
        var why = new Message("papers.not-known");
        Verdict[] kinds = [new Verdict.Met(why), new Verdict.FallsShort(why), new Verdict.NotChecked(why), new Verdict.NeedsJudgement(why), new Verdict.NotApplicable(why)];
        var last = findings.Rows.Count + 1;
        return Table(scene, "tally", ["verdict", "count"],
            kinds.Select(k => Row(W(Verdict(scene, k)), new DataCell.Formula($"COUNTIF('{findings.Name}'!C$2:C${last},A{{r}})", scene.Set.Findings.Count(f => f.Verdict.GetType() == k.GetType())))), 1);
    }

    private static string Verdict(Scene scene, Verdict verdict) => scene.Say.Say("export.verdict-" + verdict switch
    {
        Evidence.Verdict.Met => "met",
        Evidence.Verdict.FallsShort => "short",
        Evidence.Verdict.NotChecked => "not-checked",
        Evidence.Verdict.NeedsJudgement => "judgement",
        _ => "none",
    });

    private static string FaceOf(Scene scene, Face face) => scene.Say.Say("face." + face.ToString().ToLowerInvariant());

    private static DataTable Table(Scene scene, string key, string[] heads, IEnumerable<Sequence<DataCell>> rows, params int[] added) => new(
        key,
        scene.Say.Say("export." + key),
        heads.Select(h => h.Split('|')).Select(h => scene.Say.Say("export.head-" + h[0]) + (h.Length > 1 ? $", {UnitOf(scene, Enum.Parse<Dimension>(h[1]))!.Symbol}" : "")).ToSequence(),
        rows.ToSequence())
    {
        Added = added.ToSequence(), Sum = scene.Say.Say("export.sum"),
    };

    private static Sequence<DataCell> Row(params DataCell[] cells) => cells.ToSequence();

    private static DataCell.Words W(string text) => new(text);

    private static DataCell N(double? number) => number is { } value && double.IsFinite(value) ? new DataCell.Number(value) : new DataCell.Empty();

    private static DataCell In(Scene scene, Amount amount) => N(UnitOf(scene, amount.Dimension) is { } unit ? unit.FromSi(amount.Si) : amount.Si);

    /// <summary>One unit for each dimension, so that a column can be added up; null for counts and plain numbers.</summary>
    private static Unit? UnitOf(Scene scene, Dimension dimension)
    {
        var imperial = scene.Say.First == UnitSystem.Imperial;
        var name = dimension switch
        {
            Dimension.Length => imperial ? "in" : "m",
            Dimension.Area => imperial ? "ft2" : "m2",
            Dimension.Volume => imperial ? "yd3" : "m3",
            Dimension.Mass => imperial ? "lb" : "kg",
            _ => Units.SiSymbol(dimension),
        };
        return Units.Find(dimension, name);
    }
}
