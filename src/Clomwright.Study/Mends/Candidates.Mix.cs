using Clomwright.Building;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>The recipe of another trial that has tests of its own: nothing is offered that nobody has tried.</summary>
    private static IEnumerable<Edit> RecipesTried(Need need)
    {
        var mix = need.House.Mix;
        bool Tested(string trial) => mix.TestBars.Any(b => b.Trial == trial) || mix.Prisms.Any(p => p.Trial == trial) || mix.Bricks.Any(b => b.Trial == trial);
        return mix.Trials.Where(t => t.Recipe != mix.Recipe && Tested(t.Name)).Select(t => new Edit.ChangeMix(mix with { Recipe = t.Recipe }));
    }
}
