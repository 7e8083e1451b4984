using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;

namespace Litterfall.Web.Tanks.Visits;

/// <summary>What is typed of a contract.</summary>
public sealed class ContractDraft
{
    private const int MostWeeks = 104;
    private int order;

    /// <summary>Its number; 0 for a new one.</summary>
    public int Number { get; private init; }

    /// <summary>Version it is changed from; 0 for a new one.</summary>
    public int Version { get; private init; }

    /// <summary>Key of the customer.</summary>
    public string Customer { get; set; } = "";

    /// <summary>Numbers of tanks, with commas between.</summary>
    public string Tanks { get; set; } = "";

    /// <summary>Weeks between visits.</summary>
    public string Weeks { get; set; } = "6";

    /// <summary>Price of a visit.</summary>
    public string Price { get; set; } = "";

    /// <summary>Day of the first visit.</summary>
    public DateOnly? Start { get; set; }

    /// <summary>Last day.</summary>
    public DateOnly? End { get; set; }

    /// <summary>Place on the route.</summary>
    public string Route { get; set; } = "";

    /// <summary>What is in the price.</summary>
    public string Included { get; set; } = "";

    /// <summary>Notes.</summary>
    public string Notes { get; set; } = "";

    /// <summary>A contract as it is.</summary>
    /// <param name="kept">The contract.</param>
    public static ContractDraft From(Kept<VisitContract> kept) =>
        new()
        {
            order = kept.Value.Order,
            Number = kept.Value.Number,
            Version = kept.Version,
            Customer = kept.Value.Customer,
            Tanks = string.Join(", ", kept.Value.Tanks),
            Weeks = kept.Value.EveryWeeks.ToString(CultureInfo.InvariantCulture),
            Price = kept.Value.Price.ToString("0.00", CultureInfo.InvariantCulture),
            Start = kept.Value.Start,
            End = kept.Value.End,
            Route = kept.Value.Route.ToString(CultureInfo.InvariantCulture),
            Included = string.Join('\n', kept.Value.Included),
            Notes = kept.Value.Notes,
        };

    /// <summary>The contract that is typed, or what is wrong, in one sentence.</summary>
    /// <param name="view">Contracts and tanks.</param>
    public (VisitContract? Contract, string? Fault) Read(VisitView view)
    {
        var tanks = Tanks.Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries);
        var weeks = int.TryParse(Weeks.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var w)
            ? w
            : 0;
        var fault =
            Customer.Length == 0 ? "Choose the customer."
            : tanks.Length == 0 ? "Type the numbers of the tanks, such as LD-203."
            : weeks is < 1 or > MostWeeks ? $"Type how many weeks lie between visits, 1 to {MostWeeks}."
            : StockWords.Price(Price) is null ? "Type the price of a visit, such as 85.00."
            : Start is null ? "Choose the day of the first visit."
            : End < Start ? "The contract cannot end before its first visit."
            : null;
        return fault is not null
            ? (null, fault)
            : (
                new VisitContract
                {
                    Number =
                        Number > 0
                            ? Number
                            : view.Contracts.Select(c => c.Value.Number).DefaultIfEmpty(0).Max() + 1,
                    Customer = Customer,
                    Order = order,
                    Tanks = [.. tanks],
                    EveryWeeks = weeks,
                    Price = StockWords.Price(Price)!.Value,
                    Start = Start!.Value,
                    End = End,
                    Route = int.TryParse(Route.Trim(), out var route) ? route : 0,
                    Included =
                    [
                        .. Included.Split(
                            '\n',
                            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
                        ),
                    ],
                    Notes = Notes.Trim(),
                },
                null
            );
    }
}
