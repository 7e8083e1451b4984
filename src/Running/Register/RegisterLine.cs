namespace Litterfall.Running.Register;

/// <summary>What happened to animals, as a register names it.</summary>
public enum RegisterEvent
{
    /// <summary>Came from somebody else.</summary>
    Acquired,

    /// <summary>Born or hatched here.</summary>
    Born,

    /// <summary>Died.</summary>
    Died,

    /// <summary>Sold or given to somebody.</summary>
    Disposed,

    /// <summary>Moved from one tank to another.</summary>
    Moved,

    /// <summary>Treated or tested.</summary>
    Treated,
}

/// <summary>A line of the register: who, what, how many, from where to where, and how long it is kept.</summary>
/// <param name="Day">The day.</param>
/// <param name="Event">What happened.</param>
/// <param name="Species">Scientific name.</param>
/// <param name="Common">Common name.</param>
/// <param name="Count">How many; null where it is not of animals.</param>
/// <param name="Source">Where they came from.</param>
/// <param name="Destination">Where they went.</param>
/// <param name="Words">What else was written.</param>
/// <param name="Who">Who wrote it.</param>
/// <param name="KeepUntil">Last day on which it must be kept.</param>
/// <param name="Key">Key of the line of the log.</param>
public sealed record RegisterLine(
    DateOnly Day,
    RegisterEvent Event,
    string Species,
    string Common,
    int? Count,
    string Source,
    string Destination,
    string Words,
    string Who,
    DateOnly KeepUntil,
    string Key
);
