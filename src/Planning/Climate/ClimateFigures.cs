using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Physics;
using Litterfall.Physics.Air;
using Litterfall.Planning.Building;
using Litterfall.Planning.Sizing;
using Litterfall.Planning.Water;

namespace Litterfall.Planning.Climate;

/// <summary>A simulated number with the least and the most it may be; null bands where it has none.</summary>
public sealed record Banded(Figure Value, Figure? Low, Figure? High);

/// <summary>The climate of a box as figures that name what they rest on.</summary>
public sealed record ClimateFigures
{
    private static readonly Citation Engine = new(
        "own-derivation",
        "balance of heat and vapor of the headspace, coupled to the floor",
        Provenance.Recomputed
    );

    /// <summary>Least temperature of the air.</summary>
    public required Banded AirMin { get; init; }

    /// <summary>Mean temperature.</summary>
    public required Banded AirMean { get; init; }

    /// <summary>Highest temperature.</summary>
    public required Banded AirMax { get; init; }

    /// <summary>Least relative humidity.</summary>
    public required Banded HumidityMin { get; init; }

    /// <summary>Mean relative humidity.</summary>
    public required Banded HumidityMean { get; init; }

    /// <summary>Highest relative humidity.</summary>
    public required Banded HumidityMax { get; init; }

    /// <summary>Mean air changes.</summary>
    public required Banded AirChanges { get; init; }

    /// <summary>Vented a day; null where the water balance computes it.</summary>
    public Banded? Vented { get; init; }

    /// <summary>Evaporated a day.</summary>
    public Figure? Evaporated { get; init; }

    /// <summary>Largest vapor pressure deficit.</summary>
    public required Figure DeficitMax { get; init; }

    /// <summary>Smallest distance of a pane to the dew point.</summary>
    public required Figure DewMargin { get; init; }

    /// <summary>Hours of dew a day on each pane.</summary>
    public required ImmutableArray<(string Pane, Figure Hours)> Fog { get; init; }

    /// <summary>Hours a day with a film on each pane, dew or mist.</summary>
    public ImmutableArray<(string Pane, Figure Hours)> Wet { get; init; } = [];

    /// <summary>Hours a day with wet leaves; null without leaves.</summary>
    public Figure? LeafWet { get; init; }

    /// <summary>Humidity of the box below which the coldest pane clears; held air only.</summary>
    public Figure? ClearsBelowHumidity { get; init; }

    /// <summary>Room above which it clears; held air only.</summary>
    public Figure? ClearsAboveRoom { get; init; }

    /// <summary>Inner face of the coldest pane; held air only.</summary>
    public Figure? PaneInside { get; init; }

    /// <summary>Dew point of the air; held air only.</summary>
    public Figure? DewPoint { get; init; }

    /// <summary>Miss of the water ledger; null where the air is held.</summary>
    public Figure? LedgerError { get; init; }

    /// <summary>What was computed; null where the air is held.</summary>
    public BoxClimate? Computed { get; init; }

