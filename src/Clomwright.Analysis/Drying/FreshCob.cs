using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>What the cob of a house stands on the day it is laid: no weather and no day is asked.</summary>
public sealed record FreshCob
{
    /// <summary>How the lifts are laid.</summary>
    public required LiftMethod Method { get; init; }

    /// <summary>Height at which a free lift holds itself up, m: 2 su over unit weight and safety, from what is wettest and asked most to what is stiffest and asked least.</summary>
    public required Band Stands { get; init; }

    /// <summary>The highest lift that is practice for the method, m.</summary>
    public required double PracticeCap { get; init; }

    /// <summary>The lifts, bottom up; equal ones that follow each other are one.</summary>
    public required Sequence<FreshLift> Lifts { get; init; }

    /// <summary>Strength over weight at the foot, under which a fresh lift bulges.</summary>
    public required double BulgesUnder { get; init; }

    /// <summary>What it leans on that nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the low and the high height came about, and the strength over weight of each lift.</summary>
    public required Sequence<Calculation> Calculations { get; init; }

    /// <summary>Height a lift may have today, m: as high as it stands, the practice cap counted.</summary>
    public Band Today => new(Math.Min(PracticeCap, Stands.Low!.Value), Math.Min(PracticeCap, Stands.High!.Value));
}

/// <summary>Lifts of one height.</summary>
/// <param name="First">Number of the lowest, from 1.</param>
/// <param name="Last">Number of the highest.</param>
/// <param name="Height">Of each, m.</param>
/// <param name="Weight">What it presses on its own foot on the day it is laid, as likely as not, Pa: gamma h.</param>
/// <param name="Strength">What the foot bears, Pa: 2 su.</param>
public sealed record FreshLift(int First, int Last, double Height, double Weight, double Strength)
{
    /// <summary>Strength over weight.</summary>
    public double OverWeight => Strength / Weight;
}

/// <summary>Works it out.</summary>
internal static class FreshCobs
{
    private static readonly string[] Read = ["drying-liquid-limit", "drying-plastic-limit", "drying-dry-density", "drying-free-safety", "drying-bulge"];

    public static FreshCob Of(Func<DryingCase, DryingNumbers> numbers, LiftMethod method, IReadOnlyList<double> heights)
    {
        var stands = Ranges.Stands(numbers, method, out var calculations);
        var usual = numbers(DryingCase.Middle);
        var lifts = new List<FreshLift>();
        var how = new List<Calculation>();
        for (var i = 0; i < heights.Count; i++)
        {
            if (lifts.Count > 0 && Math.Abs(lifts[^1].Height - heights[i]) < 1e-9)
            {
                lifts[^1] = lifts[^1] with { Last = i + 1 };
                continue;
            }

            var sheet = new Worksheet("lift-foot");
            var (undrained, weight) = Ranges.Fresh(sheet, usual, method);
            var lift = new FreshLift(i + 1, i + 1, heights[i], weight.Value.Si * Ranges.Gravity * heights[i], 2 * undrained.Value.Si);
            sheet.Step("over-weight", "F_h", "2*s_u/(rho_w*9.80665*h)", lift.OverWeight, Dimension.Number, Sources.Get("drying-judgement"), undrained, weight, Worksheet.Computed("h", "lift-height", heights[i], Dimension.Length));
            lifts.Add(lift);
            how.Add(sheet.Done);
        }

        var cap = usual["drying-cap-" + WallRun.Word(method)];
        return new()
        {
            Method = method, Stands = stands, PracticeCap = cap, Lifts = lifts.ToSequence(), BulgesUnder = usual["drying-bulge"],
            Calculations = [.. calculations, .. lifts.Zip(how, (l, c) => c with { Place = l.First == l.Last ? $"lift {l.First}" : $"lifts {l.First}-{l.Last}" })],
            Assumptions = usual.Assumptions.Where(a => Read.Contains(a.Key) || a.Key == "drying-liquidity-" + WallRun.Word(method)).ToSequence(),
        };
    }
}
