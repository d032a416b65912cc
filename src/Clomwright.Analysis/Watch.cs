namespace Clomwright.Analysis;

/// <summary>Who waits for long work: told how far it is, and able to give it up.</summary>
/// <param name="Tell">Takes the share done, 0 to 1; called from any thread. Null where nobody looks.</param>
/// <param name="Cancelled">Gives it up.</param>
public sealed record Watch(Action<double>? Tell, CancellationToken Cancelled)
{
    /// <summary>Nobody waits.</summary>
    public static Watch None { get; } = new(null, CancellationToken.None);
}
