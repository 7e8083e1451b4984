using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;
using Litterfall.Running.Diagnosis.Finding;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;
using Litterfall.Store;

namespace Litterfall.Web.Tanks.Faults;

/// <summary>What is asked of a tank: what was told, and what its log and loggers say.</summary>
/// <param name="Case">The case; null where the tank has no design that can be computed.</param>
/// <param name="Levels">Readings by hand that are used.</param>
/// <param name="Channels">Channels of loggers that are used.</param>
public sealed record FaultQuestion(FaultCase? Case, int Levels, int Channels);

/// <summary>Puts together what is known of a tank, and looks for causes.</summary>
public sealed class FaultDesk(BenchStore store, TankDesk desk, TankForecasts forecasts)
{
    private const int LoggedDays = 60;

    /// <summary>What was told of a tank; null where nothing was yet.</summary>
    /// <param name="tank">Its number.</param>
    public Task<Kept<FaultReport>?> ReportAsync(string tank) => store.RecordAsync<FaultReport>(tank);

    /// <summary>Keeps what was told; null where it is kept, else why not.</summary>
    /// <param name="report">What was told.</param>
    /// <param name="basis">Version it goes on from.</param>
    public async Task<string?> KeepAsync(FaultReport report, int basis) =>
        await desk.WriteAsync(
            new ShopChange(await desk.WhoAsync()).Keep(
                report.Tank,
                basis,
                report,
                "what is wrong with the tank"
            )
        );

    /// <summary>The question that a report, the log and the loggers make.</summary>
    /// <param name="view">All tanks.</param>
    /// <param name="tank">The tank.</param>
    /// <param name="report">What was told.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<FaultQuestion> AskAsync(
        TankView view,
        Tank tank,
        FaultReport report,
        CancellationToken cancel = default
    )
    {
        if (await forecasts.FindAsync(tank, cancel) is not { } numbers)
        {
            return new FaultQuestion(null, 0, 0);
        }

        var told = report.Told.Select(t => (Sentence: t, Read: SymptomWords.Read(t))).ToArray();
        var seen = told.SelectMany(t => t.Read.Seen).Distinct().ToImmutableArray();
        var readings = CareReadings.From(view.Care[tank.Code], desk.Local);
        var series = await SeriesAsync(tank.Code, cancel);
        return new FaultQuestion(
            new FaultCase
            {
                Design = numbers.Design,
                Seen = seen,
                Denied = [.. told.SelectMany(t => t.Read.Denied).Distinct().Except(seen)],
                Facts = [.. Facts(report)],
                Readings = readings,
                Series = series,
                Unknown =
                [
                    .. told.Where(t => t.Read.Seen.IsEmpty && t.Read.Denied.IsEmpty).Select(t => t.Sentence),
                ],
            },
            readings.Length,
            series.Length
        );
    }

    private static IEnumerable<ToldFact> Facts(FaultReport report)
    {
        var facts = report
            .Facts.Select(f => FactWords.Find(f.Key) is { } fact ? FactReader.Read(fact, f.Value) : null)
            .OfType<ToldFact>()
            .ToList();
        return facts.Any(f => f.Fact == TankFact.Reported)
            ? facts
            : facts.Append(new ToldFact(TankFact.Reported, true, null, report.On));
    }

    private async Task<ImmutableArray<LogSeries>> SeriesAsync(string tank, CancellationToken cancel)
    {
        var found = ImmutableArray.CreateBuilder<LogSeries>();
        foreach (var channel in (await store.LogChannelsAsync(cancel)).Where(c => c.Place == tank))
        {
            var series = await store.LogSpanAsync(
                channel,
                channel.To.AddDays(-LoggedDays),
                channel.To,
                cancel
            );
            found.Add(
                series with
                {
                    Ticks =
                    [
                        .. series.Ticks.Select(t => desk.Local(new DateTime(t, DateTimeKind.Utc)).Ticks),
                    ],
                }
            );
        }

        return found.ToImmutable();
    }
}
