using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Files.Forms;

namespace Clomwright.Files;

/// <summary>How what stands in a place of a house reads on a screen, and how what is typed there becomes what stands in the file.</summary>
internal static class PlaceText
{
    private const string Yes = "yes";
    private const string No = "no";
    private const string Between = "; ";
    private const string Iso = "yyyy-MM-dd";

    /// <summary>What a form asks for there; null for a part, which has places of its own.</summary>
    public static PlaceKind? KindOf(Kind kind) => kind switch
    {
        Kind.Text => PlaceKind.Text,
        Kind.Date => PlaceKind.Date,
        Kind.Number => PlaceKind.Number,
        Kind.Whole => PlaceKind.Whole,
        Kind.Truth => PlaceKind.Truth,
        Kind.Quantity => PlaceKind.Quantity,
        Kind.Word => PlaceKind.Word,
        Kind.Position => PlaceKind.Several,
        Kind.List { Item: not (Kind.Thing or Kind.Union or Kind.Position or Kind.List or Kind.Either) } => PlaceKind.Several,
        _ => null,
    };

    public static Dimension? DimensionOf(Kind kind) => kind is Kind.Quantity quantity ? quantity.Dimension : null;

    public static Sequence<string> WordsOf(Kind kind) => kind switch { Kind.Word word => word.Words, Kind.Truth => [Yes, No], _ => [] };

    /// <summary>What stands there, or what is taken where nothing does.</summary>
    public static string Of(PlaceFound found, UnitSystem units)
    {
        if (found.Piece is { } piece)
        {
            return Shown(piece);
        }

        if (found.Key?.Default is not { } token)
        {
            return "";
        }

        var text = Shown(new Piece.Token(token));
        return found.Kind is Kind.Quantity { Dimension: Dimension.Length } && LengthText.TryParse(text, out var length, out _) ? LengthText.Written(length, units) : text;
    }

    /// <summary>What a typed text becomes in the file, or what is wrong with it.</summary>
    public static (Piece? Piece, Message? Problem) Read(Kind kind, string text, UnitSystem units)
    {
        var typed = text.Trim();
        switch (kind)
        {
            case Kind.Quantity { Dimension: Dimension.Length }:
                return LengthText.TryParse(typed, units == UnitSystem.Imperial ? Units.Inch : Units.Millimetre, out var length, out var wrong) ? (Piece.Of(LengthText.Written(length, units)), null) : (null, wrong);

            case Kind.Quantity quantity:
                var whole = IsBare(typed) && quantity.Dimension switch { Dimension.Angle => " deg", Dimension.Fraction or Dimension.Slope => " %", _ => null } is { } unit ? typed + unit : typed;
                return QuantityText.TryParse(whole, quantity.Dimension, out _, out var problem) ? (Piece.Of(whole), null) : (null, problem);

            case Kind.Number:
                return QuantityText.TryParse(typed, Dimension.Number, out var number, out var bad) ? (Piece.Of(number.Si), null) : (null, bad);

            case Kind.Whole:
                return int.TryParse(typed, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count) ? (Piece.Of(count), null) : Wrong(typed, kind);

            case Kind.Truth:
                return typed is Yes or No ? (Piece.Of(typed == Yes), null) : Wrong(typed, kind);

            case Kind.Date:
                return DateOnly.TryParseExact(typed, Iso, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? (Piece.Of(day.ToString(Iso, CultureInfo.InvariantCulture)), null) : Wrong(typed, kind);

            case Kind.Word word:
                return word.Words.Contains(typed) ? (Piece.Of(typed), null) : Wrong(typed, kind);

            case Kind.Position:
                return Read(new Kind.List(new Kind.Quantity(Dimension.Length)), typed, units) is var (both, off) && both is Piece.Items { List.Count: not 2 } ? Wrong(typed, kind) : (both, off);

            case Kind.List list:
                var items = new List<Piece>();
                foreach (var one in typed.Split([";", ", "], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
                {
                    var (item, amiss) = Read(list.Item, one, units);
                    if (item is null)
                    {
                        return (null, amiss);
                    }

                    items.Add(item);
                }

                return (new Piece.Items(items.ToSequence()), null);

            default:
                return (Piece.Of(typed), null);
        }
    }

    /// <summary>What should stand there, in words for people who write on a screen.</summary>
    public static Message Expected(Kind kind) => kind switch
    {
        Kind.Quantity { Dimension: Dimension.Length } => new Message("files.expected.length"),
        Kind.Quantity => new Message("files.expected.quantity"),
        Kind.Number => new Message("files.expected.number"),
        Kind.Whole => new Message("files.expected.whole"),
        Kind.Date => new Message("files.expected.date"),
        Kind.Word word => Message.Of("files.expected.word", ("words", new Argument.List([.. word.Words.Select(w => (Argument)w)]))),
        Kind.Truth => Message.Of("files.expected.word", ("words", new Argument.List([Yes, No]))),
        Kind.Position => new Message("files.expected.position"),
        Kind.List list => Message.Of("files.expected.several", ("one", Expected(list.Item))),
        _ => new Message("files.expected.text"),
    };

    private static (Piece?, Message?) Wrong(string text, Kind kind) =>
        (null, Message.Of("files.place-unreadable", ("text", text.Length <= 40 ? text : text[..40] + "…"), ("expected", Expected(kind))));

    private static bool IsBare(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static string Shown(Piece piece) => piece switch
    {
        Piece.Token { Text: "true" } => Yes,
        Piece.Token { Text: "false" } => No,
        Piece.Token token => PieceTree.Unquoted(token),
        Piece.Items items => string.Join(Between, items.List.Select(Shown)),
        _ => "",
    };
}
