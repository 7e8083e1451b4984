using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Air;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Water;

/// <summary>
/// Water of a day: misted in, carried out by the air, gained by the floor; and what the reservoir takes.
/// </summary>
public sealed record WaterBalance
{
    /// <summary>The air it rests on.</summary>
    public required BoxAir Air { get; init; }

    /// <summary>Misted a day; null when nothing says so.</summary>
    public Figure? Misted { get; init; }

    /// <summary>Carried out by the air a day.</summary>
    public required Figure Vented { get; init; }

    /// <summary>The same with the least and the most air changes; null where they are held.</summary>
    public (Figure Low, Figure High)? VentedBand { get; init; }

    /// <summary>Water of basins; null without.</summary>
    public BasinFigures? Basins { get; init; }

    /// <summary>
    /// Misted, and filled up in basins, less vented; negative when the floor dries.
    /// </summary>
    public Figure? Gain { get; init; }

    /// <summary>Its least and most; null where nothing is misted or the air is held.</summary>
    public (Figure Low, Figure High)? GainBand { get; init; }

    /// <summary>Water per centimeter of level; null without a drainage layer.</summary>
    public Figure? PerLevel { get; init; }

    /// <summary>Water from level 0 to the highest allowed level.</summary>
    public Figure? Usable { get; init; }

    /// <summary>True where an outlet at a height keeps the level: nobody drains.</summary>
    public bool DrainsByItself { get; init; }

    /// <summary>What runs out of it; null without, or where the floor gains no water.</summary>
    public OutletWater? Outlet { get; init; }

    /// <summary>
    /// Time from level 0 to the highest allowed level with the soil at drained equilibrium; null when the
    /// level never gets there, or water leaves by an outlet.
    /// </summary>
    public Figure? DrainEvery { get; init; }

    /// <summary>Its band over the voids of the aggregate and the air changes, where they have one.</summary>
    public (Figure Low, Figure? High)? DrainBand { get; init; }

    /// <summary>The balance of a design.</summary>
    public static WaterBalance Of(
        CheckedDesign design,
        AirSpace headspace,
        ImmutableArray<FloorLayer> layers,
        ClimateFigures? climate = null
    ) => WithLayers(design, Aired(design, headspace, climate), layers);

    private static WaterBalance Aired(CheckedDesign design, AirSpace headspace, ClimateFigures? climate)
    {
        var air = climate is { Vented: not null } ? BoxAir.Of(design, climate) : BoxAir.Of(design);
        var misted = MistingDay.Water(design);
        var vented = climate?.Vented?.Value ?? VentedOf(air, air.Changes, headspace);
        var balance = new WaterBalance
        {
            Air = air,
            Misted = misted,
            Vented = vented.As("water vented a day", Unit.Milliliter),
            VentedBand =
                climate?.Vented is { Low: { } least, High: { } most } ? (least, most)
                : air.ChangesBand is { } band
                    ? (
                        VentedOf(air, band.Low, headspace).As("least water vented a day", Unit.Milliliter),
                        VentedOf(air, band.High, headspace).As("most water vented a day", Unit.Milliliter)
                    )
                : null,
        };
        balance = balance with { Basins = climate?.Basins ?? BasinShare.Of(design, balance) };
        return balance with
        {
            Gain = balance.Gained(balance.Lost, "water gained by the floor a day"),
            GainBand =
                balance.LostBand is { } lost
                && balance.Gained(lost.High, "least water gained by the floor a day") is { } slow
                && balance.Gained(lost.Low, "most water gained by the floor a day") is { } fast
                    ? (slow, fast)
                    : null,
        };
    }

    /// <summary>Vented, less what is filled up in basins.</summary>
    private Figure Lost => Basins?.Lost.Value ?? Vented;

    private (Figure Low, Figure High)? LostBand =>
        Basins is null ? VentedBand
        : Basins.Lost is { Low: { } low, High: { } high } ? (low, high)
        : null;

    private Figure? Gained(Figure lost, string name) =>
        Misted is null ? null : (Misted - lost).As(name, Unit.Milliliter);

