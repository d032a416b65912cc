using Clomwright.Evidence;
using static Clomwright.Analysis.Loads.LoadKind;

namespace Clomwright.Analysis.Loads;

/// <summary>The combinations of each edition, roof loads only (no floor live load stands on a roof).</summary>
/// <remarks>The imposed load of a roof that only its keepers walk on (category H) never stands together with snow or wind: EN 1991-1-1, 3.3.2(1). Wind and earthquake act in both senses; the caller gives each sense as an effect of its own. Loads on soil and fluids do not occur here.</remarks>
public static class Combinations
{
    private static readonly LoadKind[] Roof = [RoofLive, Snow, Rain];

    /// <summary>Combinations of an edition in a form. EN 1990 has no allowable-stress form: its characteristic combination stands there.</summary>
    public static Sequence<Combination> Of(LoadEdition edition, LoadForm form) => (edition, form) switch
    {
        (LoadEdition.En1990, LoadForm.Strength) => EnStrength(),
        (LoadEdition.En1990, _) => EnCharacteristic(),
        (_, LoadForm.Strength) => AsceStrength(edition == LoadEdition.Asce722),
        _ => AsceAllowable(edition == LoadEdition.Asce722),
    };

    private static Sequence<Combination> AsceAllowable(bool newer)
    {
        var source = Sources.Get(newer ? "asce7-22-memory" : "asce7-16-combinations");
        var s = newer ? 0.7 : 1;
        var list = new List<Combination> { Make(source, LoadForm.AllowableStress, false, (Dead, 1)) };
        list.AddRange(Roof.Select(k => Make(source, LoadForm.AllowableStress, false, (Dead, 1), (k, k == Snow ? s : 1))));
        list.Add(Make(source, LoadForm.AllowableStress, false, (Dead, 1), (Wind, 0.6)));
        list.AddRange(Roof.Select(k => Make(source, LoadForm.AllowableStress, false, (Dead, 1), (Wind, 0.45), (k, 0.75 * (k == Snow ? s : 1)))));
        list.Add(Make(source, LoadForm.AllowableStress, false, (Dead, 1), (Earthquake, 0.7)));
        list.Add(Make(source, LoadForm.AllowableStress, false, (Dead, 1), (Earthquake, 0.525), (Snow, newer ? 0.1 : 0.75)));
        list.Add(Make(source, LoadForm.AllowableStress, true, (Dead, 0.6), (Wind, 0.6)));
        list.Add(Make(source, LoadForm.AllowableStress, true, (Dead, 0.6), (Earthquake, 0.7)));
        return list.ToSequence();
    }

    private static Sequence<Combination> AsceStrength(bool newer)
    {
        var source = Sources.Get(newer ? "asce7-22-memory" : "asce7-16-combinations");
        var leading = newer ? 1.0 : 1.6;
        var beside = newer ? 0.3 : 0.5;
        var list = new List<Combination> { Make(source, LoadForm.Strength, false, (Dead, 1.4)) };
        list.AddRange(Roof.Select(k => Make(source, LoadForm.Strength, false, (Dead, 1.2), (k, k == Snow ? leading : 1.6), (Wind, 0.5))));
        list.AddRange(Roof.Select(k => Make(source, LoadForm.Strength, false, (Dead, 1.2), (k, k == Snow ? leading : 1.6))));
        list.AddRange(Roof.Select(k => Make(source, LoadForm.Strength, false, (Dead, 1.2), (Wind, 1), (k, k == Snow ? beside : 0.5))));
        list.Add(Make(source, LoadForm.Strength, false, (Dead, 1.2), (Earthquake, 1), (Snow, newer ? 0.15 : 0.2)));
        list.Add(Make(source, LoadForm.Strength, true, (Dead, 0.9), (Wind, 1)));
        list.Add(Make(source, LoadForm.Strength, true, (Dead, 0.9), (Earthquake, 1)));
        return list.ToSequence();
    }

    private static Sequence<Combination> EnStrength()
    {
        var source = Sources.Get("en-1990-memory");
        LoadKind[] variable = [RoofLive, Snow, Rain, Wind];
        var list = new List<Combination> { Make(source, LoadForm.Strength, false, (Dead, 1.35)) };
        foreach (var lead in variable)
        {
            var others = variable.Where(k => k != lead && lead != RoofLive && Psi0(k) > 0).Select(k => (k, 1.5 * Psi0(k))).ToList();
            if (others.Count > 0)
            {
                list.Add(Make(source, LoadForm.Strength, false, [(Dead, 1.35), (lead, 1.5), .. others]));
            }

            list.Add(Make(source, LoadForm.Strength, false, (Dead, 1.35), (lead, 1.5)));
        }

        list.Add(Make(source, LoadForm.Strength, true, (Dead, 0.9), (Wind, 1.5)));
        list.Add(Make(source, LoadForm.Strength, true, (Dead, 1), (Earthquake, 1)));
        return list.ToSequence();
    }

    private static Sequence<Combination> EnCharacteristic()
    {
        var source = Sources.Get("en-1990-memory");
        var list = new List<Combination> { Make(source, LoadForm.AllowableStress, false, (Dead, 1)) };
        list.AddRange(new[] { RoofLive, Snow, Rain, Wind }.Select(k => Make(source, LoadForm.AllowableStress, false, (Dead, 1), (k, 1))));
        list.Add(Make(source, LoadForm.AllowableStress, false, (Dead, 1), (Snow, 1), (Wind, Psi0(Wind))));
        list.Add(Make(source, LoadForm.AllowableStress, false, (Dead, 1), (Wind, 1), (Snow, Psi0(Snow))));
        return list.ToSequence();
    }

    /// <summary>psi_0 up to 1000 m: snow 0.5, wind 0.6, roof category H 0.</summary>
    private static double Psi0(LoadKind kind) => kind switch { Snow => 0.5, Wind => 0.6, _ => 0 };

    private static Combination Make(Source source, LoadForm form, bool least, params (LoadKind Kind, double Factor)[] terms) =>
        new(string.Join(" + ", terms.Select(t => Written(t.Factor) + Letter(t.Kind))), form, least, terms.Select(t => new CombinationTerm(t.Kind, t.Factor)).ToSequence(), source);

    private static string Written(double factor) => factor == 1 ? "" : factor.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);

    private static string Letter(LoadKind kind) => kind switch { Dead => "D", RoofLive => "Lr", Snow => "S", Rain => "R", Wind => "W", _ => "E" };
}
