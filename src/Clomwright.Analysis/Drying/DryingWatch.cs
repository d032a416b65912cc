namespace Clomwright.Analysis.Drying;

/// <summary>Who waits for the runs of a wall: told how far they are, and able to give them up.</summary>
/// <param name="Tell">Takes the share done, 0 to 1, rising; called from the thread that runs.</param>
/// <param name="Cancelled">Gives up between two lifts or days.</param>
public sealed record DryingWatch(Action<double> Tell, CancellationToken Cancelled);
