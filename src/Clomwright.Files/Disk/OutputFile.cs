using Clomwright.Evidence;

namespace Clomwright.Files;

/// <summary>A file that the program makes from a house and can make again: a paper, a drawing, an export.</summary>
public static class OutputFile
{
    /// <summary>Writes it whole or not at all, over an older one of the same name, making its folder if there is none. It does not wait for the disk: hundreds of papers would take as long to sync as to draw.</summary>
    /// <returns>Null, or one sentence that says why it could not be written.</returns>
    public static Diagnostic? Write(string path, byte[] bytes) => WholeFile.Put(path, bytes, toDisk: false);
}
