using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What somebody who has to call for help reads from a card. Anything not given is left to write in by hand.</summary>
public sealed record Emergency
{
    /// <summary>The number to call, as it is dialled there.</summary>
    public string? Number { get; init; }

    /// <summary>Address of the site.</summary>
    public string? Address { get; init; }

    /// <summary>How an ambulance finds it from the road, and what its driver must know of gate, bridge and ground.</summary>
    public string? Way { get; init; }

    /// <summary>Where somebody stands to show the way.</summary>
    public string? Meet { get; init; }

    /// <summary>The nearest hospital that takes accidents, and how far it is.</summary>
    public string? Hospital { get; init; }

    /// <summary>Engineer, inspector, owner, whoever may have to be called; in the order in which they are printed.</summary>
    public Sequence<Contact> Contacts { get; init; }
}

/// <summary>Somebody to call.</summary>
/// <param name="Role">What they are to this house: <c>engineer</c>, <c>inspector</c>.</param>
/// <param name="Name">Who it is.</param>
/// <param name="Phone">Their number.</param>
public sealed record Contact(string Role, string Name, string Phone);
