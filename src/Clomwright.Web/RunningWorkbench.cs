using Clomwright.Web.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Hosting;

namespace Clomwright.Web;

/// <summary>A workbench that listens.</summary>
public sealed class RunningWorkbench : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly PhoneDoorway phones;

    internal RunningWorkbench(WebApplication app, Uri address, string page, PhoneDoorway phones)
    {
        (this.app, this.phones) = (app, phones);
        (Address, FirstPage) = (address, new Uri(address, page));
    }

    /// <summary>Where it listens: <c>http://127.0.0.1:port/</c>.</summary>
    public Uri Address { get; }

    /// <summary>The page to open first.</summary>
    public Uri FirstPage { get; }

    /// <summary>Where phones reach it; empty where it is not shared.</summary>
    public IReadOnlyList<Uri> PhoneAddresses => phones.Addresses;

    /// <summary>Ends when it is cancelled or told to stop.</summary>
    public Task Ended(CancellationToken cancellation) => app.WaitForShutdownAsync(cancellation);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await phones.DisposeAsync();
        await app.StopAsync(TimeSpan.FromSeconds(2)).ConfigureAwait(false);
        await app.DisposeAsync();
    }
}
