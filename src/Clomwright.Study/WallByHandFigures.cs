using Clomwright.Analysis.Members;
using Clomwright.Analysis.WallByHand;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The part of the figures that is the wall by hand.</summary>
internal static class WallByHandFigures
{
    private static readonly Message Nothing = new("study.hand-nothing"), NoBrace = new("study.hand-no-brace");

    public static Figure Of(WallByHandResult hand) => Tree(
        ("piers", Row(hand.Piers, Pier)),
        ("outOfPlane", Row(hand.OutOfPlane, Check)),
        ("inPlane", Row(hand.InPlane, Check)),
        ("along", Row(hand.Along, a => Tree(
            ("pier", Name(a.Address)), ("mode", Name(a.Mode)), ("rocking", Computed(a.Rocking, Dimension.Force)), ("sliding", Computed(a.Sliding, Dimension.Force)),
            ("cracking", Computed(a.Cracking, Dimension.Force)), ("share", Computed(a.Share, Dimension.Fraction))))),
        ("joints", Row(hand.Joints, Check)),
        ("overturning", Check(hand.Overturning)),
        ("green", Green(hand.Green)),
        ("wet", Wet(hand.Wet)));

    private static Figure Pier(PierByHand pier) => Tree(
        ("pier", Name(pier.Address)),
        ("mean", Check(pier.Mean)),
        ("edge", Check(pier.Edge)),
        ("cuts", Row(pier.Cuts, c => Tree(
            ("where", Name(c.Where)), ("height", Computed(c.Height, Dimension.Length)), ("width", Computed(c.Width, Dimension.Length)), ("thickness", Computed(c.Thickness, Dimension.Length)),
            ("area", Computed(c.Area, Dimension.Area)), ("load", Computed(c.Load, Dimension.Force)), ("mean", Computed(c.Mean, Dimension.Stress)), ("edge", Computed(c.Edge, Dimension.Stress)),
            ("across", Computed(c.Across, Dimension.Length)), ("along", Computed(c.Along, Dimension.Length)), ("reduction", Computed(c.Reduction, Dimension.Number)), ("allowed", Computed(c.Allowed, Dimension.Stress)),
            ("use", Computed(c.Use, Dimension.Number)), ("combination", Name(c.Combination)), ("sense", Name(c.Sense))))),
        ("states", Row(pier.States, s => Tree(
            ("combination", Name(s.Combination)), ("sense", Name(s.Sense)), ("load", Computed(s.Load, Dimension.Force)), ("mean", Computed(s.Mean, Dimension.Stress)), ("use", Computed(s.Use, Dimension.Number))))));

    private static Figure Green(GreenWall green) => Tree(
        ("lifts", Row(green.Lifts, l => Tree(
            ("height", Computed(l.Height, Dimension.Length)), ("pressure", Computed(l.Pressure, Dimension.Stress)), ("strength", Computed(l.Strength, Dimension.Stress)), ("water", Computed(l.Water, Dimension.Fraction)),
            ("tipsMiddle", Computed(l.TipsMiddle, Dimension.Speed)), ("tipsEnd", Computed(l.TipsEnd, Dimension.Speed, Nothing)), ("leave", Computed(l.Leave, Dimension.Speed, Nothing)),
            ("leaveFresh", Computed(l.LeaveFresh, Dimension.Speed, Nothing))))),
        ("free", Row(green.Free, Check)),
        ("braceMiddle", Computed(green.BraceMiddle, Dimension.Length, NoBrace)),
        ("braceEnd", Computed(green.BraceEnd, Dimension.Length, NoBrace)),
        ("poleDrop", Check(green.PoleDrop)));

    private static Figure Wet(WetFoot wet) => Tree(
        ("height", Computed(wet.Height, Dimension.Length)),
        ("plasticLimit", Computed(wet.PlasticLimit, Dimension.Fraction)),
        ("worst", Name(wet.Worst)),
        ("curve", Row(wet.Curve, p => Tree(("water", Computed(p.Water, Dimension.Fraction)), ("strength", Computed(p.Strength, Dimension.Stress)), ("margin", Computed(p.Margin, Dimension.Number))))),
        ("piers", Row(wet.Piers, p => Tree(
            ("pier", Name(p.Address)), ("load", Computed(p.Load, Dimension.Force)), ("pressure", Computed(p.Pressure, Dimension.Stress)), ("waterSafe", Computed(p.WaterSafe, Dimension.Fraction)),
            ("waterGone", Computed(p.WaterGone, Dimension.Fraction)), ("skinSafe", Computed(p.SkinSafe, Dimension.Length)), ("skinSafeOther", Computed(p.SkinSafeOther, Dimension.Length)),
            ("skinGone", Computed(p.SkinGone, Dimension.Length)), ("lost", Computed(p.Lost, Dimension.Number, Nothing))))),
        ("checks", Row(wet.Checks, Check)));

    private static Figure Check(CheckedMember member) => Tree(
        ("subject", Name(member.Subject)),
        ("use", member.Check.Value is { } check ? Computed(check.Use, Dimension.Number) : new Figure.NotChecked(member.Check.NotChecked!)),
        ("demand", member.Check.Value is { } asked ? new Figure.Number(asked.Demand, Tag.Computed, FromDescription) : new Figure.NotChecked(member.Check.NotChecked!)),
        ("capacity", member.Check.Value is { } there ? new Figure.Number(there.Capacity, Tag.Computed, FromDescription) : new Figure.NotChecked(member.Check.NotChecked!)),
        ("combination", Name(member.Check.Value?.Combination ?? "")),
        ("sense", Name(member.Check.Value?.Sense ?? "")));
}
