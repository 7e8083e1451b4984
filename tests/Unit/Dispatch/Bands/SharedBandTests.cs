using Litterfall.Dispatch.Bands;
using Litterfall.Domain.Dispatch;
using Litterfall.UnitTests.Dispatch.Verdicts;

namespace Litterfall.UnitTests.Dispatch.Bands;

/// <summary>What all that lives in one parcel bears together.</summary>
public sealed class SharedBandTests
{
    private static LiveGood Good(string key) => LiveGood.Find(Parcels.Catalog, new(key, 1));

    /// <summary>Poison frogs keep 17 to 26, white springtails 10 to 24: together 17 to 24.</summary>
    [Fact]
    public void The_strictest_of_each_side_counts()
    {
        var band = SharedBand.From([Good("dendrobates-tinctorius"), Good("folsomia-candida")])!;
        Assert.Equal((17.0, 24.0), (band.Limits.KeepLow, band.Limits.KeepHigh));
        Assert.Equal((13.0, 26.0), (band.Limits.HoldBelow, band.Limits.HoldAbove));
        Assert.Equal((3.0, 30.0), (band.Limits.StopBelow!.Value, band.Limits.StopAbove));
        Assert.Equal("folsomia-candida", band.Strictest.Content.Key);
    }

    [Fact]
    public void Where_no_temperature_suits_all_they_travel_apart()
    {
        var cold = Good("folsomia-candida");
        var band = SharedBand.From([
            Good("ranoidea-caerulea"),
            cold with
            {
                Band = cold.Band! with { KeepHigh = 17.5 },
            },
        ])!;
        Assert.True(band.IsEmpty);
        Assert.Equal("ranoidea-caerulea", band.ColdSide.Content.Key);
        Assert.Equal("folsomia-candida", band.WarmSide.Content.Key);
    }

    [Fact]
    public void A_species_without_a_class_is_held_and_says_what_to_enter()
    {
        var day = Parcels.OnMonday(Parcels.Week("nobody-knows-it", 18, 22));
        Assert.Equal(ShipVerdict.Hold, day.Verdict);
        var reason = Assert.Single(day.Reasons, r => r.Slug == "no-band");
        Assert.Contains("class of transport", reason.Cure, StringComparison.Ordinal);
        Assert.Null(day.Choice);
    }

    [Fact]
    public void An_own_band_counts_only_where_it_is_stricter()
    {
        var task = Parcels.Week("dendrobates-tinctorius", 18, 26.5);
        var strict = Parcels.OnMonday(task.With(r => r with { Bands = [new("B", 14, 26)] }));
        Assert.Contains(strict.Reasons, r => r is { Slug: "own-band-hold", Limit: 26 });
        var loose = Parcels.OnMonday(
            Parcels.Week("dendrobates-tinctorius", 18, 33.5).With(r => r with { Bands = [new("B", 2, 40)] })
        );
        Assert.Equal(ShipVerdict.Never, loose.Verdict);
        Assert.Contains(loose.Reasons, r => r is { Slug: "own-band-looser", Verdict: ShipVerdict.Ship });
    }
}
