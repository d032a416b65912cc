using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

internal static partial class CommonPractice
{
    /// <summary>Finishes that keep a wall from drying through its face.</summary>
    private static readonly string[] Sealing = ["cement-plaster", "cement-lime-plaster", "closed-paint"];

    /// <summary>Finishes that let it dry. Any other material is a question.</summary>
    private static readonly string[] Open = ["earth-plaster", "lime-plaster", "limewash", "clay-paint", "alis"];

    /// <summary>Top of the stem over the highest outside grade.</summary>
    public static Sequence<Ruling> StemHeight(HouseGeometry house, Amount least) =>
        house.House.Site.Grade is { } grade
            ? [new Ruling("stem", Require.AtLeast(house.House.Stem.Top - grade, least)).AllRound(house, grade.Metres, house.House.Stem.Top.Metres)]
            : [Ruling.NotChecked("stem", "no-grade")];

    /// <summary>Width of the stem against the thickness of the wall where it stands on it.</summary>
    private static Sequence<Ruling> StemWidth(HouseGeometry house, Amount share) =>
        [new Ruling("stem", Require.AtLeast(house.House.Stem.Width, Exactly.Metres(share.Si * house.Wall.ThicknessAt(house.Wall.Base.Metres))))];

    private static Sequence<Ruling> DampBreak(HouseGeometry house, Amount least) =>
        house.House.Stem.DampBreak is { } material
            ? [new Ruling("stem", Require.AtLeast(Amount.Count(1), least)) { Notes = [Message.Of("rules.note.damp-break", ("material", material))] }]
            : [Ruling.NotChecked("stem", "no-damp-break-described")];

    /// <summary>Height of the cob, from the stem up, over its thickness at the top and at mid-height.</summary>
    public static Sequence<Ruling> WallSlenderness(HouseGeometry house, Amount most)
    {
        var height = house.Wall.Top - house.Wall.Base;
        var middle = Exactly.Metres(house.Wall.ThicknessAt((house.Wall.Top.Metres + house.Wall.Base.Metres) / 2));
        return
        [
            new Ruling("wall top", Require.AtMost(Over(height, house.Wall.ThicknessAtTop), most)).AllRound(house),
            new Ruling("wall mid-height", Require.AtMost(Over(height, middle), most)).AllRound(house),
        ];
    }

    /// <summary>Lean of both faces together. A plumb wall is no fault, so less than practice is a question and not a shortfall.</summary>
    private static Sequence<Ruling> WallTaper(HouseGeometry house, Amount least)
    {
        var both = new Slope(house.Wall.InsideTaper.RiseOverRun + house.Wall.OutsideTaper.RiseOverRun);
        var compared = Require.AtLeast(both, least);
        return [new Ruling("wall", compared is Verdict.Met ? compared : new Verdict.NeedsJudgement(Message.Of("rules.ask.wall-taper", ("taper", (Amount)both), ("limit", least))))];
    }

    /// <summary>Coats that seal a face: none is the limit.</summary>
    private static Sequence<Ruling> SealedFace(HouseGeometry house, Amount most) => Enum.GetValues<Face>().Select(face =>
    {
        var subject = face == Face.Inside ? "inside face" : "outside face";
        var coats = house.House.Finishes.Where(f => f.Face == face).Select(f => f.Material).ToList();
        var unknown = coats.Find(m => !Sealing.Contains(m) && !Open.Contains(m));
        var sealing = coats.Where(m => Sealing.Contains(m)).ToList();
        return (coats, sealing, unknown) switch
        {
            ({ Count: 0 }, _, _) => Ruling.NotChecked(subject, "no-finish-described"),
            (_, { Count: > 0 }, _) => new Ruling(subject, Require.AtMost(Amount.Count(sealing.Count), most)) { Notes = [Message.Of("rules.note.sealing", ("material", sealing[0]))] },
            (_, _, { } material) => new Ruling(subject, new Verdict.NeedsJudgement(Message.Of("rules.ask.finish-open", ("material", material)))),
            _ => new Ruling(subject, Require.AtMost(Amount.Count(0), most)),
        };
    }).ToSequence();

    private static Sequence<Ruling> TossedLiftHeight(HouseGeometry house, Amount most) =>
        EachLift(house, LiftMethod.Tossed, house.Lifts, height => Require.AtMost(height, most));

    /// <summary>The last lift takes what is left of the wall, so it may be lower.</summary>
    private static Sequence<Ruling> TossedLiftLeast(HouseGeometry house, Amount least) =>
        EachLift(house, LiftMethod.Tossed, house.Lifts.SkipLast(1), height => Require.AtLeast(height, least));

    private static Sequence<Ruling> ForkedLiftHeight(HouseGeometry house, Amount most) =>
        EachLift(house, LiftMethod.Forked, house.Lifts, height => Require.AtMost(height, most));

    /// <summary>A rule on the height of lifts; equal ones that follow each other are one thing.</summary>
    private static Sequence<Ruling> EachLift(HouseGeometry house, LiftMethod method, IEnumerable<LiftSlice> lifts, Func<Length, Verdict> rule)
    {
        if (house.House.Lifts.Method != method)
        {
            return [Ruling.NotApplicable("lifts", "other-lift-method")];
        }

        var runs = new List<(LiftSlice First, LiftSlice Last)>();
        foreach (var lift in lifts)
        {
            if (runs.Count > 0 && Height(runs[^1].Last) == Height(lift))
            {
                runs[^1] = (runs[^1].First, lift);
            }
            else
            {
                runs.Add((lift, lift));
            }
        }

        return runs.Count == 0
            ? [Ruling.NotApplicable("lifts", "one-lift")]
            : runs.Select(run => new Ruling(Name(run.First, run.Last), rule(Height(run.First))).AllRound(house, run.First.Bottom.Metres, run.Last.Top.Metres)).ToSequence();
    }

    private static Length Height(LiftSlice lift) => lift.Top - lift.Bottom;

    private static string Name(LiftSlice first, LiftSlice last) => first == last ? $"lift {first.Number}" : $"lifts {first.Number}-{last.Number}";

    private static Ruling AllRound(this Ruling ruling, HouseGeometry house) => ruling.AllRound(house, house.Wall.Base.Metres, house.Wall.Top.Metres);

    private static Ruling AllRound(this Ruling ruling, HouseGeometry house, double from, double to) => ruling.At(new Span(0, house.Curve.Length), from, to);

    /// <summary>A wall without thickness is infinitely slender.</summary>
    private static Amount Over(Length height, Amount thickness) =>
        thickness.Si > 0 ? height.Over(Length.Nearest(thickness.Si)) : Amount.Number(thickness.Si <= 0 ? double.PositiveInfinity : double.NaN);
}
