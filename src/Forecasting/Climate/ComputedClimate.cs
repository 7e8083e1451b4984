using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics;
using Litterfall.Physics.Air;

namespace Litterfall.Forecasting.Climate;

/// <summary>A computed climate as figures that name what they rest on.</summary>
internal sealed class ComputedClimate(BoxClimate climate, ImmutableArray<Figure> inputs)
{
    private const double Zero = Constants.ZeroCelsiusKelvin;
    private static readonly string Settled = $"{HeadspacePolicy.Settled} of the coupled run from planting";
    private readonly string range = Range(climate.Run.With.Headspace);

    /// <summary>The figures.</summary>
    public ClimateFigures Figures() =>
        new()
        {
            AirMin = Of("lowest air temperature", Unit.Celsius, d => d.Celsius.Least + Zero),
            AirMean = Of("mean air temperature", Unit.Celsius, d => d.Celsius.Mean + Zero),
            AirMax = Of("highest air temperature", Unit.Celsius, d => d.Celsius.Most + Zero),
            HumidityMin = Of("lowest humidity", Unit.Percent, d => d.Humidity.Least),
            HumidityMean = Of("mean humidity", Unit.Percent, d => d.Humidity.Mean),
            HumidityMax = Of("highest humidity", Unit.Percent, d => d.Humidity.Most),
            AirChanges = Of(
                "mean air changes",
                Unit.PerHour,
                d => Unit.PerHour.ToSiValue(d.AirChanges),
                "buoyancy, draughts and diffusion through all openings, "
            ),
            Vented = Of(
                "water vented a day",
                Unit.Milliliter,
                d => d.Vented / Constants.WaterDensity,
                "vapor carried out less vapor brought in, "
            ),
            Evaporated = One(
                "water evaporated a day",
                climate.Days.Evaporated / Constants.WaterDensity,
                Unit.Milliliter,
                $"from ground, dead leaves and living leaves, {Settled}"
            ),
            Basins = climate.Run.Surfaces.OpenWater is null ? null : Basins(),
            DeficitMax = One(
                "largest vapor pressure deficit",
                climate.Days.Deficit.Most,
                Unit.Kilopascal,
                $"saturation less vapor pressure at full hours, {Settled}"
            ),
            DewMargin = One(
                "smallest distance of a pane to the dew point",
                climate.Days.DewMargin,
                Unit.Kelvin,
                $"inner face less dew point at full hours, {Settled}; negative while it fogs"
            ),
            Fog = Panes(climate.Days.Fog, "dew"),
            FogBand = FogBand(),
            Wet = Panes(climate.Days.Wet, "film of dew or mist"),
            LeafWet = climate.Run.Surfaces.Leaves is null
                ? null
                : Hours("hours of wet leaves a day", climate.Days.LeafWet),
            LedgerError = One(
                "miss of the water ledger of the coupled run",
                Unit.Gram.ToSiValue(Math.Abs(climate.WaterBalanceErrorKilograms) * 1000),
                Unit.Gram,
                "misted less vented, drained and stored everywhere, "
                    + FormattableString.Invariant($"{HeadspacePolicy.CheckDays} days")
            ),
            Computed = climate,
        };

    private BasinFigures Basins() =>
        new()
        {
            Evaporated = Of("water evaporated from basins a day", d => d.Basins.Evaporated),
            Caught = Milliliters("mist that falls on basins a day", climate.Days.Basins.Caught),
            ToppedUp = Of("water filled up in basins a day", d => d.Basins.ToppedUp),
            Overflow = Milliliters("water run over from basins a day", climate.Days.Basins.Overflow),
            Lost = Of("water vented less filled up a day", d => d.Vented - d.Basins.ToppedUp),
        };

    private Banded Of(string name, Func<ClimateDays, double> kilograms) =>
        Of(name, Unit.Milliliter, d => kilograms(d) / Constants.WaterDensity);

    private Figure Milliliters(string name, double kilograms) =>
        One(name, kilograms / Constants.WaterDensity, Unit.Milliliter, Settled);

    private Figure One(string name, double si, Unit unit, string how) =>
        Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, ClimateFigures.Engine);

    private Figure Hours(string name, double hours) =>
        One(
            name,
            Unit.Hour.ToSiValue(hours),
            Unit.Hour,
            FormattableString.Invariant(
                $"hours with {1000 * HeadspaceState.VisibleKilogramsPerSquareMeter:0.##} g/m² or more, "
            ) + Settled
        );

    private Banded Of(string name, Unit unit, Func<ClimateDays, double> of, string how = "")
    {
        var (tight, loose) = (of(climate.Band.Tight), of(climate.Band.Loose));
        var value = of(climate.Days);
        return new Banded(
            One(name, value, unit, how + Settled),
            One($"least {name}", Math.Min(value, Math.Min(tight, loose)), unit, how + range),
            One($"most {name}", Math.Max(value, Math.Max(tight, loose)), unit, how + range)
        );
    }

    /// <summary>"days 4 to 10 of ... with factor on the air exchanged 0.6 to 1.6, ...".</summary>
    private static string Range(HeadspaceCoefficients with) =>
        $"the run itself, and {HeadspacePolicy.ShortSettled} of it with "
        + string.Join(
            ", ",
            new[] { with.AirFlow, with.Convection, with.LampHeat }.Select(c =>
                FormattableString.Invariant(
                    $"{c.Figure.Name} {c.Range!.Value.Low:0.##} to {c.Range!.Value.High:0.##}"
                )
            )
        );

    private ImmutableArray<(string, Banded)> FogBand() =>
        [
            .. climate.Days.Fog.Select(
                (p, i) =>
                    (
                        p.Pane,
                        Of($"dew on the {p.Pane} a day", Unit.Hour, d => Unit.Hour.ToSiValue(d.Fog[i].Hours))
                    )
            ),
        ];

    private ImmutableArray<(string, Figure)> Panes(
        ImmutableArray<(string Pane, double Hours)> of,
        string what
    ) => [.. of.Select(p => (p.Pane, Hours($"{what} on the {p.Pane} a day", p.Hours)))];
}
