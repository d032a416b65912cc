using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>What a reciprocal frame asks: of its poles in every combination and stage, of its crossings, and of whatever holds it when one pole is lost.</summary>
internal static class OfReciprocal
{
    private static readonly Amount NoForce = new(0, Dimension.Force);

    public static IEnumerable<CheckedDemand> Frame(House house, ReciprocalResult frame, Message? missing)
    {
        var roof = (Roof.Reciprocal)house.Roof!;
        var unknown = missing ?? Stages.FirstMissing(frame.Stages);
        return
        [
            .. frame.Checks.Select(check => FromResults.Member(check, FromResults.IsSag(check) ? null : missing)),
            .. Stages.OfReciprocal(frame),
            Opens(frame, roof.Joint, missing),
            Pinned(frame, roof.Joint),
            .. Pins(frame, unknown),
            .. Loss(frame, unknown),
            .. frame.Charlie.Select(check => FromResults.Member(check, null)),
        ];
    }

    /// <summary>Crossings in every stage, in the order from the ring outward, and in every combination. A pin has to hold what pulls; anything else lets go.</summary>
    private static CheckedDemand Opens(ReciprocalResult frame, PoleJoint joint, Message? missing)
    {
        List<Stages.State> states = [.. Stages.Known(frame.Stages), .. Stages.Steps("fromRing", frame.FromRing), .. Stages.Combined(frame.Combined)];
        if (states.Count == 0)
        {
            return CheckedDemand.Unknown("crossing-opens", "crossings", frame.Stages[0].Forces.NotChecked!);
        }

        var (_, stage, forces) = states.MinBy(s => Least(s.Forces));
        var least = Least(forces);
        var pole = frame.Poles.Select(p => p.Number).MinBy(n => Math.Min(forces.CrossingForce[n - 1], forces.Governing[n - 1]));
        var pull = new Amount(Math.Max(0, -least), Dimension.Force);
        var pinned = joint == PoleJoint.Pinned ? frame.Pins.FirstOrDefault(p => p.Key == "pin-pull")?.Check.Value : null;
        return CheckedDemand.Held("crossing-opens", $"pole {pole}", pull, pinned?.Capacity ?? NoForce) with
        {
            Missing = missing ?? Stages.FirstMissing(frame.Stages) ?? frame.FromRing.NotChecked,
            Question = joint == PoleJoint.Pinned && pinned is null ? Message.Of("study.ask.crossing-opens", ("pole", pole), ("pull", pull), ("stage", stage)) : null,
            Notes =
            [
                Message.Of("study.demand.crossing-least", ("force", new Amount(least, Dimension.Force)), ("stage", stage)),
                .. Order("study.demand.from-ring", frame.FromRing.Value), .. Order("study.demand.from-eave", frame.FromEave.Value),
            ],
        };
    }

    private static IEnumerable<Message> Order(string key, LoadingOrder? order) => order is null ? []
        : [Message.Of(key, ("steps", new Argument.List(order.Steps.Select(s => (Argument)new Amount(Least(s.Forces), Dimension.Force)).ToSequence())))];

    private static double Least(RoofForces forces) => Math.Min(forces.CrossingForce.Min(), forces.Governing.Min());

    private static CheckedDemand Pinned(ReciprocalResult frame, PoleJoint joint) =>
        CheckedDemand.Held("crossing-pinned", "crossings", Amount.Count(joint == PoleJoint.Pinned ? 0 : frame.Poles.Count), Amount.Count(0)) with
        {
            Notes = frame.Joints.Value is { } demand
                ? [Message.Of("study.demand.friction", ("demand", Amount.Number(demand.FrictionDemand)), ("low", Amount.Number(demand.FrictionLow.Value)), ("high", Amount.Number(demand.FrictionHigh.Value)))]
                : [],
        };

    /// <summary>The pins as they are described; where they are not, what they would have to hold.</summary>
    private static IEnumerable<CheckedDemand> Pins(ReciprocalResult frame, Message? missing) => frame.Pins.Any(p => p.Check.Is)
        ? frame.Pins.Select(pin => FromResults.Member(pin, missing) with
        {
            Notes = [.. FromResults.Member(pin, missing).Notes, .. Slipping(frame), new Message("study.demand.retighten")],
        })
        : [CheckedDemand.Unknown("pin-strength", "crossings", frame.Joints.Value is { } demand
            ? Message.Of("study.demand.pins", ("slip", new Amount(demand.SlipForce, Dimension.Force)), ("slipStage", Stages.Named(demand.SlipStage)), ("pull", new Amount(demand.PinTension, Dimension.Force)))
            : frame.Joints.NotChecked!)];

    private static IEnumerable<Message> Slipping(ReciprocalResult frame) => frame.Joints.Value is { } joints
        ? [Message.Of("study.demand.slipping", ("outward", new Amount(joints.OutwardWithoutFriction, Dimension.Force)), ("thrust", new Amount(joints.ThrustWithoutFriction, Dimension.Force)))]
        : [];

    /// <summary>Nothing of itself holds a frame that loses a pole: it falls short unless one way out is described and holds.</summary>
    private static IEnumerable<CheckedDemand> Loss(ReciprocalResult frame, Message? missing)
    {
        if (frame.Loss.Value is not { } loss)
        {
            return [CheckedDemand.Unknown("pole-loss", "poles", frame.Loss.NotChecked!)];
        }

        var asked = Message.Of(
            "study.demand.loss", ("pole", loss.WorstPole), ("orphan", loss.Orphan), ("prop", new Amount(loss.PropForce, Dimension.Force)),
            ("sudden", new Amount(loss.SuddenForce, Dimension.Force)), ("stage", Stages.Named(loss.Stage)));
        return frame.WaysOut.Count == 0
            ? [CheckedDemand.Held("pole-loss", $"pole {loss.WorstPole}", new Amount(loss.PropForce, Dimension.Force), NoForce) with { Notes = [asked, new Message("study.demand.no-way-out")] }]
            : frame.WaysOut.Select(way => FromResults.Member(way, missing) with { Notes = [asked, .. FromResults.Member(way, missing).Notes, Way(frame, way)] });
    }

    private static Message Way(ReciprocalResult frame, CheckedMember way) => way.Subject switch
    {
        "doubled frame" => new Message("study.demand.way-doubled"),
        "posts" or "post footings" => Message.Of("study.demand.way-post", ("count", frame.Poles.Count)),
        _ => new Message("study.demand.way-strap"),
    };
}
