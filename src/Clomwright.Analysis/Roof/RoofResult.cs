using System.Diagnostics.CodeAnalysis;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The roof of one house: what holds it, in every state, and what it asks of the wall.</summary>
public sealed record RoofResult
{
    /// <summary>The reciprocal frame; or why there is none here.</summary>
    public required Known<ReciprocalResult> Reciprocal { get; init; }

    /// <summary>The radial, shed or gable roof; or why there is none here.</summary>
    public required Known<PlainResult> Plain { get; init; }

    /// <summary>All combinations of whichever roof it is.</summary>
    public CombinedStates Combined => Reciprocal.Value?.Combined ?? Plain.Value?.Combined ?? new CombinedStates([], [Plain.NotChecked!]);

    /// <summary>The combinations at everyday level, for what is held against allowed stresses whatever the timber is held against.</summary>
    [AllowNull]
    public CombinedStates Everyday { get => field ?? Combined; init; }

    /// <summary>From the middle of the bond beam to the middle of what a pole lies on, m; positive outward, nothing where its seat reaches all of the beam or is not known.</summary>
    /// <param name="landing">Which one, among the main ones.</param>
    public double SeatOffMiddle(int landing)
    {
        if (Reciprocal.Value is { } frame)
        {
            return frame.Geometry.Poles.FirstOrDefault(p => p.Number == landing + 1)?.Seat?.OffMiddle ?? 0;
        }

        if (Plain.Value is not { } plain)
        {
            return 0;
        }

        int foot = plain.Feet.AsSpan().IndexOf(landing), end = plain.Ends.AsSpan().IndexOf(landing);
        return foot >= 0 ? plain.Places[foot].Seat?.OffMiddle ?? 0
            : end >= 0 ? -plain.Places[end].UpperSeat?.OffMiddle ?? 0
            : 0;
    }

    /// <summary>How far secondary poles and deck boards span; null when the roof is not known.</summary>
    public DeckSpans? Spans { get; init; }

    /// <summary>Secondary poles and deck held against their timber.</summary>
    public Sequence<CheckedMember> Deck { get; init; }

    /// <summary>What holds the roof on: nails of the deck, the deck or straps in their plane, bolts at the seats.</summary>
    public Sequence<CheckedMember> Fixings { get; init; }

    /// <summary>What else has to stand or lie right: ends of secondaries, centre post or compression ring, the flue's clearance, soil against sliding.</summary>
    public Sequence<CheckedMember> Supports { get; init; }

    /// <summary>Where the flue passes; null where none does.</summary>
    public FluePlace? Flue { get; init; }

    /// <summary>Deck, membrane and layers as sizes to buy and cut; null when the roof is not known.</summary>
    public RoofSkin? Skin { get; init; }

    /// <summary>Snow on it, or why it is not known.</summary>
    public required Known<SnowLoad> Snow { get; init; }

    /// <summary>Wind on it, or why it is not known.</summary>
    public required Known<WindLoad> Wind { get; init; }

    /// <summary>All layers saturated, Pa on the roof's own surface; or why it is not known.</summary>
    public required Known<Calculated<double>> LayersWet { get; init; }

    /// <summary>All layers dry, Pa on the roof's own surface; or why it is not known.</summary>
    public required Known<Calculated<double>> LayersDry { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the numbers were made.</summary>
    public required Sequence<Calculation> Calculations { get; init; }
}

/// <summary>A reciprocal frame in every state of its building and use. Lists run clockwise, pole by pole as landings are listed.</summary>
public sealed record ReciprocalResult
{
    /// <summary>Where the poles lie.</summary>
    public required ReciprocalGeometry Geometry { get; init; }

    /// <summary>One card a pole.</summary>
    public required Sequence<PoleCard> Poles { get; init; }

