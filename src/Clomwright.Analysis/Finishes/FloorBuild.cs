using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Finishes;

/// <summary>The floor layer by layer from the ground that it is dug to.</summary>
internal sealed class FloorBuild(HouseGeometry geometry, List<Assumption> assumed, List<Calculation> calculations)
{
    private static readonly Source Own = Sources.Get("wall-geometry");
    private readonly House house = geometry.House;

    public Known<FloorResult> Of()
    {
        if (house.Floor.Layers.Count == 0)
        {
            return new Message("analysis.finishes.no-floor");
        }

        var area = Area();
        var deep = house.Floor.Layers.Sum(l => l.Depth.Metres);
        var layers = new List<FloorLayerResult>();
        var bottom = -deep;
        for (var i = 0; i < house.Floor.Layers.Count; i++)
        {
            layers.Add(Layer(i, bottom, area));
            bottom += house.Floor.Layers[i].Depth.Metres;
        }

        return new FloorResult
        {
            Area = area.Value.Si, Formation = -deep, Layers = layers.ToSequence(), EarthOverGrade = EarthOverGrade(layers), StemOverFloor = house.Stem.Top.Metres,
            Oil = house.Floor.Oil is { } oil ? Oil(oil, area) : null,
            Doors = house.Openings.Where(o => o.Kind == OpeningKind.Door).Select(Door).ToSequence(),
        };
    }

    /// <summary>Inside the stem. What runs on into the doorways is not counted.</summary>
    private Symbol Area()
    {
        var offset = geometry.Stem.Inside;
        var sheet = new Worksheet("floor-area");
        var area = sheet.Step("floor-area", "A", "A_0 + L_0*d + pi*d^2", geometry.Curve.OffsetArea(offset), Dimension.Area, Own,
            Worksheet.Computed("A_0", "inside-area", geometry.Curve.Area, Dimension.Area), Worksheet.Computed("L_0", "inside-length", geometry.Curve.Length, Dimension.Length),
            Worksheet.Computed("d", "stem-inside", offset, Dimension.Length));
        calculations.Add(sheet.Done);
        return area;
    }

    private FloorLayerResult Layer(int index, double bottom, Symbol area)
    {
        var layer = house.Floor.Layers[index];
        var depth = layer.Depth.Metres;
        var isEarth = layer.Role is FloorRole.Base or FloorRole.Finish;
        var waste = PlasterMaterial.Number(isEarth ? "waste-floor-earth" : "waste-floor-stone");
        var sheet = new Worksheet("floor-layer");
        var volume = sheet.Step("layer-volume", "V", "A*t*(1+w)", area.Value.Si * depth * (1 + waste.Value), Dimension.Volume, Own, area,
            Worksheet.Given("t", "layer-thickness", depth, Dimension.Length), Worksheet.Assumed("w", isEarth ? "waste-floor-earth" : "waste-floor-stone", waste.Value, Dimension.Fraction, waste.Source));
        var usual = isEarth && layer.Parts is null ? PlasterMaterial.FloorMix(layer.Role!.Value) : null;
        var parts = layer.Parts ?? usual?.Parts;
        if (usual is not null)
        {
            assumed.Add(new Assumption($"floor-mix-{layer.Role.ToString()!.ToLowerInvariant()}", Message.Of("analysis.assumed.floor-mix", ("layer", layer.Name)), Amount.Number(usual.Parts.Sand ?? 0), usual.Source));
        }

        var result = new FloorLayerResult
        {
            Layer = layer, Bottom = bottom, Top = bottom + depth, Volume = area.Value.Si * depth, Brought = volume.Value.Si, Parts = parts, PartsSource = usual?.Source,
            Batches = new Message(isEarth ? "analysis.finishes.no-mix" : "analysis.finishes.not-mixed"), Days = isEarth ? Days(depth) : null,
        };
        if (isEarth && parts is not null && MixYield.Of(parts, sheet) is { } perBatch)
        {
            var loose = MixYield.Loose(parts, volume.Value.Si, perBatch.Value.Si);
            result = result with { Batches = MixYield.Batches(volume, perBatch, house.Mix.Batch?.BucketVolume, sheet), Ingredients = loose, Brought = loose.Where(i => i.Key is "clay" or "sand").Sum(i => i.Volume) };
        }

        if (depth > 0)
        {
            calculations.Add(sheet.Done with { Place = layer.Name });
        }

        if (depth == 0)
        {
            var lap = PlasterMaterial.Number("waste-floor-sheet").Value;
            result = result with { Sheet = (area.Value.Si + geometry.Curve.OffsetLength(geometry.Stem.Inside) * -bottom) * (1 + lap) };
        }

        return result with { Trucks = house.Mix.Measures.Truck is { CubicMetres: > 0 } truck && depth > 0 ? result.Brought / truck.CubicMetres : null };
    }

