using Litterfall.Physics.Air;

namespace Litterfall.Physics.Parcel;

/// <summary>Air and water of a cup with pin holes, wet moss and an animal.</summary>
/// <remarks>
/// The air in the cup is mixed; over wet moss it is full of vapor, because the moss gives water a hundred
/// times faster than pin holes let it out. Holes pass by diffusion alone, see <see cref="VentHoles"/>.
/// </remarks>
/// <param name="AirCubicMeters">Air in the cup, m³: its size less moss and animal.</param>
/// <param name="Holes">Its holes.</param>
/// <param name="Animals">What breathes in it.</param>
public readonly record struct CupAir(double AirCubicMeters, VentHoles Holes, AnimalBreath Animals)
{
    /// <summary>Time until oxygen falls to a share with all holes closed, s.</summary>
    /// <param name="share">The share.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public double SealedSeconds(double share, double celsius) =>
        ChamberAir.SecondsTo(AirCubicMeters, Animals.OxygenPerSecond(celsius), 0.0, share);

    /// <summary>Oxygen in the cup after it has settled, share by volume.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="around">Oxygen around the cup.</param>
    public double SteadyOxygen(double celsius, double around = ChamberAir.OutdoorOxygen) =>
        ChamberAir.SteadyOxygen(
            Animals.OxygenPerSecond(celsius),
            Holes.Conductance(Massman1998.Oxygen(celsius)),
            around
        );

    /// <summary>Carbon dioxide in the cup after it has settled, share by volume.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="around">Carbon dioxide around the cup.</param>
    public double SteadyCarbonDioxide(double celsius, double around = ChamberAir.RoomCarbonDioxide) =>
        ChamberAir.SteadyCarbonDioxide(
            Animals.CarbonDioxidePerSecond(celsius),
            Holes.Conductance(Massman1998.CarbonDioxide(celsius)),
            around
        );

    /// <summary>Water that leaves wet moss through the holes, kg/s.</summary>
    /// <param name="celsius">Temperature inside and around, °C.</param>
    /// <param name="humidityAround">Humidity around the cup, 0 to 1.</param>
    public double WaterPerSecond(double celsius, double humidityAround)
    {
        double pascals = (1.0 - humidityAround) * MoistAir.SaturationPressure(celsius);
        double missing = pascals / (MoistAir.VaporGasConstant * (celsius + Constants.ZeroCelsiusKelvin));
        return Holes.Conductance(Massman1998.WaterVapor(celsius)) * missing;
    }
}
