using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;

namespace Clomwright.Web.Tests.Server;

/// <summary>What a running workbench turns away, asked over real sockets. Rank: by hand.</summary>
public sealed class RefusalTests : IAsyncLifetime
{
    private readonly HouseFolderCopy folder = new();
    private RunningWorkbench workbench = null!;
    private HttpClient client = null!;

    public async ValueTask InitializeAsync()
    {
        workbench = await folder.Start();
        client = new HttpClient { BaseAddress = workbench.Address };
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await workbench.DisposeAsync();
        folder.Dispose();
    }

    [Fact]
    public async Task OwnPage_IsServedWithItsGuards()
    {
        using var answer = await client.GetAsync("/");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("default-src 'self'", answer.Headers.GetValues("Content-Security-Policy").Single());
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Fact]
    public void Address_IsTheLoopbackAddress() => Assert.Equal("127.0.0.1", workbench.Address.Host);

    [Fact]
    public async Task OtherAddressesOfThisMachine_AreNotListenedOn()
    {
        var others = (await Dns.GetHostAddressesAsync(Dns.GetHostName())).Where(a => a.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(a)).ToArray();
        Assert.SkipWhen(others.Length == 0, "this machine has no other IPv4 address to try");
        using var socket = new TcpClient();
        await Assert.ThrowsAsync<SocketException>(async () => await socket.ConnectAsync(others[0], workbench.Address.Port).WaitAsync(TimeSpan.FromSeconds(2)));
    }

    [Fact]
    public async Task ForeignHost_IsRefused()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/houses");
        request.Headers.Host = $"evil.example:{workbench.Address.Port}";
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("only on this machine", await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task ForeignOrigin_CannotReachTheHub()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/hub/negotiate?negotiateVersion=1") { Content = new StringContent("") };
        request.Headers.Add("Origin", "http://evil.example");
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);

        using var socket = new ClientWebSocket();
        socket.Options.SetRequestHeader("Origin", "http://evil.example");
        await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(new Uri($"ws://127.0.0.1:{workbench.Address.Port}/hub"), CancellationToken.None));
    }

    [Fact]
    public async Task OversizedBody_IsRefused()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/hub/negotiate") { Content = new ByteArrayContent(new byte[Workbench.RequestBytesMax + 1]) };
        request.Headers.Add("Origin", workbench.Address.GetLeftPart(UriPartial.Authority));
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Theory]
    [InlineData("..%2f..%2fetc%2fpasswd")]
    [InlineData("%2e%2e%2f%2e%2e%2fetc%2fpasswd")]
    [InlineData("..%5c..%5cwindows")]
    [InlineData("%00")]
    [InlineData("heron-point.house.json")]
    [InlineData("HERON-POINT")]
    [InlineData("nowhere")]
    public async Task KeyThatIsNoHouseOfTheFolder_GivesOneSentence(string key)
    {
        using var answer = await client.GetAsync($"/api/houses/{key}/papers");
        Assert.Contains(answer.StatusCode, (HttpStatusCode[])[HttpStatusCode.NotFound, HttpStatusCode.BadRequest]);
    }

    [Theory]
    [InlineData("GET /api/houses/../../../../etc/passwd HTTP/1.1")]
    [InlineData("GET /app/../../Clomwright.Web.dll HTTP/1.1")]
    [InlineData("GET /app/%2e%2e/%2e%2e/etc/passwd HTTP/1.1")]
    [InlineData("GET //etc/passwd HTTP/1.1")]
    public async Task PathTrickSentRaw_FindsNothing(string line)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, workbench.Address.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"{line}\r\nHost: 127.0.0.1:{workbench.Address.Port}\r\nConnection: close\r\n\r\n"));
        using var reader = new StreamReader(stream);
        var answer = await reader.ReadToEndAsync();
        Assert.Matches(@"^HTTP/1\.1 (400|403|404) ", answer);
        Assert.DoesNotContain("root:", answer);
    }

    [Fact]
    public async Task LinkOutOfTheFolder_IsNoHouse()
    {
        using var elsewhere = new HouseFolderCopy();
        File.CreateSymbolicLink(Path.Combine(folder.Path, "sly.house.json"), elsewhere.HouseFile);
        var houses = await client.GetStringAsync("/api/houses");
        Assert.Contains("heron-point", houses);
        using var answer = await client.GetAsync("/api/houses/sly/papers");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task Words_AreServedForEveryKeyThatThePageSpeaks()
    {
        var words = await client.GetFromJsonAsync<Dictionary<string, string>>("/api/words");
        Assert.All(words!, word => Assert.True(word.Key == "lang" || word.Key.StartsWith("web.", StringComparison.Ordinal), word.Key));
        Assert.True(words!.Count > 50);
    }
}
