using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Reads tests by hand. None of them is a number of clay.</summary>
internal static class HandTests
{
    private static Source Source => Sources.Get("hand-tests-memory");

    public static Sequence<HandReading> Of(SoilTests soil) => new[]
    {
        soil.Ribbon is { } ribbon ? Reading("ribbon", Long(ribbon.Metres, 0.05, 0.20)) : null,
        soil.Worm is { } worm ? Reading("worm", Long(worm.Metres, 0.05, 0.15)) : null,
        soil.Ball is { } ball ? Reading("ball", ball switch { BallDrop.Flattened => "rich", BallDrop.Crumbled => "lean", _ => "middling" }) : null,
        soil.Wash is { } wash ? Reading("wash", wash switch { HandWash.Sticky => "rich", HandWash.Gritty => "lean", _ => "silty" }) : null,
    }.OfType<HandReading>().ToSequence();

    private static string Long(double length, double lean, double rich) => length < lean ? "lean" : length > rich ? "rich" : "middling";

    private static HandReading Reading(string key, string sense) => new(key, sense, new Message($"analysis.hand-says.{sense}"), new Message($"analysis.hand-not.{key}"), Source);
}
