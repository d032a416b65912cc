using System.Text.Json;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Typing;

namespace Clomwright.Files;

/// <summary>Changes in a house that is laid out as pieces. Nothing is changed in place.</summary>
internal static class PieceTree
{
    /// <summary>What stands at the end of some steps; null where nothing does.</summary>
    public static Piece? Find(Piece root, ReadOnlySpan<PathStep> steps) => steps is [] ? root : Inner(root, steps[0]) is { } inner ? Find(inner, steps[1..]) : null;

    /// <summary>The same with a piece put at the end of some steps, objects on the way made where they are not there and keys in the order of the table.</summary>
    public static Piece.Members With(Piece.Members root, ReadOnlySpan<PathStep> steps, Piece piece, Kind kind) => (Piece.Members)Put(root, steps, piece, kind);

    /// <summary>The same without what stands at the end of some steps; an object that is left with nothing goes too.</summary>
    public static Piece.Members Without(Piece.Members root, ReadOnlySpan<PathStep> steps) => Cut(root, steps) as Piece.Members ?? root;

    /// <summary>The text of a token, without its quotes.</summary>
    public static string Unquoted(Piece.Token token) => token.Text.StartsWith('"') ? JsonSerializer.Deserialize<string>(token.Text)! : token.Text;

    private static Piece? Inner(Piece piece, PathStep step) => (piece, step.Key) switch
    {
        (Piece.Members members, { } key) => members.Find(key),
        (Piece.Items items, null) => step.Index < items.List.Count ? items.List[step.Index] : null,
        _ => null,
    };

    private static Piece Put(Piece? into, ReadOnlySpan<PathStep> steps, Piece piece, Kind? kind)
    {
        if (steps is [])
        {
            return piece;
        }

        var step = steps[0];
        if (step.Key is null)
        {
            var items = (Piece.Items)into!;
            return new Piece.Items(items.List.With(step.Index, Put(items.List[step.Index], steps[1..], piece, (kind as Kind.List)?.Item)));
        }

        // A pole of one diameter becomes one with two ends.
        var before = into is Piece.Token even && kind is Kind.Either { Other: Kind.Thing ends } ? [.. ends.Keys.Select(k => (k.Name, (Piece)even))] : (into as Piece.Members)?.List ?? [];
        var thing = kind switch
        {
            Kind.Thing one => one,
            Kind.Either { Other: Kind.Thing both } => both,
            Kind.Union union => union.Cases.FirstOrDefault(c => before.Any(m => m.Name == union.Key && m.Value is Piece.Token word && Unquoted(word) == c.Word)).Thing,
            _ => null,
        };
        var put = Put(before.FirstOrDefault(m => m.Name == step.Key).Value, steps[1..], piece, thing?.Keys.FirstOrDefault(k => k.Name == step.Key)?.Kind);
        var order = thing?.Keys.Select((k, i) => (k.Name, i)).ToDictionary(k => k.Name, k => k.i) ?? [];
        return new Piece.Members([.. before.Where(m => m.Name != step.Key).Append((step.Key, put)).OrderBy(m => order.GetValueOrDefault(m.Item1, -1))]);
    }

    private static Piece? Cut(Piece piece, ReadOnlySpan<PathStep> steps)
    {
        var step = steps[0];
        if (Inner(piece, step) is not { } inner)
        {
            return piece;
        }

        var left = steps.Length == 1 ? null : Cut(inner, steps[1..]);
        switch (piece)
        {
            case Piece.Items items:
                return new Piece.Items(left is null ? items.List.Without(step.Index) : items.List.With(step.Index, left));
            default:
                var members = ((Piece.Members)piece).List;
                var rest = left is null ? [.. members.Where(m => m.Name != step.Key)] : members.Select(m => m.Name == step.Key ? (m.Name, left) : m).ToSequence();
                return rest.Count == 0 ? null : new Piece.Members(rest);
        }
    }
}
