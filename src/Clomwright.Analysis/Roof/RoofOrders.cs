using Clomwright.Analysis.Loads;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>Order lines for a roof: timber, ironwork, sheets, and soil and stone as they come, loose. Shares for waste are common practice; none is published.</summary>
internal static class RoofOrders
{
    /// <summary>A bolt or pin is longer than the wood it holds by this, for washers and nut, m.</summary>
    public const double PinPast = 0.0508;

    /// <summary>The strap's two ends lie over each other by this, m.</summary>
    public const double StrapLap = 0.3048;

    private static Source Practice => Sources.Get("common-practice");

    private static Assumption Cut { get; } = Share("waste-roof-timber", 0.10);

    private static Assumption Boards { get; } = Share("waste-deck", 0.15);

    private static Assumption Spare { get; } = Share("spare-nails", 0.10);

    private static Assumption Sheets { get; } = Share("waste-roof-sheet", 0.10);

    private static Assumption LooseSoil { get; } = Share("loose-soil", 0.25);

    private static Assumption LooseStone { get; } = Share("loose-stone", 0.10);

    /// <summary>What to order, and the shares used.</summary>
    public static (Sequence<OrderLine> Lines, Sequence<Assumption> Assumptions) Of(Building.Roof roof, Sequence<PoleGeometry> poles, RoofSkin skin)
    {
        var used = new List<Assumption>();
        OrderLine[] lines = [.. Timbers(roof, poles, skin, used), .. Footings(roof, poles.Count), .. Eye(roof, skin, used), .. Iron(roof, poles, skin, used), .. Layers(roof, skin, used)];
        return (lines.ToSequence(), used.Distinct().ToSequence());
    }

    private static IEnumerable<OrderLine> Timbers(Building.Roof roof, Sequence<PoleGeometry> poles, RoofSkin skin, List<Assumption> used)
    {
        yield return Line("roof-poles", Message.Of("analysis.order.roof-poles", ("butt", Amount.Metres(poles.Max(p => p.Butt))), ("tip", Amount.Metres(poles.Min(p => p.Tip))), ("timber", new Argument.Material(roof.Species))),
            "timber", Amount.Count(roof.SideBySide * poles.Count), null, Message.Of("analysis.order.cut-longest", ("length", Amount.Metres(poles.Max(p => p.CutLength)))), used);
        if (roof.Secondaries is { PerBay: > 0 } second)
        {
            var spans = Spans(roof, poles);
            yield return Line("roof-secondaries", Message.Of("analysis.order.roof-secondaries", ("diameter", second.Diameter)), "timber", Amount.Metres(spans.Count * spans.SecondaryLength), Cut,
                Message.Of("analysis.order.pieces-each", ("count", spans.Count), ("length", Amount.Metres(spans.SecondaryLength))), used);
        }

        yield return roof.Deck is { } deck
            ? Line("roof-deck", Message.Of("analysis.order.roof-deck", ("thickness", deck), ("timber", new Argument.Material(roof.DeckMaterial))), "timber", new Area(skin.Laid), Boards, new Message("analysis.order.on-surface"), used)
            : OrderLine.Unknown("roof-deck", new Message("analysis.order.roof-deck-any"), "timber", new Message("analysis.deck.none"));
        if (roof.EdgeBoard is { } edge)
        {
            yield return Line("roof-edge-board", Message.Of("analysis.order.roof-edge-board", ("height", edge)), "timber", Amount.Metres(skin.EaveLength), Cut, new Message("analysis.order.round-eave"), used);
        }

        if (HighEnds.Open(poles, roof.Seat) is { } open)
        {
            yield return OrderLine.Unknown("roof-high-ends", new Message("analysis.order.roof-high-ends"), "timber", open);
        }

        if (roof is Building.Roof.Radial radial)
        {
            if (radial is { CentrePost: true, Post: { } post })
            {
                yield return Line("roof-post", Message.Of("analysis.order.roof-post", ("diameter", post.Diameter)), "timber", Amount.Count(1), null, Message.Of("analysis.order.roof-footing", ("side", post.Footing)), used);
            }

            if (radial is { CentrePost: false, Ring: { } ring })
            {
                yield return Line("roof-ring", Message.Of("analysis.order.roof-ring", ("width", ring.Width), ("depth", ring.Depth), ("timber", ring.Material)), "timber", Amount.Metres(2 * poles.Count * radial.RingRadius.Metres * Math.Tan(Math.PI / poles.Count)), Cut,
                    Message.Of("analysis.order.ring-pieces", ("count", poles.Count)), used);
            }
        }

        if (roof is Building.Roof.Reciprocal { IfOneFails: IfOneFails.Post stands })
        {
            yield return Line("roof-loss-posts", Message.Of("analysis.order.roof-loss-posts", ("diameter", stands.Diameter)), "timber", Amount.Count(poles.Count), null, Message.Of("analysis.order.roof-footing", ("side", stands.Footing)), used);
        }
    }

