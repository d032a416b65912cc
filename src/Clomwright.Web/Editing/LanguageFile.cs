using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>Which language this user chose on the first page: one word in a file among the user's own data.</summary>
/// <param name="path">The file; null keeps the choice only as long as the program runs.</param>
internal sealed class LanguageFile(string? path)
{
    /// <summary>The file of this user; none where the machine has no place for such.</summary>
    public static LanguageFile OfUser()
    {
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return new(own.Length == 0 ? null : Path.Combine(own, "Clomwright", "language"));
    }

    /// <summary>The language chosen; null where none was, or one that is not there any more.</summary>
    public string? Read()
    {
        try
        {
            return path is not null && File.Exists(path) && File.ReadAllText(path).Trim() is var chosen && Phrasebook.Languages.Contains(chosen) ? chosen : null;
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Keeps it; where it cannot be written it holds as long as the program runs.</summary>
    public void Write(string language)
    {
        try
        {
            if (path is not null)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllText(path, language + "\n");
            }
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
        }
    }
}
