using Clomwright.Evidence;

namespace Clomwright.Files;

/// <summary>The moments of a save at which the machine might stop.</summary>
internal enum SaveStep
{
    /// <summary>An empty file stands beside.</summary>
    Begun,

    /// <summary>Half of the new bytes are in it.</summary>
    HalfWritten,

    /// <summary>All of them are.</summary>
    Written,

    /// <summary>They are on the disk itself, no longer only in the machine's memory.</summary>
    Flushed,

    /// <summary>The new file has the old one's name.</summary>
    Renamed,

    /// <summary>The folder's list of names is on the disk too.</summary>
    FolderFlushed,
}

/// <summary>Writes a file beside the old one, brings it to the disk, and then gives it the old one's name: never half a file.</summary>
internal static class WholeFile
{
    /// <summary>Writes a file that must not exist yet.</summary>
    public static Diagnostic? Create(string path, byte[] bytes, Action<SaveStep>? passed = null) =>
        Guarded(path, () => File.Exists(path) || Directory.Exists(path)
            ? new Diagnostic("", Message.Of("files.exists", ("path", path)))
            : Write(path, bytes, overwrite: false, passed));

    /// <summary>Writes over a file that still holds what was read from it.</summary>
    public static Diagnostic? Replace(string path, ReadOnlyMemory<byte> expected, byte[] bytes, Action<SaveStep>? passed = null) =>
        Guarded(path, () =>
        {
            if (!File.Exists(path))
            {
                return new Diagnostic("", Message.Of("files.gone", ("path", path)));
            }

            var target = new FileInfo(path).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? path;
            return SameBytes(target, expected.Span)
                ? Write(target, bytes, overwrite: true, passed)
                : new Diagnostic("", Message.Of("files.changed-meanwhile", ("path", path)));
        });

    /// <summary>Writes a file over another of that name or new, in a folder that is made if need be.</summary>
    /// <param name="path">Where.</param>
    /// <param name="bytes">What.</param>
    /// <param name="toDisk">Waits until the disk has it. Otherwise it is never half a file while the machine runs, but can be lost with the machine.</param>
    /// <param name="passed">Is told of each step.</param>
    public static Diagnostic? Put(string path, byte[] bytes, bool toDisk, Action<SaveStep>? passed = null) => Guarded(path, () =>
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        return Write(path, bytes, overwrite: File.Exists(path), passed, toDisk);
    });

    private static bool SameBytes(string path, ReadOnlySpan<byte> expected) =>
        new FileInfo(path).Length == expected.Length && File.ReadAllBytes(path).AsSpan().SequenceEqual(expected);

    private static Diagnostic? Guarded(string path, Func<Diagnostic?> write)
    {
        try
        {
            return write();
        }
        catch (Exception wrong) when (HouseFile.IsOfDisk(wrong))
        {
            return DiskProblem.Writing(path, wrong);
        }
    }

    private static Diagnostic? Write(string path, byte[] bytes, bool overwrite, Action<SaveStep>? passed, bool toDisk = true)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var beside = Path.Combine(folder, $".{Path.GetFileName(path)}.{Guid.NewGuid():N}.saving");
        try
        {
            using (var stream = new FileStream(beside, Beside(path, overwrite)))
            {
                passed?.Invoke(SaveStep.Begun);
                stream.Write(bytes, 0, bytes.Length / 2);
                stream.Flush();
                passed?.Invoke(SaveStep.HalfWritten);
                stream.Write(bytes, bytes.Length / 2, bytes.Length - bytes.Length / 2);
                stream.Flush();
                passed?.Invoke(SaveStep.Written);
                if (toDisk)
                {
                    stream.Flush(flushToDisk: true);
                    passed?.Invoke(SaveStep.Flushed);
                }
            }

            File.Move(beside, path, overwrite);
            passed?.Invoke(SaveStep.Renamed);
            if (toDisk)
            {
                FolderFlush.Of(folder);
                passed?.Invoke(SaveStep.FolderFlushed);
            }

            return null;
        }
        finally
        {
            File.Delete(beside);
        }
    }

    /// <summary>A new file that only we write, with the permissions of the one that it will replace.</summary>
    private static FileStreamOptions Beside(string path, bool overwrite)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (overwrite && !OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = File.GetUnixFileMode(path);
        }

        return options;
    }
}
