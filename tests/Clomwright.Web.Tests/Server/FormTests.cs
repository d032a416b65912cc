using System.Text.RegularExpressions;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Testing;
using Clomwright.Web.Editing;
using Clomwright.Web.Forms;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests.Server;

/// <summary>The house as a form. Rank: property and by hand.</summary>
public sealed partial class FormTests
{
    private static readonly House Heron = Houses.HeronPoint;

    /// <summary>The key of the file and of its format are the file's own.</summary>
    private static readonly HashSet<string> OfFile = ["id", "format"];

    [Fact]
    public void EveryKeyOfAHouse_IsNamedByASentence_AndNoSentenceNamesAnother()
    {
        var things = HousePlaces.Everything().ToList();
        Assert.True(things.Count > 60, $"only {things.Count} things were found");
        List<string> wrong = [];
        foreach (var (thing, of, keys) in things)
        {
            var asked = Phrasebook.English.Arguments($"web.form.{(of is null ? thing : $"{thing}-{of}")}");
            wrong.AddRange(keys.Where(key => thing != "house" || !OfFile.Contains(key)).Except(asked).Select(key => $"{thing} {of} does not name {key}"));
            wrong.AddRange(asked.Except(keys).Select(key => $"{thing} {of} names {key}, which it has not"));
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void EveryWordThatIsChosen_HasWords()
    {
        var missing = Forms(Heron, "title", "site", "plan", "stem", "trench", "floor", "wall", "lifts", "openings", "niches", "embeds", "bondBeam", "tees", "roof", "finishes", "testPanels", "comfort", "mix", "crew", "rules", "assumed", "stove", "prices")
            .SelectMany(Blanks).SelectMany(blank => blank.Choices).Where(choice => choice.Value.Length > 0 && choice.Label == choice.Value && !Phrasebook.English.Keys.Contains($"web.word.{choice.Value}")).Select(choice => choice.Value).Distinct();
        Assert.Empty(missing);
    }

    [Fact]
    public void NothingOnAForm_IsWithoutWords() => Assert.All(
        Forms(Heron, "title", "site", "plan", "stem", "trench", "floor", "wall", "lifts", "openings", "niches", "embeds", "bondBeam", "tees", "roof", "finishes", "testPanels", "comfort", "mix", "crew", "rules", "assumed", "stove", "prices").SelectMany(Texts),
        text => Assert.DoesNotMatch(WithoutWords(), text));

    /// <summary>Nonsense in every blank of every page: refused in one sentence, or taken where any words may stand.</summary>
    [Fact]
    public void Nonsense_IsRefusedEverywhere_OrStandsAsItWasWritten()
    {
        const string nonsense = "about as much as last time";
        var blanks = Forms(Heron, "title", "site", "plan", "stem", "trench", "floor", "wall", "lifts", "openings", "niches", "embeds", "bondBeam", "tees", "roof", "finishes", "testPanels", "comfort", "mix", "crew", "rules", "assumed", "stove", "prices").SelectMany(Blanks).ToList();
        var (refused, unknown) = (0, 0);
        // What names an answer or a number is its place in the list: named anew it stands last.
        foreach (var blank in blanks.Where(blank => !(blank.Key.StartsWith("house.rules.", StringComparison.Ordinal) && (blank.Key.EndsWith(".question", StringComparison.Ordinal) || blank.Key.EndsWith(".rule", StringComparison.Ordinal) || blank.Key.EndsWith(".body", StringComparison.Ordinal)))))
        {
            if (EditOf.Change(new Change.Enter(blank.Key, nonsense), Heron, _ => 1, out var reason) is { } edit)
            {
                Assert.True(HousePlaces.Of(edit.Apply(Heron)).At(blank.Key["house.".Length..])!.Text == nonsense, blank.Key);
                if (blank.Suggestions.Count > 0 && !blank.Key.StartsWith("house.assumed", StringComparison.Ordinal))
                {
                    // Something may stand there that nobody knows; then that is said at the blank.
                    var form = Forms(edit.Apply(Heron), blank.Key["house.".Length..blank.Key.LastIndexOf('.')].Split('.')[0].Split('[')[0]);
                    Assert.Contains(nonsense, form.SelectMany(Blanks).Single(b => b.Key == blank.Key).Trouble, StringComparison.Ordinal);
                    unknown++;
                }
            }
            else
            {
                refused++;
                Assert.InRange(Phrasebook.English.Say(reason!, UnitSystem.Imperial).Length, 12, 300);
            }
        }

        Assert.True(blanks.Count > 300 && refused > blanks.Count / 2 && unknown > 10, $"{refused} of {blanks.Count} refused, {unknown} not known");
        Assert.All(blanks, blank => Assert.True(blank.Trouble is null, $"{blank.Key}: {blank.Trouble}")); // the example's own keys are all known
    }

    /// <summary>Whatever a form offers to add can be added, in either system, to every kind of roof, and what is there then can be taken out again.</summary>
    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void WhatIsOffered_CanBeAdded(UnitSystem units)
    {
        var added = 0;
        foreach (var kind in RoofShaping.Kinds.Skip(1))
        {
            var house = Heron with { Units = units, Roof = RoofShaping.As(Heron.Roof, kind, units) };
            foreach (var add in Forms(house, "trench", "stem", "floor", "site", "openings", "niches", "embeds", "bondBeam", "tees", "roof", "finishes", "comfort", "crew").SelectMany(Adds).Where(add => add.Asks.Count == 0))
            {
                var edit = EditOf.Change(new Change.AddPart(add.Path, add.Way, new Dictionary<string, string>(), "part"), house, _ => 1, out var reason, roomiest: 3);
                Assert.True(edit is not null, $"{add.Path} {add.Way}: {(reason is null ? "" : Phrasebook.English.Say(reason, units))}");
                var with = edit.Apply(house);
                Assert.NotEqual(house, with);
                var path = HousePlaces.Of(with).Count(add.Path) is { } count ? $"{add.Path}[{count - 1}]" : add.Path;
                Assert.Equal(house, EditOf.Change(new Change.TakeOut(path, "part"), with, _ => 1, out _)!.Apply(with));
                added++;
            }
        }

        Assert.True(added > 100, $"only {added} were offered");
    }

    [Fact]
    public void ANicheAndAPeg_AreMovedAsAnOpeningIs()
    {
        var niche = Heron.Niches[0];
        var moved = EditOf.Change(new Change.Nudge(niche.Name, 1, 1, Large: false), Heron, _ => 2, out _)!.Apply(Heron);
        Assert.Equal(niche.Sill + Length.FromInches(1), moved.Niches[0].Sill);
        var embed = Heron.Embeds[0];
        moved = EditOf.Change(new Change.Move(embed.Name, 3.01, 1.5), Heron, _ => 2, out _)!.Apply(Heron);
        Assert.Equal((Along.At(Length.FromInches(119)), Length.FromInches(59)), (moved.Embeds[0].Along, moved.Embeds[0].Height)); // 118.5 in and 59.06 in, on the inch
    }

    [Fact]
    public void Rules_AreAdoptedAndLeft()
    {
        var adopted = EditOf.Change(new Change.Enter("house.adopt.irc-cob@2024", "yes"), Heron, _ => 0, out _)!.Apply(Heron);
        Assert.Contains("irc-cob@2024", adopted.Rules.Adopted);
        Assert.DoesNotContain("irc-cob@2024", EditOf.Change(new Change.Enter("house.adopt.irc-cob@2024", "no"), adopted, _ => 0, out _)!.Apply(adopted).Rules.Adopted);
        Assert.Null(EditOf.Change(new Change.Enter("house.adopt.nobody", "yes"), Heron, _ => 0, out var reason));
        Assert.NotNull(reason);
    }

    private static IReadOnlyList<FormPart> Forms(House house, params string[] paths) => new FormOf(house, [], new Pen(Phrasebook.English, house.Units)).Parts(paths);

    private static IEnumerable<FormPart> Parts(FormPart part) => [part, .. part.Inner.SelectMany(Parts)];

    private static IEnumerable<FormBlank> Blanks(FormPart part) => Parts(part).SelectMany(p => p.Lines).SelectMany(line => line).Select(piece => piece.Blank).OfType<FormBlank>();

    private static IEnumerable<FormAdd> Adds(FormPart part) => Parts(part).SelectMany(p => p.Adds);

    private static IEnumerable<string> Texts(FormPart part) =>
        [.. Parts(part).Select(p => p.Title), .. Parts(part).SelectMany(p => p.Lines).SelectMany(line => line).Select(piece => piece.Words).OfType<string>(), .. Blanks(part).Select(b => b.Label), .. Adds(part).Select(a => a.Label)];

    [GeneratedRegex(@"\[[a-z]+\.|\{|\}")]
    private static partial Regex WithoutWords();
}
