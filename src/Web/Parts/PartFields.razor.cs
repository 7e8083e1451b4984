using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Web.Desk;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>The parts of the design: one in hand at a time, its fields below.</summary>
public sealed partial class PartFields
{
    private ImmutableArray<PartForm> forms = [];
    private object? formsOf;
    private string? fault;

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>The part in hand.</summary>
    [Parameter]
    public string? Selected { get; set; }

    /// <summary>Another part is taken in hand.</summary>
    [Parameter]
    public EventCallback<string?> SelectedChanged { get; set; }

    /// <summary>The library.</summary>
    [Parameter, EditorRequired]
    public required TradeCatalog Catalog { get; set; }

    /// <summary>The part a finding points at; null where the desk has none for it.</summary>
    /// <param name="where">Key of the finding, such as "floor.soil" or "plants[2].at".</param>
    public static string? PartOf(string where)
    {
        var bracket = where.IndexOf(']', StringComparison.Ordinal);
        if (bracket > 0)
        {
            return where[..(bracket + 1)];
        }

        var steps = where.Split('.');
        return steps[0] switch
        {
            "floor" when steps.Length > 1 => $"floor.{steps[1]}",
            "box" or "lid" or "drain" or "misting" or "room" or "habits" or "background" => steps[0],
            "name" or "planted" or "animalsIn" => "name",
            _ => null,
        };
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (!ReferenceEquals(formsOf, Work.Document))
        {
            formsOf = Work.Document;
            forms = PartForm.Of(Work.Document);
        }
    }

    private string NameOf(PartForm part)
    {
        var entry = part.Fields.FirstOrDefault(f => f.Form == FieldForm.Entry && part.Key.EndsWith(']'));
        if (part.Key.StartsWith("vents", StringComparison.Ordinal))
        {
            return $"{part.Name}, {TypedLength.TextAt(Work.Document, part.Key + ".side")}".TrimEnd(',', ' ');
        }

        var key = entry is null ? "" : TypedLength.TextAt(Work.Document, entry.Path);
        return key.Length > 0 && Catalog.Find(key) is { } found ? found.Name : part.Name;
    }

    private async Task AddAsync(PartForm part)
    {
        var isList = part.Key is "hardscape" or "vents" or "lamps" or "plants" or "crew" or "animals";
        var count = forms.Count(f => f.IsThere && f.Key.StartsWith(part.Key + "[", StringComparison.Ordinal));
        await Tell(
            Work.ChangeAsync(
                d =>
                    isList
                        ? DesignEdits.Add(d, part.Key, part.Begin!)
                        : DesignEdits.SetPart(d, part.Key, part.Begin!),
                $"added {part.Name.ToLowerInvariant()}"
            )
        );
        if (fault is null)
        {
            await SelectedChanged.InvokeAsync(
                isList ? FormattableString.Invariant($"{part.Key}[{count}]") : part.Key
            );
        }
    }

    private async Task RemoveAsync(PartForm part)
    {
        await Tell(Work.ChangeAsync(d => DesignEdits.Remove(d, part.Key), $"took out {NameOf(part)}"));
        if (fault is null)
        {
            await SelectedChanged.InvokeAsync(null);
        }
    }

    private async Task Tell(Task<ImmutableArray<TextFault>> change)
    {
        var faults = await change;
        fault = faults.IsEmpty ? null : $"{faults[0].Message}; expected {faults[0].Expected}.";
    }
}
