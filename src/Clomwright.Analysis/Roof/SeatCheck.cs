using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The level seat of a pole on the bond beam, pressed across the grain on as much of the beam as it reaches (<see cref="LevelSeat"/>).</summary>
internal static class SeatCheck
{
    /// <summary>A pole where it sits.</summary>
    /// <param name="Subject">What it is called.</param>
    /// <param name="Index">Where it stands in the lists of <see cref="RoofForces"/>.</param>
    /// <param name="Diameter">There, m.</param>
    /// <param name="Seat">How it is cut; null without a bond beam.</param>
    public readonly record struct Place(string Subject, int Index, double Diameter, LevelSeat? Seat);

    /// <summary>The poles of a reciprocal frame where they sit.</summary>
    public static IReadOnlyList<Place> Places(ReciprocalGeometry frame) => [.. frame.Poles.Select(p => new Place($"pole {p.Number}", p.Number - 1, p.DiameterAt(0), p.Seat))];

    /// <summary>Width of the flat, m.</summary>
    public static double Flat(double diameter, double depth = LevelSeat.Usual) => 2 * Math.Sqrt(Math.Max(0, diameter * depth - depth * depth));

    /// <summary>c: how deep the flat of a seat is cut, given or assumed.</summary>
    public static Symbol Depth(Building.SeatMade? made) => made?.Flat is { } given
        ? Worksheet.Given("c", "seat-depth", given.Metres, Dimension.Length)
        : Worksheet.Assumed("c", "seat-depth", LevelSeat.Usual, Dimension.Length, Sources.Get("common-practice"));

    /// <summary>The seat that is used most, in any state.</summary>
    public static CheckedMember Of(IReadOnlyList<Place> places, Timber timber, Sequence<CombinedState> states, Building.BondBeam? beam, Building.SeatMade? seat)
    {
        if (beam is null)
        {
            return new CheckedMember("pole-seat", "poles", new Message("analysis.members.no-beam"));
        }

        if (Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres) is not { } plate || plate.System != timber.System)
        {
            return new CheckedMember("pole-seat", "poles", Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(beam.Material))));
        }

        var (state, place) = Hardest.Of(states, places, (s, p) => Math.Max(0, s.Forces.PlateReaction[p.Index]) / (Area(p) * Factor(s)));
        var sheet = new Worksheet("pole-seat");
        var area = Pressed(sheet, place, seat);
        var weaker = plate.AcrossGrain.Value < timber.AcrossGrain.Value ? plate : timber;
        var strength = Strength.Across(sheet, weaker, state.Combination);
        var capacity = Area(place) * strength.Value.Si;
        sheet.Step("seat-capacity", "R", $"A*{strength.Name}", capacity, Dimension.Force, Sources.Get("mechanics"), area, strength);
        return new CheckedMember(
            "pole-seat", place.Subject,
            new MemberCheck(state.Combination.Key, state.Sense, new Amount(Math.Max(0, state.Forces.PlateReaction[place.Index]), Dimension.Force), new Amount(capacity, Dimension.Force), sheet.Done));

        double Factor(CombinedState s) => Math.Min(plate.AcrossGrain.Value, timber.AcrossGrain.Value) * (timber.System == TimberSystem.Nds ? 1 : Strength.Factor(timber, s.Combination));
    }

    private static double Area(Place place) => place.Seat?.Area(place.Diameter) ?? 0;

    /// <summary>What the pole lies on, step by step.</summary>
    private static Symbol Pressed(Worksheet sheet, Place place, Building.SeatMade? made)
    {
        var (seat, mechanics) = (place.Seat!, Sources.Get("mechanics"));
        var d = Worksheet.Computed("d", "pole-diameter-seat", place.Diameter, Dimension.Length);
        var c = Depth(made);
        var w = Worksheet.Given("w", "beam-width", seat.Width, Dimension.Length);
        var psi = Worksheet.Computed("psi", "seat-skew", seat.Skew, Dimension.Angle);
        if (seat.IsLevel)
        {
            return sheet.Step("seat-area", "A", "2*sqrt(d*c - c^2)*w/cos(psi)", Area(place), Dimension.Area, mechanics, d, c, w, psi);
        }

        var beta = Worksheet.Computed("beta", "pole-pitch", seat.Pitch, Dimension.Angle);
        var outer = sheet.Step("seat-depth-outer", "c_o", "min(d, c + w*sin(beta)/(2*cos(psi)))", Math.Min(place.Diameter, seat.Outer), Dimension.Length, mechanics, d, c, w, beta, psi);
        var inner = sheet.Step("seat-depth-inner", "c_i", "max(0, c - w*sin(beta)/(2*cos(psi)))", Math.Max(0, seat.Inner), Dimension.Length, mechanics, c, w, beta, psi);
        return sheet.Step(
            "seat-area", "A", $"({Segment("c_o")} - ({Segment("c_i")}))/sin(beta)", Area(place), Dimension.Area, mechanics, d, outer, inner, beta);

        static string Segment(string depth) => $"d^2/4*acos(1 - 2*{depth}/d) - (d/2 - {depth})*sqrt(d*{depth} - {depth}^2)";
    }
}
