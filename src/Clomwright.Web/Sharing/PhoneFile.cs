using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Clomwright.Files;

namespace Clomwright.Web.Sharing;

/// <summary>Where it is kept which phones were let in to the houses of a folder: a file of the user's own, away from the houses, so that nobody mails it with them. It holds no token, only what a token is known by.</summary>
/// <param name="path">The file; null keeps the list only as long as the program runs.</param>
internal sealed class PhoneFile(string? path)
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase, Converters = { new JsonStringEnumConverter() } };

    /// <summary>The file of a folder of houses, among the user's own data; null where the machine has no place for such.</summary>
    public static string? Of(string folder)
    {
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        var digest = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(folder)))[..16];
        return own.Length == 0 ? null : Path.Combine(own, "Clomwright", $"phones-{digest}.json");
    }

    /// <summary>What is written there; nothing where there is no such file or it cannot be understood: then every phone has to be let in anew.</summary>
    public PhoneBook Read()
    {
        try
        {
            return path is not null && File.Exists(path) && JsonSerializer.Deserialize<PhoneBook>(File.ReadAllBytes(path), Json) is { Phones: not null } book ? book : PhoneBook.Empty;
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or JsonException)
        {
            return PhoneBook.Empty;
        }
    }

    /// <summary>Writes it, for nobody but this user to read where the system knows such a thing.</summary>
    /// <returns>Whether it is on the disk.</returns>
    public bool Write(PhoneBook book)
    {
        if (path is null)
        {
            return false;
        }

        try
        {
            var folder = Path.GetDirectoryName(path)!;
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else
            {
                Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }

            if (OutputFile.Write(path, JsonSerializer.SerializeToUtf8Bytes(book, Json)) is not null)
            {
                return false;
            }

            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            }

            return true;
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}

/// <summary>What the file holds.</summary>
/// <param name="Port">The port that phones know; 0 before the first time.</param>
/// <param name="Phones">Those let in.</param>
internal sealed record PhoneBook(int Port, IReadOnlyList<Phone> Phones)
{
    public static PhoneBook Empty { get; } = new(0, []);
}
