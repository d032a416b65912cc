using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Json;
using static Clomwright.Files.Forms.Plain;

namespace Clomwright.Files.Shape;

/// <summary>How a whole house stands in the file. Reader, writer, schema, guide and the nearest known key all come from here.</summary>
internal static class HouseShape
{
    /// <summary>The format that this program writes, and the newest it reads.</summary>
    public const int Format = 1;

    public static Thing<House> House { get; } = MakeHouse();

    private static Thing<House> MakeHouse()
    {
        var format = Keys<House>.Needed("format", new FormatForm(), _ => Format);
        var id = Keys<House>.Needed("id", Text, h => h.Id);
        var name = Keys<House>.Needed("name", Text, h => h.Name);
        var notes = Keys<House>.MaybeThing("notes", Text, h => h.Notes, leavesOut: true);
        var units = Keys<House>.Or("units", new WordForm<UnitSystem>(), h => h.Units, UnitSystem.Imperial, leavesOut: true);
        var site = Keys<House>.Or("site", SiteShape.Site, h => h.Site, new Site(), leavesOut: true);
        var plan = Keys<House>.Needed("plan", PlanShape.Plan, h => h.Plan);
        var floor = Keys<House>.Or("floor", FinishShape.Floor, h => h.Floor, new Floor(), leavesOut: true);
        var trench = Keys<House>.MaybeThing("trench", SiteShape.Trench, h => h.Trench, leavesOut: true);
        var stem = Keys<House>.Needed("stem", WallShape.Stem, h => h.Stem);
        var wall = Keys<House>.Needed("wall", WallShape.Wall, h => h.Wall);
        var lifts = Keys<House>.Needed("lifts", WallShape.Lifts, h => h.Lifts);
        var openings = Keys<House>.List("openings", OpeningsShape.Opening, h => h.Openings, leavesOut: true);
        var niches = Keys<House>.List("niches", OpeningsShape.Niche, h => h.Niches, leavesOut: true);
        var embeds = Keys<House>.List("embeds", OpeningsShape.Embed, h => h.Embeds, leavesOut: true);
        var beam = Keys<House>.MaybeThing("bondBeam", WallShape.BondBeam, h => h.BondBeam, leavesOut: true);
        var tees = Keys<House>.MaybeThing("tees", WallShape.Tees, h => h.Tees, leavesOut: true);
        var roof = Keys<House>.MaybeThing("roof", RoofShape.Roof, h => h.Roof, leavesOut: true);
        var finishes = Keys<House>.List("finishes", FinishShape.Finish, h => h.Finishes, leavesOut: true);
        var panels = Keys<House>.List("testPanels", FinishShape.TestPanel, h => h.TestPanels, leavesOut: true);
        var stove = Keys<House>.MaybeThing("stove", CareShape.Stove, h => h.Stove, leavesOut: true);
        var comfort = Keys<House>.Or("comfort", ComfortShape.Comfort, h => h.Comfort, new Comfort(), leavesOut: true);
        var mix = Keys<House>.Or("mix", MixShape.Mix, h => h.Mix, new Mix(), leavesOut: true);
        var assumed = Keys<House>.List("assumed", MixShape.Assumed, h => h.Assumed, leavesOut: true);
        var currency = Keys<House>.MaybeThing("currency", Text, h => h.Currency, leavesOut: true);
        var prices = Keys<House>.List("prices", CareShape.Price, h => h.Prices, leavesOut: true);
        var crew = Keys<House>.MaybeThing("crew", MixShape.Crew, h => h.Crew, leavesOut: true);
        var rules = Keys<House>.Or("rules", RulesShape.Rules, h => h.Rules, new RuleChoices(), leavesOut: true);
        return new Thing<House>("house",
            [format, id, name, notes, units, site, plan, floor, trench, stem, wall, lifts, openings, niches, embeds, beam, tees, roof, finishes, panels, stove, comfort, mix, assumed, currency, prices, crew, rules],
            v => new House
            {
                Id = v.Of(id), Name = v.Of(name), Notes = v.Of(notes), Units = v.Of(units), Site = v.Of(site), Plan = v.Of(plan), Floor = v.Of(floor),
                Trench = v.Of(trench), Stem = v.Of(stem), Wall = v.Of(wall), Lifts = v.Of(lifts), Openings = v.Of(openings), Niches = v.Of(niches),
                Embeds = v.Of(embeds), BondBeam = v.Of(beam), Tees = v.Of(tees), Roof = v.Of(roof), Finishes = v.Of(finishes), TestPanels = v.Of(panels), Stove = v.Of(stove), Comfort = v.Of(comfort), Mix = v.Of(mix),
                Assumed = v.Of(assumed), Currency = v.Of(currency), Prices = v.Of(prices), Crew = v.Of(crew), Rules = v.Of(rules),
            });
    }

    /// <summary>The format number. Older ones have been brought up to date, and newer ones refused, before this is read.</summary>
    private sealed class FormatForm : Form<int>
    {
        public override Kind Kind { get; } = new Kind.Format(Format);

        public override bool TryRead(Node node, KeyPath path, Reading reading, out int value)
        {
            value = Format;
            return node is NumberNode { Value: Format } || reading.NotOfKind(path, node, "files.kind.format", ("newest", Format));
        }

        public override Piece Write(int value, UnitSystem units) => Piece.Of(value);
    }
}
