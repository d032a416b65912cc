using Clomwright.Evidence;

namespace Clomwright.Files;

/// <summary>What is said when the disk refuses.</summary>
internal static class DiskProblem
{
    public static Message Reading(string path, Exception wrong) => wrong switch
    {
        FileNotFoundException or DirectoryNotFoundException => Message.Of("files.not-found", ("path", path)),
        UnauthorizedAccessException => Message.Of("files.not-allowed", ("path", path)),
        _ => Message.Of("files.not-readable", ("path", path), ("why", wrong.Message)),
    };

    public static Diagnostic Writing(string path, Exception wrong) => new("", wrong switch
    {
        DirectoryNotFoundException => Message.Of("files.no-folder", ("path", path)),
        UnauthorizedAccessException => Message.Of("files.not-allowed", ("path", path)),
        _ => Message.Of("files.not-writable", ("path", path), ("why", wrong.Message)),
    });
}
