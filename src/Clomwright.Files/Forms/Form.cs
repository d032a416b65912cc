using Clomwright.Evidence;
using Clomwright.Files.Json;

namespace Clomwright.Files.Forms;

/// <summary>How one kind of value stands in the house file: the only code that knows how it is read, written and described.</summary>
internal abstract class Form<T>
{
    /// <summary>What may stand there, as data.</summary>
    public abstract Kind Kind { get; }

    /// <summary>Reads a value, or says what is wrong.</summary>
    public abstract bool TryRead(Node node, KeyPath path, Reading reading, out T value);

    /// <summary>The value as it is written, lengths in the units that the house prefers where they are exact.</summary>
    public abstract Piece Write(T value, UnitSystem units);
}

/// <summary>The same form where a value may be missing.</summary>
internal sealed class OptionalValue<T>(Form<T> form) : Form<T?> where T : struct
{
    public override Kind Kind => form.Kind;

    public override bool TryRead(Node node, KeyPath path, Reading reading, out T? value)
    {
        var read = form.TryRead(node, path, reading, out var present);
        value = present;
        return read;
    }

    public override Piece Write(T? value, UnitSystem units) => form.Write(value!.Value, units);
}

/// <summary>The same form where a thing may be missing.</summary>
internal sealed class OptionalThing<T>(Form<T> form) : Form<T?> where T : class
{
    public override Kind Kind => form.Kind;

    public override bool TryRead(Node node, KeyPath path, Reading reading, out T? value)
    {
        var read = form.TryRead(node, path, reading, out var present);
        value = present;
        return read;
    }

    public override Piece Write(T? value, UnitSystem units) => form.Write(value!, units);
}
