namespace Litterfall.Domain.Schedule;

/// <summary>Days of one order as they are planned; null for what the order does not have.</summary>
public sealed record OrderDays
{
    /// <summary>Number of the order.</summary>
    public required int Order { get; init; }

    /// <summary>Cultures of the clean-up crew are started at the latest.</summary>
    public DateOnly? CulturesStart { get; init; }

    /// <summary>Plants come and go into quarantine.</summary>
    public DateOnly? PlantsIn { get; init; }

    /// <summary>Panes, mesh and background are cut.</summary>
    public DateOnly? Cut { get; init; }

    /// <summary>Background is made; its cure begins.</summary>
    public DateOnly? Background { get; init; }

    /// <summary>Planted and dressed; the crew goes in.</summary>
    public DateOnly? Plant { get; init; }

    /// <summary>Grown in.</summary>
    public DateOnly? GrownIn { get; init; }

    /// <summary>First day animals may go in, as computed for the tank.</summary>
    public DateOnly? AnimalsFrom { get; init; }

    /// <summary>Packed.</summary>
    public required DateOnly Pack { get; init; }

    /// <summary>Leaves.</summary>
    public required DateOnly Ship { get; init; }

    /// <summary>Reaches the customer.</summary>
    public required DateOnly Arrive { get; init; }
}
