using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Every edit changes what it names and nothing else.</summary>
public class EditTests
{
    private static readonly House House = Houses.HeronPoint;

    private static Opening Door(House house) => house.Openings.First(o => o.Name == "door");

    [Fact]
    public void An_opening_moves_along_and_up()
    {
        var moved = new Edit.MoveOpening("tub-window", Along.At(Length.FromFeet(19)), Length.FromInches(40)).Apply(House);
        Assert.Equal((Along.At(Length.FromFeet(19)), Length.FromInches(40)), (moved.Openings[1].Along, moved.Openings[1].Sill));
        Assert.Equal(House, moved with { Openings = moved.Openings.With(1, House.Openings[1]) });
        Assert.Equal(House.Openings[1].Sill, new Edit.MoveOpening("tub-window", Along.At(new Angle(3))).Apply(House).Openings[1].Sill);
    }

    [Fact]
    public void An_opening_is_resized_changed_renamed_added_and_taken_out()
    {
        Assert.Equal(Door(House) with { Width = Length.FromInches(34), Height = Length.FromInches(79) }, Door(new Edit.ResizeOpening("door", Length.FromInches(34), Length.FromInches(79)).Apply(House)));
        Assert.Equal(Length.FromInches(2), Door(new Edit.ResizeOpening("door", Length.FromInches(34), Length.FromInches(79), Length.FromInches(2)).Apply(House)).Sill);
        var other = Houses.Window("door", 10, Length.FromInches(20), Length.FromInches(20));
        Assert.Equal(other, Door(new Edit.ChangeOpening("door", other).Apply(House)));
        Assert.Equal(Door(House) with { Name = "front" }, new Edit.RenameOpening("door", "front").Apply(House).Openings[0]);
        var more = new Edit.AddOpening(other with { Name = "more" }).Apply(House);
        Assert.Equal("more", more.Openings[^1].Name);
        Assert.Equal(House, new Edit.RemoveOpening("more").Apply(more));
    }

    [Fact]
    public void A_niche_is_moved_resized_changed_renamed_added_and_taken_out()
    {
        var lamp = House.Niches[0];
        Assert.Equal(lamp with { Along = Along.At(new Angle(22)), Sill = Length.FromFeet(3) }, new Edit.MoveNiche("lamp", Along.At(new Angle(22)), Length.FromFeet(3)).Apply(House).Niches[0]);
        Assert.Equal(lamp with { Width = Length.FromInches(9), Height = Length.FromInches(8), Depth = Length.FromInches(3) }, new Edit.ResizeNiche("lamp", Length.FromInches(9), Length.FromInches(8), Length.FromInches(3)).Apply(House).Niches[0]);
        Assert.Equal(NicheHead.Flat, new Edit.ChangeNiche("lamp", lamp with { Head = NicheHead.Flat }).Apply(House).Niches[0].Head);
        Assert.Equal("light", new Edit.RenameNiche("lamp", "light").Apply(House).Niches[0].Name);
        Assert.Equal(House, new Edit.RemoveNiche("more").Apply(new Edit.AddNiche(lamp with { Name = "more" }).Apply(House)));
    }

    [Fact]
    public void An_embed_is_moved_changed_renamed_added_and_taken_out()
    {
        var pegs = House.Embeds[0];
        Assert.Equal(pegs with { Along = Along.At(new Angle(22)), Height = Length.FromFeet(5) }, new Edit.MoveEmbed("coat-pegs", Along.At(new Angle(22)), Length.FromFeet(5)).Apply(House).Embeds[0]);
        Assert.Equal(6, new Edit.ChangeEmbed("coat-pegs", pegs with { Count = 6 }).Apply(House).Embeds[0].Count);
        Assert.Equal("pegs", new Edit.RenameEmbed("coat-pegs", "pegs").Apply(House).Embeds[0].Name);
        Assert.Equal(House, new Edit.RemoveEmbed("more").Apply(new Edit.AddEmbed(pegs with { Name = "more" }).Apply(House)));
    }

