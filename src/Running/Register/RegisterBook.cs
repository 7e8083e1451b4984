using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;

namespace Litterfall.Running.Register;

/// <summary>Names of a species.</summary>
/// <param name="Science">Scientific name.</param>
/// <param name="Common">Common name.</param>
public sealed record SpeciesName(string Science, string Common);

/// <summary>
/// The register of animals, made from the logs of the tanks: purchases, births, deaths and sales with date,
/// species, numbers, source and destination (The Animal Welfare (Licensing of Activities Involving Animals)
/// (England) Regulations 2018, SI 2018/486, schedule 3), kept for three years from the day of each line.
/// </summary>
public static class RegisterBook
{
    /// <summary>Years for which a line is kept (SI 2018/486, schedule 2: at least three).</summary>
    public const int YearsKept = 3;

    /// <summary>Lines of a window of days, in the order of time.</summary>
    /// <param name="care">Lines of all tanks that count.</param>
    /// <param name="names">Names of a species by its key.</param>
    /// <param name="from">First day.</param>
    /// <param name="until">Last day.</param>
    public static ImmutableArray<RegisterLine> Find(
        IEnumerable<CareEntry> care,
        Func<string, SpeciesName> names,
        DateOnly from,
        DateOnly until
    )
    {
        var all = care.ToList();
        var tanks = all.Select(l => l.Tank).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. all.Where(l => AnimalCounts.IsOfAnimals(l) || l.Kind == CareKind.Treated)
                .Select(l => Line(l, names(l.Species), tanks))
                .Where(l => l.Day >= from && l.Day <= until)
                .OrderBy(l => l.Day)
                .ThenBy(l => l.Key, StringComparer.Ordinal),
        ];
    }

    private static RegisterLine Line(CareEntry line, SpeciesName name, HashSet<string> tanks)
    {
        var day = DateOnly.FromDateTime(line.At);
        var other = line.Other.Length > 0 ? line.Other : "not told";
        var isHere = tanks.Contains(line.Other);
        var (what, source, destination) = line.Kind switch
        {
            CareKind.AnimalsIn => (isHere ? RegisterEvent.Moved : RegisterEvent.Acquired, other, line.Tank),
            CareKind.AnimalsOut => (isHere ? RegisterEvent.Moved : RegisterEvent.Disposed, line.Tank, other),
            CareKind.Born => (RegisterEvent.Born, "bred here", line.Tank),
            CareKind.Died => (RegisterEvent.Died, line.Tank, "died"),
            _ => (RegisterEvent.Treated, line.Tank, line.Other),
        };
        return new(
            day,
            what,
            name.Science,
            name.Common,
            AnimalCounts.IsOfAnimals(line) ? Math.Abs(AnimalCounts.Change(line)) : null,
            source,
            destination,
            line.Note,
            line.Who,
            day.AddYears(YearsKept),
            line.Key
        );
    }

    /// <summary>What is missing of a line for an inspection, in words; empty where nothing is.</summary>
    /// <param name="line">The line.</param>
    public static string Gap(RegisterLine line) =>
        line.Event is RegisterEvent.Treated ? ""
        : line.Species.Length == 0 ? "no species"
        : line.Source == "not told" ? "no source"
        : line.Destination == "not told" ? "no destination"
        : "";

    /// <summary>The word of an event.</summary>
    /// <param name="what">The event.</param>
    public static string Word(RegisterEvent what) =>
        what switch
        {
            RegisterEvent.Acquired => "purchased or acquired",
            RegisterEvent.Born => "born",
            RegisterEvent.Died => "died",
            RegisterEvent.Disposed => "sold or given away",
            RegisterEvent.Moved => "moved",
            _ => "treated or tested",
        };

    /// <summary>Stock of each species at the end of a day: species, then how many.</summary>
    /// <param name="care">Lines of all tanks that count, in the order of time.</param>
    /// <param name="until">The day.</param>
    public static ImmutableArray<AnimalCount> Stock(IEnumerable<CareEntry> care, DateOnly until) =>
        [
            .. care.Where(l => DateOnly.FromDateTime(l.At) <= until)
                .GroupBy(l => l.Tank, StringComparer.Ordinal)
                .SelectMany(g => AnimalCounts.Find(g.OrderBy(l => l.At)))
                .GroupBy(c => c.Species, StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new AnimalCount(g.Key, g.Sum(c => c.Count), g.Sum(c => c.Missing))),
        ];
}

/// <summary>Permits and how long they hold.</summary>
public static class PermitWatch
{
    /// <summary>Days before its end on which a permit is shown: renewing takes weeks. Own choice.</summary>
    public const int DaysBefore = 60;

    /// <summary>Permits that have ended or soon will, the first to end first.</summary>
    /// <param name="permits">All permits.</param>
    /// <param name="today">Today.</param>
    public static ImmutableArray<Permit> Alarms(IEnumerable<Permit> permits, DateOnly today) =>
        [
            .. permits
                .Where(p => p.Expires is { } end && end.DayNumber - today.DayNumber <= DaysBefore)
                .OrderBy(p => p.Expires),
        ];

    /// <summary>How long a permit holds, in words.</summary>
    /// <param name="permit">The permit.</param>
    /// <param name="today">Today.</param>
    public static string Tell(Permit permit, DateOnly today)
    {
        if (permit.Expires is not { } end)
        {
            return "does not expire";
        }

        var days = end.DayNumber - today.DayNumber;
        return days < 0 ? string.Create(CultureInfo.InvariantCulture, $"expired {-days} days ago")
            : days == 0 ? "expires today"
            : days == 1 ? "expires tomorrow"
            : string.Create(CultureInfo.InvariantCulture, $"expires in {days} days");
    }

    /// <summary>What a permit is, in words.</summary>
    /// <param name="kind">Its kind.</param>
    public static string Word(PermitKind kind) =>
        kind switch
        {
            PermitKind.Selling => "License to sell animals",
            PermitKind.Keeping => "Permit to keep a species",
            PermitKind.Transport => "Permit to move animals between states",
            PermitKind.Origin => "Proof of legal origin or notification",
            _ => "Other paper",
        };
}
