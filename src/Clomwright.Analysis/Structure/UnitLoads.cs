using System.Collections;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>Loads of which each is worked out when somebody first asks for it: a case while an opening is in hand leans on a few of them. Not for use from several threads at once.</summary>
internal sealed class UnitLoads : IReadOnlyList<NodalLoad>
{
    private readonly List<(Func<NodalLoad> Make, NodalLoad? Made)> loads = [];

    public int Count => loads.Count;

    public NodalLoad this[int index]
    {
        get
        {
            var (make, made) = loads[index];
            if (made is null)
            {
                loads[index] = (make, made = make());
            }

            return made;
        }
    }

    /// <summary>The number of a further load.</summary>
    public int Add(Func<NodalLoad> make)
    {
        loads.Add((make, null));
        return loads.Count - 1;
    }

    public IEnumerator<NodalLoad> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