    /// <summary>Footings under posts: how many and how wide; how deep they go nobody says.</summary>
    private static IEnumerable<OrderLine> Footings(Building.Roof roof, int poles)
    {
        (Length Side, int Count)? under = roof switch
        {
            Building.Roof.Radial { CentrePost: true, Post: { } post } => (post.Footing, 1),
            Building.Roof.Reciprocal { IfOneFails: IfOneFails.Post stands } => (stands.Footing, poles),
            _ => null,
        };
        if (under is { } footing)
        {
            yield return OrderLine.Unknown("roof-footings", Message.Of("analysis.order.roof-footings", ("side", footing.Side)), "stone", new Message("analysis.order.footing-depth")) with { Net = Amount.Count(footing.Count) };
        }
    }

    /// <summary>Curb of an open eye, and what closes it: the house says what it is, not how it is made.</summary>
    private static IEnumerable<OrderLine> Eye(Building.Roof roof, RoofSkin skin, List<Assumption> used)
    {
        (Building.Eye Eye, double Round) open = roof switch
        {
            Building.Roof.Reciprocal reciprocal => (reciprocal.Eye, skin.CurbLength),
            Building.Roof.Radial { CentrePost: false } radial => (radial.Eye, 2 * Math.PI * radial.RingRadius.Metres),
            _ => (Building.Eye.Closed, 0),
        };
        if (open is { Eye: not Building.Eye.Closed, Round: > 0 })
        {
            yield return Line("roof-curb", Message.Of("analysis.order.roof-curb", ("height", Amount.Metres(RoofSkins.Curb))), "timber", Amount.Metres(open.Round), Cut, new Message("analysis.order.roof-curb-basis"), used);
            yield return OrderLine.Unknown("roof-eye", new Message(open.Eye == Building.Eye.Glazed ? "analysis.order.roof-eye-glass" : "analysis.order.roof-eye-vent"), "roof",
                Message.Of("analysis.order.roof-eye-basis", ("across", Amount.Metres(open.Round / Math.PI)))) with { Net = Amount.Count(1) };
        }
    }

    private static DeckSpans Spans(Building.Roof roof, Sequence<PoleGeometry> poles) => roof switch
    {
        Building.Roof.Shed shed => DeckSpans.Strips(poles, shed.Spacing.Metres, roof),
        Building.Roof.Gable gable => DeckSpans.Strips(poles, gable.Spacing.Metres, roof),
        _ => DeckSpans.Round(poles, roof),
    };

    private static IEnumerable<OrderLine> Iron(Building.Roof roof, Sequence<PoleGeometry> poles, RoofSkin skin, List<Assumption> used)
    {
        foreach (var line in Fixings(roof, poles, skin, used))
        {
            yield return line;
        }

        if (roof is not Building.Roof.Reciprocal reciprocal)
        {
            yield break;
        }

        if (reciprocal.Pin is { } pin)
        {
            used.Add(new("pin-past", new Message("analysis.assumed.pin-past"), Amount.Metres(PinPast), Practice));
            yield return Line("roof-pins", Message.Of("analysis.order.roof-pins", ("diameter", pin.Diameter)), "roof", Amount.Count(roof.SideBySide * poles.Count), null,
                Message.Of(roof.SideBySide > 1 ? "analysis.order.pin-length-pairs" : "analysis.order.pin-length", ("length", Amount.Metres(PinLength(poles)))), used);
        }
        else
        {
            yield return OrderLine.Unknown("roof-pins", new Message("analysis.order.roof-pins-any"), "roof", new Message("analysis.pin.none"));
        }

        if (reciprocal.IfOneFails is IfOneFails.Strap strap)
        {
            used.Add(new("strap-lap", new Message("analysis.assumed.strap-lap"), Amount.Metres(StrapLap), Practice));
            yield return Line("roof-strap", Message.Of("analysis.order.roof-strap", ("width", strap.Width), ("thickness", strap.Thickness)), "roof", Amount.Metres(StrapLength(poles)), Cut,
                new Message("analysis.order.round-ring"), used);
        }
    }

