using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Clomwright.Evidence;

/// <summary>An immutable list that is equal to another when its items are, so that records holding it compare by value.</summary>
[CollectionBuilder(typeof(Sequence), nameof(Sequence.Create))]
public readonly struct Sequence<T> : IReadOnlyList<T>, IEquatable<Sequence<T>>
{
    private readonly ImmutableArray<T> items;

    internal Sequence(ImmutableArray<T> items) => this.items = items;

    private ImmutableArray<T> Items => items.IsDefault ? [] : items;

    /// <summary>How many items there are.</summary>
    public int Count => Items.Length;

    /// <summary>The item at a place.</summary>
    public T this[int index] => Items[index];

    /// <summary>The items as a span.</summary>
    public ReadOnlySpan<T> AsSpan() => Items.AsSpan();

    /// <summary>The same items with one replaced.</summary>
    public Sequence<T> With(int index, T item) => new(Items.SetItem(index, item));

    /// <summary>The same items with one more at the end.</summary>
    public Sequence<T> Plus(T item) => new(Items.Add(item));

    /// <summary>The same items without the one at a place.</summary>
    public Sequence<T> Without(int index) => new(Items.RemoveAt(index));

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(Sequence<T> other) => Items == other.Items || AsSpan().SequenceEqual(other.AsSpan(), EqualityComparer<T>.Default);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Sequence<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in Items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <summary>Equal item by item.</summary>
    public static bool operator ==(Sequence<T> a, Sequence<T> b) => a.Equals(b);

    /// <summary>Not equal item by item.</summary>
    public static bool operator !=(Sequence<T> a, Sequence<T> b) => !a.Equals(b);
}

/// <summary>Makes sequences.</summary>
public static class Sequence
{
    /// <summary>A sequence of the items of a span; what a collection expression calls.</summary>
    public static Sequence<T> Create<T>(ReadOnlySpan<T> items) => new([.. items]);

    /// <summary>A sequence of any items.</summary>
    public static Sequence<T> ToSequence<T>(this IEnumerable<T> items) => new([.. items]);
}
