using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Physics.Soil;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Water;

/// <summary>One draining by hand.</summary>
/// <param name="Day">Days from planting.</param>
/// <param name="Liters">What it takes out.</param>
public sealed record DrainFigure(Figure Day, Figure Liters);

/// <summary>The water of the floor: the balance of a day, and what the flow engine forecasts.</summary>
public sealed record FloorWater
{
    private const int Month = 30;

    /// <summary>The balance of a day.</summary>
    public required WaterBalance Balance { get; init; }

    /// <summary>The forecast; null where it cannot be made.</summary>
    public WaterForecast? Forecast { get; init; }

    /// <summary>Misted by hand a day; null without.</summary>
    public Figure? ByHand { get; init; }

    /// <summary>Height to which water climbs between the grains over the level.</summary>
    public Figure? CapillaryRise { get; init; }

    /// <summary>Day of the first drain from planting, wetting-up included.</summary>
    public Figure? FirstDrain { get; init; }

    /// <summary>Its earliest over what nobody measured.</summary>
    public Figure? FirstDrainLow { get; init; }

    /// <summary>Its latest; null when it may not come.</summary>
    public Figure? FirstDrainHigh { get; init; }

    /// <summary>Day the water reaches the barrier if nobody drains.</summary>
    public Figure? BarrierReached { get; init; }

    /// <summary>Drainings by hand in the first year.</summary>
    public ImmutableArray<DrainFigure> Drains { get; init; } = [];

    /// <summary>Level after 30 days.</summary>
    public Figure? LevelAfterMonth { get; init; }

    /// <summary>Least air at root depth.</summary>
    public Figure? LeastAir { get; init; }

    /// <summary>Days with less air there than roots need.</summary>
    public Figure? AirlessDays { get; init; }

    /// <summary>Largest suction where the crew lives.</summary>
    public Figure? MostSuction { get; init; }

    /// <summary>What the ledger of the forecast misses.</summary>
    public Figure? LedgerError { get; init; }

    /// <summary>The water of a design.</summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="climate">Climate of the box; null where it is not known.</param>
    /// <param name="forecast">Forecast of its floor; null where it is not made.</param>
    /// <param name="withBand">With the band of the forecast.</param>
    public static FloorWater From(
        BoxSetup setup,
        ClimateFigures? climate,
        WaterForecast? forecast,
        bool withBand
    )
    {
        var balance = WaterBalance.Of(setup.Design, setup.Headspace, setup.Layers, climate);
        var water = new FloorWater
        {
            Balance = balance,
            ByHand = MistingDay.ByHand(setup.Design),
            CapillaryRise = Rise(setup.Design, setup.Layers),
        };
        return forecast is null
            ? water
            : water.With(
                forecast,
                withBand ? forecast.FirstDrainBand(setup, balance) : null,
                RangeWords(ModelCoefficients.Of(setup.Design).Water)
            );
    }

    private FloorWater With(WaterForecast forecast, (double? Low, double? High)? band, string range)
    {
        var inputs = Inputs(forecast);
        Figure Days(string name, double days, string how) =>
            SimulatedFigure.From(name, Unit.Day.ToSiValue(days), Unit.Day, how, inputs);
        var water = this with
        {
            Forecast = forecast,
            FirstDrain = forecast.FirstDrainDay is { } f
                ? Days("day of the first drain", f, $"first day the level stands {Mark} below the barrier")
                : null,
            FirstDrainLow = band?.Low is { } low
                ? Days("earliest day of the first drain", low, range + ", the earliest")
                : null,
            FirstDrainHigh = band?.High is { } high
                ? Days("latest day of the first drain", high, range + ", the latest")
                : null,
            BarrierReached = forecast.BarrierDay is { } b
                ? Days("day the water reaches the barrier", b, "first day the level stands at the barrier")
                : null,
            Drains =
            [
                .. forecast.Drains.Select(d => new DrainFigure(
                    Days("day of a drain", d.Day, $"the level stands {Mark} below the barrier again"),
                    SimulatedFigure.From(
                        "water taken by a drain",
                        Unit.Liter.ToSiValue(d.Liters),
                        Unit.Liter,
                        "drawn off down to level 0 within five minutes",
                        inputs
                    )
                )),
            ],
        };
        return water.Measured(forecast, inputs);
    }

