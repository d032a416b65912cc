using System.Text.Json;
using System.Text.Json.Nodes;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Testing;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests.Scenes;

/// <summary>What is remembered of the wall's scene while the house becomes others. Rank independent: a scene made from nothing.</summary>
public sealed class SceneMemoryTests
{
    /// <summary>Each house after the one before it: a window moved and made wider, another wall, another stem, other units, without its last opening, another plan, the first again.</summary>
    private static IEnumerable<House> Lived(House house)
    {
        yield return house;
        var first = house.Openings[0];
        yield return house = house with { Openings = house.Openings.With(0, first with { Sill = first.Sill + Length.FromInches(1), Width = first.Width - Length.FromInches(1) }) };
        yield return house with { Wall = house.Wall with { Top = house.Wall.Top + Length.FromInches(2) } };
        yield return house with { Stem = house.Stem with { Top = house.Stem.Top + Length.FromInches(1) } };
        yield return house with { Units = house.Units == UnitSystem.Metric ? UnitSystem.Imperial : UnitSystem.Metric };
        yield return house = house with { Openings = house.Openings.Without(house.Openings.Count - 1) };
        yield return house with { Plan = new Plan.Round(Length.FromFeet(17)) };
        yield return house;
    }

    [Fact]
    public void WithWhatWasMadeBefore_ASceneIsAsOneMadeFromNothing() => Houses.Plausible.ForAll(
        house =>
        {
            var made = new SceneMemory();
            foreach (var (study, face) in Lived(house).Select(h => HouseStudy.Of(h)).SelectMany(s => new[] { (s, Face.Inside), (s, Face.Outside) }))
            {
                Assert.Equal(Written(FromStudy.Scene(study, face, Words.Book, study.Diagnostics)), Written(FromStudy.Scene(study, face, Words.Book, study.Diagnostics, made)));
            }
        },
        iter: Counts.Of(8, 200));

    [Fact]
    public void WhatIsSentAfterAnother_IsWithItTheWhole() => Houses.Plausible.ForAll(
        house =>
        {
            var (made, sent, has, edition, bytes) = (new SceneMemory(), new SentScenes(), (JsonObject?)null, (long?)null, new List<int>());
            foreach (var study in Lived(house).Select(h => HouseStudy.Of(h)))
            {
                var whole = FromStudy.Scene(study, Face.Inside, Words.Book, study.Diagnostics, made);
                var only = JsonSerializer.Serialize(sent.Only(whole, edition), KeptScene.Json);
                has = KeptScene.Whole(JsonNode.Parse(only)!.AsObject(), has);
                edition = (long)has["edition"]!;
                bytes.Add(only.Length);
                Assert.Equal(Written(whole with { Edition = edition.Value }), Written(KeptScene.Read(has)));
            }

            // The second is the first with one window otherwise.
            Assert.True(bytes[1] < bytes[0] / 2, $"{bytes[1]} of {bytes[0]} bytes were sent");
        },
        iter: Counts.Of(8, 200));

    private static string Written(Scene scene) => JsonSerializer.Serialize(scene, KeptScene.Json);
}
