using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Svg;
using Litterfall.Documents.Views;
using Litterfall.Domain.DesignFile;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace Litterfall.Web.Parts;

/// <summary>The drawing that is the instrument: to scale, alive with the forecast, with handles.</summary>
public sealed partial class DeskDrawing
{
    /// <summary>Nine points of the drawing are 14 px on the screen.</summary>
    private const double PixelsPerMillimeter = 14 / (9 * 25.4 / 72);

    private const double LeastRoom = 70;
    private const double MostRoom = 260;
    private static readonly ImmutableArray<(string Name, string Label)> Views =
    [
        ("section", "Section"),
        ("plan", "Plan"),
        ("front", "Front"),
        ("light", "Light"),
        ("view", "View"),
    ];

    /// <summary>Half of 44 px, mm.</summary>
    private const string Reach = "5";

    private ElementReference sheet;
    private DotNetObjectReference<DeskDrawing>? self;
    private ImmutableArray<Grip> grips = [];
    private ImmutableArray<Grip> held = [];
    private (object? Views, string View, int Hour, object? Light) drawnOf;
    private (Grip Grip, double Across, double Up)? keyed;
    private double width = 100;
    private double height = 100;
    private string Body = "";
    private string Caption = "";
    private bool prevent;
    private (double Width, double Height) Room = (176, 104);

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>section, plan, front or light.</summary>
    [Parameter]
    public string View { get; set; } = "section";

    /// <summary>Another view is chosen.</summary>
    [Parameter]
    public EventCallback<string> ViewChanged { get; set; }

    /// <summary>Hour of the forecast that is shown.</summary>
    [Parameter]
    public int Hour { get; set; }

    /// <summary>The part at hand.</summary>
    [Parameter]
    public string? Selected { get; set; }

    /// <summary>Another part is taken in hand.</summary>
    [Parameter]
    public EventCallback<string?> SelectedChanged { get; set; }

