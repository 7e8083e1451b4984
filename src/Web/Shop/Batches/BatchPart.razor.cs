using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Batches;
using Litterfall.Workshop.Mixing;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Batches;

/// <summary>One recipe: what orders need of it, how it is mixed, and what came out.</summary>
public sealed partial class BatchPart
{
    private BatchPlan plan = null!;
    private string more = "";
    private string came = "";
    private string weight = "";
    private string water = "";
    private string sampleWet = "";
    private string sampleDry = "";
    private string? told;
    private string? lot;
    private bool isGood;

    /// <summary>Batches as they stand.</summary>
    [Parameter, EditorRequired]
    public required BatchView View { get; set; }

    /// <summary>The recipe.</summary>
    [Parameter, EditorRequired]
    public required RecipeEntry Recipe { get; set; }

    /// <summary>Units of the reader.</summary>
    [Parameter]
    public UnitPreferences Preferences { get; set; } = UnitPreferences.Metric;

    /// <summary>A mix was written.</summary>
    [Parameter]
    public EventCallback OnMade { get; set; }

    private string Unit => StockWords.UnitWord(StockUnit.Liters, Preferences);

    private string MassUnit => StockWords.UnitWord(StockUnit.Kilograms, Preferences);

    private double MoreLiters => StockWords.Read(more, StockUnit.Liters, Preferences) ?? 0;

    private string CardsLink =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"/shop/batches/{Recipe.Key}/cards.pdf?more={MoreLiters:0.###}"
        );

    private string ReadyWords
    {
        get
        {
            var lots = string.Join(
                ", ",
                plan.Ready.Lots.Select(l => $"{Liters(l.Amount)} of {l.Lot.Lot.Id}")
            );
            return (lots, plan.MakeLiters) switch
            {
                ("", 0) => "Nothing is needed and nothing is made for stock.",
                ("", _) => $"None is ready; {Liters(plan.MakeLiters)} are to be mixed.",
                (_, 0) => $"Stock covers it: {lots}.",
                _ => $"Ready in stock: {lots}. {Liters(plan.MakeLiters)} are to be mixed.",
            };
        }
    }

    private string YieldWords
    {
        get
        {
            var yield = Recipe.MixingYield;
            if (yield is null)
            {
                return "No yield is known: 88 % is taken, from common practice.";
            }

            var share = $"Mixing yields {Percent(yield.Si)} of the loose parts";
            var band = Recipe.MixingYieldBand is { } b
                ? $", {Percent(b.Low.Si)[..^2]}–{Percent(b.High.Si)} in the next batch"
                : "";
            return yield.Origin.Provenance == Provenance.Measured
                ? $"{share}{band}; {yield.Origin.Place}."
                : $"{share}{band}, from common practice: your batches teach it.";
        }
    }

    /// <summary>What batches taught and designs do not use yet; null for nothing.</summary>
    private string? Taught =>
        View.Learned(Recipe.Key).Yield is { } yield
        && Recipe.MixingYield?.Origin.Place != View.Told(Recipe.Key)
            ? $"{Percent(yield.Mean)}, {View.Told(Recipe.Key)}"
            : null;

    /// <inheritdoc/>
    protected override void OnParametersSet() => plan = View.Plan(Recipe, Math.Max(0, MoreLiters));

    private void More(string? text)
    {
        more = text ?? "";
        plan = View.Plan(Recipe, Math.Max(0, MoreLiters));
    }

    private async Task LearnAsync()
    {
        (told, isGood, lot) = (await Desk.LearnAsync(Recipe.Key), true, null);
        await OnMade.InvokeAsync();
    }

    private async Task MakeAsync()
    {
        (lot, isGood) = (null, false);
        if (StockWords.Read(came, StockUnit.Liters, Preferences) is not (> 0 and var liters))
        {
            told = "Measure the mix that came out, loose, and type it here.";
            return;
        }

        var (dry, fault) = Dry(sampleWet, sampleDry);
        if (fault is not null)
        {
            told = fault;
            return;
        }

        (lot, told) = await Desk.MakeAsync(
            View,
            plan,
            new(
                liters,
                StockWords.Read(weight, StockUnit.Kilograms, Preferences),
                dry,
                StockWords.Read(water, StockUnit.Liters, Preferences) ?? 0
            )
        );
        isGood = lot is not null;
        if (isGood)
        {
            (came, weight, water, sampleWet, sampleDry, more) = ("", "", "", "", "", "");
            await OnMade.InvokeAsync();
        }
    }

    /// <summary>Mass of a dried sample over its wet mass; null where none was dried.</summary>
    /// <param name="wet">Before drying, as typed.</param>
    /// <param name="dry">After drying, as typed.</param>
    internal static (double? Share, string? Fault) Dry(string wet, string dry)
    {
        if (wet.Trim().Length == 0 && dry.Trim().Length == 0)
        {
            return (null, null);
        }

        return
            StockWords.Plain(wet) is > 0 and var before
            && StockWords.Plain(dry) is > 0 and var after
            && after <= before
            ? (after / before, null)
            : (null, "Give the weights of the sample before and after drying; drying makes it lighter.");
    }

    private string TubWords(MixPlan mix)
    {
        var one = mix.Batches[0];
        var each = mix.BatchCount == 1 ? "1 tub" : $"{mix.BatchCount} tubs, each";
        var mass = one.Kg is { } kg
            ? $", about {StockWords.Amount(kg, StockUnit.Kilograms, Preferences)}"
            : "";
        return $"{each} {Liters(one.LooseLiters)} of parts for {Liters(one.MixedLiters)} of mix{mass}";
    }

    private string WaterWords(MixPlan mix)
    {
        var one = mix.Batches[0];
        var wet = plan.WetPercent is { } percent ? $" for {percent:0} % of water by volume" : "";
        var miss = mix.Case.WetMiss;
        var learned =
            miss.Count == 0
                ? ""
                : $" Past batches came out {StockWords.Number(Math.Abs(miss.Mean))} points "
                    + (miss.Mean >= 0 ? "wetter" : "drier")
                    + " than planned; that is counted.";
        return one.WaterLiters is { } add
                ? $"Water: {Liters(add)} into each tub{wet}, beside what the parts bring. Squeeze a handful: "
                    + $"a few drops.{learned}"
            : mix.Water.WantedKg is { } wanted
                ? $"Water: {Liters(wanted)} in all{wet}, less what the parts bring, which nobody weighed."
            : "Water: by hand, until a handful squeezed hard gives a few drops.";
    }

    private string Jugs(MixShare share) =>
        View.Terms.JugLiters > 0 ? StockWords.Number(share.JugLiters / View.Terms.JugLiters) : "";

    private string Liters(double liters) => StockWords.Amount(liters, StockUnit.Liters, Preferences);

    private static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private string Id(string field) => $"{field}-{Recipe.Key}";
}
