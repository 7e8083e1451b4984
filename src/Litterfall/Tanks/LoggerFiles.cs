using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Laboratory.Cases;
using Litterfall.Running.Loggers;

namespace Litterfall.App.Tanks;

/// <summary>Logger files that a case names.</summary>
internal static class LoggerFiles
{
    private const int LargestFile = 256 * 1024 * 1024;

    /// <summary>Channels of a file, UTC; a file without a zone is taken by its own clock.</summary>
    /// <exception cref="IOException">It cannot be read; where, and what was expected.</exception>
    public static ImmutableArray<LogSeries> Series(string path)
    {
        var bytes = BoundedFile.Bytes(path, LargestFile);
        var reading = LoggerFile.Read(Path.GetFileName(path), bytes, new LoggerWish());
        return reading.Value?.Series ?? throw new IOException(reading.Faults[0].ToString());
    }
}
