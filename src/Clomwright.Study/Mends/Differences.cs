using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

/// <summary>What a change does, said so that a crew can do it: which size, how many, how far apart.</summary>
internal static class Differences
{
    /// <summary>The change in words: every size that it changes in roof, bond beam, tees, headers, stem, trench or wall; elsewhere what the edit says of itself.</summary>
    public static Message Of(Edit edit, House before, House after)
    {
        List<Message> said =
        [
            .. Roof(before.Roof, after.Roof), .. BondBeam(before.BondBeam, after.BondBeam), .. Changed("keys-apart", before.Stem.Keys?.Spacing, after.Stem.Keys?.Spacing), .. Tees(before.Tees, after.Tees),
            .. before.Embeds.Zip(after.Embeds).SelectMany(pair => Strap(pair.First, pair.Second)),
            .. Ground(before, after),
            .. Finishes(before, after),
            .. Days(before, after),
            .. before.Openings.Zip(after.Openings).SelectMany(pair => Header(pair.First, pair.Second)),
        ];
        return said.Count switch
        {
            0 => edit.What,
            1 => said[0],
            _ => Message.Of("study.change.several", ("changes", new Argument.List(said.Select(m => (Argument)m).ToSequence()))),
        };
    }

    private static IEnumerable<Message> Roof(Roof? before, Roof? after) =>
    [
        .. Changed("poles-thick", PoleOf(before)?.Butt, PoleOf(after)?.Butt),
        .. Changed("eave", before?.Eave, after?.Eave),
        .. Decking(before, after), .. Fixings(before, after), .. Thinner(before?.Layers ?? [], after?.Layers ?? []),
        .. (before, after) switch
        {
            (Building.Roof.Reciprocal was, Building.Roof.Reciprocal now) =>
            [
                .. Changed("ring", was.RingRadius, now.RingRadius), .. Changed("notch", was.Notch, now.Notch), .. Counted(was.Poles, now.Poles),
                .. was.Joint != now.Joint && now.Joint == PoleJoint.Pinned ? (Message[])[new Message("study.change.pinned")] : [],
                .. was.Pin != now.Pin && now.Pin is { } pin ? (Message[])[Message.Of("study.change.pin", ("diameter", pin.Diameter), ("washer", pin.Washer ?? default))] : [],
                .. was.IfOneFails != now.IfOneFails ? WayOut(now.IfOneFails) : [],
            ],
            (Building.Roof.Radial was, Building.Roof.Radial now) => Counted(was.Poles, now.Poles),
            (Building.Roof.Shed was, Building.Roof.Shed now) => Changed("rafters", was.Spacing, now.Spacing),
            (Building.Roof.Gable was, Building.Roof.Gable now) => Changed("rafters", was.Spacing, now.Spacing),
            _ => Array.Empty<Message>(),
        },
    ];

    private static IEnumerable<Message> Thinner(Sequence<Layer> before, Sequence<Layer> after) =>
        before.Zip(after).Where(pair => pair.First.Depth != pair.Second.Depth)
            .Select(pair => Message.Of("study.change.layer-thick", ("layer", pair.First.Name), ("was", (Amount)pair.First.Depth), ("now", (Amount)pair.Second.Depth)));

    private static IEnumerable<Message> Decking(Roof? before, Roof? after) =>
    [
        .. before?.Deck != after?.Deck && after?.Deck is { } boards ? (Message[])[Message.Of("study.change.deck", ("now", boards))] : [],
        .. before?.Secondaries != after?.Secondaries && after?.Secondaries is { } now ? (Message[])[now.Bolt is { } bolt && bolt != before?.Secondaries?.Bolt ? Message.Of("study.change.secondary-bolt", ("now", bolt)) : Message.Of("study.change.secondaries", ("count", now.PerBay), ("diameter", now.Diameter))] : [],
    ];

