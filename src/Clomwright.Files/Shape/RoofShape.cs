using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How the roof stands in the file: its keys depend on <c>kind</c>.</summary>
internal static class RoofShape
{
    private static readonly PoleForm Pole = new(MakeEnds());

    public static Union<Roof> Roof { get; } = new("roof", "kind",
    [
        new Union<Roof>.CaseOf<Roof.Reciprocal>("reciprocal", Reciprocal()),
        new Union<Roof>.CaseOf<Roof.Radial>("radial", Radial()),
        new Union<Roof>.CaseOf<Roof.Shed>("shed", Shed()),
        new Union<Roof>.CaseOf<Roof.Gable>("gable", Gable()),
    ]);

    private static Thing<PoleSize> MakeEnds()
    {
        var butt = Keys<PoleSize>.Needed("butt", Lengths, p => p.Butt);
        var tip = Keys<PoleSize>.Needed("tip", Lengths, p => p.Tip);
        return new Thing<PoleSize>("pole", [butt, tip], v => new PoleSize(v.Of(butt), v.Of(tip)));
    }

    private static Thing<Secondaries> MakeSecondaries()
    {
        var perBay = Keys<Secondaries>.Needed("perBay", Whole, s => s.PerBay);
        var diameter = Keys<Secondaries>.Needed("diameter", Lengths, s => s.Diameter);
        var bolt = Keys<Secondaries>.Maybe("bolt", Lengths, s => s.Bolt, leavesOut: true);
        return new Thing<Secondaries>("secondaries", [perBay, diameter, bolt], v => new Secondaries(v.Of(perBay), v.Of(diameter)) { Bolt = v.Of(bolt) });
    }

    private static Thing<Roof.Reciprocal> Reciprocal()
    {
        var poles = Keys<Roof.Reciprocal>.Needed("poles", Whole, r => r.Poles);
        var ring = Keys<Roof.Reciprocal>.Needed("ringRadius", Lengths, r => r.RingRadius);
        var pole = Keys<Roof.Reciprocal>.Needed("poleDiameter", Pole, r => r.Pole);
        var turn = Keys<Roof.Reciprocal>.Or("turn", new WordForm<Turn>(), r => r.Turn, Turn.Clockwise);
        var notch = Keys<Roof.Reciprocal>.Or("notch", Lengths, r => r.Notch, Length.Zero);
        var joint = Keys<Roof.Reciprocal>.Or("joint", new WordForm<PoleJoint>(), r => r.Joint, PoleJoint.Pinned);
        var eye = Keys<Roof.Reciprocal>.Or("eye", new WordForm<Eye>(), r => r.Eye, Eye.Closed);
        var pin = Keys<Roof.Reciprocal>.MaybeThing("pin", RoofJointsShape.Pin, r => r.Pin, leavesOut: true);
        var fails = Keys<Roof.Reciprocal>.MaybeThing("ifOneFails", RoofJointsShape.IfOneFails, r => r.IfOneFails, leavesOut: true);
        return Covered([poles, ring, pole, turn, notch, joint, pin, eye, fails], (v, eave) => new Roof.Reciprocal(v.Of(poles), v.Of(ring), v.Of(pole))
        {
            Eave = eave, Turn = v.Of(turn), Notch = v.Of(notch), Joint = v.Of(joint), Eye = v.Of(eye), Pin = v.Of(pin), IfOneFails = v.Of(fails),
        });
    }

    private static Thing<Roof.Radial> Radial()
    {
        var poles = Keys<Roof.Radial>.Needed("poles", Whole, r => r.Poles);
        var pole = Keys<Roof.Radial>.Needed("poleDiameter", Pole, r => r.Pole);
        var pitch = Keys<Roof.Radial>.Needed("pitch", Slopes, r => r.Pitch);
        var post = Keys<Roof.Radial>.Or("centrePost", Truth, r => r.CentrePost, false);
        var ring = Keys<Roof.Radial>.Or("ringRadius", Lengths, r => r.RingRadius, Length.Zero);
        var eye = Keys<Roof.Radial>.Or("eye", new WordForm<Eye>(), r => r.Eye, Eye.Closed);
        var stands = Keys<Roof.Radial>.MaybeThing("post", RoofFixingsShape.Post, r => r.Post, leavesOut: true);
        var leans = Keys<Roof.Radial>.MaybeThing("ring", RoofFixingsShape.Ring, r => r.Ring, leavesOut: true);
        return Covered([poles, pole, pitch, post, stands, ring, leans, eye], (v, eave) => new Roof.Radial(v.Of(poles), v.Of(pole), v.Of(pitch))
        {
            Eave = eave, CentrePost = v.Of(post), Post = v.Of(stands), RingRadius = v.Of(ring), Ring = v.Of(leans), Eye = v.Of(eye),
        });
    }

