using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Places of a house as a form reads and writes them. Rank: by hand and property.</summary>
public class PlacesTests
{
    private static readonly House Heron = Houses.HeronPoint;

    [Fact]
    public void Every_place_written_with_what_stands_in_it_leaves_the_house_as_it_is() =>
        Houses.Plausible.ForAll(house =>
        {
            var places = HousePlaces.Of(house);
            var all = All(places, "").ToList();
            Assert.True(all.Count > 60, $"only {all.Count} places were found");
            foreach (var place in Counts.Long ? all : all.Where((_, i) => i % 7 == house.Name.Length % 7))
            {
                // What is wrong already is refused at its place; nothing may be left empty there either.
                var (read, problem) = places.Write(place.Path, place.Text);
                Assert.True(read == house || (problem is not null && (place.Text.Length == 0 || HouseDiagnostics.Of(house).Count > 0)), $"{place.Path}: “{place.Text}” {(problem is null ? "became another" : Phrasebook.English.Say(problem, UnitSystem.Metric))}");
            }
        }, iter: Counts.Of(3, 200));

    [Fact]
    public void The_edits_between_two_houses_make_one_into_the_other() =>
        Gen.Select(Houses.Plausible, Houses.Plausible).ForAll((one, other) =>
        {
            var wanted = other with { Id = one.Id };
            Assert.Equal(wanted, Edit.Between(one, wanted).Apply(one) with { Rules = wanted.Rules });
        }, iter: Counts.Of(40, 3_000));

    [Theory]
    [InlineData("openings[1].width", "7'6\"", "90 in")]
    [InlineData("openings[1].width", "7 ft 6 1/2 in", "90 1/2 in")]
    [InlineData("openings[1].width", "2.3 m", "2.3 m")]
    [InlineData("openings[1].width", "30", "30 in")] // bare: the unit of the house's tape
    [InlineData("plan.zeroBearing", "45", "45 deg")]
    [InlineData("site.windSpeed", "110 mph", "110 mph")]
    [InlineData("wall.outsideTaper", "6.5", "6.5 %")]
    [InlineData("openings[1].escape", "yes", "yes")]
    [InlineData("openings[1].shape", "round", "round")]
    [InlineData("roof.poleDiameter.tip", "5 in", "5 in")]
    [InlineData("roof.landings", "1; 46 deg, 91; 136; 181; 226; 271; 316", "1 deg; 46 deg; 91 deg; 136 deg; 181 deg; 226 deg; 271 deg; 316 deg")]
    [InlineData("site.latitude", "44.5", "44.5")]
    [InlineData("openings[1].splay.inside", "15", "15 deg")]
    [InlineData("notes", "", "")]
    public void What_is_written_stands_there(string path, string text, string stands)
    {
        var (house, problem) = HousePlaces.Of(Heron).Write(path, text);
        Assert.True(house is not null, problem is null ? "" : Phrasebook.English.Say(problem, UnitSystem.Imperial));
        var now = HousePlaces.Of(house).At(path)!.Text;
        Assert.True(now == stands || (LengthText.TryParse(now, out var a, out _) && LengthText.TryParse(stands, out var b, out _) && a == b), now);
        Assert.NotEqual(Heron, house);
        Assert.Equal(house, HouseDocument.Read(HouseWriter.Write(house)).House);
        Assert.Equal(house, Edit.Between(Heron, house).Apply(Heron));
    }

    [Theory]
    [InlineData("openings[1].width", "seven apples")]
    [InlineData("openings[1].width", "")]
    [InlineData("openings[1].width", "1/3 in")]
    [InlineData("openings[1].shape", "square")]
    [InlineData("openings[1].name", "door")] // taken
    [InlineData("openings[77].width", "1 m")]
    [InlineData("site.groundSnow", "25")] // of what unit
    [InlineData("site.latitude", "north")]
    [InlineData("stem.keys.spacing", "1 ft; 2 ft")]
    [InlineData("nowhere", "1")]
    [InlineData("openings", "1")]
    public void What_cannot_be_is_refused_in_one_sentence(string path, string text)
    {
        var (house, problem) = HousePlaces.Of(Heron).Write(path, text);
        Assert.Null(house);
        var said = Phrasebook.English.Say(problem!, UnitSystem.Imperial);
        Assert.DoesNotContain("[", said.Replace("openings[", "", StringComparison.Ordinal));
        Assert.InRange(said.Length, 12, 260);
    }

    [Fact]
    public void Of_two_places_that_say_the_same_the_one_written_stands()
    {
        var (house, _) = HousePlaces.Of(Heron).Write("openings[1].station", "16 ft 5 in");
        Assert.Equal(Along.At(Length.FromInches(197)), house!.Openings[1].Along);
        var (back, _) = HousePlaces.Of(house).Write("openings[1].bearing", "180 deg");
        Assert.Equal(Along.At(new Angle(180)), back!.Openings[1].Along);
        Assert.Null(HousePlaces.Of(back).Write("openings[1].bearing", "").House);
    }

