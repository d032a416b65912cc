using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;

namespace Clomwright.Web.Editing;

/// <summary>Turns what a form writes in a place of the house into an edit, or one sentence why it cannot be. Which places there are, and how they are read, is the house file's own table of keys.</summary>
internal static class EditOfPlaces
{
    /// <summary>What the addresses of such blanks begin with.</summary>
    public const string Prefix = "house.";

    /// <summary>The edit, or null and the reason.</summary>
    /// <param name="change">What the page asks.</param>
    /// <param name="house">The house.</param>
    /// <param name="roomiest">Where along the inside face a new part has most room, m.</param>
    /// <param name="reason">Why there is none.</param>
    public static Edit? Change(Change.OfBlank change, House house, double roomiest, out Message? reason)
    {
        var places = HousePlaces.Of(house);
        (var changed, reason) = change switch
        {
            Change.Enter enter => Written(places, house, enter.Blank[Prefix.Length..], enter.Text),
            Change.AddPart add => Added(places, house, add, roomiest),
            Change.TakeOut takeOut => takeOut.Path == "roof" ? (house with { Roof = null }, null) : places.Without(takeOut.Path),
            Change.Shift shift => places.Move(shift.Path, shift.By),
            Change.OfPoint point => Drawn(point, house),
            _ => throw new ArgumentOutOfRangeException(nameof(change)),
        };
        return changed is null ? null : Edit.Between(house, changed);
    }

    private static (House?, Message?) Written(HousePlaces places, House house, string path, string text) => path switch
    {
        "plan.shape" => PlanShaping.Shapes.Contains(text) ? (house with { Plan = PlanShaping.As(house.Plan, text, house.Units) }, null) : NoChoice(text),
        "roof.kind" => RoofShaping.Kinds.Contains(text) ? (house with { Roof = RoofShaping.As(house.Roof, text, house.Units) }, null) : NoChoice(text),
        "roof.ifOneFails.way" => FreshParts.WaysToAdd("roof.ifOneFails").Contains(text) ? places.Add("roof.ifOneFails", FreshParts.Of("roof.ifOneFails", text, house, 0)) : NoChoice(text),
        _ when path.StartsWith("adopt.", StringComparison.Ordinal) => Adopted(house, path["adopt.".Length..], text),
        _ => places.Write(path, text),
    };

    private static (House?, Message?) Adopted(House house, string body, string text)
    {
        var (without, adopt) = (house.Rules.Adopted.Where(name => name != body), text == "yes");
        return Rules.RuleBook.Bodies.All(b => b.Adopted != body) || text is not ("yes" or "no") ? NoChoice(text)
            : (house with { Rules = house.Rules with { Adopted = adopt ? [.. without, body] : [.. without] } }, null);
    }

    private static (House?, Message?) Added(HousePlaces places, House house, Change.AddPart add, double roomiest)
    {
        if (add.Path == "roof")
        {
            return house.Roof is null && RoofShaping.Kinds.Contains(add.Way) ? (house with { Roof = RoofShaping.As(null, add.Way, house.Units) }, null) : NoChoice(add.Way);
        }

        if (add.Texts.Count == 0 && !FreshParts.Known(add.Path))
        {
            return (null, new Message("web.form.no-fresh"));
        }

        var texts = FreshParts.Of(add.Path, add.Way, house, roomiest);
        foreach (var (key, text) in add.Texts)
        {
            texts[key] = text;
        }

        return places.Add(add.Path, texts);
    }

    private static (House?, Message?) Drawn(Change.OfPoint change, House house)
    {
        if (house.Plan is not Plan.Path path || change.Point < 0 || change.Point >= path.Points.Count)
        {
            return (null, new Message("web.earth.gone"));
        }

        var now = path.Points[change.Point];
        var step = (house.Units, (change as Change.NudgePoint)?.Large) switch
        {
            (UnitSystem.Imperial, true) => Length.FromInches(6),
            (UnitSystem.Imperial, _) => Length.FromInches(1),
            (_, true) => Length.FromMillimetres(100),
            _ => Length.FromMillimetres(10),
        };
        Plan.Path? drawn = change switch
        {
            Change.MovePoint move when Sane(move.East) && Sane(move.North) => PlanShaping.Moved(path, move.Point, PlanShaping.Taped(move.East, move.North, house.Units)),
            Change.NudgePoint nudge => PlanShaping.Moved(path, nudge.Point, new PlanPosition(now.East + Math.Sign(nudge.East) * step, now.North + Math.Sign(nudge.North) * step)),
            Change.AddPoint add => PlanShaping.Added(path, add.Point, house.Units),
            Change.TakePointOut takeOut when path.Points.Count > PlanShaping.PointsLeast => PlanShaping.Without(path, takeOut.Point),
            _ => null,
        };
        return drawn is null ? (null, Message.Of("web.ground.points-least", ("least", PlanShaping.PointsLeast))) : (house with { Plan = drawn }, null);
    }

    private static bool Sane(double metres) => double.IsFinite(metres) && Math.Abs(metres) < 1e3;

    private static (House?, Message?) NoChoice(string text) => (null, Message.Of("web.earth.not-choice", ("text", text.Length <= 40 ? text : text[..40] + "…")));
}
