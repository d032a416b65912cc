using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Days;

/// <summary>Hours that frames, headers, embeds and tees take while the wall rises.</summary>
public static class SetIns
{
    private const double Hour = 3600;

    /// <summary>Hours of one person for each lift, in each quarter of the ring: a frame with the lift its sill stands in, a header with the one its bottom lies in.</summary>
    public static Sequence<Sequence<double>> Hours(HouseGeometry geometry, WorkNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(numbers);
        var hours = geometry.Lifts.Select(_ => new double[Sectors.Of(geometry).Count]).ToArray();
        void Add(int lift, double station, string number)
        {
            if (lift >= 0 && lift < hours.Length)
            {
                hours[lift][Sectors.At(geometry, station)] += numbers[number] / Hour;
            }
        }

        int LiftAt(double height) => Math.Max(0, geometry.Lifts.TakeWhile(l => l.Bottom.Metres <= height + 1e-9).Count() - 1);
        foreach (var opening in geometry.Openings)
        {
            Add(LiftAt(opening.Sill), opening.Station, "work-frame");
            if (opening.Header is { } header)
            {
                Add(LiftAt(header.Bottom), opening.Station, "work-header");
            }
        }

        foreach (var embed in geometry.Embeds)
        {
            Add(embed.Lift, embed.Station, "work-embed");
        }

        foreach (var tee in geometry.Tees)
        {
            Add(tee.Lift, tee.Station, "work-tee");
        }

        return hours.Select(lift => lift.ToSequence()).ToSequence();
    }
}
