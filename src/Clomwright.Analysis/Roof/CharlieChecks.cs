using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The charlie stick as a column, and what it stands on, with every bare pole on and one person at the ring.</summary>
internal static class CharlieChecks
{
    /// <summary>A stick nobody described, m: 5 in round.</summary>
    public const double Diameter = 0.127;

    /// <summary>Side of the pad under it, m: 12 in.</summary>
    public const double Pad = 0.3048;

    /// <summary>Presumptive bearing of clay, the least that is presumed of any ground, Pa.</summary>
    private const double LeastGround = 1500 * 47.88025898;

    private static readonly Combination Raising = new("D", LoadForm.AllowableStress, false, [new(LoadKind.Dead, 1)], Sources.Get("mechanics"));

    public static Sequence<CheckedMember> Of(Raising raising, Known<Timber> timber, Building.Site site)
    {
        if (raising.CharlieLoad is not { } load || timber.Value is not { } wood)
        {
            var because = timber.NotChecked ?? new Message("analysis.roof.no-timber");
            return [new("charlie-stick", "charlie stick", because), new("charlie-stick", "charlie stick's pad", because)];
        }

        return [Stick(raising, load, wood), Base(load, site)];
    }

    public static IEnumerable<Assumption> Assumed() =>
    [
        new Assumption("charlie-diameter", new Message("analysis.assumed.charlie-diameter"), Amount.Metres(Diameter), Sources.Get("common-practice")),
        new Assumption("charlie-pad", new Message("analysis.assumed.charlie-pad"), Amount.Metres(Pad), Sources.Get("common-practice")),
    ];

    private static CheckedMember Stick(Raising raising, double load, Timber timber)
    {
        if (Column.Slenderness(raising.CharlieLength, Diameter) > Column.MostSlender)
        {
            return new("charlie-stick", "charlie stick", Message.Of(
                "analysis.loss.slender", ("length", Amount.Metres(raising.CharlieLength)), ("least", Amount.Metres(raising.CharlieLength / Column.MostSlender / Column.SquareShare))));
        }

        var sheet = new Worksheet("charlie-stick");
        var total = Load(sheet, load);
        var capacity = Column.Capacity(sheet, timber, Raising, Diameter, raising.CharlieLength);
        return new("charlie-stick", "charlie stick", new MemberCheck("D", StageStates.Prefix + "workerRing", total.Value, capacity.Value, sheet.Done, Amount.Metres(Diameter * Math.Pow(total.Value.Si / capacity.Value.Si, 0.25))));
    }

    private static CheckedMember Base(double load, Building.Site site)
    {
        var sheet = new Worksheet("charlie-pad");
        var total = Load(sheet, load);
        var side = Worksheet.Assumed("b", "charlie-pad-side", Pad, Dimension.Length, Sources.Get("common-practice"));
        var pressure = total.Value.Si / (Pad * Pad);
        sheet.Step("footing-pressure", "q", "N/b^2", pressure, Dimension.Stress, Sources.Get("mechanics"), total, side);
        var bearing = Math.Min(site.SoilBearing?.Pascals ?? LeastGround, LeastGround);
        return new("charlie-stick", "charlie stick's pad", new MemberCheck("D", StageStates.Prefix + "workerRing", new Amount(pressure, Dimension.Stress), new Amount(bearing, Dimension.Stress), sheet.Done, Amount.Metres(Pad * Math.Sqrt(pressure / bearing))));
    }

    private static Symbol Load(Worksheet sheet, double load)
    {
        var prop = Worksheet.Computed("P", "charlie-load", load, Dimension.Force);
        var worker = Worksheet.Assumed("F_p", "one-person", RoofStages.Worker, Dimension.Force, Sources.Get("asce7-16-memory"));
        return sheet.Step("charlie-total", "N", "P + F_p", load + RoofStages.Worker, Dimension.Force, Sources.Get("mechanics"), prop, worker);
    }
}
