using Clomwright.Analysis.Structure;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallTrials;

/// <summary>The model of the whole wall beside everyday use: rising and green, young under its roof, its foot soaked, the ground under it settled, pushed outward by its roof; and what its answers hang on. Numbers, never a verdict.</summary>
public sealed record WallTrialsResult
{
    /// <summary>Of the wall while it rises.</summary>
    public required WallDryness Dryness { get; init; }

    /// <summary>When each lift has just been laid, bottom up.</summary>
    public required Sequence<RisingLift> Lifts { get; init; }

    /// <summary>How far sills and heads sink after they are laid; clockwise.</summary>
    public required Sequence<OpeningSag> Sags { get; init; }

    /// <summary>On the day of the roof; or why that is not known.</summary>
    public required Known<YoungWall> Roof { get; init; }

    /// <summary>With its foot soaked; or why that is not known.</summary>
    public required Known<SoakedWall> Wet { get; init; }

    /// <summary>With the ground under it settled; or why that is not known.</summary>
    public required Known<SettledWall> Settled { get; init; }

    /// <summary>Pushed outward by its roof; or why it is not.</summary>
    public required Known<PushedWall> Pushed { get; init; }

    /// <summary>What the finished wall's numbers hang on: as described first, then with one thing changed at a time, each solved again.</summary>
    public required Sequence<WallVariant> Sensitivity { get; init; }

    /// <summary>The same wall more coarsely and more finely divided.</summary>
    public required Sequence<WallVariant> Refinement { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the governing lines were made.</summary>
    public required Sequence<Calculation> Calculations { get; init; }

    /// <summary>The lift at which strength is used most.</summary>
    public RisingLift? Tightest => Lifts.Count > 0 ? Lifts.MaxBy(l => l.Use) : null;
}

/// <summary>A place in the cob and how hard it is pressed.</summary>
/// <param name="Station">m.</param>
/// <param name="Height">m from the finished floor.</param>
/// <param name="Pressure">Upright, of the harder face, as a mean over a patch, Pa.</param>
/// <param name="Strength">Compressive, of the cob there, Pa.</param>
public sealed record PressedPlace(double Station, double Height, double Pressure, double Strength)
{
    /// <summary>Strength over pressure.</summary>
    public double Margin => Pressure > 0 ? Strength / Pressure : double.PositiveInfinity;
}

/// <summary>The wall when one lift has just been laid.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Height">Of the wall over its base, m.</param>
/// <param name="Day">After the first lift; null without a forecast.</param>
/// <param name="Base">Where the lowest row is pressed hardest.</param>
/// <param name="Worst">Where strength is used most.</param>
/// <param name="Safety">That the method asks.</param>
public sealed record RisingLift(int Number, double Height, double? Day, PressedPlace Base, PressedPlace Worst, double Safety)
{
    /// <summary>Safety times pressure over strength where that is most.</summary>
    public double Use => Safety / Worst.Margin;
}

/// <summary>How far cob that carries or bridges a frame sinks after it is laid, by its weight alone: shrinkage comes to it.</summary>
/// <param name="Opening">Name.</param>
/// <param name="Sill">The sill, m.</param>
/// <param name="Head">The middle of the head, m.</param>
/// <param name="Jambs">The cob at both ends of the head, the mean, m.</param>
public sealed record OpeningSag(string Opening, double Sill, double Head, double Jambs)
{
    /// <summary>How far the head bends between its ends, m.</summary>
    public double Bends => Head - Jambs;

