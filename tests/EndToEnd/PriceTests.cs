using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd;

/// <summary>Prices come from a named workshop folder or not at all.</summary>
public sealed class PriceTests
{
    /// <summary>One box, one layer: 1 m x 0.5 m x 5 cm of aggregate is 25 L.</summary>
    private const string Design =
        "litterfall: 1\nname: t\nbox: { inside: { length: 100 cm, depth: 50 cm, height: 50 cm } }\n"
        + "floor: { drainage: { material: expanded-clay-8-16, depth: 5 cm } }\n";

    [Fact]
    public void Without_a_folder_there_is_no_price_but_a_note()
    {
        using var scratch = new Scratch();
        var report = Cli.Run("check", scratch.Write("t.viv.yaml", Design), "--json").Json;
        Assert.Null(report["cost"]!["goods"]);
        Assert.Null(report["cost"]!["purchase"]);
        Assert.Null(report["cost"]!["currency"]);
        Assert.NotEqual("", report["cost"]!["note"]!.GetValue<string>());
        Assert.All(report["packs"]!.AsArray(), p => Assert.Null(p!["cost"]));
    }

    [Fact]
    public void With_a_price_the_goods_cost_their_packs()
    {
        using var scratch = new Scratch();
        var shop = Folder(scratch, "[ { \"pack\": \"my-sack\", \"price\": 7.5 } ]");
        var report = Cli.Run("check", scratch.Write("t.viv.yaml", Design), "--json", "--workshop", shop).Json;
        Assert.Equal("EUR", report["cost"]!["currency"]!.GetValue<string>());
        var pack = report["packs"]![0]!;
        Assert.Equal(25, pack["needLitres"]!.GetValue<double>(), 1e-9);
        // The only pack with a price holds 10 L: three of them, 22.50, five liters over.
        Assert.Equal(3, pack["buy"]![0]!["packs"]!.GetValue<double>());
        Assert.Equal(22.5, pack["cost"]!.GetValue<double>(), 1e-9);
        Assert.Equal(22.5, report["cost"]!["purchase"]!.GetValue<double>(), 1e-9);
        // Used are 25 of the 30 L: 22.50 x 25 / 30.
        Assert.Equal(18.75, report["cost"]!["goods"]!.GetValue<double>(), 1e-9);
        Assert.Equal(5, pack["leftLitres"]!.GetValue<double>(), 1e-9);
    }

    [Fact]
    public void From_a_break_on_every_pack_is_cheaper()
    {
        using var scratch = new Scratch();
        const string prices =
            "[ { \"pack\": \"my-sack\", \"price\": 7.5, \"breaks\": [ { \"from\": 3, \"price\": 6 } ] } ]";
        var shop = Folder(scratch, prices);
        var report = Cli.Run("check", scratch.Write("t.viv.yaml", Design), "--json", "--workshop", shop).Json;
        Assert.Equal(18, report["cost"]!["purchase"]!.GetValue<double>(), 1e-9); // three at 6
    }

    [Fact]
    public void Stock_is_used_first()
    {
        using var scratch = new Scratch();
        var shop = Folder(scratch, "[ { \"pack\": \"my-sack\", \"price\": 7.5 } ]");
        File.WriteAllText(Path.Combine(shop, "stock.json"), "{ \"expanded-clay-8-16\": \"6 L\" }");
        var report = Cli.Run("check", scratch.Write("t.viv.yaml", Design), "--json", "--workshop", shop).Json;
        // 25 L less 6 L in stock are 19 L: two sacks.
        Assert.Equal(15, report["cost"]!["purchase"]!.GetValue<double>(), 1e-9);
    }

    /// <summary>A workshop may say more about a source the library names too.</summary>
    [Fact]
    public void A_source_of_the_same_key_is_the_workshops()
    {
        using var scratch = new Scratch();
        var shop = Folder(scratch, "[ { \"pack\": \"my-sack\", \"price\": 7.5 } ]");
        const string sources =
            "[ { \"key\": \"crc-handbook\", \"title\": \"Our copy\", \"read\": \"whole\" } ]";
        File.WriteAllText(Path.Combine(shop, "sources.json"), sources);
        var ended = Cli.Run("check", scratch.Write("t.viv.yaml", Design), "--json", "--workshop", shop);
        Assert.True(ended.Code == 0, ended.ToString());
    }

    [Fact]
    public void A_missing_price_is_named_and_leaves_no_total()
    {
        var sample = Cli.Samples.Single(s => s.Contains("ld-202", StringComparison.Ordinal));
        using var scratch = new Scratch();
        var shop = Folder(scratch, "[ { \"pack\": \"my-sack\", \"price\": 7.5 } ]");
        var cost = Cli.Run("check", sample, "--json", "--workshop", shop).Json["cost"]!;
        Assert.Null(cost["goods"]);
        Assert.NotEmpty(cost["missingPrices"]!.AsArray());
    }

    [Fact]
    public void A_folder_named_in_the_design_counts_from_the_design()
    {
        using var scratch = new Scratch();
        Folder(scratch, "[ { \"pack\": \"my-sack\", \"price\": 7.5 } ]");
        var path = scratch.Write("t.viv.yaml", Design + "workshop: shop\n");
        var report = Cli.Run("check", path, "--json").Json;
        Assert.Equal(22.5, report["cost"]!["purchase"]!.GetValue<double>(), 1e-9);
    }

    private static string Folder(Scratch scratch, string prices)
    {
        var folder = Directory.CreateDirectory(scratch.At("shop")).FullName;
        var sack = new JsonArray(
            new JsonObject
            {
                ["key"] = "my-sack",
                ["kind"] = "pack",
                ["name"] = "sack",
                ["material"] = "expanded-clay-8-16",
                ["values"] = new JsonObject
                {
                    ["litres"] = new JsonObject { ["value"] = 10, ["unit"] = "L" },
                },
            }
        );
        File.WriteAllText(Path.Combine(folder, "packs.json"), sack.ToJsonString());
        File.WriteAllText(Path.Combine(folder, "prices.json"), prices);
        File.WriteAllText(
            Path.Combine(folder, "workshop.json"),
            "{ \"name\": \"t\", \"currency\": \"EUR\" }"
        );
        return folder;
    }
}
