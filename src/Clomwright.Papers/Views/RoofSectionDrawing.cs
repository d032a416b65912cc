using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>A pole from the side with wall top, deck and layers, edge board and drip; where a flue passes the roof, the pole nearest to it and the flue before it. Outside on the left, lengths along the pole's line true.</summary>
internal sealed class RoofSectionDrawing
{
    /// <summary>How much of the wall is shown under the bond beam, of a post under the poles, and of the flue over and under the roof, m.</summary>
    private const double WallShown = 0.5, PostShown = 0.6, FlueOver = 0.75, FlueUnder = 0.45;

    /// <summary>Thickness that an edge board is drawn with, m.</summary>
    private const double Board = 0.038;

    private readonly HouseGeometry geometry;
    private readonly Building.Roof roof;
    private readonly double k;
    private readonly double skewCosine;
    private readonly (FluePlace Place, double Along)? flue;
    private readonly DripEdge? drip;

    public RoofSectionDrawing(HouseGeometry geometry, RoofResult result, Sequence<PoleGeometry> poles, double paperPerMetre)
    {
        (this.geometry, roof, k) = (geometry, geometry.House.Roof!, paperPerMetre);
        Pole = result.Flue is { } pipe ? poles.MinBy(p => Beside(p, pipe.Middle))! : poles[0];
        flue = result.Flue is { } passes ? (passes, Pole.Along.Dot(passes.Middle - Pole.Foot)) : null;
        drip = result.Skin?.Drip;
        InnerEnd = result.Reciprocal.Is ? Pole.Near : Pole.Far;
        var landing = geometry.Landings.MinBy(l => (l.Point - Pole.Foot).Norm)!;
        skewCosine = Math.Max(0.2, Math.Abs(geometry.Curve.Normal(landing.Station).Dot(Pole.Along)));
    }

    /// <summary>The pole that is drawn.</summary>
    public PoleGeometry Pole { get; }

    /// <summary>Left open between two poles from the bond beam up to the deck, over the bond beam's middle, m.</summary>
    public double Open => Over(0) - Under(0) - Seat;

    /// <summary>Where deck and layers end inward, along the pole, m.</summary>
    private double InnerEnd { get; }

    /// <summary>How deep the flat of a seat is cut, m.</summary>
    private double Seat => LevelSeat.DepthOf(roof.Seat);

    /// <summary>Thickness of deck and layers, square to the roof, m.</summary>
    private double Covering => (roof.Deck?.Metres ?? 0) + roof.Layers.Sum(l => l.Depth.Metres);

    private double Clear => flue is { Place.Clear: { } clear } ? clear : flue?.Place.Pipe ?? 0;

    /// <summary>What is shown of the eave: from the drip to the inside of the wall.</summary>
    public PaperBox Eave
    {
        get
        {
            var wall = geometry.Wall;
            var t = wall.Top.Metres;
            var inside = Across(wall.InsideOffset(t) - (wall.InsideOffset(t) + wall.OutsideOffset(t)) / 2) + 0.12;
            var low = Under(-Pole.EaveReach) - 0.06;
            return PaperBox.Around(At(-Pole.EaveReach - 0.2, Math.Min(low, WallTop - 0.2)), At(inside, Math.Max(Over(inside) + Up(Covering), Over(-Pole.EaveReach) + Up(Covering) + (roof.EdgeBoard?.Metres ?? 0)) + 0.06));
        }
    }

    private double WallTop => Under(0) + Seat - (geometry.House.BondBeam?.Depth.Metres ?? 0);

