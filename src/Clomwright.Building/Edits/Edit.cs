using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>One change to a description. Applying it makes a new house and leaves the old one as it was.</summary>
/// <remarks>
/// Parts are found by the author's name; an edit of a part that the house does not have changes nothing. An edit may make a house that
/// is wrong: <see cref="HouseDiagnostics"/> says so, and nothing is refused here.
/// </remarks>
public abstract partial record Edit
{
    private Edit()
    {
    }

    /// <summary>The house after the change.</summary>
    public abstract House Apply(House house);

    /// <summary>What it does, in a few words: for undo and for what would mend a finding.</summary>
    public abstract Message What { get; }

    /// <summary>Edits done as one.</summary>
    /// <param name="Edits">In the order in which they are applied.</param>
    public sealed record Several(Sequence<Edit> Edits) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => Edits.Aggregate(house, (changed, edit) => edit.Apply(changed));

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.several", ("edits", new Argument.List(Edits.Select(edit => (Argument)edit.What).ToSequence())));
    }

    private static Message Named(string key, string name) => Message.Of(key, ("name", name));

    /// <summary>The list with the first part of a name changed, or the same list.</summary>
    private static Sequence<T> Changed<T>(Sequence<T> parts, Func<T, string> nameOf, string name, Func<T, T> change)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            if (nameOf(parts[i]) == name)
            {
                return parts.With(i, change(parts[i]));
            }
        }

        return parts;
    }

    private static Sequence<T> Without<T>(Sequence<T> parts, Func<T, string> nameOf, string name)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            if (nameOf(parts[i]) == name)
            {
                return parts.Without(i);
            }
        }

        return parts;
    }
}
