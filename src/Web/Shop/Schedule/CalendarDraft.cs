using System.Globalization;
using Litterfall.Domain.Schedule;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>A holiday as it is typed.</summary>
/// <param name="holiday">The holiday; null for a new one.</param>
public sealed class HolidayDraft(Holiday? holiday)
{
    private const int LastHour = 23;

    /// <summary>Its day.</summary>
    public DateOnly? Day { get; set; } = holiday?.Day;

    /// <summary>Its name.</summary>
    public TypedText Name { get; } = new("Name", holiday?.Name ?? "");

    /// <summary>True where the workshop is closed.</summary>
    public bool IsClosed { get; set; } = holiday?.IsClosed ?? true;

    /// <summary>True where no carrier comes.</summary>
    public bool IsWithoutCarrier { get; set; } = holiday?.IsWithoutCarrier ?? true;

    /// <summary>Hour at which carriers stop on the day before.</summary>
    public TypedText EveAt { get; } =
        TypedText.ForNumber("Carriers stop the day before at (hour)", holiday?.CarrierEndsEveAt);

    /// <summary>The holiday; null where a field has a fault.</summary>
    public Holiday? Read()
    {
        var name = Name.Required();
        var eve = EveAt.WholeOrNone(0, LastHour);
        if (Day is null)
        {
            Name.Refuse("Enter the day of this holiday.");
        }

        return Day is { } day && Name.Fault is null && EveAt.Fault is null
            ? new Holiday(day, name)
            {
                IsClosed = IsClosed,
                IsWithoutCarrier = IsWithoutCarrier,
                CarrierEndsEveAt = eve,
            }
            : null;
    }
}

/// <summary>Somebody who works here, as it is typed.</summary>
public sealed class WorkerDraft
{
    private const double MostHours = 16;

    private static readonly string[] Days =
    [
        "Monday",
        "Tuesday",
        "Wednesday",
        "Thursday",
        "Friday",
        "Saturday",
        "Sunday",
    ];

    /// <summary>Begins with somebody; null for a new one.</summary>
    public WorkerDraft(Worker? worker)
    {
        var known = worker ?? new Worker("");
        Name = new("Name", known.Name);
        Hours =
        [
            .. Days.Select((d, i) => TypedText.ForNumber(d, i < known.Hours.Count ? known.Hours[i] : 0)),
        ];
        Stages = [.. known.Stages];
        Away = new("Away", string.Join(", ", known.Away.Select(Told)))
        {
            Help = "Days such as 2026-12-24 to 2026-12-31, with commas between",
        };
    }

    /// <summary>Name.</summary>
    public TypedText Name { get; }

    /// <summary>Hours for orders on Monday to Sunday.</summary>
    public IReadOnlyList<TypedText> Hours { get; }

    /// <summary>Keys of stages that are usually theirs.</summary>
    public HashSet<string> Stages { get; }

    /// <summary>Days away.</summary>
    public TypedText Away { get; }

    /// <summary>Adds or removes a stage.</summary>
    public void Choose(string stage, bool isChosen)
    {
        if (isChosen)
        {
            Stages.Add(stage);
        }
        else
        {
            Stages.Remove(stage);
        }
    }

    /// <summary>The worker; null where a field has a fault.</summary>
    public Worker? Read()
    {
        var name = Name.Required();
        var hours = Hours.Select(h => h.Number(0, MostHours)).ToList();
        var away = ReadAway();
        return Name.Fault is null && Away.Fault is null && Hours.All(h => h.Fault is null)
            ? new Worker(name)
            {
                Hours = [.. hours],
                Stages = [.. Stages.Order(StringComparer.Ordinal)],
                Away = [.. away],
            }
            : null;
    }

    private List<DaysAway> ReadAway()
    {
        var spans = new List<DaysAway>();
        foreach (
            var part in Away.Free()
                .Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        )
        {
            var ends = part.Split(" to ", StringSplitOptions.TrimEntries);
            if (
                ends.Length > 2
                || WeekPage.Day(ends[0]) is not { } first
                || WeekPage.Day(ends[^1]) is not { } last
                || last < first
            )
            {
                Away.Refuse($"'{part}' is no span of days. Enter it such as 2026-12-24 to 2026-12-31.");
                break;
            }

            spans.Add(new(first, last));
        }

        return spans;
    }

