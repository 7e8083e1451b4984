using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Photometry;
using Litterfall.Domain.Trees;

namespace Litterfall.Domain.Checking;

/// <summary>Reads the files that a design names, each seen from the design file.</summary>
public sealed class DesignFilesReader
{
    private const int LargestLog = 64 * 1024 * 1024;
    private readonly Func<string, int, byte[]?> find;
    private readonly DesignDocument document;
    private readonly List<TextFault> faults = [];

    private DesignFilesReader(DesignDocument document, Func<string, int, byte[]?> find) =>
        (this.document, this.find) = (document, find);

    /// <summary>Names of all files a design names.</summary>
    /// <param name="design">The design.</param>
    public static IEnumerable<string> Names(Design design) =>
        new[] { design.Room?.Log }
            .Concat(design.Lamps.SelectMany(l => new[] { l.File, l.Spectrum }))
            .OfType<string>()
            .Distinct(StringComparer.Ordinal);

    /// <summary>All files, or what is wrong with them.</summary>
    /// <param name="document">The design.</param>
    /// <param name="find">
    /// Bytes of a file by its name in the design, at most one more than the given number; null where there is
    /// none.
    /// </param>
    public static Reading<DesignFiles> Read(DesignDocument document, Func<string, int, byte[]?> find)
    {
        var reader = new DesignFilesReader(document, find);
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
        where T : class => (name, bytes) => read(name, FileText.Decode(bytes));

    private T? One<T>(
        string? name,
        string key,
        string what,
        int largest,
        Func<string, byte[], Reading<T>> read
    )
        where T : class
    {
        if (name is null)
        {
            return null;
        }

        if (find(name, largest) is not { } bytes)
        {
            faults.Add(
                document.Fault(key, $"there is no file '{name}'", $"{what} seen from the design file")
            );
            return null;
        }

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
