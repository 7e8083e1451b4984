using Litterfall.Domain.Lists;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Scheduling;

/// <summary>Keys of the stages that are planned; those of the table of labor are sorted into them.</summary>
public static class StageKey
{
    /// <summary>Panes, mesh and backgrounds are cut; the order is prepared.</summary>
    public const string Cut = "cut";

    /// <summary>Tanks stand filled to see whether they leak.</summary>
    public const string Leak = "leak-test";

    /// <summary>The background is made.</summary>
    public const string Background = "background";

    /// <summary>Plants come and go into quarantine.</summary>
    public const string Plants = "plants-in";

    /// <summary>Soil, wood and plants go in.</summary>
    public const string Plant = "plant";

    /// <summary>Packed and handed over.</summary>
    public const string Pack = "pack";
}

/// <summary>Work of one stage of the table of labor.</summary>
/// <param name="Key">Key of the stage of labor.</param>
/// <param name="Name">As people call it.</param>
/// <param name="Minutes">Minutes.</param>
/// <param name="Stage">Stage of the plan it belongs to.</param>
public sealed record StageWork(string Key, string Name, double Minutes, string Stage);

/// <summary>A stage that cannot be done before a day.</summary>
/// <param name="Stage">Key of the stage.</param>
/// <param name="Day">First day.</param>
/// <param name="Why">"the glass comes on Tue 22 Sep 2026".</param>
public sealed record StageWait(string Stage, DateOnly Day, string Why);

/// <summary>A stage that was done.</summary>
/// <param name="Stage">Key of the stage.</param>
/// <param name="Day">Day it was finished.</param>
public sealed record StageDone(string Stage, DateOnly Day);

/// <summary>What an order needs of days, hands and places.</summary>
public sealed record OrderNeed
{
    /// <summary>Number of the order.</summary>
    public required int Order { get; init; }

    /// <summary>As tasks call it: "LD-201".</summary>
    public required string Name { get; init; }

    /// <summary>Day it is promised for; null where nothing is.</summary>
    public DateOnly? Promised { get; init; }

    /// <summary>True where it goes by parcel; false where it is handed over in person.</summary>
    public bool IsShipped { get; init; }

    /// <summary>Tanks that are built here.</summary>
    public int Tanks { get; init; }

    /// <summary>Tanks that are planted here.</summary>
    public int Planted { get; init; }

    /// <summary>Days of cure between the background and planting; 0 for none.</summary>
    public int CureDays { get; init; }

    /// <summary>Days of quarantine of its plants; 0 for none.</summary>
    public int QuarantineDays { get; init; }

    /// <summary>Days of grow-in; 0 for none.</summary>
    public int GrowInDays { get; init; }

    /// <summary>Days that cultures are started before planting, or before packing; 0 for none.</summary>
    public int CultureDays { get; init; }

    /// <summary>
    /// Days after planting on which animals may go in, as computed; null where nobody knows.
    /// </summary>
    public int? AnimalDays { get; init; }

    /// <summary>Its work.</summary>
    public Seq<StageWork> Work { get; init; } = [];

    /// <summary>What it waits for.</summary>
    public Seq<StageWait> Waits { get; init; } = [];

    /// <summary>What was done.</summary>
    public Seq<StageDone> Done { get; init; } = [];

    /// <summary>Its days in the plan that is kept; null for none.</summary>
    public OrderDays? Kept { get; init; }

    /// <summary>True where nothing of it may be moved.</summary>
    public bool IsFixed { get; init; }

    /// <summary>Minutes of a stage of the plan.</summary>
    /// <param name="stage">Key of the stage.</param>
    public double Minutes(string stage) => Work.Where(w => w.Stage == stage).Sum(w => w.Minutes);

    /// <summary>Day a stage was finished; null where it was not.</summary>
    /// <param name="stage">Key of the stage.</param>
    public DateOnly? Finished(string stage) =>
        Done.Where(d => d.Stage == stage).Select(d => (DateOnly?)d.Day).Max();

    /// <summary>The longest wait of a stage; null for none.</summary>
    /// <param name="stage">Key of the stage.</param>
    public StageWait? Wait(string stage) => Waits.Where(w => w.Stage == stage).MaxBy(w => w.Day);

    /// <summary>Stages of the plan that are still to be done, in their order.</summary>
    public IEnumerable<string> Open()
    {
        string[] all = [StageKey.Cut, StageKey.Leak, StageKey.Background, StageKey.Plant, StageKey.Pack];
        // What comes before a stage that is done is done too.
        var from = 1 + Array.FindLastIndex(all, k => Finished(k) is not null);
        return all.Skip(from).Where(Has);
    }

    private bool Has(string stage) =>
        stage switch
        {
            StageKey.Leak => Tanks > 0,
            StageKey.Plant => Tanks > 0 || Minutes(StageKey.Plant) > 0,
            StageKey.Pack => true,
            _ => Minutes(stage) > 0,
        };

    /// <summary>The stage of the plan that a stage of labor belongs to.</summary>
    /// <param name="stage">The stage of labor.</param>
    /// <param name="isBuilt">True where something is built here.</param>
    public static string Sort(LaborStage stage, bool isBuilt) =>
        stage.Key.Contains("pack", StringComparison.OrdinalIgnoreCase) ? StageKey.Pack
        : stage.Per == LaborPer.Cut || stage.Per == LaborPer.Order ? StageKey.Cut
        : stage.Per == LaborPer.BackgroundSquareMeter ? StageKey.Background
        : isBuilt ? StageKey.Plant
        : StageKey.Pack;
}