    private static WaterBalance WithLayers(
        CheckedDesign design,
        WaterBalance balance,
        ImmutableArray<FloorLayer> layers
    )
    {
        return layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is { Depth.Si: > 0 } drainage
            ? WithReservoir(design, balance, drainage)
            : balance;
    }

    /// <summary>
    /// True when more water comes in than the air takes, and there is somewhere for it to go.
    /// </summary>
    public bool Gains => Gain is { Si: > 0 };

    private static WaterBalance WithReservoir(CheckedDesign design, WaterBalance balance, FloorLayer drainage)
    {
        var voids = Weights.Voids(drainage);
        var perLevel = (drainage.Finished / drainage.Depth * voids).As(
            "water per centimeter of level",
            Unit.LiterPerCentimeter
        );
        var depth = DrainMark.Of(drainage);
        var usable = (perLevel * depth).As("usable water of the reservoir", Unit.Liter);
        if (OutletWater.Is(design))
        {
            return balance with
            {
                PerLevel = perLevel,
                Usable = usable,
                DrainsByItself = true,
                Outlet = OutletWater.Of(design, balance.Gain, balance.GainBand),
            };
        }

        return balance with
        {
            PerLevel = perLevel,
            Usable = usable,
            DrainEvery = Interval(balance, usable, balance.Gain, "time between drains"),
            DrainBand = Band(balance, drainage, usable),
        };
    }

    private static Figure? Interval(WaterBalance balance, Figure usable, Figure? gain, string name)
    {
        if (gain is not { Si: > 0 } || usable.Si <= 0 || !balance.Gains)
        {
            return null;
        }

        var interval = (usable / gain * WaterPolicy.Day).As(name, Unit.Day);
        return interval.Si <= WaterPolicy.LongestInterval.Si ? interval : null;
    }

    private static (Figure Low, Figure? High)? Band(WaterBalance balance, FloorLayer drainage, Figure usable)
    {
        var voids = (drainage.Material as AggregateEntry)?.InterparticleVoidsBand;
        if (voids is null && balance.GainBand is null || balance.Gain is not { } gain)
        {
            return null;
        }

        Figure Volume(Figure share, string name) =>
            (drainage.Finished / drainage.Depth * share * DrainMark.Of(drainage)).As(name, Unit.Liter);
        var least = voids is { } v ? Volume(v.Low, "least usable water of the reservoir") : usable;
        var most = voids is { } w ? Volume(w.High, "most usable water of the reservoir") : usable;
        var fast = balance.GainBand?.High ?? gain;
        var slow = balance.GainBand?.Low ?? gain;
        var low = Interval(balance, least, fast, "shortest time between drains");
        var high = Interval(balance, most, slow, "longest time between drains");
        return low is null ? null : (low, high);
    }

    /// <summary>
    /// Air changes × volume × (vapor in the box − vapor in the room) in a day. The air that comes in is as
    /// wet as the room, the air that leaves as wet as the box.
    /// </summary>
    private static Figure VentedOf(BoxAir air, Figure changes, AirSpace headspace)
    {
        var box = Vapor("vapor in the air of the box", air.Air, air.Humidity);
        var room = Vapor("vapor in the air of the room", air.RoomAir, air.RoomHumidity);
        return changes
            * WaterPolicy.Day
            * headspace.Volume
            * Figure.NotNegative(box - room)
            / SizingPolicy.Water;
    }

    private const double FreezingKelvin = 273.15;
    private const double BoilingKelvin = 373.15;

    private static Figure Vapor(string name, Figure air, Figure humidity) =>
        Figure
            .Computed(
                $"{humidity.Name} × saturation pressure at {air.Name} ÷ (461.524 J/(kg K) × {air.Name})",
                HylandWexler1983.VaporDensity(
                    Math.Clamp(air.Si, FreezingKelvin, BoilingKelvin),
                    Math.Clamp(humidity.Si, 0, 1)
                ),
                Unit.KilogramPerCubicMeter.Dimension,
                air,
                humidity
            )
            .As(
                name,
                Unit.KilogramPerCubicMeter,
                new Citation(
                    "ashrae-fundamentals-2017",
                    "recalled: chapter 1, equation 6 (Hyland and Wexler 1983), ideal gas",
                    Provenance.Recalled
                )
            );
}
