using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd;

/// <summary>The commands that pose one case of the workshop: forms, results, ends and bad input.</summary>
public sealed class WorkshopCommandTests
{
    private const string Quote = """
        { "currency": "EUR", "materials": 61.40, "wastePercent": 6,
          "labor": [ { "hours": 3.25, "wagePerHour": 24 } ], "overheadPerHour": 7.5, "overheadPercent": null,
          "machine": 2.10, "live": 14.20, "packaging": 6.80, "shipping": 19.90,
          "loss": { "chancePercent": 5, "replacedAgain": true, "replacementCost": null },
          "fee": { "percent": 2.9, "fixed": 0.30, "on": "gross" },
          "marginPercent": 35, "taxPercent": 19, "pricesIncludeTax": true, "charge": null }
        """;

    private const string Buy = """
        { "name": "b", "optimumCents": 1, "oneOptimalPlan": [1], "reproved": true,
          "suppliers": { "S": { "deliveryCents": 690, "freeFromCents": 5000, "minOrderCents": 0 } },
          "products": { "bark": { "need": 12.5, "stock": 2.5 } },
          "offers": [ { "supplier": "S", "product": "bark", "packLitres": 2.5,
                        "breaks": [ [1, 500], [4, 450] ] } ] }
        """;

    private const string Trace = """
        { "edges": [ { "from": "PEAT-31", "to": "MIX-07", "amount": 40 },
                     { "from": "MIX-07", "to": "KIT-101", "amount": 24 } ],
          "ask": [ { "forward": "PEAT-31" }, { "backward": "KIT-101" },
                   { "balance": "MIX-07", "made": 36 } ] }
        """;

    private const string Mix = """
        { "recipe": [ { "name": "bark", "parts": 3, "kgPerLiter": 0.3, "wetPercent": 40 },
                      { "name": "fiber", "parts": 1, "kgPerLiter": 0.2, "wetPercent": 30 } ],
          "needLiters": 88, "shrinkPercent": 12, "tubLiters": 60, "fillPercent": 80, "targetWetPercent": 50 }
        """;

    /// <summary>Plants on day 1, a Tuesday; planted on 15, grown in on 29, a Tuesday; there a day later.</summary>
    private const string Schedule = """
        { "name": "s", "day0": "Monday", "workdays": "Mon-Fri", "shipDays": "Mon-Wed", "objective": "x",
          "optimum": 1, "proven": true, "bound": 1, "onePlan": [[1, 2, 3, 0]],
          "horizonDays": 60, "holidays": [ 8 ], "transitWorkdays": 1, "staffHoursPerDay": 6,
          "benchPlaces": 2, "quarantinePlaces": 2,
          "orders": [ { "id": 7, "release": 1, "due": 30, "quarantineDays": 14, "growInDays": 14,
                        "plantHours": 4, "packHours": 1, "quarantinePlacesUsed": 1, "benchPlacesUsed": 2,
                        "weight": 2 } ] }
        """;

    public static TheoryData<string> Commands => ["quote", "buy", "schedule", "trace", "mix"];

