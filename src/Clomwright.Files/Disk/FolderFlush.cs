using System.Runtime.InteropServices;

namespace Clomwright.Files;

/// <summary>Brings a folder's list of names to the disk, so that a rename outlives a power cut. Windows has no such call for folders and needs none.</summary>
internal static partial class FolderFlush
{
    private const int ReadOnly = 0;

    /// <summary>Does what the system can; a file system that refuses is left at that, since the file itself is already on the disk.</summary>
    public static void Of(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var handle = Open(folder, ReadOnly);
        if (handle >= 0)
        {
            _ = Flush(handle);
            _ = Close(handle);
        }
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int Flush(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}