    /// <summary>How much lower the hole becomes, m.</summary>
    public double Closes => Head - Sill;
}

/// <summary>The wall on the day of its roof, as stiff and strong as it has dried.</summary>
/// <param name="Day">After the first lift.</param>
/// <param name="Planned">Whether the house file plans it; the forecast's own day otherwise.</param>
/// <param name="Worst">Where strength is used most.</param>
/// <param name="Case">Under which stage of the roof.</param>
/// <param name="Safety">Asked for.</param>
/// <param name="Weakest">Strength of the weakest lift over that of dry cob.</param>
public sealed record YoungWall(double Day, bool Planned, PressedPlace Worst, WallCase Case, double Safety, double Weakest)
{
    /// <summary>Safety times pressure over strength.</summary>
    public double Use => Safety / Worst.Margin;
}

/// <summary>The wall with a soaked foot, water content by water content and skin by skin.</summary>
/// <param name="Height">Of the soaked part, m.</param>
/// <param name="Round">Soaked through all round.</param>
/// <param name="Part">Soaked through over one pier, or a quarter of the ring where nothing is open: the one that is worst at its plastic limit.</param>
/// <param name="PartAddress">Which.</param>
/// <param name="Skins">A skin softened and counted as nothing, on the outside, the inside, and both.</param>
/// <param name="Plastic">Plastic limit of the earth.</param>
/// <param name="AtPlastic">All round at its plastic limit: where it is used most.</param>
/// <param name="Safety">That a soaked foot keeps.</param>
public sealed record SoakedWall(
    double Height, Sequence<SoakedState> Round, Sequence<SoakedState> Part, string PartAddress, Sequence<SoakedSkin> Skins, double Plastic, PressedPlace AtPlastic, double Safety)
{
    /// <summary>Water content at which a margin is reached all round; null where every content tried has more.</summary>
    public double? WaterAt(double margin) => At(Round, margin);

    /// <summary>The same over the part.</summary>
    public double? PartWaterAt(double margin) => At(Part, margin);

    /// <summary>Straight in the logarithm of the margin between two contents tried.</summary>
    private static double? At(Sequence<SoakedState> states, double margin)
    {
        for (var i = 1; i < states.Count; i++)
        {
            if (states[i].Margin <= margin && states[i - 1].Margin > margin)
            {
                var share = Math.Log(states[i - 1].Margin / margin) / Math.Log(states[i - 1].Margin / states[i].Margin);
                return states[i - 1].Water + share * (states[i].Water - states[i - 1].Water);
            }
        }

        return states.Count > 0 && states[0].Margin <= margin ? states[0].Water : null;
    }
}

/// <summary>One water content.</summary>
/// <param name="Water">Share of the dry mass.</param>
/// <param name="Strength">Of the soaked cob, Pa.</param>
/// <param name="Soaked">Where the soaked part is used most.</param>
/// <param name="Dry">Where the rest is.</param>
public sealed record SoakedState(double Water, double Strength, PressedPlace Soaked, PressedPlace Dry)
{
    /// <summary>The lesser margin of both.</summary>
    public double Margin => Math.Min(Soaked.Margin, Dry.Margin);
}

/// <summary>A softened skin.</summary>
/// <param name="Faces"><c>outside</c>, <c>inside</c> or <c>both</c>.</param>
/// <param name="Depth">Of it on each of them, m.</param>
/// <param name="Worst">Where what is left is used most.</param>
/// <param name="Standing">Whether something holds the wall.</param>
public sealed record SoakedSkin(string Faces, double Depth, PressedPlace Worst, bool Standing);

/// <summary>The wall over a dip of the ground, on a foot that lets go.</summary>
/// <param name="Depth">Of the dip in its middle, m.</param>
/// <param name="Arc">Along which it fades to nothing on both sides, m.</param>
/// <param name="Station">Of the middle of the worst dip, m.</param>
/// <param name="Edge">Most upright pressure of a patch there, Pa, positive.</param>
/// <param name="EdgeBefore">Without a dip, Pa.</param>
/// <param name="Tension">Most tension of any dip, Pa.</param>
/// <param name="TensionStation">Of the dip that pulls most, m.</param>
/// <param name="Lifted">Most of the foot that hangs free over a dip.</param>
/// <param name="Standing">False when some dip leaves the wall without anything that holds it.</param>
/// <param name="Case">Under which load.</param>
public sealed record SettledWall(
    double Depth, double Arc, double Station, double Edge, double EdgeBefore, double Tension, double TensionStation, double Lifted, bool Standing, WallCase Case);

/// <summary>The wall pushed outward by its roof.</summary>
/// <param name="Slipping">Whether it is the bound for crossings that slip; the thrust of rafters otherwise.</param>
/// <param name="Outward">Of one pole, N.</param>
/// <param name="Round">Of one pole round the ring, N.</param>
/// <param name="Edge">Most upright pressure of a patch, Pa.</param>
/// <param name="EdgeBefore">Without the push, Pa.</param>
/// <param name="Tension">Most tension, Pa.</param>
/// <param name="Lifted">Most of the foot that lets go.</param>
/// <param name="Standing">Whether something holds the wall.</param>
/// <param name="Hand">A pole's own stretch of wall by itself, turning about its outside edge: what turns against what holds, N m.</param>
/// <param name="Case">The load it comes to.</param>
public sealed record PushedWall(bool Slipping, double Outward, double Round, double Edge, double EdgeBefore, double Tension, double Lifted, bool Standing, Calculated<double> Hand, WallCase Case)
{
    /// <summary>What turns that stretch, N m.</summary>
    public required double Turns { get; init; }
}

/// <summary>The finished wall solved once more.</summary>
/// <param name="Key"><c>described</c>, <c>roof</c>, <c>strength</c>, <c>seatsOut</c>, <c>seatsIn</c>, <c>headers</c>; <c>coarse</c>, <c>usual</c>, <c>fine</c>.</param>
/// <param name="Unknowns">Equations.</param>
/// <param name="Mean">Most mean pressure of a pier over what is allowed.</param>
/// <param name="Edge">Most pressure at the edge of a pier over what is allowed.</param>
/// <param name="EdgePier">Which.</param>
/// <param name="Pole">Most pressure under a pole over what is allowed; 0 without poles.</param>
/// <param name="Header">Most pressure under a header over what is allowed; 0 without headers.</param>
/// <param name="Tension">Most tension, Pa.</param>
public sealed record WallVariant(string Key, int Unknowns, double Mean, double Edge, string EdgePier, double Pole, double Header, double Tension);
