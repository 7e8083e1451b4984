using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Schedule;

/// <summary>A task of a plan.</summary>
/// <param name="Task">The task as it is planned now.</param>
/// <param name="Revision">How often it was moved or taken back; 0 for never.</param>
public sealed record PlannedTask(DayTask Task, int Revision)
{
    /// <summary>True where it is not wanted any more; calendars are to take it out.</summary>
    public bool IsCancelled { get; init; }
}

/// <summary>Days and tasks of one order.</summary>
public sealed record PlannedOrder
{
    /// <summary>Its days.</summary>
    public required OrderDays Days { get; init; }

    /// <summary>Its work, by days.</summary>
    public Seq<PlannedTask> Tasks { get; init; } = [];

    /// <summary>What limits it, in words; empty for nothing.</summary>
    public string Blocker { get; init; } = "";

    /// <summary>Day it was promised for when it was planned; null where nothing was.</summary>
    public DateOnly? Promised { get; init; }

    /// <summary>Places on the bench from planting until it leaves.</summary>
    public int BenchPlaces { get; init; }

    /// <summary>Places of its plants in quarantine.</summary>
    public int QuarantinePlaces { get; init; }

    /// <summary>Days that it comes late.</summary>
    public int LateDays => Promised is { } day ? Math.Max(0, Days.Arrive.DayNumber - day.DayNumber) : 0;
}

/// <summary>A task that was done.</summary>
/// <param name="Key">Key of the task.</param>
/// <param name="Day">Day it was done.</param>
/// <param name="Who">Who did it.</param>
/// <param name="Minutes">Minutes that were written for it.</param>
public sealed record DoneTask(string Key, DateOnly Day, string Who, double Minutes)
{
    /// <summary>Number of the order; null for none.</summary>
    public int? Order { get; init; }

    /// <summary>Key of the stage whose hours were written; null for none.</summary>
    public string? Stage { get; init; }
}

/// <summary>A customer's day that was moved.</summary>
/// <param name="Order">Number of the order.</param>
/// <param name="Was">Day it would have been there.</param>
/// <param name="Now">Day it will be there.</param>
/// <param name="On">Day it was moved.</param>
/// <param name="Why">What made it necessary, in words.</param>
public sealed record PlanMove(int Order, DateOnly Was, DateOnly Now, DateOnly On, string Why)
{
    /// <summary>True when the customer was told.</summary>
    public bool IsTold { get; init; }
}

/// <summary>Something that holds an order up, as somebody wrote it.</summary>
/// <param name="Order">Number of the order.</param>
/// <param name="Stage">Key of the stage that waits.</param>
/// <param name="From">First day on which it can be done.</param>
/// <param name="Why">In words.</param>
public sealed record PlanHold(int Order, string Stage, DateOnly From, string Why);

/// <summary>The plan of the workshop as it was made last.</summary>
public sealed record ShopPlan
{
    /// <summary>Key under which the one record is kept.</summary>
    public const string Key = "plan";

    /// <summary>Day it was made.</summary>
    public DateOnly MadeOn { get; init; }

    /// <summary>True where no better plan exists.</summary>
    public bool IsProved { get; init; }

    /// <summary>The orders.</summary>
    public Seq<PlannedOrder> Orders { get; init; } = [];

    /// <summary>What was done.</summary>
    public Seq<DoneTask> Done { get; init; } = [];

    /// <summary>Days of customers that were moved.</summary>
    public Seq<PlanMove> Moves { get; init; } = [];

    /// <summary>What holds orders up.</summary>
    public Seq<PlanHold> Holds { get; init; } = [];

    /// <summary>The plan of an order; null for none.</summary>
    /// <param name="order">Its number.</param>
    public PlannedOrder? Find(int order) => Orders.FirstOrDefault(o => o.Days.Order == order);
}
