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

    private const string Cut = """
        { "stock": [ { "id": "sheet", "lengthMm": 1000, "widthMm": 500, "count": null, "price": 18.5 } ],
          "parts": [ { "id": "pane", "lengthMm": 332, "widthMm": 500, "count": 3, "mayTurn": false,
                       "value": null } ],
          "kerfMm": 2, "trimMm": 0, "straightCutsOnly": true, "stages": null, "goal": "least-stock",
          "seconds": 10 }
        """;

    private const string Mix = """
        { "recipe": [ { "name": "bark", "parts": 3, "kgPerLiter": 0.3, "wetPercent": 40 },
                      { "name": "fiber", "parts": 1, "kgPerLiter": 0.2, "wetPercent": 30 } ],
          "needLiters": 88, "shrinkPercent": 12, "tubLiters": 60, "fillPercent": 80, "targetWetPercent": 50 }
        """;

    /// <summary>
    /// Plants on day 1, a Tuesday; planted on 15, grown in on 29, a Tuesday; there a day later.
    /// </summary>
    private const string Schedule = """
        { "name": "s", "day0": "Monday", "workdays": "Mon-Fri", "shipDays": "Mon-Wed", "objective": "x",
          "optimum": 1, "proven": true, "bound": 1, "onePlan": [[1, 2, 3, 0]],
          "horizonDays": 60, "holidays": [ 8 ], "transitWorkdays": 1, "staffHoursPerDay": 6,
          "benchPlaces": 2, "quarantinePlaces": 2,
          "orders": [ { "id": 7, "release": 1, "due": 30, "quarantineDays": 14, "growInDays": 14,
                        "plantHours": 4, "packHours": 1, "quarantinePlacesUsed": 1, "benchPlacesUsed": 2,
                        "weight": 2 } ] }
        """;

    public static TheoryData<string> Commands =>
        ["quote", "buy", "cut", "schedule", "trace", "mix", "cultures"];

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
                "cut",
                """
                    { "stock": [ { "id": "s", "lengthMm": 1000, "widthMm": 500 } ],
                      "parts": [ { "id": "pane", "lengthMm": 1300, "widthMm": 250, "count": 1 } ] }
                    """,
                "larger than any stock"
            },
            {
                "cut",
                """
                    { "stock": [ { "id": "s", "lengthMm": 1000, "widthMm": 500, "count": 1 } ],
                      "parts": [ { "id": "pane", "lengthMm": 500, "widthMm": 250, "count": 5 } ] }
                    """,
                "does not suffice"
            },
            {
                "cut",
                """
                    { "stock": [ { "id": "s", "lengthMm": 1000, "widthMm": 500 } ],
                      "parts": [ { "id": "pane", "lengthMm": 500, "widthMm": 250 } ] }
                    """,
                "how many are wanted"
            },
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
                "cultures",
                """{ "species": "folsomia-candid", "from": "2026-06-19", "shelfC": 21 }""",
                "no crew animal folsomia-candid"
            },
            {
                "cultures",
                """
                    { "species": "folsomia-candida", "from": "19 June", "shelfC": 21,
                      "mothers": [], "orders": [] }
                    """,
                "19 June is no day"
            },
            {
                "cultures",
                """
                    { "species": "folsomia-candida", "from": "2026-06-19", "shelfC": 21,
                      "mothers": [ { "animals": 500, "liters": 0.5 } ],
                      "orders": [ { "date": "2026-06-01", "cups": 1, "animals": 100, "liters": 0.2 } ] }
                    """,
                "before the first day"
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

    /// <summary>Own worked example: 3 × 332 + 2 × 2 = 1000, so that one sheet gives three panes.</summary>
    [Fact]
    public void Cut_tells_where_each_part_lies_and_each_cut_goes()
    {
        var told = Told("cut", Cut);
        Assert.Equal("proved", told["status"]!.GetValue<string>());
        Assert.Equal((18.5, 18.5), (told["value"]!.GetValue<double>(), told["bound"]!.GetValue<double>()));
        var sheet = told["sheets"]!.AsArray().Single()!;
        Assert.Equal(
            [0.0, 334.0, 668.0],
            sheet["placements"]!.AsArray().Select(p => p!["xMm"]!.GetValue<double>()).Order()
        );
        Assert.Equal(
            [332.0, 666.0],
            sheet["cuts"]!.AsArray().Select(c => c!["atMm"]!.GetValue<double>()).Order()
        );
        Assert.Empty(sheet["offcuts"]!.AsArray());
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

    /// <summary>
    /// Twelve cups on 14 Aug from three full mothers at 21 °C: 12 ÷ 0.85 are 15 started, three days of rest.
    /// 97 ÷ 12.4 + 257 ÷ 12.4 are 8 + 21 days from egg to laying. Four days ahead nothing can be ready from
    /// one small mother: the cause is named, and what would do.
    /// </summary>
    [Fact]
    public void Cultures_tells_when_to_split_or_why_not()
    {
        const string shelf = """
            { "species": "folsomia-candida", "from": "2026-06-19", "shelfC": 21,
            """;
        var told = Told(
            "cultures",
            shelf
                + """
                "mothers": [ { "count": 3, "animals": 2500, "liters": 0.5 } ],
                "orders": [ { "date": "2026-08-14", "cups": 12, "animals": 250, "liters": 0.24 } ] }
                """
        );
        Assert.Equal(29, told["eggToLayingDays"]!.GetValue<double>());
        var plan = told["plans"]![0]!;
        Assert.True(plan["possible"]!.GetValue<bool>());
        Assert.Equal(15, plan["started"]!.GetValue<int>());
        var split = DateOnly.Parse(
            plan["steps"]![0]!["date"]!.GetValue<string>(),
            System.Globalization.CultureInfo.InvariantCulture
        );
        Assert.InRange(split, new DateOnly(2026, 7, 30), new DateOnly(2026, 8, 11));
        var late = Told(
            "cultures",
            shelf
                + """
                "mothers": [ { "animals": 100, "liters": 0.5 } ],
                "orders": [ { "date": "2026-06-23", "cups": 12, "animals": 250, "liters": 0.24 } ] }
                """
        )["plans"]![0]!;
        Assert.False(late["possible"]!.GetValue<bool>());
        Assert.Equal("too-few-mothers", late["cause"]!.GetValue<string>());
        Assert.Equal(12, late["cupsToBuy"]!.GetValue<int>());
        Assert.StartsWith("2026-0", late["earliest"]!.GetValue<string>(), StringComparison.Ordinal);
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
