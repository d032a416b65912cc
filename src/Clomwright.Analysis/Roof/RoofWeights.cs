using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>What the parts of a roof weigh. Pa are square to the roof, on its own surface.</summary>
internal sealed record RoofWeights
{
    /// <summary>The poles' timber, or why it is not known.</summary>
    public required Known<Timber> Poles { get; init; }

    /// <summary>Deck boards, Pa; 0 without a deck.</summary>
    public required double Deck { get; init; }

    /// <summary>All layers dry, Pa; or why it is not known.</summary>
    public required Known<Calculated<double>> LayersDry { get; init; }

    /// <summary>All layers saturated, Pa; or why it is not known.</summary>
    public required Known<Calculated<double>> LayersWet { get; init; }

    /// <summary>Thickness of all layers, m.</summary>
    public required double Depth { get; init; }

    /// <summary>What closes the ring, Pa on plan.</summary>
    public required double Eye { get; init; }

    /// <summary>Green poles over dry ones.</summary>
    public required double Green { get; init; }

    /// <summary>The edge board, N for each metre of eave.</summary>
    public required double EdgeBoard { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>Weights of a roof as described.</summary>
    public static RoofWeights Of(Building.Roof roof, Building.Eye eye)
    {
        var assumptions = new List<Assumption>();
        Known<Timber> poles = Timber.Pole(roof.Species) is { } timber ? timber : Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(roof.Species)));
        var memory = Sources.Get("nds-memory");
        assumptions.Add(new("green-poles", new Message("analysis.assumed.green-poles"), Amount.Number(1.5), memory));
        var boards = poles.Value?.Weight.Value ?? 5500;
        if (roof.Deck is not null)
        {
            assumptions.Add(new("deck-weight", new Message("analysis.assumed.deck-weight"), Amount.Number(1), Sources.Get("mechanics")));
        }

        var practice = Sources.Get("common-practice");
        var cover = eye == Building.Eye.Closed ? 0 : 500.0;
        if (cover > 0)
        {
            assumptions.Add(new("eye-cover", new Message("analysis.assumed.eye-cover"), new Amount(cover, Dimension.AreaLoad), practice));
        }

        var board = 0.0;
        if (roof.EdgeBoard is { } height)
        {
            board = boards * height.Metres * 0.05;
            assumptions.Add(new("edge-board", new Message("analysis.assumed.edge-board"), Amount.Metres(0.05), practice));
        }

        var deck = (roof.Deck?.Metres ?? 0) * boards;
        return new RoofWeights
        {
            Poles = poles, Deck = deck, LayersDry = Layers(roof, wet: false, assumptions), LayersWet = Layers(roof, wet: true, []), Depth = roof.Layers.Sum(l => l.Depth.Metres),
            Eye = cover, Green = 1.5, EdgeBoard = board, Assumptions = assumptions.ToSequence(),
        };
    }

    private static Known<Calculated<double>> Layers(Building.Roof roof, bool wet, List<Assumption> assumptions)
    {
        var sheet = new Worksheet(wet ? "layers-wet" : "layers-dry");
        var terms = new List<Symbol>();
        double total = 0;
        for (var i = 0; i < roof.Layers.Count; i++)
        {
            var layer = roof.Layers[i];
            var material = RoofMaterial.Find(layer.Material);
            if (material is null && layer.Material is null && RoofMaterial.Named(layer.Name) is { } alike)
            {
                material = alike;
                assumptions.Add(new($"layer-{i + 1}", Message.Of("analysis.assumed.layer", ("layer", layer.Name), ("material", alike.Key)), alike.Key, Sources.Get("common-practice")));
            }

            if (material is null)
            {
                return Message.Of("analysis.roof.layer-unknown", ("layer", layer.Name), ("material", layer.Material ?? "-"));
            }

            var value = material.Weight(layer.Depth.Metres, wet);
            total += value;
            terms.Add(Term(sheet, i + 1, layer, material, wet, value));
        }

        if (terms.Count == 0)
        {
            sheet.Step("layers-total", "w", "0*w_0", 0, Dimension.AreaLoad, Sources.Get("mechanics"), Worksheet.Given("w_0", "no-layers", 0, Dimension.AreaLoad));
        }
        else
        {
            sheet.Step("layers-total", "w", string.Join(" + ", terms.Select(t => t.Name)), total, Dimension.AreaLoad, Sources.Get("mechanics"), [.. terms]);
        }

        return new Calculated<double>(total, sheet.Done);
    }

    private static Symbol Term(Worksheet sheet, int number, Building.Layer layer, RoofMaterial material, bool wet, double value)
    {
        var cited = wet ? material.Saturated : material.Dry;
        var source = Sources.Get("mechanics");
        if (material.IsSheet)
        {
            var weight = Worksheet.Cited($"s_{number}", "sheet-weight", cited, Dimension.AreaLoad);
            return sheet.Step("layer-weight", $"w_{number}", weight.Name, value, Dimension.AreaLoad, source, weight);
        }

        var density = Worksheet.Cited($"rho_{number}", "layer-density", cited with { Value = cited.Value / UsUnits.Gravity }, Dimension.Density);
        var depth = Worksheet.Given($"d_{number}", "layer-depth", layer.Depth.Metres, Dimension.Length);
        return sheet.Step("layer-weight", $"w_{number}", $"{density.Name}*g*{depth.Name}", value, Dimension.AreaLoad, source, density, UsUnits.GravitySymbol, depth);
    }
}
