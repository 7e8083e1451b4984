using Litterfall.Domain.Tanks;
using Litterfall.Running.Rounds;
using Litterfall.Running.Visits;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Tanks.Visits;

/// <summary>A step as it is ticked.</summary>
/// <param name="step">The step.</param>
public sealed class StepDraft(VisitStep step)
{
    /// <summary>Number of the tank.</summary>
    public string Tank => step.Tank;

    /// <summary>What to do.</summary>
    public string What => step.What;

    /// <summary>What is typed beside it.</summary>
    public string Hint =>
        step.Task switch
        {
            RoundPractice.Level => "cm",
            RoundPractice.Drain => "L",
            _ => "found",
        };

    /// <summary>True where it was done.</summary>
    public bool IsDone { get; set; }

    /// <summary>What was found.</summary>
    public string Found { get; set; } = "";

    /// <summary>As it is kept.</summary>
    public VisitStep Read()
    {
        var isNumber = Found.Trim().Length > 0 && StockWords.Plain(Found) is not null;
        return step with
        {
            IsDone = IsDone,
            Found = isNumber && Hint != "found" ? $"{Found.Trim().Replace(',', '.')} {Hint}" : Found.Trim(),
        };
    }
}

/// <summary>A visit as it is made: a checklist, parts, photos, and the invoice.</summary>
public sealed partial class VisitPage : ComponentBase
{
    private readonly List<VisitPart> parts = [];
    private readonly List<string> photos = [];
    private VisitView? view;
    private Kept<VisitContract>? kept;
    private List<StepDraft> steps = [];
    private DateOnly? due;
    private string lot = "";
    private string amount = "1";
    private string net = "";
    private string note = "";
    private bool isBilled = true;
    private string? told;
    private bool isGood = true;

    /// <summary>Number of the contract.</summary>
    [Parameter]
    public int Number { get; set; }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        kept = view.Contracts.FirstOrDefault(c => c.Value.Number == Number);
        if (kept is not null)
        {
            due = VisitPlan.Next(kept.Value, view.Visits);
            steps = [.. (await Desk.StepsAsync(view, kept.Value)).Select(s => new StepDraft(s))];
        }
    }

    private void AddPart()
    {
        var account = view!.Tanks.Stock.Book.Find(lot.Trim());
        var many = StockWords.Plain(amount);
        var price = net.Trim().Length == 0 ? 0 : StockWords.Price(net);
        var fault =
            account is null ? $"There is no lot {lot.Trim()}; choose one from the list."
            : many is not > 0 ? "Type how much was used, such as 1."
            : price is null ? "Type what the customer pays, such as 12.50, or leave it out."
            : null;
        (told, isGood) = (fault, fault is null);
        if (fault is null)
        {
            parts.Add(new(account!.Lot.Id, view.Tanks.Stock.GoodOf(account).Name, many!.Value, price!.Value));
            (lot, amount, net) = ("", "1", "");
        }
    }

    private async Task BringAsync(InputFileChangeEventArgs chosen)
    {
        var file = chosen.File;
        (string? Name, string? Trouble) taken = default;
        var fault = await Attempt.AtAsync(async () =>
            taken = await Photos.TakeAsync(file.Size, () => file.OpenReadStream(Photos.LargestFile))
        );
        fault ??= taken.Trouble;
        (told, isGood) = (fault, fault is null);
        if (taken.Name is { } name)
        {
            photos.Add(name);
        }
    }

    private async Task SaveAsync()
    {
        if (!steps.Any(s => s.IsDone))
        {
            (told, isGood) = ("Tick at least one step that was done.", false);
            return;
        }

        var visit = new TankVisit
        {
            Number = 0,
            Contract = Number,
            Day = view!.Tanks.Today,
            Due = due ?? view.Tanks.Today,
            Who = "",
            Steps = [.. steps.Select(s => s.Read())],
            Parts = [.. parts],
            Photos = [.. photos],
            Note = note.Trim(),
        };
        view = await Desk.LoadAsync();
        kept = view.Contracts.First(c => c.Value.Number == Number);
        var fault = await Desk.WriteAsync(view, kept, visit, isBilled);
        (told, isGood) = (fault ?? "The visit is saved. Its report stands among the visits.", fault is null);
        if (fault is null)
        {
            parts.Clear();
            photos.Clear();
            note = "";
            await LoadAsync();
        }
    }
}
