using System.Net;
using System.Net.Http.Json;
using Clomwright.Web.Editing;
using Clomwright.Web.Scenes;
using Microsoft.AspNetCore.SignalR.Client;

namespace Clomwright.Web.Tests.Server;

/// <summary>The language chosen on the first page, in a program of its own: one process speaks one language at a time. Rank: by hand.</summary>
public sealed class LanguageTests
{
    [Fact]
    public async Task ALanguageChosen_IsSpokenAtOnce_AndByTheNextStart_UnlessAnotherIsAskedFor()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || OperatingSystem.IsMacOS(), "Where the user's own data lies is told to the program by XDG_DATA_HOME, which this system does not read.");
        using var folder = new HouseFolderCopy();
        await using (var first = await RunningProgram.On(folder.Path))
        {
            using var client = Client(first);
            Assert.Equal("en", await Speaks(client));
            var english = await Wall(first);
            using var none = await Choose(client, "tlh");
            Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
            Assert.Contains("fr", await none.Content.ReadAsStringAsync());
            using var french = await Choose(client, "fr");
            Assert.Contains("Français", await french.Content.ReadAsStringAsync());
            Assert.Equal("fr", await Speaks(client));
            var inFrench = await Wall(first); // looked at before in English: the same words are not given again
            Assert.Equal((english.Findings.Count, english.Totals.Met), (inFrench.Findings.Count, inFrench.Totals.Met));
            Assert.NotEqual(english.Totals.Line, inFrench.Totals.Line);
            Assert.DoesNotContain(inFrench.Findings, f => english.Findings.Any(e => e.Title == f.Title));
        }

        await using (var next = await RunningProgram.On(folder.Path))
        {
            using var client = Client(next);
            Assert.Equal("fr", await Speaks(client));
        }

        await using var asked = await RunningProgram.On(folder.Path, more: ["--language", "es"]);
        using var last = Client(asked);
        Assert.Equal("es", await Speaks(last));
    }

    private static HttpClient Client(RunningProgram program)
    {
        var client = new HttpClient { BaseAddress = program.Address, Timeout = TimeSpan.FromMinutes(2) };
        client.DefaultRequestHeaders.Add("Origin", program.Address.GetLeftPart(UriPartial.Authority));
        return client;
    }

    private static async Task<string> Speaks(HttpClient client) => (await client.GetFromJsonAsync<Dictionary<string, string>>("/api/words"))!["lang"];

    private static Task<HttpResponseMessage> Choose(HttpClient client, string language) => client.PostAsJsonAsync("/api/languages", new { language });

    private static async Task<Scene> Wall(RunningProgram program)
    {
        await using var hub = KilledTests.Hub(program.Address);
        await hub.StartAsync();
        return (await hub.InvokeAsync<HouseAnswer>("Open", HouseFolderCopy.Key, Sight.Inside)).State!.Scene!;
    }
}
