namespace Clomwright.Testing;

/// <summary>Documents in the repository that are made from the code: a test compares them, and writes them when asked to.</summary>
public static class Published
{
    /// <summary>Whether documents are to be written anew: <c>CLOM_WRITE_DOCS=1</c>.</summary>
    public static bool Writing { get; } = Environment.GetEnvironmentVariable("CLOM_WRITE_DOCS") == "1";

    /// <summary>The document as it stands in the repository, after writing it anew if that was asked for.</summary>
    /// <param name="path">From the root of the repository.</param>
    /// <param name="made">What the code makes of it.</param>
    public static string Read(string path, string made)
    {
        var full = Path.Combine(Counts.Root, path);
        if (Writing)
        {
            File.WriteAllText(full, made);
        }

        return File.ReadAllText(full).ReplaceLineEndings("\n");
    }
}
