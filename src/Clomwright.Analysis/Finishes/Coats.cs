using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Finishes;

/// <summary>The coats of one face: those that the author gives, else those that are usual, with what each takes.</summary>
internal sealed class Coats(House house, Face face, Symbol area, List<Assumption> assumed, List<Calculation> calculations)
{
    private readonly Volume? bucket = house.Mix.Batch?.BucketVolume;

    public Sequence<CoatResult> All() => house.Finishes.Where(f => f.Face == face).SelectMany(Of).ToSequence();

    private IEnumerable<CoatResult> Of(Finish finish)
    {
        var material = PlasterMaterial.Find(finish.Material);
        if (finish.Coats.Count > 0)
        {
            return finish.Coats.Select(coat => Result(finish, coat, Usual(material, coat.Role)));
        }

        if (material.Coats.Count == 0)
        {
            var role = finish.Depth is null ? CoatRole.Wash : CoatRole.Finish;
            return [Result(finish, new Coat(role, finish.Depth ?? Length.Zero), null)];
        }

        if (finish.Depth is null)
        {
            assumed.Add(new Assumption("plaster-thickness", Message.Of("analysis.assumed.plaster-thickness", ("material", finish.Material)), Amount.Metres(material.Usual!.Value), material.Usual!.Source));
        }

        assumed.Add(new Assumption("plaster-coats", Message.Of("analysis.assumed.plaster-coats", ("material", finish.Material)), Amount.Count(material.Coats.Count), Sources.Get("common-practice")));
        var whole = finish.Depth?.Metres ?? material.Usual!.Value;
        return material.Coats.Select(usual => Result(finish, new Coat(usual.Role, Length.Nearest(whole * usual.Share)), usual));
    }

    private static UsualCoat? Usual(PlasterMaterial material, CoatRole role) => material.Coats.FirstOrDefault(c => c.Role == role);

    private CoatResult Result(Finish finish, Coat coat, UsualCoat? usual)
    {
        var material = PlasterMaterial.Find(coat.Material ?? finish.Material);
        var panel = house.TestPanels.FirstOrDefault(p => p.Name == coat.Panel);
        var parts = coat.Parts ?? panel?.Parts ?? (coat.Depth > Length.Zero ? usual?.Parts : null);
        var isUsual = coat.Parts is null && panel is null && parts is not null;
        if (isUsual)
        {
            assumed.Add(new Assumption($"plaster-mix-{finish.Material}-{coat.Role.ToString().ToLowerInvariant()}", Message.Of("analysis.assumed.plaster-mix", ("material", new Argument.Material(finish.Material)), ("role", new Message($"analysis.coat.{coat.Role.ToString().ToLowerInvariant()}"))), new Argument.Quantity(Amount.Number(parts!.Sand ?? 0)), usual!.Source));
        }

        var result = new CoatResult
        {
            Role = coat.Role, Material = material.Key, Binder = material.Binder, Depth = coat.Depth.Metres, Passes = coat.Passes, Volume = 0, Parts = parts,
            PartsTag = isUsual ? Tag.Practice : Tag.Given, PartsSource = isUsual ? usual!.Source : null, Panel = panel?.Name,
            Batches = new Message(coat.Depth > Length.Zero ? "analysis.finishes.no-mix" : "analysis.finishes.by-brush"), Next = Next(material, coat),
        };
        return coat.Depth > Length.Zero ? Laid(result, coat, material) : result;
    }

    private CoatResult Laid(CoatResult result, Coat coat, PlasterMaterial material)
    {
        var sheet = new Worksheet("plaster-coat");
        var waste = PlasterMaterial.Number("waste-plaster");
        var volume = sheet.Step(
            "coat-volume", "V", "A*t*n*(1+w)", area.Value.Si * coat.Depth.Metres * coat.Passes * (1 + waste.Value), Dimension.Volume, Sources.Get("wall-geometry"), area,
            Worksheet.Given("t", "coat-thickness", coat.Depth.Metres, Dimension.Length), Worksheet.Given("n", "coat-passes", coat.Passes, Dimension.Count),
            Worksheet.Assumed("w", "waste-plaster", waste.Value, Dimension.Fraction, waste.Source));
        var known = result with { Volume = volume.Value.Si };
        if (result.Parts is { } parts && MixYield.Of(parts, sheet) is { } perBatch)
        {
            var laid = PlasterMaterial.Number("plaster-laid").Value * volume.Value.Si;
            known = known with
            {
                Batches = MixYield.Batches(volume, perBatch, bucket, sheet),
                Ingredients = MixYield.Loose(parts, volume.Value.Si, perBatch.Value.Si),
                Water = material is { Binder: Binder.Clay, Water: { } water } ? (water.Low.Value * laid, water.High.Value * laid) : null,
            };
        }

        calculations.Add(sheet.Done with { Place = $"{(face == Face.Inside ? "inside" : "outside")} face, {coat.Role.ToString().ToLowerInvariant()} coat" });
        return known;
    }

    private static Message Next(PlasterMaterial material, Coat coat) => (coat.Role, material.Binder) switch
    {
        (CoatRole.Slip, _) => new Message("analysis.finishes.next-slip"),
        (_, Binder.Lime) when material.Days is { } days => Message.Of(
            coat.Role switch { CoatRole.Wash => "analysis.finishes.next-wash", CoatRole.Finish => "analysis.finishes.next-lime-last", _ => "analysis.finishes.next-lime" },
            ("low", Amount.Count((long)days.Low.Value)), ("high", Amount.Count((long)days.High.Value))),
        (CoatRole.Scratch or CoatRole.Brown, Binder.Clay) => new Message("analysis.finishes.next-earth"),
        (_, Binder.Clay) => new Message("analysis.finishes.next-earth-last"),
        (_, Binder.Sealing) => new Message("analysis.finishes.next-sealing"),
        _ => new Message("analysis.finishes.next-unknown"),
    };
}
