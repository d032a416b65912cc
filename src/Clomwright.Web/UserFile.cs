using Clomwright.Files;

namespace Clomwright.Web;

/// <summary>A file of the user's own, away from the houses, so that nobody mails it with them: for nobody else to read where the system knows such a thing.</summary>
/// <param name="path">The file; null keeps nothing.</param>
internal sealed class UserFile(string? path)
{
    private const UnixFileMode Own = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Where a file of that name lies among the user's own data; null where the machine has no place for such.</summary>
    public static string? Place(string name)
    {
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return own.Length == 0 ? null : Path.Combine(own, "Clomwright", name);
    }

    /// <summary>What is in it; null where it is not there or cannot be read.</summary>
    public byte[]? Read()
    {
        try
        {
            return path is not null && File.Exists(path) ? File.ReadAllBytes(path) : null;
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Writes it whole or not at all.</summary>
    /// <returns>Whether it is on the disk.</returns>
    public bool Write(byte[] bytes)
    {
        if (path is null)
        {
            return false;
        }

        try
        {
            var folder = Path.GetDirectoryName(path)!;
            if (!OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder, Own | UnixFileMode.UserExecute);
            }

            if (KeptFile.Write(path, bytes) is not null)
            {
                return false;
            }

            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(path, Own);
            }

            return true;
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