    private static Thing<Roof.Shed> Shed()
    {
        var pole = Keys<Roof.Shed>.Needed("poleDiameter", Pole, r => r.Pole);
        var spacing = Keys<Roof.Shed>.Needed("spacing", Lengths, r => r.Spacing);
        var pitch = Keys<Roof.Shed>.Needed("pitch", Slopes, r => r.Pitch);
        return Covered([pole, spacing, pitch], (v, eave) => new Roof.Shed(v.Of(pole), v.Of(spacing), v.Of(pitch)) { Eave = eave });
    }

    private static Thing<Roof.Gable> Gable()
    {
        var pole = Keys<Roof.Gable>.Needed("poleDiameter", Pole, r => r.Pole);
        var spacing = Keys<Roof.Gable>.Needed("spacing", Lengths, r => r.Spacing);
        var pitch = Keys<Roof.Gable>.Needed("pitch", Slopes, r => r.Pitch);
        return Covered([pole, spacing, pitch], (v, eave) => new Roof.Gable(v.Of(pole), v.Of(spacing), v.Of(pitch)) { Eave = eave });
    }

    /// <summary>The keys that every kind has after its own.</summary>
    private static Thing<R> Covered<R>(Key<R>[] own, Func<Values, Length, R> make) where R : Roof
    {
        var eave = Keys<R>.Needed("eave", Lengths, r => r.Eave);
        var species = Keys<R>.Or("species", Text, r => r.Species, "douglas-fir-pole");
        var secondaries = Keys<R>.MaybeThing("secondaries", MakeSecondaries(), r => r.Secondaries);
        var deck = Keys<R>.Maybe("deck", Lengths, r => r.Deck);
        var boards = Keys<R>.Or("deckMaterial", Text, r => r.DeckMaterial, "douglas-fir-no2", leavesOut: true);
        var layers = Keys<R>.List("layers", SiteShape.Layer, r => r.Layers);
        var edge = Keys<R>.Maybe("edgeBoard", Lengths, r => r.EdgeBoard);
        var nails = Keys<R>.MaybeThing("deckNails", RoofFixingsShape.Nails, r => r.DeckNails, leavesOut: true);
        var braces = Keys<R>.MaybeThing("braces", RoofFixingsShape.Braces, r => r.Braces, leavesOut: true);
        var seat = Keys<R>.MaybeThing("seat", RoofFixingsShape.Seat, r => r.Seat, leavesOut: true);
        var flue = Keys<R>.MaybeThing("flue", RoofFixingsShape.Flue, r => r.Flue, leavesOut: true);
        var overflow = Keys<R>.Maybe("overflow", Lengths, r => r.Overflow, leavesOut: true);
        var drip = Keys<R>.MaybeThing("drip", RoofFixingsShape.Drip, r => r.Drip, leavesOut: true);
        var battens = Keys<R>.MaybeThing("battens", RoofFixingsShape.Battens, r => r.Battens, leavesOut: true);
        var roll = Keys<R>.Maybe("sheetRoll", Lengths, r => r.SheetRoll, leavesOut: true);
        var first = Keys<R>.Or("firstBearing", Angles, r => r.FirstBearing, default);
        var landings = Keys<R>.List("landings", Angles, r => r.Landings);
        return new Thing<R>("roof", [.. own, eave, species, secondaries, deck, boards, nails, braces, seat, layers, edge, drip, overflow, battens, roll, flue, first, landings],
            v => make(v, v.Of(eave)) with
            {
                Species = v.Of(species), Secondaries = v.Of(secondaries), Deck = v.Of(deck), DeckMaterial = v.Of(boards), Layers = v.Of(layers), EdgeBoard = v.Of(edge),
                DeckNails = v.Of(nails), Braces = v.Of(braces), Seat = v.Of(seat), Flue = v.Of(flue), Overflow = v.Of(overflow), Drip = v.Of(drip), Battens = v.Of(battens), SheetRoll = v.Of(roll),
                FirstBearing = v.Of(first), Landings = v.Of(landings),
            });
    }
}
