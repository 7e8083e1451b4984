using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Air;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// The room through time: a daily sine, around means that are joined from mid-month to
/// mid-month, with weekends that are approached within hours. The typed humidity counts at the mean
/// temperature and gives the vapor of the air, which does not swing with the hour.
/// </summary>
public sealed class RoomClimate
{
    private const double HourSeconds = 3600;
    private const double DaySeconds = 86400;
    private const double SaturatedShare = 0.999;

    // Beyond these a room is no room, and the tables end.
    private const double ColdestCelsius = -15;
    private const double HottestCelsius = 60;
    private const double MostSwing = 15;
    private const double HighestMeters = 5000;
    private readonly Air[] months = new Air[12];
    private readonly Air? weekend;
    private readonly DateOnly first;
    private readonly double[] middles = new double[14];
    private readonly ClimateChange change;
    private readonly double pascals;
    private readonly ImmutableArray<RoomReading> log;
    private readonly ModelCoefficients with;
    private readonly double warmestHour;
    private readonly double approachHours;
    private readonly ((double Cold, double Mild) Wall, (double Cold, double Mild) Window) outside;

    private RoomClimate(CheckedDesign design, DateOnly first, ClimateChange change, ModelCoefficients with)
    {
        this.with = with;
        this.first = first;
        this.change = change;
        pascals = Pascals(design);
        log = design.RoomLog?.Readings ?? [];
        outside = Outsides(design.Design.Room?.Faces is not null, with.Headspace);
        var room = design.Design.Room;
        var year = new Domain.RoomAir
        {
            Temperature = room?.Temperature,
            Swing = room?.Swing,
            Humidity = room?.Humidity,
        };
        var typed = Named(room?.Months);
        for (var m = 0; m < 12; m++)
        {
            months[m] = Of(typed[m].Air ?? year, year);
        }

        weekend = room?.Weekend is { } w ? Of(w, year) : null;
        warmestHour =
            months.Any(m => m.Swing > 0) || weekend is { Swing: > 0 }
                ? with.Headspace.WarmestHour.Use()
                : with.Headspace.WarmestHour.Number;
        approachHours = weekend is null
            ? with.Headspace.WeekendApproach.Number
            : with.Headspace.WeekendApproach.Use();
        for (var k = 0; k < middles.Length; k++)
        {
            var month = new DateOnly(first.Year, 1, 1).AddMonths(k - 1);
            middles[k] = month.DayNumber + (0.5 * DateTime.DaysInMonth(month.Year, month.Month));
        }
    }

    /// <summary>Mean °C, swing K, w.</summary>
    private readonly record struct Air(double Celsius, double Swing, double HumidityRatio);

    /// <summary>The room of a design from 00:00 of a date.</summary>
    /// <param name="design">The design.</param>
    /// <param name="first">The date.</param>
    /// <param name="change">What is changed.</param>
    /// <param name="with">Coefficients; those of the design by default.</param>
    public static RoomClimate Of(
        CheckedDesign design,
        DateOnly first,
        ClimateChange change,
        ModelCoefficients? with = null
    ) => new(design, first, change, with ?? ModelCoefficients.Of(design));

    private static ((double, double) Wall, (double, double) Window) Outsides(
        bool anyFaces,
        HeadspaceCoefficients with
    ) =>
        anyFaces
            ? (
                (with.ColdWall.UseSi(), with.MildWall.UseSi()),
                (with.ColdWindow.UseSi(), with.MildWindow.UseSi())
            )
            : default;

    /// <summary>Pressure of the air of a design, Pa.</summary>
    public static double Pascals(CheckedDesign design) =>
        MoistAir.PressureAt(Math.Clamp(design.Design.Room?.Altitude?.Si ?? 0, 0, HighestMeters));

    /// <summary>The room at a time, s from 00:00 of the first date.</summary>
    public RoomPoint At(double seconds)
    {
        var day = (int)Math.Floor(seconds / DaySeconds);
        var hour = (seconds - (day * DaySeconds)) / HourSeconds;
        if (!log.IsEmpty)
        {
            var reading = Logged(first.ToDateTime(TimeOnly.MinValue).AddSeconds(seconds));
            return Changed(
                reading.Celsius,
                MoistAir.HumidityRatio(reading.Celsius, Math.Clamp(reading.Humidity, 0.01, 1), pascals)
            );
        }

        var air = Season(day, hour);
        if (weekend is { } off)
        {
            air = Mix(air, off, WeekendShare(day, hour));
        }

        return Changed(
            air.Celsius + (air.Swing * Math.Sin(2 * Math.PI * (hour - warmestHour + 6) / 24)),
            air.HumidityRatio
        );
    }

