using Clomwright.Analysis.Finishes;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>Takes the described house apart into parts of one build-up and one direction each.</summary>
internal sealed class ShellParts
{
    private const int Stations = 144, Bands = 12, Winds = 8;
    private const double FloorEarth = 1800;
    private readonly HouseGeometry geometry;
    private readonly House house;
    private readonly RoofResult roof;
    private readonly ComfortNumbers numbers;
    private readonly double dryDensity;
    private readonly List<Assumption> assumed = [];

    public ShellParts(HouseGeometry geometry, RoofResult roof, ComfortNumbers numbers, double dryDensity)
    {
        (this.geometry, house, this.roof, this.numbers, this.dryDensity) = (geometry, geometry.House, roof, numbers, dryDensity);
        Pitch = roof.Reciprocal.Value?.Geometry.MeanRadialPitch ?? (roof.Plain.Value is { } plain ? plain.Rafters.Average(r => r.Pitch) : 0);
    }

    /// <summary>What nobody gave.</summary>
    public Sequence<Assumption> Assumptions => assumed.DistinctBy(a => (a.Key, a.Value)).ToSequence();

    /// <summary>Slope of the roof, rad.</summary>
    public double Pitch { get; }

    /// <summary>The eave; null without a roof.</summary>
    public EaveEdge? Eave => house.Roof is not { } over ? null : new EaveEdge(
        house.Wall.Top.Metres + (house.BondBeam?.Depth.Metres ?? 0) - over.Eave.Metres * Math.Tan(Pitch), geometry.Wall.OutsideOffset(house.Wall.Top.Metres) + over.Eave.Metres);

    /// <summary>Conductivity of this cob at rest, with what told it.</summary>
    public (double Value, Tag Tag, Source? Source) Cob => house.Assumed.LastOrDefault(a => a.Key == ComfortNumbers.Cob) is { } said
        ? (said.Value, Tag.Given, null)
        : (ThermalMaterial.OfEarth(dryDensity).Value, Tag.Assumed, ThermalMaterial.OfEarth(dryDensity).Source);

    /// <summary>Cob of a thickness.</summary>
    /// <param name="depth">m.</param>
    /// <param name="water">Above rest, share of the dry mass.</param>
    public HeatLayer CobOf(double depth, double water = 0)
    {
        var (value, tag, source) = Cob;
        return new("cob", depth, value * (1 + numbers["comfort-water-share"] * water), dryDensity * (1 + water),
            (ThermalMaterial.EarthCapacity + ThermalMaterial.WaterCapacity * water) / (1 + water), 8, tag, source);
    }

    /// <summary>Plaster, cob, plaster and what lines them, from inside out.</summary>
    public BuildUp Wall(double thickness, Lining? inside = null, Lining? outside = null, double water = 0) => new(
        [.. Plaster(Face.Inside), .. Of(inside), CobOf(thickness, water), .. Of(outside), .. Plaster(Face.Outside)], numbers["comfort-film-wall"], numbers["comfort-film-outside"]);

    public BuildUp Stem(Lining? inside, Lining? outside) => new(
        [.. Of(inside), Layer(house.Stem.Material, house.Stem.Material, house.Stem.Width.Metres, wet: false), .. Of(outside)], numbers["comfort-film-wall"], numbers["comfort-film-outside"]);

    /// <summary>Deck and layers; null without a roof or where nothing of it is described.</summary>
    public BuildUp? Roof(bool wet)
    {
        var layers = new List<HeatLayer>();
        if (house.Roof?.Deck is { } deck)
        {
            layers.Add(Layer("deck", "timber", deck.Metres, wet: false));
        }

        foreach (var layer in house.Roof?.Layers ?? [])
        {
            layers.Add(Layer(layer.Name, layer.Material ?? Guess(layer.Name, "growing-medium"), layer.Depth.Metres, wet));
        }

        return layers.Count == 0 ? null : new(layers.ToSequence(), numbers["comfort-film-up"], numbers["comfort-film-outside"]);
    }

