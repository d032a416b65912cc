using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Structure;

/// <summary>What is taken otherwise than it is described, to see what hangs on it.</summary>
/// <param name="Roof">Multiplies what the roof presses, lifts and shakes with.</param>
/// <param name="Shift">Moves every seat of a pole on the wall top, m outward.</param>
/// <param name="HeadersHold">False: headers hold nothing along the wall, as if their ends slipped in the cob.</param>
internal readonly record struct WallChange(double Roof, double Shift, bool HeadersHold)
{
    public static WallChange None => new(1, 0, true);

    /// <summary>How far off the middle of the wall top each pole sits, m outward.</summary>
    public Sequence<double> Seats(HouseGeometry geometry, WallTopResult top)
    {
        var shift = Shift;
        var beam = geometry.House.BondBeam?.Offset.Metres ?? 0;
        return top.Seats.Count > 0 || shift == 0 ? top.Seats.Select(s => s.OffCentre + shift).ToSequence()
            : Enumerable.Repeat(beam + shift, geometry.Landings.Count(l => !l.Secondary)).ToSequence();
    }
}
