using Litterfall.Dispatch.Packing;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Dispatch;
using Litterfall.Domain.Dispatch;
using Litterfall.UnitTests.Dispatch.Evidence;
using Litterfall.UnitTests.Dispatch.Packing;
using Litterfall.UnitTests.Workshop.Orders;

namespace Litterfall.UnitTests.Documents.Shop.Dispatch;

/// <summary>Papers of a parcel on both sheets, and the last door before a label.</summary>
public sealed class ShipPapersTests
{
    private static readonly DateOnly Tuesday = PackingExamples.Tuesday;

    private static ShopSheet Sheet(string size) =>
        new(size == "A4" ? PaperSize.A4 : PaperSize.Letter, "Example Workshop", Tuesday, "1.2.3")
        {
            IsUs = size == "Letter",
        };

    internal static ClearedParcel Cleared(Carton? carton = null, params LiveContent[] contents)
    {
        var facts = ClearedTextTests.Facts();
        var parcel = contents.Length > 0 ? PackingExamples.Parcel(contents) : facts.Parcel;
        var plan = PackingPlanner.Plan(
            PackingExamples.Case(
                carton ?? PackingExamples.Middle,
                parcel,
                new PackUse("wax", 1, 1),
                new PackUse("heat", 1, 0)
            )
        );
        Assert.True(plan.Fits, plan.Refusal);
        return new()
        {
            Parcel = parcel,
            Day = facts.Day,
            Plan = plan,
            Carrier = facts.Carrier,
            Fingerprint = EvidenceExamples.Chain()[0].Sha256,
            Papers = AnimalPapers.List(parcel, PackingExamples.Catalog, PackingExamples.Rules, Tuesday),
            Message = CustomerMessage.Leaves(
                new()
                {
                    Parcel = parcel,
                    Rules = PackingExamples.Rules,
                    Carrier = facts.Carrier,
                    Cups = plan.Cups,
                    BandLowCelsius = 17,
                    BandHighCelsius = 26,
                    Fingerprint = EvidenceExamples.Chain()[0].Sha256,
                },
                facts.Day
            ),
            Address = ["Flat 3", "Millrace Row"],
        };
    }

    private static ClearedParcel Mixed() =>
        Cleared(
            PackingExamples.Big,
            new("epipedobates-anthonyi", 5) { From = "T-07" },
            new("phyllobates-vittatus", 2) { From = "T-11" },
            new("folsomia-candida", 3),
            new("drosophila-hydei", 2),
            new("ludisia-discolor", 2)
        );

    private static IReadOnlyList<PaperFile> Papers(string size, ClearedParcel cleared) =>
        ShipPapers.Write(Sheet(size), cleared, OrderExamples.Terms, [], AnimalPapers.Caution);

    private static string Text(PaperFile paper) =>
        string.Join(' ', paper.Pages.SelectMany(p => p.Marks.OfType<TextMark>().Select(m => m.Text)));

    [Theory]
    [InlineData("A4", false)]
    [InlineData("Letter", false)]
    [InlineData("A4", true)]
    [InlineData("Letter", true)]
    public void Each_paper_stands_on_one_side_without_a_fault(string size, bool isMixed)
    {
        var papers = Papers(size, isMixed ? Mixed() : Cleared());
        Assert.Equal(6, papers.Count);
        var folder = Environment.GetEnvironmentVariable("LITTERFALL_LOOK");
        foreach (var paper in papers)
        {
            if (folder is not null)
            {
                File.WriteAllBytes(Path.Combine(folder, $"{size}-{isMixed}-{paper.Name}"), paper.Bytes);
            }

            if (paper.Name == "message.txt")
            {
                continue;
            }

            var page = Assert.Single(paper.Pages);
            Assert.Empty(PageFaults.Of(page));
            Assert.NotEmpty(paper.Bytes);
        }
    }

