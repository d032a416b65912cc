using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>How far rafters that run from wall to wall lie over the level bond beam at their upper ends: all beyond the depth of a seat has to be carried by something that nobody has described.</summary>
internal static class HighEnds
{
    private const string Key = "high-ends";

    /// <summary>Why the upper ends are not known to be carried; null where they can be let in, or end on no wall.</summary>
    public static Message? Open(Sequence<PoleGeometry> poles, SeatMade? seat)
    {
        return poles.MaxBy(p => p.UpperRise) is { UpperRise: { } rise } highest && rise > LetIn(highest, seat) + 1e-6
            ? Message.Of("analysis.high-ends.open", ("high", Amount.Metres(rise)))
            : null;
    }

    /// <summary>The check; null without a bond beam and for roofs whose rafters end on no wall.</summary>
    public static CheckedMember? Of(Sequence<PoleGeometry> poles, SeatMade? seat)
    {
        if (poles.MaxBy(p => p.UpperRise) is not { UpperRise: { } most } pole)
        {
            return null;
        }

        if (Open(poles, seat) is { } why)
        {
            return new(Key, "rafters", why);
        }

        var (sheet, mechanics) = (new Worksheet(Key), Sources.Get("mechanics"));
        var beta = Worksheet.Computed("beta", "pole-pitch", pole.Pitch, Dimension.Angle);
        var rise = sheet.Step("high-end-rise", "r", "b*tan(beta) + (d_o - d_i)/(2*cos(beta))", most, Dimension.Length, mechanics, Worksheet.Computed("b", "rafter-span", pole.Far, Dimension.Length), beta,
            Worksheet.Computed("d_o", "pole-diameter-seat", pole.DiameterAt(0), Dimension.Length), Worksheet.Computed("d_i", "pole-diameter-upper", pole.DiameterAt(pole.Far), Dimension.Length));
        var let = sheet.Step("high-end-let-in", "l", "c/cos(beta)", LetIn(pole, seat), Dimension.Length, mechanics, SeatCheck.Depth(seat), beta);
        return new(Key, $"rafter {pole.Number}", new MemberCheck("", "place", rise.Value, let.Value, sheet.Done));
    }

    private static double LetIn(PoleGeometry pole, SeatMade? seat) => LevelSeat.DepthOf(seat) / pole.PitchCosine;
}