    private RoomPoint Changed(double roomCelsius, double ratio)
    {
        var celsius = roomCelsius + change.RoomKelvin;
        var saturated = MoistAir.HumidityRatio(SaturationTable.At(celsius).Pascals, pascals);
        return new RoomPoint(celsius, Math.Min(ratio * change.RoomVapor, SaturatedShare * saturated));
    }

    /// <summary>
    /// The logger at a time, by straight line between readings. Outside of what it covers its whole days, or
    /// whole weeks, are repeated.
    /// </summary>
    private RoomReading Logged(DateTime time)
    {
        var days = Math.Floor((log[^1].Time - log[0].Time).TotalDays);
        var span = TimeSpan.FromDays(days >= 7 ? 7 * Math.Floor(days / 7) : Math.Max(days, 1));
        if (time < log[0].Time || time > log[^1].Time)
        {
            var since = (time - log[0].Time).Ticks % span.Ticks;
            time = log[0].Time.AddTicks(since < 0 ? since + span.Ticks : since);
        }

        var (low, high) = (0, log.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = log[middle].Time <= time ? (middle, high) : (low, middle);
        }

        var (a, b) = (log[low], log[high]);
        var share = Math.Clamp((time - a.Time) / (b.Time - a.Time), 0, 1);
        return new RoomReading(
            time,
            a.Celsius + (share * (b.Celsius - a.Celsius)),
            a.Humidity + (share * (b.Humidity - a.Humidity))
        );
    }

    /// <summary>What lies outside a side over the room, K, at a time in s.</summary>
    public double Outside(Facing facing, double seconds)
    {
        var month = first.AddDays((int)Math.Floor(seconds / DaySeconds)).Month;
        var cold = month is >= 11 or <= 3;
        return facing switch
        {
            Facing.OuterWall => cold ? outside.Wall.Cold : outside.Wall.Mild,
            Facing.Window => cold ? outside.Window.Cold : outside.Window.Mild,
            _ => 0,
        };
    }

    private Air Season(int day, double hour)
    {
        var at = first.DayNumber + day + (hour / 24);
        while (at > middles[^1])
        {
            at -= 365.2425;
        }

        var k = 1;
        while (k < middles.Length - 1 && middles[k] < at)
        {
            k++;
        }

        var before = months[(k - 2 + 12) % 12];
        var after = months[(k - 1 + 12) % 12];
        var share = Math.Clamp((at - middles[k - 1]) / (middles[k] - middles[k - 1]), 0, 1);
        return before == after ? before : Mix(before, after, share);
    }

    /// <summary>
    /// How far the weekend has come: from Saturday 00:00 it is approached, from Monday 00:00 left again.
    /// </summary>
    private double WeekendShare(int day, double hour)
    {
        var weekday = first.AddDays(day).DayOfWeek;
        var since = (((int)weekday + 1) % 7 * 24) + hour;
        return since < 48 ? 1 - Math.Exp(-since / approachHours) : Math.Exp(-(since - 48) / approachHours);
    }

    private static Air Mix(Air a, Air b, double share) =>
        new(
            a.Celsius + (share * (b.Celsius - a.Celsius)),
            a.Swing + (share * (b.Swing - a.Swing)),
            a.HumidityRatio + (share * (b.HumidityRatio - a.HumidityRatio))
        );

    private Air Of(Domain.RoomAir air, Domain.RoomAir year)
    {
        var celsius = Celsius(air.Temperature ?? year.Temperature);
        var own = air.Humidity is not null || air.Temperature is null;
        var humidity = (air.Humidity ?? year.Humidity)?.Si ?? with.Water.RoomHumidity.UseSi();

        // A room that is merely left unheated keeps its vapor: only its temperature falls.
        var counted = own ? celsius : Celsius(year.Temperature);
        return new Air(
            celsius,
            Math.Clamp((air.Swing ?? year.Swing)?.Si ?? 0, 0, MostSwing),
            MoistAir.HumidityRatio(counted, Math.Clamp(humidity, 0, 1), pascals)
        );
    }

    private double Celsius(Typed<Temperature>? typed) =>
        Math.Clamp(
            (typed?.Si ?? with.Water.RoomAir.UseSi()) - Physics.Constants.ZeroCelsiusKelvin,
            ColdestCelsius,
            HottestCelsius
        );

    /// <summary>The months of a room by their keys in the design, from January on.</summary>
    internal static ImmutableArray<(string Key, Domain.RoomAir? Air)> Named(RoomYear? year) =>
        [
            ("jan", year?.Jan),
            ("feb", year?.Feb),
            ("mar", year?.Mar),
            ("apr", year?.Apr),
            ("may", year?.May),
            ("jun", year?.Jun),
            ("jul", year?.Jul),
            ("aug", year?.Aug),
            ("sep", year?.Sep),
            ("oct", year?.Oct),
            ("nov", year?.Nov),
            ("dec", year?.Dec),
        ];
}
