using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Where each pole presses on the wall: how far its straight piece of bond beam lies from the middle of the wall top.</summary>
/// <remarks>
/// A pole lies on as much of its piece as its seat reaches (<see cref="LevelSeat"/>), on all of it where the cut is deep enough. The piece is straight, so it lies inside the curve by its rise there;
/// offset, rise and what a short seat leaves free together are the distance from the middle.
/// </remarks>
internal sealed class SeatPlaces(HouseGeometry geometry, RoofResult roof, Sequence<BeamPiece> pieces)
{
    private readonly double thickness = geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres);

    /// <summary>Every seat of a pole; none without a bond beam.</summary>
    public Sequence<PoleSeat> All => geometry.House.BondBeam is { } beam && pieces.Count > 0
        ? geometry.Landings.Where(l => !l.Secondary).Select((l, i) => Seat(l, beam, roof.SeatOffMiddle(i))).ToSequence()
        : [];

    private PoleSeat Seat(Landing landing, BondBeam beam, double offMiddle)
    {
        // Whatever the ring's own zero, the piece is the one between whose ends the landing lies.
        var along = Along(landing, beam);
        var piece = pieces.FirstOrDefault(p => Within(p, along)) ?? pieces[^1];
        PlanPoint start = piece.Corner, line = pieces[piece.Number % pieces.Count].Corner - start;
        var rise = line.Cross(landing.Point - start) / line.Norm;
        return new PoleSeat(landing.Name, piece.Number, rise, beam.Offset.Metres - rise + offMiddle, thickness) { OffMiddle = offMiddle };
    }

    private double Along(Landing landing, BondBeam beam)
    {
        var top = geometry.Wall.Top.Metres;
        return geometry.Curve.OffsetArc(0, landing.Station, (geometry.Wall.InsideOffset(top) + geometry.Wall.OutsideOffset(top)) / 2 + beam.Offset.Metres);
    }

    private bool Within(BeamPiece piece, double along)
    {
        var ring = pieces.Sum(p => p.To - p.From);
        var ahead = (along - piece.From) % ring;
        return (ahead < 0 ? ahead + ring : ahead) <= piece.To - piece.From;
    }
}
