using System.Collections.Immutable;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;

namespace Litterfall.Workshop.Demo;

/// <summary>A design of the demo as it is kept.</summary>
/// <param name="Order">Number of the order that it is drawn for.</param>
/// <param name="Id">Number of the design.</param>
/// <param name="Version">Its version.</param>
/// <param name="Name">Its name.</param>
/// <param name="Numbers">Its numbers, as far as sizes and goods.</param>
public sealed record DemoDesign(int Order, Guid Id, int Version, string Name, DesignNumbers Numbers);

/// <summary>The whole year of the invented workshop, ready to be written in one step.</summary>
public sealed class DemoBook
{
    internal List<Lot> NewLots { get; } = [];

    internal List<Movement> NewLines { get; } = [];

    internal List<SoilBatch> NewBatches { get; } = [];

    internal List<Order> NewOrders { get; } = [];

    internal List<CuttingJob> NewJobs { get; } = [];

    internal List<Quote> NewQuotes { get; } = [];

    internal List<Invoice> NewPapers { get; } = [];

    internal List<Culture> NewCultures { get; } = [];

    internal List<PlantTray> NewTrays { get; } = [];

    internal List<TankRoom> NewRooms { get; } = [];

    internal List<Tank> NewTanks { get; } = [];

    internal List<CareEntry> NewCare { get; } = [];

    internal List<Permit> NewPermits { get; } = [];

    internal List<VisitContract> NewContracts { get; } = [];

    /// <summary>Permits.</summary>
    public IReadOnlyList<Permit> Permits => NewPermits;

    /// <summary>Contracts of visits.</summary>
    public IReadOnlyList<VisitContract> Contracts => NewContracts;

    /// <summary>Rooms with tanks.</summary>
    public IReadOnlyList<TankRoom> Rooms => NewRooms;

    /// <summary>Tanks that run.</summary>
    public IReadOnlyList<Tank> Tanks => NewTanks;

    /// <summary>Lines of their logs.</summary>
    public IReadOnlyList<CareEntry> Care => NewCare;

    /// <summary>Lots.</summary>
    public IReadOnlyList<Lot> Lots => NewLots;

    /// <summary>Lines of stock in the order they were written.</summary>
    public IReadOnlyList<Movement> Lines => NewLines;

    /// <summary>Batches of mix.</summary>
    public IReadOnlyList<SoilBatch> Batches => NewBatches;

    /// <summary>Cutting plans in the order of their numbers.</summary>
    public IReadOnlyList<CuttingJob> Jobs => NewJobs;

    /// <summary>Orders.</summary>
    public IReadOnlyList<Order> Orders => NewOrders;

    /// <summary>Quotes in the order of their numbers.</summary>
    public IReadOnlyList<Quote> Quotes => NewQuotes;

    /// <summary>Invoices and delivery notes, each kind in the order of its numbers.</summary>
    public IReadOnlyList<Invoice> Papers => NewPapers;

    /// <summary>Cultures, those of line C ended for mites.</summary>
    public IReadOnlyList<Culture> Cultures => NewCultures;

    /// <summary>Trays of plants.</summary>
    public IReadOnlyList<PlantTray> Trays => NewTrays;

    /// <summary>Shelves of cultures.</summary>
    public ImmutableArray<CultureShelf> Shelves { get; private set; } = [];

    /// <summary>Animals in care.</summary>
    public ImmutableArray<FedGroup> Fed { get; private set; } = [];

    /// <summary>Benches of plants.</summary>
    public ImmutableArray<NurseryBench> Benches { get; private set; } = [];

    /// <summary>Mother plants.</summary>
    public ImmutableArray<MotherPlant> Mothers { get; private set; } = [];

    /// <summary>Days, people and places.</summary>
    public ShopCalendar Calendar { get; init; } = new();

    /// <summary>Days of the orders that are accepted.</summary>
    public ShopPlan Plan { get; internal set; } = new();

    /// <summary>Goods of the demo.</summary>
    public ImmutableArray<Good> Goods { get; init; } = [];

    /// <summary>Offers of the demo.</summary>
    public ImmutableArray<Offer> Offers { get; init; } = [];

    /// <summary>The year before and the orders that are open, as they stand on a day.</summary>
    /// <param name="supply">Catalog and designs.</param>
    /// <param name="today">Day the demo is filled; the scenario is moved to it by whole weeks.</param>
    public static DemoBook Create(DemoSupply supply, DateOnly today)
    {
        var book = new DemoBook
        {
            Calendar = DemoPlan.Calendar(DemoShop.Shift(today)),
            Goods = DemoGoods.All(supply.Catalog),
            Offers = DemoGoods.Offers(supply.Catalog),
        };
        var stock = new DemoStock(book, DemoShop.Shift(today));
        DemoHistory.Write(book, stock, supply);
        stock.Open();
        var cultures = new DemoCultures(book, stock);
        (book.Shelves, book.Fed) = cultures.Write();
        (book.Benches, book.Mothers) = new DemoNursery(book, stock).Write();
        DemoOrders.Write(book, stock, supply);
        new DemoCutting(book, stock, supply).Write();
        book.Plan = DemoPlan.Make(book, supply, today);
        new DemoTanks(book, supply.Tanks, today).Write();
        return book;
    }
}
