using System.Collections.Immutable;
using System.Text;
using Litterfall.App.Files;
using Litterfall.App.Shipping;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Domain.Catalog;
using Litterfall.Laboratory.Cases;

namespace Litterfall.FuzzTests;

/// <summary>Cases of parcels and forecast files; what is read is finite and in order.</summary>
internal static class DispatchReaders
{
    private static readonly TradeCatalog Catalog = Shop.Embedded();

    /// <summary>All of them.</summary>
    public static ImmutableArray<Reader> All { get; } =
    [
        new(
            "ship-cases",
            [.. Readers.Files("samples/dispatch", ".json"), .. Readers.Corpus("ship-cases")],
            Case
        ),
        new("forecast-files", Forecasts, Forecast),
    ];

    private static ImmutableArray<byte[]> Forecasts =>
        [
            .. new[]
            {
                "Datum;Temp (°C)\n14.07.2026 10:00;21,5\n14.07.2026 11:00;22,75\n",
                "time,temp F\n7/14/2026 1:00 PM,86\n7/14/2026 2:00 PM,88.7\n",
                """{"hourly_units":{"t":"°C"},"hourly":{"time":["20260714T10Z","20260714T11Z"],"t":[2,1]}}""",
                """[{"dt":1784023200,"main":{"temp":293.65}},{"dt":1784026800,"main":{"temp":294.15}}]""",
                """[["2026-07-14T10:00Z",20.5],["2026-07-14T11:00Z",21]]""",
            }.Select(Encoding.UTF8.GetBytes),
            .. Readers.Corpus("forecast-files"),
        ];

    private static string? Case(byte[] input)
    {
        var reading = CaseFile.Read("case.json", input, new ShipForm("case.json", () => Catalog).Read);
        return reading.IsGood ? null : Readers.Told(reading.Faults);
    }

    private static string? Forecast(byte[] input)
    {
        var reading = ForecastFile.Read("forecast", input, new() { Zone = "Europe/Berlin" });
        if (reading.Value is not { } read)
        {
            return Readers.Told(reading.Faults);
        }

        return read.Hours.Any(h => !double.IsFinite(h.Celsius)) ? "an hour is no number"
            : read.Hours.Zip(read.Hours.Skip(1)).Any(p => p.First.At > p.Second.At) ? "hours out of order"
            : null;
    }
}
