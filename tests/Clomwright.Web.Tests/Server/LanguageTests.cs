using System.Diagnostics;
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
        using var folder = new HouseFolderCopy();
        var own = Directory.CreateDirectory(Path.Combine(folder.Path, "own")).FullName;
        await using (var first = await Program.Start(folder.Path, own))
        {
            Assert.Equal("en", await first.Speaks());
            var english = await first.Wall();
            using var none = await first.Choose("tlh");
            Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
            Assert.Contains("fr", await none.Content.ReadAsStringAsync());
            using var french = await first.Choose("fr");
            Assert.Contains("Français", await french.Content.ReadAsStringAsync());
            Assert.Equal("fr", await first.Speaks());
            var inFrench = await first.Wall(); // looked at before in English: the same words are not given again
            Assert.Equal((english.Findings.Count, english.Totals.Met), (inFrench.Findings.Count, inFrench.Totals.Met));
            Assert.NotEqual(english.Totals.Line, inFrench.Totals.Line);
            Assert.DoesNotContain(inFrench.Findings, f => english.Findings.Any(e => e.Title == f.Title));
        }

        await using (var next = await Program.Start(folder.Path, own))
        {
            Assert.Equal("fr", await next.Speaks());
        }

        await using var asked = await Program.Start(folder.Path, own, "--language", "es");
        Assert.Equal("es", await asked.Speaks());
    }

    /// <summary>The program, on a folder of houses and with a place of its own for what it keeps for its user.</summary>
    private sealed class Program : IAsyncDisposable
    {
        private readonly Process process;
        private readonly HttpClient client;

        private Program(Process process, Uri address)
        {
            this.process = process;
            client = new HttpClient { BaseAddress = address, Timeout = TimeSpan.FromMinutes(2) };
            client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
        }

        public static async Task<Program> Start(string houses, string own, params string[] more)
        {
            Assert.SkipWhen(OperatingSystem.IsWindows() || OperatingSystem.IsMacOS(), "Where the user's own data lies is told to the program by XDG_DATA_HOME, which this system does not read.");
            var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true };
            start.Environment["XDG_DATA_HOME"] = own;
            start.Environment.Remove("CLOM_LANGUAGE");
            foreach (var argument in (string[])[Path.Combine(AppContext.BaseDirectory, "clom.dll"), "open", houses, "--port", "0", "--no-browser", .. more])
            {
                start.ArgumentList.Add(argument);
            }

            var process = Process.Start(start)!;
            var said = (await process.StandardOutput.ReadLineAsync())!;
            return new(process, new Uri(said[said.IndexOf("http", StringComparison.Ordinal)..]));
        }

        public async Task<string> Speaks() => (await client.GetFromJsonAsync<Dictionary<string, string>>("/api/words"))!["lang"];

        public async Task<Scene> Wall()
        {
            await using var hub = KilledTests.Hub(client.BaseAddress!);
            await hub.StartAsync();
            return (await hub.InvokeAsync<HouseAnswer>("Open", HouseFolderCopy.Key, Sight.Inside)).State!.Scene!;
        }

        public Task<HttpResponseMessage> Choose(string language) => client.PostAsJsonAsync("/api/languages", new { language });

        public async ValueTask DisposeAsync()
        {
            client.Dispose();
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
        }
    }
}
