using System.Collections.Immutable;
using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.Configuration;

namespace Litterfall.App.Files;

/// <summary>
/// Addresses of the network at which the bench listens beside its own machine. They come and go while it
/// runs: who starts it by two clicks opens it to paired devices on a page.
/// </summary>
internal sealed class NetworkEnds : ConfigurationProvider, IConfigurationSource
{
    /// <summary>Part of the configuration that the server looks at.</summary>
    public const string Section = "Kestrel";

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);
    private const int Tries = 30;

    /// <inheritdoc/>
    public IConfigurationProvider Build(IConfigurationBuilder builder) => this;

    /// <summary>Listens at these addresses and no others; true once the first of them answers.</summary>
    /// <param name="ends">The addresses; none for this machine alone.</param>
    public async Task<bool> SetAsync(ImmutableArray<IPEndPoint> ends)
    {
        Data = ends.Select(
                (end, i) =>
                    (
                        Key: FormattableString.Invariant($"{Section}:Endpoints:Network{i}:Url"),
                        Value: (string?)$"http://{end}"
                    )
            )
            .ToDictionary(e => e.Key, e => e.Value, StringComparer.OrdinalIgnoreCase);
        OnReload();
        return ends.IsEmpty || await AnswersAsync(ends[0]);
    }

    private static async Task<bool> AnswersAsync(IPEndPoint end)
    {
        for (var i = 0; i < Tries; i++)
        {
            using var client = new TcpClient();
            try
            {
                await client.ConnectAsync(end);
                return true;
            }
            catch (SocketException)
            {
                await Task.Delay(Pause);
            }
        }

        return false;
    }
}
