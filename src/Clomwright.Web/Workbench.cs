using System.Globalization;
using System.Net;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Web.Editing;
using Clomwright.Web.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.SignalR;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace Clomwright.Web;

/// <summary>The workbench: a server for this machine's own browser.</summary>
public static class Workbench
{
    /// <summary>The largest request taken, bytes: an edit is a few hundred.</summary>
    public const int RequestBytesMax = 64 * 1024;

    /// <summary>Starts the workbench, says where it is, opens the browser where asked and possible, and waits until it is cancelled.</summary>
    /// <param name="options">The folder, and how to start.</param>
    /// <param name="say">Takes each line that a person should read.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <returns>0, or 2 when it could not be started and a sentence said why.</returns>
    public static async Task<int> Run(WorkbenchOptions options, Action<string> say, CancellationToken cancellation)
    {
        var language = LanguageFile.OfUser();
        Words.Speak(Phrasebook.In(options.Language ?? language.Read() ?? Phrasebook.English.Language));
        var (folder, problem) = HouseFolder.Open(options.Folder);
        if (folder is null)
        {
            say(Words.Book.Say(problem!.What, UnitSystem.Metric));
            return 2;
        }

        RunningWorkbench running;
        try
        {
            var first = options.File ?? (options.Greet && folder.List() is [var one, ..] ? one : null);
            running = await Start(folder, options.Port, PageOf(first, options.Greet), options.Share ? new WorkbenchShare(LocalAddresses.OfThisMachine(), PhoneFile.Of(folder.Path)) : null, language, rehearses: true, cancellation);
        }
        catch (IOException)
        {
            say(Words.Say("web.say.port-taken", ("port", options.Port.ToString(CultureInfo.InvariantCulture))));
            return 2;
        }

        await using (running)
        {
            say(Words.Say("web.say.address", ("address", running.FirstPage.ToString())));
            foreach (var line in options.Share ? Shared(running) : [])
            {
                say(line);
            }

            if (options.OpenBrowser && !Browser.TryOpen(running.FirstPage))
            {
                say(Words.Say("web.say.no-browser", ("address", running.FirstPage.ToString())));
            }

            say(Words.Say("web.say.how-to-end"));
            await running.Ended(cancellation);
        }

        return 0;
    }

    /// <summary>Starts the workbench and returns at once.</summary>
    /// <param name="folder">The one folder.</param>
    /// <param name="port">The local port; 0 takes any free one.</param>
    /// <param name="file">The house file to open first; null shows the houses of the folder.</param>
    /// <param name="share">How phones are let in; null lets none in.</param>
    /// <param name="cancellation">Gives up starting.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static Task<RunningWorkbench> Start(HouseFolder folder, int port = 0, string? file = null, WorkbenchShare? share = null, CancellationToken cancellation = default) =>
        Start(folder, port, PageOf(file, greet: false), share, new LanguageFile(null), rehearses: false, cancellation);

    /// <summary>The wall of a house, or the list of houses.</summary>
    private static string PageOf(string? file, bool greet) => file is null ? "/" : $"/wall/{Uri.EscapeDataString(HouseKey.Of(file))}{(greet ? "?greet" : "")}";

    private static async Task<RunningWorkbench> Start(HouseFolder folder, int port, string page, WorkbenchShare? share, LanguageFile language, bool rehearses, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var houses = new OpenHouses(folder);
        var phones = new PhoneList(new PhoneFile(share is null ? PhoneFile.Of(folder.Path) : share.ListFile), share?.Clock ?? TimeProvider.System);
        var door = new PhoneDoorway(houses, phones);
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { Args = [], ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, port, listen => listen.Protocols = HttpProtocols.Http1);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = RequestBytesMax;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
        });
        builder.Services.AddSignalR(hub => hub.MaximumReceiveMessageSize = RequestBytesMax).AddJsonProtocol(json => WebJson.Apply(json.PayloadSerializerOptions));
        builder.Services.ConfigureHttpJsonOptions(json => WebJson.Apply(json.SerializerOptions));
        builder.Services.AddSingleton(houses);

        var app = builder.Build();
        houses.Rehearsal = rehearses ? new Rehearsal(app.Services.GetRequiredService<IOptions<JsonHubProtocolOptions>>().Value.PayloadSerializerOptions) : null;
        app.Lifetime.ApplicationStopped.Register(houses.Close);
        app.Use(Guarded);
        app.MapClient();
        app.MapLanguages(language);
        app.MapHouses();
        app.MapRecords();
        app.MapToday(_ => TodayRole.Own);
        app.MapPhones(phones, door);
        app.MapRounds();
        app.MapAsBuilt();
        app.MapIssues();
        app.MapHub<HouseHub>("/hub");
        await app.StartAsync(cancellation);

        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        await door.Open(share?.Addresses ?? [], cancellation);
        return new RunningWorkbench(app, new Uri(address), page, door);
    }

    private static IEnumerable<string> Shared(RunningWorkbench running) => running.PhoneAddresses.Count == 0
        ? [Words.Say("web.say.no-network")]
        : [.. running.PhoneAddresses.Select(address => Words.Say("web.say.shared", ("address", address.ToString()))), Words.Say("web.say.shared-how")];

    private static async Task Guarded(HttpContext context, RequestDelegate next)
    {
        Guards.Write(context.Response.Headers);
        if (context.Request.ContentLength > RequestBytesMax)
        {
            await Guards.Refuse(context, StatusCodes.Status413PayloadTooLarge, "web.refused.size");
        }
        else if (Doorkeeper.Refusal(Guards.Asked(context)) is { } refusal)
        {
            await Guards.Refuse(context, StatusCodes.Status403Forbidden, refusal);
        }
        else
        {
            await next(context);
        }
    }
}
