using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Clomwright.Web.Sharing;

/// <summary>Which phones are let in: one code at a time lets one phone in once; a token of 256 random bits knows it again, and is kept here only as its SHA-256. A phone that is revoked is cut off at once.</summary>
internal sealed class PhoneList
{
    /// <summary>How long a code lets in.</summary>
    public static readonly TimeSpan CodeLasts = TimeSpan.FromMinutes(10);

    /// <summary>How many phones are let in at most.</summary>
    public const int Most = 40;

    /// <summary>The longest name.</summary>
    public const int NameMost = 40;

    private const int SecretBytes = 32, IdBytes = 6;
    private static readonly TimeSpan WriteAgain = TimeSpan.FromMinutes(1);

    private readonly Lock gate = new();
    private readonly PhoneFile file;
    private readonly TimeProvider clock;
    private readonly Dictionary<string, Dictionary<string, Action>> lines = new(StringComparer.Ordinal);
    private PhoneBook book;
    private DateTimeOffset written;
    private (string Hash, string House, PhoneRole Role, DateTimeOffset Until)? open;

    /// <param name="file">Where the list is kept.</param>
    /// <param name="clock">The time.</param>
    public PhoneList(PhoneFile file, TimeProvider clock)
    {
        (this.file, this.clock) = (file, clock);
        book = file.Read();
        IsKept = true;
    }

    /// <summary>Whether the last change is on the disk: else phones have to be let in anew when the program is started again.</summary>
    public bool IsKept { get; private set; }

    /// <summary>Those let in, in the order in which they came.</summary>
    public IReadOnlyList<Phone> Phones
    {
        get
        {
            lock (gate)
            {
                return book.Phones;
            }
        }
    }

    /// <summary>The port that phones know from before; 0 for none.</summary>
    public int Port
    {
        get
        {
            lock (gate)
            {
                return book.Port;
            }
        }

        set
        {
            lock (gate)
            {
                if (book.Port != value)
                {
                    Keep(book with { Port = value });
                }
            }
        }
    }

    /// <summary>A new code; the one before lets nobody in any more.</summary>
    public PhoneCode Invite(string house, PhoneRole role)
    {
        lock (gate)
        {
            var code = Secret();
            open = (Digest(code), house, role, clock.GetUtcNow() + CodeLasts);
            return new(code, open.Value.Until);
        }
    }

    /// <summary>Whether a code that was shown has not been used and has not expired.</summary>
    public bool IsOpen
    {
        get
        {
            lock (gate)
            {
                return open is { } code && clock.GetUtcNow() < code.Until;
            }
        }
    }

    /// <summary>Lets a phone in by its code, which is used up by it.</summary>
    /// <returns>The phone and its token; nothing where the code is not the one shown, was used or has expired, or where there are too many phones.</returns>
    public (Phone Phone, string Token)? Admit(string code, string name)
    {
        lock (gate)
        {
            if (open is not { } shown || !Same(shown.Hash, Digest(code)) || clock.GetUtcNow() >= shown.Until || book.Phones.Count >= Most)
            {
                return null;
            }

            open = null;
            var (token, now) = (Secret(), clock.GetUtcNow());
            var phone = new Phone(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes)), name, shown.Role, shown.House, Digest(token), now, now);
            Keep(book with { Phones = [.. book.Phones, phone] });
            return (phone, token);
        }
    }

    /// <summary>The phone of a token; null for one that is none of ours or was revoked.</summary>
    public Phone? Find(string? token)
    {
        if (token is null || token.Length > 2 * SecretBytes)
        {
            return null;
        }

        var hash = Digest(token);
        lock (gate)
        {
            // The whole list is looked through, so that nobody learns from the time it takes.
            Phone? found = null;
            foreach (var phone in book.Phones)
            {
                found = Same(phone.Hash, hash) ? phone : found;
            }

            if (found is not null)
            {
                var now = clock.GetUtcNow();
                book = book with { Phones = [.. book.Phones.Select(p => p.Id == found.Id ? p with { Seen = now } : p)] };
                if (now - written >= WriteAgain)
                {
                    Keep(book);
                }
            }

            return found;
        }
    }

    /// <summary>Remembers how a line that a phone holds is cut; false, with nothing remembered, where it was revoked meanwhile.</summary>
    /// <param name="phone">Its id.</param>
    /// <param name="line">Which line.</param>
    /// <param name="cut">Cuts it.</param>
    public bool Holds(string phone, string line, Action cut)
    {
        lock (gate)
        {
            if (book.Phones.All(p => p.Id != phone))
            {
                return false;
            }

            if (!lines.TryGetValue(phone, out var held))
            {
                lines[phone] = held = new(StringComparer.Ordinal);
            }

            held[line] = cut;
            return true;
        }
    }

    /// <summary>A line has ended.</summary>
    public void LetsGo(string phone, string line)
    {
        lock (gate)
        {
            lines.GetValueOrDefault(phone)?.Remove(line);
        }
    }

    /// <summary>Lets a phone in no more and cuts every line that it holds.</summary>
    /// <returns>Whether there was such a phone.</returns>
    public bool Revoke(string id)
    {
        Action[] cut;
        lock (gate)
        {
            if (book.Phones.All(p => p.Id != id))
            {
                return false;
            }

            Keep(book with { Phones = [.. book.Phones.Where(p => p.Id != id)] });
            cut = lines.Remove(id, out var held) ? [.. held.Values] : [];
        }

        foreach (var line in cut)
        {
            line();
        }

        return true;
    }

    private void Keep(PhoneBook next)
    {
        book = next;
        written = clock.GetUtcNow();
        IsKept = file.Write(next);
    }

    private static string Secret() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(SecretBytes));

    private static string Digest(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    private static bool Same(string a, string b) => CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(a), Encoding.ASCII.GetBytes(b));
}
