using System.Text.Json;
using Litterfall.Dispatch.Evidence;
using Litterfall.Dispatch.Packing;
using Litterfall.Domain.Dispatch;
using Litterfall.UnitTests.Dispatch.Packing;
using static Litterfall.UnitTests.Dispatch.Packing.PackingExamples;

namespace Litterfall.UnitTests.Dispatch.Evidence;

/// <summary>What a cleared parcel freezes can be read by people and by any reader of JSON.</summary>
public sealed class ClearedTextTests
{
    internal static ClearedFacts Facts()
    {
        var parcel = Parcel(new LiveContent("dendrobates-auratus", 2) { From = "T-03" });
        var day = Day();
        return new()
        {
            Parcel = parcel,
            Day = day,
            Week = new()
            {
                Strictest = "dendrobates-auratus",
                Class = "B",
                BandLowCelsius = 17,
                BandHighCelsius = 26,
                Days = [day],
                NextDay = Tuesday,
            },
            Forecasts =
            [
                new()
                {
                    Node = RouteNode.Hub,
                    Place = "Middle Hub",
                    TakenAt = EvidenceExamples.Noon,
                    From = "typed",
                    Hours = [new(EvidenceExamples.Noon, 8.25), new(EvidenceExamples.Noon.AddHours(1), 9)],
                },
            ],
            Plan = PackingPlanner.Plan(Case(Middle, parcel, new PackUse("wax", 1, 1))),
            Carrier = Carrier,
            Rules = Rules,
            Papers = AnimalPapers.List(parcel, Catalog, Rules, Tuesday),
            Program = "1.2.3",
        };
    }

    private static DayVerdict Day() =>
        new()
        {
            Day = Tuesday,
            Arrives = Tuesday.AddDays(1),
            Verdict = ShipVerdict.ShipWithPacks,
            Rules = [new(ShipRule.ClassBands, ShipVerdict.ShipWithPacks, "cool at the hub: pack needed")],
            Reasons =
            [
                new ShipReason
                {
                    Slug = "hub-cool",
                    Rule = ShipRule.ClassBands,
                    Verdict = ShipVerdict.ShipWithPacks,
                    Text = "The hub has 8 °C.",
                    Cure = "A phase-change pack.",
                    Measured = 8,
                    Limit = 13,
                },
            ],
            Nodes = [new(RouteNode.Hub, "Middle Hub", 8.25, 11)],
            Choice = new()
            {
                Carton = "middle",
                Packs = [new("wax", 1, 1)],
                HandOverHour = 17,
                OutShare = 0.004,
                Journeys = 500,
                Seed = 7,
                Hours = [new(0, 20, 21, 22, 12, 0), new(1, 20, 21, 22, 11, 0)],
            },
        };

    [Fact]
    public void It_is_JSON_with_verdict_forecast_and_packing_list()
    {
        using var json = JsonDocument.Parse(ClearedText.Write(Facts()));
        var root = json.RootElement;
        Assert.Equal("litterfall cleared 1", root.GetProperty("form").GetString());
        Assert.Equal("Litterfall 1.2.3", root.GetProperty("program").GetString());
        Assert.Equal("ShipWithPacks", root.GetProperty("verdict").GetProperty("verdict").GetString());
        var reason = root.GetProperty("verdict").GetProperty("reasons")[0];
        Assert.Equal(8, reason.GetProperty("measured").GetDouble());
        Assert.Equal(13, reason.GetProperty("limit").GetDouble());
        Assert.Equal(
            "2026-11-24T12:00:00Z 8.25 °C",
            root.GetProperty("forecasts")[0].GetProperty("hours")[0].GetString()
        );
        Assert.Contains(root.GetProperty("packing").GetProperty("list").EnumerateArray(), l =>
            l.GetString()!.Contains("phase-change pack", StringComparison.Ordinal)
        );
        Assert.Equal(7, root.GetProperty("verdict").GetProperty("choice").GetProperty("seed").GetInt32());
    }

    [Fact]
    public void Its_first_lines_are_plain_sentences()
    {
        var text = ClearedText.Write(Facts());
        Assert.Contains(
            "Parcel 12 for Pernille Voss: it may go with the named packs.",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("The hub has 8 °C. Cure: A phase-change pack.", text, StringComparison.Ordinal);
        Assert.Contains("Of 500 computed journeys 0.4 % left that band", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", text, StringComparison.Ordinal);
        Assert.Equal(text, ClearedText.Write(Facts()));
    }

    [Fact]
    public void Years_later_the_chain_shows_it_unchanged()
    {
        var entry = EvidenceChain.Next(
            EvidenceExamples.Draft(EvidenceKind.Cleared, "Cleared.", ClearedText.Write(Facts())),
            null,
            null
        );
        Assert.Empty(EvidenceChain.Check([entry]));
        Assert.Contains("8.25 °C", entry.Canonical, StringComparison.Ordinal);
        Assert.True(EvidenceExport.Check(EvidenceExport.Write([entry], _ => null)).IsWhole);
    }
}
