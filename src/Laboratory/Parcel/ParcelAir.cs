using System.Collections.Immutable;
using Litterfall.Physics.Parcel;

namespace Litterfall.Laboratory.Parcel;

/// <summary>What is asked about the air of a parcel beside its heat.</summary>
public sealed record ParcelAir
{
    /// <summary>Gets whether anything is asked.</summary>
    public bool IsAsked => !Iron.IsEmpty || Vents is not null || Cup is not null;

    /// <summary>Gets the heat packs that rust.</summary>
    public ImmutableArray<IronPack> Iron { get; init; } = [];

    /// <summary>Gets the vents of the carton; null where they are not told.</summary>
    public VentHoles? Vents { get; init; }

    /// <summary>Gets the air that leaks, in volumes of the carton an hour.</summary>
    public double LeaksPerHour { get; init; } = ChamberAir.TapedCartonChangesPerHour;

    /// <summary>Gets a cup in it; null without.</summary>
    public CupAir? Cup { get; init; }

    /// <summary>Gets the humidity around the cup, 0 to 1.</summary>
    public double HumidityAround { get; init; }
}

/// <summary>Air used by heat packs that rust.</summary>
/// <param name="MeanWatts">Their mean power, W.</param>
/// <param name="OxygenLiters">Oxygen in all, L.</param>
/// <param name="AirLiters">Air that holds it, L.</param>
/// <param name="AirLitersPerHour">The same an hour on the mean, L/h.</param>
public sealed record PackAirOutcome(
    double MeanWatts,
    double OxygenLiters,
    double AirLiters,
    double AirLitersPerHour
);

/// <summary>Air of the carton while heat packs burn in it.</summary>
/// <param name="SupplyPercent">Power that the air allows at most, % of what the packs would give.</param>
/// <param name="OxygenPercent">Oxygen left in the carton, %.</param>
public sealed record CartonAirOutcome(double SupplyPercent, double OxygenPercent);

/// <summary>Air and water of the cup.</summary>
/// <param name="OxygenMillilitersPerHour">Oxygen used, mL/h.</param>
/// <param name="HeatMilliwatts">Heat given off, mW.</param>
/// <param name="SealedHours">Until 19 % with the holes closed, h; null without animals.</param>
/// <param name="OxygenPercent">Oxygen with open holes, %.</param>
/// <param name="CarbonDioxidePercent">Carbon dioxide with open holes, %.</param>
/// <param name="WaterGrams">Water lost on the trip, g.</param>
public sealed record CupOutcome(
    double OxygenMillilitersPerHour,
    double HeatMilliwatts,
    double? SealedHours,
    double OxygenPercent,
    double CarbonDioxidePercent,
    double WaterGrams
);

/// <summary>Air of a parcel at one temperature.</summary>
/// <param name="Celsius">The warmest that the contents were: there most is used, °C.</param>
public sealed record ParcelAirOutcome(double Celsius)
{
    private const double Liters = 1000.0;
    private const double Milliliters = 1e6;
    private const double Grams = 1000.0;
    private const double Milliwatts = 1000.0;
    private const double SecondsPerHour = 3600.0;
    private const double Percent = 100.0;

    /// <summary>Gets the air used by heat packs that rust; null without.</summary>
    public PackAirOutcome? Pack { get; init; }

    /// <summary>Gets the air of the carton; null where no vents are told.</summary>
    public CartonAirOutcome? Carton { get; init; }

    /// <summary>Gets the air of the cup; null without one.</summary>
    public CupOutcome? Cup { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public static ParcelAirOutcome From(ParcelCase asked, double celsius) =>
        new(celsius)
        {
            Pack = asked.Air.Iron.IsEmpty ? null : Used(asked.Air.Iron, celsius),
            Carton = asked.Air.Vents is { } vents ? Left(asked, vents, celsius) : null,
            Cup = asked.Air.Cup is { } cup ? Within(asked, cup, celsius) : null,
        };

    private static PackAirOutcome Used(ImmutableArray<IronPack> packs, double celsius) =>
        new(
            packs.Sum(p => p.MeanWatts),
            Liters * packs.Sum(p => p.OxygenVolume(celsius)),
            Liters * packs.Sum(p => p.AirVolume(celsius)),
            Liters * SecondsPerHour * packs.Sum(p => p.AirVolume(celsius) / p.Seconds)
        );

    private static CartonAirOutcome Left(ParcelCase asked, VentHoles vents, double celsius)
    {
        double exchange =
            vents.Conductance(Massman1998.Oxygen(celsius))
            + ChamberAir.LeakPerSecond(asked.Shell.InsideVolume, asked.Air.LeaksPerHour);
        double use = asked.Air.Iron.Sum(p => p.OxygenPerSecond(celsius));
        return new CartonAirOutcome(
            Percent * ChamberAir.SupplyShare(use, exchange),
            Percent * ChamberAir.SteadyOxygen(use, exchange, ChamberAir.OutdoorOxygen)
        );
    }

    private static CupOutcome Within(ParcelCase asked, CupAir cup, double celsius)
    {
        double hours = cup.SealedSeconds(ChamberAir.PoorOxygen, celsius) / SecondsPerHour;
        double water = cup.WaterPerSecond(celsius, asked.Air.HumidityAround);
        return new CupOutcome(
            Milliliters * SecondsPerHour * cup.Animals.OxygenPerSecond(celsius),
            Milliwatts * cup.Animals.Watts(celsius),
            double.IsFinite(hours) ? hours : null,
            Percent * cup.SteadyOxygen(celsius),
            Percent * cup.SteadyCarbonDioxide(celsius),
            Grams * water * asked.Hours * SecondsPerHour
        );
    }
}
