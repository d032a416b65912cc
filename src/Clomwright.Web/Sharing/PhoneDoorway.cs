using System.Net;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Sharing;

/// <summary>Whether phones can come in at all: shut until it is opened, on the command line or on the page of phones, and shut again from there or with the program.</summary>
internal sealed class PhoneDoorway(OpenHouses houses, PhoneList phones) : IAsyncDisposable
{
    private readonly SemaphoreSlim gate = new(1, 1);
    private PhoneServer? server;

    /// <summary>Where phones reach this machine; empty while it is shut.</summary>
    public IReadOnlyList<Uri> Addresses => server?.Addresses ?? [];

    /// <summary>Opens it on some addresses of this machine, unless it is open; with none it stays shut.</summary>
    public async Task Open(IReadOnlyList<IPAddress> addresses, CancellationToken cancellation)
    {
        await gate.WaitAsync(cancellation);
        try
        {
            server ??= addresses.Count == 0 ? null : await PhoneServer.Start(houses, phones, addresses, cancellation);
        }
        finally
        {
            gate.Release();
        }
    }

    /// <summary>Shuts it: no phone is answered any more. Who was let in still is when it opens again.</summary>
    public async Task Shut()
    {
        await gate.WaitAsync();
        try
        {
            if (server is { } open)
            {
                server = null;
                await open.DisposeAsync();
            }
        }
        finally
        {
            gate.Release();
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await Shut();
        gate.Dispose();
    }
}
