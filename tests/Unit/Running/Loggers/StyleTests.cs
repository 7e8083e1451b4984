using System.Text;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;
using static Litterfall.UnitTests.Running.Loggers.LoggerFiles;

namespace Litterfall.UnitTests.Running.Loggers;

/// <summary>
/// Styles of logger files as manuals and issue threads show them (common practice, no source); the expected
/// values are those that a person reads off the rows.
/// </summary>
public sealed class StyleTests
{
    [Fact]
    public void One_header_row_with_a_serial_number_in_the_first_row_only()
    {
        var read = Read(
            """
            Time,Temperature(°C),Humidity(%RH),Dew Point(°C)
            2026-02-15T00:00:00Z,21.5,82.1,18.3,SN-10442
            2026-02-15T00:10:00Z,21.6,82.0,18.4
            2026-02-15T00:20:00Z,21.7,81.9,18.5
            """
        );
        Assert.Equal(
            [LogQuantity.Temperature, LogQuantity.Humidity, LogQuantity.DewPoint],
            read.Report.Channels.Select(c => c.Quantity)
        );
        Assert.Equal(["Temperature", "Humidity", "Dew Point"], read.Report.Channels.Select(c => c.Name));
        Assert.Equal(["°C", "%", "°C"], read.Report.Channels.Select(c => c.Unit));
        Assert.Equal([21.5, 21.6, 21.7], read.Series[0].Values);
        Assert.Equal([18.3, 18.4, 18.5], read.Series[2].Values);
        Assert.Equal(Utc(2026, 2, 15, 0, 20), read.Report.To);
        Assert.Equal("UTC", read.Report.Zone);
        Assert.Empty(read.Report.Quirks);
    }

    [Theory]
    [InlineData("Zeit;Temperatur [°C];rel. Feuchte [%]", LogQuantity.Temperature, LogQuantity.Humidity)]
    [InlineData("Heure;Température (°C);Humidité (%)", LogQuantity.Temperature, LogQuantity.Humidity)]
    [InlineData("Fecha;Humedad (%);Temperatura (°C)", LogQuantity.Humidity, LogQuantity.Temperature)]
    [InlineData("Data;Umidità %;Temperatura °C", LogQuantity.Humidity, LogQuantity.Temperature)]
    [InlineData("Tijd;Temperatuur (°C);Luchtvochtigheid (%)", LogQuantity.Temperature, LogQuantity.Humidity)]
    [InlineData("Datum;Temp.;Luftfuktighet", LogQuantity.Temperature, LogQuantity.Humidity)]
    [InlineData("Дата;Температура;Влажность", LogQuantity.Temperature, LogQuantity.Humidity)]
    [InlineData("时间;温度;湿度", LogQuantity.Temperature, LogQuantity.Humidity)]
    [InlineData("Zeit;Luftdruck (hPa);Taupunkt (°C)", LogQuantity.Pressure, LogQuantity.DewPoint)]
    [InlineData("timestamp;temp_c;rh_pct", LogQuantity.Temperature, LogQuantity.Humidity)]
    [InlineData("Time;Light (lux);Battery (V)", LogQuantity.Light, LogQuantity.Other)]
    public void Headers_in_the_usual_words(string head, LogQuantity first, LogQuantity second)
    {
        var read = Read(head + "\n15.02.2026 00:00;21,5;22,5\n15.02.2026 00:10;21,6;22,6\n", "Europe/Berlin");
        Assert.Equal([first, second], read.Report.Channels.Select(c => c.Quantity));
        Assert.Equal([21.5, 21.6], read.Series[0].Values);
    }

    [Fact]
    public void Details_blank_line_header_and_a_row_of_units()
    {
        var read = Read(
            """
            Model;two channels
            Serial;104417
            Interval;600 s
            Start;15/02/2026 08:00:00

            Date and time;Channel A;Channel B
            dd/mm/yyyy hh:mm:ss;°C;%RH
            15/02/2026 08:00:00;21.5;82
            15/02/2026 08:10:00;21.6;83
            """,
            "UTC"
        );
        Assert.Equal(
            [
                new("Channel A", LogQuantity.Temperature, "°C", ""),
                new("Channel B", LogQuantity.Humidity, "%", ""),
            ],
            read.Report.Channels
        );
        Assert.Equal([82.0, 83.0], read.Series[1].Values);
        Assert.Equal(Utc(2026, 2, 15, 8), read.Report.From);
        Assert.Equal(2, read.Report.Rows);
    }

