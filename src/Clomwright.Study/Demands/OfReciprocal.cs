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
        var joint = ((Roof.Reciprocal)house.Roof!).Joint;
        return
        [
            .. frame.Checks.Select(check => FromResults.Member(check, FromResults.IsSag(check) ? null : missing)),
            .. Stages.OfReciprocal(frame),
            Opens(frame, joint, missing),
            Pinned(frame, joint),
            Pins(frame),
            Loss(frame),
            BondBeam(frame),
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
        return CheckedDemand.Held("crossing-opens", $"pole {pole}", pull, NoForce) with
        {
            Missing = missing ?? Stages.FirstMissing(frame.Stages) ?? frame.FromRing.NotChecked,
            Question = joint == PoleJoint.Pinned ? Message.Of("study.ask.crossing-opens", ("pole", pole), ("pull", pull), ("stage", stage)) : null,
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

    private static CheckedDemand Pins(ReciprocalResult frame) => CheckedDemand.Unknown("pin-strength", "crossings", frame.Joints.Value is { } demand
        ? Message.Of("study.demand.pins", ("slip", new Amount(demand.SlipForce, Dimension.Force)), ("slipStage", Stages.Named(demand.SlipStage)), ("pull", new Amount(demand.PinTension, Dimension.Force)))
        : frame.Joints.NotChecked!);

    /// <summary>Nothing else holds a frame that loses a pole. Until the house file can describe a way out, a person has to say which one is drawn and checked.</summary>
    private static CheckedDemand Loss(ReciprocalResult frame) => frame.Loss.Value is { } loss
        ? CheckedDemand.Held("pole-loss", $"pole {loss.WorstPole}", new Amount(loss.PropForce, Dimension.Force), NoForce) with
        {
            Missing = new Message("study.demand.loss-not-proved"),
            Question = Message.Of(
                "study.ask.pole-loss", ("pole", loss.WorstPole), ("orphan", loss.Orphan), ("prop", new Amount(loss.PropForce, Dimension.Force)),
                ("sudden", new Amount(loss.SuddenForce, Dimension.Force)), ("stage", Stages.Named(loss.Stage))),
        }
        : CheckedDemand.Unknown("pole-loss", "poles", frame.Loss.NotChecked!);

    private static CheckedDemand BondBeam(ReciprocalResult frame) => CheckedDemand.Unknown("bond-beam-tension", "bond beam", frame.Joints.Value is { } demand
        ? Message.Of("study.demand.hoop", ("hoop", new Amount(demand.HoopTension, Dimension.Force)), ("thrust", new Amount(demand.ThrustAgainstRing, Dimension.Force)), ("slipping", new Amount(demand.OutwardWithoutFriction, Dimension.Force)))
        : frame.Joints.NotChecked!);
}
