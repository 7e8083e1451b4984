using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// The air of the box and of its room as the water balance sees them: held by the design, or assumed from its
/// openings.
/// </summary>
public sealed record BoxAir
{
    /// <summary>Temperature of the box.</summary>
    public required Figure Air { get; init; }

    /// <summary>Humidity of the box.</summary>
    public required Figure Humidity { get; init; }

    /// <summary>Air changes.</summary>
    public required Figure Changes { get; init; }

    /// <summary>Least and most air changes where they are assumed; null where they are held.</summary>
    public (Figure Low, Figure High)? ChangesBand { get; init; }

    /// <summary>Temperature of the room.</summary>
    public required Figure RoomAir { get; init; }

    /// <summary>Humidity of the room.</summary>
    public required Figure RoomHumidity { get; init; }

    /// <summary>True when the design holds the headspace.</summary>
    public bool IsHeld => ChangesBand is null;

    /// <summary>The air of a design.</summary>
    public static BoxAir Of(CheckedDesign design)
    {
        var room = design.Design.Room;
        var with = ModelCoefficients.Of(design).Water;
        var roomAir = room?.Temperature is { } t
            ? design.Figure("room.temperature", "temperature of the room", t, Unit.Celsius)
            : with.RoomAir.Figure;
        var roomHumidity = room?.Humidity is { } h
            ? design.Figure("room.humidity", "humidity of the room", h, Unit.Percent)
            : with.RoomHumidity.Figure;
        if (design.Design.Headspace is { Hold: { } hold })
        {
            return new BoxAir
            {
                Air = design.Figure("headspace.hold.air", "temperature of the box", hold.Air, Unit.Celsius),
                Humidity = design.Figure(
                    "headspace.hold.humidity",
                    "humidity of the box",
                    hold.Humidity,
                    Unit.Percent
                ),
                Changes = design.Figure(
                    "headspace.hold.airChanges",
                    "air changes",
                    hold.AirChanges,
                    Unit.PerHour
                ),
                RoomAir = roomAir,
                RoomHumidity = roomHumidity,
            };
        }

        var (low, middle, high, why) = Openings(design);
        return new BoxAir
        {
            Air = (roomAir + with.LampWarmth.Figure).As("temperature of the box", Unit.Celsius),
            Humidity = with.BoxHumidity.Figure,
            Changes = Assumed("air changes", middle, why),
            ChangesBand = (Assumed("least air changes", low, why), Assumed("most air changes", high, why)),
            RoomAir = roomAir,
            RoomHumidity = roomHumidity,
        };
    }

    /// <summary>The air of a design whose headspace was computed.</summary>
    public static BoxAir Of(CheckedDesign design, ClimateFigures climate) =>
        Of(design) with
        {
            Air = climate.AirMean.Value,
            Humidity = climate.HumidityMean.Value,
            Changes = climate.AirChanges.Value,
            ChangesBand = (climate.AirChanges.Low!, climate.AirChanges.High!),
            IsComputed = true,
        };

    /// <summary>True when the headspace was computed, not held and not assumed.</summary>
    public bool IsComputed { get; init; }

    /// <summary>Habits of the trade by kind of opening, until the openings themselves are computed.</summary>
    private static (double Low, double Middle, double High, string Why) Openings(CheckedDesign design)
    {
        var mesh = design.Find("lid.material") is MeshEntry;
        var share = design.Design.Lid?.Share?.Si ?? 1;
        if (design.Design.Lid is null && design.Design.Box.Opening == Opening.Top || mesh && share > 0.3)
        {
            return (10, 15, 30, "a wide open or mesh top");
        }

        var vents = design.Design.Vents;
        var heights = vents.Select(v => v.Height?.Si ?? 0).DefaultIfEmpty(0).ToArray();
        if (heights.Min() < 0.5 * heights.Max())
        {
            return (10, 15, 20, "a low and a high vent: 10 to 20");
        }

        return mesh || vents.Count > 0
            ? (1, 2, 4, "one mesh opening or a tenth to a fifth of the top: 1 to 4")
            : (0.2, 0.5, 1, "a nearly closed lid: 0.2 to 1");
    }

    private static Figure Assumed(string name, double perHour, string why) =>
        Figure.Given(
            name,
            Unit.PerHour.ToSiValue(perHour),
            Unit.PerHour,
            Citation.Habit($"air changes per hour of {why}")
        );
}
