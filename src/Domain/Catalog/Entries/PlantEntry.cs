using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A plant, fern or live moss.</summary>
public sealed record PlantEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Plant;

    /// <summary>Where it roots: terrestrial, epiphyte, climber, hemiepiphyte or aquatic.</summary>
    public CatalogText? RootPlace => Text("rootPlace");

    /// <summary>How it grows.</summary>
    public CatalogText? Habit => Text("habit");

    /// <summary>How it is drawn: tank, star, fern, vine or what else it looks like.</summary>
    public CatalogText? Form => Text("form");

    /// <summary>Shape of its leaves.</summary>
    public CatalogText? Leaf => Text("leaf");

    /// <summary>Color of its leaves, then of their marks or its flower.</summary>
    public CatalogText? Color => Text("color");

    /// <summary>Light of a day below which it slowly dies, mol/m².</summary>
    public Figure? SurvivalDailyLight => Number("dliSurvival");

    /// <summary>Least light of a day for good growth, mol/m².</summary>
    public Figure? LeastDailyLight => Number("dliLow");

    /// <summary>Light of a day from which more adds color rather than growth, mol/m².</summary>
    public Figure? LargestDailyLight => Number("dliHigh");

    /// <summary>Light of a day from which it grows compact and colored, mol/m².</summary>
    public Figure? LeastColorLight => Number("dliColorLow");

    /// <summary>Most light of a day it bears, mol/m².</summary>
    public Figure? LargestColorLight => Number("dliColorHigh");

    /// <summary>Least light while the lamps burn, mol/(m²·s).</summary>
    public Figure? LeastLight => Number("ppfdLow");

    /// <summary>Largest light while the lamps burn, mol/(m²·s).</summary>
    public Figure? LargestLight => Number("ppfdHigh");

    /// <summary>Whether its roots stand wet soil: no, short or yes.</summary>
    public CatalogText? WetFeet => Text("wetFeet");

    /// <summary>How wet it wants its roots.</summary>
    public CatalogText? Water => Text("water");

    /// <summary>Smallest grown, m.</summary>
    public Figure? SmallestGrown => Number("sizeLow");

    /// <summary>Largest grown, m.</summary>
    public Figure? LargestGrown => Number("sizeHigh");

    /// <summary>What it does to people and animals.</summary>
    public CatalogText? Toxicity => Text("toxicity");

    /// <summary>Whether its leaves stand a dip in bleach: hardy or soft.</summary>
    public CatalogText? BleachTolerance => Text("bleachTolerance");

    /// <summary>Its appendix of the convention on trade in endangered species: I, II, III or none.</summary>
    public CatalogText? Cites => Text("cites");

    /// <summary>How fast it grows.</summary>
    public CatalogText? Growth => Text("growth");
}
