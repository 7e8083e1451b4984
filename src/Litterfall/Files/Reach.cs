using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Litterfall.App.Files;

/// <summary>Addresses under which this machine and others reach the bench.</summary>
internal static class Reach
{
    /// <summary>
    /// Where to listen: at an address of the network also on this machine itself, which needs no pairing.
    /// </summary>
    public static ImmutableArray<IPEndPoint> Ends(IPEndPoint end) =>
        IsEverywhere(end.Address) || IPAddress.IsLoopback(end.Address) || end.Port == 0
            ? [end]
            : [new(IPAddress.Loopback, end.Port), end];

    /// <summary>The address for this machine.</summary>
    public static string Here(IPEndPoint end, IEnumerable<string> urls)
    {
        var first = new Uri(urls.First().Replace("[::]", "[::1]", StringComparison.Ordinal));
        return IsEverywhere(end.Address) ? Url(IPAddress.Loopback, first.Port) : $"http://{first.Authority}";
    }

    /// <summary>Addresses for other machines, as far as this one knows them.</summary>
    public static ImmutableArray<string> Others(IPEndPoint end, IEnumerable<string> urls)
    {
        var port = new Uri(urls.Last().Replace("[::]", "[::1]", StringComparison.Ordinal)).Port;
        return IsEverywhere(end.Address)
            ? [.. Own().Select(address => Url(address, port))]
            : [Url(end.Address, port)];
    }

    private static IEnumerable<IPAddress> Own() =>
        NetworkInterface
            .GetAllNetworkInterfaces()
            .Where(n =>
                n.OperationalStatus == OperationalStatus.Up
                && n.NetworkInterfaceType != NetworkInterfaceType.Loopback
            )
            .OrderByDescending(n => n.GetIPProperties().GatewayAddresses.Count)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Select(a => a.Address)
            .Where(a => a.AddressFamily == AddressFamily.InterNetwork);

    private static bool IsEverywhere(IPAddress address) =>
        address.Equals(IPAddress.Any) || address.Equals(IPAddress.IPv6Any);

    private static string Url(IPAddress address, int port) =>
        string.Create(CultureInfo.InvariantCulture, $"http://{new IPEndPoint(address, port)}");
}
