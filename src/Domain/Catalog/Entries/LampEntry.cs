using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A kind of lamp, with usual figures where its maker gives none.</summary>
public sealed record LampEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Lamp;

    /// <summary>Power drawn, W.</summary>
    public Figure? Power => Number("power");

    /// <summary>Usual luminous flux, lm.</summary>
    public Figure? UsualFlux => Number("fluxTypical");

    /// <summary>Luminous flux over the power drawn, lm/W.</summary>
    public Figure? Efficacy => Number("efficacy");

    /// <summary>How far the flux of one lamp may lie from the usual.</summary>
    public Figure? FluxTolerance => Number("fluxTolerance");

    /// <summary>Photons of 400 to 700 nm over the luminous flux, mol/s/lm.</summary>
    public Figure? PhotonsPerFlux => Number("ppfPerKilolumen");

    /// <summary>Luminous flux over the radiation of 400 to 700 nm, lm/W.</summary>
    public Figure? RadiationEfficacy => Number("radiationEfficacy");

    /// <summary>Share of the power that leaves as light.</summary>
    public Figure? VisibleShare => Number("visibleShare");

    /// <summary>Share of the power that leaves as heat rays.</summary>
    public Figure? InfraredShare => Number("infraredShare");

    /// <summary>Share of the power that warms the air at the lamp.</summary>
    public Figure? HeatShare => Number("heatShare");

    /// <summary>Share of the light that goes down.</summary>
    public Figure? DownShare => Number("downShare");

    /// <summary>rectangle, disc, line or spot.</summary>
    public CatalogText? Shape => Text("shape");

    /// <summary>Width of what shines, m.</summary>
    public Figure? Width => Number("width");

    /// <summary>Length of what shines, m.</summary>
    public Figure? Length => Number("length");

    /// <summary>Diameter of what shines, m.</summary>
    public Figure? Diameter => Number("diameter");

    /// <summary>Hours of light until 70 % of the flux are left, s.</summary>
    public Figure? LifeToSeventyPercent => Number("lifeTo70Percent");

    /// <summary>Share of the flux of the bare lamp that leaves its housing.</summary>
    public Figure? OutputRatio => Number("outputRatio");

    /// <summary>Share of the power lost in the ballast.</summary>
    public Figure? BallastShare => Number("ballastShare");

    /// <summary>What ultraviolet it gives; none for a lamp without.</summary>
    public CatalogText? Ultraviolet => Text("ultraviolet");

    /// <summary>Share of the flux left at mid life.</summary>
    public Figure? Maintenance => Number("maintenance");
}
