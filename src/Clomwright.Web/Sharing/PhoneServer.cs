using System.Net;
using System.Net.Sockets;
using Clomwright.Web.Editing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Clomwright.Web.Sharing;

/// <summary>What phones on the local network talk to: a server of its own beside the workbench's, which holds nothing but what a phone may ask for. There is no house to be changed on it.</summary>
internal sealed class PhoneServer : IAsyncDisposable
{
    /// <summary>The port tried first: phones keep what they have not sent yet by address and port, so that it should stay.</summary>
    public const int FirstPort = 7420;

    private const int PortsTried = 20, ConnectionsMost = 200;

    private readonly WebApplication app;

    private PhoneServer(WebApplication app, IReadOnlyList<IPAddress> addresses, int port)
    {
        this.app = app;
        Addresses = [.. addresses.Select(address => new Uri($"http://{address}:{port}/"))];
    }

    /// <summary>Where phones reach it.</summary>
    public IReadOnlyList<Uri> Addresses { get; }

    /// <summary>Starts it on the port that phones know from before, else on the next that is free.</summary>
    /// <returns>Null where no port could be had.</returns>
    public static async Task<PhoneServer?> Start(OpenHouses houses, PhoneList phones, IReadOnlyList<IPAddress> addresses, CancellationToken cancellation)
    {
        var first = phones.Port > 0 ? phones.Port : FirstPort;
        for (var port = first; port < first + PortsTried; port++)
        {
            var app = Build(houses, phones, addresses, port);
            try
            {
                await app.StartAsync(cancellation);
                phones.Port = port;
                return new PhoneServer(app, addresses, port);
            }
            catch (Exception taken) when (taken is IOException or SocketException)
            {
                await app.DisposeAsync();
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await app.StopAsync(TimeSpan.FromSeconds(1)).ConfigureAwait(false);
        await app.DisposeAsync();
    }

    private static WebApplication Build(OpenHouses houses, PhoneList phones, IReadOnlyList<IPAddress> addresses, int port)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { Args = [], ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            foreach (var address in addresses)
            {
                kestrel.Listen(address, port, listen => listen.Protocols = HttpProtocols.Http1);
            }

            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Workbench.RequestBytesMax;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            kestrel.Limits.MaxConcurrentConnections = ConnectionsMost;
        });
        builder.Services.ConfigureHttpJsonOptions(json => WebJson.Apply(json.SerializerOptions));
        builder.Services.AddSingleton(houses).AddSingleton(phones);

        var app = builder.Build();
        var door = new PhoneDoor(phones, addresses, houses.Folder);
        app.Use(door.Guard);
        app.MapAdmission(door);
        app.MapToday(context => PhoneDoor.Of(context)!.Role == PhoneRole.Logger ? TodayRole.Logger : TodayRole.Reader).WithMetadata(new PhoneAccess(PhoneRole.Reader));
        app.MapPapers().WithMetadata(new PhoneAccess(PhoneRole.Reader));
        app.MapWriting(context => PhoneDoor.Of(context)!.Name).WithMetadata(new PhoneAccess(PhoneRole.Logger));
        return app;
    }
}