    /// <summary>Bolts at the seats, and straps of the braces: two in every bay between poles.</summary>
    private static IEnumerable<OrderLine> Fixings(Building.Roof roof, Sequence<PoleGeometry> poles, RoofSkin skin, List<Assumption> used)
    {
        var round = roof is Building.Roof.Reciprocal or Building.Roof.Radial;
        var seats = roof is Building.Roof.Shed ? 2 * poles.Count : roof.SideBySide * poles.Count;
        if (roof.Seat is { Bolt: { } bolt } seat)
        {
            yield return seat.Lag is { } lag
                ? Line("roof-seat-lags", Message.Of("analysis.order.roof-seat-lags", ("diameter", bolt), ("length", lag)), "roof", Amount.Count(seats), null, new Message("analysis.order.at-each-seat"), used)
                : Line("roof-seat-bolts", Message.Of("analysis.order.roof-seat-bolts", ("diameter", bolt)), "roof", Amount.Count(seats), null, new Message("analysis.order.at-each-seat"), used);
        }

        if (roof.Secondaries is { PerBay: > 0, Bolt: { } through })
        {
            yield return Line("roof-secondary-bolts", Message.Of("analysis.order.roof-secondary-bolts", ("diameter", through)), "roof", Amount.Count(2 * Spans(roof, poles).Count), null, new Message("analysis.order.at-both-ends"), used);
        }

        if (roof is { Deck: not null, DeckNails: { } nails })
        {
            yield return Line("roof-deck-nails", Message.Of(nails.Kind == DeckFastener.Screw ? "analysis.order.roof-deck-screws" : "analysis.order.roof-deck-nails", ("diameter", nails.Diameter), ("length", nails.Length)), "roof",
                Amount.Count((long)Math.Ceiling(DeckFixing.Nailed(Supports(roof, poles), nails))), Spare, Message.Of("analysis.order.nails-each-board", ("count", nails.Count)), used);
        }

        if (skin.Drip is { } drip)
        {
            yield return Line("roof-drip", Message.Of("analysis.order.roof-drip", ("out", drip.Out), ("down", drip.Down)), "roof", Amount.Metres(skin.EaveLength), Cut, new Message("analysis.order.round-eave"), used);
        }

        if (roof.Battens is { } battens)
        {
            yield return Line("roof-battens", Message.Of("analysis.order.roof-battens", ("height", battens.Height)), "timber", Amount.Metres(skin.Laid / battens.Spacing.Metres), Cut, Message.Of("analysis.order.across-slope", ("spacing", battens.Spacing)), used);
        }

        if (roof.Braces is { } braces)
        {
            var bays = round ? poles.Count : poles.Count - (roof is Building.Roof.Gable ? 2 : 1);
            yield return Line("roof-braces", Message.Of("analysis.order.roof-braces", ("width", braces.Width), ("thickness", braces.Thickness)), "roof", Amount.Metres(2 * bays * DeckFixing.StrapLength(Spans(roof, poles), poles, roof)), Cut,
                Message.Of("analysis.order.two-a-bay", ("bays", bays)), used);
            yield return Line("roof-brace-nails", Message.Of("analysis.order.roof-brace-nails", ("diameter", braces.Diameter), ("length", braces.Length)), "roof", Amount.Count(4 * bays * braces.Nails), Spare,
                Message.Of("analysis.order.nails-each-end", ("count", braces.Nails)), used);
        }
    }

    /// <summary>Length of everything that deck boards are nailed to, eave to inner end along the slope, m; a pair of poles side by side counts twice.</summary>
    private static double Supports(Building.Roof roof, Sequence<PoleGeometry> poles)
    {
        var spans = Spans(roof, poles);
        return roof.SideBySide * poles.Sum(p => (p.EaveReach + (roof is Building.Roof.Reciprocal ? p.Near : p.Far)) / p.PitchCosine) + (roof.Secondaries is null ? 0 : spans.Count * spans.SecondaryLength);
    }

    /// <summary>Through both poles of the thickest crossing, with washers and nut, m. A list in the order of carrying.</summary>
    public static double PinLength(Sequence<PoleGeometry> poles) =>
        Enumerable.Range(0, poles.Count).Max(i => poles[i].Separation + (poles[i].DiameterAt(poles[i].Far) + Next(poles, i).DiameterAt(Next(poles, i).Near)) / 2) + PinPast;

    /// <summary>Round the ring from crossing to crossing along the poles, and its lap, m.</summary>
    public static double StrapLength(Sequence<PoleGeometry> poles) => poles.Sum(p => p.Stub / p.PitchCosine) + StrapLap;

    private static PoleGeometry Next(Sequence<PoleGeometry> poles, int i) => poles[(i + 1) % poles.Count];