    /// <summary>Draws it and names its parts.</summary>
    /// <param name="board">Where to.</param>
    /// <param name="say">Words.</param>
    /// <param name="eave">Names of the eave: every layer, edge board, overflow, drip, bond beam; otherwise the pole, the uppermost layer and the flue.</param>
    public IReadOnlyList<PartLabel> Draw(Layout.Board board, Func<Message, string> say, bool eave)
    {
        List<PartLabel> labels = [];
        Wall(board);
        if (eave && geometry.House.BondBeam is { } beam)
        {
            Label(0, Under(0) + Seat - beam.Depth.Metres / 2, Message.Of("papers.roof-section.beam", ("width", beam.Width), ("depth", beam.Depth)));
        }

        Body(board, "section-pole", [At(-Pole.EaveReach, Under(-Pole.EaveReach)), At(Pole.Far + Pole.Tail, Under(Pole.Far + Pole.Tail)), At(Pole.Far + Pole.Tail, Over(Pole.Far + Pole.Tail)), At(-Pole.EaveReach, Over(-Pole.EaveReach))], Weight.Medium);
        var across = (double share) => eave ? -Pole.EaveReach * (1 - share) : Pole.TangentDistance * share;
        Label(across(0.3), Pole.HeightAt(across(0.3)), Message.Of("papers.roof-section.pole", ("pole", Pole.Number)));
        var lift = 0.0;
        if (roof.Deck is { } deck)
        {
            Band(board, "section-deck", lift, lift + deck.Metres, null, Weight.Medium);
            Label(across(eave ? 0.4 : 0.12), Over(across(eave ? 0.4 : 0.12)) + Up(deck.Metres / 2), Message.Of("papers.roof-section.deck", ("depth", deck)));
            lift += deck.Metres;
        }

        for (var i = 0; i < roof.Layers.Count; i++)
        {
            var (layer, top) = (roof.Layers[i], i == roof.Layers.Count - 1);
            var hatch = layer.Depth.Metres * k < 1.2 ? null : new Hatch(Outline.Line(0, 0, 0, 0), i % 2 == 0 ? 45 : -45, top ? 1.3 : 0.9, new Pen(Weight.Hair));
            Band(board, FormattableString.Invariant($"section-layer-{i + 1}"), lift, lift + layer.Depth.Metres, hatch, Weight.Thin);
            lift += layer.Depth.Metres;
            if (eave || top)
            {
                var x = across(0.45 + 0.5 * (i + 1) / (roof.Layers.Count + 1));
                Label(x, Over(x) + Up(lift - layer.Depth.Metres / 2), Message.Of("papers.roof-section.layer", ("name", layer.Name), ("depth", layer.Depth)));
            }
        }

        if (!eave && PostDrawing.Of(geometry) is { } post)
        {
            var (middle, under) = (Pole.Far, Under(Pole.Far));
            board.Add(post.Upright("section-post", (x, z) => At(middle + x, z), under - PostShown, under));
            Label(middle, under - PostShown / 2, post.Name);
        }

        Edge(board, eave ? Label : Nothing);
        Flue(board, eave ? Nothing : Label);
        return labels;

        void Label(double along, double height, Message words) => labels.Add(new PartLabel(At(along, height), say(words)));

        static void Nothing(double along, double height, Message words)
        {
        }
    }

