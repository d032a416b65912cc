using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry.TakeOff;

/// <summary>What to order, line by line, with the waste shares used.</summary>
internal static class OrderLines
{
    public static (Sequence<OrderLine> Lines, Sequence<Assumption> Assumptions) Of(HouseGeometry geometry, double? batches)
    {
        OrderLine[] lines = [.. Earth(geometry, batches), .. Stone(geometry), .. Timber(geometry), .. OpeningOrders.Of(geometry), .. Sundries(geometry)];
        return (lines.ToSequence(), lines.Where(l => l.Order is not null).Select(l => WasteOf(l.Key)).OfType<Assumption>().Distinct().ToSequence());
    }

    private static Assumption? WasteOf(string key) => key switch
    {
        "soil" or "clay" or "sand" => Wastes.Heap,
        "straw" => Wastes.Straw,
        "stem-stone" => Wastes.Stone,
        "trench-gravel" => Wastes.Gravel,
        "drain-pipe" or "filter-fabric" or "grade-beam" => Wastes.Drain,
        "bond-beam" or "header-timber" or "frame-timber" or "cross-pads" or "brace-battens" => Wastes.Timber,
        "bottles" => Wastes.Bottles,
        _ => null,
    };

    private static IEnumerable<OrderLine> Earth(HouseGeometry geometry, double? batches)
    {
        var (recipe, bucket) = (geometry.House.Mix.Recipe, geometry.House.Mix.Batch?.BucketVolume);
        yield return Buckets("soil", new Message("geometry.order.soil"), recipe.Soil);
        if (recipe.Clay is not null)
        {
            yield return Buckets("clay", new Message("geometry.order.clay"), recipe.Clay);
        }

        yield return Buckets("sand", new Message("geometry.order.sand"), recipe.Sand);
        yield return Buckets("water", new Message("geometry.order.water"), recipe.Water);
        yield return recipe.Straw is not { Kilograms: >= 0 } straw ? Unknown("straw", new Message("geometry.order.straw"), "straw", new Message("geometry.basis.recipe-missing"))
            : batches is not { } count ? Unknown("straw", new Message("geometry.order.straw"), "straw", new Message("geometry.basis.batch-missing"))
            : Line("straw", new Message("geometry.order.straw"), "straw", new Mass(straw.Kilograms * count), Message.Of("geometry.basis.straw", ("batches", Amount.Number(count)), ("straw", (Amount)straw)));

        OrderLine Buckets(string key, Message what, double? buckets) =>
            buckets is not >= 0 ? Unknown(key, what, "earth", new Message("geometry.basis.recipe-missing"))
            : batches is not { } count || bucket is not { CubicMetres: > 0 } size ? Unknown(key, what, "earth", new Message("geometry.basis.batch-missing"))
            : Line(key, what, "earth", new Volume(buckets.Value * count * size.CubicMetres),
                Message.Of("geometry.basis.buckets", ("batches", Amount.Number(count)), ("buckets", Amount.Number(buckets.Value)), ("bucket", (Amount)size)));
    }

    private static IEnumerable<OrderLine> Stone(HouseGeometry geometry)
    {
        var (house, wall, curve) = (geometry.House, geometry.Wall, geometry.Curve);
        var stone = Message.Of("geometry.order.stem-stone", ("material", new Argument.Material(house.Stem.Material)));
        if (house.Stem.Width.Nanometres <= 0)
        {
            yield break;
        }

        var (inside, outside) = WallBands.Stem(house.Stem, wall);
        yield return house.Site.Grade is not { } grade ? Unknown("stem-stone", stone, "stone", new Message("geometry.basis.grade-missing"))
            : !(grade.Metres < wall.Base.Metres && grade.Metres > -Curves.PlanCurves.SizeMax) ? Unknown("stem-stone", stone, "stone", new Message("geometry.basis.stem-below-grade"))
            : Line("stem-stone", stone, "stone", new Volume(StemVolume(geometry, grade.Metres, inside, outside)), Message.Of("geometry.basis.stem", ("width", house.Stem.Width), ("from", grade), ("to", wall.Base)));

        if (house.Trench is { Width.Nanometres: > 0, Depth.Nanometres: > 0 } trench)
        {
            var middle = (inside + outside) / 2;
            var ring = curve.OffsetLength(middle);
            var drain = DrainLine.Of(geometry) is { Fall: > 0 } falls ? falls : null;
            var depth = Math.Max(0, trench.Depth.Metres + (drain?.MeanExtra ?? 0));
            var beam = trench.GradeBeam is { Width.Nanometres: > 0, Depth.Nanometres: > 0 } made ? made.Width.Metres * made.Depth.Metres : 0;
            yield return Line("trench-gravel", new Message("geometry.order.trench-gravel"), "stone", new Volume(Math.Max(0, (trench.Width.Metres * depth - beam) * ring)),
                Message.Of("geometry.basis.trench", ("width", trench.Width), ("depth", Amount.Metres(depth)), ("length", Amount.Metres(ring))));
            if (beam > 0)
            {
                yield return Line("grade-beam", new Message("geometry.order.grade-beam"), "stone", new Volume(beam * ring), Message.Of("geometry.basis.grade-beam", ("width", trench.GradeBeam!.Width), ("depth", trench.GradeBeam.Depth)));
            }

            foreach (var line in Drain(trench, ring, depth))
            {
                yield return line;
            }
        }
    }

