using Clomwright.Evidence;

namespace Clomwright.Files.Tests;

/// <summary>A diagnostic as people read it.</summary>
internal static class Sentence
{
    public static string Of(Diagnostic diagnostic)
    {
        var words = Phrasebook.English.Say(diagnostic.What, UnitSystem.Imperial);
        return diagnostic.Path.Length == 0 ? words : $"{diagnostic.Path}: {words}";
    }
}
