using Clomwright.Analysis.Days;
using Clomwright.Numerics;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Days;

/// <summary>Whether the bands that learn from a log hold what they say, for crews that are not quite what the forecast assumes.</summary>
public sealed class CoverageTests(ITestOutputHelper output)
{
    private const int Seasons = 200;

    /// <summary>One crew at a day of its job: where the truth lies in the forecast, and how wide that is.</summary>
    private readonly record struct Seen(double Top, double Finish, bool TopInside, bool FinishInside, int TopWidth, int FinishWidth, LearnedFactor Pace, LearnedFactor Drying);

    /// <summary>
    /// Property: over 2,000 crews of <see cref="SyntheticCrew"/> the 80 % band at half of the cob holds the true day 77 to 83 % of the time, and that of the wall's top is at most half as wide
    /// as before the first day where the crew is what limits it. A day is a whole number, so one that falls on the edge of a band is counted by the part of the edge's seasons beyond it (randomised probability integral transform: Czado, Gneiting
    /// and Held 2009, Predictive model assessment for count data; from memory). Of n crews the share has a standard deviation of sqrt(0.8 x 0.2 / n): 0.9 % for 2,000, so that 3 % are 3.35 of them;
    /// for fewer the same 3.35 are allowed: 9.5 % for 200.
    /// </summary>
    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void Bands_hold_what_they_say_and_narrow(int people)
    {
        var crews = Counts.Of(200, 2000);
        var question = SyntheticCrew.Question(people);
        var before = FromDrying.Of(question with { Seasons = 4000, Threads = 2 });
        var (topBefore, finishBefore) = (Width(before.Mark(DaysResult.WallTop)!.Days), Width(before.Finish));
        var all = new Seen[crews];
        Parallel.For(0, crews, i => all[i] = At(question, i, 0.5));
        double Share(Func<Seen, bool> inside) => all.Count(inside) / (double)crews;
        double Pit(Func<Seen, double> u) => all.Count(s => u(s) is > 0.1 and < 0.9) / (double)crews;
        var (top, finish) = (Pit(s => s.Top), Pit(s => s.Finish));
        var (topWidth, finishWidth) = (all.Average(s => s.TopWidth), all.Average(s => s.FinishWidth));
        output.WriteLine($"{people} people, seed {Counts.Seed}, {crews} crews, {Seasons} seasons each.");
        output.WriteLine($"Top: holds {top:P1} (edges whole: {Share(s => s.TopInside):P1}), low {all.Count(s => s.Top <= 0.1) / (double)crews:P1}, high {all.Count(s => s.Top >= 0.9) / (double)crews:P1}; {topBefore} days wide before, {topWidth:F1} at half.");
        output.WriteLine($"Finish: holds {finish:P1} (edges whole: {Share(s => s.FinishInside):P1}), low {all.Count(s => s.Finish <= 0.1) / (double)crews:P1}, high {all.Count(s => s.Finish >= 0.9) / (double)crews:P1}; {finishBefore} days wide before, {finishWidth:F1} at half.");
        output.WriteLine($"Mean readings: pace {all.Average(s => s.Pace.Readings):F1}, drying {all.Average(s => s.Drying.Readings):F1}.");
        var allowed = 3.35 * Math.Sqrt(0.8 * 0.2 / crews);
        Assert.InRange(top, 0.8 - allowed, 0.8 + allowed);
        Assert.InRange(finish, 0.8 - allowed, 0.8 + allowed);
        // Two people are slower than the wall, and their log tells what was not known: their band of the top came to 0.41 of what it was (2,000 crews). Of four, wall and weather decide, and no log knows the
        // weather to come: 0.48. Of the finish (0.51 and 0.57) half lies in what follows the wall: drying under no roof, and tasks that nobody has begun. Held to the next simple fraction above.
        Assert.True(topWidth <= (people == 2 ? 0.5 : 0.6) * topBefore, $"The band of the top was {topBefore} days wide and is {topWidth:F1}.");
        Assert.True(finishWidth <= (people == 2 ? 0.6 : 0.7) * finishBefore, $"The band of the finish was {finishBefore} days wide and is {finishWidth:F1}.");
    }

    private static int Width(DayBand band) => band.P90!.Value - band.P10!.Value;

    /// <summary>What does not end within the days looked at ends after them.</summary>
    private static int Day(int day) => day < 0 ? 2 * FromDrying.Looked : day;

    private static Seen At(DaysQuestion question, int number, double share)
    {
        var crew = new SyntheticCrew(question, number, Counts.Seed);
        var until = crew.DayOf(share);
        var asked = question with
        {
            Log = JobLog.Of(crew.Log(until), question.Crew, question.Amounts, question.Crew.Start.AddDays(until + 1)), Seasons = Seasons, Seed = 1_000_000 + (ulong)number,
        };
        var (plan, believed, outcomes) = FromDrying.Drawn(asked);
        var told = LearnedFrom.Of(asked, asked.Log!, believed);
        var tops = outcomes.Select(o => Day(o.LiftDone[^1])).Order().ToArray();
        var ends = FromDrying.Finishes(asked, plan, outcomes).Select(Day).Order().ToArray();
        var tie = new Philox(Counts.Seed + 9);
        double Pit(int[] days, int truth, ulong place) =>
            (days.Count(d => d < truth) + tie.Uniform((ulong)number, place) * (days.Count(d => d == truth) + 1)) / (days.Length + 1);
        int At(int[] days, double part) => days[(int)Math.Ceiling(part * days.Length) - 1];
        var (top, finish) = (Day(crew.Top), Day(crew.Finish));
        return new(
            Pit(tops, top, 0), Pit(ends, finish, 1), At(tops, 0.1) <= top && top <= At(tops, 0.9), At(ends, 0.1) <= finish && finish <= At(ends, 0.9),
            At(tops, 0.9) - At(tops, 0.1), At(ends, 0.9) - At(ends, 0.1), told.Pace, told.Drying);
    }
}
