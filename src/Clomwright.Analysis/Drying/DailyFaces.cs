using Clomwright.Analysis.Weather;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>What the means of a day do to faces and top: the balance of the mean hour, each coefficient times how the mean of the month's hours stands to it.</summary>
internal sealed class DailyFaces
{
    private const double GroundReflects = 0.2;
    private readonly Faces faces;
    private readonly (double Beam, double[] Dry, double[] Wet)[] months;

    public DailyFaces(Faces faces, WeatherResult weather, double normal)
    {
        this.faces = faces;
        months = [.. Enumerable.Range(1, 12).Select(month => Month(weather.Day(month).ToArray(), month, normal))];
    }

    public Condition Of(in BayDay day)
    {
        ref readonly var month = ref months[day.Month - 1];
        var upright = day.Beam * month.Beam + day.Diffuse / 2 + GroundReflects * (day.Beam + day.Diffuse) / 2;
        return Times(faces.Of(day.Hour(day.Wet ? 1 : 0), upright, day.Temperature), day.Wet ? month.Wet : month.Dry);
    }

    private (double Beam, double[] Dry, double[] Wet) Month(WeatherHour[] hours, int number, double normal)
    {
        var level = hours.Sum(h => h.BeamLevel);
        var beam = level > 0 ? hours.Sum(h => h.Upright(normal) - (h with { BeamLevel = 0 }).Upright(normal) - GroundReflects * h.BeamLevel / 2) / level : 0;
        var mean = BayDay.Of(number, hours);
        var upright = mean.Beam * beam + mean.Diffuse / 2 + GroundReflects * (mean.Beam + mean.Diffuse) / 2;
        double[] Factors(double wet)
        {
            var whole = Values(faces.Of(mean.Hour(wet), upright, mean.Temperature));
            var parts = faces.Day([.. hours.Select(h => h with { WetShare = wet })], normal).Select(Values).ToArray();
            return [.. whole.Select((w, i) => w > 0 ? parts.Average(p => p[i]) / w : 1)];
        }

        return (beam, Factors(0), Factors(1));
    }

    private static double[] Values(Condition c) => [c.First.P, c.First.Q, c.First.R, c.First.S, c.Last.P, c.Last.Q, c.Last.R, c.Top.P, c.Top.Q, c.Top.R];

    private static Condition Times(in Condition c, double[] f) => c with
    {
        First = c.First with { P = c.First.P * f[0], Q = c.First.Q * f[1], R = c.First.R * f[2], S = c.First.S * f[3] },
        Last = c.Last with { P = c.Last.P * f[4], Q = c.Last.Q * f[5], R = c.Last.R * f[6] },
        Top = c.Top with { P = c.Top.P * f[7], Q = c.Top.Q * f[8], R = c.Top.R * f[9] },
    };
}
