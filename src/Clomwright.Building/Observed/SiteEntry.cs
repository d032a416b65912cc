namespace Clomwright.Building;

/// <summary>One entry of the site record. It is written once and never changed: a later entry may correct it.</summary>
/// <param name="Id">Made where the entry is written, by <see cref="IdOf"/>: the same id sent twice is one entry.</param>
/// <param name="Moment">When it was written, with the offset of the place.</param>
/// <param name="Author">Who wrote it.</param>
/// <param name="What">What was seen.</param>
public sealed record SiteEntry(string Id, DateTimeOffset Moment, string Author, Seen What)
{
    /// <summary>Bytes that an id is made from; 50 bits of them count.</summary>
    public const int IdBytes = 10;

    /// <summary>Digits and letters that nobody takes for another when read aloud: no i, l, o, u.</summary>
    private const string Letters = "0123456789abcdefghjkmnpqrstvwxyz";

    /// <summary>The id of the entry that this one takes the place of; null for a new one.</summary>
    public string? Corrects { get; init; }

    /// <summary>An id: ten letters and digits with a dash in the middle, short enough to be typed.</summary>
    /// <param name="random"><see cref="IdBytes"/> random bytes.</param>
    public static string IdOf(ReadOnlySpan<byte> random)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(random.Length, IdBytes);
        var id = new char[IdBytes + 1];
        for (var i = 0; i < IdBytes; i++)
        {
            id[i < IdBytes / 2 ? i : i + 1] = Letters[random[i] % Letters.Length];
        }

        id[IdBytes / 2] = '-';
        return new string(id);
    }
}
