using Litterfall.Domain.Faults;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;
using Litterfall.Store;
using Litterfall.Web.Library;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>A file as somebody chose it, read with what is known about its kind.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Bytes">What it holds.</param>
/// <param name="Reading">What was read; null where it cannot be.</param>
/// <param name="Fault">Why it cannot be read, in one sentence.</param>
public sealed record ChosenLog(string Name, byte[] Bytes, LoggerReading? Reading, string Fault)
{
    /// <summary>What somebody fixed about files of this kind; null where nobody did.</summary>
    public LoggerStyle? Fixed { get; init; }

    /// <summary>True where it was taken in before.</summary>
    public bool IsKnown { get; init; }
}

/// <summary>Reads logger files and takes them in.</summary>
public sealed class LoggerDesk(BenchStore store, TankDesk tanks)
{
    /// <summary>Largest file, bytes.</summary>
    public const int LargestFile = 64 * 1024 * 1024;

    /// <summary>Reads a file with what was fixed for its kind.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="bytes">What it holds.</param>
    /// <param name="own">What is being fixed now; null for nothing.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ChosenLog> ReadAsync(
        string name,
        byte[] bytes,
        LoggerStyle? own = null,
        CancellationToken cancel = default
    )
    {
        var styles = await store.RecordsAsync<LoggerStyle>(cancel);
        var known = styles.Select(s => s.Value).Where(s => s.Fingerprint != own?.Fingerprint);
        var wish = new LoggerWish
        {
            Zone = await ZoneAsync(cancel),
            Styles = own is null ? [.. known] : [own, .. known],
        };
        var reading = await Task.Run(() => LoggerFile.Read(name, bytes, wish), cancel);
        if (reading.Value is not { } value)
        {
            return new(name, bytes, null, Sentence(reading.Faults[0]));
        }

        return new(name, bytes, value, "")
        {
            Fixed = own ?? styles.FirstOrDefault(s => s.Value.Fingerprint == value.Report.Fingerprint)?.Value,
            IsKnown = await store.HasLogAsync(bytes, cancel),
        };
    }

    /// <summary>Takes a file in and keeps what was fixed for its kind; null where it is kept, else why
    /// not.</summary>
    /// <param name="chosen">The file.</param>
    /// <param name="who">Who takes it in.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    public async Task<string?> KeepAsync(ChosenLog chosen, string who, CancellationToken cancel = default)
    {
        if (chosen.Reading is not { } reading)
        {
            return chosen.Fault;
        }

        return await Attempt.AtAsync(async () =>
        {
            if (chosen.Fixed is { } style)
            {
                await RememberAsync(style, who, cancel);
            }

            await store.KeepLogAsync(reading.Report, reading.Series, chosen.Bytes, who, cancel);
        });
    }

    /// <summary>Where readings come from by themselves.</summary>
    public async Task<(LoggerSources Sources, int Version)> SourcesAsync(
        CancellationToken cancel = default
    ) =>
        await store.RecordAsync<LoggerSources>(LoggerSources.Key, cancel) is { } kept
            ? (kept.Value, kept.Version)
            : (new LoggerSources(), 0);

    /// <summary>Sets where readings come from; null where it is kept, else why not.</summary>
    public async Task<string?> SetAsync(LoggerSources sources, int basis) =>
        await tanks.WriteAsync(
            new ShopChange(await tanks.WhoAsync()).Keep(
                LoggerSources.Key,
                basis,
                sources,
                "sources of readings"
            )
        );

    /// <summary>Files that were taken in, the last first.</summary>
    public Task<IReadOnlyList<KeptLog>> FilesAsync() => store.LogFilesAsync();

    /// <summary>The last reading of each channel.</summary>
    public Task<IReadOnlyList<LiveReading>> LatestAsync() => store.LatestReadingsAsync();

    /// <summary>Who writes at this bench.</summary>
    public Task<string> WhoAsync() => tanks.WhoAsync();

    /// <summary>Places a sensor can hang in: running tanks, then the room and the shelf of the
    /// cultures.</summary>
    public async Task<IReadOnlyList<string>> PlacesAsync() =>
        [.. (await tanks.LoadAsync()).Running.Select(t => t.Code), "room", "culture shelf"];

    private async Task RememberAsync(LoggerStyle style, string who, CancellationToken cancel)
    {
        var there = await store.RecordAsync<LoggerStyle>(style.Fingerprint, cancel);
        if (there?.Value != style)
        {
            await store.WriteAsync(
                new ShopChange(who).Keep(
                    style.Fingerprint,
                    there?.Version ?? 0,
                    style,
                    "how such files are read"
                ),
                cancel
            );
        }
    }

    /// <summary>Zone of the first room with one: its loggers are set by its wall clock.</summary>
    private async Task<string> ZoneAsync(CancellationToken cancel)
    {
        var set = (await store.RecordAsync<LoggerSources>(LoggerSources.Key, cancel))?.Value.Zone ?? "";
        var rooms = await store.RecordsAsync<TankRoom>(cancel);
        return set.Length > 0
            ? set
            : rooms.Select(r => r.Value.TimeZone).FirstOrDefault(z => z.Length > 0) ?? "";
    }

    private static string Sentence(TextFault fault) =>
        FormattableString.Invariant($"Line {fault.Line}: {fault.Message}; expected {fault.Expected}.");
}
