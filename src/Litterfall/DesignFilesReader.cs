using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Designs;
using Litterfall.Domain.Photometry;

namespace Litterfall.App;

/// <summary>Reads the files that a design names, each seen from the design file.</summary>
internal sealed class DesignFilesReader
{
    private const int LargestLog = 64 * 1024 * 1024;
    private readonly string path;
    private readonly DesignDocument document;
    private readonly List<TextFault> faults = [];

    private DesignFilesReader(string path, DesignDocument document) =>
        (this.path, this.document) = (path, document);

    /// <summary>All files, or what is wrong with them.</summary>
    /// <param name="path">The design file.</param>
    /// <param name="document">What it says.</param>
    public static Reading<DesignFiles> Read(string path, DesignDocument document)
    {
        var reader = new DesignFilesReader(path, document);
        var files = reader.Read();
        return reader.faults.Count == 0 ? new(files, []) : new(null, [.. reader.faults]);
    }

    private DesignFiles Read()
    {
        var log = One(document.Design.Room?.Log, "room.log", "a logger file", LargestLog, Text(RoomLog.Read));
        var lamps = ImmutableDictionary.CreateBuilder<string, LampFile>(StringComparer.Ordinal);
        var spectra = ImmutableDictionary.CreateBuilder<string, SpectrumTable>(StringComparer.Ordinal);
        for (var i = 0; i < document.Design.Lamps.Count; i++)
        {
            var (lamp, at) = (document.Design.Lamps[i], FormattableString.Invariant($"lamps[{i}]"));
            if (
                lamp.File is { } file
                && One(file, $"{at}.file", "a luminaire file", LampFile.LargestFile, (name, bytes) =>
                    LampFile.Read(name, bytes)
                )
                    is { } measured
            )
            {
                lamps[file] = measured;
            }

            if (
                lamp.Spectrum is { } spectrum
                && One(
                    spectrum,
                    $"{at}.spectrum",
                    "a spectrum file",
                    SpectrumTable.LargestFile,
                    Text(SpectrumTable.Read)
                )
                    is { } table
            )
            {
                spectra[spectrum] = table;
            }
        }

        return new DesignFiles
        {
            RoomLog = log,
            Lamps = lamps.ToImmutable(),
            Spectra = spectra.ToImmutable(),
        };
    }

    private static Func<string, byte[], Reading<T>> Text<T>(Func<string, string, Reading<T>> read)
        where T : class => (name, bytes) => read(name, System.Text.Encoding.UTF8.GetString(bytes));

    private T? One<T>(
        string? name,
        string key,
        string what,
        int largest,
        Func<string, byte[], Reading<T>> read
    )
        where T : class
    {
        if (name is null || Shop.Beside(path, name) is not { } file)
        {
            return null;
        }

        if (!File.Exists(file))
        {
            faults.Add(
                document.Fault(key, $"there is no file '{name}'", $"{what} seen from the design file")
            );
            return null;
        }

        var bytes = Shop.Bytes(file, largest);
        if (bytes.Length > largest)
        {
            faults.Add(
                document.Fault(key, $"'{name}' is too large", $"{what} of at most {largest / 1024 / 1024} MB")
            );
            return null;
        }

        var reading = read(name, bytes);
        faults.AddRange(reading.Faults);
        return reading.Value;
    }
}
