using System.Collections.Immutable;
using System.Text;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Photometry;
using Litterfall.Physics.Light;
using Litterfall.UnitTests.House;
using Litterfall.Web.Library;

namespace Litterfall.FuzzTests;

/// <summary>
/// Every reader of the house: what it takes must be finite, and read again as it is written.
/// </summary>
internal static class Readers
{
    private static readonly TradeCatalog Catalog = Shop.Embedded();

    /// <summary>All of them.</summary>
    public static ImmutableArray<Reader> All { get; } =
    [
        new("designs", [.. Files("samples", ".viv.yaml"), .. Corpus("designs")], Design) { Share = 3 },
        new("lamp-files", Corpus("lamp-files"), Lamp) { Share = 3 },
        new("spectra", Corpus("spectra"), Spectrum),
        new("room-logs", Corpus("room-logs"), RoomLog) { Share = 2 },
        new("own-entries", [.. Files("samples/lantern-ditch", ".json"), .. Corpus("own-entries")], Entries)
        {
            Share = 2,
        },
        new("workshops", [.. Files("samples/lantern-ditch", ".json"), .. Corpus("workshops")], Workshop),
        .. LabReaders.All,
        .. TradeReaders.All,
        .. DispatchReaders.All,
    ];

    /// <summary>What is in the corpus of a reader.</summary>
    /// <param name="name">Name of the reader.</param>
    public static ImmutableArray<byte[]> Corpus(string name) => Files($"tests/Fuzz/Corpus/{name}", "");

    /// <summary>A refusal says where, what and what was expected; null where these do.</summary>
    /// <param name="faults">The faults of a reading.</param>
    public static string? Told(IReadOnlyCollection<TextFault> faults) =>
        faults.Count == 0
            ? "neither a value nor a fault"
            : faults
                .Where(f => f.Line < 1 || f.Column < 1 || f.Message.Length == 0 || f.Expected.Length == 0)
                .Select(f => $"a fault that does not say where and what: {f}")
                .FirstOrDefault();

    /// <summary>Files of a folder of the checkout with an ending.</summary>
    public static ImmutableArray<byte[]> Files(string folder, string ending) =>
        [.. SourceTree.Files([folder], ending).Select(File.ReadAllBytes)];

    private static string? Design(byte[] input)
    {
        var reading = DesignReader.Read("design", input);
        if (!reading.IsGood)
        {
            return Told(reading.Faults);
        }

        var design = reading.Value!.Design;
        var again = DesignReader.Read("written", DesignWriter.Write(design));
        if (!again.IsGood || !again.Value!.Design.Equals(design))
        {
            return $"written and read again it is another: {string.Join('\n', again.Faults)}";
        }

        var whole = DesignChecker.Check(reading.Value, Catalog);
        return whole.IsGood ? FiniteNumbers.Broken(design) : Told(whole.Faults);
    }

    private static string? Lamp(byte[] input)
    {
        var reading = LampFile.Read("lamp", input);
        if (!reading.IsGood)
        {
            return Told(reading.Faults);
        }

        var lamps = PlacedLamp.Measured(reading.Value!, new Point3(0.3, 0.3, 0.5), 30);
        return FiniteNumbers.Broken(reading.Value)
            ?? (reading.Value!.Candela.Any(c => c < 0) ? "a negative intensity" : null)
            ?? lamps
                .Select(l => double.IsFinite(l.Lumens) && l.Lumens >= 0 ? null : $"it sends {l.Lumens} lm")
                .FirstOrDefault(trouble => trouble is not null);
    }

    private static string? Spectrum(byte[] input)
    {
        var reading = SpectrumTable.Read("spectrum", Encoding.UTF8.GetString(input));
        if (!reading.IsGood)
        {
            return Told(reading.Faults);
        }

        var factor = Physics.Light.Spectrum.MicromolesPerKilolumen(
            reading.Value!.Nanometers.AsSpan(),
            reading.Value.Values.AsSpan()
        );
        return FiniteNumbers.Broken(reading.Value)
            ?? (double.IsFinite(factor) ? null : $"{factor} µmol/s per klm");
    }

    private static string? RoomLog(byte[] input)
    {
        var reading = Domain.Checking.RoomLog.Read("log", Encoding.UTF8.GetString(input));
        if (!reading.IsGood)
        {
            return Told(reading.Faults);
        }

        var rows = reading.Value!.Readings;
        _ = reading.Value.Oddities().ToList();
        return rows.Any(r => r.Celsius is not (>= -15 and <= 60) || r.Humidity is not (>= 0 and <= 1))
                ? "a reading out of its range"
            : rows.Zip(rows.Skip(1)).Any(pair => pair.First.Time >= pair.Second.Time)
                ? "times that do not rise"
            : null;
    }

    private static string? Entries(byte[] input)
    {
        var text = Encoding.UTF8.GetString(input);
        if (CatalogReader.ReadKey("entry", text) is { IsGood: false } key && Told(key.Faults) is { } untold)
        {
            return untold;
        }

        var faults = new List<TextFault>();
        var entries = CatalogReader.ReadEntries(new CatalogFile("own.json", text), true, faults);
        if (faults.Count > 0)
        {
            return Told(faults);
        }

        return FiniteNumbers.Broken(entries.SelectMany(e => e.Values))
            ?? entries.Select(Again).FirstOrDefault(trouble => trouble is not null)
            ?? Met(new WorkshopFolder { Name = "own", Entries = entries });
    }

    /// <summary>Written and read again an entry is the same.</summary>
    private static string? Again(CatalogEntry entry)
    {
        var faults = new List<TextFault>();
        var written = $"[{OwnEntry.Json(entry)}]";
        var again = CatalogReader.ReadEntries(new CatalogFile("own.json", written), true, faults);
        if (again is not [var other])
        {
            return $"written it does not read again: {string.Join('\n', faults)}";
        }

        var same =
            other.Key == entry.Key
            && other.Name == entry.Name
            && other
                .Values.Select(v => (v.Name, v.Number, v.Text, v.Unit))
                .SequenceEqual(entry.Values.Select(v => (v.Name, v.Number, v.Text, v.Unit)))
            && other.Parts.SequenceEqual(entry.Parts);
        return same ? null : "written and read again it is another";
    }

    private static string? Workshop(byte[] input)
    {
        string[] names = ["prices.json", "stock.json", "workshop.json", "sources.json"];
        foreach (var name in names)
        {
            var file = new CatalogFile(name, Encoding.UTF8.GetString(input));
            var reading = WorkshopReader.Read("own", [file]);
            var trouble = reading.IsGood
                ? FiniteNumbers.Broken(reading.Value) ?? Met(reading.Value!)
                : Told(reading.Faults);
            if (trouble is not null)
            {
                return $"{name}: {trouble}";
            }
        }

        return null;
    }

    private static string? Met(WorkshopFolder workshop)
    {
        var faults = WorkshopReader.Unknown(Catalog.With(workshop), "own");
        return faults.Count == 0 ? null : Told(faults);
    }
}
