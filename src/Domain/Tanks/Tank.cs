using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Tanks;

/// <summary>Where a tank stands.</summary>
public sealed record TankPlace
{
    /// <summary>Key of the room; empty where it stands at a customer's.</summary>
    public string Room { get; init; } = "";

    /// <summary>Rack within the room: "A"; empty for none.</summary>
    public string Rack { get; init; } = "";

    /// <summary>Shelf of the rack, 1 is the lowest; 0 where it is unknown.</summary>
    public int Shelf { get; init; }

    /// <summary>Place on the shelf from the left, 1 first; 0 where it is unknown.</summary>
    public int Slot { get; init; }

    /// <summary>Misting zone: tanks on one pump; empty for none.</summary>
    public string Zone { get; init; } = "";
}

/// <summary>Something that was built otherwise than drawn.</summary>
/// <param name="What">What, in words: "soil at the front".</param>
/// <param name="Drawn">As the design says; empty where it says nothing.</param>
/// <param name="Built">As it was built.</param>
public sealed record BuiltDifference(string What, string Drawn, string Built);

/// <summary>A tank that runs, here or at a customer's.</summary>
public sealed record Tank
{
    /// <summary>Number on its label: "A3", "T-17"; its key.</summary>
    public required string Code { get; init; }

    /// <summary>
    /// Number that its printed passport and label carry, as the papers of its design make it; empty for none.
    /// </summary>
    public string Label { get; init; } = "";

    /// <summary>Name people use.</summary>
    public required string Name { get; init; }

    /// <summary>The design it was built from, then as it was built; null where there is none.</summary>
    public Guid? Design { get; init; }

    /// <summary>Version of the design that it was built from; 0 for none.</summary>
    public int DrawnVersion { get; init; }

    /// <summary>Version of the design that shows it as built; 0 where nobody corrected it.</summary>
    public int BuiltVersion { get; init; }

    /// <summary>Order it was built for; null for the workshop's own.</summary>
    public int? Order { get; init; }

    /// <summary>Key of the customer who has it; empty for the workshop's own.</summary>
    public string Customer { get; init; } = "";

    /// <summary>Where it stands.</summary>
    public TankPlace Place { get; init; } = new();

    /// <summary>Day it was planted.</summary>
    public DateOnly? Planted { get; init; }

    /// <summary>Day from which it runs.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>Day it was given up; null while it runs.</summary>
    public DateOnly? Ended { get; init; }

    /// <summary>Lots that went into it: soil batches, cultures, plants.</summary>
    public Seq<string> Lots { get; init; } = [];

    /// <summary>What was built otherwise than drawn.</summary>
    public Seq<BuiltDifference> Differences { get; init; } = [];

    /// <summary>What to remember.</summary>
    public string Notes { get; init; } = "";

    /// <summary>True while it runs.</summary>
    public bool IsRunning => Ended is null;

    /// <summary>Version of the design that stands for it: as built, else as drawn.</summary>
    public int Version => BuiltVersion > 0 ? BuiltVersion : DrawnVersion;
}