    /// <summary>What is read off the days of the forecast.</summary>
    private FloorWater Measured(WaterForecast forecast, ImmutableArray<Figure> inputs)
    {
        Figure Days(string name, double days, string how) =>
            SimulatedFigure.From(name, Unit.Day.ToSiValue(days), Unit.Day, how, inputs);
        var days = forecast.Days;
        var least = days.Min(d => d.LeastAir);
        var driest = days.Min(d => d.CrewHeadMeters);
        return this with
        {
            LevelAfterMonth =
                Balance.PerLevel is null || days.Length <= Month
                    ? null
                    : SimulatedFigure.From(
                        FormattableString.Invariant($"level after {Month} days"),
                        days[Month].LevelMeters,
                        Unit.Millimeter,
                        FormattableString.Invariant($"head at the base on day {Month}"),
                        inputs
                    ),
            LeastAir = SimulatedFigure.From(
                "least air at root depth",
                least,
                Unit.Percent,
                "θs − θ(h) at root depth, least of all days and zones",
                inputs
            ),
            AirlessDays = Days(
                "days without air at root depth",
                days.Count(d => d.LeastAir < WaterPolicy.LeastAir.Si),
                $"days with less than {WaterPolicy.LeastAir.Name}"
            ),
            MostSuction = SimulatedFigure.From(
                "largest suction where the crew lives",
                Math.Max(0, -driest) * WaterPolicy.PascalsPerMeter,
                Unit.Kilopascal,
                FormattableString.Invariant(
                    $"−h × {WaterPolicy.PascalsPerMeter / 1000:0.#####} kPa/m at crew depth, largest of all "
                ) + "days and zones",
                inputs
            ),

            // That the sums add up rests on no coefficient, so it is trusted as far as the arithmetic.
            LedgerError = SimulatedFigure.From(
                "miss of the water ledger",
                Unit.Gram.ToSiValue(forecast.LedgerErrorGrams),
                Unit.Gram,
                "misted − vapor − drained − run off − stored, over the whole forecast",
                []
            ),
        };
    }

    /// <summary>"1 cm".</summary>
    private static string Mark => FormattableString.Invariant($"{DrainMark.BelowBarrier.Value:0.##} cm");

    private static string RangeWords(FloorWaterCoefficients with) =>
        $"first drain over {with.Conductivity.Figure.Name} {Span(with.Conductivity)}, "
        + $"{with.Alpha.Figure.Name} {Span(with.Alpha)}, "
        + $"{with.Squeeze.Figure.Name} {Span(with.Squeeze)} points";

    private static string Span(Coefficient one) =>
        FormattableString.Invariant($"{one.Range!.Value.Low:0.##} to {one.Range!.Value.High:0.##}");

    private ImmutableArray<Figure> Inputs(WaterForecast forecast)
    {
        Figure?[] from = [Balance.Misted, Balance.Vented, Balance.PerLevel];
        return [.. from.OfType<Figure>(), .. forecast.Floor.Curves, .. forecast.Coefficients];
    }

    private static Figure? Rise(CheckedDesign design, ImmutableArray<FloorLayer> layers)
    {
        var pore = ModelCoefficients.Of(design).Water.PorePerGrain;
        if (
            layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage)?.Material is not AggregateEntry aggregate
            || aggregate.SmallestGrain is not { Si: > 0 } small
            || aggregate.LargestGrain is not { } large
        )
        {
            return null;
        }

        var grain = ((small + large) / Figure.Number(2)).As("mean grain", Unit.Millimeter);
        return Figure
            .Computed(
                FormattableString.Invariant(
                    $"{Reservoir.RiseSquareMeters * 1e4:0.###} cm² ÷ ({pore.Figure.Name} × mean grain)"
                ),
                Reservoir.CapillaryRiseMeters(grain.Si, pore.Use()),
                Unit.Millimeter.Dimension,
                grain,
                pore.Figure
            )
            .As("capillary rise over the level", Unit.Millimeter);
    }
}
