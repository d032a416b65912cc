using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Clomwright.Building;
using Clomwright.Record;

namespace Clomwright.Web.Tests.Sharing;

/// <summary>Who is let in to a shared house and what they may do, asked over real sockets. The status codes are those of RFC 9110 (15.5.2: no or no valid token; 15.5.4: known, but not allowed; 15.5.14: too large). Rank: by hand.</summary>
public sealed class PhoneTests : IAsyncLifetime
{
    private const string Today = $"/api/houses/{HouseFolderCopy.Key}/today";

    private SharedHouse house = null!;

    public async ValueTask InitializeAsync() => house = await SharedHouse.Start();

    public async ValueTask DisposeAsync()
    {
        if (house is not null)
        {
            await house.DisposeAsync();
        }
    }

    private static object Day(string id, string date = "2026-06-08", string raised = "9") => new { id, date, raised, people = "7" };

    private static async Task<HttpStatusCode> Get(HttpClient phone, string place)
    {
        using var answer = await phone.GetAsync(place);
        return answer.StatusCode;
    }

    private static async Task<HttpStatusCode> Post(HttpClient phone, string place, object body)
    {
        using var answer = await phone.PostAsJsonAsync(place, body);
        return answer.StatusCode;
    }

    [Fact]
    public async Task WithoutAToken_NothingIsSaidButWhereToAsk()
    {
        var stranger = house.Browser();
        foreach (var place in new[] { "/", "/today/heron-point", Today, "/api/houses", "/api/words", "/api/phones?house=heron-point", "/wall/heron-point", "/app/index.html", "/api/houses/heron-point/papers", "/api/houses/heron-point/record", "/nowhere" })
        {
            Assert.Equal(HttpStatusCode.Unauthorized, await Get(stranger, place));
        }

        Assert.Equal(HttpStatusCode.Unauthorized, await Post(stranger, Today, Day("aaaaa-aaaa1")));
        Assert.Equal(HttpStatusCode.Unauthorized, await Post(stranger, "/hub/negotiate?negotiateVersion=1", new { }));
        Assert.Equal(HttpStatusCode.Unauthorized, await Post(stranger, "/api/phones/code", new { house = HouseFolderCopy.Key, role = "logger" }));

        // Who follows a link gets a page to read, and nothing of the house in it.
        using var asked = new HttpRequestMessage(HttpMethod.Get, "/today/heron-point");
        asked.Headers.Add("Accept", "text/html");
        using var answer = await stranger.SendAsync(asked);
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.NotEmpty(answer.Headers.WwwAuthenticate);
        Assert.DoesNotContain("Heron Point", await answer.Content.ReadAsStringAsync());

        using var gate = await stranger.GetAsync("/in");
        Assert.Equal(HttpStatusCode.OK, gate.StatusCode);
        Assert.Contains("script-src 'sha256-", gate.Headers.GetValues("Content-Security-Policy").Single());
        Assert.DoesNotContain("Heron Point", await gate.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task ACode_LetsOnePhoneInOnce_AndForTenMinutes_AndANewerTakesItsPlace()
    {
        var first = await house.Code();
        var phone = house.Browser();
        using var answer = await phone.PostAsJsonAsync("/in", new { code = first, name = "Ada" });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        Assert.Contains("httponly", cookie);
        Assert.Contains("samesite=strict", cookie);
        Assert.Equal(HttpStatusCode.OK, await Get(phone, "/today/heron-point"));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(house.Browser(), "/in", new { code = first, name = "Bo" }));

        var replaced = await house.Code();
        var expiring = await house.Code();
        Assert.Equal(HttpStatusCode.Forbidden, await Post(house.Browser(), "/in", new { code = replaced, name = "Bo" }));
        house.Clock.Pass(TimeSpan.FromMinutes(10));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(house.Browser(), "/in", new { code = expiring, name = "Bo" }));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(house.Browser(), "/in", new { code = "guessed", name = "Bo" }));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(house.Browser(), "/in", new { name = "Bo" }));

        var last = await house.Code();
        house.Clock.Pass(TimeSpan.FromMinutes(10) - TimeSpan.FromSeconds(1));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, await Post(house.Browser(), "/in", new { code = last, name = " " }));
        Assert.Equal(HttpStatusCode.OK, await Post(house.Browser(), "/in", new { code = last, name = "Bo" }));
        Assert.Equal(["Ada", "Bo"], (await house.Listed()).EnumerateArray().Select(p => p.GetProperty("name").GetString()));
    }

    [Fact]
    public async Task AReader_Reads_AndWritesNothing()
    {
        var reader = await house.Phone("reader");
        var page = await reader.GetStringAsync("/today/heron-point");
        Assert.Contains("\"role\":\"reader\"", page);
        Assert.Equal("Heron Point bath house", (await reader.GetFromJsonAsync<JsonElement>(Today)).GetProperty("name").GetString());
        Assert.Equal(HttpStatusCode.NotFound, await Get(reader, "/api/houses/heron-point/papers?paper=none"));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(reader, Today, Day("aaaaa-aaaa1")));
        Assert.False(File.Exists(SqliteRecord.Beside(house.Folder.HouseFile)));
    }

    [Fact]
    public async Task ALogger_WritesDaysUnderItsName_EachOnce_AndChangesNothingElse()
    {
        File.Copy(house.Folder.HouseFile, Path.Combine(house.Folder.Path, "other.house.json"));
        var logger = await house.Phone("logger");
        var before = await File.ReadAllBytesAsync(house.Folder.HouseFile);
        Assert.Equal(HttpStatusCode.OK, await Post(logger, Today, Day("aaaaa-aaaa1")));
        Assert.Equal(HttpStatusCode.OK, await Post(logger, Today, Day("aaaaa-aaaa1")));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, await Post(logger, Today, Day("aaaaa-aaaa2")));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, await Post(logger, Today, new { id = "aaaaa-aaaa3", corrects = "aaaaa-aaaa1", struck = "no" }));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, await Post(logger, Today, new { id = "aaaaa-aaaa4", kind = "delivery", date = "2026-06-08", what = "sand", found = "8 yd3" }));
        var entry = Assert.Single(new SqliteRecord(SqliteRecord.Beside(house.Folder.HouseFile)).Read().Record.Entries);
        Assert.Equal(("Ada", 7), (entry.Author, ((Seen.Day)entry.What).People));

        foreach (var place in new[] { "/", "/wall/heron-point", "/record/heron-point", "/api/houses", "/api/words", "/api/houses/heron-point/record", "/api/houses/heron-point/fixes", "/api/phones?house=heron-point", "/phones/heron-point", "/today/other", "/api/houses/other/today", "/today/nowhere", "/hub", "/app/index.html" })
        {
            Assert.Equal(HttpStatusCode.Forbidden, await Get(logger, place));
        }

        Assert.Equal(HttpStatusCode.Forbidden, await Post(logger, "/hub/negotiate?negotiateVersion=1", new { }));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(logger, "/api/houses/heron-point/record", Day("aaaaa-aaaa5", "2026-06-09")));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(logger, "/api/houses/other/today", Day("aaaaa-aaaa6", "2026-06-09")));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(logger, "/api/phones/code", new { house = HouseFolderCopy.Key, role = "logger" }));
        using var deleted = await logger.DeleteAsync($"/api/phones/{(await house.Listed())[0].GetProperty("id").GetString()}?house=heron-point");
        Assert.Equal(HttpStatusCode.Forbidden, deleted.StatusCode);
        using var put = await logger.PutAsJsonAsync(Today, Day("aaaaa-aaaa7"));
        Assert.Equal(HttpStatusCode.Forbidden, put.StatusCode);
        Assert.Equal(before, await File.ReadAllBytesAsync(house.Folder.HouseFile));

        // Its pass is none at the workbench's own door, which asks for none and answers only this machine's browser.
        using var elsewhere = new HttpRequestMessage(HttpMethod.Get, new Uri(house.Workbench.Address, "/api/houses"));
        elsewhere.Headers.Host = house.Shared.Authority;
        using var refused = await house.Own().SendAsync(elsewhere);
        Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
    }

    [Fact]
    public async Task ACorrectionFromAPhone_KeepsWhatItHasNoBlankFor()
    {
        var logger = await house.Phone("logger");
        using (var own = await house.Own().PostAsJsonAsync($"/api/houses/{HouseFolderCopy.Key}/record", new { id = "aaaaa-aaaa1", date = "2026-06-08", raised = "9", hours = "6", stopped = "wall", done = new[] { "poles" } }))
        {
            Assert.Equal(HttpStatusCode.OK, own.StatusCode);
        }

        var corrected = new { id = "aaaaa-aaaa2", corrects = "aaaaa-aaaa1", date = "2026-06-08", raised = "8", people = "5", notes = "measured again" };
        Assert.Equal(HttpStatusCode.OK, await Post(logger, Today, corrected));
        Assert.Equal(HttpStatusCode.OK, await Post(logger, Today, corrected));
        var day = Assert.Single(new SqliteRecord(SqliteRecord.Beside(house.Folder.HouseFile)).Read().Record.Days);
        Assert.Equal((6, StoppedBy.Wall, 5, "measured again", "poles"), (day.Hours, day.Stopped, day.People, day.Notes, Assert.Single(day.Done)));
    }

    [Fact]
    public async Task ARevokedPhone_IsCutOffAtOnce()
    {
        var jar = new CookieContainer();
        await house.Phone("reader", jar: jar);
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Parse(house.Shared.Host), house.Shared.Port);
        await using var line = socket.GetStream();
        await line.WriteAsync(Encoding.ASCII.GetBytes($"GET /today/heron-point HTTP/1.1\r\nHost: {house.Shared.Authority}\r\nCookie: {jar.GetCookieHeader(house.Shared)}\r\n\r\n"));
        var buffer = new byte[1 << 20];
        var read = await line.ReadAsync(buffer);
        Assert.StartsWith("HTTP/1.1 200", Encoding.ASCII.GetString(buffer, 0, read));
        var id = (await house.Listed())[0].GetProperty("id").GetString();
        using var revoked = await house.Own().DeleteAsync($"/api/phones/{id}?house=heron-point");
        Assert.Equal(HttpStatusCode.OK, revoked.StatusCode);

        // The line that was open ends without anybody asking anything on it.
        using var soon = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        try
        {
            while (await line.ReadAsync(buffer, soon.Token) > 0)
            {
            }
        }
        catch (IOException)
        {
            // Reset, which is an end too.
        }

        Assert.Equal(HttpStatusCode.Unauthorized, await Get(house.Browser(jar: jar), "/today/heron-point"));
        Assert.Empty((await house.Listed()).EnumerateArray());
        using var again = await house.Own().DeleteAsync($"/api/phones/{id}?house=heron-point");
        Assert.Equal(HttpStatusCode.NotFound, again.StatusCode);
    }

    [Fact]
    public async Task ForeignHostsAndOtherSites_AreRefused_WithATokenToo()
    {
        var logger = await house.Phone("logger");
        async Task<HttpStatusCode> Sent(HttpMethod method, string place, Action<HttpRequestMessage> with)
        {
            using var request = new HttpRequestMessage(method, place) { Content = method == HttpMethod.Post ? JsonContent.Create(Day("aaaaa-aaaa1")) : null };
            with(request);
            using var answer = await logger.SendAsync(request);
            return answer.StatusCode;
        }

        foreach (var host in new[] { $"evil.example:{house.Shared.Port}", house.Shared.Host, $"localhost:{house.Shared.Port}", $"127.0.0.1:{house.Shared.Port}", $"127.0.0.2:{house.Shared.Port + 1}" })
        {
            Assert.Equal(HttpStatusCode.Forbidden, await Sent(HttpMethod.Get, "/today/heron-point", r => r.Headers.Host = host));
            Assert.Equal(HttpStatusCode.Forbidden, await Sent(HttpMethod.Get, "/in", r => r.Headers.Host = host));
        }

        logger.DefaultRequestHeaders.Remove("Origin");
        Assert.Equal(HttpStatusCode.Forbidden, await Sent(HttpMethod.Post, Today, _ => { }));
        foreach (var site in new[] { "http://evil.example", "null", house.Workbench.Address.GetLeftPart(UriPartial.Authority), $"https://{house.Shared.Authority}" })
        {
            Assert.Equal(HttpStatusCode.Forbidden, await Sent(HttpMethod.Post, Today, r => r.Headers.Add("Origin", site)));
            Assert.Equal(HttpStatusCode.Forbidden, await Sent(HttpMethod.Post, "/in", r => r.Headers.Add("Origin", site)));
        }

        Assert.Equal(HttpStatusCode.Forbidden, await Sent(HttpMethod.Get, Today, r => r.Headers.Add("Sec-Fetch-Site", "cross-site")));
        Assert.False(File.Exists(SqliteRecord.Beside(house.Folder.HouseFile)));
    }

    [Fact]
    public async Task PathTricks_WithAToken_FindNothing()
    {
        var jar = new CookieContainer();
        await house.Phone("logger", jar: jar);
        foreach (var path in new[]
        {
            "/today/..%2fother", "/today/%2e%2e/wall/heron-point", "/today/../wall/heron-point", "/today/heron-point/../../api/houses", "/TODAY/HERON-POINT", "/today/heron-point%00", "//api/phones",
            "/api/houses/heron-point/papers/..%2f..%2frecord.svg/x", "/today/heron-point/../../../../etc/passwd",
        })
        {
            Assert.Matches(@"^HTTP/1\.1 (400|403|404) ", await Raw($"GET {path} HTTP/1.1\r\nHost: {house.Shared.Authority}\r\nCookie: {jar.GetCookieHeader(house.Shared)}\r\nConnection: close\r\n\r\n"));
        }
    }

    /// <summary>What is answered to what is sent as it stands, however much of it is taken.</summary>
    private async Task<string> Raw(string sent)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Parse(house.Shared.Host), house.Shared.Port);
        await using var line = socket.GetStream();
        var answer = new StringBuilder();
        var reading = Task.Run(async () =>
        {
            var buffer = new byte[1 << 16];
            try
            {
                for (int n; (n = await line.ReadAsync(buffer)) > 0;)
                {
                    answer.Append(Encoding.ASCII.GetString(buffer, 0, n));
                }
            }
            catch (IOException)
            {
                // Cut after what was said.
            }
        });
        try
        {
            await line.WriteAsync(Encoding.ASCII.GetBytes(sent));
        }
        catch (IOException)
        {
            // It did not want to hear the rest.
        }

        await reading;
        return answer.ToString();
    }

    [Fact]
    public async Task OversizedBodies_AreRefused_SaidOrNot()
    {
        var jar = new CookieContainer();
        await house.Phone("logger", jar: jar);
        var head = $"POST {Today} HTTP/1.1\r\nHost: {house.Shared.Authority}\r\nOrigin: {house.Shared.GetLeftPart(UriPartial.Authority)}\r\nCookie: {jar.GetCookieHeader(house.Shared)}\r\nContent-Type: application/json\r\n";
        var body = JsonSerializer.Serialize(new { id = "aaaaa-aaaa1", date = "2026-06-08", notes = new string('7', 2 * Web.Workbench.RequestBytesMax) });
        Assert.StartsWith("HTTP/1.1 413 ", await Raw($"{head}Content-Length: {body.Length}\r\n\r\n{body}"));
        Assert.StartsWith("HTTP/1.1 413 ", await Raw($"{head}Transfer-Encoding: chunked\r\n\r\n{body.Length:x}\r\n{body}\r\n0\r\n\r\n"));
        Assert.False(File.Exists(SqliteRecord.Beside(house.Folder.HouseFile)));
    }

    [Fact]
    public async Task TheList_HoldsNoToken_IsTheUsersOwn_AndOutlastsTheProgram()
    {
        var jar = new CookieContainer();
        await house.Phone("reader", jar: jar);
        var kept = await File.ReadAllTextAsync(house.ListFile);
        var token = jar.GetCookies(house.Shared)[0].Value;
        Assert.Equal(43, token.Length);
        Assert.DoesNotContain(token, kept);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(house.ListFile));
        }

        var before = house.Shared;
        await house.Again();
        Assert.Equal(before, house.Shared);
        Assert.Equal(HttpStatusCode.OK, await Get(house.Browser(jar: jar), "/today/heron-point"));
    }

    [Fact]
    public async Task ForTheOwnBrowser_TheListIsGuardedAsEverythingElse()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(house.Workbench.Address, "/api/phones/code")) { Content = JsonContent.Create(new { house = HouseFolderCopy.Key, role = "logger" }) };
        request.Headers.Add("Origin", house.Shared.GetLeftPart(UriPartial.Authority));
        using var plain = new HttpClient();
        using var answer = await plain.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }
}
