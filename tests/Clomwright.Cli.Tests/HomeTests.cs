using System.Net;
using System.Text.RegularExpressions;
using Clomwright.Cli.Verbs;
using Clomwright.Files;
using Clomwright.Testing;

namespace Clomwright.Cli.Tests;

/// <summary><c>clom</c> as a double click starts it. Rank: by hand.</summary>
public sealed partial class HomeTests : IDisposable
{
    private readonly OwnFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Starts it, waits until it says where it is, and ends it.</summary>
    private async Task<string> Started(Func<Uri, Task> meanwhile)
    {
        using var said = new StringWriter();
        using var complaints = new StringWriter();
        using var stop = new CancellationTokenSource();
        var running = HomeVerb.Run(folder["."], new Terminal(TextWriter.Synchronized(said), complaints, Run.Today), openBrowser: false, stop.Token);
        Match address;
        while (!(address = Address().Match(said.ToString())).Success && !running.IsCompleted)
        {
            await Task.Delay(20);
        }

        if (address.Success)
        {
            await meanwhile(new Uri(address.Value));
        }

        await stop.CancelAsync();
        await running;
        Assert.Equal("", complaints.ToString());
        return said.ToString();
    }

    [Fact]
    public async Task The_first_start_makes_the_folder_with_houses_in_it_and_the_next_leaves_it_as_it_is()
    {
        var houses = Path.Combine(folder["."], HomeVerb.Folder);
        var first = await Started(async address =>
        {
            using var client = new HttpClient { BaseAddress = address };
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/")).StatusCode);
        });
        Assert.Contains("leave it open", first, StringComparison.Ordinal);
        Assert.Contains("/wall/heron-point?greet", first, StringComparison.Ordinal);
        var files = Directory.GetFiles(houses).Select(Path.GetFileName).Order().ToArray();
        Assert.Contains("heron-point.house.json", files);
        Assert.All(files, file => Assert.NotNull(HouseFile.Read(Path.Combine(houses, file!)).House));
        Assert.Equal(File.ReadAllBytes(Run.Example("heron-point.house.json")), File.ReadAllBytes(Path.Combine(houses, "heron-point.house.json")));

        File.Delete(Path.Combine(houses, "heron-point.house.json"));
        var next = await Started(_ => Task.CompletedTask);
        Assert.Contains(houses, next, StringComparison.Ordinal);
        Assert.DoesNotContain("?greet", next, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(houses, "heron-point.house.json")));
    }

    [Fact]
    public async Task Where_the_folder_cannot_be_made_one_sentence_says_so()
    {
        File.WriteAllText(folder["no-folder"], "");
        using var said = new StringWriter();
        using var complaints = new StringWriter();
        Assert.Equal(2, await HomeVerb.Run(folder["no-folder"], new Terminal(said, complaints, Run.Today), openBrowser: false, CancellationToken.None));
        Assert.Contains("cannot be made", complaints.ToString(), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Address();
}
