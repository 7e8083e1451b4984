using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Workshop.Stock;
using Litterfall.Workshop.Cutting;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Orders;

namespace Litterfall.UnitTests.Workshop.CuttingRoom;

/// <summary>A roll of fly screen, 1.22 m wide, cut by the solver from what orders want.</summary>
public sealed class RollTests
{
    private const string Mesh = "plastic-fly-screen";

    private static readonly Good Screen = new()
    {
        Key = Mesh,
        Name = "fly screen",
        Letters = "MESH",
        Kind = GoodKind.Sheet,
        Unit = StockUnit.SquareMeters,
    };

    private static WantedPart Part(int order, double edge, int count, int day) =>
        new()
        {
            Order = order,
            For = "tank",
            Day = TableScene.Today.AddDays(day),
            Material = Mesh,
            Part = "barrier",
            Length = edge,
            Width = edge,
            Count = count,
        };

    private static CutMaterial Material(double rollMeters, params Offer[] offers)
    {
        var ledger = new Ledger().Buy("MESH-1", 1.22 * rollMeters, 10m, l =>
            l with
            {
                Good = Mesh,
                Form = SheetForm.Roll,
                LengthMillimeters = 1000 * rollMeters,
                WidthMillimeters = 1220,
            }
        );
        var facts = new TableFacts
        {
            Wanted = [Part(1, 440, 10, 5), Part(2, 290, 7, 9)],
            Book = ledger.Book,
            Supply = new(
                [Screen],
                offers,
                [
                    new Supplier
                    {
                        Key = "north",
                        Name = "North",
                        Currency = "EUR",
                    },
                ],
                []
            ),
            Catalog = SampleFiles.Catalog,
            Currency = "EUR",
            Today = TableScene.Today,
        };
        return Assert.Single(CutMaterial.LayAll(facts));
    }

    private static CuttingPlan? Solve(TaskDraft draft) =>
        CuttingTable.Solve(
            draft.Task,
            new CuttingSearch { Limit = TimeSpan.FromSeconds(1) },
            Xunit.TestContext.Current.CancellationToken
        );

    /// <summary>
    /// Own worked example: ten pieces of 440 × 440 and seven of 290 × 290 mm have 2.5247 m²: over 1.22 m at
    /// least 2.07 m. Five rows with two large ones leave a strip of 340 mm beside them for the small ones:
    /// five
    /// rows of 440 are 2.20 m, and 2200 / 290 = 7 fit into the strip.
    /// </summary>
    [Fact]
    public void Seventeen_barriers_take_less_than_two_meters_and_a_fifth()
    {
        var draft = TaskDraft.Make(Material(9.4))!;
        var plan = Solve(draft)!;
        Assert.Empty(CuttingCheck.Faults(draft.Task, plan));
        var job = draft.Keep(3, Material(9.4), plan, (TableScene.Today, "Tobin"));
        var totals = JobTotals.Read(job);
        var pulled = Assert.Single(totals.Pull);
        Assert.True(pulled.IsRoll);
        Assert.InRange(pulled.Length, 2069.4, 2200);
        Assert.Equal(17, PlacedPiece.Read(job).Length);
        // The second balance: parts by their sizes alone, and the roll by its width.
        Assert.Equal((10 * 440 * 440) + (7 * 290 * 290), totals.Areas.Sum(a => a.Parts), 1e-3);
        Assert.Equal(pulled.Length * 1220, totals.Areas.Sum(a => a.Whole), 1e-3);
        Assert.All(totals.Areas, a => Assert.True(a is { Kerf: >= 0, Waste: >= -1e-6, Trim: >= 0 }));
    }

    /// <summary>Of 1.4 m three rows of two large ones come; the small ones of the later order wait.</summary>
    [Fact]
    public void Where_the_roll_is_short_the_order_wanted_first_is_cut()
    {
        var draft = TaskDraft.FromStock(Material(1.4), d => Solve(d) is not null)!;
        Assert.Equal(6, draft.Pieces.Length);
        Assert.All(draft.Pieces, p => Assert.Equal(1, p.Order));
    }

    /// <summary>A roll that is too short is left alone where a new one can be bought.</summary>
    [Fact]
    public void Rolls_are_tried_one_after_the_other()
    {
        var material = Material(
            1.4,
            new Offer
            {
                Key = "north-roll",
                Supplier = "north",
                Good = Mesh,
                Pack = "roll 1.22 × 30 m",
                Amount = 36.6,
                LengthMillimeters = 30_000,
                WidthMillimeters = 1220,
                IsRoll = true,
                Tiers = [new PriceTier(1, 120m)],
            }
        );
        var tried = TaskDraft.Make(material)!.OneRollEach().ToList();
        Assert.Equal(2, tried.Count);
        Assert.Null(Solve(tried[0]));
        Assert.Equal("north-roll", Assert.Single(Solve(tried[1])!.Sheets.Select(s => s.Stock).Distinct()));
    }
}
