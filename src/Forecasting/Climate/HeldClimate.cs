using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics;
using Litterfall.Physics.Air;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// The climate of a box whose air the design holds: its panes as single panes between that air and the room,
/// over the first week.
/// </summary>
internal sealed class HeldClimate
{
    private const int WeekHours = 24 * 7;
    private const double HottestCelsius = 90;
    private const double LeastHumidity = 1e-3;
    private readonly BoxAir air;
    private readonly PaneFog pane;
    private readonly Coefficient film;
    private readonly double celsius;
    private readonly double humidity;
    private readonly double dew;
    private readonly ImmutableArray<double> room;
    private readonly ImmutableArray<Figure> inputs;

    private HeldClimate(CheckedDesign design, BoxGeometry box)
    {
        air = BoxAir.Of(design);
        var with = ModelCoefficients.Of(design);
        film = with.Surface.PaneFilm;
        var material = design.Find<SheetEntry>("box.material")?.ThermalConductivity;
        pane = new PaneFog(
            box.Walls?.Si ?? with.Surface.UsualWall.UseSi(),
            material?.Si ?? with.Surface.GlassConductivity.UseSi(),
            film.UseSi()
        );
        celsius = Math.Clamp(air.Air.Si - Constants.ZeroCelsiusKelvin, 0, HottestCelsius);
        humidity = Math.Clamp(air.Humidity.Si, LeastHumidity, 1);
        dew = MoistAir.DewPoint(humidity * MoistAir.SaturationPressure(celsius));
        var climate = RoomClimate.Of(design, BoxRun.FirstDay(design), ClimateChange.None, with);
        room = [.. Enumerable.Range(0, WeekHours).Select(h => climate.At((h + 0.5) * 3600).Celsius)];
        Figure?[] glass = [box.Walls, material];
        inputs = [air.Air, air.Humidity, air.RoomAir, .. glass.OfType<Figure>(), .. with.Used];
    }

    /// <summary>The figures of a design that holds its air.</summary>
    public static ClimateFigures Of(CheckedDesign design, BoxGeometry box) =>
        new HeldClimate(design, box).Figures();

    /// <summary>Whether panes fog in a room of a temperature, °C.</summary>
    /// <param name="design">A design that holds its air.</param>
    /// <param name="box">Its sizes.</param>
    public static Func<double, bool> Fogs(CheckedDesign design, BoxGeometry box)
    {
        var held = new HeldClimate(design, box);
        return celsius => held.Fogs(celsius);
    }

    private bool Fogs(double roomCelsius) => pane.InnerCelsius(celsius, roomCelsius) < dew;

    private ClimateFigures Figures() =>
        new()
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
                (1 - humidity) * MoistAir.SaturationPressure(celsius),
                Unit.Kilopascal,
                "(1 − humidity) × saturation pressure"
            ),
            DewMargin = One(
                "smallest distance of a pane to the dew point",
                Coldest() - dew,
                Unit.Kelvin,
                "inner face in the coolest hour less dew point"
            ),
            Fog = [.. new[] { "front", "back", "left", "right" }.Select(p => (p, FogHours()))],
            PaneInside = One(
                "inner face of a pane in the coolest hour",
                Coldest() + Constants.ZeroCelsiusKelvin,
                Unit.Celsius,
                $"box − (box − room) × {Film} ÷ ({Film} + d/λ + {Film})"
            ),
            PaneFilm = film.Figure,
            DewPoint = One(
                "dew point of the air",
                dew + Constants.ZeroCelsiusKelvin,
                Unit.Celsius,
                "saturation pressure there = vapor pressure of the box"
            ),
            ClearsBelowHumidity = One(
                "humidity below which the panes clear",
                pane.FogsAbove(celsius, room.Min()),
                Unit.Percent,
                "saturation pressure at the inner face ÷ at the air of the box, in the coolest hour"
            ),
            ClearsAboveRoom = pane.FogsBelowRoom(celsius, humidity) is >= ColdestRoomCelsius and var clears
                ? One(
                    "room temperature above which the panes clear",
                    clears + Constants.ZeroCelsiusKelvin,
                    Unit.Celsius,
                    "room at which the inner face stands at the dew point"
                )
                : null,
        };

    /// <summary>No room of people is colder: panes that fog only below it never do.</summary>
    private const double ColdestRoomCelsius = -30;

    private string Film => FormattableString.Invariant($"{film.Number:0.###}");

    private double Coldest() => pane.InnerCelsius(celsius, room.Min());

    private Figure FogHours() =>
        One(
            "hours of fog a day",
            Unit.Hour.ToSiValue(24.0 * room.Count(Fogs) / room.Length),
            Unit.Hour,
            $"hours in which the inner face of a single pane, films of {Film} m² K/W, is below the dew point"
        );

    private Figure One(string name, double si, Unit unit, string how) =>
        Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, ClimateFigures.Engine);
}
