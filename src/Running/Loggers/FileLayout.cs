using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Cells;

namespace Litterfall.Running.Loggers;

/// <summary>How the time of a row is told.</summary>
internal enum TimeForm
{
    /// <summary>As a date and a time.</summary>
    Written,

    /// <summary>Seconds since 1970.</summary>
    Seconds,

    /// <summary>Thousandths of a second since 1970.</summary>
    Thousandths,
}

/// <summary>Which cells tell the time.</summary>
/// <param name="Date">Cell with the date, or with both.</param>
/// <param name="Clock">Cell with the time; -1 where it stands beside the date in one cell.</param>
/// <param name="Form">How it is told.</param>
internal readonly record struct TimeCells(int Date, int Clock, TimeForm Form);

/// <summary>A column of readings.</summary>
internal sealed record ReadColumn
{
    /// <summary>Its number.</summary>
    public required int Index { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>What it measures.</summary>
    public required LogQuantity Quantity { get; init; }

    /// <summary>Unit in the file; null for the usual one, or an unknown one.</summary>
    public UnitWord? Unit { get; init; }

    /// <summary>Where its sensor hangs.</summary>
    public string Place { get; init; } = "";

    /// <summary>Unit of the values as they are kept.</summary>
    public string KeptUnit =>
        Unit?.Kept
        ?? Quantity switch
        {
            LogQuantity.Temperature or LogQuantity.DewPoint => "°C",
            LogQuantity.Humidity => "%",
            LogQuantity.Pressure => "hPa",
            LogQuantity.Light => "lx",
            _ => "",
        };
}

/// <summary>How a file is laid out.</summary>
internal sealed record FileLayout
{
    /// <summary>What stands between cells.</summary>
    public required CellMark Mark { get; init; }

    /// <summary>Line of the first row of readings.</summary>
    public required int First { get; init; }

    /// <summary>Line of the head; -1 for none.</summary>
    public required int Head { get; init; }

    /// <summary>Line with units under the head; -1 for none.</summary>
    public required int Units { get; init; }

    /// <summary>Cells of the time.</summary>
    public required TimeCells Time { get; init; }

    /// <summary>Heads of the columns by number; empty for none.</summary>
    public required IReadOnlyList<string> Heads { get; init; }

    /// <summary>Columns of readings.</summary>
    public required IReadOnlyList<ReadColumn> Columns { get; init; }

    /// <summary>Columns with a letter for the state of the logger.</summary>
    public required IReadOnlyList<int> States { get; init; }

    /// <summary>Numbers have a decimal comma.</summary>
    public required bool HasComma { get; init; }

    /// <summary>Temperatures are °F because they can be nothing else.</summary>
    public required bool IsFahrenheitGuessed { get; init; }
}
