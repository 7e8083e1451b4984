namespace Litterfall.Domain.Tanks;

/// <summary>What was done to a tank, or seen in it.</summary>
public enum CareKind
{
    /// <summary>Water over the base was read, mm.</summary>
    Level,

    /// <summary>Water was taken out, mL.</summary>
    Drained,

    /// <summary>Misted by hand or beside the timer, mL; 0 where nobody measured.</summary>
    Misted,

    /// <summary>What one nozzle gives into a cup, mL a minute.</summary>
    NozzleFlow,

    /// <summary>Water was poured in, mL.</summary>
    ToppedUp,

    /// <summary>The whole tank was weighed, kg.</summary>
    Weighed,

    /// <summary>A fist of soil was squeezed: drops of water that came.</summary>
    Squeezed,

    /// <summary>Air was read by hand: °C, and % beside it.</summary>
    Air,

    /// <summary>Fed: a count or a dash, in words.</summary>
    Fed,

    /// <summary>Cleaned, trimmed, wiped.</summary>
    Tended,

    /// <summary>Litter, crew, plants or soil was added.</summary>
    Added,

    /// <summary>A setting was changed: misting, vents, lamp.</summary>
    Changed,

    /// <summary>Animals came in.</summary>
    AnimalsIn,

    /// <summary>Animals went out alive: to another tank, sold, given away.</summary>
    AnimalsOut,

    /// <summary>Young or eggs.</summary>
    Born,

    /// <summary>Animals died.</summary>
    Died,

    /// <summary>A treatment or a test.</summary>
    Treated,

    /// <summary>The tank was moved.</summary>
    Moved,

    /// <summary>A photo.</summary>
    Photo,

    /// <summary>Something to remember.</summary>
    Note,
}

/// <summary>
/// A line of the log of a tank; never changed. A wrong line is taken back by another that names it.
/// </summary>
public sealed record CareEntry
{
    /// <summary>Given by the device that wrote it; the same line sent twice counts once.</summary>
    public required string Key { get; init; }

    /// <summary>Number of the tank.</summary>
    public required string Tank { get; init; }

    /// <summary>When it was, UTC.</summary>
    public required DateTime At { get; init; }

    /// <summary>What it was.</summary>
    public required CareKind Kind { get; init; }

    /// <summary>Amount in the unit of the kind, or animals; null where none was given.</summary>
    public double? Amount { get; init; }

    /// <summary>Relative humidity beside a reading of air, %.</summary>
    public double? HumidityPercent { get; init; }

    /// <summary>Key of the species, for animals; empty for none.</summary>
    public string Species { get; init; } = "";

    /// <summary>Lot, culture, tank or person that it came from or went to; empty for none.</summary>
    public string Other { get; init; } = "";

    /// <summary>Name of the photo's file; empty for none.</summary>
    public string Photo { get; init; } = "";

    /// <summary>In words.</summary>
    public string Note { get; init; } = "";

    /// <summary>Task of the round that it does, such as "litter"; empty for none.</summary>
    public string Task { get; init; } = "";

    /// <summary>Who wrote it.</summary>
    public required string Who { get; init; }

    /// <summary>Key of the line that this one takes back; empty for none.</summary>
    public string TakesBack { get; init; } = "";
}
