using Litterfall.Domain.Cutting;
using Litterfall.Web.Shop.Terms;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>How one good is cut here, in plain words.</summary>
public sealed partial class RulesForm
{
    private const double Longest = 10_000;
    private TypedText kerf = null!;
    private TypedText trim = null!;
    private TypedText strip = null!;
    private TypedText edge = null!;
    private TypedText stages = null!;
    private TypedText offcutShort = null!;
    private TypedText offcutLong = null!;
    private TypedText worth = null!;
    private TypedText length = null!;
    private TypedText width = null!;
    private CutTool tool;
    private bool isCutHere;
    private bool mayTurn;
    private bool isRoll;
    private string? fault;

    /// <summary>The table.</summary>
    [Parameter, EditorRequired]
    public required CuttingView View { get; set; }

    /// <summary>The rules.</summary>
    [Parameter, EditorRequired]
    public required CuttingRules Rules { get; set; }

    /// <summary>Told with null when they were written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private IEnumerable<(string Key, TypedText Field)> Fields =>
        [
            ("kerf", kerf),
            ("trim", trim),
            ("strip", strip),
            ("edge", edge),
            ("stages", stages),
            ("short", offcutShort),
            ("long", offcutLong),
            ("worth", worth),
            ("length", length),
            ("width", width),
        ];

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        (tool, isCutHere, mayTurn, isRoll) = (Rules.Tool, Rules.IsCutHere, Rules.MayTurn, Rules.IsRoll);
        kerf = Number("Width a cut takes, mm", Rules.Kerf);
        trim = Number("Trimmed off each edge, mm", Rules.Trim, "Of a roll, off the two long edges.");
        strip = Number(
            "Narrowest strip that breaks off, mm",
            Rules.NarrowestStrip,
            "Scored glass: never under twice its thickness."
        );
        edge = Number("Added on each side for grinding, mm", Rules.EdgeAllowance);
        stages = Number("Most stages of cuts", Rules.Stages, "Each across those before. Empty for any.");
        offcutShort = Number("Smallest offcut kept, short edge, mm", Rules.OffcutShort);
        offcutLong = Number("Smallest offcut kept, long edge, mm", Rules.OffcutLong);
        worth = Number(
            "Worth of an offcut, % of new material",
            100 * Rules.OffcutWorth,
            "30 to 60: how likely it is used."
        );
        length = Number("Usual sheet, length, mm", Rules.SheetLength, "Where a lot does not say its size.");
        width = Number("Usual sheet or roll, width, mm", Rules.SheetWidth);
    }

    private string Id(string key) => $"{Rules.Good}-{key}";

    private static TypedText Number(string label, double? value, string help = "") =>
        TypedText.ForNumber(label, value, help);

    private async Task SaveAsync()
    {
        const double kerfMost = 20;
        const double trimMost = 200;
        var rules = Rules with
        {
            IsCutHere = isCutHere,
            Tool = tool,
            MayTurn = mayTurn,
            IsRoll = isRoll,
            Kerf = kerf.Number(0, kerfMost),
            Trim = trim.Number(0, trimMost),
            NarrowestStrip = strip.Number(0, trimMost),
            EdgeAllowance = edge.Number(0, kerfMost),
            Stages = (int?)stages.NumberOrNone(2, 9),
            OffcutShort = offcutShort.Number(1, Longest),
            OffcutLong = offcutLong.Number(1, Longest),
            OffcutWorth = worth.Number(30, 60) / 100,
            SheetLength = length.NumberOrNone(1, Longest),
            SheetWidth = width.NumberOrNone(1, Longest),
            Source = "your own",
        };
        fault = Fields.Select(f => f.Field.Fault).FirstOrDefault(f => f is not null) is { }
            ? "Put the marked fields right first; nothing was changed."
            : null;
        if (fault is null)
        {
            await OnDone.InvokeAsync(await Desk.KeepRulesAsync(View, rules));
        }
    }
}
