using Litterfall.Physics.Air;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// A single pane between air of a box and air of a room, steady: its inner face lies between them as the
/// films share the resistance, and it fogs where that is below the dew point. A film of still air lies on
/// both
/// sides.
/// </summary>
/// <param name="GlassMeters">Thickness of the pane, m.</param>
/// <param name="ConductivityWattsPerMeterKelvin">Of the pane, W/(m K).</param>
/// <param name="FilmResistance">Of the film on each side, m² K/W.</param>
public readonly record struct PaneFog(
    double GlassMeters,
    double ConductivityWattsPerMeterKelvin,
    double FilmResistance
)
{
    private double All => FilmResistance + (GlassMeters / ConductivityWattsPerMeterKelvin) + FilmResistance;

    /// <summary>Inner face, °C.</summary>
    /// <param name="boxCelsius">Box, °C.</param>
    /// <param name="roomCelsius">Room, °C.</param>
    public double InnerCelsius(double boxCelsius, double roomCelsius) =>
        boxCelsius - ((boxCelsius - roomCelsius) * FilmResistance / All);

    /// <summary>Humidity of the box above which the pane fogs, 0 to 1.</summary>
    /// <param name="boxCelsius">Box, °C.</param>
    /// <param name="roomCelsius">Room, °C.</param>
    public double FogsAbove(double boxCelsius, double roomCelsius) =>
        Math.Min(
            1.0,
            MoistAir.SaturationPressure(InnerCelsius(boxCelsius, roomCelsius))
                / MoistAir.SaturationPressure(boxCelsius)
        );

    /// <summary>Room below which the pane fogs, °C.</summary>
    /// <param name="boxCelsius">Box, °C.</param>
    /// <param name="humidity">Humidity of the box, above 0 to 1.</param>
    public double FogsBelowRoom(double boxCelsius, double humidity)
    {
        double dew = MoistAir.DewPoint(humidity * MoistAir.SaturationPressure(boxCelsius));
        return boxCelsius - ((boxCelsius - dew) * All / FilmResistance);
    }
}
