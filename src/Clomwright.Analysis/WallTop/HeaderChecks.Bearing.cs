using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>What the ends of a header press on the cob, and how long they have to be for it.</summary>
/// <remarks>
/// Pressure is even under an end. An end carries its half of the span and what stands on its own outer half, so that a longer end carries more: the length that would do is the one at which force and strength
/// meet. Were the cob above to arch, a triangle half as high as the span would be left of it within the span: it is stated beside and nothing relies on it. What arches comes down in the cob beside the ends.
/// </remarks>
internal sealed partial class HeaderChecks
{
    /// <summary>No end is longer, m.</summary>
    private const double LongestEnd = 3;

    private const int Halvings = 48;

    private readonly Dictionary<OpeningPlace, Sequence<HeaderEnd>> known = new(ReferenceEqualityComparer.Instance);

    /// <summary>Both ends, each in its own hardest combination; none where the header is not computed.</summary>
    public Sequence<HeaderEnd> Ends(OpeningPlace opening) => known.TryGetValue(opening, out var ends) ? ends : known[opening] = Made(opening);

    private Sequence<HeaderEnd> Made(OpeningPlace opening)
    {
        var (header, made) = (opening.Header!, opening.Opening.Header!);
        var pressed = combined.States.Where(s => !s.Combination.DeadIsLeast).ToArray();
        return Timber.Piece(made.Material, made.Width.Metres, made.Depth.Metres) is null || pressed.Length == 0 ? [] : [Of(true), Of(false)];

        HeaderEnd Of(bool left)
        {
            var end = new End(
                opening.Opening.Width.Metres, CobPerMetre(header), cobWeight * ThicknessOver(header), Seat + 2 * Height(header),
                pressed.Select(s => new Pressed(s, s.Combination.Factor(LoadKind.Dead), Away(opening, s, left).ToArray())).ToArray());
            var bearing = made.Bearing.Metres;
            var worst = end.Hardest(bearing, arched: false);
            var poles = end.Poles(worst, bearing);
            var arches = Height(header) >= (opening.Opening.Width.Metres + bearing) / 2;
            return new HeaderEnd(opening.Opening.Name, left, end.Force(worst, bearing, arched: false), end.Needed(header.TotalWidth * cobBearing.Value, arched: false))
            {
                Poles = poles, Span = opening.Opening.Width.Metres + bearing, Arched = arches ? end.Force(worst, bearing, arched: true) : null,
                NeededArched = arches ? end.Needed(header.TotalWidth * cobBearing.Value, arched: true) : null, Combination = worst.State.Combination, Sense = worst.State.Sense,
            };
        }
    }

    /// <summary>What each pole presses in a state, and how far it lands from the middle of the opening, away from the end that is looked at; N and m.</summary>
    private IEnumerable<(double Force, double Away)> Away(OpeningPlace opening, CombinedState state, bool left) =>
        Patches(opening, opening.Header!, 0, state).Where(p => p.Force > 0).Select(p => (p.Force, left ? p.Middle : -p.Middle));

