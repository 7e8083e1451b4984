using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Shipping.Arrivals;

/// <summary>How parcels arrived, what that says of the next ones, and a check of exported evidence.</summary>
public sealed partial class ArrivalsPage : ComponentBase
{
    private const int MostShown = 12;
    private const int LargestExport = 64 * 1024 * 1024;
    private DispatchView? view;
    private LossShow? losses;
    private string checkedWords = "";
    private bool isWhole;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        view = await Desk.LoadAsync();
        losses = LossShow.From(view, await Desk.ArrivalsAsync());
    }

    private async Task CheckAsync(InputFileChangeEventArgs chosen)
    {
        if (chosen.File.Size > LargestExport)
        {
            (isWhole, checkedWords) = (false, "The file is too large (limit 64 MB).");
            return;
        }

        using var bytes = new MemoryStream();
        await using var stream = chosen.File.OpenReadStream(LargestExport);
        await stream.CopyToAsync(bytes);
        (isWhole, checkedWords) = await Desk.CheckExportAsync(bytes.ToArray());
    }

    private async Task CheckAllAsync() => (isWhole, checkedWords) = await Desk.CheckAllAsync();
}
