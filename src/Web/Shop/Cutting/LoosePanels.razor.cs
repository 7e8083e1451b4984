using Litterfall.Domain.Cutting;
using Litterfall.Web.Shop.Terms;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>Panels that are wanted beside the designs.</summary>
public sealed partial class LoosePanels
{
    private const double Longest = 10_000;
    private const double Most = 500;
    private readonly TypedText thickness = TypedText.ForNumber("Thickness, mm", null, "Empty for mesh.");
    private readonly TypedText part = new("What it is", "panel");
    private readonly TypedText length = TypedText.ForNumber("Length, mm", null);
    private readonly TypedText width = TypedText.ForNumber("Width, mm", null);
    private readonly TypedText count = TypedText.ForNumber("Pieces", 1);
    private string good = "";
    private int order;
    private string? fault;

    /// <summary>The table.</summary>
    [Parameter, EditorRequired]
    public required CuttingView View { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private async Task AddAsync()
    {
        var panel = new LoosePanel
        {
            Number = 0,
            Good = good,
            Millimeters = thickness.NumberOrNone(0.1, 100),
            Part = part.Required(),
            Length = length.Number(1, Longest),
            Width = width.Number(1, Longest),
            Count = (int)count.Number(1, Most),
            Order = order > 0 ? order : null,
        };
        var isWrong = new[] { thickness, part, length, width, count }.Any(f => f.Fault is not null);
        fault =
            good.Length == 0 ? "Choose the material."
            : isWrong ? "Put the marked fields right first; nothing was added."
            : null;
        if (fault is null)
        {
            await OnDone.InvokeAsync(await Desk.AddPanelAsync(panel));
        }
    }
}
