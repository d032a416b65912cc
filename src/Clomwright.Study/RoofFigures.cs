using Clomwright.Analysis;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The roof's part of the figures. Forces are lists by pole, clockwise as landings are listed; each crossing belongs to the pole that rests there.</summary>
internal static class RoofFigures
{
    public static Figure Of(RoofResult roof) => roof switch
    {
        { Reciprocal.Value: { } frame } => Of(roof, frame),
        { Plain.Value: { } plain } => Of(roof, plain),
        _ => new Figure.NotChecked(roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : roof.Plain.NotChecked!),
    };

    private static Figure Of(RoofResult roof, PlainResult plain) => Tree(
        ("kind", Name(plain.Kind)),
        ("pitch", Computed(plain.Rafters.Average(r => r.Pitch), Dimension.Angle)),
        ("poleLength", Computed(plain.Rafters.Max(r => r.Length), Dimension.Length)),
        ("span", Computed(plain.Rafters.Max(r => r.Span), Dimension.Length)),
        ("layersWet", Of(roof.LayersWet, w => Computed(w.Value, Dimension.AreaLoad))),
        ("layersDry", Of(roof.LayersDry, w => Computed(w.Value, Dimension.AreaLoad))),
        ("snow", Of(roof.Snow, s => Computed(s.Balanced, Dimension.AreaLoad))),
        ("stages", new Figure.Branch(plain.Stages.Select(s => new NamedFigure(s.Key, Of(s.Forces, Forces))).ToSequence())),
        ("innerLoad", Number(plain.InnerLoad)),
        ("thrust", Number(plain.Thrust)),
        ("hoop", Number(plain.Hoop)),
        ("checks", Checks(plain.Checks)),
        ("spans", Spans(roof)),
        ("deck", Checks(roof.Deck)),
        ("fixings", Checks(roof.Fixings)),
        ("supports", Checks(roof.Supports)),
        ("skin", Skin(roof)));

    private static Figure Skin(RoofResult roof) => roof.Skin is not { } skin ? new Figure.NotChecked(new Message("analysis.roof.none")) : Tree(
        ("surface", Computed(skin.Surface, Dimension.Area)),
        ("flueCut", Computed(skin.FlueCut, Dimension.Area)),
        ("sheets", Computed(skin.Sheets, Dimension.Count)),
        ("eaveLength", Computed(skin.EaveLength, Dimension.Length)),
        ("membrane", Computed(skin.Membrane, Dimension.Area)),
        ("sheetWidth", Computed(skin.SheetWidth, Dimension.Length)),
        ("sheetLength", Computed(skin.SheetLength, Dimension.Length)),
        ("sheetWaste", Computed(skin.SheetWaste, Dimension.Fraction)));

    private static Figure Spans(RoofResult roof) => roof.Spans is not { } spans ? new Figure.NotChecked(new Message("analysis.roof.none")) : Tree(
        ("deck", Computed(spans.Deck, Dimension.Length)),
        ("secondary", Computed(spans.SecondarySpan, Dimension.Length)),
        ("secondaryCount", Computed(spans.Count, Dimension.Count)),
        ("secondaryLength", Computed(spans.SecondaryLength, Dimension.Length)));

    private static Figure Number(double force) => double.IsFinite(force) ? Computed(force, Dimension.Force) : new Figure.NotChecked(new Message("analysis.roof.no-timber"));

    private static Figure Of(RoofResult roof, ReciprocalResult frame) => Tree(
        ("pitch", Computed(frame.Geometry.MeanPitch, Dimension.Angle)),
        ("radialPitch", Computed(frame.Geometry.MeanRadialPitch, Dimension.Angle)),
        ("ringSide", Computed(frame.Geometry.Poles.Average(p => p.Stub), Dimension.Length)),
        ("clearOpening", Computed(frame.Geometry.ClearOpening, Dimension.Length)),
        ("poleLength", Computed(frame.Poles.Max(p => p.Length), Dimension.Length)),
        ("poles", Row(frame.Poles, pole => Tree(
            ("number", Computed(pole.Number, Dimension.Count)),
            ("restsOn", Computed(pole.RestsOn, Dimension.Count)),
            ("pitch", Computed(pole.Pitch, Dimension.Angle)),
            ("skew", Computed(pole.Skew, Dimension.Angle)),
            ("length", Computed(pole.Length, Dimension.Length)),
            ("cutLength", Computed(pole.CutLength, Dimension.Length)),
            ("seatMark", Computed(pole.SeatMark, Dimension.Length)),
            ("nearMark", Computed(pole.NearMark, Dimension.Length)),
            ("farMark", Computed(pole.FarMark, Dimension.Length)),
            ("mass", Computed(pole.Mass, Dimension.Mass, new Message("analysis.roof.no-timber")))))),
        ("layersWet", Of(roof.LayersWet, w => Computed(w.Value, Dimension.AreaLoad))),
        ("layersDry", Of(roof.LayersDry, w => Computed(w.Value, Dimension.AreaLoad))),
        ("snow", Of(roof.Snow, s => Computed(s.Balanced, Dimension.AreaLoad))),
        ("stages", new Figure.Branch(frame.Stages.Select(s => new NamedFigure(s.Key, Of(s.Forces, Forces))).ToSequence())),
        ("loadingOrder", Tree(("fromRing", Of(frame.FromRing, Order)), ("fromEave", Of(frame.FromEave, Order)))),
        ("joints", Of(frame.Joints, j => Tree(
            ("frictionDemand", Computed(j.FrictionDemand, Dimension.Number)),
            ("slipForce", Computed(j.SlipForce, Dimension.Force)),
            ("pinTension", Computed(j.PinTension, Dimension.Force)),
            ("thrustWithoutFriction", Computed(j.ThrustWithoutFriction, Dimension.Force)),
            ("thrustAgainstRing", Computed(j.ThrustAgainstRing, Dimension.Force)),
            ("hoopTension", Computed(j.HoopTension, Dimension.Force))))),
        ("poleLoss", Of(frame.Loss, l => Tree(
            ("stage", Name(l.Stage)), ("pole", Computed(l.WorstPole, Dimension.Count)), ("propForce", Computed(l.PropForce, Dimension.Force)),
            ("suddenForce", Computed(l.SuddenForce, Dimension.Force))))),
        ("checks", Checks(frame.Checks)),
        ("stageChecks", Checks(frame.StageChecks)),
        ("pins", Checks(frame.Pins)),
        ("waysOut", Checks(frame.WaysOut)),
        ("charlie", Checks(frame.Charlie)),
        ("spans", Spans(roof)),
        ("deck", Checks(roof.Deck)),
        ("fixings", Checks(roof.Fixings)),
        ("supports", Checks(roof.Supports)),
        ("skin", Skin(roof)),
        ("uplift", List(frame.Uplift, Dimension.Force)),
        ("raising", Tree(
            ("order", Row(frame.Raising.Order, n => Computed(n, Dimension.Count))),
            ("charlieHeight", Computed(frame.Raising.CharlieHeight, Dimension.Length)),
            ("charlieLength", Computed(frame.Raising.CharlieLength, Dimension.Length)),
            ("charlieLoad", Computed(frame.Raising.CharlieLoad, Dimension.Force, new Message("analysis.roof.no-timber"))))));

