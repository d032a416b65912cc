using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>Where the inside of the wall is damp in winter, month by month, against the dew point and what mould asks.</summary>
public sealed record DampResult
{
    /// <summary>Stations of the columns, m, clockwise from the zero mark.</summary>
    public required Sequence<double> Stations { get; init; }

    /// <summary>Heights of the rows, m from the finished floor.</summary>
    public required Sequence<double> Heights { get; init; }

    /// <summary>The column that faces each of eight winds most nearly, north first, clockwise.</summary>
    public required Sequence<int> Winds { get; init; }

    /// <summary>The house kept warm, from its second winter.</summary>
    public required DampMonth Later { get; init; }

    /// <summary>The coldest month of the house kept warm.</summary>
    public required DampMonth Coldest { get; init; }

    /// <summary>The house that nobody heats.</summary>
    public required DampMonth Unheated { get; init; }

    /// <summary>Humidity at the face from which mould grows where it lasts a month.</summary>
    public required double Limit { get; init; }
}

/// <summary>The month in which the wall is dampest.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Air">Of the room at the middle of its height, C.</param>
/// <param name="Outside">C.</param>
/// <param name="Vapour">In the room, Pa.</param>
/// <param name="Temperatures">Of the face with the film of corners, C: column by column, in each from the floor up.</param>
/// <param name="Humidities">At the face, 0 to 1 and above where water would run.</param>
/// <param name="Furniture">The same behind furniture.</param>
public sealed record DampMonth(int Month, double Air, double Outside, double Vapour, Sequence<double> Temperatures, Sequence<double> Humidities, Sequence<double> Furniture)
{
    /// <summary>Dew point of the room, C.</summary>
    public double DewPoint => Psychrometrics.DewPoint(Vapour);

    /// <summary>Share of the wall's face at which mould has what it asks.</summary>
    /// <param name="limit">Humidity.</param>
    public double Share(double limit) => Humidities.Count == 0 ? 0 : Humidities.Count(h => h >= limit) / (double)Humidities.Count;

    /// <summary>Height up to which mould has what it asks at each column, m; 0 where it has it nowhere from the floor up.</summary>
    /// <param name="rows">Heights of the rows.</param>
    /// <param name="limit">Humidity.</param>
    public Sequence<double> Line(Sequence<double> rows, double limit)
    {
        var line = new double[Humidities.Count / rows.Count];
        for (var c = 0; c < line.Length; c++)
        {
            var r = 0;
            while (r < rows.Count && Humidities[c * rows.Count + r] >= limit)
            {
                r++;
            }

            line[c] = r == 0 ? 0 : r == rows.Count ? rows[^1] : (rows[r - 1] + rows[r]) / 2;
        }

        return line.ToSequence();
    }
}

/// <summary>Works out the wall's face month by month.</summary>
internal sealed class DampWall(HouseGeometry geometry, Shell shell, ComfortNumbers numbers, SunInRoom sun, YearWeather weather)
{
    private const int Columns = 48, Rows = 24;
    private readonly HeatEdge? top = shell.Edges.FirstOrDefault(e => e.Key == "top");
    private readonly double[] stations = [.. Enumerable.Range(0, Columns).Select(i => (i + 0.5) * geometry.Curve.Length / Columns)];
    private readonly double[] heights = [.. Enumerable.Range(0, Rows).Select(j => (j + 0.5) * geometry.Wall.Top.Metres / Rows)];

    private (FaceFactor[][] Factors, double[,] Faces)? face;

    /// <summary>What of the wall's face holds in every month and run.</summary>
    private (FaceFactor[][] Factors, double[,] Faces) Face => face ??= ([.. stations.Select(FactorsAt)], MeanFaces());

    /// <summary>The dampest month of a run with more water given to the room, kg/s.</summary>
    public DampMonth Worst(RunResult run, double more)
    {
        var ((factors, faces), limit) = (Face, numbers["comfort-mould"]);
        return run.Months.Select(m => Month(m, factors, faces, more)).MaxBy(m => (m.Share(limit), m.Humidities.Max()))!;
    }

