using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Json;

namespace Clomwright.Files.Forms;

/// <summary>A list of things of one form.</summary>
/// <param name="item">The form of one.</param>
/// <param name="leavesOut">Whether a bad item is left out and the rest read; otherwise one bad item spoils the list.</param>
internal sealed class ListForm<T>(Form<T> item, bool leavesOut = false) : Form<Sequence<T>>
{
    public override Kind Kind { get; } = new Kind.List(item.Kind);

    public override bool TryRead(Node node, KeyPath path, Reading reading, out Sequence<T> value)
    {
        value = default;
        if (node is not ArrayNode array)
        {
            return reading.NotOfKind(path, node, "files.kind.list");
        }

        var items = new List<T>(array.Items.Count);
        var whole = true;
        for (var i = 0; i < array.Items.Count; i++)
        {
            if (reading.Full)
            {
                return false;
            }

            if (item.TryRead(array.Items[i], path[i], reading, out var read))
            {
                items.Add(read);
            }
            else
            {
                whole &= leavesOut;
                reading.Drop(array.Items[i]);
            }
        }

        value = items.ToSequence();
        return whole;
    }

    public override Piece Write(Sequence<T> value, UnitSystem units) => new Piece.Items(value.Select(v => item.Write(v, units)).ToSequence());
}

/// <summary>East and north in a list of two.</summary>
internal sealed class PositionForm : Form<PlanPosition>
{
    public override Kind Kind { get; } = new Kind.Position();

    public override bool TryRead(Node node, KeyPath path, Reading reading, out PlanPosition value)
    {
        value = default;
        if (node is not ArrayNode { Items: [var east, var north] })
        {
            return reading.NotOfKind(path, node, "files.kind.position");
        }

        var read = Quantities.Lengths.TryRead(east, path[0], reading, out var e) & Quantities.Lengths.TryRead(north, path[1], reading, out var n);
        value = new PlanPosition(e, n);
        return read;
    }

    public override Piece Write(PlanPosition value, UnitSystem units) =>
        new Piece.Items([Quantities.Lengths.Write(value.East, units), Quantities.Lengths.Write(value.North, units)]);
}

/// <summary>A pole: one diameter, or butt and tip.</summary>
/// <param name="ends">The form with both ends.</param>
internal sealed class PoleForm(Form<PoleSize> ends) : Form<PoleSize>
{
    public override Kind Kind { get; } = new Kind.Either(new Kind.Quantity(Dimension.Length), ends.Kind);

    public override bool TryRead(Node node, KeyPath path, Reading reading, out PoleSize value)
    {
        if (node is ObjectNode)
        {
            return ends.TryRead(node, path, reading, out value);
        }

        var read = Quantities.Lengths.TryRead(node, path, reading, out var diameter);
        value = PoleSize.Even(diameter);
        return read;
    }

    public override Piece Write(PoleSize value, UnitSystem units) =>
        value.Butt == value.Tip ? Quantities.Lengths.Write(value.Butt, units) : ends.Write(value, units);
}
