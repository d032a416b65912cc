using System.Text.RegularExpressions;

namespace Clomwright.Cli.Tests;

/// <summary><c>clom days</c> and <c>clom export</c>.</summary>
public sealed partial class DaysTests
{
    private static async Task<string> Named(OwnFolder folder)
    {
        var text = await File.ReadAllTextAsync(Run.Example("heron-point.house.json"));
        var path = folder["named.house.json"];
        await File.WriteAllTextAsync(path, text.Replace("\"roofOn\": \"2027-08-02\"", """
            "roofOn": "2027-08-02", "members": [
              { "name": "Marta with a very long second name", "knows": ["mixing", "placing", "raising"] }, { "name": "Joris", "knows": ["mixing"], "cannot": ["climb"] },
              { "name": "Ayla", "wishes": ["plastering"] }, { "name": "Ben", "cannot": ["lift"] }, { "name": "Chidi" }, { "name": "Dana", "away": ["2027-06-01"] }, { "name": "Eluned" }, { "name": "Femi" } ]
            """, StringComparison.Ordinal));
        return path;
    }

    /// <summary>Property: no line is wider than 80, whoever is named or not, and the table is there.</summary>
    [Fact]
    public async Task Days_OfEveryExample_AreReadableInATerminalEightyWide()
    {
        using var folder = new OwnFolder();
        foreach (var file in Run.Examples().Append(await Named(folder)))
        {
            var run = await Run.Of("days", file);
            Assert.Equal(0, run.Code);
            Assert.All(run.Results.Split('\n'), line => Assert.True(line.TrimEnd('\r').Length <= 80, line));
            Assert.Contains("Who does what", run.Results, StringComparison.Ordinal);
            Assert.True(Dates().Count(run.Results) > 10);
        }
    }

    /// <summary>By hand: everybody named stands on a line of their own, who is away is said to be, and who may not lift is put to nothing that asks for it.</summary>
    [Fact]
    public async Task Days_OfANamedCrew_SayWhoDoesWhat()
    {
        using var folder = new OwnFolder();
        var run = await Run.Of("days", await Named(folder));
        string Line(string name) => Assert.Single(run.Results.Split('\n'), l => l.StartsWith("  " + name, StringComparison.Ordinal));
        Assert.Contains("away", Line("Dana"), StringComparison.Ordinal);
        Assert.DoesNotContain("carrying", Line("Ben"), StringComparison.Ordinal);
        Assert.Contains("mixing", run.Results, StringComparison.Ordinal);
        Assert.All((string[])["Joris", "Ayla", "Chidi", "Eluned", "Femi"], name => Assert.NotEmpty(Line(name)));
    }

    /// <summary>By hand: the calendar is written whole, and says what it is; a wrong format writes nothing.</summary>
    [Fact]
    public async Task Export_AsCalendar_WritesIt()
    {
        using var folder = new OwnFolder();
        var run = await Run.Of("export", Run.Examples().First(), "--as", "ics", "--out", folder["days.ics"]);
        Assert.Equal(0, run.Code);
        var text = await File.ReadAllTextAsync(folder["days.ics"]);
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.Contains("forecast", text, StringComparison.Ordinal);
        Assert.Equal(2, (await Run.Of("export", Run.Examples().First(), "--as", "doc", "--out", folder["days.doc"])).Code);
        Assert.False(File.Exists(folder["days.doc"]));
    }

    [GeneratedRegex(@"\d{4}-\d{2}-\d{2}")]
    private static partial Regex Dates();
}
