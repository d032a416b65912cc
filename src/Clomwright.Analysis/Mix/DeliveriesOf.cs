using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Mix;

/// <summary>Turns what is ordered into what comes through the gate. Volumes of orders are as buckets are filled: loose and damp.</summary>
internal static class DeliveriesOf
{
    public static (Sequence<Delivery> Deliveries, Sequence<Assumption> Assumptions) Orders(Building.Mix mix, HouseQuantities quantities)
    {
        List<Assumption> assumed = [];
        var deliveries = quantities.Orders.Where(o => o.Order is not null).Select(o => o.Key switch
        {
            "soil" => Heap(o, mix.Measures.SoilBucket, mix.SoilTests.Moisture?.OfOne),
            "sand" => Heap(o, mix.Measures.SandBucket, mix.SoilTests.SandMoisture?.OfOne),
            "clay" => Heap(o, mix.Measures.ClayBucket, 0),
            "straw" => Straw(o),
            "water" => new Delivery(o.Key, o.Order!.Value.Si * 1000, Tag.Computed, null, "", [new Message("analysis.delivery.water")]),
            _ => null,
        }).OfType<Delivery>().ToSequence();
        return (deliveries, assumed.Distinct().ToSequence());

        Delivery Heap(OrderLine line, Mass? bucket, double? moisture)
        {
            var volume = line.Order!.Value.Si;
            double? weighed = bucket is { } b && mix.Batch?.BucketVolume is { CubicMetres: > 0 } size ? b.Kilograms / size.CubicMetres : null;
            double damp;
            if (weighed is { } own)
            {
                damp = own;
            }
            else
            {
                var loose = MixValues.Or(null, $"{line.Key}-loose", Dimension.Density);
                var water = moisture is { } given ? new Settled<double>(given, null) : MixValues.Or(null, $"{line.Key}-moisture", Dimension.Fraction);
                assumed.AddRange([.. loose.Assumptions, .. water.Assumptions]);
                damp = loose.Value * (1 + water.Value);
            }

            int? trucks = mix.Measures.Truck is { CubicMetres: > 0 } truck ? (int)Math.Ceiling(volume / truck.CubicMetres - 1e-9) : null;
            return new Delivery(line.Key, volume * damp, weighed is null ? Tag.Assumed : Tag.Measured, trucks, trucks is null ? "" : "trucks", Notes(line.Key, volume).ToSequence());
        }

        IEnumerable<Message> Notes(string key, double volume)
        {
            if (key == "soil")
            {
                var swell = MixValues.Or(null, "soil-swell", Dimension.Fraction);
                assumed.AddRange(swell.Assumptions);
                yield return Message.Of("analysis.delivery.dug", ("volume", new Amount(volume / (1 + swell.Value), Dimension.Volume)), ("swell", Amount.Fraction(swell.Value)));
            }
            else if (key == "sand")
            {
                yield return Message.Of("analysis.delivery.bulking", ("bulking", Amount.Fraction(MixValues.Of("sand-bulking").Value)));
            }
        }

        Delivery Straw(OrderLine line)
        {
            var bale = MixValues.Or(mix.Measures.Bale?.Kilograms, "bale", Dimension.Mass);
            assumed.AddRange(bale.Assumptions);
            var count = (int)Math.Ceiling(line.Order!.Value.Si / bale.Value - 1e-9);
            return new Delivery(line.Key, line.Order.Value.Si, Tag.Computed, count, "bales", [Message.Of("analysis.delivery.bales", ("n", count), ("bale", new Amount(bale.Value, Dimension.Mass)))]);
        }
    }
}
