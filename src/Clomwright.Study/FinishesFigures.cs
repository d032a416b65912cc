using Clomwright.Analysis;
using Clomwright.Analysis.Finishes;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>Plasters and floor in the figures.</summary>
internal static class FinishesFigures
{
    public static Figure Of(FinishesResult finishes) => Tree(
        ("faces", Row(finishes.Faces, Face)),
        ("lath", Row(finishes.Lath, l => Tree(
            ("address", Name(l.Address)),
            ("kind", Name(Word(l.Kind))),
            ("face", Name(Word(l.Face))),
            ("area", Computed(l.Area, Dimension.Area))))),
        ("panels", Row(finishes.Panels, p => Tree(
            ("face", Name(Word(p.Face))),
            ("material", Name(p.Material)),
            ("tried", Computed(p.Tried.Count, Dimension.Count)),
            ("chosen", p.Chosen is { } chosen ? Name(chosen.Name) : new Figure.NotChecked(p.Why))))),
        ("floor", Of(finishes.Floor, Floor)));

    private static Figure Face(FacePlaster face) => Tree(
        ("face", Name(Word(face.Face))),
        ("plain", Computed(face.Plain, Dimension.Area)),
        ("reveals", Computed(face.Reveals, Dimension.Area)),
        ("niches", Computed(face.Niches, Dimension.Area)),
        ("area", Computed(face.Area, Dimension.Area)),
        ("daysToPlaster", Of(face.Ready, r => Computed(r.Low, Dimension.Days))),
        ("daysToPlasterSlow", Of(face.Ready, r => Computed(r.High, Dimension.Days, new Message("study.drying-not-reached")))),
        ("season", Of(face.Season, s => Row(s.Months, m => Computed(m, Dimension.Count)))),
        ("coats", Row(face.Coats, c => Tree(
            ("role", Name(Word(c.Role))),
            ("material", Name(c.Material)),
            ("depth", new Figure.Number(Amount.Metres(c.Depth), Tag.Given, FromDescription)),
            ("passes", Computed(c.Passes, Dimension.Count)),
            ("volume", Computed(c.Volume, Dimension.Volume)),
            ("batches", Of(c.Batches, b => Computed(b.Value, Dimension.Number)))))));

    private static Figure Floor(FloorResult floor) => Tree(
        ("area", Computed(floor.Area, Dimension.Area)),
        ("formation", Computed(floor.Formation, Dimension.Length)),
        ("stemOverFloor", Computed(floor.StemOverFloor, Dimension.Length)),
        ("earthOverGrade", Of(floor.EarthOverGrade, e => Computed(e.Value, Dimension.Length))),
        ("oil", Computed(floor.Oil, Dimension.Volume, new Message("study.no-oil"))),
        ("layers", Row(floor.Layers, l => Tree(
            ("name", Name(l.Layer.Name)),
            ("bottom", Computed(l.Bottom, Dimension.Length)),
            ("top", Computed(l.Top, Dimension.Length)),
            ("volume", Computed(l.Volume, Dimension.Volume)),
            ("brought", Computed(l.Brought, Dimension.Volume)),
            ("batches", Of(l.Batches, b => Computed(b.Value, Dimension.Number)))))),
        ("doors", Row(floor.Doors, d => Tree(
            ("name", Name(d.Name)),
            ("sill", Computed(d.Sill, Dimension.Length)),
            ("clear", Of(d.Clear, c => Computed(c.Value, Dimension.Length)))))));

    private static string Word<T>(T value) where T : struct, Enum => value.ToString().ToLowerInvariant();

    private static Figure Of<T>(Known<T> known, Func<T, Figure> figure) where T : class =>
        known.Value is { } value ? figure(value) : new Figure.NotChecked(known.NotChecked!);
}
