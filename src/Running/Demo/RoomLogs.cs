using System.Globalization;
using System.Text;
using NodaTime;

namespace Litterfall.Running.Demo;

/// <summary>A file of an invented logger.</summary>
/// <param name="Name">Name of the file.</param>
/// <param name="Bytes">What it holds.</param>
public sealed record DemoLog(string Name, byte[] Bytes);

/// <summary>
/// The seven loggers of the invented breeding room as files, each in another style, with the faults that an
/// import has to see through.
/// </summary>
public static class RoomLogs
{
    /// <summary>Seed of the invented room.</summary>
    public const ulong Seed = 4021;

    private const double DewA = 17.625;
    private const double DewB = 243.04;
    private const int RowsADay = 144;

    private static CultureInfo Plain => CultureInfo.InvariantCulture;

    /// <summary>All files of the room.</summary>
    public static IReadOnlyList<DemoLog> Files() => Files(new RoomAir(Seed));

    /// <summary>All files of a room.</summary>
    public static IReadOnlyList<DemoLog> Files(RoomAir air) =>
        [
            new("A3.csv", Offsets(air.InTank("A3"))),
            new("A7.csv", Commas(air.InTank("A7"))),
            new("B2.csv", Marked(air.InTank("B2"))),
            new("B6.csv", Block(air.InTank("B6"))),
            new("C1.txt", Tabs(Twice(air.InTank("C1")))),
            new("C5.csv", Parted(air.InTank("C5"))),
            new("room.csv", Plainly(air.InRoom())),
        ];

    /// <summary>One header row, the offset of the zone in each row, dew point beside it.</summary>
    private static byte[] Offsets(AirReading[] readings)
    {
        var text = new StringBuilder("Time,Temperature(°C),Humidity(%RH),Dew Point(°C)\r\n");
        foreach (var r in readings)
        {
            var at = Wall(r.Ticks);
            text.Append(Plain, $"{at.LocalDateTime.ToDateTimeUnspecified():yyyy-MM-dd'T'HH:mm:ss}");
            text.Append(
                Plain,
                $"+{at.Offset.Seconds / 3600:00}:00,{r.Celsius:0.00},{r.Percent:0.00},{Dew(r):0.00}\r\n"
            );
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Semicolons, decimal comma, names with spaces around, a clock that never follows.</summary>
    private static byte[] Commas(AirReading[] readings)
    {
        var text = new StringBuilder(" Datum/Zeit (UTC+01:00) ; Temperatur (°C) ; Rel. Feuchte (%) \r\n");
        foreach (var r in readings)
        {
            var at = new DateTime(r.Ticks).AddHours(1);
            var row = string.Create(Plain, $"{at:dd/MM/yyyy HH:mm};{r.Celsius:0.0};{r.Percent:0.0}\r\n");
            text.Append(row.Replace('.', ','));
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>A byte-order mark and the clock on the wall.</summary>
    private static byte[] Marked(AirReading[] readings)
    {
        var text = new StringBuilder("Date Time,Temperature (°C),Relative humidity (%)\n");
        foreach (var r in readings)
        {
            var at = Wall(r.Ticks).LocalDateTime.ToDateTimeUnspecified();
            text.Append(Plain, $"{at:yyyy-MM-dd HH:mm:ss},{r.Celsius:0.0},{r.Percent:0.0}\n");
        }

        return [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    /// <summary>A block of details, a blank line, and units below the names.</summary>
    private static byte[] Block(AirReading[] readings)
    {
        var text = new StringBuilder(
            "Logger;two channels\nSerial number;104417\nInterval;10 min\nStarted;2026-02-14 23:00:00\n"
                + "Clock;UTC\n\nDate and time;Temperature;Humidity\nyyyy-mm-dd hh:mm:ss;°C;%RH\n"
        );
        foreach (var r in readings)
        {
            var at = new DateTime(r.Ticks);
            text.Append(Plain, $"{at:yyyy-MM-dd HH:mm:ss};{r.Celsius:0.0};{r.Percent:0.0}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Tabs, month first, seconds with a fraction, two thermometers of different
    /// resolution.</summary>
    private static byte[] Tabs(AirReading[] readings)
    {
        var text = new StringBuilder("Time (UTC)\tTemperature 1 (°C)\tTemperature 2 (°C)\tRH (%)\r\n");
        foreach (var r in readings)
        {
            var at = new DateTime(r.Ticks);
            text.Append(
                Plain,
                $"{at:MM/dd/yy HH:mm:ss}.0\t{r.Celsius:0.000}\t{r.Celsius:0.0}\t{r.Percent:0.0}\r\n"
            );
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Date and time in columns of their own.</summary>
    private static byte[] Parted(AirReading[] readings)
    {
        var text = new StringBuilder("No.,Date,Time (UTC),Temperature (°C),RH (%)\n");
        var number = 0;
        foreach (var r in readings)
        {
            var at = new DateTime(r.Ticks);
            text.Append(Plain, $"{++number},{at:dd-MM-yyyy},{at:HH:mm:ss},{r.Celsius:0.0},{r.Percent:0.0}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static byte[] Plainly(AirReading[] readings)
    {
        var text = new StringBuilder("Time,Temperature (°C),Humidity (%)\n");
        foreach (var r in readings)
        {
            text.Append(
                Plain,
                $"{new DateTime(r.Ticks):yyyy-MM-dd'T'HH:mm:ss'Z'},{r.Celsius:0.00},{r.Percent:0.0}\n"
            );
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Two downloads in one file: the second begins three days before the first ends.</summary>
    private static AirReading[] Twice(AirReading[] readings)
    {
        var half = Math.Min(readings.Length, 50 * RowsADay);
        return [.. readings[..half], .. readings[Math.Max(0, half - (3 * RowsADay))..]];
    }

    private static ZonedDateTime Wall(long ticks) =>
        Instant
            .FromDateTimeUtc(new DateTime(ticks, DateTimeKind.Utc))
            .InZone(DateTimeZoneProviders.Tzdb[RoomAir.Zone]);

    /// <summary>Magnus' form with the constants of Alduchov and Eskridge (1996).</summary>
    private static double Dew(AirReading r)
    {
        var g = Math.Log(r.Percent / 100.0) + (DewA * r.Celsius / (DewB + r.Celsius));
        return DewB * g / (DewA - g);
    }
}