    /// <summary>What lies on the ground, from the finished floor down.</summary>
    public Sequence<HeatLayer> Floor() => house.Floor.Layers.Reverse().Where(l => l.Depth.Metres > 0).Select(l =>
    {
        if (l.Material is null && (l.Role is FloorRole.Base or FloorRole.Finish || l.Role is null && !l.Name.Contains("gravel", StringComparison.OrdinalIgnoreCase)))
        {
            var earth = ThermalMaterial.OfEarth(FloorEarth);
            return new HeatLayer(l.Name, l.Depth.Metres, earth.Value, FloorEarth, ThermalMaterial.EarthCapacity, 8, Tag.Assumed, earth.Source);
        }

        return Layer(l.Name, l.Material ?? Guess(l.Name, l.Role == FloorRole.Insulation ? "pumice" : "gravel"), l.Depth.Metres, wet: false);
    }).ToSequence();

    /// <summary>Conductivity of the ground, W/(m K).</summary>
    public double Ground => ThermalMaterial.Ground(house.Site.Soil?.Class)?.Value ?? numbers["comfort-ground"];

    public GroundHeat GroundHeat()
    {
        var edge = house.Comfort.FloorEdge;
        var layer = edge is null ? null : Layer(edge.Material, edge.Material, edge.Thickness.Metres, wet: false);
        return new(
            geometry.Curve.Area, geometry.Curve.Length, house.Stem.Width.Metres, Ground, Floor().Sum(l => l.Resistance), numbers["comfort-film-down"], numbers["comfort-film-outside"])
        {
            // ISO 13370: what the insulation adds over the ground that it takes the place of.
            EdgeResistance = layer is null ? 0 : Math.Max(0, layer.Resistance - layer.Depth / Ground), EdgeDepth = edge?.Depth.Metres ?? 0,
        };
    }

    /// <summary>Every part of the shell but edges and air.</summary>
    /// <param name="wetRoof">Whether the roof's layers are soaked.</param>
    /// <param name="windows">Windows and doors.</param>
    public Sequence<RoomElement> Elements(bool wetRoof, Sequence<WindowHeat> windows)
    {
        var (taken, all) = (numbers["comfort-sun-taken"], new List<RoomElement>());
        foreach (var piece in WallPieces())
        {
            all.Add(new(PartKind.Wall, piece.Name, piece.Area, Wall(piece.Thickness, piece.Inside, piece.Outside), piece.Facing) { Taken = taken });
        }

        foreach (var piece in StemPieces())
        {
            all.Add(new(PartKind.Stem, piece.Name, piece.Area, Stem(piece.Inside, piece.Outside), piece.Facing) { Taken = taken });
        }

        var eye = house.Roof is Building.Roof.Reciprocal { Eye: Eye.Glazed } r ? Math.PI * r.RingRadius.Metres * r.RingRadius.Metres
            : house.Roof is Building.Roof.Radial { Eye: Eye.Glazed } radial ? Math.PI * radial.RingRadius.Metres * radial.RingRadius.Metres : 0;
        var under = Math.Max(0, geometry.Curve.OffsetArea(geometry.Wall.InsideOffset(house.Wall.Top.Metres)) - eye);
        if (Roof(wetRoof) is { } up)
        {
            all.Add(new(PartKind.Roof, "roof", under / Math.Cos(Pitch), up, null) { Taken = taken });
        }

        if (eye > 0)
        {
            all.Add(Light(PartKind.Roof, "eye", eye, Glass(null).Transmittance.Value, null, numbers["comfort-film-up"]));
        }

        var ground = GroundHeat();
        all.Add(FloorElement(ground));
        foreach (var (window, place) in windows.Zip(geometry.Openings))
        {
            var facing = Math.Atan2(place.Normal.East, place.Normal.North);
            all.Add(Light(PartKind.Openings, window.Opening, window.Area, window.Transmittance, facing, numbers["comfort-film-wall"]));
        }

        if (BottleArea is > 0 and var bottles)
        {
            all.Add(Light(PartKind.Openings, "bottles", bottles, numbers["comfort-bottle"], null, numbers["comfort-film-wall"]));
        }

        return all.ToSequence();
    }

    /// <summary>Bottles that go through the wall, m2.</summary>
    public double BottleArea => geometry.Embeds.Where(e => e.Embed is { Kind: EmbedKind.Bottle, Through: true }).Sum(e => Math.PI / 4 * Math.Pow(e.Embed.Width?.Metres ?? 0.08, 2));

