using Litterfall.Forecasting.Floor;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// A change of what nobody measures, to ask how far an answer moves: factors, and kelvins added to the room.
/// </summary>
/// <param name="AirFlow">Factor on the air exchanged.</param>
/// <param name="Convection">Factor on the convection inside.</param>
/// <param name="LampHeat">Factor on the heat of lamps.</param>
/// <param name="RoomKelvin">Added to the room, K.</param>
/// <param name="RoomVapor">Factor on the vapor of the room's air.</param>
/// <param name="Mist">Factor on the mist.</param>
/// <param name="Soil">Change of the soil's curve.</param>
public sealed record ClimateChange(
    double AirFlow,
    double Convection,
    double LampHeat,
    double RoomKelvin,
    double RoomVapor,
    double Mist,
    CurveChange Soil
)
{
    /// <summary>False where nobody draws the water off; an outlet with a height works by itself.</summary>
    public bool IsDrained { get; init; } = true;

    /// <summary>Factor on the air changes of a design that holds its air.</summary>
    public double HeldAir { get; init; } = 1;

    /// <summary>No change.</summary>
    public static readonly ClimateChange None = new(1, 1, 1, 0, 1, 1, CurveChange.None);
}
