using System.Text.RegularExpressions;
using Clomwright.Evidence;

namespace Clomwright.Rules.Tests;

/// <summary>The register of clauses is whole: numbers, words and sources.</summary>
public partial class RegisterTests
{
    private static readonly Phrasebook English = Phrasebook.In("en");

    /// <summary>Source (published): the list of sections of RB299-19, which became Appendix AU of the 2021 IRC, as printed by its public copies.</summary>
    private static readonly string[] Sections = SectionList(
        """
        AU101.1 AU101.2 AU101.3 AU101.4 Figure_AU101.4 AU102.1
        AU103.1 AU103.2 AU103.3 AU103.4 AU103.4.1 AU103.5 AU103.6 AU103.7 AU103.8 AU103.9
        AU104.1 AU104.2 AU104.3 AU104.4 AU104.4.1 AU104.4.2 AU104.4.3 AU104.4.3.1 AU104.4.3.2 AU104.4.4 AU104.4.5 AU104.4.6 AU104.4.7 AU104.4.8 AU104.4.9
        AU105.1 AU105.2 AU105.3 AU105.3.1 Table_AU105.3 AU105.3.2 AU105.3.3 AU105.3.4 AU105.3.4.1 AU105.3.4.2 AU105.3.4.3 AU105.3.5
        AU105.4 AU105.4.1 AU105.4.2 AU105.4.3 AU105.4.4 AU105.4.5 AU105.5
        AU106.1 AU106.2 AU106.3 AU106.4 AU106.5 AU106.6 AU106.6.1 AU106.7 AU106.7.1 AU106.8 AU106.8.1 AU106.8.2
        AU106.9 AU106.9.1 AU106.9.1.1 AU106.9.1.2 AU106.9.1.3 AU106.9.2 AU106.9.3 AU106.9.4 AU106.9.5 AU106.9.6 AU106.10 Table_AU106.10
        AU106.11 AU106.11.1 AU106.11.2 AU106.11.3 Figure_AU106.11.3 Table_AU106.11(1) Table_AU106.11(2) Table_AU106.11(3A) Table_AU106.11(3B) Table_AU106.11(3C)
        AU106.12 Table_AU106.12 AU106.13 AU106.14 AU107.1 AU108.1 AU108.2 AU109.1 AU109.2 AU109.3 AU110
        """);

    [Theory]
    [InlineData("irc-cob@2021", "AU")]
    [InlineData("irc-cob@2024", "BK")]
    public void EverySectionOfTheAppendix_HasAStatus(string adopted, string letters)
    {
        var numbers = RuleBook.Bodies.Single(b => b.Adopted == adopted).Clauses.SelectMany(c => c.Clause.Number.Split(", ")).ToHashSet();
        Assert.Subset(numbers, Sections.Select(s => s.Replace("AU", letters, StringComparison.Ordinal)).ToHashSet());
    }

    [Fact]
    public void EveryComputedRule_HasOneMethodAndTheOtherWayRound()
    {
        Assert.Equal(Computed("common-practice"), CommonPractice.Methods.Keys.Concat(Engineering.MeasuredByOthers).Order(StringComparer.Ordinal));
        Assert.Equal(Computed("irc-cob"), IrcCob.Methods.Keys.Concat(IrcCob.TestMethods.Keys).Order(StringComparer.Ordinal));

        Assert.Equal(Computed(Dwelling.Body), Dwelling.Methods.Keys.Order(StringComparer.Ordinal));

        static IEnumerable<string> Computed(string body) => RuleBook.Clauses
            .Where(c => c.Clause.Body == body && c.Clause.Status == ClauseStatus.Computed)
            .Select(c => c.Rule.Key).Distinct().Order(StringComparer.Ordinal);
    }

    [Fact]
    public void RuleKeys_AreKebabCaseAndOncePerBody() => Assert.All(RuleBook.Bodies, body =>
    {
        Assert.All(body.Clauses, c => Assert.Matches(Kebab(), c.Rule.Key));
        Assert.Equal(body.Clauses.Count, body.Clauses.Select(c => c.Rule.Key).Distinct().Count());
    });

    [Fact]
    public void EveryMessageOfTheRegister_HasWords() => Assert.All(RuleBook.Clauses, clause =>
    {
        Assert.All(new[] { clause.Rule.Title, clause.Clause.Measure, clause.Says }.Concat(clause.Rivals.Select(r => (Message?)r.What)).OfType<Message>(), SaidInFull);
    });

    [Fact]
    public void EveryBody_HasATitle() => Assert.All(RuleBook.Bodies, body => SaidInFull(body.Title));

    /// <summary>Keys that the code writes out in full, <c>rules.note.voids</c>; those it puts together are in the register.</summary>
    [Fact]
    public void EveryKeyInTheCode_HasWords()
    {
        var code = Directory.GetFiles(Path.Combine(Testing.Counts.Root, "src", "Clomwright.Rules"), "*.cs").Select(File.ReadAllText).ToList();
        var keys = code.SelectMany(text => WrittenKey().Matches(text).Select(m => m.Value.Trim('"')))
            .Concat(code.SelectMany(text => Because().Matches(text).Select(m => $"rules.because.{m.Groups[1].Value}")));
        Assert.All(keys.Distinct(), key => Assert.True(English.Arguments(key).Count > 0 || !English.Say(new Message(key), UnitSystem.Metric).StartsWith('['), $"{key} has no words."));
    }

    [Fact]
    public void AComputedClause_ComparesANumberThatItHasOrAsksFor() => Assert.All(RuleBook.Clauses.Where(c => c.Clause.Status == ClauseStatus.Computed), clause =>
    {
        Assert.NotNull(clause.Word);
        Assert.NotNull(clause.Measures);
        Assert.NotEqual("rules.measure.none", clause.Clause.Measure.Key);
        Assert.Equal(clause.Limit is null, clause.Clause.Source.Surety == Surety.Missing);
    });

    /// <summary>What nobody could read again is never a limit that passes or fails.</summary>
    [Fact]
    public void NoShippedLimit_IsFromMemory() =>
        Assert.Empty(RuleBook.Clauses.Where(c => c.Limit is not null && c.Clause.Source.Surety == Surety.Memory).Select(c => c.Rule.Key));

    [Fact]
    public void ClausesOfAnEditionNobodyRead_AreNeverSurerThanSecondHand() =>
        Assert.Equal(["fire-rating"], RuleBook.Clauses.Where(c => c.Clause is { Edition: "2024", Source.Surety: Surety.Seen }).Select(c => c.Rule.Key));

    private static void SaidInFull(Message message)
    {
        var said = English.Say(message, UnitSystem.Imperial);
        Assert.False(said.StartsWith('['), $"{message.Key} has no words.");
        Assert.True(message.Key.StartsWith("rules.ask.", StringComparison.Ordinal) || !said.Contains('{'), $"{message.Key} leaves an argument open: {said}");
    }

    private static string[] SectionList(string text) => text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(s => s.Replace('_', ' ')).ToArray();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();

    [GeneratedRegex("\"rules\\.[a-z-]+\\.[a-z0-9-]+\"")]
    private static partial Regex WrittenKey();

    [GeneratedRegex("Not(?:Applicable|Checked)\\([^\\n]*?\"([a-z-]+)\"\\)")]
    private static partial Regex Because();
}
