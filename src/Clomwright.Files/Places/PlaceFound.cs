using Clomwright.Files.Forms;
using Clomwright.Files.Shape;
using Clomwright.Files.Typing;

namespace Clomwright.Files;

/// <summary>Where a path leads, in the table of keys and in one house at once.</summary>
/// <param name="Kind">What may stand there.</param>
/// <param name="Piece">What does; null where nothing does.</param>
/// <param name="Owner">The object it is in; null for the whole house.</param>
/// <param name="Key">The key of that object that it hangs on.</param>
/// <param name="Step">The last step.</param>
internal sealed record PlaceFound(Kind Kind, Piece? Piece, Kind.Thing? Owner, KeyKind? Key, PathStep Step)
{
    /// <summary>It is one of a list.</summary>
    public bool InList => Step.Key is null && Owner is not null;

    /// <summary>Where a path leads; null where the table has no such place, or the house no such item of a list.</summary>
    public static PlaceFound? In(Piece.Members root, IReadOnlyList<PathStep> steps)
    {
        var at = new PlaceFound(HouseShape.House.Kind, root, null, null, default);
        foreach (var step in steps)
        {
            if (at.Then(step) is not { } next)
            {
                return null;
            }

            at = next;
        }

        return at;
    }

    private PlaceFound? Then(PathStep step) => (Kind, step.Key) switch
    {
        (Kind.List list, null) => Piece is Piece.Items items && step.Index < items.List.Count ? new(list.Item, items.List[step.Index], Owner, Key, step) : null,
        (Kind.Position, null) => Piece is Piece.Items { List: [var east, var north] } && step.Index < 2 ? new(new Kind.Quantity(Evidence.Dimension.Length), step.Index == 0 ? east : north, Owner, Key, step) : null,
        (Kind.Either { Other: Kind.Thing both }, { } end) => In(both, end, Piece is Piece.Token even ? new Piece.Members([.. both.Keys.Select(k => (k.Name, (Piece)even))]) : Piece),
        (Kind.Thing thing, { } key) => In(thing, key, Piece),
        (Kind.Union union, { } key) => Case(union) is not { } thing ? null
            : key == union.Key ? new(new Kind.Word([.. union.Cases.Select(c => c.Word)]), (Piece as Piece.Members)?.Find(key), thing, new KeyKind(key, new Kind.Text(), true, null), step)
            : In(thing, key, Piece),
        _ => null,
    };

    private static PlaceFound? In(Kind.Thing thing, string key, Piece? piece) =>
        thing.Keys.FirstOrDefault(k => k.Name == key) is { } found ? new(found.Kind, (piece as Piece.Members)?.Find(key), thing, found, new PathStep(key, 0)) : null;

    /// <summary>The case of a union that the piece is of; null where nothing stands there.</summary>
    public Kind.Thing? Case(Kind.Union union) =>
        (Piece as Piece.Members)?.Find(union.Key) is Piece.Token token && PieceTree.Unquoted(token) is var word ? union.Cases.FirstOrDefault(c => c.Word == word).Thing : null;
}
