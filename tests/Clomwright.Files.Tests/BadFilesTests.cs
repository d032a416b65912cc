using System.Text;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Every kind of bad file gets one sentence: where, what is wrong, what would be right.</summary>
public class BadFilesTests
{
    private const string Good = """
        {
          "format": 1,
          "id": "small",
          "name": "Small house",
          "site": { "latitude": 45.5, "groundSnow": "1 kPa" },
          "plan": { "shape": "round", "insideDiameter": "14 ft" },
          "stem": { "width": "20 in", "top": "8 in" },
          "wall": { "top": "8 ft", "thicknessAtTop": "14 in" },
          "lifts": { "height": "12 in" },
          "openings": [
            { "name": "door", "kind": "door", "bearing": "90 deg", "width": "3 ft", "height": "6 ft 8 in", "sill": "0 in" },
            { "name": "west", "kind": "fixed", "bearing": "270 deg", "width": "2 ft", "height": "3 ft", "sill": "3 ft" }
          ],
          "roof": { "kind": "reciprocal", "poles": 8, "ringRadius": "2 ft", "poleDiameter": "8 in", "eave": "2 ft" },
          "crew": { "people": 8, "skill": "mixed", "start": "2027-06-01", "daysPerWeek": 5, "hoursPerDay": 7 }
        }
        """;

    private static string[] Said(string text) => [.. HouseDocument.Read(text).Diagnostics.Select(Sentence.Of)];

    [Fact]
    public void The_good_file_has_nothing_wrong() => Assert.Empty(Said(Good));

