namespace Litterfall.Store;

/// <summary>A line of a tank's log; only ever added.</summary>
public sealed class CareRow
{
    /// <summary>Runs up.</summary>
    public int Id { get; set; }

    /// <summary>Given by the device that wrote it.</summary>
    public required string Key { get; set; }

    /// <summary>The tank.</summary>
    public required string Tank { get; set; }

    /// <summary>What it was, by its word.</summary>
    public required string Kind { get; set; }

    /// <summary>When it was, UTC ticks.</summary>
    public long AtTicks { get; set; }

    /// <summary>The line, as JSON.</summary>
    public required string Json { get; set; }

    /// <summary>When it was written, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>A logger file as it was taken in.</summary>
public sealed class LogFileRow
{
    /// <summary>Runs up.</summary>
    public int Id { get; set; }

    /// <summary>Name of the file.</summary>
    public required string Name { get; set; }

    /// <summary>Fingerprint of its bytes.</summary>
    public required string Hash { get; set; }

    /// <summary>What was read of it, as JSON.</summary>
    public required string Json { get; set; }

    /// <summary>The file itself, compressed.</summary>
    public required byte[] Bytes { get; set; }

    /// <summary>Who took it in.</summary>
    public required string Who { get; set; }

    /// <summary>When, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>Readings of one channel of some days, packed.</summary>
public sealed class LogBlockRow
{
    /// <summary>Runs up.</summary>
    public int Id { get; set; }

    /// <summary>Tank, or what else the sensor hangs in.</summary>
    public required string Place { get; set; }

    /// <summary>What is measured, by its word.</summary>
    public required string Quantity { get; set; }

    /// <summary>First reading, UTC ticks.</summary>
    public long FromTicks { get; set; }

    /// <summary>Last reading, UTC ticks.</summary>
    public long ToTicks { get; set; }

    /// <summary>Readings.</summary>
    public int Count { get; set; }

    /// <summary>Times, values and marks, packed.</summary>
    public required byte[] Bytes { get; set; }
}
