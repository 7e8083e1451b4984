using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Terms;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Shipping.Parcels;

/// <summary>Photo, hand-over, logger file and arrival; each becomes a link of the evidence.</summary>
public sealed partial class StepsPart : ComponentBase
{
    private const int MostDead = 500;
    private ImmutableArray<TypedText> dead = [];
    private string track = "";
    private string why = "";
    private DateTime? when;
    private bool isLate;
    private bool isBusy;
    private string? fault;

    /// <summary>The parcel.</summary>
    [Parameter, EditorRequired]
    public required Kept<Parcel> Kept { get; set; }

    /// <summary>What is known of dispatch.</summary>
    [Parameter, EditorRequired]
    public required DispatchView View { get; set; }

    /// <summary>Links so far.</summary>
    [Parameter, EditorRequired]
    public required IReadOnlyList<EvidenceEntry> Links { get; set; }

    /// <summary>Told after a step, in words.</summary>
    [Parameter]
    public EventCallback<(string Words, bool IsGood)> OnDone { get; set; }

    [Inject]
    private DispatchDesk Desk { get; set; } = null!;

    [Inject]
    private Photos Photos { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        when = DateTime.SpecifyKind(Desk.LocalNow, DateTimeKind.Unspecified);
        dead =
        [
            .. Kept.Value.Contents.Select(c =>
                TypedText.ForNumber(
                    string.Create(CultureInfo.InvariantCulture, $"Dead of {c.Count} {View.NameOf(c.Key)}"),
                    0
                )
            ),
        ];
    }

    private async Task StepAsync(Func<Task<string?>> step, string words)
    {
        (isBusy, fault) = (true, null);
        fault = await step();
        isBusy = false;
        if (fault is null)
        {
            await OnDone.InvokeAsync((words, true));
        }
    }

    private Task PhotoAsync(InputFileChangeEventArgs chosen) =>
        StepAsync(
            async () =>
            {
                (string? Name, string? Trouble) taken = default;
                var trouble = await Attempt.AtAsync(async () =>
                    taken = await Photos.TakeAsync(chosen.File.Size, () =>
                        chosen.File.OpenReadStream(Photos.LargestFile)
                    )
                );
                return trouble ?? taken.Trouble ?? await Desk.AddPhotoAsync(Kept.Value, taken.Name!);
            },
            "The photo belongs to the evidence now."
        );

    private Task LoggerAsync(InputFileChangeEventArgs chosen) =>
        StepAsync(
            async () =>
            {
                if (chosen.File.Size > DispatchDesk.LargestForecast)
                {
                    return "The file is too large (limit 5 MB).";
                }

                using var bytes = new MemoryStream();
                await using var stream = chosen.File.OpenReadStream(DispatchDesk.LargestForecast);
                await stream.CopyToAsync(bytes);
                return await Desk.AddLoggerAsync(View, Kept.Value, chosen.File.Name, bytes.ToArray());
            },
            "The logger file belongs to the evidence now."
        );

    private Task HandOverAsync() =>
        StepAsync(() => Desk.HandOverAsync(View, Kept, track.Trim()), "Handed over.");

    private Task DropAsync() =>
        StepAsync(
            async () =>
                why.Trim().Length == 0 ? "Say why it does not go." : await Desk.DropAsync(Kept, why.Trim()),
            "The clearance is taken back; its evidence stays."
        );

    private Task ArrivedAsync() =>
        StepAsync(
            async () =>
            {
                var counts = dead.Select(
                    (d, i) => d.Whole(0, Math.Min(MostDead, Kept.Value.Contents[i].Count))
                );
                ImmutableArray<int> read = [.. counts];
                return dead.Any(d => d.Fault is not null) ? "Some fields cannot be taken yet; each says why."
                    : when is not { } at ? "Enter when it was delivered."
                    : await Desk.ArrivedAsync(Kept, read, (Desk.Utc(at), isLate));
            },
            "Arrival written."
        );
}
