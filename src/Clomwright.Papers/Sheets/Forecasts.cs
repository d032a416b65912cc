using System.Globalization;
using Clomwright.Analysis.Drying;
using Clomwright.Geometry;

namespace Clomwright.Papers.Sheets;

/// <summary>Bands of days in words, and bays by the way they face.</summary>
internal static class Forecasts
{
    private static readonly string[] Compass = ["n", "ne", "e", "se", "s", "sw", "w", "nw"];

    /// <summary><c>2–5</c>; <c>2+</c> where the slow end was not reached; a dash where none was.</summary>
    public static string Days(double? low, double? high) => (low, high) switch
    {
        (null, _) => "–",
        ({ } a, null) => Day(a) + "+",
        ({ } a, { } b) => Day(a) == Day(b) ? Day(a) : Day(a) + "–" + Day(b),
    };

    /// <summary>One number of days: to a tenth under ten, whole above.</summary>
    public static string Day(double days) => days.ToString(days < 9.95 ? "0.#" : "0", CultureInfo.InvariantCulture);

    /// <summary>The word for it.</summary>
    public static string Faces(Scene scene, int wind) => scene.Say.Say("faces." + Compass[wind]);

    /// <summary>Bays that face the same of eight ways, with their places in the result; clockwise from the first.</summary>
    public static IEnumerable<(int Wind, int[] Bays)> Sides(DryingResult drying) =>
        drying.Bays.Select((bay, i) => (Wind: bay.Wind, i)).GroupBy(b => b.Wind).Select(g => (g.Key, g.Select(b => b.i).ToArray()));

    /// <summary>Between which openings a bay lies, by their letters; its own name where there are none.</summary>
    public static string Between(Scene scene, DryingBay bay)
    {
        var address = bay.Address.Split(" #")[0];
        return scene.Geometry.Piers.FirstOrDefault(p => p.Address == address) is { } pier ? Letter(scene, pier.Before) + "–" + Letter(scene, pier.After) : address;
    }

    /// <summary>The windows of several bays as one: the soonest fast end, the latest slow one.</summary>
    public static BayWindow Together(IReadOnlyList<BayWindow> windows)
    {
        Forecast Of(Func<BayWindow, Forecast> part)
        {
            var all = windows.Select(part).ToArray();
            return new(all.Min(f => f.Fast), all.Any(f => f.Middle is null) ? null : all.Max(f => f.Middle), all.Any(f => f.Slow is null) ? null : all.Max(f => f.Slow));
        }

        return new(Of(w => w.Firm), Of(w => w.Keys));
    }

    private static string Letter(Scene scene, string opening) =>
        scene.Geometry.Openings.FirstOrDefault(o => o.Opening.Name == opening) is { } place ? scene.Letter(place) : opening;
}