    private static string Told(DaysAway away) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{away.First:yyyy-MM-dd}{(away.Last == away.First ? "" : $" to {away.Last:yyyy-MM-dd}")}"
        );
}

/// <summary>The calendar as it is typed.</summary>
public sealed class CalendarDraft
{
    private const int MostPlaces = 500;
    private readonly ShopCalendar kept;

    /// <summary>Begins with a calendar.</summary>
    public CalendarDraft(ShopCalendar kept)
    {
        this.kept = kept;
        WorkDays = [.. kept.WorkDays];
        ShipDays = [.. kept.ShipDays];
        Holidays = [.. kept.Holidays.OrderBy(h => h.Day).Select(h => new HolidayDraft(h))];
        Workers = [.. kept.Workers.Select(w => new WorkerDraft(w))];
        Transit = TypedText.ForNumber("Working days a parcel travels", kept.TransitDays);
        Clear = TypedText.ForNumber(
            "Clear days between ready and next work",
            kept.ClearDays,
            "0 where a tank may be packed on the day it has grown in"
        );
        Bench = TypedText.ForNumber("Places on the grow-in shelf", kept.BenchPlaces);
        Quarantine = TypedText.ForNumber("Places in plant quarantine", kept.QuarantinePlaces);
        Leak = TypedText.ForNumber("Places for leak tests", kept.LeakTestPlaces);
    }

    /// <summary>Days with work.</summary>
    public HashSet<DayOfWeek> WorkDays { get; }

    /// <summary>Days on which parcels leave.</summary>
    public HashSet<DayOfWeek> ShipDays { get; }

    /// <summary>Holidays.</summary>
    public List<HolidayDraft> Holidays { get; }

    /// <summary>Who works here.</summary>
    public List<WorkerDraft> Workers { get; }

    /// <summary>Working days on the way.</summary>
    public TypedText Transit { get; }

    /// <summary>Clear days.</summary>
    public TypedText Clear { get; }

    /// <summary>Places on the shelf.</summary>
    public TypedText Bench { get; }

    /// <summary>Places in quarantine.</summary>
    public TypedText Quarantine { get; }

    /// <summary>Places for leak tests.</summary>
    public TypedText Leak { get; }

    /// <summary>Monday to Sunday.</summary>
    public static IReadOnlyList<DayOfWeek> Week { get; } =
    [.. Enumerable.Range(1, 7).Select(d => (DayOfWeek)(d % 7))];

    /// <summary>Adds or removes a day of the week.</summary>
    public static void Choose(HashSet<DayOfWeek> days, DayOfWeek day, bool isChosen)
    {
        if (isChosen)
        {
            days.Add(day);
        }
        else
        {
            days.Remove(day);
        }
    }

    /// <summary>The calendar, or a sentence on what is wrong.</summary>
    public (ShopCalendar? Calendar, string? Fault) Read()
    {
        var holidays = Holidays.Select(h => h.Read()).ToList();
        var workers = Workers.Select(w => w.Read()).ToList();
        var read = kept with
        {
            WorkDays = [.. Week.Where(WorkDays.Contains)],
            ShipDays = [.. Week.Where(ShipDays.Contains)],
            Holidays = [.. holidays.OfType<Holiday>().OrderBy(h => h.Day)],
            Workers = [.. workers.OfType<Worker>()],
            TransitDays = Transit.Whole(0, 30),
            ClearDays = Clear.Whole(0, 30),
            BenchPlaces = Bench.Whole(0, MostPlaces),
            QuarantinePlaces = Quarantine.Whole(0, MostPlaces),
            LeakTestPlaces = Leak.Whole(0, MostPlaces),
        };
        TypedText[] fields = [Transit, Clear, Bench, Quarantine, Leak];
        return holidays.Contains(null) || workers.Contains(null) || fields.Any(f => f.Fault is not null)
                ? (null, "Some fields cannot be taken yet; each says why.")
            : read.WorkDays.Count == 0 ? (null, "Choose at least one day of the week with work.")
            : read.ShipDays.Count == 0 ? (null, "Choose at least one day of the week on which parcels leave.")
            : read.Workers.DistinctBy(w => w.Name, StringComparer.OrdinalIgnoreCase).Count()
            < read.Workers.Count
                ? (null, "Two people have the same name; add a letter to one.")
            : read.Holidays.DistinctBy(h => h.Day).Count() < read.Holidays.Count
                ? (null, "Two holidays are on the same day; remove one.")
            : (read, null);
    }
}
