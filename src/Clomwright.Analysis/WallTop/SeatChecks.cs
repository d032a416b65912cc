using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>The pressure on the cob under each pole.</summary>
/// <remarks>
/// The force spreads at 45 degrees through the depth of the beam along the wall (common practice, no source), never past half-way to the next pole, and presses evenly over as much of the beam and of the wall top
/// as lies evenly about it.
/// </remarks>
internal sealed class SeatChecks(HouseGeometry geometry, RoofResult roof, Cited<double> cobBearing)
{
    /// <summary>Of the bond beam, N/m3.</summary>
    private const double BeamWeight = 5500;

    private readonly CombinedStates combined = roof.Combined;
    private readonly double thickness = geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres);

    /// <summary>Pressure on cob under each pole in the hardest combination.</summary>
    public IEnumerable<CheckedMember> Of(Sequence<PoleSeat> seats)
    {
        const string Key = "bearing-stress";
        if (geometry.House.Roof is null)
        {
            return [];
        }

        if (geometry.House.BondBeam is not { } beam)
        {
            return [new(Key, "bond beam", new Message("analysis.members.no-beam"))];
        }

        if (seats.Count == 0)
        {
            return [new(Key, "bond beam", new Message("analysis.walltop.no-pieces"))];
        }

        var pressed = combined.States.Where(s => !s.Combination.DeadIsLeast).ToArray();
        return pressed.Length == 0
            ? [new(Key, "bond beam", combined.Missing.Count > 0 ? combined.Missing[0] : new Message("analysis.roof.none"))]
            : seats.Select((seat, i) => Pressure(Key, seat, beam, pressed.MaxBy(s => s.Forces.PlateReaction[i])!, i));
    }

    private CheckedMember Pressure(string key, PoleSeat seat, BondBeam beam, CombinedState state, int number)
    {
        var mechanics = Sources.Get("mechanics");
        var practice = Sources.Get("common-practice");
        double force = Math.Max(0, state.Forces.PlateReaction[number]), flat = Flat, between = Between(number), d = beam.Depth.Metres, e = seat.OffCentre;
        double spread = Math.Min(flat + 2 * d, between), even = Math.Max(1e-3, Math.Min(beam.Width.Metres - 2 * Math.Abs(seat.OffMiddle), thickness - 2 * Math.Abs(e)));
        var sheet = new Worksheet(key);
        var depth = Worksheet.Given("d", "beam-depth", d, Dimension.Length);
        var length = sheet.Step(
            "seat-spread", "l_s", "min(s + 2*d, c)", spread, Dimension.Length, practice, Worksheet.Code("s", "seat-length", flat, Dimension.Length, practice), depth,
            Worksheet.Computed("c", "poles-apart", between, Dimension.Length));
        var width = sheet.Step(
            "seat-width-even", "b_e", "min(b - 2*m, t - 2*e)", even, Dimension.Length, mechanics, Worksheet.Given("b", "beam-width", beam.Width.Metres, Dimension.Length),
            Worksheet.Computed("m", "seat-off-middle", Math.Abs(seat.OffMiddle), Dimension.Length), Worksheet.Computed("t", "wall-thickness-top", thickness, Dimension.Length), Worksheet.Computed("e", "seat-off-centre", Math.Abs(e), Dimension.Length));
        var weight = Worksheet.Computed("w_b", "beam-weight", BeamWeight * beam.Width.Metres * d, Dimension.LineLoad);
        var pressure = sheet.Step(
            "seat-pressure", "p", "R/(b_e*l_s) + w_b/b_e", force / (even * spread) + weight.Value.Si / even, Dimension.Stress, mechanics, Worksheet.Computed("R", "seat-force", force, Dimension.Force), width, length, weight);
        var allows = Worksheet.Cited("p_a", "cob-allowed", cobBearing, Dimension.Stress);
        var needed = sheet.Step("seat-width-needed", "b_n", "b_e*p/p_a", even * pressure.Value.Si / cobBearing.Value, Dimension.Length, mechanics, width, pressure, allows);
        return new CheckedMember(key, seat.Pole, new MemberCheck(state.Combination.Key, state.Sense, pressure.Value, allows.Value, sheet.Done, needed.Value));
    }

    /// <summary>Width of a pole's flat seat along the wall over the middle of the beam, m: that of its thin end.</summary>
    private double Flat
    {
        get
        {
            var tip = geometry.House.Roof switch
            {
                Building.Roof.Reciprocal roof => roof.Pole.Tip.Metres,
                Building.Roof.Radial roof => roof.Pole.Tip.Metres,
                Building.Roof.Shed roof => roof.Pole.Tip.Metres,
                Building.Roof.Gable roof => roof.Pole.Tip.Metres,
                _ => 0,
            };
            return SeatCheck.Flat(tip, LevelSeat.DepthOf(geometry.House.Roof?.Seat));
        }
    }

    /// <summary>To the nearer of both poles beside it, m: what two forces would press in common belongs half to each.</summary>
    private double Between(int number)
    {
        var poles = geometry.Landings.Where(l => !l.Secondary).ToArray();
        if (poles.Length < 2)
        {
            return geometry.Curve.Length;
        }

        double Gap(int from) => geometry.Curve.Wrap(poles[(from + 1) % poles.Length].Station - poles[from].Station);
        return Math.Max(0.01, Math.Min(Gap(number), Gap((number + poles.Length - 1) % poles.Length)));
    }
}
