using Clomwright.Web.Editing;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Hosting;

namespace Clomwright.Web;

/// <summary>A workbench that listens.</summary>
public sealed class RunningWorkbench : IAsyncDisposable
{
    private readonly WebApplication app;

    internal RunningWorkbench(WebApplication app, Uri address, string? file)
    {
        this.app = app;
        Address = address;
        FirstPage = file is null ? address : new Uri(address, $"/wall/{Uri.EscapeDataString(HouseKey.Of(file))}");
    }

    /// <summary>Where it listens: <c>http://127.0.0.1:port/</c>.</summary>
    public Uri Address { get; }

    /// <summary>The page to open first.</summary>
    public Uri FirstPage { get; }

    /// <summary>Ends when it is cancelled or told to stop.</summary>
    public Task Ended(CancellationToken cancellation) => app.WaitForShutdownAsync(cancellation);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await app.StopAsync(TimeSpan.FromSeconds(2)).ConfigureAwait(false);
        await app.DisposeAsync();
    }
}
