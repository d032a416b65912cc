using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Record.Logging;

/// <summary>Days that a test can tell again from their number alone, so that half an entry would be seen.</summary>
public static class LoggedDays
{
    private static readonly DateOnly First = new(2027, 6, 1);

    /// <summary>The n-th day of a log, from 0.</summary>
    public static SiteEntry Day(int n) => new(
        "day-" + n.ToString(CultureInfo.InvariantCulture).PadLeft(5, '0'), new DateTimeOffset(First.AddDays(n).ToDateTime(new TimeOnly(18, n % 60)), TimeSpan.FromHours(2)), "the one with the pencil",
        new Seen.Day(First.AddDays(n))
        {
            Raised = new Length(Length.PerInch * (n % 40) / 4), Batches = n % 30 + 0.5, People = 1 + n % 9, Hours = 6.5, Lift = 1 + n % 8, Stopped = (StoppedBy)(n % 5),
            Done = n % 7 == 0 ? ["stem", "poles"] : [], Who = n % 3 == 0 ? ["Ada"] : [], Notes = $"Day {n}: " + new string((char)('a' + n % 26), n % 400),
            Weather = n % 2 == 0 ? new SeenWeather(Length.FromMillimetres(n % 30), new Temperature(15 + n % 10), null) : null,
        });
}
