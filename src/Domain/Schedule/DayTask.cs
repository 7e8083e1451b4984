using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Schedule;

/// <summary>What part of the workshop a task belongs to.</summary>
public enum TaskKind
{
    /// <summary>A stage of an order: cut, build, plant, pack, ship.</summary>
    Order,

    /// <summary>The cutting table.</summary>
    Cutting,

    /// <summary>A culture of the clean-up crew or of feeders.</summary>
    Culture,

    /// <summary>Plants: quarantine, dip, cuttings, potting.</summary>
    Nursery,

    /// <summary>Something to buy or receive.</summary>
    Buying,

    /// <summary>Feeding and looking after animals and tanks.</summary>
    Care,
}

/// <summary>Something to do on a day.</summary>
public sealed record DayTask
{
    /// <summary>Stays the same however the plan moves: "order-204-plant".</summary>
    public required string Key { get; init; }

    /// <summary>Day it is planned for.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>What part it belongs to.</summary>
    public required TaskKind Kind { get; init; }

    /// <summary>What to do, in one line.</summary>
    public required string Title { get; init; }

    /// <summary>How much, which, where; empty where the title says all.</summary>
    public string Detail { get; init; } = "";

    /// <summary>Who does it; empty for whoever has time.</summary>
    public string Who { get; init; } = "";

    /// <summary>Minutes it is planned to take.</summary>
    public double Minutes { get; init; }

    /// <summary>Number of the order; null for none.</summary>
    public int? Order { get; init; }

    /// <summary>Key of the stage whose hours it writes; null for none.</summary>
    public string? Stage { get; init; }

    /// <summary>
    /// Numbers of the cultures or trays that one tap ticks off together; empty where it is done on its own
    /// page.
    /// </summary>
    public Seq<string> Subjects { get; init; } = [];

    /// <summary>Address of the page where it is done; empty for none.</summary>
    public string Page { get; init; } = "";

    /// <summary>True where it cannot wait: animals, live goods, a promised parcel.</summary>
    public bool IsFirm { get; init; }
}
