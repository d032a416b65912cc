using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>The top of the wall under its roof.</summary>
public static class FromRoof
{
    /// <summary>Of cob still wet, N/m3: for what it weighs on headers.</summary>
    internal const double WetCob = 19_000;

    /// <summary>Of cob as dry as it may be, N/m3: for what it holds down.</summary>
    internal const double DryCob = 14_000;

    /// <summary>Bearing pressure on cob of which no test is known: 0.4 MPa over 5.</summary>
    private const double AssumedBearing = 80_000;

    /// <summary>The bond beam cut into straight pieces; none without one.</summary>
    public static Sequence<BeamPiece> Pieces(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return BeamPieces.Of(geometry);
    }

    /// <summary>Where each pole presses on the wall; none without a bond beam.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="pieces">The bond beam in pieces.</param>
    public static Sequence<PoleSeat> Seats(HouseGeometry geometry, RoofResult roof, Sequence<BeamPiece> pieces)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(roof);
        return new SeatPlaces(geometry, roof, pieces).All;
    }

    /// <summary>Headers, tees, seats and bond beam.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="cobBearing">Bearing pressure allowed on this house's cob, Pa, measured or with its assumption; null takes the cautious one.</param>
    /// <param name="cut">The bond beam in pieces, where that is known; null cuts it.</param>
    /// <param name="seated">The seats, where they are known; null places them.</param>
    public static WallTopResult Of(HouseGeometry geometry, RoofResult roof, Settled<double>? cobBearing = null, Sequence<BeamPiece>? cut = null, Sequence<PoleSeat>? seated = null)
    {
        var combined = roof.Combined;
        var memory = Sources.Get("cob-density-memory");
        var settled = cobBearing ?? Settle.Or((double?)null, new Amount(AssumedBearing, Dimension.Stress), "cob-bearing", new Message("analysis.assumed.cob-bearing"), Sources.Get("cob-strength-memory"));
        var bearing = settled.Assumption is { } assumed ? new Cited<double>(settled.Value, assumed.Source, Tag.Assumed) : new Cited<double>(settled.Value, Sources.Get("en-1990-d"), Tag.Measured);
        var pieces = cut ?? Pieces(geometry);
        var seats = seated ?? Seats(geometry, roof, pieces);
        var lateral = LateralPath.Of(geometry, roof, DryCob, bearing);
        var headers = new HeaderChecks(geometry, combined, WetCob, bearing);
        var top = geometry.Wall.Top.Metres;
        var offset = geometry.House.BondBeam?.Offset.Metres ?? 0;
        var (holds, uncounted) = HoldDowns.Of(geometry);
        var (tees, straps) = TeeChecks.Of(geometry, combined, DryCob, holds);
        var headed = geometry.Openings.Where(o => o.Header is not null && o.Opening.Header is not null).ToArray();
        return new WallTopResult
        {
            Headers = headed.SelectMany(headers.Of).ToSequence(),
            HeaderEnds = headed.SelectMany(o => headers.Ends(o)).ToSequence(),
            Tees = tees,
            Straps = [.. straps, .. uncounted],
            HoldDowns = holds,
            Seats = seats,
            Bearing = new SeatChecks(geometry, roof, bearing).Of(seats).ToSequence(),
            SeatEccentricity = seats.Count > 0 ? seats.Max(s => s.Share) : Math.Abs(offset) / geometry.Wall.ThicknessAt(top),
            BeamPieces = pieces,
            Beam = BeamChecks.Of(geometry, roof, pieces, holds).ToSequence(),
            Lateral = lateral.Checks,
            Assumptions =
            [
                .. settled.Assumptions,
                .. lateral.Assumptions,
                new Assumption("cob-wet", new Message("analysis.assumed.cob-wet"), new Amount(WetCob / 9.80665, Dimension.Density), memory),
                new Assumption("cob-dry", new Message("analysis.assumed.cob-dry"), new Amount(DryCob / 9.80665, Dimension.Density), memory),
            ],
        };
    }
}