    [Fact]
    public void No_header_fixed_fields_and_letters_for_alarms()
    {
        var read = Read(
            """
            15-02-2026,00:00:00,P,+024.50,P,+099.90
            15-02-2026,00:10:00,L,+024.60,L,+098.20
            15-02-2026,00:20:00,A,+028.10,L,+097.70
            """,
            "UTC"
        );
        Assert.Equal(
            [LogQuantity.Temperature, LogQuantity.Humidity],
            read.Report.Channels.Select(c => c.Quantity)
        );
        Assert.Equal([24.5, 24.6, 28.1], read.Series[0].Values);
        Assert.Equal([99.9, 98.2, 97.7], read.Series[1].Values);
        Assert.Contains(read.Report.Quirks, q =>
            q.StartsWith("1 row carries an alarm", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Semicolons_decimal_commas_and_padded_names()
    {
        var read = Read(
            "  Datum/Uhrzeit ;  Temperatur (°C)  ; Feuchte (%) \r\n"
                + "15/02/2026 00:00;21,5; 82,1\r\n16/02/2026 00:00;-3,25; 82,0\r\n",
            "Europe/Berlin"
        );
        Assert.Equal(["Temperatur", "Feuchte"], read.Report.Channels.Select(c => c.Name));
        Assert.Equal([21.5, -3.25], read.Series[0].Values);
        // Berlin in winter is one hour before UTC.
        Assert.Equal(Utc(2026, 2, 14, 23), read.Report.From);
    }

    [Fact]
    public void Tabs_month_first_fractions_of_seconds_and_several_thermometers()
    {
        var read = Read(
            "Time\tTemp 1 (°C)\tTemp 2 (°C)\tTemp 3 (°C)\n"
                + "02/28/26 23:50:00.0\t21.123\t21.5\t21\n03/01/26 00:00:00.0\t21.125\t21.5\t21\n",
            "UTC"
        );
        Assert.Equal(3, read.Report.Channels.Count);
        Assert.All(read.Report.Channels, c => Assert.Equal(LogQuantity.Temperature, c.Quantity));
        Assert.Equal(Utc(2026, 2, 28, 23, 50), read.Report.From);
        Assert.Equal(Utc(2026, 3, 1), read.Report.To);
        Assert.Equal(21.125, read.Series[0].Values[1]);
    }

    [Theory]
    [InlineData("Date,Time,Temp,RH\n2026-02-15,00:00:00,21.5,82\n2026-02-15,00:10:00,21.6,83\n")]
    [InlineData("date time,temp,rh\n2026-02-15 00:00, 21.5 82\n2026-02-15 00:10, 21.6 83\n")]
    [InlineData("Time;Date;Temp;RH\n00:00:00;2026-02-15;21.5;82\n00:10:00;2026-02-15;21.6;83\n")]
    [InlineData("date time,temp,rh\n2026-02-15 00:00,21.5,82\n2026-02-15 00:10,21.6,83\n")]
    [InlineData("unix,temp,rh\n1771113600,21.5,82\n1771114200,21.6,83\n")]
    [InlineData(
        "Time,Temp,RH\n\"Feb 15, 2026 12:00:00 AM\",21.5 °C,82 %\n"
            + "\"Feb 15, 2026 12:10:00 AM\",21.6 °C,83 %\n"
    )]
    public void Date_and_time_apart_or_mixed(string text)
    {
        var read = Read(text, "UTC");
        Assert.Equal(Utc(2026, 2, 15), read.Report.From);
        Assert.Equal(Utc(2026, 2, 15, 0, 10), read.Report.To);
        Assert.Equal([21.5, 21.6], read.Series[0].Values);
        Assert.Equal([82.0, 83.0], read.Series[1].Values);
        Assert.Equal(LogQuantity.Humidity, read.Series[1].Quantity);
    }

    public static TheoryData<string> Codes =>
        ["utf-8-mark", "utf-16", "utf-16-big", "utf-16-bare", "latin", "oem"];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Letters_of_every_code(string code)
    {
        const string text =
            "Time,Temperature (°C),RH (%)\n2026-02-15 00:00,21.5,82\n2026-02-15 00:10,21.6,83\n";
        byte[] bytes = code switch
        {
            "utf-8-mark" => [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text)],
            "utf-16" => [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)],
            "utf-16-big" => [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)],
            "utf-16-bare" => Encoding.Unicode.GetBytes(text),
            // The degree sign is 0xB0 in ISO 8859-1 and 0xF8 in the old code page 437.
            "latin" => Encoding.Latin1.GetBytes(text),
            _ => [.. Encoding.Latin1.GetBytes(text).Select(b => b == 0xB0 ? (byte)0xF8 : b)],
        };
        var read = Read(bytes, "UTC");
        Assert.Equal(["Temperature", "RH"], read.Report.Channels.Select(c => c.Name));
        Assert.Equal(["°C", "%"], read.Report.Channels.Select(c => c.Unit));
        Assert.Equal([21.5, 21.6], read.Series[0].Values);
        Assert.Contains(read.Report.Quirks, q =>
            q.Contains("written", StringComparison.Ordinal) || q.Contains("mark", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Fahrenheit_becomes_celsius()
    {
        var read = Read("Time,Temp (°F),RH\n2026-02-15 00:00,68,82\n2026-02-15 00:10,212,83\n", "UTC");
        // 68 °F is 20 °C and 212 °F is 100 °C by the definition of the scale (NIST SP 811, B.8).
        Assert.Equal([20.0, 100.0], read.Series[0].Values);
        Assert.Equal("°C", read.Report.Channels[0].Unit);
    }

    [Theory]
    [InlineData("03/04/26 10:00", "13/04/26 10:00", 3)]
    [InlineData("03/04/26 10:00", "03/14/26 10:00", 4)]
    public void Day_or_month_is_told_by_a_part_over_twelve(string first, string second, int day)
    {
        var read = Read($"Time,Temp\n{first},21.5\n{second},21.6\n", "UTC");
        Assert.Equal(day, read.Report.From.Day);
        Assert.DoesNotContain(read.Report.Quirks, q => q.Contains("two ways", StringComparison.Ordinal));
    }

    [Fact]
    public void Day_or_month_is_told_by_the_order_of_the_rows()
    {
        // Every two hours from 11 to 12 March: as month and day the rows would leap by a month.
        var rows = Enumerable
            .Range(0, 20)
            .Select(i => Utc(2026, 3, 11).AddHours(2 * i))
            .Select((t, i) => FormattableString.Invariant($"{t:dd/MM/yyyy HH:mm},{20 + i}"));
        var read = Read("Time,Temp\n" + string.Join('\n', rows), "UTC");
        Assert.Equal(Utc(2026, 3, 11), read.Report.From);
        Assert.DoesNotContain(read.Report.Quirks, q => q.Contains("two ways", StringComparison.Ordinal));
    }

    [Fact]
    public void A_date_that_can_be_read_two_ways_is_said()
    {
        var read = Read("Time,Temp\n03/04/2026 10:00,21.5\n03/04/2026 10:10,21.6\n", "UTC");
        Assert.Contains(read.Report.Quirks, q => q.Contains("two ways", StringComparison.Ordinal));
    }

    [Fact]
    public void Places_come_from_columns_and_from_the_name_of_the_file()
    {
        var read = Read(
            "Time,A3 Temperature,A3 RH,Room temp\n2026-02-15 00:00,21,82,20\n2026-02-15 00:10,21,82,20\n"
        );
        Assert.Equal(["A3", "A3", "room"], read.Report.Channels.Select(c => c.Place));
        Assert.Equal(
            "C5",
            Read("Time,Temp\n2026-02-15 00:00,21\n2026-02-15 00:10,21\n", name: "c5 march.csv")
                .Series[0]
                .Place
        );
    }

    [Fact]
    public void Rows_from_the_newest_to_the_oldest_are_turned_round()
    {
        var read = Read("Time,Temp\n2026-02-15 00:20,3\n2026-02-15 00:10,2\n2026-02-15 00:00,1\n", "UTC");
        Assert.Equal([1.0, 2.0, 3.0], read.Series[0].Values);
    }

    [Fact]
    public void Missing_values_and_lines_of_events_are_passed_over()
    {
        var read = Read(
            "Time,Temp,RH\n2026-02-15 00:00,21,82\n2026-02-15 00:10,---,83\n"
                + "2026-02-15 00:15,Memory full\n2026-02-15 00:20,22,\n2026-02-15 00:3",
            "UTC"
        );
        Assert.Equal([21.0, double.NaN, 22.0], read.Series[0].Values);
        Assert.Equal([82.0, 83.0, double.NaN], read.Series[1].Values);
        Assert.Contains("1 line without readings was passed over.", read.Report.Quirks);
        Assert.Contains("The last line is cut off and was passed over.", read.Report.Quirks);
    }

    [Theory]
    [InlineData("", 1, "empty")]
    [InlineData("a letter to nobody\nin particular\n", 1, "no row has a time")]
    [InlineData(
        "Time,Temp\n2026-02-15 00:00,21\n2026-02-15 00:10,2x1\n2026-02-15 00:20,21\n",
        3,
        "\"2x1\" is no number"
    )]
    [InlineData("Time,Temp\n2026-02-15 00:00,21\n2026-02-30 00:10,21\n2026-02-15 00:20,21\n", 3, "no date")]
    [InlineData("Time,Temp\n2026-02-15 00:00,21\nsoon,21\n2026-02-15 00:20,21\n", 3, "\"soon\" is no time")]
    public void What_cannot_be_read_is_said_with_its_line(string text, int line, string says)
    {
        var read = LoggerFile.Read("x.csv", Encoding.UTF8.GetBytes(text), new LoggerWish());
        var fault = Assert.Single(read.Faults);
        Assert.Null(read.Value);
        Assert.Equal(("x.csv", line), (fault.File, fault.Line));
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
        Assert.NotEmpty(fault.Expected);
    }

    [Fact]
    public void What_somebody_fixed_once_is_used_for_the_next_file_with_that_head()
    {
        const string rows = "When,P1,P2\n03/04/2026 10:00,70,20\n03/04/2026 10:10,71,20\n";
        var first = Read(rows, "UTC");
        var style = new LoggerStyle
        {
            Fingerprint = first.Report.Fingerprint,
            Dates = DateOrder.MonthDayYear,
            Zone = "Europe/Berlin",
            Place = "B7",
            Columns =
            [
                new()
                {
                    Index = 1,
                    Quantity = LogQuantity.Temperature,
                    Unit = "°F",
                },
                new()
                {
                    Index = 2,
                    Quantity = LogQuantity.Humidity,
                    IsRead = false,
                },
            ],
        };
        var next = rows.Replace("10:", "11:", StringComparison.Ordinal);
        var read = LoggerFile
            .Read("n.csv", Encoding.UTF8.GetBytes(next), new LoggerWish { Styles = [style] })
            .Value!;
        var series = Assert.Single(read.Series);
        Assert.Equal("B7", series.Place);
        // (70 - 32) / 1.8 = 21.1; 4 March in Berlin is winter time.
        Assert.Equal(21.111, series.Values[0], 3);
        Assert.Equal(Utc(2026, 3, 4, 10), read.Report.From);
    }

    [Fact]
    public void Random_bytes_and_cut_files_never_throw()
    {
        var whole = Encoding.UTF8.GetBytes(
            "Time;Temp;RH\n15.02.2026 00:00;21,5;82\n15.02.2026 00:10;21,6;83\n"
        );
        var random = new Random(7);
        for (var i = 0; i < 400; i++)
        {
            var bytes = (byte[])whole.Clone();
            if (i % 2 == 0)
            {
                bytes = bytes[..random.Next(bytes.Length)];
            }

            for (var k = 0; k < i % 7 && bytes.Length > 0; k++)
            {
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            }

            if (i % 5 == 0)
            {
                bytes = new byte[random.Next(300)];
                random.NextBytes(bytes);
            }

            var read = LoggerFile.Read("x", bytes, new LoggerWish { Zone = "Europe/Berlin" });
            Assert.True(read.IsGood || read.Faults.Count > 0);
        }
    }
}
