namespace Clomwright.Evidence;

/// <summary>What people read, as a key with typed arguments. The phrasebook turns it into words.</summary>
/// <remarks>Keys are ours and permanent, in kebab case with a dot after the room: <c>geometry.openings-overlap</c>.</remarks>
public sealed record Message
{
    /// <summary>A message without arguments.</summary>
    public Message(string key) : this(key, [])
    {
    }

    private Message(string key, Sequence<NamedArgument> arguments)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(key);
        Key = key;
        Arguments = arguments;
    }

    /// <summary>The key in the words files.</summary>
    public string Key { get; }

    /// <summary>The arguments, in the order given.</summary>
    public Sequence<NamedArgument> Arguments { get; }

    /// <summary>A message with arguments: <c>Message.Of("geometry.too-wide", ("width", width), ("wall", length))</c>.</summary>
    public static Message Of(string key, params ReadOnlySpan<(string Name, Argument Value)> arguments)
    {
        var named = new NamedArgument[arguments.Length];
        for (var i = 0; i < arguments.Length; i++)
        {
            named[i] = new NamedArgument(arguments[i].Name, arguments[i].Value);
        }

        return new Message(key, Sequence.Create<NamedArgument>(named));
    }
}

/// <summary>An argument with the name that the words use for it.</summary>
public sealed record NamedArgument(string Name, Argument Value);
