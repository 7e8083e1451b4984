using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shipping.Parcels;

/// <summary>The last look before a parcel is cleared for a day.</summary>
public sealed partial class ClearPart : ComponentBase
{
    private readonly HashSet<string> there = new(StringComparer.Ordinal);
    private string? fault;

    /// <summary>The day.</summary>
    [Parameter, EditorRequired]
    public required DayVerdict Day { get; set; }

    /// <summary>Papers of the animals.</summary>
    [Parameter, EditorRequired]
    public required IReadOnlyList<AnimalPaper> Papers { get; set; }

    /// <summary>Why it cannot be cleared; null where it can.</summary>
    [Parameter]
    public string? Refusal { get; set; }

    /// <summary>True while it is being cleared.</summary>
    [Parameter]
    public bool IsBusy { get; set; }

    /// <summary>Clears it, with the papers that are there.</summary>
    [Parameter]
    public EventCallback<Seq<string>> OnClear { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        foreach (var paper in Papers.Where(p => p.IsThere))
        {
            there.Add(paper.Key);
        }
    }

    private void Tick(string key, bool isThere)
    {
        if (isThere)
        {
            there.Add(key);
        }
        else
        {
            there.Remove(key);
        }
    }

    private async Task ClearAsync()
    {
        var missing = Papers.FirstOrDefault(p => p.IsNeeded && !there.Contains(p.Key));
        fault = missing is null ? null : $"A needed paper is not ticked: {missing.Text}";
        if (fault is null)
        {
            await OnClear.InvokeAsync([.. there.Order(StringComparer.Ordinal)]);
        }
    }
}
