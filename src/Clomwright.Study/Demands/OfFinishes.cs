using Clomwright.Analysis.Finishes;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>Plasters, lath, panels and floor as the rules read them. What does not arise in a house makes no demand.</summary>
internal static class OfFinishes
{
    public static IEnumerable<CheckedDemand> Demands(House house, FinishesResult finishes) =>
    [
        .. finishes.Faces.SelectMany(Coats),
        .. finishes.Faces.SelectMany(face => Lath(house, finishes, face.Face)),
        .. finishes.Panels.Select(Panel),
        .. finishes.Floor.Value is { } floor ? Floor(floor) : NoFloor(house, finishes.Floor.NotChecked!),
    ];

    private static IEnumerable<CheckedDemand> Coats(FacePlaster face) =>
        from coat in face.Coats
        where coat is { Depth: > 0, Binder: Binder.Clay or Binder.Lime }
        select CheckedDemand.Measured(coat.Binder == Binder.Lime ? "lime-coat" : "earth-coat", $"{Word(face.Face)} face, {Word(coat.Role)} coat", Length.Nearest(coat.Depth));

    private static IEnumerable<CheckedDemand> Lath(House house, FinishesResult finishes, Face face)
    {
        var places = finishes.Lath.Where(l => l.Face == face).ToList();
        if (places.Count == 0)
        {
            return [];
        }

        var subject = $"{Word(face)} face";
        return house.Finishes.FirstOrDefault(f => f.Face == face && f.Lath is not null)?.Lath is { } lath
            ? [CheckedDemand.Measured("lath-lap", subject, lath.Lap) with { Notes = [Message.Of("study.demand.lath-places", ("places", places.Count))] }]
            : [CheckedDemand.Unknown("lath-lap", subject, Message.Of("study.demand.no-lath", ("places", places.Count)))];
    }

    private static CheckedDemand Panel(PanelChoice choice)
    {
        var subject = $"{Word(choice.Face)} face";
        return choice.Tried.Count == 0
            ? CheckedDemand.Unknown("plaster-panel", subject, new Message("study.demand.no-panel"))
            : CheckedDemand.Measured("plaster-panel", subject, Amount.Count(choice.Tried.Count(p => p.IsSound))) with { Notes = choice.Next is { } next ? [choice.Why, next] : [choice.Why] };
    }

    private static IEnumerable<CheckedDemand> Floor(FloorResult floor)
    {
        yield return floor.Layers.Where(l => l.Layer.Role == FloorRole.Drain).ToList() is { Count: > 0 } drain
            ? CheckedDemand.Measured("floor-drain", "floor", drain.Aggregate(Length.Zero, (sum, l) => sum + l.Layer.Depth))
            : CheckedDemand.Unknown("floor-drain", "floor", new Message("study.demand.no-drain-layer"));
        yield return floor.Layers.Count(l => l.Layer.Role == FloorRole.Damp) is > 0 and var sheets
            ? CheckedDemand.Measured("floor-damp", "floor", Amount.Count(sheets))
            : CheckedDemand.Unknown("floor-damp", "floor", new Message("study.demand.no-damp-layer"));
        yield return floor.Layers.Count(l => l.Layer.Role is FloorRole.Base or FloorRole.Finish) is > 0 and var earth
            ? CheckedDemand.Measured("floor-earth-layers", "floor", Amount.Count(earth))
            : CheckedDemand.Unknown("floor-earth-layers", "floor", new Message("analysis.finishes.no-earth-layer"));
        yield return floor.EarthOverGrade.Value is { } over
            ? CheckedDemand.Measured("floor-over-grade", "floor", Length.Nearest(over.Value))
            : CheckedDemand.Unknown("floor-over-grade", "floor", floor.EarthOverGrade.NotChecked!);
        yield return CheckedDemand.Measured("stem-over-floor", "stem", Length.Nearest(floor.StemOverFloor));
        foreach (var door in floor.Doors)
        {
            yield return CheckedDemand.Measured("door-sill", door.Name, Length.Nearest(door.Sill));
            yield return door.Clear.Value is { } clear
                ? CheckedDemand.Measured("door-clear", door.Name, Length.Nearest(clear.Value))
                : CheckedDemand.Unknown("door-clear", door.Name, door.Clear.NotChecked!);
        }
    }

    private static IEnumerable<CheckedDemand> NoFloor(House house, Message because)
    {
        string[] rules = house.Openings.Any(o => o.Kind == OpeningKind.Door)
            ? ["floor-drain", "floor-damp", "floor-earth-layers", "floor-over-grade", "stem-over-floor", "door-sill", "door-clear"]
            : ["floor-drain", "floor-damp", "floor-earth-layers", "floor-over-grade", "stem-over-floor"];
        return rules.Select(rule => CheckedDemand.Unknown(rule, "floor", because));
    }

    private static string Word<T>(T value) where T : struct, Enum => value.ToString().ToLowerInvariant();
}