    private static IEnumerable<Message> Fixings(Roof? before, Roof? after) =>
    [
        .. before?.DeckNails != after?.DeckNails && after?.DeckNails is { } nails
            ? (Message[])[Message.Of("study.change.nails", ("count", nails.Count), ("diameter", nails.Diameter), ("length", nails.Length))] : [],
        .. before?.Braces != after?.Braces && after?.Braces is { } braces
            ? (Message[])[Message.Of("study.change.braces", ("width", braces.Width), ("thickness", braces.Thickness), ("count", braces.Nails), ("diameter", braces.Diameter), ("length", braces.Length))] : [],
        .. before?.Flue != after?.Flue && after?.Flue is { } flue ? (Message[])[Message.Of("study.change.flue", ("bearing", flue.Bearing), ("distance", flue.Distance))] : [],
        .. before?.Battens != after?.Battens && after?.Battens is { } battens ? (Message[])[Message.Of("study.change.battens", ("spacing", battens.Spacing), ("height", battens.Height))] : [],
        .. Changed("post-thick", (before as Building.Roof.Radial)?.Post?.Diameter, (after as Building.Roof.Radial)?.Post?.Diameter),
        .. Changed("post-footing", (before as Building.Roof.Radial)?.Post?.Footing, (after as Building.Roof.Radial)?.Post?.Footing),
        .. Changed("ring-wide", (before as Building.Roof.Radial)?.Ring?.Width, (after as Building.Roof.Radial)?.Ring?.Width),
        .. Changed("ring-deep", (before as Building.Roof.Radial)?.Ring?.Depth, (after as Building.Roof.Radial)?.Ring?.Depth),
        .. Changed("seat-flat", Length.Nearest(LevelSeat.DepthOf(before?.Seat)), Length.Nearest(LevelSeat.DepthOf(after?.Seat))),
        .. Changed("seat-bolt", before?.Seat?.Bolt, after?.Seat?.Bolt),
        .. before?.Seat?.Lag is not null && after?.Seat is { Lag: null } ? (Message[])[new Message("study.change.seat-through")] : [],
    ];

    private static IEnumerable<Message> WayOut(IfOneFails? way) => way switch
    {
        IfOneFails.Strap strap => [Message.Of("study.change.strap", ("width", strap.Width), ("thickness", strap.Thickness))],
        IfOneFails.Doubled => [new Message("study.change.doubled")],
        IfOneFails.Post post => [Message.Of("study.change.posts", ("diameter", post.Diameter), ("footing", post.Footing))],
        _ => [],
    };

    private static PoleSize? PoleOf(Roof? roof) => roof switch
    {
        Building.Roof.Reciprocal r => r.Pole,
        Building.Roof.Radial r => r.Pole,
        Building.Roof.Shed r => r.Pole,
        Building.Roof.Gable r => r.Pole,
        _ => null,
    };

    private static IEnumerable<Message> BondBeam(BondBeam? before, BondBeam? after) =>
        
    [
        .. Changed("beam-wide", before?.Width, after?.Width), .. Changed("beam-offset", before?.Offset, after?.Offset), .. Changed("beam-deep", before?.Depth, after?.Depth),
        .. Changed("beam-lap", before?.Lap, after?.Lap), .. Changed("beam-bolt", before?.Bolt, after?.Bolt),
        .. before is null || after is null || before.Bolts == after.Bolts ? [] : new[] { Message.Of("study.change.beam-bolts", ("now", after.Bolts), ("was", before.Bolts)) },
    ];

    private static IEnumerable<Message> Tees(Tees? before, Tees? after) =>
        [.. Changed("tees-deep", before?.Depth, after?.Depth), .. Changed("tees-long", before?.Bar, after?.Bar), .. Changed("tees-apart", before?.Spacing, after?.Spacing),
            .. Changed("tees-thick", before?.Timber, after?.Timber), .. Changed("tees-bolt", before?.Bolt, after?.Bolt)];

    private static IEnumerable<Message> Strap(Embed before, Embed after) =>
    [
        .. Changed("strap-deep", before.Anchor?.Depth, after.Anchor?.Depth, after.Name), .. Changed("strap-long", before.Anchor?.Bar, after.Anchor?.Bar, after.Name),
        .. before.Anchor is null ? [] : Changed("strap-wide", before.Width, after.Width, after.Name),
    ];