    private static IEnumerable<OrderLine> Layers(Building.Roof roof, RoofSkin skin, List<Assumption> used)
    {
        var membrane = false;
        for (var i = 0; i < roof.Layers.Count; i++)
        {
            var layer = roof.Layers[i];
            var material = RoofMaterial.Find(layer.Material) ?? (layer.Material is null ? RoofMaterial.Named(layer.Name) : null);
            var what = Message.Of("analysis.order.roof-layer", ("layer", layer.Name));
            switch (material?.Key)
            {
                case null:
                    yield return OrderLine.Unknown("roof-layer", what, "roof", Message.Of("analysis.roof.layer-unknown", ("layer", layer.Name), ("material", layer.Material ?? "-")));
                    break;
                case "epdm":
                    membrane = true;
                    if (skin.Sheets > 1)
                    {
                        yield return Lapped(roof, skin, what);
                        break;
                    }

                    yield return new OrderLine("roof-membrane", what, "roof", new Area(skin.Membrane), skin.SheetWaste, new Area(skin.SheetWidth * skin.SheetLength), Tag.Computed,
                        Message.Of(roof is Building.Roof.Shed or Building.Roof.Gable ? "analysis.order.one-piece-flat" : "analysis.order.one-piece", ("width", Amount.Metres(skin.SheetWidth)), ("length", Amount.Metres(skin.SheetLength)), ("turned", Turned(roof, skin))));
                    break;
                case "fleece" or "drain-mat" or "insulation":
                    yield return Line("roof-sheet", what, "roof", new Area(skin.Laid), Sheets, new Message("analysis.order.on-surface"), used);
                    break;
                case "crushed-stone" or "gravel" or "sand":
                    yield return Line("roof-stone", what, "stone", new Volume(skin.Laid * layer.Depth.Metres), LooseStone, Message.Of("analysis.order.loose-depth", ("depth", layer.Depth)), used);
                    break;
                default:
                    yield return Line("roof-soil", what, material.Key == "straw" ? "straw" : "earth", new Volume(skin.Laid * layer.Depth.Metres), LooseSoil, Message.Of("analysis.order.loose-depth", ("depth", layer.Depth)), used);
                    break;
            }
        }

        if (Bare(roof))
        {
            yield return OrderLine.Unknown("roof-felt", new Message("analysis.order.roof-felt-any"), "roof", new Message("analysis.order.no-felt"));
        }

        if (!membrane && roof.Layers.Count > 0)
        {
            yield return OrderLine.Unknown("roof-membrane", new Message("analysis.order.roof-membrane-any"), "roof", new Message("analysis.order.no-membrane"));
        }
    }

    /// <summary>Whether a membrane lies straight on the deck: with no felt or board described under it.</summary>
    private static bool Bare(Building.Roof roof)
    {
        var below = roof.Layers.Select(l => (RoofMaterial.Find(l.Material) ?? (l.Material is null ? RoofMaterial.Named(l.Name) : null))?.Key).TakeWhile(key => key != "epdm").ToList();
        return below.Count < roof.Layers.Count && !below.Any(key => key is "fleece" or "insulation");
    }

    /// <summary>Sheets side by side along the longer way, glued over a lap.</summary>
    private static OrderLine Lapped(Building.Roof roof, RoofSkin skin, Message what)
    {
        var roll = roof.SheetRoll!.Value;
        var bought = skin.Sheets * roll.Metres * skin.SheetLength;
        return new OrderLine("roof-membrane", what, "roof", new Area(skin.Membrane), bought / skin.Membrane - 1, new Area(bought), Tag.Computed, Message.Of(
            "analysis.order.in-sheets", ("count", skin.Sheets), ("width", roll), ("length", Amount.Metres(skin.SheetLength)), ("lap", Amount.Metres(RoofSkins.Lap)), ("glued", Amount.Metres((skin.Sheets - 1) * skin.SheetLength)), ("turned", Turned(roof, skin))));
    }

    /// <summary>What the membrane goes up and over.</summary>
    private static Message Turned(Building.Roof roof, RoofSkin skin) => (roof.EdgeBoard is not null, skin.CurbLength > 0) switch
    {
        (true, true) => new("analysis.order.turned-edge-curb"),
        (true, false) => new("analysis.order.turned-edge"),
        (false, true) => new("analysis.order.turned-eave-curb"),
        (false, false) => new("analysis.order.turned-eave"),
    };

    private static Assumption Share(string key, double share) => new(key, new Message($"analysis.assumed.{key}"), Amount.Fraction(share), Practice);

    private static OrderLine Line(string key, Message what, string supplier, Amount net, Assumption? more, Message basis, List<Assumption> used)
    {
        if (more is not null)
        {
            used.Add(more);
        }

        return OrderLine.Of(key, what, supplier, net, more is null ? 0 : ((Argument.Quantity)more.Value).Value.Si, basis);
    }
}