    /// <summary>Pipe all round and on to its outlet; fabric round the stone, its two edges laid over each other on top.</summary>
    private static IEnumerable<OrderLine> Drain(Trench trench, double ring, double depth)
    {
        if (trench.OutletRun is { Nanometres: >= 0 } run)
        {
            yield return Line("drain-pipe", new Message("geometry.order.drain-pipe"), "stone", Amount.Metres(ring + run.Metres), Message.Of("geometry.basis.drain-pipe", ("ring", Amount.Metres(ring)), ("run", run)));
            yield return Line("drain-junction", new Message("geometry.order.drain-junction"), "stone", Amount.Count(1), new Message("geometry.basis.drain-junction"));
            yield return Line("drain-end", new Message("geometry.order.drain-end"), "stone", Amount.Count(1), new Message("geometry.basis.drain-end"));
        }
        else
        {
            yield return Unknown("drain-pipe", new Message("geometry.order.drain-pipe"), "stone", Message.Of("geometry.basis.drain-run", ("ring", Amount.Metres(ring))));
        }

        var round = 2 * (trench.Width.Metres + depth) + FabricLap;
        yield return Line("filter-fabric", new Message("geometry.order.filter-fabric"), "stone", new Area(round * ring), Message.Of("geometry.basis.filter-fabric", ("round", Amount.Metres(round)), ("length", Amount.Metres(ring))));
    }

    /// <summary>By which the edges of the fabric lie over each other, m; common practice, no source.</summary>
    private const double FabricLap = 0.3;

    /// <summary>The stem from outside grade to its top, less the doors and low sills that cut it.</summary>
    private static double StemVolume(HouseGeometry geometry, double grade, double inside, double outside)
    {
        var (wall, curve) = (geometry.Wall, geometry.Curve);
        var stem = new Band(grade, wall.Base.Metres, inside, inside, outside, outside);
        return Math.Max(0, stem.Volume(curve) - geometry.Openings.Where(o => o.Sill < wall.Base.Metres).Sum(Cut));

        double Cut(OpeningPlace place)
        {
            var rough = new Shaft(curve, place.Station, place.Opening.Width.Metres / 2, 0, 0, 0, 0);
            var hole = new Hole(rough, Outline.Rectangle(place.Sill, wall.Base.Metres - place.Sill), inside, outside);
            return hole.Fits ? hole.Volume(stem) : 0;
        }
    }

    private static IEnumerable<OrderLine> Timber(HouseGeometry geometry)
    {
        foreach (var section in geometry.Openings.Where(o => o.Header is not null).GroupBy(o => (o.Opening.Header!.Width, o.Opening.Header.Depth, o.Opening.Header.Material)))
        {
            var length = section.Sum(o => o.Opening.Header!.Pieces * o.Header!.Length);
            var what = Message.Of("geometry.order.header-timber", ("width", section.Key.Width), ("depth", section.Key.Depth), ("material", new Argument.Material(section.Key.Material)));
            yield return Line("header-timber", what, "timber", Amount.Metres(length), Message.Of("geometry.basis.headers", ("pieces", section.Sum(o => o.Opening.Header!.Pieces))));
        }

        if (geometry.House.BondBeam is { } beam)
        {
            var length = geometry.Curve.OffsetLength(BeamLine.Of(geometry.House, geometry.Wall));
            var what = Message.Of("geometry.order.bond-beam", ("width", beam.Width), ("depth", beam.Depth), ("material", new Argument.Material(beam.Material)));
            yield return Line("bond-beam", what, "timber", Amount.Metres(length), new Message("geometry.basis.bond-beam"));
        }

        if (geometry.Tees.Count > 0)
        {
            yield return Line("tees", new Message("geometry.order.tees"), "timber", Amount.Count(geometry.Tees.Count), OfTees(geometry));
        }
    }

    /// <summary>What the tees are cut from: legs as long as they reach down and through the bond beam, and bars.</summary>
    private static Message OfTees(HouseGeometry geometry)
    {
        if (geometry.House.Tees is not { Timber: { } side } made)
        {
            return new Message("geometry.basis.tees-unsized");
        }

        var leg = made.Depth.Metres + (geometry.House.BondBeam?.Depth.Metres ?? 0);
        return Message.Of(
            "geometry.basis.tees", ("side", side), ("material", new Argument.Material(made.Material)), ("leg", Amount.Metres(leg)), ("bar", made.Bar),
            ("whole", Amount.Metres(geometry.Tees.Count * (leg + made.Bar.Metres))));
    }

    private static IEnumerable<OrderLine> Sundries(HouseGeometry geometry)
    {
        // One through the wall is made of two, mouth to mouth.
        var bottles = geometry.Embeds.Where(e => e.Embed.Kind == EmbedKind.Bottle).Sum(e => e.Embed.Through ? 2 : 1);
        if (bottles > 0)
        {
            yield return Line("bottles", new Message("geometry.order.bottles"), "sundries", Amount.Count(bottles), new Message("geometry.basis.bottles"));
        }
    }

    /// <summary>A line with the waste of its key; what is counted comes whole.</summary>
    internal static OrderLine Line(string key, Message what, string supplier, Amount net, Message basis) => OrderLine.Of(key, what, supplier, net, WasteOf(key)?.Share() ?? 0, basis);

    /// <summary>A line of which nobody knows how much.</summary>
    internal static OrderLine Unknown(string key, Message what, string supplier, Message why) => OrderLine.Unknown(key, what, supplier, why, WasteOf(key)?.Share() ?? 0);
}
