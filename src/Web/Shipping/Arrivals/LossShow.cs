using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Losses;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Web.Shipping.Arrivals;

/// <summary>A row of a table of losses.</summary>
/// <param name="Name">What it counts for.</param>
/// <param name="Sent">Sent.</param>
/// <param name="Lost">Lost, or late.</param>
/// <param name="Seen">Share that was seen, with its interval.</param>
/// <param name="Used">Share that is counted with.</param>
public sealed record LossRow(string Name, int Sent, int Lost, string Seen, string Used);

/// <summary>A table of losses.</summary>
/// <param name="Title">Its title.</param>
/// <param name="By">What its rows are.</param>
/// <param name="Lost">Head of the column of losses.</param>
/// <param name="Rows">Its rows.</param>
public sealed record LossTable(string Title, string By, string Lost, ImmutableArray<LossRow> Rows);

/// <summary>Losses as the page shows them.</summary>
/// <param name="PriceWords">What the price counts with, in a sentence.</param>
/// <param name="Tables">Tables by service, season, class and species, and of late parcels.</param>
public sealed record LossShow(string PriceWords, ImmutableArray<LossTable> Tables)
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>Tables of what arrived.</summary>
    /// <param name="view">What is known of dispatch.</param>
    /// <param name="counts">How parcels arrived.</param>
    public static LossShow From(DispatchView view, ImmutableArray<ArrivalCount> counts)
    {
        var shop = view.Stock.Terms?.LossPercent ?? 5;
        var (percent, why) = LossStatistics.LossPercentFor(counts, shop);
        return new(
            string.Create(Invariant, $"Prices count with {percent:0.#} % of live parcels lost. {why}"),
            [
                Table("By service", "Service", LossBy.Carrier),
                Table("By season", "Season", LossBy.Season),
                Table("By class of animal", "Class", LossBy.Class),
                Table("By species", "Species", LossBy.Species),
                new(
                    "Late parcels",
                    "Service",
                    "Late",
                    [
                        .. view
                            .Rules.Carriers.Select(c =>
                                (c.Name, Late: DelayStatistics.LateChanceFor(c, counts))
                            )
                            .Where(c => c.Late.Parcels > 0)
                            .Select(c => new LossRow(
                                c.Name,
                                c.Late.Parcels,
                                c.Late.Late,
                                Percent((double)c.Late.Late / c.Late.Parcels),
                                c.Late.Why
                            )),
                    ]
                ),
            ]
        );

        LossTable Table(string title, string by, LossBy kind) =>
            new(
                title,
                by,
                "Parcels with a loss",
                [
                    .. LossStatistics
                        .Group(counts, kind, view.Catalog, shop)
                        .Select(g => new LossRow(
                            Named(view, kind, g.Name),
                            g.Parcels,
                            g.ParcelsLost,
                            $"{Percent(g.OfParcels.Seen)} ({Percent(g.OfParcels.Low)} to "
                                + $"{Percent(g.OfParcels.High)}){(g.IsFew ? ", few parcels" : "")}",
                            Percent(g.OfParcels.Mean)
                        )),
                ]
            );
    }

    private static string Named(DispatchView view, LossBy kind, string name) =>
        kind switch
        {
            LossBy.Carrier => view.Rules.Carriers.FirstOrDefault(c => c.Key == name)?.Name ?? name,
            LossBy.Class
                when ShipWords.Classes.FirstOrDefault(c => c.Letter == name) is { Words: { } words } =>
                $"{name}: {words}",
            _ => name,
        };

    private static string Percent(double share) => string.Create(Invariant, $"{100 * share:0.#} %");
}