    private void Wall(Layout.Board board)
    {
        var wall = geometry.Wall;
        var t = wall.Top.Metres;
        var seat = Under(0) + Seat;
        var beam = geometry.House.BondBeam;
        var top = WallTop;
        var middle = (wall.InsideOffset(t) + wall.OutsideOffset(t)) / 2;
        var low = t - WallShown;
        var outline = Outline.Polygon(
            At(Across(wall.OutsideOffset(t) - middle), top), At(Across(wall.InsideOffset(t) - middle), top), At(Across(wall.InsideOffset(low) - middle), top - WallShown), At(Across(wall.OutsideOffset(low) - middle), top - WallShown));
        board.Add(new Group("section-wall", [new Hatch(outline, 45, 1.9, new Pen(Weight.Hair)), new Stroke(outline, new Pen(Weight.Heavy))]));
        if (beam is not null)
        {
            var box = PaperBox.Around(At(Across(beam.Offset.Metres + beam.Width.Metres / 2), seat), At(Across(beam.Offset.Metres - beam.Width.Metres / 2), top));
            board.Add(new Group("section-beam", [new Fill(Outline.Rectangle(box), Tone.Paper), new Stroke(Outline.Of(Outline.Line(box.Left, box.Top, box.Right, box.Bottom), Outline.Line(box.Left, box.Bottom, box.Right, box.Top)), new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Heavy))]));
        }
    }

    /// <summary>Edge board, its overflow, and the drip under it.</summary>
    private void Edge(Layout.Board board, Action<double, double, Message> label)
    {
        var x = -Pole.EaveReach;
        var deck = Over(x) + Up(roof.Deck?.Metres ?? 0);
        var outer = x;
        if (roof.EdgeBoard is { } edge)
        {
            outer = x - Board;
            Body(board, "section-edge-board", [At(outer, Over(x)), At(x, Over(x)), At(x, deck + edge.Metres), At(outer, deck + edge.Metres)], Weight.Medium);
            label(outer + Board / 2, deck + edge.Metres * 0.8, Message.Of("papers.roof-section.edge", ("height", edge)));
            if (roof.Overflow is { } overflow)
            {
                board.Add(new Stroke(Outline.Line(At(outer - 0.06, deck + overflow.Metres).X, At(0, deck + overflow.Metres).Y, At(x + 0.02, 0).X, At(0, deck + overflow.Metres).Y), new Pen(Weight.Medium, Dash.Dashed)));
                label(outer - 0.05, deck + overflow.Metres, Message.Of("papers.roof-section.overflow", ("height", overflow)));
            }
        }

        if (drip is not null)
        {
            PaperPoint[] strip = [At(outer, deck), At(outer, Over(x)), At(outer - drip.Out.Metres, Over(x) - drip.Down.Metres)];
            board.Add(new Group("section-drip", [new Stroke(Outline.Through(strip), new Pen(Weight.Bold))]));
            label(outer - drip.Out.Metres, Over(x) - drip.Down.Metres, Message.Of(roof.Drip is null ? "papers.roof-section.drip-assumed" : "papers.roof-section.drip", ("out", drip.Out), ("down", drip.Down)));
        }
    }

    /// <summary>The pipe before the pole, and upright broken lines round the zone that is kept clear where its maker's clearance is known.</summary>
    private void Flue(Layout.Board board, Action<double, double, Message> label)
    {
        if (flue is not { } passes)
        {
            return;
        }

        var (place, along) = passes;
        double low = Under(along) - FlueUnder, high = Over(along) + Up(Covering) + FlueOver;
        PaperPoint[] pipe = [At(along - place.Pipe, low), At(along - place.Pipe, high), At(along + place.Pipe, high), At(along + place.Pipe, low)];
        List<Mark> marks = [new Fill(Outline.Polygon(pipe), Tone.Paper), new Stroke(Outline.Through(pipe[0], pipe[1]), new Pen(Weight.Heavy)), new Stroke(Outline.Through(pipe[2], pipe[3]), new Pen(Weight.Heavy)),
            new Stroke(Outline.Through(At(along, low - 0.04), At(along, high + 0.04)), new Pen(Weight.Hair, Dash.Chain))];
        if (place.Clear is { } clear)
        {
            marks.AddRange(((double[])[along - clear, along + clear]).Select(x => new Stroke(Outline.Through(At(x, Under(x) - 0.12), At(x, Over(x) + Up(Covering) + 0.16)), new Pen(Weight.Thin, Dash.Dashed))));
            label(along + clear, Over(along + clear) + Up(Covering) + 0.1, Message.Of("papers.roof-section.clear", ("clear", Amount.Metres(clear - place.Pipe))));
        }
        else
        {
            label(along + place.Pipe, Over(along) + Up(Covering) + 0.12, new Message("papers.roof-section.clear-unknown"));
        }

        board.Add(new Group("section-flue", [.. marks]));
        label(along, high - 0.1, Message.Of("papers.roof-section.flue", ("diameter", Amount.Metres(2 * place.Pipe)), ("gap", Amount.Metres(Math.Max(0, place.Gap))), ("nearest", new Argument.Subject(place.Nearest))));
    }

    /// <summary>A layer along the pole, cut back to the zone round the flue where that lies in its way.</summary>
    private void Band(Layout.Board board, string id, double from, double to, Hatch? hatch, Weight weight)
    {
        (double From, double To)[] stretches = flue is { } passes && passes.Along - Clear < InnerEnd
            ? [(-Pole.EaveReach, passes.Along - Clear), (passes.Along + Clear, InnerEnd)]
            : [(-Pole.EaveReach, InnerEnd)];
        List<Mark> marks = [];
        foreach (var (a, b) in stretches.Where(s => s.To > s.From))
        {
            var outline = Outline.Polygon(At(a, Over(a) + Up(from)), At(b, Over(b) + Up(from)), At(b, Over(b) + Up(to)), At(a, Over(a) + Up(to)));
            marks.Add(new Fill(outline, Tone.Paper));
            if (hatch is not null)
            {
                marks.Add(hatch with { Area = outline });
            }

            marks.Add(new Stroke(outline, new Pen(weight)));
        }

        board.Add(new Group(id, [.. marks]));
    }

    private static void Body(Layout.Board board, string id, PaperPoint[] corners, Weight weight) =>
        board.Add(new Group(id, [new Fill(Outline.Polygon(corners), Tone.Paper), new Stroke(Outline.Polygon(corners), new Pen(weight))]));

    private PaperPoint At(double along, double height) => new(along * k, -height * k);

    private double Half(double x) => Pole.DiameterAt(x) / 2 / Pole.PitchCosine;

    private double Over(double x) => Pole.HeightAt(x) + Half(x);

    private double Under(double x) => Pole.HeightAt(x) - Half(x);

    /// <summary>Upright rise of a thickness square to the roof.</summary>
    private double Up(double thickness) => thickness / Pole.PitchCosine;

    private double Across(double outward) => ((geometry.House.BondBeam?.Offset.Metres ?? 0) - outward) / skewCosine;

    private static double Beside(PoleGeometry pole, PlanPoint at) => (at - (pole.Foot + Math.Clamp(pole.Along.Dot(at - pole.Foot), 0, pole.Far) * pole.Along)).Norm;
}
