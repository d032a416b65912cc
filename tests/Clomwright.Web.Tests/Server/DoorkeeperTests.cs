using Clomwright.Web;

namespace Clomwright.Web.Tests.Server;

/// <summary>Who is let in, by the rules of RFC 9110 7.2 (Host), RFC 6454 7 (Origin) and W3C Fetch Metadata. Rank: published.</summary>
public sealed class DoorkeeperTests
{
    private const int Port = 5151;
    private const string Own = "127.0.0.1:5151";

    [Theory]
    [InlineData("127.0.0.1:5151")]
    [InlineData("localhost:5151")]
    [InlineData("LOCALHOST:5151")]
    public void OwnHost_Get_IsLetIn(string host) => Assert.Null(Refusal("GET", "/", host));

    [Theory]
    [InlineData("")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:5152")]
    [InlineData("evil.example")]
    [InlineData("evil.example:5151")]
    [InlineData("127.0.0.1:5151.evil.example")]
    [InlineData("localhost.evil.example:5151")]
    [InlineData("0.0.0.0:5151")]
    [InlineData("[::1]:5151")]
    public void ForeignHost_AnyRequest_IsRefused(string host)
    {
        Assert.Equal("web.refused.host", Refusal("GET", "/", host));
        Assert.Equal("web.refused.host", Refusal("POST", "/hub/negotiate", host, $"http://{host}"));
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("http://127.0.0.1:5152")]
    [InlineData("https://127.0.0.1:5151")]
    [InlineData("http://localhost:5151")]
    [InlineData("null")]
    public void ForeignOrigin_AnyMethod_IsRefused(string origin)
    {
        Assert.Equal("web.refused.site", Refusal("GET", "/api/houses", Own, origin));
        Assert.Equal("web.refused.site", Refusal("POST", "/hub/negotiate", Own, origin));
    }

    [Fact]
    public void HubAndPost_WithoutOrigin_AreRefused()
    {
        Assert.Equal("web.refused.site", Refusal("GET", "/hub", Own));
        Assert.Equal("web.refused.site", Refusal("POST", "/hub/negotiate", Own));
        Assert.Equal("web.refused.site", Refusal("DELETE", "/", Own));
    }

    [Fact]
    public void HubAndPost_WithOwnOrigin_AreLetIn()
    {
        Assert.Null(Refusal("GET", "/hub", Own, $"http://{Own}", "same-origin"));
        Assert.Null(Refusal("POST", "/hub/negotiate", Own, $"http://{Own}", "same-origin"));
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    public void AnotherSite_MayFollowALinkToThePageButNotAskForWhatItSays(string site)
    {
        Assert.Null(Refusal("GET", "/wall/heron-point", Own, null, site));
        Assert.Equal("web.refused.site", Refusal("GET", "/api/houses", Own, null, site));
        Assert.Equal("web.refused.site", Refusal("GET", "/API/houses", Own, null, site));
    }

    private static string? Refusal(string method, string path, string host, string? origin = null, string? site = null) =>
        Doorkeeper.Refusal(new Doorkeeper.Request(method, path, host, origin, site, Port));
}