    /// <summary>One replacement makes the good file bad. Nothing else is said, and the rest of the house is read.</summary>
    [Theory]
    [InlineData("\"stem\": {", "\"stemm\": 1, \"stem\": {", "stemm: “stemm” is not a key here; the nearest one is “stem”")]
    [InlineData("\"latitude\"", "\"lattitude\"", "site.lattitude: “lattitude” is not a key here; the nearest one is “latitude”")]
    [InlineData("\"groundSnow\": \"1 kPa\"", "\"groundSnow\": \"1 kpa\"", "site.groundSnow: “kpa” in “1 kpa” is not a unit for a stress; write one such as 100 kPa")]
    [InlineData("\"groundSnow\": \"1 kPa\"", "\"groundSnow\": 1", "site.groundSnow: 1 has no unit; write a pressure in quotes such as \"1.2 kPa\" or \"25 psf\"")]
    [InlineData("\"latitude\": 45.5", "\"latitude\": \"45.5\"", "site.latitude: \"45.5\" does not fit here; write a plain number such as 3.5")]
    [InlineData("\"latitude\": 45.5", "\"latitude\": null", "site.latitude: null says nothing; write a plain number such as 3.5, or leave the key out")]
    [InlineData("\"latitude\": 45.5", "\"latitude\": 145.5", "site.latitude: 145.5 is out of range; write -90 to 90")]
    [InlineData("\"latitude\": 45.5", "\"latitude\": 45.5, \"latitude\": 45.5", "site.latitude: the key “latitude” is given twice; keep one of them")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": \"2 furlongs\"", "openings[1].width: “furlongs” in “2 furlongs” is not a unit of length here; write in, ft, mm, cm or m")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": \"24\"", "openings[1].width: “24” has no unit; write it as in, ft, mm, cm or m, such as 12 in or 300 mm")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": 24", "openings[1].width: 24 has no unit; write a length in quotes such as \"12 in\" or \"300 mm\"")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": \"1/3 in\"", "openings[1].width: “1/3 in” cannot be kept exactly; write 21/64 in or 8 mm")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": \"-2 ft\"", "openings[1].width: -2 ft (-610 mm) is no size; write more than zero")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": \"0 in\"", "openings[1].width: 0 in (0 mm) is no size; write more than zero")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": \"200 m\"", "openings[1].width: 200 m (656 ft 2 in) is too large for the small houses this is for; write at most 40 m (131 ft 2 13/16 in)")]
    [InlineData("\"width\": \"2 ft\"", "\"width\": [\"2 ft\"]", "openings[1].width: [ … ] does not fit here; write a length in quotes such as \"12 in\" or \"300 mm\"")]
    [InlineData("\"width\": \"2 ft\", \"height\": \"3 ft\"", "\"height\": \"3 ft\"", "openings[1].width: this is missing; write a length in quotes such as \"12 in\" or \"300 mm\"")]
    [InlineData("\"kind\": \"fixed\"", "\"kind\": \"fixd\"", "openings[1].kind: \"fixd\" is not one of door, fixed, opening and glass; the nearest one is “fixed”")]
    [InlineData("\"bearing\": \"270 deg\", ", "", "openings[1]: neither “bearing” nor “station” is given; write one of them")]
    [InlineData("\"bearing\": \"270 deg\", ", "\"bearing\": \"270 deg\", \"station\": \"3 m\", ", "openings[1]: both “bearing” and “station” are given; keep one of them")]
    [InlineData("\"bearing\": \"270 deg\"", "\"bearing\": \"west\"", "openings[1].bearing: “west” is not an angle; write one such as 135 deg")]
    [InlineData("\"name\": \"west\"", "\"name\": \"Door\"", "openings[1].name: the name “Door” is already taken by openings[0]; give each opening, niche and embed its own")]
    [InlineData("\"name\": \"west\"", "\"name\": \"\"", "openings[1].name: this is empty; write something or leave the key out")]
    [InlineData("\"name\": \"west\"", "\"name\": \"a|b\"", "openings[1].name: the name “a|b” has one of the marks | / # that addresses are made with; use a hyphen or a space instead")]
    [InlineData("\"name\": \"west\"", "\"name\": \"west window that looks out over the meadow\"", "openings[1].name: this is 42 characters long; use at most 40")]
    [InlineData("\"sill\": \"3 ft\" }", "\"sill\": \"3 ft\", \"shape\": \"arched\" }", "openings[1]: an arched opening needs a rise; write the height of the arch above its springing")]
    [InlineData("\"sill\": \"3 ft\" }", "\"sill\": \"3 ft\", \"header\": { \"pieces\": 0, \"width\": \"4 in\", \"depth\": \"6 in\", \"bearing\": \"12 in\" } }", "openings[1].header.pieces: 0 is out of range; write 1 to 20")]
    [InlineData("\"top\": \"8 ft\"", "\"top\": \"8 in\"", "wall.top: the wall top at 8 in (203 mm) is not above the stem's top at 8 in (203 mm); write the height of the top of the cob")]
    [InlineData("\"thicknessAtTop\": \"14 in\"", "\"thicknessAtTop\": \"14 in\", \"outsideTaper\": \"-20 %\"", "wall.outsideTaper: the faces lean so that a wall 14 in (356 mm) thick at the top has nothing left at its base; write tapers that make the base thicker")]
    [InlineData("\"height\": \"12 in\" }", "\"tops\": [\"2 ft\", \"2 ft\"] }", "lifts.tops[1]: a lift top of 2 ft (610 mm) is not above 2 ft (610 mm), where that lift begins; list the tops from the bottom up")]
    [InlineData("\"height\": \"12 in\" }", "\"tops\": [\"2 ft\", \"7 ft\"] }", "lifts.tops[1]: the last lift ends at 7 ft (2.134 m) and the wall at 8 ft (2.438 m); end the last lift at the wall top")]
    [InlineData("\"poles\": 8", "\"poles\": 8.5", "roof.poles: 8.5 does not fit here; write a whole number such as 4")]
    [InlineData("\"poles\": 8", "\"poles\": 2", "roof.poles: 2 is out of range; write 3 to 60")]
    [InlineData("\"poles\": 8", "\"poles\": 8e20", "roof.poles: 8e20 is too large; write a smaller number")]
    [InlineData("\"poleDiameter\": \"8 in\"", "\"poleDiameter\": { \"butt\": \"6 in\", \"tip\": \"8 in\" }", "roof.poleDiameter: the butt of 6 in (152 mm) is thinner than the tip of 8 in (203 mm); write the thick end as butt")]
    [InlineData("\"kind\": \"reciprocal\"", "\"kind\": \"recipocal\"", "roof.kind: \"recipocal\" is not one of reciprocal, radial, shed and gable; the nearest one is “reciprocal”")]
    [InlineData("\"start\": \"2027-06-01\"", "\"start\": \"1 June 2027\"", "crew.start: \"1 June 2027\" does not fit here; write a date in quotes such as \"2027-06-01\"")]
    [InlineData("\"start\": \"2027-06-01\"", "\"start\": \"2027-02-30\"", "crew.start: \"2027-02-30\" does not fit here; write a date in quotes such as \"2027-06-01\"")]
    [InlineData("\"hoursPerDay\": 7", "\"hoursPerDay\": 0", "crew.hoursPerDay: zero is too little; write more than zero")]
    [InlineData("\"id\": \"small\"", "\"id\": \"Small House\"", "id: “Small House” is not a key; write 1 to 40 small letters, digits and hyphens such as heron-point")]
    public void One_bad_value_gets_one_sentence_and_the_rest_is_read(string good, string bad, string sentence)
    {
        Assert.Contains(good, Good, StringComparison.Ordinal);
        var (document, house, diagnostics) = HouseDocument.Read(Good.Replace(good, bad, StringComparison.Ordinal));
        Assert.Equal([sentence], diagnostics.Select(Sentence.Of));
        Assert.NotNull(document);
        Assert.NotNull(house);
    }

    /// <summary>What no house can do without is bad: the file can be mended in its own text, but there is no house yet.</summary>
    [Theory]
    [InlineData("\"format\": 1,", "", "format: this is missing; write the number 1")]
    [InlineData("\"format\": 1,", "\"format\": \"1\",", "format: \"1\" does not fit here; write the number 1")]
    [InlineData("\"format\": 1,", "\"format\": 0,", "format: 0 does not fit here; write the number 1")]
    [InlineData("\"shape\": \"round\", ", "", "plan.shape: this is missing; write one of round, oval, rounded-rectangle and path, in quotes")]
    [InlineData("\"insideDiameter\": \"14 ft\"", "\"insideDiameter\": \"wide\"", "plan.insideDiameter: “wide” is not a length; write one such as 7 ft 6 1/2 in, 12 in, 2.3 m or 450 mm")]
    [InlineData("{ \"shape\": \"round\", \"insideDiameter\": \"14 ft\" }", "\"round\"", "plan: \"round\" does not fit here; write an object in curly brackets")]
    [InlineData("\"height\": \"12 in\" }", " }", "lifts: neither “height” nor “tops” is given; write one of them")]
    public void Something_needed_is_bad_gets_one_sentence_and_no_house(string good, string bad, string sentence)
    {
        Assert.Contains(good, Good, StringComparison.Ordinal);
        var (document, house, diagnostics) = HouseDocument.Read(Good.Replace(good, bad, StringComparison.Ordinal));
        Assert.Equal([sentence], diagnostics.Select(Sentence.Of));
        Assert.NotNull(document);
        Assert.Null(house);
    }

    /// <summary>The text is no house file at all.</summary>
    [Theory]
    [InlineData("", "line 1, column 1: there is nothing in the file; write a house in curly brackets")]
    [InlineData(" \n ", "line 2, column 2: there is nothing in the file; write a house in curly brackets")]
    [InlineData("[]", "the file is not one house; write one object in curly brackets")]
    [InlineData("{ \"format\": 2 }", "the file has format 2 and this program reads formats up to 1; open it with a newer version")]
    [InlineData("{ \"format\": 1, }", "line 1, column 14: this comma stands before a closing “}”; take it out")]
    [InlineData("{\n  \"openings\": [ 1, 2, ]\n}", "line 2, column 21: this comma stands before a closing “]”; take it out")]
    [InlineData("{ // a remark\n}", "line 1, column 3: a house file has no comments; put remarks in “notes”")]
    [InlineData("{ \"format\": 1 /* a remark */ }", "line 1, column 15: a house file has no comments; put remarks in “notes”")]
    [InlineData("# house\n{}", "line 1, column 1: a house file has no comments; put remarks in “notes”")]
    [InlineData("{ \"latitude\": NaN }", "line 1, column 15: NaN is no number; write a plain number, or leave the key out")]
    [InlineData("{ \"latitude\": Infinity }", "line 1, column 15: Infinity is no number; write a plain number, or leave the key out")]
    [InlineData("{ \"latitude\": -Infinity }", "line 1, column 15: “-Infinity” is not written as a number; write digits, with a point between digits, such as 0.5")]
    [InlineData("{ \"latitude\": 1e999 }", "line 1, column 15: 1e999 is too large for a number; write a smaller one")]
    [InlineData("{ \"latitude\": 045 }", "line 1, column 15: “045” is not written as a number; write digits, with a point between digits, such as 0.5")]
    [InlineData("{ \"latitude\": 45. }", "line 1, column 15: “45.” is not written as a number; write digits, with a point between digits, such as 0.5")]
    [InlineData("{ \"latitude\": .5 }", "line 1, column 15: “.5” is no value; write a text in double quotes, a number, true or false")]
    [InlineData("{ \"width\": 12 in }", "line 1, column 15: “in” follows without a comma; write a comma between two things, or “}” after the last")]
    [InlineData("{ \"width\": 12in }", "line 1, column 12: “12in” is not written as a number; write digits, with a point between digits, such as 0.5")]
    [InlineData("{ \"oven\": yes }", "line 1, column 11: “yes” has no quotes; write it with double quotes round it")]
    [InlineData("{ \"oven\": 'yes' }", "line 1, column 11: this text has single quotes; write it with double quotes round it")]
    [InlineData("{ format: 1 }", "line 1, column 3: “format” stands where a key should; write the key in double quotes")]
    [InlineData("{ \"format\" 1 }", "line 1, column 12: “1” follows the key “format”; write a colon and then its value")]
    [InlineData("{ \"a\": 1 \"b\": 2 }", "line 1, column 10: “\"” follows without a comma; write a comma between two things, or “}” after the last")]
    [InlineData("{ \"a\": [1, 2 }", "line 1, column 14: “}” does not close what is open; write “]”")]
    [InlineData("{ \"a\": \"12 in\n}", "line 1, column 8: this text has no closing quote on its line; write it on one line with double quotes round it")]
    [InlineData("{ \"a\": \"C:\\house\" }", "line 1, column 11: “\\h” is no escape; write two backslashes for one")]
    [InlineData("{ \"a\": \"\\ud800\" }", "line 1, column 8: this text has half a character in it; write the whole one")]
    [InlineData("{ \"a\": \"\u0001\" }", "line 1, column 9: an unprintable mark stands in a text; write it as \\u0001 or take it out")]
    [InlineData("{ \"a\": ", "line 1, column 8: the file ends before it is complete; write the value that is missing")]
    [InlineData("{\n\"a\": 1,\n\"b\": {", "line 3, column 7: the “{” of line 3 is never closed; write “}” at its end")]
    [InlineData("{} {}", "line 1, column 4: “{” follows the end of the house; take it out")]
    public void A_text_that_is_no_house_file_gets_one_sentence(string text, string sentence)
    {
        var (document, house, diagnostics) = HouseDocument.Read(text);
        Assert.Equal([sentence], diagnostics.Select(Sentence.Of));
        Assert.Null(document);
        Assert.Null(house);
    }

    [Fact]
    public void Deep_nesting_gets_one_sentence() =>
        Assert.Equal(["line 1, column 34: things lie more than 32 deep in each other; a house is no more than six deep"], Said(new string('[', 100_000)));

    [Fact]
    public void Ten_megabytes_get_one_sentence()
    {
        byte[] bytes = new byte[10 << 20];
        bytes.AsSpan().Fill((byte)' ');
        Assert.Equal(["the file has 10,240 kB and a house file at most 512 kB; take out what is not the house"], HouseDocument.Read(bytes).Diagnostics.Select(Sentence.Of));
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    public void Wide_encodings_get_one_sentence(string encoding)
    {
        var wide = Encoding.GetEncoding(encoding);
        foreach (byte[] bytes in (byte[][])[wide.GetBytes(Good), [.. wide.GetPreamble(), .. wide.GetBytes(Good)]])
        {
            Assert.Equal(["the file is written in UTF-16; save it as UTF-8"], HouseDocument.Read(bytes).Diagnostics.Select(Sentence.Of));
        }
    }

    [Fact]
    public void Latin_1_gets_one_sentence() =>
        Assert.Equal(["line 4 is not UTF-8; save the file as UTF-8"], HouseDocument.Read(Encoding.Latin1.GetBytes(Good.Replace("Small", "Smäll", StringComparison.Ordinal))).Diagnostics.Select(Sentence.Of));

    [Fact]
    public void A_mistyped_needed_key_is_named_and_said_to_be_missing() =>
        Assert.Equal(
            ["openings[1].widht: “widht” is not a key here; the nearest one is “width”", "openings[1].width: this is missing; write a length in quotes such as \"12 in\" or \"300 mm\""],
            Said(Good.Replace("\"width\": \"2 ft\"", "\"widht\": \"2 ft\"", StringComparison.Ordinal)));

    [Fact]
    public void Paths_count_the_items_of_the_file_also_after_one_that_was_left_out()
    {
        var text = Good.Replace("\"width\": \"3 ft\"", "\"width\": \"wide\"", StringComparison.Ordinal).Replace("\"width\": \"2 ft\"", "\"width\": \"-2 ft\"", StringComparison.Ordinal);
        var (document, house, diagnostics) = HouseDocument.Read(text);
        Assert.Equal(["west"], house!.Openings.Select(o => o.Name));
        Assert.Equal(["openings[0].width", "openings[1].width"], diagnostics.Select(d => d.Path));
        Assert.Equal(new FilePosition(12, 62), document!.PositionOf(diagnostics[1].Path));
    }

    [Fact]
    public void So_much_is_wrong_that_nobody_would_read_it_all_is_cut_short() =>
        Assert.Equal(200, Said($"{{ {string.Join(", ", Enumerable.Range(0, 5_000).Select(i => $"\"key{i}\": {i}"))} }}").Length);
}
