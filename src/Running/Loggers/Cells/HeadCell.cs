using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers.Cells;

/// <summary>What the name of a column says that it is.</summary>
public enum HeadRole
{
    /// <summary>Nothing that is known.</summary>
    Unknown,

    /// <summary>Date, time, or both.</summary>
    Time,

    /// <summary>Readings.</summary>
    Reading,

    /// <summary>A running number, a serial number, a state: no reading.</summary>
    Besides,
}

/// <summary>The head of a column, taken apart.</summary>
/// <param name="Name">Its name without the unit.</param>
/// <param name="Role">What it is.</param>
/// <param name="Quantity">What its readings measure.</param>
/// <param name="Unit">The unit it names; null for none.</param>
public sealed record HeadCell(string Name, HeadRole Role, LogQuantity Quantity, UnitWord? Unit)
{
    private static readonly string[] Dew =
    [
        "dew",
        "taupunkt",
        "rosée",
        "rosee",
        "rocío",
        "rocio",
        "rugiada",
        "orvalho",
        "dauw",
        "dagg",
        "dugpunkt",
        "duggpunkt",
        "kastepiste",
        "rosy",
        "rosn",
        "росы",
        "露点",
        "露點",
        "harmatpont",
        "çiy",
    ];

    private static readonly string[] Damp =
    [
        "humid",
        "hygro",
        "feucht",
        "humed",
        "umid",
        "vocht",
        "fukt",
        "fugt",
        "kosteus",
        "wilgot",
        "vlhk",
        "влаж",
        "湿",
        "濕",
        "páratart",
        "luftf",
        "moisture",
    ];

    private static readonly string[] DampTokens =
    [
        "rh",
        "rf",
        "hr",
        "ur",
        "rv",
        "hum",
        "h",
        "%",
        "%rh",
        "rh%",
        "nem",
        "relh",
        "rhum",
        "lf",
    ];

    private static readonly string[] Warm =
    [
        "temp",
        "lämpö",
        "teplot",
        "hőmér",
        "sıcak",
        "темп",
        "温度",
        "溫度",
        "气温",
        "氣溫",
        "thermo",
        "celsius",
        "fahrenheit",
        "probe",
    ];

    private static readonly string[] WarmTokens = ["t", "ta", "tair", "c", "°c", "°f", "t°", "f"];

    private static readonly string[] Press =
    [
        "press",
        "druck",
        "presión",
        "presion",
        "tryck",
        "tryk",
        "trykk",
        "ciśn",
        "давл",
        "气压",
        "氣壓",
        "tlak",
        "paine",
        "basınç",
        "baro",
        "légnyom",
    ];

    private static readonly string[] Bright =
    [
        "light",
        "licht",
        "lumi",
        "illumin",
        "lux",
        "beleucht",
        "светл",
        "освещ",
        "光",
        "par",
        "ppfd",
        "światł",
        "osvětl",
        "ljus",
        "lys",
        "valo",
        "luz",
        "luce",
        "luminos",
        "helligkeit",
    ];

    private static readonly string[] BrightTokens = ["par", "lys", "luz", "luce", "valo", "lx"];

    private static readonly string[] Clock =
    [
        "time",
        "date",
        "zeit",
        "datum",
        "heure",
        "fecha",
        "tijd",
        "dato",
        "datę",
        "дата",
        "время",
        "日期",
        "时间",
        "時間",
        "日時",
        "時刻",
        "timestamp",
        "epoch",
        "unix",
        "päivä",
        "kellon",
        "czas",
        "datetime",
        "tarih",
        "zaman",
        "dátum",
        "horod",
        "klokke",
        "tidspunkt",
    ];

    private static readonly string[] ClockTokens =
    [
        "tid",
        "hora",
        "ora",
        "data",
        "temps",
        "tempo",
        "kl",
        "čas",
        "cas",
        "aika",
        "jour",
        "giorno",
        "dag",
        "saat",
        "utc",
        "gmt",
        "idő",
        "klock",
    ];

    private static readonly string[] Beside =
    [
        "serial",
        "index",
        "record",
        "sample",
        "battery",
        "batterie",
        "status",
        "alarm",
        "event",
        "marker",
        "logger",
        "device",
        "host",
        "rssi",
        "signal",
        "comment",
        "remark",
        "bemerk",
        "kommentar",
        "messung",
        "lfd",
        "laufende",
    ];

    private static readonly string[] BesideTokens =
    [
        "no",
        "nr",
        "nº",
        "n°",
        "#",
        "id",
        "sn",
        "s/n",
        "num",
        "number",
        "rec",
        "row",
        "flag",
        "state",
        "batt",
        "bat",
        "count",
        "seq",
        "point",
        "mark",
    ];

