using Clomwright.Evidence;
using Clomwright.Files.Json;

namespace Clomwright.Files.Forms;

/// <summary>The values of one object of the file, by key.</summary>
internal sealed class Values
{
    private readonly Dictionary<object, object?> read = [];

    /// <summary>The value read for a key, or its default.</summary>
    public V Of<T, V>(Key<T, V> key) => read.TryGetValue(key, out var value) ? (V)value! : key.Default;

    public void Set(object key, object? value) => read[key] = value;
}

/// <summary>One key of an object that becomes a <typeparamref name="T"/>.</summary>
internal abstract class Key<T>(string name, bool required, bool leavesOut)
{
    /// <summary>As it is written.</summary>
    public string Name { get; } = name;

    /// <summary>Whether it has to be given.</summary>
    public bool Required { get; } = required;

    /// <summary>Whether a bad value is left out, as if it had not been given; otherwise it spoils the whole object.</summary>
    public bool LeavesOut { get; } = leavesOut;

    /// <summary>Its description.</summary>
    public abstract KeyKind Kind { get; }

    public abstract bool TryRead(Node node, KeyPath path, Reading reading, Values values);

    /// <summary>What stands in the file for it; null when it is left out because it has its default.</summary>
    public abstract Piece? Write(T owner, UnitSystem units);
}

/// <summary>One key with the type of its value.</summary>
internal sealed class Key<T, V>(string name, Form<V> form, Func<T, V> get, bool required, V absent, bool leavesOut) : Key<T>(name, required, leavesOut)
{
    /// <summary>What is taken when it is not given.</summary>
    public V Default { get; } = absent;

    public override KeyKind Kind =>
        new(Name, form.Kind, Required, Required || Default is null ? null : (form.Write(Default, UnitSystem.Imperial) as Piece.Token)?.Text);

    public override bool TryRead(Node node, KeyPath path, Reading reading, Values values)
    {
        var read = form.TryRead(node, path, reading, out var value);
        if (read)
        {
            values.Set(this, value);
        }

        return read;
    }

    public override Piece? Write(T owner, UnitSystem units)
    {
        var value = get(owner);
        return !Required && EqualityComparer<V>.Default.Equals(value, Default) ? null : form.Write(value, units);
    }
}

/// <summary>Makes keys of an object that becomes a <typeparamref name="T"/>.</summary>
internal static class Keys<T>
{
    /// <summary>A key that has to be given.</summary>
    public static Key<T, V> Needed<V>(string name, Form<V> form, Func<T, V> get) => new(name, form, get, true, default!, false);

    /// <summary>A key with a default.</summary>
    public static Key<T, V> Or<V>(string name, Form<V> form, Func<T, V> get, V absent, bool leavesOut = false) => new(name, form, get, false, absent, leavesOut);

    /// <summary>A value that may be missing.</summary>
    public static Key<T, V?> Maybe<V>(string name, Form<V> form, Func<T, V?> get, bool leavesOut = false) where V : struct =>
        new(name, new OptionalValue<V>(form), get, false, null, leavesOut);

    /// <summary>A thing that may be missing.</summary>
    public static Key<T, V?> MaybeThing<V>(string name, Form<V> form, Func<T, V?> get, bool leavesOut = false) where V : class =>
        new(name, new OptionalThing<V>(form), get, false, null, leavesOut);

    /// <summary>A list, empty when it is not given.</summary>
    public static Key<T, Sequence<V>> List<V>(string name, Form<V> item, Func<T, Sequence<V>> get, bool leavesOut = false) =>
        new(name, new ListForm<V>(item, leavesOut), get, false, default, leavesOut);
}
