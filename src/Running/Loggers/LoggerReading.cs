using System.Collections.Immutable;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers;

/// <summary>What is known beforehand about a file.</summary>
public sealed record LoggerWish
{
    /// <summary>Zone of the times where the file names none: "Europe/Berlin"; empty where nobody
    /// said.</summary>
    public string Zone { get; init; } = "";

    /// <summary>How files with this head are read, by fingerprint; empty where nobody fixed any.</summary>
    public Seq<LoggerStyle> Styles { get; init; } = [];
}

/// <summary>A column of the file as the preview shows it.</summary>
/// <param name="Index">Its number, the first is 0.</param>
/// <param name="Head">Its head as written; empty for none.</param>
/// <param name="Channel">What is read from it; null where it is left out.</param>
/// <param name="Unit">Unit in the file; empty for an unknown one.</param>
/// <param name="IsTime">True where it tells the time.</param>
public sealed record ShownColumn(int Index, string Head, LogChannel? Channel, string Unit, bool IsTime);

/// <summary>A logger file, read.</summary>
public sealed record LoggerReading
{
    /// <summary>What was read, in words and numbers.</summary>
    public required LoggerReport Report { get; init; }

    /// <summary>Readings by channel, as many as the report has channels, in its order.</summary>
    public required ImmutableArray<LogSeries> Series { get; init; }

    /// <summary>Columns of the file.</summary>
    public required Seq<ShownColumn> Columns { get; init; }

    /// <summary>First rows, cell by cell.</summary>
    public required Seq<Seq<string>> FirstRows { get; init; }

    /// <summary>Order in which the dates were read.</summary>
    public required DateOrder Dates { get; init; }

    /// <summary>True where no unit is given and the temperatures were taken as °F.</summary>
    public bool IsFahrenheitGuessed { get; init; }

    /// <summary>What the report says then.</summary>
    public const string FahrenheitGuess =
        "No unit is given; the temperatures can only be °F and were turned into °C.";
}
