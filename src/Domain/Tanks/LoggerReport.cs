using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Tanks;

/// <summary>A span without readings that was longer than the logger's own interval.</summary>
/// <param name="From">Last reading before it, UTC.</param>
/// <param name="To">First reading after it, UTC.</param>
public sealed record LogGap(DateTime From, DateTime To);

/// <summary>A span of one channel that carries a mark.</summary>
/// <param name="Kind">The mark, one of them.</param>
/// <param name="Channel">Name of the channel.</param>
/// <param name="From">First reading of it, UTC.</param>
/// <param name="To">Last reading of it, UTC.</param>
public sealed record LogFlag(LogMarks Kind, string Channel, DateTime From, DateTime To);

/// <summary>A column of a logger file that holds readings.</summary>
/// <param name="Name">Its name in the file, or a number where it has none.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Unit">Unit of the values as they are kept: °C, %, hPa, or the file's own.</param>
/// <param name="Place">Where the sensor hangs: "A3", "room"; empty where nothing says so.</param>
public sealed record LogChannel(string Name, LogQuantity Quantity, string Unit, string Place);

/// <summary>What was read of a logger file, in words and numbers; kept beside its readings.</summary>
public sealed record LoggerReport
{
    /// <summary>Name of the file.</summary>
    public required string Name { get; init; }

    /// <summary>How the file is written, in words.</summary>
    public required string Style { get; init; }

    /// <summary>Zone its times were read in.</summary>
    public required string Zone { get; init; }

    /// <summary>Fingerprint of its head, by which the next file of this kind is known.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>Rows with readings.</summary>
    public required int Rows { get; init; }

    /// <summary>Rows that were kept.</summary>
    public required int Kept { get; init; }

    /// <summary>Rows that stood there already, time and values alike.</summary>
    public required int Duplicates { get; init; }

    /// <summary>First reading, UTC.</summary>
    public required DateTime From { get; init; }

    /// <summary>Last reading, UTC.</summary>
    public required DateTime To { get; init; }

    /// <summary>Columns with readings.</summary>
    public Seq<LogChannel> Channels { get; init; } = [];

    /// <summary>Spans without readings.</summary>
    public Seq<LogGap> Gaps { get; init; } = [];

    /// <summary>Spans that stand twice.</summary>
    public Seq<LogGap> Overlaps { get; init; } = [];

    /// <summary>Spans with a mark.</summary>
    public Seq<LogFlag> Flags { get; init; } = [];

    /// <summary>What is unusual about the file, one sentence each.</summary>
    public Seq<string> Quirks { get; init; } = [];
}
