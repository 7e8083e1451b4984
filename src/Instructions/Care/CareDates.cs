using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Life;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Care;

/// <summary>Units a date repeats in; months are left out because a 31st would be skipped.</summary>
public enum CareUnit
{
    /// <summary>Days.</summary>
    Day,

    /// <summary>Weeks.</summary>
    Week,
}

/// <summary>A date comes back every so many days or weeks, without end.</summary>
public sealed record CareRepeat(int Every, CareUnit Unit)
{
    /// <summary>From whole days; weeks where they divide by seven.</summary>
    public static CareRepeat Days(int days) =>
        days % 7 == 0 ? new(days / 7, CareUnit.Week) : new(days, CareUnit.Day);

    /// <summary>"every week", "every 10 days".</summary>
    public string Words =>
        Every == 1
            ? $"every {Unit.ToString().ToLowerInvariant()}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"every {Every} {Unit.ToString().ToLowerInvariant()}s"
            );
}

/// <summary>Something to do on a day.</summary>
/// <param name="Key">Stable slug, unique in one plan, such as "level-check".</param>
/// <param name="Day">The day, the first one where it repeats.</param>
/// <param name="Title">A few words, without names of people.</param>
/// <param name="Text">What to do.</param>
/// <param name="Repeat">How it repeats; null when it happens once.</param>
/// <param name="Where">Key of the design it belongs to, such as "floor.litter".</param>
public sealed record CareDate(
    string Key,
    DateOnly Day,
    string Title,
    string Text,
    CareRepeat? Repeat,
    string Where
)
{
    /// <summary>Days from planting, or between repeats, and where the number comes from.</summary>
    public Figure? Interval { get; init; }
}

/// <summary>All dates of one tank.</summary>
/// <param name="Planting">The planting day, from which all dates count.</param>
/// <param name="Note">Said where the planting day is not the maker's own; null otherwise.</param>
/// <param name="Dates">Sorted by day, then by key.</param>
public sealed record CarePlan(DateOnly Planting, string? Note, ImmutableArray<CareDate> Dates)
{
    /// <summary>The date with this key, or null when this design has none.</summary>
    public CareDate? Find(string key) => Dates.FirstOrDefault(d => d.Key == key);
}

/// <summary>
/// Dates before and after planting, by fixed intervals of calendar days. A stage that is ready on a day lets
/// the next one begin on the same day: no clear day is kept between.
/// </summary>
public static class CareDates
{
    /// <summary>Planting day of a design that names none: Monday, 5 January 2026.</summary>
    public static readonly DateOnly StandIn = new(2026, 1, 5);

    /// <summary>The dates of a tank; of one in service only those from now on.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="plantQuarantine">Quarantine of plants in days; ours when null.</param>
    public static CarePlan Of(TankPlan tank, Figure? plantQuarantine = null)
    {
        var (numbers, planting) = (tank.Numbers, tank.Planting);
        var dates = new List<CareDate>();
        if (!tank.IsRunning)
        {
            dates.AddRange(Before(numbers, planting, plantQuarantine ?? CareIntervals.PlantQuarantine));
            dates.AddRange(Planting(numbers, planting, tank.Mist));
            dates.AddRange(AnimalDates.Of(tank));
        }

        dates.AddRange(CareRounds.Of(tank));
        return new CarePlan(
            planting,
            tank.Note,
            [.. dates.OrderBy(d => d.Day).ThenBy(d => d.Key, StringComparer.Ordinal)]
        );
    }

    private static IEnumerable<CareDate> Before(DesignNumbers numbers, DateOnly planting, Figure quarantine)
    {
        var design = numbers.Design.Design;
        if (design.Crew.Any(c => c.Count > 0))
        {
            yield return Back(
                "cultures-started",
                planting,
                CareIntervals.Cultures,
                (
                    "Start crew cultures",
                    "Start the springtail and isopod cultures, as two separate "
                        + "strains, or order the cups."
                ),
                "crew"
            );
        }

        if (design.Plants.Any(p => p.Quarantined is null))
        {
            yield return Back(
                "plants-in-quarantine",
                planting,
                quarantine,
                (
                    "Plants into quarantine",
                    design.Plants.All(p => p.Quarantined is null)
                        ? "All plants cleaned, dipped and in quarantine by today. Later means planting later."
                        : "The plants whose quarantine is not entered: cleaned, dipped and in quarantine by "
                            + "today. Later means planting later."
                ),
                "plants"
            );
        }

        if (numbers.Sealants.CureBeforePlanting is { } cure)
        {
            var walls = design.Background is not null;
            yield return Back(
                walls ? "background-finished" : "silicone-finished",
                planting,
                cure,
                (
                    walls ? "Background finished" : "Last silicone",
                    numbers.Sealants.FoamVolume is null
                        ? "Last silicone today; it cures until planting."
                        : "Last foam and silicone today; they cure until planting."
                ),
                walls ? "background" : "floor.barrier"
            );
        }
    }

    private static CareDate Back(
        string key,
        DateOnly planting,
        Figure lead,
        (string Title, string Text) words,
        string where
    ) =>
        new(key, planting.AddDays(-GrowIn.WholeDays(lead)), words.Title, words.Text, null, where)
        {
            Interval = lead,
        };

    private static IEnumerable<CareDate> Planting(DesignNumbers numbers, DateOnly planting, MistingPlan? mist)
    {
        var design = numbers.Design.Design;
        yield return new CareDate("planting", planting, "Planting day", Work(design), null, "planted");
        if (design.Crew.Any(c => c.Count > 0))
        {
            var counts = design.Crew.Select(
                (c, i) =>
                    $"{NumberText.Integer(c.Count)} "
                    + numbers.Design.Entry<CrewEntry>($"crew[{NumberText.Integer(i)}].animal").Name
            );
            yield return new CareDate(
                "crew-seeded",
                planting,
                "Seed the crew",
                $"Seed {string.Join(" and ", counts)} in each box, "
                    + (design.Floor.Litter is null ? "on the soil." : "under the leaves."),
                null,
                "crew"
            );
        }

        if (mist is { Bursts.Length: > 0 })
        {
            yield return new CareDate(
                "misting-set",
                planting,
                "Set the misting",
                $"{mist.Times}: {mist.PerDay}.",
                null,
                "misting"
            );
        }

        var grown = CareIntervals.GrowIn;
        yield return new CareDate(
            "grow-in-over",
            planting.AddDays(GrowIn.WholeDays(grown)),
            "Grow-in over",
            $"{NumberText.Capital(Signs(design))}: ready to hand over. If not, wait.",
            null,
            "planted"
        )
        {
            Interval = grown,
        };
    }

    /// <summary>What must be seen before animals or a new owner, of what the design has.</summary>
    internal static string Signs(Design design)
    {
        string?[] signs =
        [
            design.Plants.Count > 0 ? "plants rooted" : null,
            design.Crew.Any(c => c.Count > 0) ? "springtails and isopods visible" : null,
            design.Floor.Drainage is null ? null : "level steady",
            "humidity held",
            "no sour smell",
        ];
        return string.Join(", ", signs.OfType<string>());
    }

    private static string Work(Design design)
    {
        string?[] lay =
        [
            design.Floor.Moss is null ? null : "moss",
            design.Floor.Litter is null ? null : "leaves",
        ];
        var laid = lay.OfType<string>().ToArray();
        return "Build the floor"
            + (design.Plants.Count > 0 ? ", plant" : "")
            + (laid.Length > 0 ? $", lay {string.Join(" and ", laid)}" : "")
            + ".";
    }
}