    /// <summary>Takes the head of a column apart.</summary>
    public static HeadCell Read(string text)
    {
        var (name, unit) = Parted(text);
        var lower = name.ToLowerInvariant();
        var tokens = lower.Split(
            [' ', '_', '-', '.', ',', '/', ':', '(', ')', '[', ']', '*'],
            StringSplitOptions.RemoveEmptyEntries
        );
        if (Has(lower, Dew))
        {
            return new(name, HeadRole.Reading, LogQuantity.DewPoint, AsWarm(unit, tokens));
        }

        // "temps" is time in French, "température" is not.
        if (!Has(lower, Warm, except: ClockTokens) && IsAny(lower, tokens, Clock, ClockTokens))
        {
            return new(name, HeadRole.Time, LogQuantity.Other, null);
        }

        if (IsAny(lower, tokens, Beside, BesideTokens) && unit is null)
        {
            return new(name, HeadRole.Besides, LogQuantity.Other, unit);
        }

        return Reading(name, lower, tokens, unit);
    }

    private static HeadCell Reading(string name, string lower, string[] tokens, UnitWord? unit)
    {
        LogQuantity? quantity =
            IsAny(lower, tokens, Damp, DampTokens) ? LogQuantity.Humidity
            : IsAny(lower, tokens, Press, []) ? LogQuantity.Pressure
            : IsAny(lower, tokens, Bright, BrightTokens) ? LogQuantity.Light
            : IsAny(lower, tokens, Warm, WarmTokens) || tokens.Any(IsNumbered) ? LogQuantity.Temperature
            : unit?.Quantity;
        if (quantity is null)
        {
            return new(name, HeadRole.Unknown, LogQuantity.Other, unit);
        }

        var fitting =
            quantity == LogQuantity.Temperature ? AsWarm(unit, tokens)
            : unit?.Quantity == quantity || quantity == LogQuantity.Other ? unit
            : null;
        return new(name, HeadRole.Reading, quantity.Value, fitting);
    }

    /// <summary>"T1", "t12".</summary>
    private static bool IsNumbered(string token) =>
        token.Length is 2 or 3 && token[0] == 't' && token.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0;

    private static UnitWord? AsWarm(UnitWord? unit, string[] tokens) =>
        unit?.Quantity == LogQuantity.Temperature ? unit
        : tokens is [.., "f"] or [.., "fahrenheit"] ? UnitWord.Fahrenheit
        : tokens is [.., "c"] or [.., "celsius"] ? UnitWord.Celsius
        : null;

    private static bool IsAny(string lower, string[] tokens, string[] parts, string[] whole) =>
        tokens.Any(t => whole.Contains(t, StringComparer.Ordinal))
        || whole.Contains(lower, StringComparer.Ordinal)
        || Has(lower, parts);

    private static bool Has(string lower, string[] parts, string[]? except = null) =>
        Array.Exists(parts, p => lower.Contains(p, StringComparison.Ordinal))
        && (except is null || !except.Contains(lower, StringComparer.Ordinal));

    /// <summary>Cuts "(°C)", "[°C]", "/°C", ", °C" or " °C" off the name.</summary>
    private static (string Name, UnitWord? Unit) Parted(string text)
    {
        var clean = text.Trim().Trim('"').Trim();
        foreach (var (open, close) in ((char, char)[])[('(', ')'), ('[', ']')])
        {
            var from = clean.IndexOf(open, StringComparison.Ordinal);
            while (from >= 0)
            {
                var to = clean.IndexOf(close, from + 1);
                var inner = clean.AsSpan((from + 1)..(to < 0 ? clean.Length : to));
                if (UnitWord.Find(inner) is { } found)
                {
                    var rest = clean[..from] + (to < 0 ? "" : clean[(to + 1)..]);
                    return (Named(rest, clean), found);
                }

                from = to < 0 ? -1 : clean.IndexOf(open, to);
            }
        }

        var at = clean.LastIndexOfAny([' ', ',', '/', '_']);
        while (at > 0)
        {
            var tail = clean.AsSpan(at + 1);
            if (tail.Length > 0 && UnitWord.Find(tail) is { } unit)
            {
                // "Sensor F" or "Box C" is a name, not a unit.
                var isLetter = tail.Length == 1 && char.IsAsciiLetter(tail[0]);
                return isLetter ? (clean, null) : (Named(clean[..at], clean), unit);
            }

            at = clean.LastIndexOfAny([',', '/'], at - 1);
        }

        return UnitWord.Find(clean) is { } whole && !(clean.Length == 1 && char.IsAsciiLetter(clean[0]))
            ? (clean, whole)
            : (clean, null);
    }

    private static string Named(string rest, string whole)
    {
        var name = rest.Trim().Trim(',', '/', '_', '-', ':').Trim();
        return name.Length == 0 ? whole : name;
    }
}