    /// <summary>States of load: <c>bare</c>, <c>decked</c>, <c>eaveOnly</c>, <c>insideOnly</c>, <c>soilDry</c>, <c>soilWet</c>, <c>soilWetSnow</c>, <c>oneSided</c>, <c>ponded</c>, and further ones.</summary>
    public required Sequence<RoofStage> Stages { get; init; }

    /// <summary>Wet soil laid band by band from the ring outward.</summary>
    public required Known<LoadingOrder> FromRing { get; init; }

    /// <summary>The same from the eave inward: the order that pries crossings apart.</summary>
    public required Known<LoadingOrder> FromEave { get; init; }

    /// <summary>The crossings as joints.</summary>
    public required Known<JointDemand> Joints { get; init; }

    /// <summary>What happens when one pole is lost.</summary>
    public required Known<PoleLoss> Loss { get; init; }

    /// <summary>How the frame is raised.</summary>
    public required Raising Raising { get; init; }

    /// <summary>All combinations of loads.</summary>
    public CombinedStates Combined { get; init; } = new([], []);

    /// <summary>The poles, their seats and crossings, each check at its hardest.</summary>
    public Sequence<CheckedMember> Checks { get; init; }

    /// <summary>The same checks in every stage of building and loading; the pattern of each names the stage (<see cref="StageStates"/>).</summary>
    public Sequence<CheckedMember> StageChecks { get; init; }

    /// <summary>The pins through the crossings, in every combination and stage.</summary>
    public Sequence<CheckedMember> Pins { get; init; }

    /// <summary>What holds the frame when one pole fails, as described; none where no way out is.</summary>
    public Sequence<CheckedMember> WaysOut { get; init; }

    /// <summary>The charlie stick and its pad.</summary>
    public Sequence<CheckedMember> Charlie { get; init; }

    /// <summary>Most uplift of a pole on the bond beam in any combination, N, by pole; 0 where none lifts. Empty when not known.</summary>
    public Sequence<double> Uplift { get; init; }

    /// <summary>The state of a key.</summary>
    public Known<RoofForces> Stage(string key) => Stages.First(s => s.Key == key).Forces;

    /// <summary>The heaviest state that could be computed: wet soil with snow, else wet soil, else the deck.</summary>
    public RoofStage Heaviest => Stages.First(s => s.Key == (Stage("soilWetSnow").Is ? "soilWetSnow" : Stage("soilWet").Is ? "soilWet" : Stage("decked").Is ? "decked" : "bare"));
}

/// <summary>One state of load.</summary>
/// <param name="Key">Permanent key.</param>
/// <param name="Forces">What it does; or why it is not known.</param>
public sealed record RoofStage(string Key, Known<RoofForces> Forces);

/// <summary>One pole for the crew. Lengths in m along the pole from its butt end at the eave.</summary>
/// <param name="Number">From 1, clockwise.</param>
/// <param name="RestsOn">Number of the pole that it rests on.</param>
/// <param name="Pitch">Slope along its axis, radians.</param>
/// <param name="Skew">Angle in plan between it and the radius at the plate, radians.</param>
/// <param name="SeatMark">To the middle of its seat on the bond beam.</param>
/// <param name="NearMark">To the crossing where it carries its neighbour.</param>
/// <param name="FarMark">To the crossing where it rests on the next.</param>
/// <param name="Length">From the eave to the far crossing.</param>
/// <param name="CutLength">To cut, with the tail past the far crossing.</param>
/// <param name="Mass">When green, kg; null when the timber is not known.</param>
/// <param name="People">To carry and lift it; null when its mass is not known.</param>
public sealed record PoleCard(
    int Number, int RestsOn, double Pitch, double Skew, double SeatMark, double NearMark, double FarMark, double Length, double CutLength, double? Mass, int? People);

/// <summary>Soil going on in bands.</summary>
/// <param name="Steps">After each band.</param>
public sealed record LoadingOrder(Sequence<LoadingStep> Steps)
{
    /// <summary>Whether a crossing opens at any step.</summary>
    public bool Opens => Steps.Any(s => s.Forces.Opened.Count > 0);