    private static IEnumerable<Message> Ground(House before, House after) =>
    [
        .. Changed("stem-wide", before.Stem.Width, after.Stem.Width), .. Changed("stem-high", before.Stem.Top, after.Stem.Top),
        .. before.Site.GroundFall != after.Site.GroundFall && after.Site.GroundFall is { } away ? (Message[])[Message.Of("study.change.ground-fall", ("now", (Amount)away))] : [],
        .. before.Stem.InsideOffset is not null && after.Stem.InsideOffset is null ? (Message[])[new Message("study.change.stem-centred")] : [],
        .. Changed("wall-thick", before.Wall.ThicknessAtTop, after.Wall.ThicknessAtTop), .. Changed("wall-high", before.Wall.Top, after.Wall.Top),
        .. Changed("trench-wide", before.Trench?.Width, after.Trench?.Width), .. Changed("trench-deep", before.Trench?.Depth, after.Trench?.Depth),
        .. Changed("outlet", before.Trench?.Outlet, after.Trench?.Outlet),
        .. before.Trench?.Fall == after.Trench?.Fall ? (Message[])[]
            : after.Trench?.Fall is { } fall ? [Message.Of("study.change.drain-fall", ("now", (Amount)fall))] : [new Message("study.change.drain-even")],
    ];

    private static IEnumerable<Message> Finishes(House before, House after) =>
    [
        .. Changed("grade", before.Site.Grade, after.Site.Grade),
        .. before.Floor.Layers.Zip(after.Floor.Layers).Where(pair => pair.First.Depth != pair.Second.Depth)
            .Select(pair => Message.Of("study.change.layer-thick", ("layer", pair.First.Name), ("was", (Amount)pair.First.Depth), ("now", (Amount)pair.Second.Depth))),
        .. before.Openings.Zip(after.Openings).SelectMany(pair => Changed("leaf", pair.First.Leaf?.Bottom, pair.Second.Leaf?.Bottom)),
        .. before.Finishes.Zip(after.Finishes).SelectMany(pair => Changed("lap", pair.First.Lath?.Lap, pair.Second.Lath?.Lap)),
        .. before.Finishes.SelectMany(f => f.Coats).Sum(c => c.Passes) != after.Finishes.SelectMany(f => f.Coats).Sum(c => c.Passes) ? (Message[])[new Message("study.change.thinner-coats")] : [],
    ];

    private static IEnumerable<Message> Days(House before, House after)
    {
        if (before.Crew is { } was && after.Crew is { } now)
        {
            if (was.Start != now.Start)
            {
                yield return Message.Of("study.change.start-on", ("now", now.Start), ("was", was.Start));
            }
            else if (was.RoofOn is { } landed && now.RoofOn is { } lands && landed != lands)
            {
                yield return Message.Of("study.change.roof-on", ("now", lands), ("was", landed));
            }
        }

        foreach (var (first, then) in before.Finishes.Zip(after.Finishes))
        {
            if (first.Start is { } early && then.Start is { } late && early != late)
            {
                yield return Message.Of("study.change.plaster-on", ("face", new Message($"study.face.{then.Face.ToString().ToLowerInvariant()}")), ("now", late), ("was", early));
            }
        }

        if (before.Mix.Recipe != after.Mix.Recipe && after.Mix.Trials.FirstOrDefault(t => t.Recipe == after.Mix.Recipe) is { } trial)
        {
            yield return Message.Of("study.change.recipe", ("trial", trial.Name));
        }

        if (before.Lifts.Height != after.Lifts.Height && after.Lifts.Height is { } height)
        {
            yield return Message.Of("study.change.lifts-high", ("now", height));
        }
    }

    private static IEnumerable<Message> Header(Opening before, Opening after) =>
    [
        .. Changed("header-deep", before.Header?.Depth, after.Header?.Depth, after.Name), .. Changed("header-bearing", before.Header?.Bearing, after.Header?.Bearing, after.Name),
        .. before.Header is { } was && after.Header is { } now && was.Pieces != now.Pieces ? (Message[])[Message.Of("study.change.header-pieces", ("now", now.Pieces), ("was", was.Pieces), ("name", after.Name))] : [],
        .. before.Header is { CrossPad: false } && after.Header is { CrossPad: true } ? (Message[])[Message.Of("study.change.header-pad", ("name", after.Name))] : [],
    ];

    private static IEnumerable<Message> Counted(int was, int now) => was == now ? [] : [Message.Of("study.change.poles", ("now", now), ("was", was))];

    private static IEnumerable<Message> Changed(string what, Length? was, Length? now, string name = "") =>
        was is { } before && now is { } after && before != after ? [Message.Of($"study.change.{what}", ("was", before), ("now", after), ("name", name))] : [];
}
