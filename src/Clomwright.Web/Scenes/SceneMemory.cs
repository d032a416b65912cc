using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Scenes;

/// <summary>What was last made of a wall's scene: a part whose grounds are equal is the very part that it was, neither made nor sent anew.</summary>
internal sealed class SceneMemory
{
    private readonly Dictionary<(Face? Face, string Part, string Name), (object Grounds, object Made)> parts = [];
    private UnitSystem units;

    /// <summary>The lines of findings.</summary>
    public FindingMemory Lines { get; } = new();

    /// <summary>Forgets everything: it is in another language now.</summary>
    public void Forget()
    {
        parts.Clear();
        Lines.Forget();
    }

    /// <summary>Forgets what was written in other units.</summary>
    public void WriteIn(UnitSystem inUnits)
    {
        if (inUnits != units)
        {
            Forget();
            units = inUnits;
        }
    }

    /// <summary>A part of a scene.</summary>
    /// <param name="face">From where it is seen; null where that does not matter.</param>
    /// <param name="part">What it is.</param>
    /// <param name="grounds">All that it is made from but language and units, comparable.</param>
    /// <param name="make">Makes it.</param>
    /// <param name="name">Which one, where there are several.</param>
    public T Keep<T>(Face? face, string part, object grounds, Func<T> make, string name = "")
        where T : class
    {
        if (parts.TryGetValue((face, part, name), out var before) && before.Grounds.Equals(grounds))
        {
            return (T)before.Made;
        }

        var made = make();
        parts[(face, part, name)] = (grounds, made);
        return made;
    }
}
