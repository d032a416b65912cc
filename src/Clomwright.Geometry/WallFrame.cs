using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>The wall that things are placed in: its curve, faces and lifts.</summary>
internal sealed record WallFrame
{
    public WallFrame(House house, PlanCurve curve, WallSolid wall, Length[] heights)
    {
        House = house;
        Curve = curve;
        Wall = wall;
        Base = wall.Base.Metres;
        Top = wall.Top.Metres;
        Heights = heights;
        Lifts = [.. heights.Skip(1).Select((top, i) => WallBands.Trimmed(wall, heights[i].Metres, top.Metres))];
        FirstAsLaid = Lifts.Length == 0 || house.Stem.Width.Metres is not (> 0 and <= Curves.PlanCurves.SizeMax)
            ? []
            : [.. WallBands.AsLaid(house.Stem, wall, Lifts[0])];
        double[] offsets =
        [
            wall.InsideOffset(Base), wall.InsideOffset(Top), wall.OutsideOffset(Base), wall.OutsideOffset(Top),
            .. FirstAsLaid.SelectMany(b => new[] { b.InsideBottom, b.InsideTop, b.OutsideBottom, b.OutsideTop }),
        ];
        OffsetLeast = offsets.Min();
        OffsetMost = offsets.Max();
    }

    public House House { get; init; }

    public PlanCurve Curve { get; }

    public WallSolid Wall { get; }

    /// <summary>Height at which the cob begins, m.</summary>
    public double Base { get; }

    /// <summary>Height of the wall top, m.</summary>
    public double Top { get; }

    /// <summary>Boundaries of the lifts, exact.</summary>
    public Length[] Heights { get; }

    /// <summary>Lifts as trimmed.</summary>
    public Band[] Lifts { get; }

    /// <summary>The first lift as laid; empty where the stem has no width.</summary>
    public Band[] FirstAsLaid { get; }

    /// <summary>The smallest offset that any face reaches, m.</summary>
    public double OffsetLeast { get; }

    /// <summary>The largest offset that any face reaches, m.</summary>
    public double OffsetMost { get; }

    /// <summary>The lift in which a height lies: -1 below the cob, the number of lifts at the wall top and above it.</summary>
    public int LiftAt(double height)
    {
        if (height < Base)
        {
            return -1;
        }

        var lift = Array.FindIndex(Lifts, band => height < band.Top);
        return lift < 0 ? Lifts.Length : lift;
    }

    /// <summary>The station that a description asks for, or null with the reason remarked.</summary>
    public double? StationOf(Along along, string path, Remarks remarks)
    {
        switch (along)
        {
            case { Bearing: { } bearing, Station: null }:
            {
                var meets = double.IsFinite(bearing.Degrees) ? Curve.StationsAt(Math.IEEERemainder(bearing.Radians, 2 * Math.PI)) : [];
                if (meets.Count == 1)
                {
                    return meets[0];
                }

                if (meets.Count == 0)
                {
                    remarks.Error(path + ".bearing", Message.Of("geometry.bearing-meets-never", ("bearing", bearing)));
                }
                else
                {
                    remarks.Error(path + ".bearing", Message.Of("geometry.bearing-meets-twice", ("bearing", bearing), ("stations", Stations(meets))));
                }

                return null;
            }

            case { Bearing: null, Station: { } station }:
                if (station.Metres < 0 || station.Metres > Curve.Length)
                {
                    remarks.Warn(path + ".station", Message.Of("geometry.station-off-ring", ("station", station), ("length", Amount.Metres(Curve.Length))));
                }

                return Curve.Wrap(station.Metres);

            default:
                remarks.ErrorOfParts(path, new Message("geometry.place-missing"));
                return null;
        }
    }

    /// <summary>A shaft without splays.</summary>
    public Shaft Straight(double station, double halfWidth) => new(Curve, station, halfWidth, 0, 0, 0, 0);

    private static Argument.List Stations(IReadOnlyList<double> stations) =>
        new Argument.List(stations.Select(s => (Argument)new Argument.Quantity(Amount.Metres(s))).ToSequence());
}
