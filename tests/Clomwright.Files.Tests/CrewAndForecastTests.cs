using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Foretold days and named people as they are typed: read as written, and each fault said where it is.</summary>
public sealed class CrewAndForecastTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Counts.Root, "examples", "heron-point.house.json"));

    private static HouseReading With(string forecast, string members) => HouseDocument.Read(Text
        .Replace("\"climate\": \"portland-or\"", $"\"climate\": \"portland-or\", \"forecast\": [ {forecast} ]", StringComparison.Ordinal)
        .Replace("\"roofOn\": \"2027-08-02\"", $"\"roofOn\": \"2027-08-02\", \"members\": [ {members} ]", StringComparison.Ordinal));

    /// <summary>By hand.</summary>
    [Fact]
    public void What_is_typed_is_read()
    {
        var house = With(
            """{ "date": "2027-06-02", "high": "64 F", "low": "9 C", "rain": "1/2 in", "wind": "10 mph", "sun": 12 }""",
            """{ "name": "Ines", "knows": ["mixing", "raising"], "wishes": ["plastering"], "cannot": ["climb"], "away": ["2027-06-04"] }""").House!;
        var day = Assert.Single(house.Site.Forecast);
        Assert.Equal((new DateOnly(2027, 6, 2), new Length(Length.PerInch / 2), 12.0), (day.Date, day.Rain, day.Sun));
        // 64 F is 17 7/9 C and 10 mph 4.4704 m/s: definitions.
        Assert.Equal(160.0 / 9, day.High.Celsius, 1e-9);
        Assert.Equal(4.4704, day.Wind!.Value.MetresPerSecond, 1e-9);
        var member = Assert.Single(house.Crew!.Members);
        Assert.Equal(new CrewMember("Ines") { Knows = [CrewSkill.Mixing, CrewSkill.Raising], Wishes = [CrewSkill.Plastering], Cannot = [CannotDo.Climb], Away = [new DateOnly(2027, 6, 4)] }, member);
    }

    [Theory]
    [InlineData("""{ "date": "2027-06-02", "high": "18 C", "low": "9 C", "rain": "0 mm" }, { "date": "2027-06-02", "high": "18 C", "low": "9 C", "rain": "0 mm" }""", "", "building.forecast-twice")]
    [InlineData("""{ "date": "2027-06-02", "high": "8 C", "low": "9 C", "rain": "0 mm" }""", "", "building.day-low")]
    [InlineData("""{ "date": "2027-06-02", "high": "18 C", "low": "9 C", "rain": "3 m" }""", "", "building.too-large")]
    [InlineData("""{ "date": "2027-06-02", "high": "18 C", "low": "9 C", "rain": "-1 mm" }""", "", "building.negative")]
    [InlineData("", """{ "name": "Ines" }, { "name": "ines " }""", "building.member-twice")]
    [InlineData("", """{ "name": "" }""", "building.text-empty")]
    [InlineData("", """{ "name": "Ines" }""", "building.members-count")]
    [InlineData("", """{ "name": "Ines", "knows": ["cooking"] }""", "files.word-unknown")]
    public void A_fault_is_said(string forecast, string members, string key) => Assert.Contains(With(forecast, members).Diagnostics, said => said.What.Key == key);
}
