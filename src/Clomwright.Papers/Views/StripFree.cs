using Clomwright.Analysis.FreeZone;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Views;

/// <summary>What is laid over the cutting of the unrolled wall: where a crew may improvise, and what was found otherwise than drawn.</summary>
internal static class StripFree
{
    /// <summary>The free zone, under all that is drawn of the wall.</summary>
    public static void Zone(Board board, WallStrip strip, FreeZoneResult zone)
    {
        var boxes = zone.Boxes.SelectMany(b => strip.Parts(b.Stations).Select(part => strip.Box(part, b.Bottom, b.Top))).ToArray();
        if (boxes.Length > 0)
        {
            board.Add(new Group("free-zone", [.. boxes.Select(b => Sample(Outline.Rectangle(b)))]));
        }
    }

    /// <summary>Its hatching.</summary>
    public static Hatch Sample(Outline area) => new(area, -30, 2.4, new Pen(Weight.Hair, Dash.Dotted));

    /// <summary>Beside each part found otherwise a sign with the number of its row in the table.</summary>
    public static void Found(Board board, WallStrip strip, Sequence<AsBuiltMark> marks, Taken taken)
    {
        for (var i = 0; i < marks.Count; i++)
        {
            foreach (var arc in strip.Arcs(strip.Geometry.Curve.Wrap(marks[i].Station)))
            {
                var sign = Sign(i);
                if (taken.Place(Taken.Round(sign, strip.At(arc, marks[i].Bottom), Styles.SmallStrong, 1.6)) is { } label)
                {
                    var box = label.Bounds.Inset(-0.5);
                    board.Add(new Group($"as-built-{i + 1}", [new Fill(Outline.Rectangle(box), Tone.Paper), new Stroke(Outline.Rectangle(box), new Pen(Weight.Thin)), label]));
                }
            }
        }
    }

    /// <summary>What stands in the sign of a mark.</summary>
    public static string Sign(int index) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"\u2260{index + 1}");
}
