using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Tanks;

/// <summary>What was agreed about visits to tanks of a customer.</summary>
public sealed record VisitContract
{
    /// <summary>Its number.</summary>
    public required int Number { get; init; }

    /// <summary>Key of the customer.</summary>
    public required string Customer { get; init; }

    /// <summary>Order its visits are billed under; 0 before the first bill.</summary>
    public required int Order { get; init; }

    /// <summary>Numbers of the tanks.</summary>
    public Seq<string> Tanks { get; init; } = [];

    /// <summary>Weeks between visits.</summary>
    public required int EveryWeeks { get; init; }

    /// <summary>Price of a visit, net.</summary>
    public required decimal Price { get; init; }

    /// <summary>Day of the first visit.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Last day; null where it goes on.</summary>
    public DateOnly? End { get; init; }

    /// <summary>What is in the price, each in a line.</summary>
    public Seq<string> Included { get; init; } = [];

    /// <summary>Place on the route of a day, small numbers first.</summary>
    public int Route { get; init; }

    /// <summary>What to remember: keys, doors, whom to ask for.</summary>
    public string Notes { get; init; } = "";
}

/// <summary>A step of a visit.</summary>
/// <param name="Tank">Number of the tank.</param>
/// <param name="Task">Its word in logs.</param>
/// <param name="What">What was to be done.</param>
/// <param name="IsDone">True where it was done.</param>
/// <param name="Found">What was read or found, in words for the customer; empty for nothing.</param>
public sealed record VisitStep(string Tank, string Task, string What, bool IsDone, string Found);

/// <summary>A part that was used on a visit.</summary>
/// <param name="Lot">Lot it came from.</param>
/// <param name="Name">As the customer reads it.</param>
/// <param name="Amount">How much, in the unit of the good.</param>
/// <param name="Net">What the customer pays for it, net; 0 where it is in the price.</param>
public sealed record VisitPart(string Lot, string Name, double Amount, decimal Net);

/// <summary>A visit that was made; never changed.</summary>
public sealed record TankVisit
{
    /// <summary>Its number.</summary>
    public required int Number { get; init; }

    /// <summary>Number of the contract.</summary>
    public required int Contract { get; init; }

    /// <summary>Day of the visit.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Day it was due.</summary>
    public required DateOnly Due { get; init; }

    /// <summary>Who made it.</summary>
    public required string Who { get; init; }

    /// <summary>What was done.</summary>
    public Seq<VisitStep> Steps { get; init; } = [];

    /// <summary>Parts that were used.</summary>
    public Seq<VisitPart> Parts { get; init; } = [];

    /// <summary>Names of photos.</summary>
    public Seq<string> Photos { get; init; } = [];

    /// <summary>What the customer is told, in plain words.</summary>
    public string Note { get; init; } = "";
}