    /// <summary>The climate of a design; null where nothing can be computed.</summary>
    public static ClimateFigures? Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        Sizing.Headspace headspace
    ) =>
        design.Design.Headspace is not null ? Held(design, box)
        : BoxClimate.Of(design, box, layers) is { } climate ? From(climate, Inputs(design, headspace))
        : null;

    private static ImmutableArray<Figure> Inputs(CheckedDesign design, Sizing.Headspace headspace)
    {
        var air = BoxAir.Of(design);
        var lamps = Enumerable
            .Range(0, design.Design.Lamps.Count)
            .Select(i =>
                design.Design.Lamps[i].Watts is { } watts
                    ? design.Figure(
                        FormattableString.Invariant($"lamps[{i}].watts"),
                        FormattableString.Invariant($"power of lamp {i + 1}"),
                        watts,
                        Units.Watt
                    )
                    : null
            );
        Figure?[] all = [air.RoomAir, air.RoomHumidity, headspace.Volume, MistingDay.Water(design), .. lamps];
        return [.. all.OfType<Figure>()];
    }

    private static ClimateFigures From(BoxClimate climate, ImmutableArray<Figure> inputs)
    {
        Figure One(string name, double si, Unit unit, string how) =>
            Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, Engine);
        Banded Of(string name, Unit unit, Func<ClimateDays, double> of, string how)
        {
            var (tight, loose) = (of(climate.Band.Tight), of(climate.Band.Loose));
            var value = of(climate.Days);
            return new Banded(
                One(name, value, unit, how),
                One($"least {name}", Math.Min(value, Math.Min(tight, loose)), unit, how + Range),
                One($"most {name}", Math.Max(value, Math.Max(tight, loose)), unit, how + Range)
            );
        }

        var days = climate.Days;
        ImmutableArray<(string, Figure)> Panes(ImmutableArray<(string Pane, double Hours)> of, string what) =>
            [
                .. of.Select(p =>
                    (
                        p.Pane,
                        One(
                            $"{what} on the {p.Pane} a day",
                            Units.Hour.ToSiValue(p.Hours),
                            Units.Hour,
                            $"hours with 1 g/m² or more, days 8 to 30"
                        )
                    )
                ),
            ];
        const double zero = Constants.ZeroCelsiusKelvin;
        return new ClimateFigures
        {
            AirMin = Of("lowest air temperature", Units.Celsius, d => d.Celsius.Least + zero, Settled),
            AirMean = Of("mean air temperature", Units.Celsius, d => d.Celsius.Mean + zero, Settled),
            AirMax = Of("highest air temperature", Units.Celsius, d => d.Celsius.Most + zero, Settled),
            HumidityMin = Of("lowest humidity", Units.Percent, d => d.Humidity.Least, Settled),
            HumidityMean = Of("mean humidity", Units.Percent, d => d.Humidity.Mean, Settled),
            HumidityMax = Of("highest humidity", Units.Percent, d => d.Humidity.Most, Settled),
            AirChanges = Of(
                "mean air changes",
                WaterPolicy.PerHour,
                d => WaterPolicy.PerHour.ToSiValue(d.AirChanges),
                "buoyancy, draughts and diffusion through all openings, mean of days 8 to 30"
            ),
            Vented = Of(
                "water vented a day",
                Units.Milliliter,
                d => d.Vented / Constants.WaterDensity,
                "vapor carried out less vapor brought in, mean of days 8 to 30"
            ),
            Evaporated = One(
                "water evaporated a day",
                days.Evaporated / Constants.WaterDensity,
                Units.Milliliter,
                "from ground, dead leaves and living leaves, mean of days 8 to 30"
            ),
            DeficitMax = One(
                "largest vapor pressure deficit",
                days.Deficit.Most,
                Units.Kilopascal,
                "saturation less vapor pressure at full hours, days 8 to 30"
            ),
            DewMargin = One(
                "smallest distance of a pane to the dew point",
                days.DewMargin,
                Units.Kelvin,
                "inner face less dew point at full hours, days 8 to 30; negative while it fogs"
            ),
            Fog = Panes(days.Fog, "dew"),
            Wet = Panes(days.Wet, "film of dew or mist"),
            LeafWet = climate.Run.Surfaces.Leaves is null
                ? null
                : One(
                    "hours of wet leaves a day",
                    Units.Hour.ToSiValue(days.LeafWet),
                    Units.Hour,
                    "hours with 1 g/m² or more, days 8 to 30"
                ),
            LedgerError = One(
                "miss of the water ledger of the coupled run",
                FloorWater.Gram.ToSiValue(Math.Abs(climate.WaterMissKilograms) * 1000),
                FloorWater.Gram,
                "misted less vented, drained and stored everywhere, 30 days"
            ),
            Computed = climate,
        };
    }

    private const string Settled = "days 8 to 30 of the coupled run from planting";
    private const string Range = "; air exchanged × 0.6 to × 1.6, convection and lamp heat × 0.8 to × 1.25";

    private static ClimateFigures Held(CheckedDesign design, BoxGeometry box)
    {
        var air = BoxAir.Of(design);
        var room = RoomClimate.Of(design, BoxRun.FirstDay(design), ClimateChange.None);
        var glass = box.Walls?.Si ?? 0.005;
        var lambda = design.Find("box.material")?.Figure("thermalConductivity")?.Si ?? 1.0;
        var pane = new PaneFog(glass, lambda);
        var celsius = air.Air.Si - Constants.ZeroCelsiusKelvin;
        var humidity = Math.Clamp(air.Humidity.Si, 1e-3, 1);
        var dew = MoistAir.DewPoint(humidity * MoistAir.SaturationPressure(Math.Clamp(celsius, 0, 90)));
        var hours = Enumerable
            .Range(0, 24 * 7)
            .Select(h => pane.InnerCelsius(celsius, room.At((h + 0.5) * 3600).Celsius))
            .ToList();
        ImmutableArray<Figure> inputs = [air.Air, air.Humidity, air.RoomAir];
        Figure One(string name, double si, Unit unit, string how) =>
            Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, Engine);
        var fog = One(
            "hours of fog a day",
            Units.Hour.ToSiValue(24.0 * hours.Count(t => t < dew) / hours.Count),
            Units.Hour,
            "hours in which the inner face of a single pane, films of 0.13 m² K/W, is below the dew point"
        );
        var coldest = hours.Min();
        var roomLowest = Enumerable.Range(0, 24 * 7).Min(h => room.At((h + 0.5) * 3600).Celsius);
        return new ClimateFigures
        {
            AirMin = new(air.Air, null, null),
            AirMean = new(air.Air, null, null),
            AirMax = new(air.Air, null, null),
            HumidityMin = new(air.Humidity, null, null),
            HumidityMean = new(air.Humidity, null, null),
            HumidityMax = new(air.Humidity, null, null),
            AirChanges = new(air.Changes, null, null),
            DeficitMax = One(
                "vapor pressure deficit",
                (1 - humidity) * MoistAir.SaturationPressure(Math.Clamp(celsius, 0, 90)),
                Units.Kilopascal,
                "(1 − humidity) × saturation pressure"
            ),
            DewMargin = One(
                "smallest distance of a pane to the dew point",
                coldest - dew,
                Units.Kelvin,
                "inner face in the coolest hour less dew point"
            ),
            Fog = [.. new[] { "front", "back", "left", "right" }.Select(p => (p, fog))],
            PaneInside = One(
                "inner face of a pane in the coolest hour",
                coldest + Constants.ZeroCelsiusKelvin,
                Units.Celsius,
                "box − (box − room) × 0.13 ÷ (0.13 + d/λ + 0.13)"
            ),
            DewPoint = One(
                "dew point of the air",
                dew + Constants.ZeroCelsiusKelvin,
                Units.Celsius,
                "saturation pressure there = vapor pressure of the box"
            ),
            ClearsBelowHumidity = One(
                "humidity below which the panes clear",
                pane.FogsAbove(celsius, roomLowest),
                Units.Percent,
                "saturation pressure at the inner face ÷ at the air of the box"
            ),
            ClearsAboveRoom = One(
                "room temperature above which the panes clear",
                pane.FogsBelowRoom(celsius, humidity) + Constants.ZeroCelsiusKelvin,
                Units.Celsius,
                "room at which the inner face stands at the dew point"
            ),
        };
    }
}
