namespace Litterfall.Store;

/// <summary>A design as the bench lists it; what it says stands in its versions.</summary>
public sealed class DesignRow
{
    /// <summary>Number of the design; never used again.</summary>
    public Guid Id { get; set; }

    /// <summary>Its name, as its last version says.</summary>
    public required string Name { get; set; }

    /// <summary>Version that is worked on.</summary>
    public int Head { get; set; }

    /// <summary>When it was made, UTC ticks.</summary>
    public long CreatedTicks { get; set; }

    /// <summary>When it was last changed, UTC ticks.</summary>
    public long ChangedTicks { get; set; }

    /// <summary>Put away, not deleted.</summary>
    public bool IsAway { get; set; }

    /// <summary>The verdict of its last version in a sentence; null until it is computed.</summary>
    public string? Verdict { get; set; }

    /// <summary>Rises with every change; a change on an older one is refused.</summary>
    public int Stamp { get; set; }
}

/// <summary>A version of a design: written once, never changed.</summary>
public sealed class VersionRow
{
    /// <summary>Its design.</summary>
    public Guid DesignId { get; set; }

    /// <summary>1, 2, 3 within its design.</summary>
    public int Number { get; set; }

    /// <summary>Version it was made from; 0 for the first.</summary>
    public int Parent { get; set; }

    /// <summary>The design file exactly as written.</summary>
    public required string Text { get; set; }

    /// <summary>Fingerprint of the text.</summary>
    public required string Hash { get; set; }

    /// <summary>What was changed, in words.</summary>
    public required string Note { get; set; }

    /// <summary>Version of the engine.</summary>
    public required string Engine { get; set; }

    /// <summary>Fingerprint of the library.</summary>
    public required string Library { get; set; }

    /// <summary>When, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>An entry of the workshop's own library, or a value measured in the workshop.</summary>
public sealed class EntryRow
{
    /// <summary>Runs up; the last of a key counts, the others stay.</summary>
    public int Id { get; set; }

    /// <summary>Key of the library.</summary>
    public required string Key { get; set; }

    /// <summary>The entry as JSON; empty takes it back.</summary>
    public required string Json { get; set; }

    /// <summary>Why, in words.</summary>
    public required string Note { get; set; }

    /// <summary>When, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>A file that designs name: a measured lamp, a spectrum, the log of a room.</summary>
public sealed class FileRow
{
    /// <summary>Runs up; the last of a name counts, the others stay.</summary>
    public int Id { get; set; }

    /// <summary>Name without folders.</summary>
    public required string Name { get; set; }

    /// <summary>What is in it.</summary>
    public required byte[] Bytes { get; set; }

    /// <summary>When, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>A choice of the user, such as the unit of a kind of quantity.</summary>
public sealed class ChoiceRow
{
    /// <summary>Which, such as "unit.length".</summary>
    public required string Key { get; set; }

    /// <summary>What was chosen.</summary>
    public required string Value { get; set; }
}

/// <summary>Whom a design is for and how far it is; a design without a row has neither.</summary>
public sealed class OrderRow
{
    /// <summary>Its design.</summary>
    public Guid DesignId { get; set; }

    /// <summary>How far it is, one word; empty where nobody said.</summary>
    public required string Status { get; set; }

    /// <summary>Who it is for; empty where nobody said.</summary>
    public required string Customer { get; set; }

    /// <summary>Day it is due, counted from 0001-01-01; null for none.</summary>
    public int? DueDay { get; set; }
}

/// <summary>A phone, tablet or other computer that may come in.</summary>
public sealed class DeviceRow
{
    /// <summary>Number of the device, 32 hexadecimal digits; never used again.</summary>
    public required string Id { get; set; }

    /// <summary>As its people call it.</summary>
    public required string Name { get; set; }

    /// <summary>When it was paired, UTC ticks.</summary>
    public long PairedTicks { get; set; }

    /// <summary>When it was last here, UTC ticks; kept by the day, not by the second.</summary>
    public long SeenTicks { get; set; }
}
