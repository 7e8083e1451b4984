using System.Collections.Immutable;
using Litterfall.Documents.Shop.Tanks;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Tanks;
using Litterfall.Quantities.Measures;
using Litterfall.Running.Register;
using Litterfall.Running.Service;
using Litterfall.Store;
using Litterfall.Web.Library;

namespace Litterfall.Web.Tanks.Register;

/// <summary>The register of a window of days.</summary>
/// <param name="Tanks">The tanks.</param>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
public sealed record RegisterView(TankView Tanks, DateOnly From, DateOnly Until)
{
    /// <summary>Entries in the order of time.</summary>
    public required ImmutableArray<RegisterLine> Lines { get; init; }

    /// <summary>Animals on the last day, by species.</summary>
    public required ImmutableArray<AnimalCount> Stock { get; init; }

    /// <summary>Permits.</summary>
    public required IReadOnlyList<Kept<Permit>> Permits { get; init; }

    /// <summary>Permits that have ended or soon will.</summary>
    public ImmutableArray<Permit> Alarms => PermitWatch.Alarms(Permits.Select(p => p.Value), Tanks.Today);

    /// <summary>Clocks of quarantine that run.</summary>
    public ImmutableArray<QuarantineClock> Quarantine =>
        [
            .. Tanks
                .Running.Select(t => QuarantineClocks.Find(t.Code, Tanks.Care[t.Code], Tanks.Today))
                .OfType<QuarantineClock>(),
        ];

    /// <summary>Animals of the library, by name.</summary>
    public IEnumerable<AnimalEntry> Animals =>
        Tanks.Catalog.Of<AnimalEntry>().OrderBy(EntryWords.Common, StringComparer.OrdinalIgnoreCase);

    /// <summary>What an inspection is shown.</summary>
    public RegisterText Text() =>
        new(
            From,
            Until,
            [
                .. Lines.Select(l => new RegisterRow(
                    l.Day,
                    RegisterBook.Word(l.Event),
                    l.Species,
                    l.Common,
                    l.Count,
                    l.Source,
                    l.Destination,
                    l.Words,
                    l.Who,
                    l.KeepUntil
                )),
            ],
            [
                .. Stock
                    .Where(s => s.Count > 0)
                    .Select(s => CareTelling.Count(s.Count, Tanks.NameOf(s.Species)) + "."),
            ],
            [
                .. Permits.Select(p =>
                    $"{PermitWatch.Word(p.Value.Kind)} {p.Value.Number}, {p.Value.Issuer}, given "
                    + $"{NumberText.Day(p.Value.Issued)}, {PermitWatch.Tell(p.Value, Tanks.Today)}."
                ),
            ]
        );
}

/// <summary>Reads the register of this bench and keeps its permits.</summary>
public sealed class RegisterDesk(TankDesk desk, BenchStore store)
{
    /// <summary>The register; the last three years where no window is told.</summary>
    /// <param name="from">First day.</param>
    /// <param name="until">Last day.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<RegisterView> LoadAsync(
        DateOnly? from = null,
        DateOnly? until = null,
        CancellationToken cancel = default
    )
    {
        var tanks = await desk.LoadAsync(cancel);
        var last = until ?? tanks.Today;
        var first = from ?? last.AddYears(-RegisterBook.YearsKept);
        var care = tanks.Care.SelectMany(g => g).OrderBy(l => l.At).ToList();
        SpeciesName Names(string key) =>
            tanks.Catalog.Find(key) is { } entry
                ? new(EntryWords.Science(entry), EntryWords.Common(entry))
                : new(key, "");
        return new(tanks, first, last)
        {
            Lines = RegisterBook.Find(care, Names, first, last),
            Stock = RegisterBook.Stock(care, last),
            Permits = await store.RecordsAsync<Permit>(cancel),
        };
    }

    /// <summary>Writes a permit; null where it is kept, else why not.</summary>
    /// <param name="permit">The permit.</param>
    /// <param name="basis">Version it was changed from; 0 for a new one.</param>
    public async Task<string?> KeepAsync(Permit permit, int basis) =>
        await desk.WriteAsync(new ShopChange(await desk.WhoAsync()).Keep(permit.Key, basis, permit, "permit"));
}