    public DampResult Of(YearResult year)
    {
        var ((factors, faces), limit) = (Face, numbers["comfort-mould"]);
        return new DampResult
        {
            Stations = stations.ToSequence(), Heights = heights.ToSequence(), Later = Worst(year.Heated, 0), Unheated = Worst(year.Free, 0),
            Winds = Enumerable.Range(0, 8).Select(Facing).ToSequence(), Limit = limit, Coldest = Month(year.Heated.Months.MinBy(m => m.Outside)!, factors, faces, 0),
        };
    }

    private int Facing(int wind)
    {
        var (sin, cos) = Math.SinCos(wind * Math.PI / 4);
        return Enumerable.Range(0, Columns).MaxBy(c => geometry.Curve.Normal(stations[c]) is var n ? n.East * sin + n.North * cos : 0);
    }

    private DampMonth Month(MonthComfort month, FaceFactor[][] factors, double[,] faces, double moreWater)
    {
        var given = (shell.People * numbers["comfort-vapour-each"] + numbers["comfort-other-vapour"]) / 3600 + moreWater;
        // Water given off against what the air carries away: kg/s over m3/s, as a pressure.
        var vapour = month.Vapour + given / (shell.Airing * shell.Volume / 3600) * Psychrometrics.VapourGas * (month.Air + 273.15);
        vapour = Math.Min(vapour, Psychrometrics.Saturation(month.Air));
        var (temperatures, damp, furniture) = (new double[Columns * Rows], new double[Columns * Rows], new double[Columns * Rows]);
        for (var c = 0; c < Columns; c++)
        {
            for (var r = 0; r < Rows; r++)
            {
                var air = month.Air + numbers["comfort-layers"] * (heights[r] - geometry.Wall.Top.Metres / 2);
                var outside = month.Outside + faces[month.Number - 1, c];
                double At(double factor) => outside + factor * (air - outside);
                var at = c * Rows + r;
                temperatures[at] = At(factors[c][r].Corner);
                damp[at] = vapour / Psychrometrics.Saturation(temperatures[at]);
                furniture[at] = vapour / Psychrometrics.Saturation(At(factors[c][r].Furniture));
            }
        }

        return new(month.Number, month.Air, month.Outside, vapour, temperatures.ToSequence(), damp.ToSequence(), furniture.ToSequence());
    }

    /// <summary>The colder of what foot and top of the wall say.</summary>
    private FaceFactor[] FactorsAt(double station)
    {
        var bearing = geometry.Curve.BearingOf(geometry.Curve.At(station));
        var linings = shell.Parts.LinedAt(bearing);
        var foot = shell.Junctions.Foot(linings);
        var isLined = linings.Any(l => shell.Parts.Covers(l, (geometry.Wall.Base.Metres + geometry.Wall.Top.Metres) / 2));
        return [.. heights.Select(h =>
        {
            var (low, high) = (At(foot.Faces, h), top is null || isLined ? At(foot.Faces, h) : At(top.Faces, h));
            return low.Corner <= high.Corner ? low : high;
        })];
    }

    private static FaceFactor At(Sequence<FaceFactor> faces, double height)
    {
        if (height <= faces[0].Height)
        {
            return faces[0];
        }

        for (var i = 1; i < faces.Count; i++)
        {
            if (faces[i].Height >= height)
            {
                var (a, b) = (faces[i - 1], faces[i]);
                var s = (height - a.Height) / (b.Height - a.Height);
                return new(height, a.Plain + s * (b.Plain - a.Plain), a.Corner + s * (b.Corner - a.Corner), a.Furniture + s * (b.Furniture - a.Furniture));
            }
        }

        return faces[^1];
    }