    /// <summary>The user's usual unit of length.</summary>
    [Parameter]
    public string Usual { get; set; } = "cm";

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Work.Look.Views is not { } views)
        {
            return;
        }

        Work.WantsLight = View == "light";
        var now = (
            (object?)views,
            View,
            View == "section" ? Hour : 0,
            View == "light" ? Work.Look.Light : null
        );
        if (now == drawnOf)
        {
            return;
        }

        drawnOf = now;
        var (drawing, found) = Drawn(views);
        grips = found;
        (width, height) = (drawing.Width, drawing.Height);
        Body = Inked.Of(SvgWriter.Write(drawing, "drawing"));
        Caption =
            View == "light"
                ? "to scale; plant light on the ground in µmol/m²/s; drag a lamp, a plant or a piece"
                : "to scale; drag a dot, or take it with the tab key and use the arrows";
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            self = DotNetObjectReference.Create(this);
            var size = await Js.InvokeAsync<double[]>("litterfall.grips", sheet, self);
            Fit(size[0], size[1]);
        }
    }

    /// <summary>The sheet has another size, px; the drawing fills it and its letters stay as large.</summary>
    [JSInvokable]
    public void Fit(double across, double up)
    {
        var room = (Millimeters(across), Millimeters(up));
        if (Math.Abs(room.Item1 - Room.Width) > 1 || Math.Abs(room.Item2 - Room.Height) > 1)
        {
            Room = room;
            drawnOf = default;
            OnParametersSet();
            StateHasChanged();
        }

        static double Millimeters(double pixels) =>
            Math.Clamp(pixels / PixelsPerMillimeter, LeastRoom, MostRoom);
    }

    /// <summary>A hand takes a grip.</summary>
    /// <param name="grip">Its number.</param>
    [JSInvokable]
    public Task Take(int grip)
    {
        held = grips;
        return grip < grips.Length ? PickAsync(grips[grip]) : Task.CompletedTask;
    }

    /// <summary>The hand moves it, mm of the drawing to the right and up.</summary>
    [JSInvokable]
    public void Drag(int grip, double across, double up)
    {
        if (grip < held.Length)
        {
            var one = held[grip];
            Work.Pass(d =>
                GripEdit.Moved(
                    d,
                    one,
                    (across / one.MillimetersPerMeter, up / one.MillimetersPerMeter),
                    Usual
                )
            );
        }
    }

    /// <summary>The hand lets go.</summary>
    [JSInvokable]
    public Task Drop(int grip) =>
        grip < held.Length ? Work.DropAsync($"moved {held[grip].Label}") : Task.CompletedTask;

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        self?.Dispose();
        return ValueTask.CompletedTask;
    }

    private (Drawing, ImmutableArray<Grip>) Drawn(DesignViews views)
    {
        var month = Work.Look.MonthIsOld ? null : Work.Look.Month;
        return View switch
        {
            "plan" => (views.Plan(Room), views.PlanGrips(Room)),
            "front" => (views.Front(Room), views.FrontGrips(Room)),
            "light" when Work.Look.Light is { } light => (
                views.LightPlan(Room, light),
                views.LightGrips(Room, light)
            ),
            _ => (
                DeskMoment.Of(month, Hour) is { } moment ? views.Section(Room, moment) : views.Section(Room),
                views.SectionGrips(Room)
            ),
        };
    }

    private Task PickAsync(Grip grip) =>
        grip.Part == Selected ? Task.CompletedTask : SelectedChanged.InvokeAsync(grip.Part);

    /// <summary>Arrow keys move by a millimeter or a sixteenth of an inch, with shift by ten.</summary>
    private async Task KeyAsync(Grip grip, KeyboardEventArgs key)
    {
        prevent = key.Key.StartsWith("Arrow", StringComparison.Ordinal);
        if (key.Key is "Enter" or "Escape")
        {
            await LeaveAsync(grip);
            return;
        }

        var path = (grip.Up ?? grip.Across)!.Path;
        var step = TypedLength.Step(TypedLength.TextAt(Work.Document, path), Usual) * (key.ShiftKey ? 10 : 1);
        var (right, up) = key.Key switch
        {
            "ArrowUp" => (0.0, step),
            "ArrowDown" => (0.0, -step),
            "ArrowRight" => grip.Across is null ? (0.0, step) : (step, 0.0),
            "ArrowLeft" => grip.Across is null ? (0.0, -step) : (-step, 0.0),
            _ => (0.0, 0.0),
        };
        if (right == 0 && up == 0)
        {
            return;
        }

        var start =
            keyed is { } k && k.Grip.Part == grip.Part && Paths(k.Grip) == Paths(grip) ? k : (grip, 0.0, 0.0);
        keyed = (start.Item1, start.Item2 + right, start.Item3 + up);
        var (from, a, u) = keyed.Value;
        Work.Pass(d => GripEdit.Moved(d, from, (a, u), Usual));
        await SettleSoonAsync();
    }

    /// <summary>Half a second after the last key the change is a version.</summary>
    private async Task SettleSoonAsync()
    {
        var mine = keyed;
        await Task.Delay(500);
        if (mine == keyed && keyed is { } k)
        {
            await LeaveAsync(k.Grip);
        }
    }

    private async Task LeaveAsync(Grip grip)
    {
        if (keyed is not null)
        {
            keyed = null;
            await Work.DropAsync($"moved {grip.Label}");
        }
    }

    private static string Paths(Grip grip) => $"{grip.Up?.Path} {grip.Across?.Path}";

    private static string Way(Grip grip) =>
        grip is { Up: not null, Across: not null } ? "both"
        : grip.Up is not null ? "up"
        : "across";

    private static string Label(Grip grip) => grip.Label;

    private static GripAxis Axis(Grip grip) => (grip.Up ?? grip.Across)!;

    private static string Now(Grip grip) => Millimeters(Axis(grip).Meters);

    private static string Least(Grip grip) => Millimeters(Axis(grip).Least);

    private static string Most(Grip grip) => Millimeters(Axis(grip).Most);

    private static string Millimeters(double meters) => FormattableString.Invariant($"{meters * 1000:0}");

    private string Said(Grip grip) =>
        string.Join(
            ", ",
            new[] { grip.Across, grip.Up }
                .OfType<GripAxis>()
                .Select(a => TypedLength.Write(a.Meters, TypedLength.TextAt(Work.Document, a.Path), Usual))
        );
}