    private CheckedMember Bearing(string subject, HeaderPlace header, Building.Header made, Sequence<HeaderEnd> ends)
    {
        var (worse, other) = ends[0].Force >= ends[1].Force ? (ends[0], ends[1]) : (ends[1], ends[0]);
        var mechanics = Sources.Get("mechanics");
        var sheet = new Worksheet("header-bearing");
        Symbol cob = Cob(sheet, header), l = Worksheet.Computed("L", "header-span", worse.Span, Dimension.Length), length = Worksheet.Given("l_b", "header-bearing", made.Bearing.Metres, Dimension.Length);
        var dead = worse.Combination.Factor(LoadKind.Dead);
        Symbol gamma = Worksheet.Code("k_D", "dead-factor", dead, Dimension.Number, worse.Combination.Source), poles = Worksheet.Computed("Q", "header-poles-end", worse.Poles, Dimension.Force);
        var force = sheet.Step("header-end-force", "R", "k_D*w_c*(L + l_b)/2 + Q", worse.Force, Dimension.Force, mechanics, gamma, cob, l, length, poles);
        var width = Worksheet.Given("b", "header-width", header.TotalWidth, Dimension.Length);
        var pressure = sheet.Step("cob-pressure", "p", "R/(b*l_b)", worse.Force / (header.TotalWidth * made.Bearing.Metres), Dimension.Stress, mechanics, force, width, length);
        var allows = Worksheet.Cited("p_a", "cob-allowed", cobBearing, Dimension.Stress);
        foreach (var (key, name, needed) in ((string, string, double?)[])[("header-bearing-needed", "l_n", worse.Needed), ("header-bearing-other", "l_o", other.Needed), ("header-bearing-arched", "l_a", worse.NeededArched)])
        {
            if (needed is { } enough)
            {
                var there = Worksheet.Computed("R_" + name[^1], key + "-force", enough * header.TotalWidth * cobBearing.Value, Dimension.Force);
                sheet.Step(key, name, $"{there.Name}/(b*p_a)", enough, Dimension.Length, mechanics, there, width, allows);
            }
        }

        return new CheckedMember(
            "header-bearing", subject, new MemberCheck(worse.Combination.Key, worse.Sense, pressure.Value, allows.Value, sheet.Done, worse.Needed is { } one && other.Needed is { } two ? Amount.Metres(Math.Max(one, two)) : null));
    }

    /// <summary>A combination with what its poles press.</summary>
    private sealed record Pressed(CombinedState State, double Dead, (double Force, double Away)[] Poles);

    /// <summary>One end of a header, of any length.</summary>
    /// <param name="Width">Of the opening, m.</param>
    /// <param name="Cob">Of cob and bond beam above, N/m.</param>
    /// <param name="CobPerHeight">Of a metre of cob's height above, N/m2.</param>
    /// <param name="Spread">How wide a pole presses at the height of the header, m.</param>
    /// <param name="States">Every combination that presses.</param>
    private sealed record End(double Width, double Cob, double CobPerHeight, double Spread, Pressed[] States)
    {
        public Pressed Hardest(double bearing, bool arched) => States.MaxBy(s => Force(s, bearing, arched))!;

        /// <summary>The reaction of the span from middle to middle of the bearings, and what stands on the outer half of the end, N.</summary>
        public double Force(Pressed state, double bearing, bool arched)
        {
            var span = Width + bearing;
            return state.Dead * (arched ? CobPerHeight * span * span / 8 + Cob * bearing / 2 : Cob * (span + bearing) / 2) + Poles(state, bearing);
        }

        /// <summary>The poles' share of it, N: all that lies over the outer half, by the lever rule what lies within the span.</summary>
        public double Poles(Pressed state, double bearing)
        {
            double span = Width + bearing, sum = 0;
            foreach (var (force, away) in state.Poles)
            {
                double from = Math.Max(-bearing / 2, span / 2 + away - Spread / 2), to = Math.Min(span, span / 2 + away + Spread / 2), inside = Math.Max(0, from);
                sum += force / Spread * (Math.Max(0, Math.Min(0, to) - from) + (to > inside ? to - inside - (to * to - inside * inside) / (2 * span) : 0));
            }

            return sum;
        }

        /// <summary>The length at which force and strength meet, m; null where none does, because the cob above alone presses too hard.</summary>
        public double? Needed(double perLength, bool arched)
        {
            bool Enough(double length) => Force(Hardest(length, arched), length, arched) <= perLength * length;
            if (!Enough(LongestEnd))
            {
                return null;
            }

            var (low, high) = (0.0, LongestEnd);
            for (var i = 0; i < Halvings; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = Enough(middle) ? (low, middle) : (middle, high);
            }

            return high;
        }
    }
}
