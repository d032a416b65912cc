using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Clomwright.Files;

namespace Clomwright.Web.Tests.Sharing;

/// <summary>A clock that goes when it is told to.</summary>
public sealed class SetClock : TimeProvider
{
    private DateTimeOffset now = new(2027, 6, 8, 7, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => now;

    public void Pass(TimeSpan time) => now += time;
}

/// <summary>A workbench that is shared on a second loopback address, which stands for the local network.</summary>
public sealed class SharedHouse : IAsyncDisposable
{
    private readonly string listFolder = Directory.CreateTempSubdirectory("clomwright-phones-").FullName;
    private readonly List<HttpClient> clients = [];

    public HouseFolderCopy Folder { get; } = new();

    public SetClock Clock { get; } = new();

    public RunningWorkbench Workbench { get; private set; } = null!;

    public string ListFile => Path.Combine(listFolder, "own", "phones.json");

    /// <summary>Where phones reach it.</summary>
    public Uri Shared => Workbench.PhoneAddresses[0];

    public static async Task<SharedHouse> Start()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "only Linux answers on all of 127.0.0.0/8 without being told to");
        var house = new SharedHouse();
        await house.Again();
        return house;
    }

    /// <summary>Starts it, anew where it runs.</summary>
    public async Task Again()
    {
        if (Workbench is not null)
        {
            await Workbench.DisposeAsync();
        }

        Workbench = await Web.Workbench.Start(HouseFolder.Open(Folder.Path).Folder!, share: new WorkbenchShare([IPAddress.Parse("127.0.0.2")], ListFile) { Clock = Clock });
    }

    /// <summary>A browser with a jar of its own that sends what our page would send.</summary>
    public HttpClient Browser(Uri? at = null, CookieContainer? jar = null)
    {
        var address = at ?? Shared;
        var client = new HttpClient(new SocketsHttpHandler { CookieContainer = jar ?? new CookieContainer(), AllowAutoRedirect = false }) { BaseAddress = address };
        client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
        clients.Add(client);
        return client;
    }

    /// <summary>This machine's own browser.</summary>
    public HttpClient Own() => Browser(Workbench.Address);

    /// <summary>A code as the phones page shows it.</summary>
    public async Task<string> Code(string role = "reader", string house = HouseFolderCopy.Key)
    {
        using var answer = await Own().PostAsJsonAsync("/api/phones/code", new { house, role });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var link = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("link").GetString()!;
        Assert.StartsWith(new Uri(Shared, "/in#").ToString(), link);
        return link[(link.IndexOf('#', StringComparison.Ordinal) + 1)..];
    }

    /// <summary>A phone that was let in.</summary>
    public async Task<HttpClient> Phone(string role, string name = "Ada", CookieContainer? jar = null)
    {
        var phone = Browser(jar: jar);
        using var answer = await phone.PostAsJsonAsync("/in", new { code = await Code(role), name });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return phone;
    }

    /// <summary>Those let in, as the phones page lists them.</summary>
    public async Task<JsonElement> Listed() => (await Own().GetFromJsonAsync<JsonElement>($"/api/phones?house={HouseFolderCopy.Key}")).GetProperty("phones");

    public async ValueTask DisposeAsync()
    {
        clients.ForEach(client => client.Dispose());
        await Workbench.DisposeAsync();
        Folder.Dispose();
        Directory.Delete(listFolder, recursive: true);
    }
}
