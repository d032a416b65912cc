using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>A tree of every computed number, for other programs. Keys are a contract: added freely, never renamed.</summary>
public abstract record Figure
{
    private Figure()
    {
    }

    /// <summary>Named parts, in order.</summary>
    public sealed record Branch(Sequence<NamedFigure> Parts) : Figure;

    /// <summary>Parts in order: clockwise from the zero mark, lifts bottom up.</summary>
    public sealed record Row(Sequence<Figure> Items) : Figure;

    /// <summary>A number with its tag and source.</summary>
    public sealed record Number(Amount Value, Tag Tag, string Source) : Figure;

    /// <summary>A number that is not there, and why.</summary>
    public sealed record NotChecked(Message Why) : Figure;

    /// <summary>A name or address.</summary>
    public sealed record Text(string Value) : Figure;

    /// <summary>Whether something holds.</summary>
    public sealed record Flag(bool Value) : Figure;
}

/// <summary>A part of the tree with its key.</summary>
public sealed record NamedFigure(string Key, Figure Figure);

/// <summary>Short ways to write the tree down.</summary>
internal static class Figures
{
    public const string FromDescription = "computed from the house file";

    public static Figure Tree(params ReadOnlySpan<(string Key, Figure Figure)> parts)
    {
        var named = new NamedFigure[parts.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            named[i] = new NamedFigure(parts[i].Key, parts[i].Figure);
        }

        return new Figure.Branch(Sequence.Create<NamedFigure>(named));
    }

    public static Figure Row<T>(IEnumerable<T> items, Func<T, Figure> figure) => new Figure.Row(items.Select(figure).ToSequence());

    public static Figure Computed(double value, Dimension dimension) => new Figure.Number(new Amount(value, dimension), Tag.Computed, FromDescription);

    public static Figure Computed(Length value) => new Figure.Number(value, Tag.Computed, FromDescription);

    public static Figure Computed(double? value, Dimension dimension, Message why) =>
        value is { } known ? Computed(known, dimension) : new Figure.NotChecked(why);

    public static Figure Name(string text) => new Figure.Text(text);
}