    /// <summary>How much warmer than the air, mean of each month, sun and sky leave the outside of each column, K.</summary>
    private double[,] MeanFaces()
    {
        var (sums, hours) = (new double[12, Columns], new int[12]);
        var facing = stations.Select(s => geometry.Curve.Normal(s) is var n ? Math.Atan2(n.East, n.North) : 0).ToArray();
        var looks = facing.Select(Upright.Of).ToArray();
        var (film, taken) = (numbers["comfort-film-outside"], numbers["comfort-sun-taken"]);
        var lit = new double[288, Columns];
        for (var k = 0; k < 288; k++)
        {
            var place = sun.Place(k / 24 + 1, k % 24 + 0.5);
            for (var c = 0; c < Columns && place.Elevation > 0; c++)
            {
                lit[k, c] = shell.WallLit(place, facing[c], sun.Skyline);
            }
        }

        for (var h = 0; h < weather.Hours.Count; h++)
        {
            var hour = weather.Hours[h];
            var month = weather.First.AddDays(h / 24 % 365).Month - 1;
            hours[month]++;
            for (var c = 0; c < Columns; c++)
            {
                var beam = lit[24 * month + h % 24, c] * weather.Beams[h].On(looks[c]);
                sums[month, c] += film * (taken * (beam + hour.DiffuseLevel / 2 + 0.1 * hour.Level) - hour.LongWaveLoss / 2);
            }
        }

        for (var m = 0; m < 12; m++)
        {
            for (var c = 0; c < Columns; c++)
            {
                sums[m, c] /= Math.Max(1, hours[m]);
            }
        }

        return sums;
    }
}

/// <summary>The wall in the first winter, with the water of its building.</summary>
/// <param name="Dampest">The dampest month.</param>
/// <param name="Water">What the cob still gives off.</param>
public sealed record FirstWinter(DampMonth Dampest, BuildingWater Water);

/// <summary>Water that leaves the cob into the room in the first winter.</summary>
/// <param name="Left">In the cob above rest at the beginning of that winter, kg.</param>
/// <param name="IntoRoom">Mean of the winter, kg/s.</param>
public sealed record BuildingWater(double Left, double IntoRoom)
{
    private const int WinterDays = 120, NovemberFirst = 11;

    /// <summary>From the forecast of drying: the water of each lift when the roof may land, falling evenly in proportion from there to what plaster asks, half of it to each face.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="drying">The forecast.</param>
    /// <param name="dryDensity">kg/m3.</param>
    public static Known<BuildingWater> Of(HouseGeometry geometry, Known<DryingResult> drying, double dryDensity)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (drying.Value is not { } d)
        {
            return drying.NotChecked!;
        }

        if (d.Middle is not { RoofDay: { } roof, PlasterDay: { } plaster } || !(plaster > roof))
        {
            return new Message("analysis.comfort.not-dry");
        }

        const double near = 0.03;
        var start = d.Start.AddDays((int)roof);
        var winter = new DateOnly(start.Year, NovemberFirst, 1);
        winter = start > winter ? start : winter;
        var before = winter.DayNumber - start.DayNumber;
        var (left, out_) = (0.0, 0.0);
        foreach (var lift in d.Middle.Lifts)
        {
            var mass = lift.Number <= geometry.Lifts.Count ? geometry.Lifts[lift.Number - 1].NetVolume * dryDensity : 0;
            var wet = lift.Bays.Where(b => b.Water.Count > 0).Select(b => b.Water[^1]).DefaultIfEmpty(0).Average();
            var over = Math.Max(0, wet - near);
            var rate = over > near ? Math.Log(over / near) / (plaster - roof) : 0;
            var (atStart, atEnd) = (over * Math.Exp(-rate * before), over * Math.Exp(-rate * (before + WinterDays)));
            (left, out_) = (left + mass * atStart, out_ + mass * (atStart - atEnd));
        }

        return new BuildingWater(left, out_ / 2 / (WinterDays * 86400.0));
    }
}
