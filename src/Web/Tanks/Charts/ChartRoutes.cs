using Litterfall.Domain.Tanks;
using Litterfall.Running.Rooms;
using Litterfall.Store;
using Litterfall.Web.Tanks.Loggers;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Tanks.Charts;

/// <summary>Readings of a place, reduced to the columns of a picture.</summary>
internal static class ChartRoutes
{
    private const int MostColumns = 6000;
    private const int MostSeconds = 2_000_000_000;

    public static void Map(IEndpointRouteBuilder app) =>
        app.MapGet("/tanks/{code}/readings.json", SketchAsync);

    private static async Task<IResult> SketchAsync(
        string code,
        long? from,
        long? to,
        int? columns,
        BenchStore store,
        CancellationToken cancel
    )
    {
        var all = (await store.LogChannelsAsync(cancel))
            .Where(c => string.Equals(c.Place, code, StringComparison.OrdinalIgnoreCase))
            .Where(c => c.Quantity is LogQuantity.Temperature or LogQuantity.Humidity)
            .ToList();
        if (all.Count == 0)
        {
            return Results.Json(
                new
                {
                    first = 0,
                    last = 0,
                    channels = Array.Empty<object>(),
                }
            );
        }

        var (first, last) = (all.Min(c => c.From), all.Max(c => c.To));
        var left = from is { } f ? At(f) : first;
        var right = to is { } t ? At(t) : last;
        var wide = Math.Clamp(columns ?? 1000, 10, MostColumns);
        var channels = new List<object>();
        foreach (var channel in all)
        {
            var series = await store.LogSpanAsync(channel, left, right, cancel);
            var sketch = SeriesSketch.From(series, left.Ticks, Math.Max(right.Ticks, left.Ticks + 1), wide);
            channels.Add(Drawn(channel, series.Unit, sketch));
        }

        return Results.Json(
            new
            {
                first = Seconds(first),
                last = Seconds(last),
                channels,
            }
        );
    }

    private static object Drawn(KeptChannel channel, string unit, SeriesSketch sketch)
    {
        var name = LoggerWords.Of(channel.Quantity);
        return new
        {
            name = channel.Number == 1 ? name : FormattableString.Invariant($"{name} {channel.Number}"),
            quantity = channel.Quantity == LogQuantity.Temperature ? "temperature" : "humidity",
            unit,
            gap = sketch.Break,
            t = sketch.Seconds,
            low = sketch.Low,
            high = sketch.High,
            mean = sketch.Mean,
            marks = sketch.Marks,
        };
    }

    private static DateTime At(long seconds) =>
        DateTime.UnixEpoch.AddSeconds(Math.Clamp(seconds, -MostSeconds, 2L * MostSeconds));

    private static long Seconds(DateTime at) =>
        (at.Ticks - DateTime.UnixEpoch.Ticks) / TimeSpan.TicksPerSecond;
}