    [Fact]
    public void Whole_parts_are_put_in_the_place_of_the_old()
    {
        var other = HouseFile.Read(Path.Combine(Counts.Root, "examples", "slate-brook.house.json")).House!;
        Edit[] edits =
        [
            new Edit.ChangeTitle(other.Name, other.Notes, other.Units), new Edit.ChangeSite(other.Site), new Edit.ChangePlan(other.Plan), new Edit.ChangeFloor(other.Floor), new Edit.ChangeComfort(other.Comfort),
            new Edit.ChangeTrench(other.Trench), new Edit.ChangeStem(other.Stem), new Edit.ChangeWall(other.Wall), new Edit.ChangeLifts(other.Lifts), new Edit.ChangeBondBeam(other.BondBeam),
            new Edit.ChangeTees(other.Tees), new Edit.ChangeRoof(other.Roof), new Edit.ChangeFinishes(other.Finishes), new Edit.ChangeTestPanels(other.TestPanels), new Edit.ChangeMix(other.Mix), new Edit.ChangeAssumed(other.Assumed), new Edit.ChangeCrew(other.Crew),
            new Edit.ChangeStove(other.Stove), new Edit.ChangePrices(other.Currency, other.Prices),
        ];
        var all = new Edit.Several(edits.ToSequence()).Apply(House);
        Assert.Equal(other with { Id = House.Id, Openings = House.Openings, Niches = House.Niches, Embeds = House.Embeds, Rules = House.Rules }, all);
        Assert.Equal(edits.Aggregate(House, (house, edit) => edit.Apply(house)), all);
    }

    [Fact]
    public void A_roof_turned_and_turned_back_stands_as_before()
    {
        var landings = House with { Roof = House.Roof! with { Landings = [new Angle(350), new Angle(10)] } };
        var turned = new Edit.TurnRoof(new Angle(15)).Apply(landings);
        Assert.Equal(new Angle(15), turned.Roof!.FirstBearing);
        Assert.Equal([new Angle(5), new Angle(25)], turned.Roof.Landings);
        Assert.Equal(landings, new Edit.TurnRoof(new Angle(-15)).Apply(turned));
        Assert.Equal(House with { Roof = null }, new Edit.TurnRoof(new Angle(15)).Apply(House with { Roof = null }));
    }

    [Fact]
    public void Answers_and_limits_take_the_place_of_earlier_ones_and_can_be_taken_back()
    {
        var day = new DateOnly(2027, 4, 1);
        var answered = new Edit.AnswerQuestion(new Answer("ground-flood", false, "R. Reader", day)).Apply(House);
        Assert.Equal(House.Rules.Answers.Count, answered.Rules.Answers.Count);
        Assert.False(answered.Rules.Answers.Single(a => a.Question == "ground-flood").Holds);
        Assert.DoesNotContain(new Edit.WithdrawAnswer("ground-flood").Apply(answered).Rules.Answers, a => a.Question == "ground-flood");
        var entered = new Edit.EnterLimit(new EnteredLimit("irc-cob@2021", "wall-height", "8 ft", "R. Reader", day)).Apply(House);
        Assert.Equal("9 ft", Assert.Single(new Edit.EnterLimit(new EnteredLimit("irc-cob@2021", "wall-height", "9 ft", "R. Reader", day)).Apply(entered).Rules.Entered).Limit);
        Assert.Equal(["common-practice"], new Edit.AdoptRules(["common-practice"]).Apply(House).Rules.Adopted);
    }

    [Fact]
    public void An_edit_of_something_that_is_not_there_changes_nothing()
    {
        Edit[] edits =
        [
            new Edit.MoveOpening("none", Along.At(new Angle(1))), new Edit.ResizeOpening("none", Length.Zero, Length.Zero), new Edit.RemoveOpening("none"), new Edit.RenameOpening("none", "x"),
            new Edit.MoveNiche("none", Along.At(new Angle(1))), new Edit.RemoveNiche("none"), new Edit.MoveEmbed("none", Along.At(new Angle(1))), new Edit.RemoveEmbed("none"), new Edit.WithdrawAnswer("none"),
        ];
        Assert.All(edits, edit => Assert.Equal(House, edit.Apply(House)));
    }

    [Fact]
    public void Every_edit_says_what_it_does()
    {
        Assert.Equal("Move door", Say(new Edit.MoveOpening("door", Along.At(new Angle(1)))));
        Assert.Equal("Call door front", Say(new Edit.RenameOpening("door", "front")));
        Assert.Equal("Take out lamp and Turn the roof by 15°", Say(new Edit.Several([new Edit.RemoveNiche("lamp"), new Edit.TurnRoof(new Angle(15))])));

        static string Say(Edit edit) => Phrasebook.English.Say(edit.What, UnitSystem.Imperial);
    }
}
