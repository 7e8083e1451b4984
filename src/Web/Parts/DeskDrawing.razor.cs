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

    /// <summary>How near to a finger something lies under it, mm.</summary>
    private const double UnderFinger = 9;

    private const int MostUnder = 8;

    /// <summary>Half of 44 px, mm.</summary>
    private const string Reach = "5";

    private ElementReference sheet;
    private DotNetObjectReference<DeskDrawing>? self;
    private ImmutableArray<Grip> grips = [];
    private ImmutableArray<Grip> held = [];
    private ImmutableArray<Spot> spots = [];
    private ImmutableArray<Grip> under = [];
    private bool isHeld;
    private bool isTurning;
    private DrawnFrame? frame;
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

    /// <summary>An entry of the library is dropped: list, entry, and place in m.</summary>
    [Parameter]
    public EventCallback<(string List, string Entry, double X, double Y)> OnDropped { get; set; }

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
        (width, height) = (drawing.Width, drawing.Height);
        Spread(found);
        frame = views.Frame(View, Room, Work.Look.Light);
        Body = Inked.Of(SvgWriter.Write(drawing, "drawing"));
        Caption =
            View == "light"
                ? "To scale; plant light on the ground in µmol/m²/s. Drag a lamp, a plant or a piece."
                : "To scale. Drag a handle, or press Tab and use the arrow keys.";
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
        isHeld = true;
        under = [];
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
    public Task Drop(int grip)
    {
        isHeld = false;
        return grip < held.Length ? Work.DropAsync($"moved {held[grip].Label}") : Task.CompletedTask;
    }

    /// <summary>The hand lets go without having moved.</summary>
    [JSInvokable]
    public void Release() => isHeld = false;

    /// <summary>A finger rests on the drawing: what lies under it is listed.</summary>
    /// <param name="across">Where, mm of the drawing.</param>
    /// <param name="down">Where, mm of the drawing.</param>
    [JSInvokable]
    public void Under(double across, double down)
    {
        isHeld = false;
        under =
        [
            .. grips
                .Select((g, i) => (Grip: g, Far: Math.Min(Far(g.At), Far(spots[i]))))
                .Where(g => g.Far < UnderFinger)
                .OrderBy(g => g.Far)
                .Select(g => g.Grip)
                .DistinctBy(g => g.Label + g.Part)
                .Take(MostUnder),
        ];
        StateHasChanged();

        double Far(Spot spot) => Math.Sqrt(Math.Pow(spot.X - across, 2) + Math.Pow(spot.Y - down, 2));
    }

    /// <summary>An entry of the library is dropped on the drawing.</summary>
    /// <param name="list">What is added.</param>
    /// <param name="entry">Its key.</param>
    /// <param name="across">Where, mm of the drawing.</param>
    /// <param name="down">Where, mm of the drawing.</param>
    [JSInvokable]
    public Task PutDown(string list, string entry, double across, double down)
    {
        if (frame is not { } drawn || Work.Look.Shape is not { } shape)
        {
            return Task.CompletedTask;
        }

        var (right, up) = drawn.At(new Spot(across, down));
        var (length, depth) = (shape.Box.InsideLength.Si, shape.Box.InsideDepth.Si);
        var x = drawn.Across == 'x' ? right : length / 2;
        var y =
            drawn.Up == 'y' ? up
            : drawn.Across == 'y' ? right
            : depth * 0.6;
        return OnDropped.InvokeAsync((list, entry, Math.Clamp(x, 0, length), Math.Clamp(y, 0, depth)));
    }

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

    /// <summary>
    /// Handles apart from each other; while a hand holds one, each keeps the way it was moved aside.
    /// </summary>
    private void Spread(ImmutableArray<Grip> found)
    {
        var isSame = isHeld && found.Length == grips.Length && found.Length == spots.Length;
        spots = isSame
            ?
            [
                .. found.Select(
                    (g, i) =>
                        new Spot(g.At.X + spots[i].X - grips[i].At.X, g.At.Y + spots[i].Y - grips[i].At.Y)
                ),
            ]
            : GripFan.Spread(found, (width, height));
        grips = found;
    }

    /// <summary>Left and right, Home and End turn the views.</summary>
    private async Task TurnAsync(KeyboardEventArgs key)
    {
        var now = Views.Select(v => v.Name).ToList().IndexOf(View);
        var next = key.Key switch
        {
            "ArrowRight" or "ArrowDown" => (now + 1) % Views.Length,
            "ArrowLeft" or "ArrowUp" => (now + Views.Length - 1) % Views.Length,
            "Home" => 0,
            "End" => Views.Length - 1,
            _ => -1,
        };
        isTurning = next >= 0;
        if (next >= 0)
        {
            await ViewChanged.InvokeAsync(Views[next].Name);
            await Js.InvokeVoidAsync("litterfall.focus", $"tab-{Views[next].Name}");
        }
    }

    private Task ChooseAsync(Grip grip)
    {
        under = [];
        return SelectedChanged.InvokeAsync(FieldOf(grip));
    }

    /// <summary>The field a handle moves: its card opens with it in sight.</summary>
    private static string FieldOf(Grip grip) =>
        (grip.Up ?? grip.Across) is { } axis && axis.Path.StartsWith(grip.Part, StringComparison.Ordinal)
            ? axis.Path
            : grip.Part;

    private Task PickAsync(Grip grip) => SelectedChanged.InvokeAsync(FieldOf(grip));

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
