using Clomwright.Evidence;

namespace Clomwright.Files;

/// <summary>A file that nobody can make again: work not saved yet, a house put into a folder, what the program keeps for its user.</summary>
public static class KeptFile
{
    /// <summary>Writes it whole or not at all, over an older one of the same name, making its folder if there is none, and waits until the disk has it.</summary>
    /// <returns>Null, or one sentence that says why it could not be written.</returns>
    public static Diagnostic? Write(string path, byte[] bytes) => WholeFile.Put(path, bytes, toDisk: true);
}
