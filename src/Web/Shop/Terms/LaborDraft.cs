using Litterfall.Domain.Trade;

namespace Litterfall.Web.Shop.Terms;

/// <summary>Words for what the minutes of a stage grow with.</summary>
public static class LaborWords
{
    /// <summary>What the minutes are for.</summary>
    /// <param name="per">What they grow with.</param>
    public static string Each(LaborPer per) =>
        per switch
        {
            LaborPer.Order => "order",
            LaborPer.Box => "tank",
            LaborPer.Cut => "part cut here",
            LaborPer.Plant => "plant",
            LaborPer.Liter => "liter of soil",
            _ => "square meter of background",
        };

    /// <summary>Orders that have the stage.</summary>
    /// <param name="kind">Which.</param>
    public static string In(LaborFor kind) =>
        kind switch
        {
            LaborFor.Kits => "kits only",
            LaborFor.Builds => "tanks built here only",
            LaborFor.Visits => "visits",
            _ => "every order",
        };
}

/// <summary>One stage of work as it is typed.</summary>
/// <param name="stage">The stage; null for a new one.</param>
public sealed class LaborDraft(LaborStage? stage)
{
    /// <summary>Name.</summary>
    public TypedText Name { get; } = new("Stage", stage?.Name ?? "");

    /// <summary>Minutes for one.</summary>
    public TypedText Minutes { get; } = TypedText.ForNumber("Minutes", stage?.Minutes);

    /// <summary>What the minutes grow with.</summary>
    public LaborPer Per { get; set; } = stage?.Per ?? LaborPer.Box;

    /// <summary>Orders that have it.</summary>
    public LaborFor For { get; set; } = stage?.For ?? LaborFor.All;

    /// <summary>The stages as typed; null where a field has a fault.</summary>
    /// <param name="rows">All rows.</param>
    public static List<LaborStage>? Read(IReadOnlyCollection<LaborDraft> rows)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        var stages = new List<LaborStage>();
        foreach (var row in rows)
        {
            var name = row.Name.Required();
            var key = row.Key(name);
            if (row.Name.Fault is null && !keys.Add(key))
            {
                row.Name.Refuse("There is another stage of this name.");
            }

            stages.Add(new LaborStage(key, name, row.Per, row.Minutes.Number(0, 10_000)) { For = row.For });
        }

        return rows.All(r => r.Name.Fault is null && r.Minutes.Fault is null) ? stages : null;
    }

    /// <summary>A stage keeps its key when it is renamed: worked hours stay with it.</summary>
    private string Key(string name) => stage?.Key ?? OwnKey.From(name);
}
