using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Tanks;

/// <summary>Order of day, month and year in a date of digits.</summary>
public enum DateOrder
{
    /// <summary>Guessed over the whole file.</summary>
    Guessed,

    /// <summary>Year, month, day.</summary>
    YearMonthDay,

    /// <summary>Day, month, year.</summary>
    DayMonthYear,

    /// <summary>Month, day, year.</summary>
    MonthDayYear,
}

/// <summary>What a column of a kind of file is, as somebody fixed it.</summary>
public sealed record LoggerColumn
{
    /// <summary>Number of the column in the file, the first is 0.</summary>
    public required int Index { get; init; }

    /// <summary>False where the column is left out.</summary>
    public bool IsRead { get; init; } = true;

    /// <summary>What it measures.</summary>
    public required LogQuantity Quantity { get; init; }

    /// <summary>Unit in the file: "°F"; empty where it is the usual one.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Where its sensor hangs; empty for the place of the file.</summary>
    public string Place { get; init; } = "";
}

/// <summary>How files with one head are read; fixed once, used for each that follows.</summary>
public sealed record LoggerStyle
{
    /// <summary>Fingerprint of the head; its key.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>Columns that were fixed; others are guessed.</summary>
    public Seq<LoggerColumn> Columns { get; init; } = [];

    /// <summary>Zone of the times in the file; empty for that of the room.</summary>
    public string Zone { get; init; } = "";

    /// <summary>Order of the dates.</summary>
    public DateOrder Dates { get; init; } = DateOrder.Guessed;

    /// <summary>Where the sensor hangs; empty where the name of each file says so.</summary>
    public string Place { get; init; } = "";
}
