using System.Text;
using Litterfall.Running.Loggers;

namespace Litterfall.UnitTests.Running.Loggers;

/// <summary>Reads small files written in the tests.</summary>
internal static class LoggerFiles
{
    public static LoggerReading Read(string text, string zone = "", string name = "file.csv") =>
        Read(Encoding.UTF8.GetBytes(text), zone, name);

    public static LoggerReading Read(byte[] bytes, string zone = "", string name = "file.csv")
    {
        var reading = LoggerFile.Read(name, bytes, new LoggerWish { Zone = zone });
        Assert.Empty(reading.Faults);
        return reading.Value!;
    }

    public static DateTime Utc(int year, int month, int day, int hour = 0, int minute = 0, int second = 0) =>
        new(year, month, day, hour, minute, second, DateTimeKind.Utc);
}
