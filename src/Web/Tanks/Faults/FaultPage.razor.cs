using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Diagnosis.Finding;
using Litterfall.Running.Diagnosis.Words;
using Litterfall.Store;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Faults;

/// <summary>
/// Why a tank goes wrong: what is told on the left, causes and the next check on the right.
/// </summary>
public sealed partial class FaultPage : ComponentBase
{
    private readonly Dictionary<TankFact, string> facts = Enum.GetValues<TankFact>()
        .ToDictionary(f => f, _ => "");

    private readonly HashSet<Symptom> tapped = [];
    private TankView? view;
    private Tank? tank;
    private Kept<FaultReport>? kept;
    private string words = "";
    private DateOnly day;
    private string told = "";
    private bool isBusy;
    private FaultAnswer? answer;
    private FaultQuestion? question;
    private CancellationTokenSource? work;

    /// <summary>Number of the tank, or of its label.</summary>
    [Parameter]
    public string Code { get; set; } = "";

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        view = await Desk.LoadAsync();
        tank = view.Find(Code)?.Value;
        day = view.Today;
        if (tank is null)
        {
            return;
        }

        kept = await Faults.ReportAsync(tank.Code);
        if (kept is { Value: var report })
        {
            Show(report);
            await FindAsync(report);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => work?.Cancel();

    private void Show(FaultReport report)
    {
        var titles = SymptomWords.All.ToDictionary(s => s.Title, s => s.Symptom, StringComparer.Ordinal);
        tapped.UnionWith(report.Told.Where(titles.ContainsKey).Select(t => titles[t]));
        words = string.Join('\n', report.Told.Where(t => !titles.ContainsKey(t)));
        day = report.On;
        foreach (var fact in report.Facts)
        {
            if (FactWords.Find(fact.Key) is { } known)
            {
                facts[known] = fact.Value;
            }
        }
    }

    private void Tap(Symptom symptom)
    {
        if (!tapped.Remove(symptom))
        {
            tapped.Add(symptom);
        }
    }

    private async Task LookAsync()
    {
        var bad = facts.FirstOrDefault(f => f.Value.Length > 0 && FactReader.Read(f.Key, f.Value) is null);
        if (bad.Value is { Length: > 0 })
        {
            told = $"{Capital(FactWords.Title(bad.Key))}: enter a number, such as 18.";
            return;
        }

        var report = new FaultReport
        {
            Tank = tank!.Code,
            Told =
            [
                .. words.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries),
                .. tapped.Order().Select(SymptomWords.Title),
            ],
            Facts =
            [
                .. facts
                    .Where(f => f.Value.Length > 0)
                    .Select(f => new ReportedFact(FactWords.Key(f.Key), f.Value)),
            ],
            On = day,
        };
        if (await Faults.KeepAsync(report, kept?.Version ?? 0) is { } refusal)
        {
            told = refusal;
            return;
        }

        kept = await Faults.ReportAsync(tank.Code);
        await FindAsync(report);
    }

    private async Task FindAsync(FaultReport report)
    {
        (isBusy, told) = (true, "Comparing causes with the readings…");
        StateHasChanged();
        work = new CancellationTokenSource();
        try
        {
            question = await Faults.AskAsync(view!, tank!, report, work.Token);
            var asked = question.Case;
            if (asked is null)
            {
                told = "This tank has no design that can be computed. Link its design on the tank's page.";
                return;
            }

            answer = await Task.Run(() => FaultFinder.Find(asked, work.Token), work.Token);
            told = "";
        }
        catch (OperationCanceledException)
        {
            told = "Stopped. What you entered is kept.";
        }
        finally
        {
            isBusy = false;
        }
    }

    private void Stop() => work?.Cancel();

    private static string Capital(string text) =>
        string.Concat(char.ToUpper(text[0], CultureInfo.InvariantCulture).ToString(), text.AsSpan(1));
}
