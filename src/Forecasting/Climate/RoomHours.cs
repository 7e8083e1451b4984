using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// The room over one day: a sine around a mean. Valid for a room without sudden sun or heating; the box
/// itself is warmer than its room while its lamps are on.
/// </summary>
/// <param name="Name">When, e.g. "in July" or "on weekends".</param>
/// <param name="Mean">Mean temperature.</param>
/// <param name="Swing">Half the difference between the warmest and the coolest hour, in kelvin.</param>
/// <param name="IsHeld">True when the design holds the air of the box constant.</param>
public sealed record RoomHours(string Name, Figure Mean, Figure Swing, bool IsHeld)
{
    private static readonly Figure NoSwing = Figure.Choice(
        "swing of the room",
        0,
        Unit.Kelvin,
        "none was entered"
    );

    /// <summary>Temperature of the warmest hour.</summary>
    public Figure Warmest { get; } = (Mean + Swing).As($"warmest hour {Name}", Unit.Celsius);

    /// <summary>Temperature of the coolest hour.</summary>
    public Figure Coolest { get; } = (Mean - Swing).As($"coolest hour {Name}", Unit.Celsius);

    /// <summary>
    /// Hours a day above a limit, 24/π × arccos((limit − mean)/swing) for a sine; a constant room is above it
    /// all day or never. The closed form is its own evidence.
    /// </summary>
    public Figure HoursAbove(Figure limit) =>
        Figure
            .Computed(
                Swing.Si > 0
                    ? $"24 h ÷ π × arccos(({limit.Name} − {Mean.Name}) ÷ {Swing.Name}), between 0 and 24 h"
                    : $"24 h if {Mean.Name} is above {limit.Name}, else 0",
                Unit.Hour.ToSiValue(Above(limit.Si)),
                Unit.Hour.Dimension,
                Mean,
                Swing,
                limit
            )
            .As($"time a day above {limit.Name} {Name}", Unit.Minute);

    private double Above(double limit) =>
        Swing.Si > 0 ? 24 / Math.PI * Math.Acos(Math.Clamp((limit - Mean.Si) / Swing.Si, -1, 1))
        : Mean.Si > limit ? 24
        : 0;

    /// <summary>
    /// The day the design holds constant, and the room: as a whole, each month that differs, and the weekend.
    /// Held air does not cool the room that it stands in. Empty when no temperature was entered.
    /// </summary>
    public static ImmutableArray<RoomHours> Of(CheckedDesign design) =>
        Held(design) is { } held ? [held, .. OfRoom(design)] : OfRoom(design);

    /// <summary>The warmest day of the air that the floor lives in: held, else the room's.</summary>
    public static RoomHours? WarmestInside(CheckedDesign design) =>
        Held(design) ?? OfRoom(design).MaxBy(hours => hours.Warmest.Si);

    private static RoomHours? Held(CheckedDesign design) =>
        design.Design.Headspace is { } held
            ? new RoomHours(
                "with the air held constant",
                design.Figure("headspace.hold.air", "held air", held.Hold.Air, Unit.Celsius),
                NoSwing,
                true
            )
            : null;

    private static ImmutableArray<RoomHours> OfRoom(CheckedDesign design)
    {
        if (design.Design.Room is not { } room)
        {
            return [];
        }

        var year = new RoomAir { Temperature = room.Temperature, Swing = room.Swing };
        return
        [
            .. new[] { ("over the year", "room", year), ("on weekends", "room.weekend", room.Weekend) }
                .Concat(Months(room.Months))
                .Select(part => One(design, year, part.Item1, part.Item2, part.Item3))
                .OfType<RoomHours>(),
        ];
    }

    /// <summary>The day with the warmest hour; null without a temperature.</summary>
    public static RoomHours? WarmestOf(CheckedDesign design) => Of(design).MaxBy(hours => hours.Warmest.Si);

    /// <summary>The day with the coolest hour; null without a temperature.</summary>
    public static RoomHours? CoolestOf(CheckedDesign design) => Of(design).MinBy(hours => hours.Coolest.Si);

    private static IEnumerable<(string Name, string Path, RoomAir? Air)> Months(RoomYear? year) =>
        year is null
            ? []
            :
            [
                ("in January", "room.months.jan", year.Jan),
                ("in February", "room.months.feb", year.Feb),
                ("in March", "room.months.mar", year.Mar),
                ("in April", "room.months.apr", year.Apr),
                ("in May", "room.months.may", year.May),
                ("in June", "room.months.jun", year.Jun),
                ("in July", "room.months.jul", year.Jul),
                ("in August", "room.months.aug", year.Aug),
                ("in September", "room.months.sep", year.Sep),
                ("in October", "room.months.oct", year.Oct),
                ("in November", "room.months.nov", year.Nov),
                ("in December", "room.months.dec", year.Dec),
            ];

    /// <summary>What a month or the weekend leaves out is as in the room as a whole.</summary>
    private static RoomHours? One(CheckedDesign design, RoomAir year, string name, string path, RoomAir? air)
    {
        if (air is null || (air.Temperature ?? year.Temperature) is not { } mean)
        {
            return null;
        }

        var swing = air.Swing ?? year.Swing;
        var swingPath = air.Swing is null ? "room.swing" : $"{path}.swing";
        var meanPath = air.Temperature is null ? "room.temperature" : $"{path}.temperature";
        return new RoomHours(
            name,
            design.Figure(meanPath, $"mean temperature of the room {name}", mean, Unit.Celsius),
            swing is { } typed
                ? design.Figure(swingPath, $"swing of the room {name}", typed, Unit.Kelvin)
                : NoSwing,
            false
        );
    }
}