    /// <summary>A command, a case, and what its refusal says.</summary>
    public static TheoryData<string, string, string> BadInput =>
        new()
        {
            { "quote", """{ "materials": 1, "labour": [] }""", "no key 'labour'" },
            { "quote", """{ "currency": "EUR and USD" }""", "2 currencies" },
            {
                "quote",
                """{ "currency": "EUR", "labor": [ { "hours": 1, "wagePerHour": 9, "currency": "USD" } ] }""",
                "two currencies"
            },
            {
                "quote",
                """{ "materials": 1, "marginPercent": 95, "fee": { "percent": 5, "on": "net" } }""",
                "take the whole price"
            },
            { "quote", """{ "loss": { "chancePercent": 100, "replacedAgain": true } }""", "chancePercent" },
            { "quote", """{ "materials": -1 }""", "materials is -1" },
            {
                "trace",
                """{ "edges": [ { "from": "A", "to": "A" } ], "ask": [ { "forward": "A" } ] }""",
                "ring"
            },
            {
                "trace",
                """{ "edges": [ { "from": "A", "to": "B" } ], "ask": [ { "forward": "C" } ] }""",
                "no movement"
            },
            {
                "trace",
                """
                    { "edges": [ { "from": "A", "to": "B", "amount": 5 } ],
                      "ask": [ { "balance": "A", "made": 4 } ] }
                    """,
                "1 more than the 4 made"
            },
            {
                "mix",
                """{ "recipe": [{"name":"a","parts":1}], "needLiters": 90, "tubLiters": 60, "batches": 1 }""",
                "the tub takes 60.0 L"
            },
            {
                "mix",
                """
                    { "recipe": [ { "name": "a", "parts": 1, "kgPerLiter": 0.4, "wetPercent": 60 } ],
                      "needLiters": 10, "tubLiters": 60, "targetWetPercent": 50 }
                    """,
                "too wet"
            },
            {
                "buy",
                """
                    { "suppliers": { "S": {} }, "products": { "bark": { "need": 1 }, "moss": { "need": 1 } },
                      "offers": [ { "supplier": "S", "product": "bark", "packLitres": 5,
                                    "breaks": [[1, 5]] }] }
                    """,
                "no supplier offers moss"
            },
            {
                "buy",
                """
                    { "suppliers": { "S": {} }, "products": { "bark": { "need": 1 } },
                      "offers": [ { "supplier": "T", "product": "bark", "packLitres": 5,
                                    "breaks": [[1, 5]] }] }
                    """,
                "'T' is not listed"
            },
            {
                "buy",
                """
                    { "suppliers": { "S": {} }, "products": { "bark": { "need": 1 } },
                      "offers": [ { "supplier": "S", "product": "bark", "packLitres": 5,
                                    "breaks": [ [4, 5], [2, 4] ] } ] }
                    """,
                "begins at 2 packs"
            },
            {
                "schedule",
                Schedule.Replace("\"plantHours\": 4", "\"plantHours\": 7", StringComparison.Ordinal),
                "order 7 needs 7 h on one day, staff has 6"
            },
            {
                "schedule",
                Schedule.Replace("\"horizonDays\": 60", "\"horizonDays\": 29", StringComparison.Ordinal),
                "the horizon ends with day 28"
            },
        };

    /// <summary>Own worked example: 345.9222 without tax, 411.65 charged, 35.0004 % left.</summary>
    [Fact]
    public void Quote_tells_cost_price_and_margin()
    {
        var told = Told("quote", Quote);
        Near(212.6116, told["cost"]!["total"]);
        Near(2.1526, told["cost"]!["reserve"]);
        Near(345.9222, told["net"]);
        Assert.Equal(41165, told["chargedCents"]!.GetValue<long>());
        Near(35.0004, told["marginPercent"]);
        Assert.Equal("hours", told["sensitivity"]![0]!["input"]!.GetValue<string>());
        Near(312.656, told["sensitivity"]![0]!["low"]);
    }

    [Fact]
    public void Quote_tells_what_a_charge_leaves()
    {
        var told = Told(
            "quote",
            """
            { "materials": 118, "labor": [ { "hours": 6.5, "wagePerHour": 22 } ], "overheadPercent": 15,
              "charge": 405.20 }
            """
        );
        Assert.Equal(25.9, Math.Round(told["marginPercent"]!.GetValue<double>(), 1));
        var nothing = Told("quote", "{}");
        Assert.Null(nothing["marginPercent"]);
        Assert.Equal(0, nothing["chargedCents"]!.GetValue<long>());
    }

    /// <summary>10 L in packs of 2.5 L: four at 4.50 are 18.00, and 6.90 of delivery.</summary>
    [Fact]
    public void Buy_tells_packs_delivery_and_what_is_left()
    {
        var told = Told("buy", Buy);
        Assert.Equal("proved", told["status"]!.GetValue<string>());
        Assert.Equal(
            (2490, 2490),
            (told["totalCents"]!.GetValue<int>(), told["boundCents"]!.GetValue<int>())
        );
        var line = told["purchases"]![0]!;
        Assert.Equal(
            ("S", "bark", 2.5, 4, 1800),
            (
                line["supplier"]!.GetValue<string>(),
                line["product"]!.GetValue<string>(),
                line["packLitres"]!.GetValue<double>(),
                line["packs"]!.GetValue<int>(),
                line["cents"]!.GetValue<int>()
            )
        );
        Assert.Equal(690, told["delivery"]![0]!["cents"]!.GetValue<int>());
        Assert.Equal(0.0, told["leftover"]![0]!["litres"]!.GetValue<double>());
    }

