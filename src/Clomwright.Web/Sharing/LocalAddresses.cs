using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Clomwright.Web.Sharing;

/// <summary>Addresses of this machine on local networks.</summary>
internal static class LocalAddresses
{
    /// <summary>Those that a phone in the same network can reach; none that the whole world could.</summary>
    public static IReadOnlyList<IPAddress> OfThisMachine()
    {
        try
        {
            return
            [
                .. NetworkInterface.GetAllNetworkInterfaces()
                    .Where(n => n.OperationalStatus is OperationalStatus.Up or OperationalStatus.Unknown && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
                    .OrderBy(n => n.GetIPProperties().GatewayAddresses.Count == 0)
                    .SelectMany(n => n.GetIPProperties().UnicastAddresses).Select(a => a.Address).Where(IsLocal).Distinct(),
            ];
        }
        catch (NetworkInformationException)
        {
            return [];
        }
    }

    /// <summary>Whether an address is of a private network (RFC 1918) or of a link (RFC 3927): routers of the internet carry neither.</summary>
    public static bool IsLocal(IPAddress address)
    {
        if (address.AddressFamily != AddressFamily.InterNetwork)
        {
            return false;
        }

        var b = address.GetAddressBytes();
        return b[0] == 10 || (b[0] == 172 && b[1] is >= 16 and <= 31) || (b[0] == 192 && b[1] == 168) || (b[0] == 169 && b[1] == 254);
    }
}
