using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Litterfall.Judging.Fixes;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>
/// Findings with what to do: checked fixes to preview, the way to the field, and acceptance with a reason
/// where
/// no life is at stake.
/// </summary>
public sealed partial class FindingList
{
    private const int Most = 5;
    private bool all;
    private string? asked;
    private string reason = "";
    private string? by;
    private string? fault;
    private bool isAsking;
    private ElementReference field;

    /// <summary>The clock.</summary>
    [Inject]
    public required TimeProvider Clock { get; set; }

    /// <summary>The library.</summary>
    [Inject]
    public required BenchLibrary Library { get; set; }

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>The findings to show, in order.</summary>
    [Parameter, EditorRequired]
    public required IReadOnlyList<Finding> Findings { get; set; }

    /// <summary>Units.</summary>
    [Parameter]
    public UnitPreferences UnitPreferences { get; set; } = UnitPreferences.Metric;

    /// <summary>A field is gone to; gives its path, such as "lid.latched".</summary>
    [Parameter]
    public EventCallback<string> OnGoTo { get; set; }

    /// <summary>True in a card, where all are shown in less room.</summary>
    [Parameter]
    public bool Compact { get; set; }

    /// <summary>What the list is called.</summary>
    [Parameter]
    public string Label { get; set; } = "findings";

    /// <summary>True for a finding that speaks of a part, or is resolved in it.</summary>
    /// <param name="finding">A finding.</param>
    /// <param name="partKey">Key of a part, such as "plants[2]" or "floor.soil".</param>
    public static bool Belongs(Finding finding, string partKey) =>
        IsIn(finding.About, partKey) || IsIn(finding.Where, partKey);

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (isAsking)
        {
            isAsking = false;
            await field.FocusAsync();
        }
    }

    private IEnumerable<(Finding Finding, int At)> Shown =>
        Findings.Select((f, i) => (f, i)).Take(Compact || all ? int.MaxValue : Most);

    private int Hidden => Compact ? 0 : Math.Max(0, Findings.Count - Most);

    private static bool IsIn(string path, string part) =>
        path == part || (path.StartsWith(part, StringComparison.Ordinal) && path[part.Length] is '.' or '[');

    private static string Key(Finding finding) => $"{finding.Slug} {finding.About} {finding.Text}";

    private static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Trust(Provenance provenance) =>
        provenance == Provenance.Recalled ? "from memory, source not checked" : provenance.Spoken();

    private string Title(string source) => Library.Titles.GetValueOrDefault(source, source);

    private string Said(string sentence) => FindingWords.Of(sentence, UnitPreferences);

    private string? Brings(CheckedFix fix) =>
        fix.Brings.IsEmpty
            ? "Checked: solves it and brings nothing new."
            : $"Checked: solves it; new: {string.Join(" ", fix.Brings.Select(Said))}";

    private void Ask(Finding finding)
    {
        asked = Key(finding);
        (reason, fault, isAsking) = ("", null, true);
    }

    private async Task AcceptAsync(Finding finding)
    {
        if (string.IsNullOrWhiteSpace(reason))
        {
            fault = "Enter a reason, 1 to 200 characters.";
            return;
        }

        var today = DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);
        var faults = await Work.ChangeAsync(
            d => Acceptances.Accept(d, finding, reason, today, by),
            $"accepted: {RuleBook.Words(finding.Slug)}"
        );
        fault = faults.IsEmpty ? null : Sentence(faults[0]);
        asked = faults.IsEmpty ? null : asked;
    }

    private Task WithdrawAsync(Acceptance accepted) =>
        Work.ChangeAsync(
            d =>
            {
                var index = d.Design.Accepted.ToList().IndexOf(accepted);
                return index < 0
                    ? new Reading<DesignDocument>(d, [])
                    : DesignEdits.Remove(
                        d,
                        string.Create(CultureInfo.InvariantCulture, $"{Acceptances.Key}[{index}]")
                    );
            },
            $"acceptance withdrawn: {RuleBook.Words(accepted.Finding)}"
        );

    private static string Sentence(TextFault trouble) => $"{trouble.Message}; expected {trouble.Expected}.";
}
