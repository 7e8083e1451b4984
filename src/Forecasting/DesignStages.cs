using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Life;
using Litterfall.Forecasting.Light;
using Litterfall.Forecasting.Water;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Hygiene;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Packs;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Forecasting;

/// <summary>
/// The stages of a design: shape, quantities, water and air, light, life. Each is computed when it is first
/// asked for, and once.
/// </summary>
public sealed class DesignStages
{
    private readonly Lazy<Weights> weights;
    private readonly Lazy<ShelfLoad> shelf;
    private readonly Lazy<ImmutableArray<CutPart>> cuts;
    private readonly Lazy<Sealants> sealants;
    private readonly Lazy<ImmutableArray<PackNeed>> packs;
    private readonly Lazy<ImmutableArray<PaneCheck>> panes;
    private readonly Lazy<DoorPanes?> doors;
    private readonly Lazy<ImmutableArray<StockingRow>> stocking;
    private readonly Lazy<FloatCheck?> floats;
    private readonly Lazy<PlantDip?> dip;
    private readonly BentPanes bent;
    private readonly Lazy<BoxClimate?> runs;
    private readonly Lazy<WaterForecast?> forecast;
    private readonly Lazy<LightFigures?> light;
    private readonly Dictionary<Reach, Lazy<ClimateFigures?>> climates;
    private readonly Dictionary<Reach, Lazy<FloorWater>> waters;
    private readonly Dictionary<Reach, Lazy<LifeFigures?>> lives;

    /// <summary>The stages of a design; nothing is computed yet.</summary>
    /// <param name="design">The design.</param>
    /// <param name="earlier">
    /// Stages of an earlier version; those that no change reaches are taken over as they are.
    /// </param>
    /// <param name="cancel">
    /// Ends what is being computed with an <see cref="OperationCanceledException"/>.
    /// </param>
    public DesignStages(
        CheckedDesign design,
        DesignStages? earlier = null,
        CancellationToken cancel = default
    )
    {
        // What was canceled half way holds no numbers to take over.
        earlier = earlier?.Setup.Cancel.IsCancellationRequested == true ? null : earlier;
        Setup = new BoxSetup(design, earlier?.Setup) { Cancel = cancel };
        var known = bent = earlier?.bent ?? new BentPanes();
        weights = new(() => Weights.Of(design, Box, Layers, PaneMasses.Of(design, Box, Cuts)));
        shelf = new(() => ShelfLoad.Of(design, Box, Weights));
        cuts = new(() => CutList.Of(design, Box));
        sealants = new(() => Sealants.Of(design, Box));
        packs = new(() => GoodsCost.Packs(design, Layers));
        panes = new(() =>
            [
                .. GlassCheck.Of(design, Box, Layers, known, WallPlan.LowestPanes(design, Box)),
                .. HeldPanes.Of(design, Box),
                .. PushedDoors.Of(design, Box),
                .. HeldPanes.Shelves(design, Box),
            ]
        );
        doors = new(() => DoorPanes.Of(design, Box));
        stocking = new(() => StockingTable.Of(design, Box));
        floats = new(() => FloatCheck.Of(Layers));
        dip = new(() => PlantDip.Of(design));
        var sameLight = earlier is not null && StageInputs.SameLight(earlier.Design, design);
        var sameAir = earlier is not null && StageInputs.SameAir(earlier.Design, design);
        IsTakenOver = sameLight && sameAir;
        light = sameLight
            ? earlier!.light
            : new(() => LightFigures.Of(design, Box, Layers, Setup.Shares, cancel));
        runs = sameAir ? earlier!.runs : new(() => BoxClimate.From(Setup));
        forecast = sameAir ? earlier!.forecast : new(() => Forecast(Reach.Month));
        climates = sameAir ? earlier!.climates : Each(ClimateOf);
        waters = sameAir ? earlier!.waters : Each(WaterOf);
        lives = Each(LifeOf);
    }

    /// <summary>True where air, water and light are those of the earlier version.</summary>
    public bool IsTakenOver { get; }

    /// <summary>The design made ready to run.</summary>
    public BoxSetup Setup { get; }

    /// <summary>The design.</summary>
    public CheckedDesign Design => Setup.Design;

    /// <summary>True sizes.</summary>
    public BoxGeometry Box => Setup.Box;

    /// <summary>Layers from the base up.</summary>
    public ImmutableArray<FloorLayer> Layers => Setup.Layers;

