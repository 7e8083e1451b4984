using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Clocks;
using Litterfall.Store;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>Takes logger files in: a preview with the guess in words, fixed once, remembered.</summary>
public sealed partial class LoggersPage : ComponentBase
{
    private const int MostFiles = 100;
    private const int EventDays = 92;
    private readonly List<ChosenLog> chosen = [];
    private readonly CancellationTokenSource closing = new();
    private CancellationTokenSource? work;
    private IReadOnlyList<KeptLog> files = [];
    private IReadOnlyList<LiveReading> latest = [];
    private IReadOnlyList<string> places = [];
    private IReadOnlyList<string> events = [];
    private bool isBusy;
    private int done;
    private int all = 1;
    private string told = "";
    private string fault = "";
    private string wrong = "";
    private string saved = "";
    private int basis;
    private string folder = "";
    private string zone = "";
    private string host = "";
    private string port = "1883";
    private string topic = "";
    private string user = "";
    private string password = "";

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        places = await Desk.PlacesAsync();
        var (sources, version) = await Desk.SourcesAsync();
        basis = version;
        (folder, zone, host, topic) = (sources.Folder, sources.Zone, sources.BrokerHost, sources.Topic);
        (user, password) = (sources.User, sources.Password);
        port = sources.BrokerPort.ToString(CultureInfo.InvariantCulture);
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        closing.Cancel();
        closing.Dispose();
        work?.Dispose();
    }

    private async Task LoadAsync()
    {
        files = await Desk.FilesAsync();
        latest =
        [
            .. (await Desk.LatestAsync())
                .OrderBy(l => l.Place, StringComparer.Ordinal)
                .ThenBy(l => l.Quantity),
        ];
        var view = await Tanks.LoadAsync();
        events =
        [
            .. (await Events.FindAsync(view, EventDays)).Select(LoggerWords.Of),
            .. (await Events.WarmAsync(view, EventDays)).Select(LoggerWords.Of),
            .. (await Events.TracesAsync(view)).Select(t => LoggerWords.Of(t)),
        ];
    }

    private async Task ChooseAsync(InputFileChangeEventArgs change)
    {
        if (change.FileCount > MostFiles)
        {
            fault = $"Choose at most {MostFiles} files at a time.";
            return;
        }

        await WorkAsync(change.GetMultipleFiles(MostFiles), async (file, cancel) =>
        {
            if (file.Size > LoggerDesk.LargestFile)
            {
                chosen.Add(
                    new(
                        file.Name,
                        [],
                        null,
                        $"The file is too large (limit {LoggerDesk.LargestFile / 1024 / 1024} MB)."
                    )
                );
                return;
            }

            using var bytes = new MemoryStream();
            await using var stream = file.OpenReadStream(LoggerDesk.LargestFile, cancel);
            await stream.CopyToAsync(bytes, cancel);
            chosen.Add(await Desk.ReadAsync(file.Name, bytes.ToArray(), null, cancel));
        });
    }

    private async Task FixAsync(ChosenLog log, LoggerStyle style)
    {
        var at = chosen.IndexOf(log);
        var again = await Desk.ReadAsync(log.Name, log.Bytes, style, closing.Token);
        if (at >= 0)
        {
            chosen[at] = again;
        }
    }

    private async Task ImportAsync()
    {
        var who = await Desk.WhoAsync();
        var kept = 0;
        await WorkAsync([.. chosen.Where(c => c.Reading is not null)], async (log, cancel) =>
        {
            if (await Desk.KeepAsync(log, who, cancel) is { } why)
            {
                fault = $"{log.Name}: {why}";
                return;
            }

            chosen.Remove(log);
            kept++;
        });
        told = $"{LoggerWords.Count(kept, "file was", "files were")} taken in.";
        await LoadAsync();
    }

    /// <summary>One file after the other, with progress; stops between two where somebody cancels.</summary>
    private async Task WorkAsync<T>(IReadOnlyList<T> items, Func<T, CancellationToken, Task> step)
    {
        (isBusy, done, all, told, fault) = (true, 0, Math.Max(1, items.Count), "", "");
        work?.Dispose();
        work = CancellationTokenSource.CreateLinkedTokenSource(closing.Token);
        try
        {
            foreach (var item in items)
            {
                work.Token.ThrowIfCancellationRequested();
                await step(item, work.Token);
                done++;
                StateHasChanged();
            }
        }
        catch (OperationCanceledException)
        {
            fault = "Canceled. What was taken in before stays.";
        }
        catch (IOException broken)
        {
            fault = $"A file could not be read: {broken.Message}";
        }
        finally
        {
            isBusy = false;
        }
    }

    private void Cancel() => work?.Cancel();

    private async Task SaveAsync()
    {
        (wrong, saved) = ("", "");
        var isPort = int.TryParse(port, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        wrong =
            folder.Trim().Length > 0 && !Path.IsPathFullyQualified(folder.Trim())
                ? "Enter the whole path of the folder."
            : zone.Trim().Length > 0 && ZoneChoice.Find(zone) is null
                ? "There is no such time zone; choose one of the list."
            : !isPort || number is < 1 or > 65535 ? "Enter a port from 1 to 65535."
            : host.Trim().Length > 0 && topic.Trim().Length == 0
                ? "Enter a topic to listen to, such as tanks/+/+."
            : "";
        if (wrong.Length > 0)
        {
            return;
        }

        var sources = new LoggerSources
        {
            Folder = folder.Trim(),
            Zone = zone.Trim(),
            BrokerHost = host.Trim(),
            BrokerPort = number,
            Topic = topic.Trim(),
            User = user.Trim(),
            Password = password,
        };
        wrong = await Desk.SetAsync(sources, basis) ?? "";
        saved = wrong.Length == 0 ? "Saved." : "";
        basis += wrong.Length == 0 ? 1 : 0;
    }
}