    /// <summary>14 days of a place in quarantine, two places on the bench for 15.</summary>
    [Fact]
    public void Schedule_tells_days_and_what_they_cost()
    {
        var told = Told("schedule", Schedule);
        Assert.Equal("proved", told["status"]!.GetValue<string>());
        Assert.Equal((44, 44), (told["objective"]!.GetValue<int>(), told["bound"]!.GetValue<int>()));
        string[] keys = ["id", "quarantineStart", "plant", "growInEnd", "pack", "ship", "arrive"];
        Assert.Equal([7, 1, 15, 29, 29, 29, 30], keys.Select(k => told["orders"]![0]![k]!.GetValue<int>()));
        Assert.Empty(told["blocking"]!.AsArray());
    }

    [Fact]
    public void Trace_answers_in_the_order_asked()
    {
        var answers = Told("trace", Trace)["answers"]!.AsArray();
        Assert.Equal(
            ["KIT-101", "MIX-07"],
            answers[0]!["lots"]!.AsArray().Select(l => l!.GetValue<string>())
        );
        Assert.Equal(
            ["MIX-07", "PEAT-31"],
            answers[1]!["lots"]!.AsArray().Select(l => l!.GetValue<string>())
        );
        Assert.Equal(12.0, answers[2]!["left"]!.GetValue<double>());
        Near(10.0, answers[2]!["shrinkPercent"]);
    }

    /// <summary>
    /// 88 L of mix are 100 L loose: three tubs of 48 L at most. Bark 22.5 kg and fiber 5 kg are 17 kg dry
    /// with
    /// 10.5 kg of water; half water of the whole asks for 17.
    /// </summary>
    [Fact]
    public void Mix_tells_batches()
    {
        var told = Told("mix", Mix);
        Near(100.0, told["looseLiters"]);
        Assert.Equal(3, told["batchCount"]!.GetValue<int>());
        Near(75.0, told["parts"]![0]!["liters"]);
        Near(6.5, told["addWaterLiters"]);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_same_case_gives_the_same_bytes(string command)
    {
        var file = Path.Combine(Cli.Root, "samples", "workshop", $"{command}.json");
        var first = Cli.Run(command, file, "--json");
        Assert.True(first.Code == 0, first.ToString());
        Assert.Equal(Timeless(first.Out), Timeless(Cli.Run(command, file, "--json").Out));
        var text = Cli.Run(command, file);
        Assert.True(text.Code == 0 && text.Error == "", text.ToString());
        Assert.DoesNotContain("NaN", first.Out + text.Out, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(BadInput))]
    public void Bad_input_is_refused_with_its_place(string command, string text, string says)
    {
        using var scratch = new Scratch();
        var file = scratch.Write("case.json", text);
        Assert.Contains(says, Cli.Refuses(command, file).Error, StringComparison.Ordinal);
        var error = Cli.RefusesInJson(command, file)[0]!;
        Assert.Equal(file, error["file"]!.GetValue<string>());
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void No_case_an_empty_file_and_a_list_are_refused(string command)
    {
        using var scratch = new Scratch();
        Cli.Refuses(command);
        Cli.RefusesInJson(command, scratch.At("none.json"));
        Cli.RefusesInJson(command, scratch.Write("empty.json", ""));
        Cli.RefusesInJson(command, scratch.Write("list.json", "[]"));
    }

    private static JsonNode Told(string command, string text)
    {
        using var scratch = new Scratch();
        var ended = Cli.Run(command, scratch.Write("case.json", text), "--json");
        Assert.True(ended.Code == 0 && ended.Error == "", ended.ToString());
        Assert.True(ended.Json["elapsedMs"]!.GetValue<double>() >= 0.0);
        return ended.Json;
    }

    private static string Timeless(string text) =>
        string.Join('\n', text.Split('\n').Where(l => !l.Contains("elapsedMs", StringComparison.Ordinal)));

    private static void Near(double expected, JsonNode? actual) =>
        Assert.Equal(expected, Math.Round(actual!.GetValue<double>(), 4), 3);
}
