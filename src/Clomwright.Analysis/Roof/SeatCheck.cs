using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The flat seat of a pole on the bond beam, an inch deep, pressed across the grain.</summary>
internal static class SeatCheck
{
    /// <summary>How deep the flat is cut where nobody says: 1 in.</summary>
    public const double Depth = 0.0254;

    /// <summary>How deep the flat of a seat is cut, m.</summary>
    public static double Cut(Building.SeatMade? seat) => seat?.Flat?.Metres ?? Depth;

    /// <summary>A pole where it sits.</summary>
    /// <param name="Subject">What it is called.</param>
    /// <param name="Index">Where it stands in the lists of <see cref="RoofForces"/>.</param>
    /// <param name="Diameter">There, m.</param>
    public readonly record struct Place(string Subject, int Index, double Diameter);

    /// <summary>Width of the flat, m.</summary>
    public static double Flat(double diameter, double depth = Depth) => 2 * Math.Sqrt(Math.Max(0, diameter * depth - depth * depth));

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
        var mechanics = Sources.Get("mechanics");
        var d = Worksheet.Computed("d", "pole-diameter-seat", place.Diameter, Dimension.Length);
        var c = seat?.Flat is { } cut ? Worksheet.Given("c", "seat-depth", cut.Metres, Dimension.Length) : Worksheet.Assumed("c", "seat-depth", Depth, Dimension.Length, Sources.Get("common-practice"));
        var w = Worksheet.Given("w", "beam-width", beam.Width.Metres, Dimension.Length);
        var area = sheet.Step("seat-area", "A", "2*sqrt(d*c - c^2)*w", Area(place), Dimension.Area, mechanics, d, c, w);
        var weaker = plate.AcrossGrain.Value < timber.AcrossGrain.Value ? plate : timber;
        var strength = Strength.Across(sheet, weaker, state.Combination);
        var capacity = Area(place) * strength.Value.Si;
        sheet.Step("seat-capacity", "R", $"A*{strength.Name}", capacity, Dimension.Force, mechanics, area, strength);
        return new CheckedMember(
            "pole-seat", place.Subject,
            new MemberCheck(state.Combination.Key, state.Sense, new Amount(Math.Max(0, state.Forces.PlateReaction[place.Index]), Dimension.Force), new Amount(capacity, Dimension.Force), sheet.Done));

        double Area(Place p) => Flat(p.Diameter, Cut(seat)) * beam.Width.Metres;

        double Factor(CombinedState s) => Math.Min(plate.AcrossGrain.Value, timber.AcrossGrain.Value) * (timber.System == TimberSystem.Nds ? 1 : Strength.Factor(timber, s.Combination));
    }
}
