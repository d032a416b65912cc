using Clomwright.Evidence;

namespace Clomwright.Papers.Views;

/// <summary>Lengths on drawings, as a tape reads them, in the marks of a language.</summary>
internal static class TapeWords
{
    /// <summary>A length in metres as a tape of these units reads it.</summary>
    public static string Tape(this Phrasebook book, double metres, UnitSystem units) => book.Marked(LengthText.Tape(metres, units));

    /// <summary>A length as a tape of these units reads it.</summary>
    public static string Tape(this Phrasebook book, Length length, UnitSystem units) => book.Marked(LengthText.Tape(length, units));
}
