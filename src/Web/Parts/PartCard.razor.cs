using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Web.Desk;
using Litterfall.Web.Desk.Form;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>The card of the part in hand: its fields, the rare ones behind "More".</summary>
public sealed partial class PartCard
{
    private string? fault;
    private string? faultOf;

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>The part.</summary>
    [Parameter, EditorRequired]
    public required PartForm Part { get; set; }

    /// <summary>What it is called.</summary>
    [Parameter, EditorRequired]
    public required string Name { get; set; }

    /// <summary>Units.</summary>
    [Parameter]
    public UnitPreferences UnitPreferences { get; set; } = UnitPreferences.Metric;

    /// <summary>A field that is asked for; what hides it is opened.</summary>
    [Parameter]
    public string? Asked { get; set; }

    /// <summary>Another part is taken in hand.</summary>
    [Parameter]
    public EventCallback<string?> OnSelect { get; set; }

    /// <summary>The card is closed.</summary>
    [Parameter]
    public EventCallback OnClose { get; set; }

    /// <summary>How many plants one line of the design holds; 1 for what is no plant.</summary>
    private int Count =>
        Specimens.Index(Part.Key) is { } at && at < Work.Document.Design.Plants.Count
            ? Work.Document.Design.Plants[at].Count
            : 1;

    /// <summary>The part of which one more can be added as this one is.</summary>
    private string? Twin =>
        Part is { IsList: true, IsThere: true }
            ? Part.Key[..Part.Key.IndexOf('[', StringComparison.Ordinal)]
            : null;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (faultOf != Part.Key)
        {
            (fault, faultOf) = (null, Part.Key);
        }
    }

    /// <summary>
    /// Each plant is a thing of its own: how many there are is how many stand in the strip.
    /// </summary>
    private static bool IsCountOfPlants(PartField field) =>
        field.Key is { Name: "count" } key && key.Owner == typeof(Domain.Planting);

    private bool IsAsked(PartSection section) =>
        Asked is { } path
        && (path == section.Path || path.StartsWith(section.Path + ".", StringComparison.Ordinal));

    private async Task RemoveAsync()
    {
        if (await DoneAsync(Work.ChangeAsync(d => DesignEdits.Remove(d, Part.Key), $"removed {Name}")))
        {
            await OnSelect.InvokeAsync(null);
        }
    }

    private async Task AddAgainAsync(string list)
    {
        if (await DoneAsync(Work.ChangeAsync(d => Specimens.Again(d, Part.Key), $"added another {Name}")))
        {
            await OnSelect.InvokeAsync(FormBookAt(list));
        }
    }

    private string FormBookAt(string list) => Specimens.LastOf(Work.Document, list);

    private Task ApartAsync() =>
        DoneAsync(
            Work.ChangeAsync(
                d => Specimens.Apart(d, Specimens.Index(Part.Key)!.Value),
                $"{Name}: each with its own place"
            )
        );

    private async Task<bool> DoneAsync(Task<ImmutableArray<TextFault>> change)
    {
        var faults = await change;
        fault = faults.IsEmpty ? null : FaultWords.Of(faults[0]);
        return fault is null;
    }
}
