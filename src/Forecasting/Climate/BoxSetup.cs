using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Floor;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// A design made ready to run: sizes, layers, air, floor and where the light of its lamps ends, each made
/// once for all runs of it.
/// </summary>
public sealed class BoxSetup
{
    private readonly Lazy<BoxGeometry> box;
    private readonly Lazy<ImmutableArray<FloorLayer>> layers;
    private readonly Lazy<AirSpace> headspace;
    private readonly Lazy<FloorSetup?> floor;
    private readonly Lazy<LampShares.Lit[]> shares;

    /// <summary>The set-up of a design; nothing is computed yet.</summary>
    /// <param name="design">The design.</param>
    /// <param name="earlier">
    /// Set-up of an earlier version: its tables of curves are used on, its light where no change reaches
    /// it.
    /// </param>
    public BoxSetup(CheckedDesign design, BoxSetup? earlier = null)
    {
        Design = design;
        Tables = earlier?.Tables ?? new CurveTables();
        box = new(() => BoxGeometry.Of(design));
        layers = new(() => FloorLayers.Of(design, Box));
        headspace = new(() => AirSpace.Of(design, Box, Layers));
        floor = new(() => FloorSetup.From(design, Layers, Tables));
        shares =
            earlier is not null && StageInputs.SameLight(earlier.Design, design)
                ? earlier.shares
                : new(() => LampShares.Of(design, Box, Layers));
    }

    /// <summary>The design.</summary>
    public CheckedDesign Design { get; }

    /// <summary>True sizes.</summary>
    public BoxGeometry Box => box.Value;

    /// <summary>Layers from the base up.</summary>
    public ImmutableArray<FloorLayer> Layers => layers.Value;

    /// <summary>Air above them.</summary>
    public AirSpace Headspace => headspace.Value;

    /// <summary>The floor; null where a material has no curve, there is no soil or no space.</summary>
    public FloorSetup? Floor => floor.Value;

    /// <summary>Where the light of each lamp ends.</summary>
    internal LampShares.Lit[] Shares => shares.Value;

    /// <summary>Tables of curves.</summary>
    internal CurveTables Tables { get; }
}
