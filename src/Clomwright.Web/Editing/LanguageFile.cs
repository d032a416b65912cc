using System.Text;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>Which language this user chose on the first page: one word in a file of the user's own.</summary>
/// <param name="path">The file; null keeps the choice only as long as the program runs.</param>
internal sealed class LanguageFile(string? path)
{
    private readonly UserFile file = new(path);

    /// <summary>The file of this user.</summary>
    public static LanguageFile OfUser() => new(UserFile.Place("language"));

    /// <summary>The language chosen; null where none was, or one that is not there any more.</summary>
    public string? Read() => file.Read() is { } bytes && Encoding.UTF8.GetString(bytes).Trim() is var chosen && Phrasebook.Languages.Contains(chosen) ? chosen : null;

    /// <summary>Keeps it; where it cannot be written it holds as long as the program runs.</summary>
    public void Write(string language) => file.Write(Encoding.UTF8.GetBytes(language + "\n"));
}
