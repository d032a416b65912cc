using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Clomwright.Web.Sharing;

/// <summary>Where it is kept which phones were let in to the houses of a folder: a file of the user's own, away from the houses, so that nobody mails it with them. It holds no token, only what a token is known by.</summary>
/// <param name="path">The file; null keeps the list only as long as the program runs.</param>
internal sealed class PhoneFile(string? path)
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase, Converters = { new JsonStringEnumConverter() } };

    private readonly UserFile file = new(path);

    /// <summary>The file of a folder of houses, among the user's own data; null where the machine has no place for such.</summary>
    public static string? Of(string folder) => UserFile.Place($"phones-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(folder)))[..16]}.json");

    /// <summary>What is written there; nothing where there is no such file or it cannot be understood: then every phone has to be let in anew.</summary>
    public PhoneBook Read()
    {
        try
        {
            return file.Read() is { } bytes && JsonSerializer.Deserialize<PhoneBook>(bytes, Json) is { Phones: not null } book ? book : PhoneBook.Empty;
        }
        catch (JsonException)
        {
            return PhoneBook.Empty;
        }
    }

    /// <summary>Writes it.</summary>
    /// <returns>Whether it is on the disk.</returns>
    public bool Write(PhoneBook book) => file.Write(JsonSerializer.SerializeToUtf8Bytes(book, Json));
}

/// <summary>What the file holds.</summary>
/// <param name="Port">The port that phones know; 0 before the first time.</param>
/// <param name="Phones">Those let in.</param>
internal sealed record PhoneBook(int Port, IReadOnlyList<Phone> Phones)
{
    public static PhoneBook Empty { get; } = new(0, []);
}
