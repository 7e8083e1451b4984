using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Goods;

namespace Litterfall.UnitTests.Workshop.Goods;

/// <summary>Records of the bench and a workshop's folder say the same; own worked examples.</summary>
public sealed class ShopFilesTests
{
    private static readonly TradeCatalog Catalog = Shop.Embedded();

    private static readonly ShopTerms Terms = new() { Name = "Example", Currency = "EUR" };

    private static Offer Bark(string pack, double liters, string? library, params (int, decimal)[] tiers) =>
        new()
        {
            Key = OwnKey.From(pack),
            Supplier = "north",
            Good = "fine-bark",
            Pack = pack,
            LibraryPack = library,
            Amount = liters,
            Tiers = [.. tiers.Select(t => new PriceTier(t.Item1, t.Item2))],
        };

    [Fact]
    public void Prices_of_the_bench_are_read_as_those_of_a_folder()
    {
        var bark = LibraryGoods.From(Catalog.Find("fine-bark")!)!;
        var files = ShopFiles.Write(
            Terms,
            [bark],
            [
                Bark("20 L", 20, "pack-fine-bark-20-l", (1, 9.80m), (4, 8.90m)),
                Bark("20 L dear", 20, "pack-fine-bark-20-l", (1, 11m)),
                Bark("sack of 60 L", 60, null, (1, 24.50m)),
            ],
            Catalog
        );
        var reading = WorkshopReader.Read("bench", files);
        Assert.Empty(reading.Faults);
        var with = Catalog.With(reading.Value!);
        Assert.Empty(WorkshopReader.Unknown(with, "bench"));
        Assert.Equal("EUR", with.Workshop!.Currency);
        Assert.Equal(
            [new PriceBreak(1, 9.80m), new PriceBreak(4, 8.90m)],
            with.Workshop.Prices["pack-fine-bark-20-l"].Breaks
        );
        var own = with.Find<PackEntry>("pack-shop-sack-of-60-l")!;
        Assert.Equal(0.060, own.LooseVolume!.Si, 1e-12);
        Assert.Equal(24.50m, with.Workshop.Prices[own.Key].Breaks[0].Price);
    }

    [Fact]
    public void A_folder_becomes_records()
    {
        CatalogFile[] files =
        [
            new("workshop.json", """{ "name": "Example", "currency": "USD" }"""),
            new(
                "prices.json",
                """
                [ { "pack": "pack-fine-bark-20-l", "price": 9.80,
                    "breaks": [ { "from": 4, "price": 8.90 } ] },
                  { "pack": "mist-nozzle", "price": 3.20 } ]
                """
            ),
            new("stock.json", """{ "fine-bark": "74 L", "charcoal": "22 L" }"""),
        ];
        var catalog = Catalog.With(WorkshopReader.Read("x", files).Value!);
        var records = FolderRecords.Read(catalog, Terms, new DateOnly(2026, 8, 3));
        Assert.Equal(("Example", "USD"), (records.Terms.Name, records.Terms.Currency));
        Assert.Equal(["charcoal", "fine-bark", "mist-nozzle"], records.Goods.Select(g => g.Key));
        Assert.Equal(
            [("mist-nozzle", 1.0), ("fine-bark", 20.0)],
            records.Offers.Select(o => (o.Good, o.Amount))
        );
        Assert.Equal([("charcoal", 22.0), ("fine-bark", 74.0)], records.Lots.Select(l => (l.Good, l.Amount)));
    }
}
