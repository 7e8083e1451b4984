using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Measuring;
using Litterfall.Quantities.Sizing;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Measuring;

namespace Litterfall.Web.Pages;

/// <summary>Tests that replace recalled values by measured ones.</summary>
public sealed partial class Measure
{
    private IReadOnlyList<ListedDesign> designs = [];
    private UnitPreferences preferences = UnitPreferences.Metric;
    private string mix = "standard-rainforest";
    private string looseIn = "";
    private string mixedOut = "";
    private string settled = "";
    private string? bucketTold;
    private Guid cupDesign;
    private string caught = "";
    private string seconds = "";
    private string? cupTold;
    private Guid dipDesign;
    private string poured = "";
    private string rise = "";
    private string? dipTold;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        await Library.LoadAsync();
        preferences = await SavedPreferences.LoadAsync();
        designs = await Store.DesignsAsync();
        cupDesign = dipDesign = designs.Count > 0 ? designs[0].Id : Guid.Empty;
    }

    private Unit Volume => preferences.For(Unit.Liter);

    private Unit Small => preferences.For(Unit.Milliliter);

    /// <summary>A rise of the level is a matter of millimeters, or of parts of an inch.</summary>
    private Unit Rise =>
        preferences.Chosen("length") == Unit.InchUnit.Symbol ? Unit.InchUnit : Unit.Millimeter;

    private IEnumerable<RecipeEntry> Recipes =>
        Library.Catalog.Of<RecipeEntry>().OrderBy(e => e.Name, StringComparer.Ordinal);

    private async Task BucketAsync()
    {
        if (
            Amount<Volume>(looseIn, Volume) is not { } loose
            || Amount<Volume>(mixedOut, Volume) is not { } mixed
            || WorkshopTests.MixingYield(loose, mixed) is not { } yield
            || Library.Catalog.Find<RecipeEntry>(mix) is not { } entry
        )
        {
            bucketTold = "Both amounts are needed; what comes out is not more than what went in.";
            return;
        }

        var told = await SaveAsync(
            entry,
            (GroundEntry.MixingYieldKey, entry.MixingYield?.Unit),
            100 * yield,
            $"bucket test: {Told(loose, Volume)} of parts gave {Told(mixed, Volume)}"
        );
        if (
            told is null
            && Amount<Volume>(settled, Volume) is { } down
            && WorkshopTests.Settling(mixed, down) is { } sinks
        )
        {
            told = await SaveAsync(
                Library.Catalog.Find<RecipeEntry>(mix)!,
                (GroundEntry.SettlingKey, entry.Settling?.Unit),
                100 * sinks,
                $"bucket test: {Told(mixed, Volume)} settled to {Told(down, Volume)}"
            );
        }

        bucketTold = told
            ?? string.Create(CultureInfo.InvariantCulture, $"Saved: {entry.Name} yields {100 * yield:0} %.");
    }

    private async Task CupAsync()
    {
        if (
            Amount<Volume>(caught, Small) is not { } water
            || Number(seconds) is not { } time
            || WorkshopTests.NozzleFlow(Unit.Milliliter.FromSi(water), time) is not { } flow
        )
        {
            cupTold = "The amount of water and the seconds are needed, both above zero.";
            return;
        }

        if (
            await Store.DesignAsync(cupDesign) is not { } design
            || DesignReader.Read(design.Name, design.Text).Value is not { } document
            || document.Design.Misting is null
        )
        {
            cupTold = "That design has no misting system.";
            return;
        }

        var each =
            Small == Unit.Milliliter
                ? string.Create(CultureInfo.InvariantCulture, $"{flow:0} mL/min")
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Small.FromSi(Unit.Milliliter.ToSiValue(flow)):0.##} fl oz/min"
                );
        var edit = DesignEdits.Set(document, "misting.each", each);
        if (edit.Value is not { } changed || !edit.IsGood)
        {
            cupTold = $"{edit.Faults[0].Message}.";
            return;
        }

        await Store.SaveAsync(
            design.Id,
            design.Version,
            (design.Name, changed.Text, $"nozzle measured with a cup: {each}")
        );
        cupTold = $"Saved: each nozzle of {design.Name} gives {each}.";
    }

    private async Task DipAsync()
    {
        if (
            Amount<Volume>(poured, Volume) is not { } water
            || Amount<Length>(rise, Rise) is not { } meters
            || await Store.DesignAsync(dipDesign) is not { } design
            || DesignReader.Read(design.Name, design.Text).Value is not { } document
            || Library.Check(document).Value is not { } ready
            || DesignNumbers.Shape(ready).Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage)
                is not { Material: AggregateEntry aggregate } layer
        )
        {
            dipTold =
                "The water, the rise of the level and a design with a drainage layer of grains are needed.";
            return;
        }

        if (
            WorkshopTests.DrainablePorosity(
                Unit.Liter.FromSi(water),
                Unit.Millimeter.FromSi(meters),
                layer.Area.Si
            )
            is not { } share
        )
        {
            dipTold = "That would be more water than the layer has room for: read the level again.";
            return;
        }

        dipTold = await SaveAsync(
            aggregate,
            (AggregateEntry.InterparticleVoidsKey, aggregate.InterparticleVoids?.Unit),
            100 * share,
            $"dip test: {Told(water, Volume)} raised the level by {Told(meters, Rise)}"
        )
            ?? string.Create(
                CultureInfo.InvariantCulture,
                $"Saved: {aggregate.Name} takes water in {100 * share:0} % of its volume."
            );
    }

    /// <summary>A measured value in the unit the library has it in; null when it is kept.</summary>
    private async Task<string?> SaveAsync(
        CatalogEntry entry,
        (string Name, Unit? Unit) value,
        double percent,
        string place
    )
    {
        if (value.Unit is not { } unit)
        {
            return $"{entry.Name} has no {value.Name} in the library.";
        }

        var number = unit.Symbol == "%" ? percent : percent / 100;
        return await OwnEntry.AddAsync(
            Library,
            OwnEntry.Json(entry, (value.Name, Math.Round(number, 4), place)),
            place
        );
    }

    private static string Told(double si, Unit unit) =>
        UnitPreferences.Digits(unit.FromSi(si)) + UnitPreferences.Symbol(unit);

    private static string Word(Unit unit) => UnitPreferences.Symbol(unit).Trim();

    /// <summary>What was typed, in SI; in the unit of the reader where no other is typed.</summary>
    private static double? Amount<T>(string text, Unit unit)
        where T : struct, IQuantity<T> =>
        text.Trim().Length > 0
        && QuantityText.TryParse<T>(TypedReading.Whole(text, unit.Symbol), out var read, out _)
            ? read.Si
            : null;

    private static double? Number(string text) =>
        double.TryParse(
            text.Replace(',', '.').Trim(),
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out var value
        ) && double.IsFinite(value)
            ? value
            : null;
}
