using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;
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
    private readonly Lazy<(FloorSetup? Floor, ImmutableHashSet<string> Keys)> floor;
    private readonly Lazy<LampShares.Traced> shares;

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
        floor = new(() =>
        {
            var with = ModelCoefficients.Of(design);
            return (FloorSetup.From(design, Layers, Tables, with.Water), with.UsedKeys);
        });
        shares =
            earlier is not null && StageInputs.SameShares(earlier, design)
                ? earlier.shares
                : new(() => LampShares.Of(design, Box, Layers, Cancel));
    }

    /// <summary>The design.</summary>
    public CheckedDesign Design { get; }

    /// <summary>Ends its runs between two of their steps.</summary>
    public CancellationToken Cancel { get; init; }

    /// <summary>True sizes.</summary>
    public BoxGeometry Box => box.Value;

    /// <summary>Layers from the base up.</summary>
    public ImmutableArray<FloorLayer> Layers => layers.Value;

    /// <summary>Air above them.</summary>
    public AirSpace Headspace => headspace.Value;

    /// <summary>The floor; null where a material has no curve, or there is no soil.</summary>
    public FloorSetup? Floor => floor.Value.Floor;

    /// <summary>The floor for a run, which notes the coefficients that it was made with.</summary>
    /// <param name="with">Coefficients of the run.</param>
    internal FloorSetup? FloorWith(ModelCoefficients with)
    {
        with.Note(floor.Value.Keys);
        return floor.Value.Floor;
    }

    /// <summary>Where the light of each lamp ends, with what it was traced with.</summary>
    internal LampShares.Traced Shares => shares.Value;

    /// <summary>True once the light of the lamps is traced.</summary>
    internal bool HasShares => shares.IsValueCreated;

    /// <summary>The same for a run, which notes the coefficients.</summary>
    /// <param name="with">Coefficients of the run.</param>
    internal LampShares.Lit[] SharesWith(ModelCoefficients with)
    {
        with.Note(Shares.Keys);
        return Shares.Lamps;
    }

    /// <summary>Tables of curves.</summary>
    internal CurveTables Tables { get; }
}
