using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;
using Litterfall.Store;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using MQTTnet;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>
/// Takes readings in while nobody looks: new files of a folder on this machine, and what a broker passes on.
/// Both are off until somebody sets them.
/// </summary>
public sealed partial class LoggerSourcesWatch(
    BenchStore store,
    LoggerDesk desk,
    TimeProvider clock,
    ILogger<LoggerSourcesWatch> log
) : BackgroundService
{
    private const int MostFiles = 5000;
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(5);
    private readonly Dictionary<string, (long Length, DateTime Written)> seen = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (long Length, DateTime Written)> growing = new(
        StringComparer.Ordinal
    );
    private IMqttClient? client;
    private LoggerSources connected = new();

    /// <summary>What became of the folder, in one sentence; empty before the first look.</summary>
    public string FolderState { get; private set; } = "";

    /// <summary>What became of the broker, in one sentence; empty where none is set.</summary>
    public string BrokerState { get; private set; } = "";

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            while (true)
            {
                await Task.Delay(Pause, clock, stoppingToken);
                await RoundAsync(stoppingToken);
            }
        }
        catch (OperationCanceledException)
        {
            // The bench closes.
        }
        finally
        {
            client?.Dispose();
        }
    }

    /// <summary>One look at both sources.</summary>
    /// <param name="cancel">Ends it.</param>
    public async Task RoundAsync(CancellationToken cancel)
    {
        try
        {
            var (sources, _) = await desk.SourcesAsync(cancel);
            await FolderAsync(sources.Folder, cancel);
            await BrokerAsync(sources, cancel);
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            FolderState = StoreTrouble.Words(e) is { } words
                ? $"Not taken in: {words}."
                : $"The folder cannot be read: {e.Message}";
            Failed(log, e);
        }
    }

    private async Task FolderAsync(string folder, CancellationToken cancel)
    {
        if (folder.Length == 0)
        {
            FolderState = "";
            return;
        }

        if (!Directory.Exists(folder))
        {
            FolderState = "There is no such folder on this machine.";
            return;
        }

        var (taken, refused) = (0, 0);
        foreach (var path in Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).Take(MostFiles))
        {
            var file = new FileInfo(path);
            var now = (file.Length, file.LastWriteTimeUtc);
            // A file that still grows is left for the next round.
            var isAtRest = growing.TryGetValue(path, out var before) && before == now;
            growing[path] = now;
            if (
                !isAtRest
                || (seen.TryGetValue(path, out var done) && done == now)
                || file.Length > LoggerDesk.LargestFile
            )
            {
                continue;
            }

            seen[path] = now;
            var chosen = await desk.ReadAsync(
                file.Name,
                await File.ReadAllBytesAsync(path, cancel),
                null,
                cancel
            );
            if (chosen.IsKnown)
            {
                continue;
            }

            var why = await desk.KeepAsync(chosen, "folder", cancel);
            taken += why is null ? 1 : 0;
            refused += why is null ? 0 : 1;
            FolderState = why is null ? FolderState : $"{file.Name}: {why}";
        }

        FolderState =
            refused > 0 ? FolderState
            : taken > 0 ? $"{LoggerWords.Count(taken, "file was", "files were")} taken in."
            : FolderState.Length > 0 ? FolderState
            : "Watching; nothing new yet.";
    }

    private async Task BrokerAsync(LoggerSources sources, CancellationToken cancel)
    {
        var isSame = sources == connected && client is { IsConnected: true };
        if (isSame)
        {
            return;
        }

        client?.Dispose();
        client = null;
        connected = sources;
        if (sources.BrokerHost.Length == 0 || sources.Topic.Length == 0)
        {
            BrokerState = "";
            return;
        }

        try
        {
            client = new MqttClientFactory().CreateMqttClient();
            client.ApplicationMessageReceivedAsync += TakeAsync;
            var options = new MqttClientOptionsBuilder()
                .WithTcpServer(sources.BrokerHost, sources.BrokerPort)
                .WithTimeout(TimeSpan.FromSeconds(10));
            if (sources.User.Length > 0)
            {
                options = options.WithCredentials(sources.User, sources.Password);
            }

            await client.ConnectAsync(options.Build(), cancel);
            var topics = new MqttClientSubscribeOptionsBuilder().WithTopicFilter(sources.Topic).Build();
            await client.SubscribeAsync(topics, cancel);
            BrokerState = "Connected; listening.";
        }
        catch (Exception e) when (e is not OperationCanceledException || !cancel.IsCancellationRequested)
        {
            BrokerState = $"No connection to {sources.BrokerHost}; trying again.";
            Failed(log, e);
        }
    }

    private async Task TakeAsync(MqttApplicationMessageReceivedEventArgs message)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        var text = message.ApplicationMessage.ConvertPayloadToString() ?? "";
        var refusal = "";
        var readings = LiveForm.Read(message.ApplicationMessage.Topic, text, now) is { } bare
            ? [bare]
            : LiveForm.Read(text, now, out refusal);
        try
        {
            if (refusal.Length == 0 && readings.Count > 0)
            {
                await store.AddReadingsAsync(readings);
                BrokerState = $"Connected; last reading {LoggerWords.When(now)}.";
            }
            else
            {
                BrokerState = $"Connected; a message was passed over. {refusal}";
            }
        }
        catch (Exception e) when (StoreTrouble.Words(e) is { } words)
        {
            BrokerState = $"Not saved: {words}.";
            Failed(log, e);
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "A source of readings failed.")]
    private static partial void Failed(ILogger log, Exception fault);
}
