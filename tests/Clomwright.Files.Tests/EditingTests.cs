using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>What an edit does to the author's own text.</summary>
public class EditingTests
{
    private static readonly Gen<HouseDocument> Documents =
        Gen.Select(Houses.Plausible, Gen.Int, (house, seed) => HouseDocument.Read(Handwriting.Of(house, seed)).Document!);

    [Fact]
    public void Any_house_can_become_any_other() =>
        Gen.Select(Documents, Houses.Plausible).ForAll((document, other) =>
        {
            var changed = document.With(other);
            Assert.Equal(other, changed.House);
            var read = HouseDocument.Read(changed.Text);
            Assert.Empty(read.Diagnostics.Select(Sentence.Of));
            Assert.Equal(other, read.House);
        }, iter: Counts.Of(120, 5_000));

    [Fact]
    public void Nothing_changed_is_nothing_typed() =>
        Documents.ForAll(document => Assert.Same(document, document.With(document.House! with { })), iter: Counts.Of(50, 500));

    [Fact]
    public void One_changed_size_changes_its_own_line_only() =>
        Gen.Select(Documents, Gen.Int[0, 6], Gen.Int[13, 40]).ForAll((document, pick, inches) =>
        {
            var house = document.House!;
            var index = pick % house.Openings.Count;
            var width = Length.FromInches(inches) + new Length(Length.PerInch / 8);
            var changed = document.With(house with { Openings = house.Openings.With(index, house.Openings[index] with { Width = width }) });
            var (old, now) = (Lines(document), Lines(changed));
            var line = document.PositionOf($"openings[{index}].width").Line - 1;
            Assert.Equal(old.Length, now.Length);
            Assert.All(Enumerable.Range(0, old.Length).Where(i => i != line), i => Assert.Equal(old[i], now[i]));
            Assert.NotEqual(old[line], now[line]);
        }, iter: Counts.Of(120, 5_000));

    [Fact]
    public void Added_and_taken_out_again_leaves_the_file_as_it_was() =>
        Gen.Select(Documents, Gen.Int[0, 7]).ForAll((document, pick) =>
        {
            var house = document.House!;
            var added = Houses.Window("added-window", 17, Length.FromInches(24), Length.FromInches(30));
            var list = house.Openings.ToList();
            list.Insert(pick % (list.Count + 1), added);
            var with = document.With(house with { Openings = list.ToSequence() });
            Assert.Equal(document.Text, with.With(house).Text);
            Assert.Equal(house, HouseDocument.Read(with.With(house).Text).House);
        }, iter: Counts.Of(120, 5_000));

    [Fact]
    public void An_added_opening_adds_lines_and_at_most_a_comma_to_another() =>
        Houses.Plausible.ForAll(house =>
        {
            var document = HouseDocument.Of(house);
            var changed = document.With(new Edit.AddOpening(Houses.Window("added-window", 17, Length.FromInches(24), Length.FromInches(30))).Apply(house));
            var (old, now) = (Lines(document), Lines(changed));
            var kept = now.Where(line => !line.Contains("added-window", StringComparison.Ordinal)).ToArray();
            var before = Enumerable.Range(0, old.Length).TakeWhile(i => old[i] == now[i]).Count();
            Assert.Equal(old[before] + ",", now[before]);
            Assert.Equal(old[(before + 1)..], now[^(old.Length - before - 1)..]);
        }, iter: Counts.Of(100, 2_000));

    [Fact]
    public void A_renamed_opening_keeps_its_place() =>
        Documents.ForAll(document =>
        {
            var house = document.House!;
            var changed = document.With(new Edit.RenameOpening(house.Openings[0].Name, "front").Apply(house));
            Assert.Equal(document.Text.Replace($"\"{house.Openings[0].Name}\"", "\"front\"", StringComparison.Ordinal), changed.Text);
        }, iter: Counts.Of(100, 2_000));

    private const string Typed = """
        { "format": 1, "id": "typed", "name": "Typed by hand",
          "plan": { "insideDiameter": "14'", "shape": "round" },
          "stem":  { "width" : "20 in", "top": "8 in" },
          "wall":  { "top": "7'6\"", "thicknessAtTop": "0.35 m" },
          "lifts": { "height": "12 in" },
          "openings": [ { "name": "door", "kind": "door", "bearing": "90°",
                          "width": "36 in", "height": "6'8\"", "sill": "0 in" } ]
        }
        """;

    [Fact]
    public void A_height_and_a_niche_are_typed_where_an_author_would()
    {
        var document = HouseDocument.Read(Typed).Document!;
        var house = document.House!;
        var changed = document.With(house with
        {
            Wall = house.Wall with { Top = Length.FromFeet(8) },
            Niches = [new Niche { Name = "lamp", Along = Along.At(new Angle(10)), Width = Length.FromInches(12), Height = Length.FromInches(14), Depth = Length.FromInches(4), Sill = Length.FromFeet(4) }],
        });
        Assert.Equal(
            """
            { "format": 1, "id": "typed", "name": "Typed by hand",
              "plan": { "insideDiameter": "14'", "shape": "round" },
              "stem":  { "width" : "20 in", "top": "8 in" },
              "wall":  { "top": "8 ft", "thicknessAtTop": "0.35 m" },
              "lifts": { "height": "12 in" },
              "openings": [ { "name": "door", "kind": "door", "bearing": "90°",
                              "width": "36 in", "height": "6'8\"", "sill": "0 in" } ],
              "niches": [
                { "name": "lamp", "bearing": "10 deg", "width": "12 in", "height": "14 in", "depth": "4 in", "sill": "4 ft" }
              ]
            }
            """,
            changed.Text);
    }

    [Fact]
    public void A_second_opening_stands_under_the_first()
    {
        var document = HouseDocument.Read(Typed).Document!;
        var changed = document.With(new Edit.AddOpening(Houses.Window("south", 180, Length.FromInches(24), Length.FromInches(30)) with { Header = null }).Apply(document.House!));
        Assert.Contains(
            """
              "openings": [ { "name": "door", "kind": "door", "bearing": "90°",
                              "width": "36 in", "height": "6'8\"", "sill": "0 in" },
                            { "name": "south", "kind": "fixed", "bearing": "180 deg", "width": "2 ft", "height": "2 ft 6 in", "sill": "3 ft" } ]
            """,
            changed.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_could_not_be_read_stays_in_the_file()
    {
        var text = Typed.Replace("\"sill\": \"0 in\" } ]", "\"sill\": \"0 in\" },\n    { \"name\": \"oops\", \"width\": \"wide\" } ]", StringComparison.Ordinal);
        var (document, house, diagnostics) = HouseDocument.Read(text);
        Assert.NotEmpty(diagnostics);
        Assert.Single(house!.Openings);
        var changed = document!.With(new Edit.RemoveOpening("door").Apply(house));
        Assert.Contains("\"openings\": [ { \"name\": \"oops\", \"width\": \"wide\" } ]", changed.Text, StringComparison.Ordinal);
    }

    private static string[] Lines(HouseDocument document) => document.Text.Split('\n');
}
