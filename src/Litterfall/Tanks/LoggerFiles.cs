using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.App.Tanks;

/// <summary>Logger files that a case names.</summary>
internal static class LoggerFiles
{
    /// <summary>Channels of a file, times by the clock it was written with.</summary>
    public static ImmutableArray<LogSeries> Series(string path) =>
        throw new FileNotFoundException($"No reader of {path} yet.");
}
