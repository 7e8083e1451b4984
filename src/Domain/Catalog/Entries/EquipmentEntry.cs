using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Pumps, tubes, plugs, clips, cups: what is bought beside panes, packs and living things.</summary>
public sealed record EquipmentEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Equipment;

    /// <summary>What it stands for, such as "mist-pump"; lists pick among those of one part.</summary>
    public CatalogText? Part => Text("part");

    /// <summary>What it is for, in words of the shop.</summary>
    public CatalogText? Use => Text("use");

    /// <summary>"by length" for what is cut from a coil or rod; anything else is counted.</summary>
    public CatalogText? Sold => Text("sold");

    /// <summary>Water or air it moves, m³/s: of a pump at its pressure, of a fan in the open.</summary>
    public Figure? Flow => Number("flow");

    /// <summary>Pressure at which it gives its flow, Pa.</summary>
    public Figure? Pressure => Number("pressure");

    /// <summary>Power it draws, W.</summary>
    public Figure? Power => Number("power");

    /// <summary>Power it may switch or feed, W.</summary>
    public Figure? Load => Number("load");

    /// <summary>Current at which it cuts the power, A.</summary>
    public Figure? Trip => Number("trip");

    /// <summary>Plugs it takes.</summary>
    public Figure? Places => Number("places");

    /// <summary>Inner diameter of a tube, m.</summary>
    public Figure? Inner => Number("inner");

    /// <summary>Outer diameter of a tube, m.</summary>
    public Figure? Outer => Number("outer");

    /// <summary>Hole it needs, m.</summary>
    public Figure? Hole => Number("hole");

    /// <summary>Length of one piece, m.</summary>
    public Figure? Length => Number("length");

    /// <summary>Width of one piece, m.</summary>
    public Figure? Width => Number("width");

    /// <summary>Volume it holds, m³.</summary>
    public Figure? Volume => Number("volume");
}