    /// <summary>Each inch layer dry before the next.</summary>
    private static (double Low, double High) Days(double depth)
    {
        var layers = Math.Ceiling(depth / PlasterMaterial.Number("floor-layer").Value - 1e-6);
        return (layers * PlasterMaterial.Number("floor-days-low").Value, layers * PlasterMaterial.Number("floor-days-high").Value);
    }

    private Known<Calculated<double>> EarthOverGrade(List<FloorLayerResult> layers)
    {
        if (house.Site.Grade is not { } grade)
        {
            return new Message("analysis.foundation.no-grade");
        }

        if (layers.Find(l => l.Layer.Role is FloorRole.Base or FloorRole.Finish) is not { } earth)
        {
            return new Message("analysis.finishes.no-earth-layer");
        }

        var sheet = new Worksheet("floor-over-grade");
        var over = sheet.Step("floor-over-grade", "h", "z_e - z_g", earth.Bottom - grade.Metres, Dimension.Length, Own,
            Worksheet.Computed("z_e", "earth-bottom", earth.Bottom, Dimension.Length), Worksheet.Given("z_g", "grade", grade.Metres, Dimension.Length));
        calculations.Add(sheet.Done);
        return new Calculated<double>(over.Value.Si, sheet.Done);
    }

    private double Oil(FloorOil oil, Symbol area)
    {
        var rate = PlasterMaterial.Number("oil-per-coat");
        assumed.Add(new Assumption("floor-oil", new Message("analysis.assumed.floor-oil"), Amount.Metres(rate.Value), rate.Source));
        var sheet = new Worksheet("floor-oil");
        var volume = sheet.Step("floor-oil", "V", "A*o*n", area.Value.Si * rate.Value * oil.Coats, Dimension.Volume, rate.Source, area,
            Worksheet.Assumed("o", "oil-per-coat", rate.Value, Dimension.Length, rate.Source), Worksheet.Given("n", "oil-coats", oil.Coats, Dimension.Count));
        calculations.Add(sheet.Done);
        return volume.Value.Si;
    }

    private DoorLevel Door(Opening door) => new(door.Name, door.Sill.Metres, Clear(door));

    private Known<Calculated<double>> Clear(Opening door)
    {
        if (door.Leaf is not { } leaf)
        {
            return new Message("analysis.finishes.no-leaf");
        }

        if (leaf is { Swing: Swing.Out, Step: null })
        {
            return new Message("analysis.finishes.no-step");
        }

        var under = leaf.Swing == Swing.Out ? leaf.Step!.Value.Metres : 0;
        var sheet = new Worksheet("door-clear");
        var clear = sheet.Step("door-clear", "c", "z_l - z_f", leaf.Bottom.Metres - under, Dimension.Length, Own,
            Worksheet.Given("z_l", "leaf-bottom", leaf.Bottom.Metres, Dimension.Length), Worksheet.Given("z_f", "swept-level", under, Dimension.Length));
        calculations.Add(sheet.Done with { Place = door.Name });
        return new Calculated<double>(clear.Value.Si, sheet.Done);
    }
}
