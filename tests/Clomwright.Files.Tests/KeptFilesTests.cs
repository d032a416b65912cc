using System.Text.Json;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Json;
using Clomwright.Files.Migrations;
using Clomwright.Files.Shape;
using Clomwright.Files.Typing;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Files of every format there has been are read for ever.</summary>
public class KeptFilesTests
{
    private static readonly string Folder = Path.Combine(Counts.Root, "tests", "Clomwright.Files.Tests", "Kept");

    public static TheoryData<int> EveryFormat() => [.. Enumerable.Range(1, HouseShape.Format)];

    [Theory]
    [MemberData(nameof(EveryFormat))]
    public void One_file_of_every_format_is_kept_and_read_without_a_complaint(int format)
    {
        var (document, house, diagnostics) = HouseFile.Read(Path.Combine(Folder, $"format-{format}.house.json"));
        Assert.Empty(diagnostics.Select(Sentence.Of));
        Assert.NotNull(house);
        Assert.Equal(house, HouseDocument.Read(document!.Text).House);
    }

    [Fact]
    public void Every_format_but_the_newest_has_its_step() => Assert.Equal(Enumerable.Range(1, HouseShape.Format - 1), MigrationSteps.All.Select(step => step.From));

    /// <summary>Read by hand from the kept file.</summary>
    [Fact]
    public void The_first_format_means_what_it_meant()
    {
        var house = HouseFile.Read(Path.Combine(Folder, "format-1.house.json")).House!;
        Assert.Equal(new Plan.Oval(Length.FromFeet(15), Length.FromFeet(12)) { Bearing = new Angle(90), ZeroBearing = new Angle(10), Centre = new PlanPosition(Length.Zero, new Length(-38_100_000)) }, house.Plan);
        Assert.Equal(new Wall(Length.FromInches(98), Length.FromInches(14), new Slope(0.5 / 12), new Slope(0.01)), house.Wall);
        Assert.Equal(new Trench(Length.FromInches(24), Length.FromMillimetres(600), Length.FromInches(-42)), house.Trench);
        Assert.Equal(new LiftPlan { Tops = [Length.FromInches(20), Length.FromFeet(3), Length.FromFeet(5), Length.FromFeet(7), Length.FromInches(98)], Method = LiftMethod.Forked }, house.Lifts);
        Assert.Equal(25 * 4.4482216152605 / 0.09290304, house.Site.GroundSnow!.Value.Pascals, 9);
        Assert.Equal(105 * 0.44704, house.Site.WindSpeed!.Value.MetresPerSecond, 12);
        Assert.Equal(new Header(3, Length.FromInches(5), Length.FromInches(6), Length.FromInches(8), "oak") { CrossPad = true }, house.Openings[0].Header);
        Assert.Equal(Along.At(Length.FromFeet(24)), house.Openings[1].Along);
        Assert.Equal(new Splay(new Angle(15), new Angle(5)), house.Openings[1].Splay);
        Assert.Equal((5, Length.FromInches(6), true), (house.Embeds[0].Count, house.Embeds[0].Spacing!.Value, house.Embeds[0].Through));
        var roof = Assert.IsType<Roof.Reciprocal>(house.Roof);
        Assert.Equal((4, new PoleSize(Length.FromInches(9), Length.FromInches(7)), Turn.Anticlockwise, PoleJoint.Notched, Eye.Vent), (roof.Poles, roof.Pole, roof.Turn, roof.Joint, roof.Eye));
        Assert.Equal([5, 100, 190, 280], roof.Landings.Select(l => l.Degrees));
        Assert.Equal(new Prism(Length.FromInches(4), Length.FromInches(4), Length.FromInches(8), new Force(1600 * 4.4482216152605), 40, true) { Date = new DateOnly(2027, 5, 14), Tester = "M. Invented" }, house.Mix.Prisms[0]);
        Assert.Equal(new Answer("ground-services", true, "R. Reader", new DateOnly(2027, 3, 2), "called before digging"), house.Rules.Answers[0]);
    }

    /// <summary>How a step would look: format 1 called the bar of a tee <c>bar</c>, a made-up format 2 calls it <c>crossBar</c>, and format 3 drops the trench.</summary>
    [Fact]
    public void Steps_follow_each_other_and_leave_the_rest_of_the_text_alone()
    {
        Migration[] steps =
        [
            new(1, root => root.Find("tees") is { Value: ObjectNode tees } && tees.Find("bar") is { } bar ? [new TextChange(bar.NameSpan.Start, bar.NameSpan.End, "\"crossBar\"")] : []),
            new(2, root => root.Find("trench") is { } trench && root.Find("stem") is { } stem ? [new TextChange(trench.Span.Start, stem.Span.Start, "")] : []),
        ];
        var old = File.ReadAllText(Path.Combine(Folder, "format-1.house.json"));
        var raised = MigrationSteps.Raise(old, steps);
        var expected = old.Replace("\"format\": 1", "\"format\": 3", StringComparison.Ordinal)
            .Replace("\"bar\": \"24 in\"", "\"crossBar\": \"24 in\"", StringComparison.Ordinal)
            .Replace("\"trench\": { \"width\": \"24 in\", \"depth\": \"0.6 m\", \"outlet\": \"-42 in\" },\n  ", "", StringComparison.Ordinal);
        Assert.Equal(expected, raised);
        Assert.Equal(raised, MigrationSteps.Raise(raised, steps));
        Assert.Equal(3, JsonDocument.Parse(raised).RootElement.GetProperty("format").GetInt32());
    }
}