    /// <summary>The top of the wall.</summary>
    public static Figure Of(WallTopResult top) => Tree(
        ("headers", Checks(top.Headers)),
        ("headerEnds", Row(top.HeaderEnds, e => Tree(
            ("opening", Name(e.Opening)),
            ("end", Name(e.Left ? "left" : "right")),
            ("force", Computed(e.Force, Dimension.Force)),
            ("needed", Computed(e.Needed, Dimension.Length, new Message("analysis.walltop.no-length"))),
            ("arched", Computed(e.NeededArched, Dimension.Length, new Message(e.Arched is null ? "analysis.walltop.no-arch" : "analysis.walltop.no-length"))),
            ("combination", Name(e.Combination.Key))))),
        ("tees", Checks(top.Tees)),
        ("straps", Checks(top.Straps)),
        ("beam", Checks(top.Beam)),
        ("lateral", Checks(top.Lateral)),
        ("bearing", Checks(top.Bearing)),
        ("seats", Row(top.Seats, s => Tree(
            ("pole", Name(s.Pole)),
            ("piece", Computed(s.Piece, Dimension.Count)),
            ("rise", Computed(s.Rise, Dimension.Length)),
            ("offCentre", Computed(s.OffCentre, Dimension.Length))))),
        ("seatEccentricity", Computed(top.SeatEccentricity, Dimension.Fraction)),
        ("beamPieces", Row(top.BeamPieces, p => Tree(
            ("number", Computed(p.Number, Dimension.Count)),
            ("chord", Computed(p.Chord, Dimension.Length)),
            ("mitre", Computed(p.Mitre, Dimension.Angle)),
            ("reach", Computed(p.Reach, Dimension.Length))))));

    private static Figure Checks(Sequence<CheckedMember> checks) => Row(checks, c => Tree(
        ("key", Name(c.Key)), ("subject", Name(c.Subject)),
        ("use", Of(c.Check, m => Computed(m.Use, Dimension.Number))),
        ("demand", Of(c.Check, m => new Figure.Number(m.Demand, Tag.Computed, FromDescription))),
        ("capacity", Of(c.Check, m => new Figure.Number(m.Capacity, Tag.Computed, FromDescription))),
        ("combination", Of(c.Check, m => Name(m.Combination))),
        ("sense", Of(c.Check, m => Name(m.Sense)))));

    private static Figure Forces(RoofForces f) => Tree(
        ("load", Computed(f.TotalLoad, Dimension.Force)),
        ("crossingForce", List(f.CrossingForce, Dimension.Force)),
        ("crossingForceInSpace", List(f.CrossingForceInSpace, Dimension.Force)),
        ("planToSpace", Computed(f.PlanToSpace, Dimension.Fraction)),
        ("plateReaction", List(f.PlateReaction, Dimension.Force)),
        ("bendingStress", Computed(f.BendingStress.Max(), Dimension.Stress)),
        ("shearStress", Computed(f.ShearStress.Max(), Dimension.Stress)),
        ("ringDrop", f.Drop.Count > 0 ? Computed(f.Drop.Max(), Dimension.Length) : new Figure.NotChecked(new Message("analysis.roof.no-timber"))),
        ("opened", Row(f.Opened, n => Computed(n, Dimension.Count))));

    private static Figure Order(LoadingOrder order) => Tree(
        ("opens", new Figure.Flag(order.Opens)),
        ("steps", Row(order.Steps, s => Tree(
            ("innerRadius", Computed(s.InnerRadius, Dimension.Length)),
            ("outerRadius", Computed(s.OuterRadius, Dimension.Length)),
            ("weight", Computed(s.Weight, Dimension.Force)),
            ("crossingForce", List(s.Forces.CrossingForce, Dimension.Force))))));

    private static Figure List(Sequence<double> values, Dimension dimension) => Row(values, v => Computed(v, dimension));

    private static Figure Of<T>(Known<T> known, Func<T, Figure> figure) where T : class =>
        known.Value is { } value ? figure(value) : new Figure.NotChecked(known.NotChecked!);
}
