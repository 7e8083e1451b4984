using System.Diagnostics;
using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Demo;
using Litterfall.Running.Loggers;
using Litterfall.Running.Rooms;
using Litterfall.Store;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
// How long 24 tanks of 90 days take from files in four styles into the store, and how long a year of one tank
// takes to be drawn out of five million readings.
const int rowsOfTank = 12_960;
const int tanks = 24;
const int channelsOfYears = 96;
const int yearOfTenMinutes = 52_560;
const int columns = 1200;
const int runs = 7;
const int rowsOfSample = 24;
if (args is [var samples])
{
    // The invented room's files, short, as samples of the styles.
    foreach (var sample in RoomLogs.Files(new RoomAir(RoomLogs.Seed, rowsOfSample)))
    {
        await File.WriteAllBytesAsync(Path.Combine(samples, sample.Name), sample.Bytes);
    }

    return;
}

var folder = Directory.CreateTempSubdirectory("litterfall-loggers").FullName;
var store = new BenchStore(
    StoreFile.Contexts(Path.Combine(folder, "bench.db")),
    new StoreMarks("1.0", "bench"),
    TimeProvider.System
);
await store.OpenAsync();
var files = new List<DemoLog>();
for (var set = 0; set < tanks / 4; set++)
{
    var room = RoomLogs.Files(new RoomAir(RoomLogs.Seed + (ulong)set, rowsOfTank));
    files.AddRange(
        room.Take(4).Select((f, i) => f with { Name = $"{"ABC"[set / 2]}{(set % 2 * 4) + i + 1}.csv" })
    );
}

var bytes = files.Sum(f => (long)f.Bytes.Length);
for (var round = 0; round < 2; round++)
{
    var (reading, keeping, rows) = (new Stopwatch(), new Stopwatch(), 0);
    var processor = Used();
    foreach (var file in files)
    {
        reading.Start();
        var name = $"{round}{file.Name}";
        var read = LoggerFile.Read(file.Name, file.Bytes, new LoggerWish { Zone = RoomAir.Zone }).Value!;
        reading.Stop();
        rows += read.Report.Kept;
        keeping.Start();
        LogSeries[] series = [.. read.Series.Select(s => s with { Place = name })];
        await store.KeepLogAsync(read.Report, series, [.. file.Bytes, (byte)round], "bench");
        keeping.Stop();
    }

    Print(
        $"{(round == 0 ? "cold" : "warm")}: {rows:N0} rows, {bytes / 1e6:0.0} MB, read "
            + $"{Ms(reading)}, kept {Ms(keeping)}; processor {(Used() - processor).TotalMilliseconds:0} ms"
    );
}

var random = new Random(5);
var filling = Stopwatch.StartNew();
var start = new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);
for (var c = 0; c < channelsOfYears; c++)
{
    var quantity = c % 2 == 0 ? LogQuantity.Temperature : LogQuantity.Humidity;
    var one = new LogSeries($"year {c / 2}", quantity, c % 2 == 0 ? "°C" : "%")
    {
        Ticks = [.. Enumerable.Range(0, yearOfTenMinutes).Select(i => start.AddMinutes(10 * i).Ticks)],
        Values =
        [
            .. Enumerable
                .Range(0, yearOfTenMinutes)
                .Select(i => Math.Round(20 + (5 * random.NextDouble()), 1)),
        ],
        Marks = [.. new LogMarks[yearOfTenMinutes]],
    };
    await store.KeepLogAsync(Report(one), [one], BitConverter.GetBytes(c), "bench");
}

Print(
    $"filled: {channelsOfYears * yearOfTenMinutes:N0} readings in {Ms(filling)}, file "
        + $"{new FileInfo(Path.Combine(folder, "bench.db")).Length / 1e6:0} MB"
);
var times = new List<double>();
for (var run = 0; run < runs; run++)
{
    var watch = Stopwatch.StartNew();
    var processor = Used();
    var channels = (await store.LogChannelsAsync()).Where(c => c.Place == "year 7").ToList();
    var drawn = 0;
    foreach (var channel in channels)
    {
        var series = await store.LogSpanAsync(channel, channel.From, channel.To);
        drawn += SeriesSketch.From(series, channel.From.Ticks, channel.To.Ticks, columns).Seconds.Count;
    }

    times.Add(watch.Elapsed.TotalMilliseconds);
    Print(
        $"a year of one tank, {channels.Count} channels, {drawn} columns: {Ms(watch)}; processor "
            + $"{(Used() - processor).TotalMilliseconds:0} ms"
    );
}

Print($"median {times.Order().ElementAt(runs / 2):0.0} ms");
Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
Directory.Delete(folder, recursive: true);
return;

static LoggerReport Report(LogSeries one) =>
    new()
    {
        Name = one.Place,
        Style = "",
        Zone = "UTC",
        Fingerprint = "",
        Rows = one.Count,
        Kept = one.Count,
        Duplicates = 0,
        From = new DateTime(one.Ticks[0], DateTimeKind.Utc),
        To = new DateTime(one.Ticks[^1], DateTimeKind.Utc),
    };

// On a machine that others use too, the time of the process itself says more than the clock.
static TimeSpan Used() => Process.GetCurrentProcess().TotalProcessorTime;

static string Ms(Stopwatch watch) =>
    string.Create(CultureInfo.InvariantCulture, $"{watch.Elapsed.TotalMilliseconds:0} ms");

static void Print(string line) => Console.WriteLine(line);
