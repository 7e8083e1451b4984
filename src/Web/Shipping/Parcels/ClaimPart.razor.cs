using Litterfall.Domain.Dispatch;
using Litterfall.Store;
using Litterfall.Web.Shop.Terms;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shipping.Parcels;

/// <summary>A claim with its checklist and deadlines; the program does not decide it.</summary>
public sealed partial class ClaimPart : ComponentBase
{
    private IReadOnlyList<ChecklistLine> checklist = [];
    private bool isOpen;
    private DateTime? said;
    private DateTime? photo;
    private string met = "";
    private string species = "";
    private TypedText dead = TypedText.ForNumber("How many", 1);
    private ClaimOutcome outcome;
    private string words = "";
    private string why = "";
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

    /// <summary>The claim; null for none.</summary>
    [Parameter]
    public Claim? Claim { get; set; }

    /// <summary>Told after it is saved, in words.</summary>
    [Parameter]
    public EventCallback<(string Words, bool IsGood)> OnDone { get; set; }

    [Inject]
    private DispatchDesk Desk { get; set; } = null!;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (Claim is not { } known)
        {
            said ??= Plain(Desk.LocalNow);
            species = species.Length > 0 ? species : Kept.Value.Contents[0].Key;
            return;
        }

        (said, photo) = (Local(known.SaidAt), known.PhotoAt is { } at ? Local(at) : null);
        met = known.WasMet switch
        {
            true => "yes",
            false => "no",
            _ => "",
        };
        dead = TypedText.ForNumber("How many", known.Dead);
        (species, outcome, words, why) = (known.Species, known.Outcome, known.Words, known.Why);
        checklist = await Desk.ChecklistAsync(View, Kept.Value, known, Links);
    }

    private async Task SaveAsync()
    {
        var many = dead.Whole(0, 500);
        fault =
            dead.Fault is not null ? "The number of dead cannot be taken yet; the field says why."
            : said is null ? "Enter when the message came."
            : outcome != ClaimOutcome.Open && why.Trim().Length == 0 ? "Say why you decided so."
            : await Desk.KeepAsync(
                Kept.Value,
                new Claim
                {
                    Parcel = Kept.Value.Number,
                    SaidAt = Desk.Utc(said.Value),
                    PhotoAt = photo is { } at ? Desk.Utc(at) : null,
                    DeliveredAt = Claim?.DeliveredAt,
                    WasMet = met switch
                    {
                        "yes" => true,
                        "no" => false,
                        _ => null,
                    },
                    Species = species,
                    Dead = many,
                    Words = words.Trim(),
                    Outcome = outcome,
                    Why = why.Trim(),
                }
            );
        if (fault is null)
        {
            await OnDone.InvokeAsync(("The claim is saved and belongs to the evidence.", true));
        }
    }

    private DateTime Local(DateTime utc) => Plain(Desk.ToLocal(utc));

    private static DateTime Plain(DateTime at) => DateTime.SpecifyKind(at, DateTimeKind.Unspecified);
}
