using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Measures;

namespace Litterfall.Quantities.Equipping;

/// <summary>Heater, fan, fogger and protection of one box, as the library has them.</summary>
public sealed record PowerPlan
{
    private static readonly string[] Heaters = ["heat-mat", "heat-cable"];

    /// <summary>The mat or cable nearest to the power of the design; null without heating.</summary>
    public EquipmentEntry? Heater { get; init; }

    /// <summary>The smallest fan that gives the flow of the design; null without one.</summary>
    public EquipmentEntry? Fan { get; init; }

    /// <summary>The smallest fogger that gives the rate of the design; null without one.</summary>
    public EquipmentEntry? Fogger { get; init; }

    /// <summary>The device that protects people where the reader lives; null without one.</summary>
    public EquipmentEntry? Protection { get; init; }

    /// <summary>The plan.</summary>
    /// <param name="design">The design.</param>
    public static PowerPlan Of(CheckedDesign design)
    {
        var (catalog, of) = (design.Catalog, design.Design);
        var limit = TripLimits.IsUnitedStates(of) ? TripLimits.UnitedStates : TripLimits.Europe;
        return new PowerPlan
        {
            Heater = of.Heating is { } heating
                ? EquipmentPick.Nearest(
                    catalog,
                    Heaters,
                    design.Figure("heating.watts", "power of the heating", heating.Watts, Unit.Watt),
                    e => e.Power
                )
                : null,
            Fan = of.Fan is { } fan
                ? EquipmentPick.Smallest(
                    catalog,
                    "fan",
                    design.Figure("fan.flow", "free flow of the fan", fan.Flow, Unit.CubicMeterPerHour),
                    e => e.Flow
                )
                : null,
            Fogger = of.Fogger is { } fogger
                ? EquipmentPick.Smallest(
                    catalog,
                    "fogger",
                    design.Figure(
                        "fogger.rate",
                        "water the fogger throws",
                        fogger.Rate,
                        Unit.MilliliterPerMinute
                    ),
                    e => e.Flow
                )
                : null,
            Protection = EquipmentPick.Largest(catalog, "ground-fault", limit, e => e.Trip),
        };
    }
}
