using System.Collections.Immutable;
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
        return IsEverywhere(end.Address)
            ? Url(new(IPAddress.Loopback, first.Port))
            : $"http://{first.Authority}";
    }

    /// <summary>Addresses for other machines, as far as this one knows them.</summary>
    public static ImmutableArray<string> Others(IPEndPoint end, IEnumerable<string> urls)
    {
        var port = new Uri(urls.Last().Replace("[::]", "[::1]", StringComparison.Ordinal)).Port;
        return IsEverywhere(end.Address) ? [.. Own(port).Select(Url)] : [Url(new(end.Address, port))];
    }

    /// <summary>Addresses of this machine in its networks, the one with a way out first.</summary>
    /// <param name="port">The port.</param>
    public static ImmutableArray<IPEndPoint> Own(int port) =>
        [
            .. NetworkInterface
                .GetAllNetworkInterfaces()
                .Where(n =>
                    n.OperationalStatus == OperationalStatus.Up
                    && n.NetworkInterfaceType != NetworkInterfaceType.Loopback
                )
                .OrderByDescending(n => n.GetIPProperties().GatewayAddresses.Count)
                .SelectMany(n => n.GetIPProperties().UnicastAddresses)
                .Select(a => a.Address)
                .Where(a => a.AddressFamily == AddressFamily.InterNetwork)
                .Select(a => new IPEndPoint(a, port)),
        ];

    /// <summary>Such as "http://192.0.2.1:5080".</summary>
    /// <param name="end">An address.</param>
    public static string Url(IPEndPoint end) => $"http://{end}";

    private static bool IsEverywhere(IPAddress address) =>
        address.Equals(IPAddress.Any) || address.Equals(IPAddress.IPv6Any);
}
