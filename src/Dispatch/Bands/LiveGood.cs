using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Judging.Animals;

namespace Litterfall.Dispatch.Bands;

/// <summary>Something alive in a parcel, with what it bears.</summary>
public sealed record LiveGood
{
    private static readonly string[] Frogs = ["frog", "toad", "mantella", "newt", "salamander"];

    /// <summary>As it stands in the parcel.</summary>
    public required LiveContent Content { get; init; }

    /// <summary>Its name, common name first; its key where the library does not know it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is; null where the library does not know it.</summary>
    public EntryKind? Kind { get; init; }

    /// <summary>What it bears; null where it has no class.</summary>
    public TransportBand? Band { get; init; }

    /// <summary>True for frogs, toads and their kin.</summary>
    public bool IsAmphibian { get; init; }

    /// <summary>How measured limits of the species made its class stricter; empty for none.</summary>
    public string Tightening { get; init; } = "";

    /// <summary>True for anything that moves: carriers and papers ask about it.</summary>
    public bool IsAnimal => Kind is not (EntryKind.Plant or EntryKind.Moss);

    /// <summary>Looks a content up in the library.</summary>
    /// <param name="catalog">The library with the workshop's own entries.</param>
    /// <param name="content">As it stands in the parcel.</param>
    public static LiveGood Find(TradeCatalog catalog, LiveContent content)
    {
        var entry = catalog.Find(content.Key);
        var good = new LiveGood
        {
            Content = content,
            Name = entry?.CommonFirst ?? content.Key,
            Kind = entry?.Kind,
        };
        return entry switch
        {
            AnimalEntry animal => Animal(good, animal),
            CrewEntry crew => Crew(good, crew),
            FeederEntry => good with { Band = TransportBands.Find(TransportBands.Feeders) },
            PlantEntry or MossEntry => good with { Band = TransportBands.Find(TransportBands.Plants) },
            _ => good with { Kind = null },
        };
    }

    private static LiveGood Animal(LiveGood good, AnimalEntry animal)
    {
        var named = good with
        {
            IsAmphibian = Frogs.Any(f => animal.Taxon?.Text.Contains(f, StringComparison.Ordinal) == true),
        };
        if (Class(animal.TransportClass) is not { } band)
        {
            return named;
        }

        var lethal = HeatLimits.Lethal(animal) is { } most ? Celsius(most) : double.PositiveInfinity;
        var stress = Hours(animal, lethal);
        var coldest = animal.CriticalMinimum
            is { Origin.Provenance: Provenance.Read or Provenance.Measured } least
            ? Celsius(least)
            : double.NegativeInfinity;
        var strict = band with
        {
            KeepHigh = Math.Min(band.KeepHigh, stress),
            HoldAbove = Math.Min(band.HoldAbove, stress),
            StopAbove = Math.Min(band.StopAbove, lethal),
            BearsHigh = Math.Min(band.BearsHigh, lethal),
            BearsLow = Math.Max(band.BearsLow, coldest),
        };
        return named with { Band = strict, Tightening = Told(band, strict) };
    }

    /// <summary>
    /// Warmth that is borne for hours, °C: the measured critical maximum less the margin of keepers, never
    /// below the warmth that it is kept in by day.
    /// </summary>
    private static double Hours(AnimalEntry animal, double lethal)
    {
        var margin = HeatLimits.Margin.Si;
        var kept = animal.WarmestDay is { } day ? Celsius(day) : double.NegativeInfinity;
        return Math.Max(lethal - margin, kept);
    }

    private static LiveGood Crew(LiveGood good, CrewEntry crew)
    {
        if (Class(crew.TransportClass) is not { } band)
        {
            return good;
        }

        var lethal = crew.HeatLimit is { } limit ? Celsius(limit) : double.PositiveInfinity;
        var strict = band with
        {
            StopAbove = Math.Min(band.StopAbove, lethal),
            BearsHigh = Math.Min(band.BearsHigh, lethal),
        };
        return good with { Band = strict, Tightening = Told(band, strict) };
    }

    private static TransportBand? Class(CatalogText? letter) =>
        letter is null ? null
        : TransportBands.Find(letter.Text) is { } band
            ? band with
            {
                Origin = new(
                    letter.Origin.Source,
                    letter.Origin.Place,
                    letter.Origin.Provenance > band.Origin.Provenance
                        ? letter.Origin.Provenance
                        : band.Origin.Provenance
                ),
            }
        : null;

    private static double Celsius(Figure figure) => Math.Round(Unit.Celsius.FromSi(figure.Si), 6);

    private static string Told(TransportBand band, TransportBand strict)
    {
        var said = new List<string>();
        Add("keeps below", band.KeepHigh, strict.KeepHigh);
        Add("is held above", band.HoldAbove, strict.HoldAbove);
        Add("never goes above", band.StopAbove, strict.StopAbove);
        return string.Join(", ", said);

        void Add(string words, double from, double to)
        {
            if (to < from)
            {
                said.Add(
                    string.Create(CultureInfo.InvariantCulture, $"{words} {to:0.#} °C, not {from:0.#} °C")
                );
            }
        }
    }
}
