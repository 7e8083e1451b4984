using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>An insect raised or bought as food, and the culture it comes from.</summary>
public sealed record FeederEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Feeder;

    /// <summary>What care sheets call many of it, such as "small flies".</summary>
    public CatalogText? Called => Text("called");

    /// <summary>Dry mass of one, kg.</summary>
    public Figure? DryMass => Number("dryMass");

    /// <summary>Calcium of its dry matter.</summary>
    public Figure? Calcium => Number("calcium");

    /// <summary>Phosphorus of its dry matter.</summary>
    public Figure? Phosphorus => Number("phosphorus");

    /// <summary>Mass of the lightest animal that takes it, kg.</summary>
    public Figure? LightestEater => Number("eaterFrom");

    /// <summary>Temperature below which nothing develops, K.</summary>
    public Figure? DevelopmentZero => Number("T0");

    /// <summary>Warmth from egg to adult, K·s.</summary>
    public Figure? WarmthToAdults => Number("warmthToAdults");

    /// <summary>Warmth of the shelf its cultures stand on, K.</summary>
    public Figure? Shelf => Number("shelf");

    /// <summary>Time to lay eggs before and to harden after, s.</summary>
    public Figure? LayAndHarden => Number("layAndHarden");

    /// <summary>Adults of one culture over its life.</summary>
    public Figure? PerCulture => Number("perCulture");

    /// <summary>Share of cultures that fail.</summary>
    public Figure? FailingShare => Number("failing");
}
