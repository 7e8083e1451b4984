using System.Diagnostics;

namespace Litterfall.App.Files;

/// <summary>Shows a page to somebody who started the program with two clicks.</summary>
internal static class Browser
{
    /// <summary>Opens an address in the browser of the user; nothing happens where there is none.</summary>
    public static void Open(string address)
    {
        try
        {
            var start =
                OperatingSystem.IsWindows() ? new ProcessStartInfo(address) { UseShellExecute = true }
                : OperatingSystem.IsMacOS() ? new ProcessStartInfo("open", [address])
                : new ProcessStartInfo("xdg-open", [address]);
            Process.Start(start)?.Dispose();
        }
        catch (Exception e) when (e is System.ComponentModel.Win32Exception or InvalidOperationException)
        {
            Console.Error.WriteLine($"No browser was found; open {address} yourself.");
        }
    }

    /// <summary>True where a bench answers at an address already.</summary>
    public static async Task<bool> IsBenchAsync(string address, CancellationToken cancel)
    {
        try
        {
            using var client = new HttpClient { Timeout = TimeSpan.FromSeconds(3) };
            var page = await client.GetStringAsync(new Uri(address), cancel);
            return page.Contains("<title>Litterfall</title>", StringComparison.Ordinal);
        }
        catch (Exception e) when (e is HttpRequestException or TaskCanceledException)
        {
            return false;
        }
    }
}
