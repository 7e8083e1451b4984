using System.Collections.Immutable;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;
using Litterfall.Laboratory.Column;
using Litterfall.Laboratory.Crew;
using Litterfall.Laboratory.Headspace;
using Litterfall.Laboratory.Light;
using Litterfall.Laboratory.Parcel;

namespace Litterfall.FuzzTests;

/// <summary>The cases of the laboratory; those that ask for little are run too.</summary>
internal static class LabReaders
{
    private const double LongestHours = 48;
    private const double ShortestSeconds = 30;
    private const int LongestDays = 2000;
    private const double LongestParcelHours = 2000;
    private static readonly TradeCatalog Catalog = Shop.Embedded();

    /// <summary>All of them.</summary>
    public static ImmutableArray<Reader> All { get; } =
    [
        new("headspace-cases", Readers.Corpus("headspace-cases"), Headspace),
        new("crew-cases", Readers.Corpus("crew-cases"), Crew),
        new("parcel-cases", Readers.Corpus("parcel-cases"), Parcel),
        new("column-cases", Readers.Corpus("column-cases"), Column) { Share = 2 },
        new("light-cases", Readers.Corpus("light-cases"), Light) { Share = 2 },
    ];

    private static string? Headspace(byte[] input)
    {
        var reading = CaseFile.Read("case.json", input, HeadspaceForm.Read);
        if (!reading.IsGood)
        {
            return Readers.Told(reading.Faults);
        }

        var asked = reading.Value!;
        if (asked.Hours > LongestHours || asked.StepSeconds < ShortestSeconds)
        {
            return null;
        }

        var outcome = HeadspaceLab.Run(asked, _ => { }, TestContext.Current.CancellationToken);
        return outcome.StoppedEarly is { } stop
            ? stop.Reason.Length > 0
                ? null
                : "a stop without a reason"
            : FiniteNumbers.Broken(outcome) is { } broken
                ? broken
                : outcome.Hours.Any(h => h.HumidityPercent is not (>= 0 and <= 100.000001))
                    ? $"a humidity of {outcome.Hours.Max(h => h.HumidityPercent)} %"
                    : outcome.LedgerErrorGrams > 1e-6 * (1 + outcome.Hours.Max(h => Math.Abs(h.VentedGrams)))
                        ? $"the water misses by {outcome.LedgerErrorGrams} g"
                        : null;
    }

    private static string? Crew(byte[] input)
    {
        var reading = CaseFile.Read("case.json", input, form => CrewForm.Read(form, Catalog));
        if (!reading.IsGood)
        {
            return Readers.Told(reading.Faults);
        }

        if (reading.Value!.Days > LongestDays)
        {
            return null;
        }

        var outcome = CrewLab.Run(reading.Value, _ => { }, TestContext.Current.CancellationToken);
        return outcome.StoppedEarly is not null ? null : FiniteNumbers.Broken(outcome);
    }

    private static string? Parcel(byte[] input)
    {
        var reading = CaseFile.Read("case.json", input, ParcelForm.Read);
        if (!reading.IsGood)
        {
            return Readers.Told(reading.Faults);
        }

        var asked = reading.Value!;
        if (asked.Hours > LongestParcelHours)
        {
            return null;
        }

        var result = ParcelLab.Run(asked, _ => { }, TestContext.Current.CancellationToken);
        var outcome = result.Outcome;
        return result.Stop is { Length: > 0 } ? null
            : FiniteNumbers.Broken(result) is { } broken ? broken
            : result.Hours.Any(h => h.Liquid is < 0 or > 1 || h.Packs.Any(p => p is not (>= 0 and <= 1)))
                ? "a pack is less than frozen or more than liquid"
            : Math.Abs(outcome.BalanceErrorJoules) > 1e-9 * (1 + outcome.TurnoverJoules)
                ? $"the heat misses by {outcome.BalanceErrorJoules} of {outcome.TurnoverJoules} J"
            : null;
    }

    private static string? Column(byte[] input)
    {
        var reading = CaseFile.Read("case.json", input, ColumnForm.Read);
        return reading.IsGood ? null : Readers.Told(reading.Faults);
    }

    private static string? Light(byte[] input)
    {
        var reading = CaseFile.Read("case.json", input, form => LightForm.Read(form, "case.json"));
        return reading.IsGood ? null : Readers.Told(reading.Faults);
    }
}
