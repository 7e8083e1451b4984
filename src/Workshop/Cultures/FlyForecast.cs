using System.Collections.Immutable;
using Litterfall.Domain.Cultures;

namespace Litterfall.Workshop.Cultures;

/// <summary>Flies of a day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Emerging">Come out of all cups.</param>
/// <param name="Needed">Eaten by all animals.</param>
/// <param name="Missing">Not there, though flies that waited are counted.</param>
/// <param name="Waiting">Left at the end of the day, fresh enough for another one.</param>
public sealed record FlyDay(DateOnly Day, double Emerging, double Needed, double Missing, double Waiting);

/// <summary>Cups to start on a day.</summary>
/// <param name="Day">Day.</param>
/// <param name="Cups">How many.</param>
public sealed record FlyStart(DateOnly Day, int Cups);

/// <summary>A day without enough flies, and the start that was missing.</summary>
/// <param name="Day">First day that is short.</param>
/// <param name="Missing">Flies missing on it.</param>
/// <param name="Days">Days that are short within the forecast.</param>
/// <param name="StartBy">Day on which cups had to be started for it; null where the shelf is too
/// cold.</param>
/// <param name="Cups">Cups that were missing.</param>
public sealed record Famine(DateOnly Day, double Missing, int Days, DateOnly? StartBy, int Cups);

/// <summary>Flies by day from all cups at their ages, against what the animals eat.</summary>
public sealed record FlyForecast
{
    /// <summary>Days a forecast looks ahead.</summary>
    public const int Ahead = 14;

    /// <summary>The fly.</summary>
    public required FlyKind Kind { get; init; }

    /// <summary>Days, from today on.</summary>
    public required ImmutableArray<FlyDay> Days { get; init; }

    /// <summary>The first day that is short; null for none.</summary>
    public Famine? Famine { get; init; }

    /// <summary>Cups to start each week in the mean.</summary>
    public required int CupsPerWeek { get; init; }

    /// <summary>Days from set-up to flies on the shelf of today, whole days; null where it is too
    /// cold.</summary>
    public int? LeadDays { get; init; }

    /// <summary>Makes the forecast.</summary>
    /// <param name="kind">The fly.</param>
    /// <param name="cups">Cups of it.</param>
    /// <param name="celsius">Mean temperature of a day on the shelf of a cup; on the first for
    /// null.</param>
    /// <param name="needed">Flies eaten on a day.</param>
    /// <param name="span">Today, and days to look ahead.</param>
    public static FlyForecast Find(
        FlyKind kind,
        IEnumerable<Culture> cups,
        Func<Culture?, DateOnly, double> celsius,
        Func<DateOnly, double> needed,
        (DateOnly Today, int Ahead) span
    )
    {
        var wait = CulturePractice.Days(FlyPractice.Wait);
        var today = span.Today;
        var all = cups.Where(c => c.Species == kind.Entry.Key && c.IsUsable)
            .Select(c => (Cup: c, First: kind.FirstFlies(c.Since, day => celsius(c, day))))
            .Where(c => c.First is not null)
            .ToList();
        var waiting = new Queue<double>();
        var days = ImmutableArray.CreateBuilder<FlyDay>();
        for (var on = -wait; on < span.Ahead; on++)
        {
            var day = today.AddDays(on);
            var fresh = all.Sum(c => kind.Emerging(c.Cup, c.First!.Value, day));
            waiting.Enqueue(fresh);
            while (waiting.Count > wait + 1)
            {
                waiting.Dequeue();
            }

            var need = needed(day);
            var missing = need - Feed(waiting, need);
            if (on >= 0)
            {
                days.Add(new(day, fresh, need, missing > 1e-6 ? missing : 0, waiting.Sum()));
            }
        }

        var perWeek = kind.CupsPerWeek(days.Average(d => d.Needed));
        // New cups will stand where those of this fly stand now.
        var like = all.Select(c => c.Cup).FirstOrDefault();
        var lead = kind.FirstFlies(today, day => celsius(like, day))?.DayNumber - today.DayNumber;
        return new()
        {
            Kind = kind,
            Days = days.ToImmutable(),
            CupsPerWeek = perWeek,
            LeadDays = lead,
            Famine = FirstShort(kind, days, lead),
        };
    }

    /// <summary>
    /// Cups to start: the week's cups shared out over two days of the week, so that flies never all come at
    /// once. More are started at once where a famine can still be met.
    /// </summary>
    /// <param name="from">First day.</param>
    /// <param name="until">Last day.</param>
    /// <param name="days">Days of the week on which cups are started.</param>
    public ImmutableArray<FlyStart> Starts(DateOnly from, DateOnly until, IReadOnlyList<DayOfWeek> days)
    {
        var starts = ImmutableArray.CreateBuilder<FlyStart>();
        for (var day = from; day <= until; day = day.AddDays(1))
        {
            var which = days.ToList().IndexOf(day.DayOfWeek);
            var cups =
                which < 0 ? 0 : (CupsPerWeek / days.Count) + (which < CupsPerWeek % days.Count ? 1 : 0);
            if (Famine is { StartBy: { } by } famine && by >= from && by == day)
            {
                cups = Math.Max(cups, famine.Cups);
            }

            if (cups > 0)
            {
                starts.Add(new(day, cups));
            }
        }

        return starts.ToImmutable();
    }

    /// <summary>Feeds the oldest flies first.</summary>
    private static double Feed(Queue<double> waiting, double need)
    {
        var fed = 0.0;
        for (var count = waiting.Count; count > 0; count--)
        {
            var some = waiting.Dequeue();
            var taken = Math.Min(some, need - fed);
            fed += taken;
            waiting.Enqueue(some - taken);
        }

        return fed;
    }

    private static Famine? FirstShort(FlyKind kind, IReadOnlyList<FlyDay> days, int? lead)
    {
        var first = days.FirstOrDefault(d => d.Missing > 0);
        if (first is null)
        {
            return null;
        }

        // What a new cup gives on its first days covers the mean of what is missing.
        var firstDays = kind.PerCup * (1 - kind.Failing) * FlyPractice.ShareOn(0);
        var most = days.Where(d => d.Missing > 0).Average(d => d.Missing);
        return new(
            first.Day,
            first.Missing,
            days.Count(d => d.Missing > 0),
            lead is { } l ? first.Day.AddDays(-l) : null,
            (int)Math.Ceiling((most / firstDays) - 1e-9)
        );
    }
}
