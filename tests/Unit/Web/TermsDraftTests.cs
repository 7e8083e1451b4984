using Litterfall.App.Files;
using Litterfall.Domain.Trade;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.UnitTests.Web;

/// <summary>
/// Forms of the workshop's page: what is typed becomes a record, or each field says why not.
/// </summary>
public sealed class TermsDraftTests
{
    private static readonly DateOnly Today = new(2026, 9, 3);

    private static TypedText Field(TermsDraft draft, string label) =>
        draft.Groups.SelectMany(g => g.Fields).Single(f => f.Label == label);

    private static TermsDraft Draft() =>
        new(
            new ShopTerms
            {
                Name = "Example",
                RetailMargin = 38,
                TaxPercent = 19,
            }
        );

    [Fact]
    public void Terms_are_read_with_either_decimal_sign()
    {
        var draft = Draft();
        Field(draft, "Wage of an hour").Text = "24,50";
        Field(draft, "Overhead, %").Text = "14.5";
        var terms = draft.Read()!;
        Assert.Equal((24.50m, 14.5m, 38m), (terms.Wage, terms.OverheadPercent, terms.RetailMargin));
    }

    [Theory]
    [InlineData("Wage of an hour", "-3", "'-3' is not taken here. Enter a number from 0 to 10000.")]
    [InlineData("A quote holds, days", "2,5", "'2,5' is not taken here. Enter a number from 1 to 365.")]
    [InlineData("Currency", "euro", "Enter the three letters of a currency, such as EUR.")]
    [InlineData("Name of the workshop", " ", "Enter 1 to 200 characters.")]
    public void A_field_says_what_it_takes(string label, string typed, string fault)
    {
        var draft = Draft();
        Field(draft, label).Text = typed;
        Assert.Null(draft.Read());
        Assert.Equal(fault, Field(draft, label).Fault);
        Assert.Equal(typed, Field(draft, label).Text);
    }

    [Fact]
    public void Margin_and_fee_that_leave_nothing_are_refused()
    {
        // 97 % and 2.9 % of the price with 19 % tax: 97 + 2.9 · 1.19 = 100.45 %.
        var draft = Draft();
        Field(draft, "Margin, retail, %").Text = "97";
        Field(draft, "Payment fee, %").Text = "2.9";
        Assert.Null(draft.Read());
        Assert.Equal(
            "Margin and payment fee come to 100.45 %; nothing is left for the cost.",
            Field(draft, "Margin, retail, %").Fault
        );
    }

    [Fact]
    public void A_pack_without_a_price_or_with_half_a_step_is_refused()
    {
        var catalog = Shop.Embedded();
        var draft = new OfferDraft(null, null) { Supplier = "north" };
        draft.Pack[0].Text = "fine bark";
        draft.Pack[1].Text = "bag of 20 L";
        draft.Pack[2].Text = "20";
        Assert.Null(draft.Read(catalog, [], Today));
        Assert.Equal("Enter the price of one pack.", draft.Pack[3].Fault);
        draft.Pack[3].Text = "9,80";
        draft.Pack[4].Text = "4";
        Assert.Null(draft.Read(catalog, [], Today));
        Assert.StartsWith("A step needs both", draft.Pack[5].Fault, StringComparison.Ordinal);
        draft.Pack[5].Text = "8.90";
        var (offer, good) = draft.Read(catalog, [], Today)!.Value;
        Assert.Equal(("fine-bark", StockUnit.Liters), (good.Key, good.Unit));
        Assert.Equal("pack-fine-bark-20-l", offer.LibraryPack);
        Assert.Equal([new PriceTier(1, 9.80m), new PriceTier(4, 8.90m)], offer.Tiers);
    }

    [Fact]
    public void A_stage_keeps_its_key_when_it_is_renamed()
    {
        var draft = new LaborDraft(new LaborStage("plant", "plant and dress", LaborPer.Plant, 5));
        draft.Name.Text = "plant";
        draft.Minutes.Text = "6,5";
        var stage = Assert.Single(LaborDraft.Read([draft])!);
        Assert.Equal(("plant", "plant", 6.5), (stage.Key, stage.Name, stage.Minutes));
        Assert.Null(LaborDraft.Read([draft, new LaborDraft(null)]));
    }
}