    /// <summary>Many species and a long name: more sides where they must be, but nothing cut or covered.
    /// </summary>
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void Many_species_are_still_read(string size)
    {
        var crate = PackingExamples.Big with { LengthMeters = 0.9, WidthMeters = 0.6, HeightMeters = 0.5 };
        string[] keys =
        [
            "dendrobates-tinctorius",
            "dendrobates-auratus",
            "dendrobates-leucomelas",
            "ranitomeya-imitator",
            "phyllobates-terribilis",
            "oophaga-pumilio",
            "mantella-aurantiaca",
            "lepidodactylus-lugubris",
            "folsomia-candida",
            "porcellio-scaber",
            "drosophila-hydei",
            "begonia-rex",
        ];
        var cleared = Cleared(crate, [.. keys.Select((k, i) => new LiveContent(k, i + 1) { From = "T-07" })]);
        cleared = cleared with
        {
            Parcel = cleared.Parcel with
            {
                Recipient = "Society of friends of small frogs of Upper Sallow and the villages around it",
            },
        };
        foreach (var paper in Papers(size, cleared).Where(p => p.Name != "message.txt"))
        {
            foreach (var page in paper.Pages)
            {
                Assert.Empty(PageFaults.Of(page));
            }
        }
    }

    [Fact]
    public void The_packing_card_says_verdict_odds_fingerprint_cups_and_cautions()
    {
        var text = Text(Papers("A4", Mixed())[0]);
        foreach (
            var said in new[]
            {
                "Ship with the packs below",
                "Of 500 computed journeys 0.4 % leave the band",
                Fingerprint.Short(EvidenceExamples.Chain()[0].Sha256),
                "240 mL cup",
                "2.4 g",
                "Salmonella",
                "H: heat pack",
            }
        )
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Each_cup_has_a_label_of_its_own()
    {
        var text = Text(Papers("A4", Mixed()).Single(p => p.Name == "cup-labels.pdf"));
        for (var i = 1; i <= 14; i++)
        {
            Assert.Contains(
                FormattableString.Invariant($"Parcel 12, number {i} of 14"),
                text,
                StringComparison.Ordinal
            );
        }

        Assert.Contains("CITES Appendix II", text, StringComparison.Ordinal);
    }

    public static TheoryData<string> Refusals =>
        [
            "friday",
            "saturday",
            "sunday",
            "hold",
            "never",
            "other-day",
            "planned",
            "depot",
            "unfrozen",
            "late",
        ];

    [Theory]
    [MemberData(nameof(Refusals))]
    public void No_label_leaves_the_printer_where_it_must_not(string why)
    {
        var good = Cleared();
        Assert.Equal("", good.LabelRefusal);
        var bad = why switch
        {
            "friday" => On(good, Tuesday.AddDays(3)),
            "saturday" => On(good, Tuesday.AddDays(4)),
            "sunday" => On(good, Tuesday.AddDays(5)),
            "hold" => good with { Day = good.Day with { Verdict = ShipVerdict.Hold } },
            "never" => good with { Day = good.Day with { Verdict = ShipVerdict.Never } },
            "other-day" => good with { Parcel = good.Parcel with { ShipDay = Tuesday.AddDays(1) } },
            "planned" => good with { Parcel = good.Parcel with { State = ParcelState.Planned } },
            "depot" => good with { Day = good.Day with { Verdict = ShipVerdict.DepotOnly } },
            "unfrozen" => good with { Fingerprint = "" },
            _ => good with { Day = good.Day with { Arrives = Tuesday.AddDays(4) } },
        };
        Assert.NotEqual("", bad.LabelRefusal);
        Assert.Null(CupLabels.Write(Sheet("A4"), bad));
        Assert.Null(CartonLabel.Write(Sheet("A4"), bad));
        Assert.DoesNotContain(Papers("A4", bad), p => p.Name.Contains("label", StringComparison.Ordinal));
    }

    [Fact]
    public void At_the_depot_the_label_says_so()
    {
        var good = Cleared();
        var depot = good with { Parcel = good.Parcel with { IsDepotPickUp = true } };
        var text = Text(CartonLabel.Write(Sheet("A4"), depot)!);
        Assert.Contains("PICK-UP", text, StringComparison.Ordinal);
        Assert.Contains("THIS WAY UP", text, StringComparison.Ordinal);
        Assert.DoesNotContain("HARMLESS", text, StringComparison.Ordinal);
    }

    private static ClearedParcel On(ClearedParcel cleared, DateOnly day) =>
        cleared with
        {
            Parcel = cleared.Parcel with { ShipDay = day },
            Day = cleared.Day with { Day = day, Arrives = day.AddDays(3) },
        };
}
