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

namespace Litterfall.Web.Pages;

/// <summary>Tests that replace recalled values by measured ones.</summary>
public sealed partial class Measure
{
    private IReadOnlyList<ListedDesign> designs = [];
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
        designs = await Store.DesignsAsync();
        cupDesign = dipDesign = designs.Count > 0 ? designs[0].Id : Guid.Empty;
    }

    private IEnumerable<RecipeEntry> Recipes =>
        Library.Catalog.Of<RecipeEntry>().OrderBy(e => e.Name, StringComparer.Ordinal);

    private async Task BucketAsync()
    {
        if (
            Number(looseIn) is not { } loose
            || Number(mixedOut) is not { } mixed
            || WorkshopTests.MixingYield(loose, mixed) is not { } yield
            || Library.Catalog.Find<RecipeEntry>(mix) is not { } entry
        )
        {
            bucketTold = "Give liters before and after; what comes out is not more than what went in.";
            return;
        }

        var told = await SaveAsync(
            entry,
            (GroundEntry.MixingYieldKey, entry.MixingYield?.Unit),
            100 * yield,
            $"bucket test: {loose} L of parts gave {mixed} L"
        );
        if (told is null && Number(settled) is { } down && WorkshopTests.Settling(mixed, down) is { } sinks)
        {
            told = await SaveAsync(
                Library.Catalog.Find<RecipeEntry>(mix)!,
                (GroundEntry.SettlingKey, entry.Settling?.Unit),
                100 * sinks,
                $"bucket test: {mixed} L knocked down to {down} L"
            );
        }

        bucketTold = told
            ?? string.Create(CultureInfo.InvariantCulture, $"Kept: {entry.Name} yields {100 * yield:0} %.");
    }

    private async Task CupAsync()
    {
        if (
            Number(caught) is not { } water
            || Number(seconds) is not { } time
            || WorkshopTests.NozzleFlow(water, time) is not { } flow
        )
        {
            cupTold = "Give milliliters and seconds, both above zero.";
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

        var each = string.Create(CultureInfo.InvariantCulture, $"{flow:0} mL/min");
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
        cupTold = $"Kept: each nozzle of {design.Name} gives {each}.";
    }

    private async Task DipAsync()
    {
        if (
            Number(poured) is not { } liters
            || Number(rise) is not { } millimeters
            || await Store.DesignAsync(dipDesign) is not { } design
            || DesignReader.Read(design.Name, design.Text).Value is not { } document
            || Library.Check(document).Value is not { } ready
            || DesignNumbers.Shape(ready).Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage)
                is not { Material: AggregateEntry aggregate } layer
        )
        {
            dipTold = "Give liters and millimeters, and a design with a drainage layer of grains.";
            return;
        }

        if (WorkshopTests.DrainablePorosity(liters, millimeters, layer.Area.Si) is not { } share)
        {
            dipTold = "That would be more water than the layer has room for: read the level again.";
            return;
        }

        dipTold = await SaveAsync(
            aggregate,
            (AggregateEntry.InterparticleVoidsKey, aggregate.InterparticleVoids?.Unit),
            100 * share,
            $"dip test: {liters} L raised the level by {millimeters} mm"
        )
            ?? string.Create(
                CultureInfo.InvariantCulture,
                $"Kept: {aggregate.Name} takes water in {100 * share:0} % of its volume."
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

    private static double? Number(string text) =>
        double.TryParse(
            text.Replace(',', '.').Trim(),
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out var value
        )
            ? value
            : null;
}
