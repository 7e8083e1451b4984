namespace Litterfall.Workshop.Scheduling.Chains;

/// <summary>What a stage takes on some days.</summary>
/// <param name="Resource">Index of the resource.</param>
/// <param name="Day">Index of the first day.</param>
/// <param name="Amount">How much on each day, in the whole units of the resource.</param>
/// <param name="Count">How many days in a row.</param>
public readonly record struct DayUse(int Resource, int Day, int Amount, int Count = 1)
{
    /// <summary>The day after the last one.</summary>
    public int End => Day + Count;
}

/// <summary>What is taken on each day from the start of a stage until the next one starts.</summary>
/// <param name="Resource">Index of the resource.</param>
/// <param name="Amount">How much, in the whole units of the resource.</param>
public readonly record struct DayHold(int Resource, int Amount);

/// <summary>One stage of a job: on which days it may start, and what each start costs and takes.</summary>
public sealed record JobStage
{
    /// <summary>Name of the stage, once in a job.</summary>
    public required string Key { get; init; }

    /// <summary>Days on which it may start, rising.</summary>
    public required int[] Days { get; init; }

    /// <summary>Cost of each of these days.</summary>
    public required long[] Costs { get; init; }

    /// <summary>First day on which the next stage may start, for each of these days; never falling.</summary>
    public required int[] Ready { get; init; }

    /// <summary>What each start takes, on days from 0 to the last one of the problem.</summary>
    public required DayUse[][] Uses { get; init; }

    /// <summary>What is taken until the next stage starts; empty for the last one.</summary>
    public DayHold[] Holds { get; init; } = [];

    /// <summary>Index of the stage that waits for this one, higher than its own; -1 for the last.</summary>
    public int Next { get; init; } = -1;

    /// <summary>The same stage with the days that are kept.</summary>
    /// <param name="kept">Whether each of the days is kept.</param>
    internal JobStage Keep(bool[] kept)
    {
        int[] left = [.. Enumerable.Range(0, Days.Length).Where(i => kept[i])];
        return this with
        {
            Days = [.. left.Select(i => Days[i])],
            Costs = [.. left.Select(i => Costs[i])],
            Ready = [.. left.Select(i => Ready[i])],
            Uses = [.. left.Select(i => Uses[i])],
        };
    }
}

/// <summary>A job: stages of which each but the last has one that waits for it.</summary>
/// <param name="Name">As people call it.</param>
/// <param name="Stages">The stages; the last one ends the job.</param>
public sealed record Job(string Name, JobStage[] Stages);

/// <summary>Jobs that share resources by the day.</summary>
/// <param name="Jobs">The jobs.</param>
/// <param name="Capacity">How much there is of each resource on each day.</param>
public sealed record JobProblem(Job[] Jobs, int[][] Capacity)
{
    /// <summary>Days that are looked at.</summary>
    public int Horizon => Capacity.Length == 0 ? 0 : Capacity[0].Length;
}

/// <summary>Days on which the stages of all jobs start.</summary>
/// <param name="Starts">Day of each stage of each job.</param>
/// <param name="Cost">What they cost together.</param>
/// <param name="Bound">No days cost less.</param>
public sealed record JobPlan(int[][] Starts, long Cost, long Bound)
{
    /// <summary>True where no better plan exists.</summary>
    public bool IsProved => Bound >= Cost;
}