    /// <summary>The least crossing force of any step, N.</summary>
    public double Least => Steps.Min(s => s.Forces.CrossingForce.Min());
}

/// <summary>After one band of wet soil, laid all round.</summary>
/// <param name="Band">0 next to the ring; the highest is the eave.</param>
/// <param name="InnerRadius">Mean distance of its inner edge from the ring's centre, m.</param>
/// <param name="OuterRadius">Mean distance of its outer edge from the ring's centre, m.</param>
/// <param name="Weight">Of this band, N.</param>
/// <param name="Forces">What the frame then does.</param>
public sealed record LoadingStep(int Band, double InnerRadius, double OuterRadius, double Weight, RoofForces Forces);

/// <summary>What the crossings ask of a joint. Pins always: friction is shown as the reason.</summary>
/// <param name="FrictionDemand">Largest coefficient that friction alone would need.</param>
/// <param name="FrictionLow">Lowest static value measured of timber on timber.</param>
/// <param name="FrictionHigh">Highest of those measured.</param>
/// <param name="SlipForce">Largest force along the slope on one pin in any state, friction not counted, N.</param>
/// <param name="SlipStage">The state it occurs in; <c>fromRing</c> and <c>fromEave</c> are steps of laying the soil.</param>
/// <param name="PinTension">Largest pull on one pin in any state, N; 0 when no crossing opens.</param>
/// <param name="PinTensionStage">The state it occurs in; null when none opens.</param>
/// <param name="ThrustWithoutFriction">Largest horizontal force of a pole on the plate if joints slip, N.</param>
/// <param name="OutwardWithoutFriction">Its part along the radius, N.</param>
/// <param name="ThrustAgainstRing">Largest outward force of a pole if the poles only lean on a strapped ring, N.</param>
/// <param name="HoopTension">Tension in the bond beam, and compression in the ring, that this makes, N.</param>
public sealed record JointDemand(
    double FrictionDemand, Cited<double> FrictionLow, Cited<double> FrictionHigh, double SlipForce, string SlipStage, double PinTension, string? PinTensionStage,
    double ThrustWithoutFriction, double OutwardWithoutFriction, double ThrustAgainstRing, double HoopTension);

/// <summary>One pole lost, in the worst state: nothing else holds the one that rested on it.</summary>
/// <param name="Stage">The state.</param>
/// <param name="WorstPole">Number of the pole whose loss asks most.</param>
/// <param name="Orphan">Number of the pole that rested on it.</param>
/// <param name="PropForce">Standing force of a prop under the orphan's far crossing, N.</param>
/// <param name="SuddenForce">The same counted twice for a sudden loss, N.</param>
/// <param name="PlateMoment">Moment about the plate that is left unbalanced without a prop, N m.</param>
public sealed record PoleLoss(string Stage, int WorstPole, int Orphan, double PropForce, double SuddenForce, double PlateMoment);

/// <summary>Raising the frame on its charlie stick.</summary>
/// <param name="Order">Numbers of the poles as they go up; each rests on the one before, the last slides under the first.</param>
/// <param name="CharlieUnder">The pole it stands under: the first.</param>
/// <param name="CharlieDistance">Plan distance from that pole's foot to the near crossing, where it stands: outside the ring, so that it can be kicked free, m.</param>
/// <param name="CharlieHeight">From the finished floor to the underside of the pole there, as built, m.</param>
/// <param name="CharlieLength">To cut: with allowance for the frame to settle, m.</param>
/// <param name="CharlieLoad">Bare poles all on, none taken by the ring yet, N; null when the timber is not known.</param>
public sealed record Raising(Sequence<int> Order, int CharlieUnder, double CharlieDistance, double CharlieHeight, double CharlieLength, double? CharlieLoad)
{
    /// <summary>Height of the pole axes over their feet, from the finished floor, m.</summary>
    public double AxisHeight { get; init; }
}
