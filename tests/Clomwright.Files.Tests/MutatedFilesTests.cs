using System.Text;
using System.Text.RegularExpressions;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Whatever happens to a file, reading it gives a house or clear sentences, never an exception. How long it takes is measured in benchmarks.</summary>
public partial class MutatedFilesTests
{
    private static readonly string[] Oddities =
    [
        "null", "true", "[]", "{}", "[[]]", "{ \"a\": {} }", "0", "-1", "1e400", "1e-400", "99999999999999999999", "\"\"", "\" \"", "\"-3 in\"", "\"1e9 m\"", "\"99999999999 ft\"",
        "\"NaN in\"", "\"4 %\"", "\"400 deg\"", "\"1/0 in\"", "\"\\u0000\"", "\"door\"", "\"😀\"", "\"7'6\\\"\"", "\"0x10 in\"", "\"1,5 m\"", "NaN", "'x'", "// x", "\\", "\"\\ud800\"", ",", ":", "}", "]",
    ];

    private static readonly Gen<Func<string, string>> Mutation = Gen.OneOf(
        Gen.Select(Gen.Double.Unit, Gen.Int[1, 40], (at, length) => new Func<string, string>(t => Cut(t, at, length))),
        Gen.Select(Gen.Double.Unit, Gen.Double.Unit, Gen.Int[1, 60], (from, to, length) => new Func<string, string>(t => Copy(t, from, to, length))),
        Gen.Select(Gen.Double.Unit, Gen.OneOf(Oddities), (at, odd) => new Func<string, string>(t => Value().Replace(t, odd.Replace("$", "$$", StringComparison.Ordinal), 1, (int)(at * t.Length)))),
        Gen.Select(Gen.Double.Unit, Gen.OneOf(Oddities), (at, odd) => new Func<string, string>(t => t.Insert((int)(at * t.Length), odd))),
        Gen.Select(Gen.Double.Unit, Gen.Char, (at, c) => new Func<string, string>(t => t.Insert((int)(at * t.Length), c.ToString()))),
        Gen.Double.Unit.Select(at => new Func<string, string>(t => t[..(int)(at * t.Length)])));

    [Fact]
    public void A_mutated_file_gives_a_house_or_clear_sentences() =>
        Gen.Select(Houses.Plausible, Gen.Int, Mutation.Array[1, 3]).ForAll((house, seed, mutations) =>
        {
            var text = mutations.Aggregate(Handwriting.Of(house, seed), (t, mutate) => mutate(t));
            var (document, read, diagnostics) = HouseDocument.Read(text);
            Assert.True(read is not null || diagnostics.Count > 0);
            Assert.All(diagnostics.Select(Sentence.Of), IsClear);
            Assert.All(diagnostics.Where(d => document is not null && d.Path.Length > 0), d => Assert.InRange(document!.PositionOf(d.Path).Line, 1, text.Count(c => c == '\n') + 1));
            if (read is not null)
            {
                ChangesCleanly(document!, read);
            }
        }, iter: Counts.Of(1_000, 20_000));

    [Fact]
    public void Random_bytes_give_a_sentence() =>
        Gen.Byte.Array[0, 200].ForAll(bytes => Assert.All(HouseDocument.Read(bytes).Diagnostics.Select(Sentence.Of), IsClear), iter: Counts.Of(500, 20_000));

    [Fact]
    public void Large_bad_files_are_refused_with_clear_sentences()
    {
        foreach (var piece in (string[])["[", "{\"a\":", "\"a\":1,", "{},", "\"", "1", "\\", " ", "{\"openings\":[", "\"0 deg\", ", "{ \"name\": \"door\" }, "])
        {
            var filling = new StringBuilder().Insert(0, piece, (1 << 19) / piece.Length - 100).ToString();
            foreach (var text in (string[])[filling, "{ " + filling + " \"b\": 1 }", "{ \"openings\": [" + filling + "{}] }", "{ \"rules\": { \"adopted\": [" + filling + "{}] } }", "{ \"id\": \"" + filling + "\" }"])
            {
                Assert.All(HouseDocument.Read(text).Diagnostics.Select(Sentence.Of), IsClear);
            }
        }
    }

    /// <summary>What is left can still be edited, and what could not be read stays.</summary>
    private static void ChangesCleanly(HouseDocument document, House house)
    {
        var edited = house with { Name = "Edited", Openings = house.Openings.Take(1).Concat(house.Openings.Skip(2)).Append(Houses.Door("new door", 12)).ToSequence() };
        var again = HouseDocument.Read(document.With(edited).Text);
        Assert.Equal(edited, again.House);
    }

    private static void IsClear(string sentence)
    {
        Assert.Matches("[;,] ", sentence);
        Assert.DoesNotMatch(@"^\[\w+\.|\{\w+\}(?!”)", sentence);
        Assert.DoesNotContain('\n', sentence);
        Assert.InRange(sentence.Length, 20, 600);
    }

    private static string Cut(string text, double at, int length)
    {
        var from = (int)(at * text.Length);
        return text.Remove(from, Math.Min(length, text.Length - from));
    }

    private static string Copy(string text, double from, double to, int length)
    {
        var start = (int)(from * text.Length);
        return text.Insert((int)(to * text.Length), text.Substring(start, Math.Min(length, text.Length - start)));
    }

    [GeneratedRegex("""(?<=[:\[,]\s*)("[^"]*"|-?\d[\d.]*|true|false)(?=\s*[,}\]])""")]
    private static partial Regex Value();
}
