using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Web.Tanks.Rounds;

/// <summary>Readings of temperature that advice on a room is made from; loggers add theirs here.</summary>
public sealed class RoomReadings
{
    /// <summary>Reads the last days of every logger; none where there is none.</summary>
    public Func<CancellationToken, Task<ImmutableArray<LogSeries>>> Source { get; set; } =
        _ => Task.FromResult(ImmutableArray<LogSeries>.Empty);
}
