using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Workshop.Pricing;
using static System.FormattableString;

namespace Litterfall.Dispatch.Losses;

/// <summary>What parcels are grouped by.</summary>
public enum LossBy
{
    /// <summary>Service of a carrier.</summary>
    Carrier,

    /// <summary>Three months of the year in which they left.</summary>
    Season,

    /// <summary>Class of temperature.</summary>
    Class,

    /// <summary>Species.</summary>
    Species,
}

/// <summary>Losses of one group of parcels.</summary>
public sealed record LossGroup
{
    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>Parcels.</summary>
    public required int Parcels { get; init; }

    /// <summary>Parcels in which something died.</summary>
    public required int ParcelsLost { get; init; }

    /// <summary>Animals and pots sent.</summary>
    public required int Sent { get; init; }

    /// <summary>Animals and pots that died.</summary>
    public required int Dead { get; init; }

    /// <summary>Chance that a parcel has a loss: exact 95 % interval, and mean with the prior.</summary>
    public required LossRate OfParcels { get; init; }

    /// <summary>
    /// Chance of each animal. Those of one parcel die together, so that its interval is too narrow.
    /// </summary>
    public required LossRate OfAnimals { get; init; }

    /// <summary>True where so few parcels say little.</summary>
    public bool IsFew => Parcels < LossStatistics.Few;

    /// <summary>The group in one sentence.</summary>
    public string Words =>
        Invariant($"{ParcelsLost} of {Parcels} parcels had a loss ({OfParcels.Seen * 100:0.#} %; between ")
        + Invariant($"{OfParcels.Low * 100:0.#} and {OfParcels.High * 100:0.#} % with 95 % certainty)")
        + (IsFew ? ": too few to tell groups apart." : ".");
}

/// <summary>Losses counted from how parcels arrived.</summary>
public static class LossStatistics
{
    /// <summary>Parcels from which on a group is told apart from others; own choice.</summary>
    public const int Few = 20;

    /// <summary>Weight of what is believed before, in parcels; own choice.</summary>
    private const double PriorParcels = 20;

    private const double Percent = 100;

    private static readonly string[] Seasons =
    [
        "December to February",
        "March to May",
        "June to August",
        "September to November",
    ];

    /// <summary>Losses by groups, the largest group first.</summary>
    /// <param name="counts">How parcels arrived; a parcel with several species has several.</param>
    /// <param name="by">What they are grouped by.</param>
    /// <param name="catalog">The library, for names and classes.</param>
    /// <param name="shopPercent">Chance of loss before own history counts, percent.</param>
    public static Seq<LossGroup> Group(
        IReadOnlyCollection<ArrivalCount> counts,
        LossBy by,
        TradeCatalog catalog,
        decimal shopPercent
    )
    {
        return
        [
            .. counts
                .GroupBy(c => Name(c, by, catalog), StringComparer.Ordinal)
                .Select(g =>
                    From(
                        g.Key,
                        [.. g],
                        Pooled([.. counts.Where(c => Name(c, by, catalog) != g.Key)], shopPercent)
                    )
                )
                .OrderByDescending(g => g.Parcels)
                .ThenBy(g => g.Name, StringComparer.Ordinal),
        ];
    }

    /// <summary>All parcels as one group; null where none arrived yet.</summary>
    /// <param name="counts">How parcels arrived.</param>
    /// <param name="shopPercent">Chance of loss before own history counts, percent.</param>
    public static LossGroup? All(IReadOnlyCollection<ArrivalCount> counts, decimal shopPercent) =>
        counts.Count == 0 ? null : From("All parcels", counts, (double)shopPercent / Percent);

    /// <summary>The quarter of the year, told by its months: it means the same on both halves of the earth.
    /// </summary>
    /// <param name="day">Day it left.</param>
    public static string Season(DateOnly day) => Seasons[day.Month % 12 / 3];

    /// <summary>What a price should count with for losses, and why.</summary>
    /// <param name="counts">How parcels arrived.</param>
    /// <param name="shopPercent">Chance of loss that the shop entered, percent.</param>
    /// <param name="carrier">Key of the carrier's terms; empty for all.</param>
    /// <returns>Percent, and the reason in one sentence.</returns>
    public static (decimal Percent, string Why) LossPercentFor(
        IReadOnlyCollection<ArrivalCount> counts,
        decimal shopPercent,
        string carrier = ""
    )
    {
        ArrivalCount[] own = [.. counts.Where(c => carrier.Length == 0 || c.Carrier == carrier)];
        var parcels = Parcels(own).Count;
        if (parcels < Few)
        {
            return (
                shopPercent,
                Invariant($"The shop's own figure counts: {parcels} of {Few} parcels have arrived that are ")
                    + "needed to go by history."
            );
        }

        var prior =
            carrier.Length == 0
                ? (double)shopPercent / Percent
                : Pooled([.. counts.Where(c => c.Carrier != carrier)], shopPercent);
        var group = From("", own, prior);
        return (
            Math.Round((decimal)(group.OfParcels.Mean * Percent), 2),
            Invariant($"{group.ParcelsLost} of {parcels} parcels had a loss; with what was believed counted ")
                + Invariant(
                    $"as {PriorParcels:0} parcels before them, between {group.OfParcels.Low * Percent:0.#} "
                )
                + Invariant($"and {group.OfParcels.High * Percent:0.#} % with 95 % certainty.")
        );
    }

    /// <summary>What all other parcels say together, as what is believed of a group: 0 to 1.</summary>
    private static double Pooled(IReadOnlyCollection<ArrivalCount> counts, decimal shopPercent) =>
        All(counts, shopPercent)?.OfParcels.Mean ?? (double)shopPercent / Percent;

    private static LossGroup From(string name, IReadOnlyCollection<ArrivalCount> counts, double prior)
    {
        var parcels = Parcels(counts);
        var (lost, sent, dead) = (
            parcels.Count(p => p.Sum(c => c.Dead) > 0),
            counts.Sum(c => c.Sent),
            counts.Sum(c => c.Dead)
        );
        var (believed, kept) = (PriorParcels * prior, PriorParcels * (1 - prior));
        return new()
        {
            Name = name,
            Parcels = parcels.Count,
            ParcelsLost = lost,
            Sent = sent,
            Dead = dead,
            OfParcels = new(lost, parcels.Count, believed, kept),
            OfAnimals = new(Math.Min(dead, sent), Math.Max(1, sent), believed, kept),
        };
    }

    private static List<IGrouping<int, ArrivalCount>> Parcels(IEnumerable<ArrivalCount> counts) =>
        [.. counts.GroupBy(c => c.Parcel)];

    private static string Name(ArrivalCount count, LossBy by, TradeCatalog catalog) =>
        by switch
        {
            LossBy.Carrier => count.Carrier,
            LossBy.Season => Season(count.Day),
            LossBy.Species => catalog.Find(count.Species)?.CommonFirst ?? count.Species,
            _ => Class(catalog.Find(count.Species)),
        };

    /// <summary>Feeders and plants have one class each where their entry names none.</summary>
    private static string Class(CatalogEntry? entry) =>
        entry switch
        {
            AnimalEntry { TransportClass: { } own } => own.Text,
            CrewEntry { TransportClass: { } own } => own.Text,
            FeederEntry => "F",
            PlantEntry => "G",
            _ => "not known",
        };
}
