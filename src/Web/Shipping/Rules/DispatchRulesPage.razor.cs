using Litterfall.Domain.Dispatch;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>The shop's own rules: carriers, regions, cartons, packs, cups, risk and terms.</summary>
public sealed partial class DispatchRulesPage : ComponentBase
{
    private DispatchRules rules = new();
    private DispatchRulesDraft? draft;
    private UnitPreferences units = UnitPreferences.Metric;
    private int version;
    private string? told;
    private string? fault;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        units = await Preferences.LoadAsync();
        await ReadAsync();
    }

    private async Task ReadAsync()
    {
        (rules, version) = await Desk.RulesAsync();
        draft = new(rules, units);
    }

    private async Task SaveAsync()
    {
        told = null;
        (var read, fault) = draft!.Read(DispatchDesk.RegionRefusal);
        if (read is null)
        {
            return;
        }

        fault = await Desk.KeepAsync(read, version);
        if (fault is null)
        {
            await ReadAsync();
            told =
                "Saved. Verdicts count with these rules from now on; what was cleared before stays as it is.";
        }
    }

    private static string Title(string name, string without) => name.Length > 0 ? name : without;
}