    [Fact]
    public void Parts_are_added_moved_and_taken_out()
    {
        var layered = HousePlaces.Of(Heron).Add("roof.layers", new Dictionary<string, string> { ["name"] = "sand", ["depth"] = "2", ["material"] = "sand" }).House!;
        Assert.Equal(new Layer("sand", Length.FromInches(2), "sand"), layered.Roof!.Layers[^1]);
        var up = HousePlaces.Of(layered).Move($"roof.layers[{layered.Roof.Layers.Count - 1}]", -1).House!;
        Assert.Equal("sand", up.Roof!.Layers[^2].Name);
        Assert.Equal(Heron, HousePlaces.Of(up).Without($"roof.layers[{up.Roof.Layers.Count - 2}]").House);

        var missing = HousePlaces.Of(Heron).Add("rules.entered", new Dictionary<string, string> { ["rule"] = "wind-speed", ["limit"] = "110 mph" });
        Assert.Null(missing.House);
        var entered = HousePlaces.Of(Heron).Add("rules.entered", new Dictionary<string, string> { ["body"] = "irc-cob@2021", ["rule"] = "wind-speed", ["limit"] = "110 mph", ["by"] = "M. Invented", ["on"] = "2027-03-01" }).House!;
        Assert.Equal(new EnteredLimit("irc-cob@2021", "wind-speed", "110 mph", "M. Invented", new DateOnly(2027, 3, 1)), entered.Rules.Entered[^1]);
        Assert.Equal(entered, Edit.Between(Heron, entered).Apply(Heron));
        Assert.Equal(Heron, Edit.Between(entered, Heron).Apply(entered));
        Assert.Null(HousePlaces.Of(Heron).Without("stem").House);
    }

    /// <summary>Rank analytic: eight points on a circle lie at its radius, and a circle snapped from them has its diameter, to the tape's inch.</summary>
    [Fact]
    public void A_plan_is_drawn_as_points_and_snapped_back()
    {
        var round = new Plan.Round(Length.FromFeet(20)) { ZeroBearing = new Angle(30) };
        var path = (Plan.Path)PlanShaping.As(round, "path", UnitSystem.Imperial);
        Assert.All(path.Points, point => Assert.Equal(Length.FromFeet(10).Metres, double.Hypot(point.East.Metres, point.North.Metres), 0.02)); // half an inch each way
        Assert.Equal(round, PlanShaping.As(path, "round", UnitSystem.Imperial));
        var more = PlanShaping.Added(path, 7, UnitSystem.Imperial);
        Assert.Equal(9, more.Points.Count);
        Assert.Equal(path, PlanShaping.Without(more, 8));
        Assert.DoesNotContain(HouseDiagnostics.Of(Heron with { Plan = path }), said => said.Path.StartsWith("plan", StringComparison.Ordinal));
    }

    [Fact]
    public void A_roof_of_every_kind_comes_from_every_other_and_keeps_what_both_have()
    {
        foreach (var from in RoofShaping.Kinds.Skip(1))
        {
            var roof = RoofShaping.As(Heron.Roof, from, UnitSystem.Imperial)!;
            foreach (var to in RoofShaping.Kinds.Skip(1))
            {
                var other = RoofShaping.As(roof, to, UnitSystem.Imperial)!;
                Assert.Equal(to, RoofShaping.KindOf(other));
                Assert.Equal((Heron.Roof!.Eave, Heron.Roof.Layers, Heron.Roof.Deck, Heron.Roof.Species), (other.Eave, other.Layers, other.Deck, other.Species));
                Assert.Empty(HouseDiagnostics.Of(Heron with { Roof = other }).Where(said => said.Severity == Severity.Error && said.Path.StartsWith("roof", StringComparison.Ordinal) && said.Path != "roof.landings").Select(Sentence.Of));
            }
        }
    }

    /// <summary>Every place of a house, by walking its parts.</summary>
    internal static IEnumerable<HousePlace> All(HousePlaces places, string path)
    {
        var part = places.Part(path)!;
        foreach (var key in HousePlaces.Everything().First(found => found.Thing == part.Thing && found.Case == part.Case).Keys)
        {
            if (places.KeyAs(path, key) is { } name && places.At(path.Length == 0 ? name : $"{path}.{name}") is { } place && name is not ("format" or "id"))
            {
                yield return place;
            }
        }

        foreach (var (inner, isList) in places.Inner(path))
        {
            foreach (var one in isList ? Enumerable.Range(0, places.Count(inner)!.Value).Select(i => $"{inner}[{i}]") : places.Part(inner)!.IsThere ? [inner] : [])
            {
                foreach (var place in All(places, one))
                {
                    yield return place;
                }
            }
        }
    }
}
