using System.Globalization;
using System.Security.Cryptography;
using Clomwright.Building;
using Clomwright.Files;

namespace Clomwright.Web.Editing;

/// <summary>
/// What is changed and not yet saved, kept beside the house file so that a program that is killed loses half a second at most. The house file itself is written only when a
/// person saves. The name of what is kept says of which text of the file it is: taken up again where that still stands, laid beside as a house of its own where it does not.
/// </summary>
/// <param name="name">The house file.</param>
/// <param name="snapshot">The text of the file and, where it has changed since, the house as it is; called on another thread.</param>
internal sealed class KeptAside(string name, Func<(HouseDocument File, House? Changed)> snapshot) : IDisposable
{
    private const string Ending = ".kept";
    private const int NamesMost = 1000;

    private static readonly TimeSpan Wait = TimeSpan.FromMilliseconds(400);

    /// <summary>One keeping at a time. Whoever holds the house never waits for it: a keeping asks the house what it is.</summary>
    private readonly Lock turn = new();
    private readonly Lock waiting = new();
    private Timer? timer;
    private bool waits, ended;

    /// <summary>What was kept of a house when the program last ended; null where nothing was, or where the file has become another.</summary>
    public static House? Of(HouseFile file)
    {
        var path = PathOf(file.Path, file.Document);
        var found = Plain(path) ? HouseFile.Read(path) : null;
        LayBeside(file.Path, path);
        return found?.House;
    }

    /// <summary>Keeps the house as it will be in a moment. Many changes in that moment are kept once.</summary>
    public void Soon()
    {
        lock (waiting)
        {
            if (waits || ended)
            {
                return;
            }

            waits = true;
            timer ??= new Timer(_ => InTurn());
            timer.Change(Wait, Timeout.InfiniteTimeSpan);
        }
    }

    /// <summary>Nothing is kept after the end.</summary>
    private void InTurn()
    {
        lock (turn)
        {
            if (!ended)
            {
                Now();
            }
        }
    }

    /// <summary>Keeps the house as it is, or takes away what was kept where the file says the same.</summary>
    public void Now()
    {
        lock (turn)
        {
            lock (waiting)
            {
                waits = false;
            }

            var (file, changed) = snapshot();
            if (!File.Exists(name))
            {
                return;
            }

            var path = PathOf(name, file);
            if (changed is not null)
            {
                KeptFile.Write(path, file.With(changed).ToBytes());
            }

            foreach (var old in Kept(name).Where(old => changed is null || old != path))
            {
                Forget(old);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        bool last;
        lock (waiting)
        {
            timer?.Dispose();
            (last, ended) = (waits, true);
        }

        lock (turn)
        {
            if (last)
            {
                Now();
            }
        }
    }

    /// <summary>What was kept of a text of the file that stands no more becomes a house file of its own: nobody's work is thrown away.</summary>
    private static void LayBeside(string name, string current)
    {
        foreach (var old in Kept(name).Where(old => old != current))
        {
            var stem = name[..^HouseFile.Extension.Length];
            var free = Enumerable.Range(1, NamesMost).Select(n => $"{stem}-kept-{n.ToString(CultureInfo.InvariantCulture)}{HouseFile.Extension}").FirstOrDefault(path => !File.Exists(path));
            try
            {
                if (free is not null && Plain(old))
                {
                    File.Move(old, free, overwrite: false);
                }
            }
            catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
            {
                // It stays where it is, and is found again next time.
            }
        }
    }

    private static void Forget(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            // What the file says already is taken up as no change.
        }
    }

    private static string[] Kept(string name)
    {
        try
        {
            return Directory.GetFiles(Path.GetDirectoryName(name)!, $".{Path.GetFileName(name)}.*{Ending}");
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>A link could lead out of the folder.</summary>
    private static bool Plain(string path) => File.Exists(path) && new FileInfo(path).LinkTarget is null;

    private static string PathOf(string name, HouseDocument of) =>
        Path.Combine(Path.GetDirectoryName(name)!, $".{Path.GetFileName(name)}.{Convert.ToHexStringLower(SHA256.HashData(of.ToBytes()))[..16]}{Ending}");
}
