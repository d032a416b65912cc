using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Files;

/// <summary>One chosen folder of house files. Nothing outside it is read or written, whatever name is asked for.</summary>
/// <remarks>
/// Links inside the folder are followed as long as they stay inside. Whoever can change the folder while we look could still cheat: the
/// folder is its owner's, and this guards against names that come from a page or a phone.
/// </remarks>
public sealed class HouseFolder
{
    private const int LongestName = 200;
    private const int LinksMost = 20;

    private readonly string root;

    private HouseFolder(string root) => this.root = root;

    /// <summary>The folder, links resolved.</summary>
    public string Path => root;

    /// <summary>Chooses a folder.</summary>
    /// <returns>The folder, or what was wrong.</returns>
    public static (HouseFolder? Folder, Diagnostic? Problem) Open(string path)
    {
        try
        {
            return Directory.Exists(path) && Real(System.IO.Path.GetFullPath(path)) is { } real
                ? (new HouseFolder(System.IO.Path.TrimEndingDirectorySeparator(real)), null)
                : (null, new Diagnostic("", Message.Of("files.no-folder", ("path", path))));
        }
        catch (Exception wrong) when (HouseFile.IsOfDisk(wrong))
        {
            return (null, new Diagnostic("", DiskProblem.Reading(path, wrong)));
        }
    }

    /// <summary>Names of the house files in the folder itself, in order.</summary>
    public Sequence<string> List()
    {
        try
        {
            return Directory.EnumerateFiles(root, "*" + HouseFile.Extension)
                .Select(path => System.IO.Path.GetFileName(path))
                .Where(name => Find(name).Problem is null)
                .Order(StringComparer.Ordinal)
                .ToSequence();
        }
        catch (Exception wrong) when (HouseFile.IsOfDisk(wrong))
        {
            return [];
        }
    }

    /// <summary>Reads a house file of the folder.</summary>
    /// <param name="name">Its name, as in <see cref="List"/>; folders inside are separated by <c>/</c>.</param>
    /// <returns>The file, null when it is no house file, and what came of reading it.</returns>
    public (HouseFile? File, HouseReading Reading) Read(string name)
    {
        var (path, problem) = Find(name);
        if (path is null)
        {
            return (null, new HouseReading(null, null, [problem!]));
        }

        var reading = HouseFile.Read(path);
        return (reading.Document is { } document ? new HouseFile(path, document) : null, reading);
    }

    /// <summary>Writes a new house file, never over another.</summary>
    public (HouseFile? File, Diagnostic? Problem) Create(string name, House house)
    {
        var (path, problem) = Find(name);
        return path is null ? (null, problem) : HouseFile.Create(path, house);
    }

    /// <summary>Saves a changed document of a file that was read from this folder.</summary>
    public (HouseFile? File, Diagnostic? Problem) Save(HouseFile file, HouseDocument changed)
    {
        var (_, problem) = Find(System.IO.Path.GetRelativePath(root, file.Path).Replace(System.IO.Path.DirectorySeparatorChar, '/'));
        return problem is null ? file.Save(changed) : (null, problem);
    }

    /// <summary>The path of a name in this folder, or why there is none.</summary>
    private (string? Path, Diagnostic? Problem) Find(string name)
    {
        if (!name.EndsWith(HouseFile.Extension, StringComparison.Ordinal) || name.Length is 0 or > LongestName || name.Split('/').Any(part => !IsPlain(part)))
        {
            return (null, new Diagnostic("", Message.Of("files.name", ("name", name.Length <= LongestName ? name : name[..LongestName] + "…"), ("extension", HouseFile.Extension))));
        }

        try
        {
            return Real(System.IO.Path.Combine(root, name)) is { } real && real.StartsWith(root + System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal)
                ? (real, null)
                : (null, new Diagnostic("", Message.Of("files.outside", ("name", name))));
        }
        catch (Exception wrong) when (HouseFile.IsOfDisk(wrong))
        {
            return (null, new Diagnostic("", DiskProblem.Reading(name, wrong)));
        }
    }

    /// <summary>A part of a name that means the same on every system: no <c>..</c>, no drive, no stream, no device, nothing hidden.</summary>
    private static bool IsPlain(string part) =>
        part.Length > 0 && part[0] is not ('.' or ' ') && part[^1] is not ('.' or ' ') && !part.Any(c => char.IsControl(c) || "\\:*?\"<>|".Contains(c))
        && !IsDevice(part.Split('.')[0].TrimEnd().ToUpperInvariant());

    private static bool IsDevice(string stem) =>
        stem is "CON" or "PRN" or "AUX" or "NUL" or "CONIN$" or "CONOUT$"
        || (stem.Length == 4 && (stem.StartsWith("COM", StringComparison.Ordinal) || stem.StartsWith("LPT", StringComparison.Ordinal)) && "0123456789¹²³".Contains(stem[3]));

    /// <summary>A full path with every link on the way resolved; what does not exist yet stays as it is. Null when links go round in circles.</summary>
    private static string? Real(string full)
    {
        for (var links = 0; links <= LinksMost; links++)
        {
            if (FirstLink(full) is not var (target, rest))
            {
                return full;
            }

            full = System.IO.Path.GetFullPath(System.IO.Path.Combine(target, rest));
        }

        return null;
    }

    /// <summary>Where the first link on a path leads, and what remains of the path after it; null when there is no link on it.</summary>
    private static (string Target, string Remaining)? FirstLink(string full)
    {
        var start = System.IO.Path.GetPathRoot(full)!;
        var parts = full[start.Length..].Split(System.IO.Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries);
        var at = start;
        for (var i = 0; i < parts.Length; i++)
        {
            var next = System.IO.Path.Combine(at, parts[i]);
            if (new FileInfo(next).LinkTarget is { } target)
            {
                return (System.IO.Path.GetFullPath(target, at), System.IO.Path.Combine(parts[(i + 1)..]));
            }

            at = next;
        }

        return null;
    }
}