    /// <summary>Air above them.</summary>
    public AirSpace Headspace => Setup.Headspace;

    /// <summary>Masses.</summary>
    public Weights Weights => weights.Value;

    /// <summary>Load on the shelf.</summary>
    public ShelfLoad Shelf => shelf.Value;

    /// <summary>Parts to cut.</summary>
    public ImmutableArray<CutPart> Cuts => cuts.Value;

    /// <summary>Foam, silicone, cure.</summary>
    public Sealants Sealants => sealants.Value;

    /// <summary>Packs to buy.</summary>
    public ImmutableArray<PackNeed> Packs => packs.Value;

    /// <summary>Panes under load.</summary>
    public ImmutableArray<PaneCheck> Panes => panes.Value;

    /// <summary>Doors as they are cut; null without their kind or thickness.</summary>
    public DoorPanes? Doors => doors.Value;

    /// <summary>What each stocking rule allows of each species.</summary>
    public ImmutableArray<StockingRow> Stocking => stocking.Value;

    /// <summary>Float check; null without aggregate.</summary>
    public FloatCheck? Float => floats.Value;

    /// <summary>Plant dip; null without a label strength.</summary>
    public PlantDip? Dip => dip.Value;

    /// <summary>Light of the box; null without lamps.</summary>
    public LightFigures? Light => light.Value;

    /// <summary>Climate of the box as far as a reach looks.</summary>
    /// <param name="reach">How far.</param>
    public ClimateFigures? Climate(Reach reach) => climates[reach].Value;

    /// <summary>Water of the floor as far as a reach looks.</summary>
    /// <param name="reach">How far.</param>
    public FloorWater Water(Reach reach) => waters[reach].Value;

    /// <summary>Life of the floor as far as a reach looks.</summary>
    /// <param name="reach">How far.</param>
    public LifeFigures? Life(Reach reach) => lives[reach].Value;

    /// <summary>
    /// Computes air, light and bands on all cores; afterwards every number is there at once.
    /// </summary>
    /// <param name="cancel">Cancels between stages.</param>
    /// <exception cref="OperationCanceledException">One of the two tokens was cancelled.</exception>
    public void Prepare(CancellationToken cancel = default)
    {
        _ = Box;
        _ = Layers;
        _ = Setup.Shares;
        using var either = CancellationTokenSource.CreateLinkedTokenSource(Setup.Cancel, cancel);
        try
        {
            Parallel.Invoke(
                new ParallelOptions { CancellationToken = either.Token },
                () => _ = Climate(Reach.Month),
                () => _ = Light,
                () => _ = runs.Value?.Band,
                () => _ = runs.Value?.Seasons,
                () => _ = forecast.Value,
                () => _ = Life(Reach.Whole),
                () => _ = (Panes, Cuts, Packs, Stocking, Weights)
            );
        }
        catch (AggregateException several)
            when (several.Flatten().InnerExceptions.All(one => one is OperationCanceledException))
        {
            // Stages stop at tokens of their own; together they are one cancellation.
            throw new OperationCanceledException("The stages were cancelled.", several, either.Token);
        }
    }

    private static Dictionary<Reach, Lazy<T>> Each<T>(Func<Reach, T> of) =>
        Enum.GetValues<Reach>().ToDictionary(reach => reach, reach => new Lazy<T>(() => of(reach)));

    private ClimateFigures? ClimateOf(Reach reach) =>
        reach == Reach.Shape ? null
        : Design.Design.Headspace is not null ? ClimateFigures.Held(Design, Box)
        : runs.Value is { } computed
            ? ClimateFigures.From(
                reach switch
                {
                    Reach.Month => computed.MonthAlone(),
                    Reach.Whole => computed,
                    _ => computed.WithoutBand(),
                },
                Setup
            )
        : null;

    private FloorWater WaterOf(Reach reach)
    {
        var climate = Climate(reach);
        return FloorWater.From(
            Setup,
            climate,
            reach is Reach.Shape or Reach.AirWithoutBands ? null : forecast.Value,
            reach == Reach.Whole
        );
    }

    private WaterForecast? Forecast(Reach reach) =>
        WaterForecast.From(Setup, WaterBalance.Of(Design, Headspace, Layers, Climate(reach)));

    private LifeFigures? LifeOf(Reach reach) =>
        FloorCourse.Of(new LifeInputs(Design, Box, Layers, Sealants, Water(reach), Climate(reach)));
}
