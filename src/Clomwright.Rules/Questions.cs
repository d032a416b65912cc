using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>When a question of judgement does not arise.</summary>
internal static class Questions
{
    /// <summary>Why a question has nothing to do with this house; null when it has to be asked.</summary>
    public static Message? DoNotArise(string question, HouseGeometry geometry)
    {
        var house = geometry.House;
        return question switch
        {
            "tee-fixing" when house.Tees is null => new Message("rules.because.no-tees-described"),
            "formed-lift-height" when house.Lifts.Method != LiftMethod.Formed => new Message("rules.because.other-lift-method"),
            "plaster-reading" or "plaster-key" when house.Finishes.Count == 0 => new Message("rules.because.no-plaster-described"),
            "leak-test" when house.Roof is not { Layers.Count: > 0 } => new Message("rules.because.no-roof-layers"),
            "roof-reading" or "roof-load-when-dry" or "roof-height" when house.Roof is null => new Message("rules.because.no-roof-described"),
            _ => null,
        };
    }
}
