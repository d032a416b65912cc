using System.Net;
using System.Net.Http.Json;
using System.Net.NetworkInformation;
using Clomwright.Web.Sharing;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Clomwright.Web.Tests.Sharing;

/// <summary>A workbench that nobody asked to share, which addresses are local, and the code itself.</summary>
public sealed class NotSharedTests
{
    /// <summary>Rank: by hand. Also: no listener of this process' ports stands on another address than the loopback one.</summary>
    [Fact]
    public async Task WithoutBeingAsked_NothingListensBeyondThisMachine()
    {
        using var folder = new HouseFolderCopy();
        await using var workbench = await folder.Start();
        Assert.Empty(workbench.PhoneAddresses);
        Assert.All(IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(l => l.Port == workbench.Address.Port), l => Assert.True(IPAddress.IsLoopback(l.Address)));
        using var client = new HttpClient { BaseAddress = workbench.Address };
        client.DefaultRequestHeaders.Add("Origin", workbench.Address.GetLeftPart(UriPartial.Authority));
        using var answer = await client.PostAsJsonAsync("/api/phones/code", new { house = HouseFolderCopy.Key, role = "reader" });
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("--share", await answer.Content.ReadAsStringAsync());
    }

    /// <summary>Asked for on the page, phones are let in on addresses of local networks, and after that no more. Rank: by hand.</summary>
    [Fact]
    public async Task AskedForOnThePage_TheDoorOpens_AndShutsAgain()
    {
        using var folder = new HouseFolderCopy();
        await using var workbench = await folder.Start();
        using var client = new HttpClient { BaseAddress = workbench.Address };
        client.DefaultRequestHeaders.Add("Origin", workbench.Address.GetLeftPart(UriPartial.Authority));
        var door = $"/api/phones/door?house={HouseFolderCopy.Key}";
        using var opened = await client.PostAsync(door, null);
        if (LocalAddresses.OfThisMachine().Count == 0)
        {
            Assert.Equal(HttpStatusCode.Conflict, opened.StatusCode);
            Assert.Contains("no local network", await opened.Content.ReadAsStringAsync());
            return;
        }

        Assert.Equal(HttpStatusCode.OK, opened.StatusCode);
        var phones = Assert.Single(workbench.PhoneAddresses.Take(1));
        using var phone = new HttpClient { BaseAddress = phones, Timeout = TimeSpan.FromSeconds(20) };
        using var refused = await phone.GetAsync($"/api/houses/{HouseFolderCopy.Key}/today");
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);

        using var shut = await client.DeleteAsync(door);
        Assert.Equal(HttpStatusCode.OK, shut.StatusCode);
        Assert.Empty(workbench.PhoneAddresses);
        await Assert.ThrowsAsync<HttpRequestException>(() => phone.GetAsync("/"));
    }

    /// <summary>First and last addresses of the ranges of RFC 1918, 3, and RFC 3927, 2.1, and their neighbours outside. Rank: published.</summary>
    [Theory]
    [InlineData("10.0.0.0", true)]
    [InlineData("10.255.255.255", true)]
    [InlineData("9.255.255.255", false)]
    [InlineData("11.0.0.0", false)]
    [InlineData("172.16.0.0", true)]
    [InlineData("172.31.255.255", true)]
    [InlineData("172.15.255.255", false)]
    [InlineData("172.32.0.0", false)]
    [InlineData("192.168.0.0", true)]
    [InlineData("192.168.255.255", true)]
    [InlineData("192.167.255.255", false)]
    [InlineData("192.169.0.0", false)]
    [InlineData("169.254.0.0", true)]
    [InlineData("169.253.255.255", false)]
    [InlineData("127.0.0.1", false)]
    [InlineData("0.0.0.0", false)]
    [InlineData("8.8.8.8", false)]
    [InlineData("::1", false)]
    public void OnlyAddressesOfLocalNetworks_AreShared(string address, bool local) => Assert.Equal(local, LocalAddresses.IsLocal(IPAddress.Parse(address)));

    /// <summary>Rank independent: another program's reader (ZXing) reads what was put in.</summary>
    [Fact]
    public void TheCode_IsReadByAnotherReader()
    {
        var link = "http://192.168.255.255:7420/in#" + new string('W', 43);
        var squares = QrSquares.Of(link);
        const int wide = 4, border = 4;
        var size = (squares.Count + 2 * border) * wide;
        var pixels = new byte[size * size];
        for (var i = 0; i < pixels.Length; i++)
        {
            var (x, y) = (i % size / wide - border, i / size / wide - border);
            pixels[i] = x >= 0 && y >= 0 && x < squares.Count && y < squares.Count && squares[y][x] == '1' ? (byte)0 : (byte)255;
        }

        var image = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(pixels, size, size, RGBLuminanceSource.BitmapFormat.Gray8)));
        Assert.Equal(link, new QRCodeReader().decode(image)?.Text);
    }
}