    public Glazing Glass(Opening? opening)
    {
        var key = opening?.Glazing ?? house.Comfort.Glazing;
        if (ThermalMaterial.Glass(key) is { } known)
        {
            return known;
        }

        var usual = ThermalMaterial.Glass("double")!;
        assumed.Add(new Assumption("comfort-glazing", new Message("analysis.assumed.comfort-glazing"), "double", usual.Transmittance.Source));
        return usual;
    }

    public Sequence<WindowHeat> Windows() => geometry.Openings.Select(place => WindowHeat.Of(place.Opening, LightShaft.Of(geometry, place) is var shaft ? shaft.Area(shaft.Glass) : 0, Glass(place.Opening), numbers)).ToSequence();

    /// <summary>The floor, half a metre of ground, and what makes up the rest of the standard's resistance.</summary>
    private RoomElement FloorElement(GroundHeat ground)
    {
        var (layers, film) = (Floor(), numbers["comfort-film-down"]);
        var whole = 1 / ground.Transmittance;
        var above = film + layers.Sum(l => l.Resistance);
        var depth = Math.Min(0.5, Math.Max(0.05, (whole - above - 0.05) * ground.Ground));
        var earth = new HeatLayer("ground", depth, ground.Ground, 1800, numbers["comfort-ground-capacity"] / 1800, 50, Tag.Assumed, Sources.Get("iso-13370-memory"));
        return new(PartKind.Floor, "floor", ground.Area, new([.. layers, earth], film, Math.Max(0.001, whole - above - earth.Resistance)), null);
    }

    private static RoomElement Light(PartKind kind, string name, double area, double transmittance, double? facing, double film)
    {
        const double outside = 0.04;
        return new(kind, name, area, new([], film, outside), facing) { Light = Math.Max(0.001, 1 / transmittance - film - outside) };
    }

    /// <summary>Pieces of cob by direction and lining: area through the middle of the wall, net of openings.</summary>
    public IReadOnlyList<WallPiece> WallPieces()
    {
        var (low, high) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        return Pieces(low, high, Winds, z => geometry.Wall.ThicknessAt(z));
    }

    private IReadOnlyList<WallPiece> StemPieces() =>
        Pieces(Math.Max(0, house.Site.Grade?.Metres ?? 0), house.Stem.Top.Metres, Winds / 2, _ => house.Stem.Width.Metres);

    private IReadOnlyList<WallPiece> Pieces(double low, double high, int winds, Func<double, double> thickness)
    {
        if (!(high > low))
        {
            return [];
        }

        var (ds, dz) = (geometry.Curve.Length / Stations, (high - low) / Bands);
        var holes = geometry.Openings.Select(o => (Place: o, Shaft: LightShaft.Of(geometry, o))).ToArray();
        var found = new Dictionary<(int Wind, Lining? In, Lining? Out), (double Area, double Depth, double Sin, double Cos)>();
        var (gross, net) = (0.0, 0.0);
        for (var i = 0; i < Stations; i++)
        {
            var station = (i + 0.5) * ds;
            var point = geometry.Curve.At(station);
            var normal = geometry.Curve.Normal(station);
            var azimuth = Math.Atan2(normal.East, normal.North);
            var wind = ((int)Math.Round(azimuth / (2 * Math.PI) * winds) + winds) % winds * (Winds / winds);
            var bearing = geometry.Curve.BearingOf(point);
            for (var j = 0; j < Bands; j++)
            {
                var z = low + (j + 0.5) * dz;
                var t = thickness(z);
                var area = geometry.Curve.OffsetArc(i * ds, (i + 1) * ds, geometry.Wall.InsideOffset(z) + t / 2) * dz;
                gross += area;
                if (holes.Any(h => Covers(h.Place, h.Shaft, station, z)))
                {
                    continue;
                }

                net += area;
                var key = (wind, Lined(Face.Inside, bearing, z), Lined(Face.Outside, bearing, z));
                var sum = found.GetValueOrDefault(key);
                found[key] = (sum.Area + area, sum.Depth + area * t, sum.Sin + area * normal.East, sum.Cos + area * normal.North);
            }
        }

        // The cells that openings cover tell where; how much, the openings' own outlines.
        var cut = holes.Sum(h => Overlap(h.Shaft, low, high));
        var scale = net > 0 ? Math.Max(0, gross - cut) / net : 0;
        return [.. found.Where(f => f.Value.Area > 0).OrderBy(f => f.Key.Wind).Select(f => new WallPiece(
            Name(f.Key.Wind, f.Key.In, f.Key.Out), f.Value.Area * scale, f.Value.Depth / f.Value.Area, Math.Atan2(f.Value.Sin, f.Value.Cos), f.Key.In, f.Key.Out))];
    }

    private bool Covers(OpeningPlace place, LightShaft shaft, double station, double z)
    {
        var ring = geometry.Curve.Length;
        var off = (station - place.Station) % ring;
        off -= ring * Math.Round(off / ring);
        var half = place.Opening.Width.Metres / 2;
        if (Math.Abs(off) >= half)
        {
            return false;
        }

        var (low, high) = shaft.HeightsAt(off / half);
        return z > low && z < high;
    }

    private static double Overlap(LightShaft shaft, double low, double high)
    {
        var whole = shaft.Area(shaft.Glass);
        var reach = Math.Max(0, Math.Min(high, shaft.Head) - Math.Max(low, shaft.Sill));
        return shaft.Head > shaft.Sill ? whole * reach / (shaft.Head - shaft.Sill) : 0;
    }

    /// <summary>The lining of a face at a bearing and height; null where there is none.</summary>
    private Lining? Lined(Face face, double bearing, double z) => house.Comfort.Linings.FirstOrDefault(l => l.Face == face && Covers(l, z) && Within(l, bearing));

    /// <summary>Whether a lining is there at a height.</summary>
    public bool Covers(Lining lining, double z) => z >= (lining.Bottom?.Metres ?? geometry.Wall.Base.Metres) && z <= (lining.Top?.Metres ?? geometry.Wall.Top.Metres);

    /// <summary>Every lining at a bearing, whatever its height.</summary>
    public Sequence<Lining> LinedAt(double bearing) => house.Comfort.Linings.Where(l => Within(l, bearing)).ToSequence();

    private static bool Within(Lining lining, double bearing)
    {
        if (lining.From is not { } from || lining.To is not { } to)
        {
            return true;
        }

        double Turned(double a) => (a % (2 * Math.PI) + 2 * Math.PI) % (2 * Math.PI);
        return Turned(bearing - from.Radians) <= Turned(to.Radians - from.Radians);
    }

    private static string Name(int wind, Lining? inside, Lining? outside)
    {
        string[] winds = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];
        return string.Join(" + ", new[] { winds[wind], inside?.Name, outside?.Name }.Where(n => n is not null));
    }

    private IEnumerable<HeatLayer> Plaster(Face face)
    {
        foreach (var finish in house.Finishes.Where(f => f.Face == face))
        {
            var depth = finish.Thickness?.Metres ?? PlasterMaterial.Find(finish.Material).Usual?.Value ?? 0;
            if (depth > 0 && ThermalMaterial.Find(finish.Material) is not null)
            {
                yield return Layer(finish.Material, finish.Material, depth, wet: false);
            }
        }
    }

    public HeatLayer LayerOf(Lining lining) => Layer(lining.Name, lining.Material, lining.Depth.Metres, wet: false);

    private IEnumerable<HeatLayer> Of(Lining? lining) => lining is null ? [] : [LayerOf(lining)];

    private HeatLayer Layer(string name, string key, double depth, bool wet)
    {
        var material = ThermalMaterial.Find(key);
        if (material is null)
        {
            material = ThermalMaterial.Find("ordinary-earth")!;
            assumed.Add(new Assumption("comfort-unknown-material", Message.Of("analysis.assumed.comfort-unknown-material", ("layer", name)), key, Sources.Get("comfort-judgement")));
        }

        var value = wet ? material.Wet : material.Conductivity;
        return new(name, depth, value.Value, material.Density, material.Capacity, material.Vapour, value.Tag, value.Source);
    }

    private string Guess(string name, string usual)
    {
        var key = ThermalMaterial.Keys.FirstOrDefault(k => name.Contains(k.Replace('-', ' '), StringComparison.OrdinalIgnoreCase)) ?? Loads.RoofMaterial.Named(name)?.Key ?? usual;
        assumed.Add(new Assumption("comfort-layer", Message.Of("analysis.assumed.comfort-layer", ("layer", name)), key, Sources.Get("comfort-judgement")));
        return key;
    }
}

/// <summary>A piece of the wall.</summary>
internal sealed record WallPiece(string Name, double Area, double Thickness, double Facing, Lining? Inside, Lining? Outside);
