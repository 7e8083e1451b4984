using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Views;

/// <summary>
/// The way of the water as a sketch, not to scale: tank, pump, check valve, tube, nozzles, outlet, hose and
/// bottle, each with a number, its size and its length beside it.
/// </summary>
public sealed class PlumbingView
{
    private const double Width = 190;
    private const double ListAt = 126;
    private const double Ground = 86;
    private const double Left = 60;
    private const double Right = 108;
    private const double Top = 20;
    private const double Bottom = 76;
    private const double Row = 30;
    private const double RowEnd = 88;
    private const double Tube = 100;
    private const int MostDrawn = 5;
    private static readonly Pen Water = new(Tone.Water, 0.5);
    private readonly DesignNumbers numbers;
    private readonly bool inches;
    private readonly Sketch sketch = new();
    private readonly Balloons balloons;

    private PlumbingView(DesignNumbers numbers)
    {
        this.numbers = numbers;
        inches = Imperial.IsUsed(numbers.Design.Design);
        balloons = new Balloons(sketch, inches);
    }

    /// <summary>The sketch; null for a box without misting and drain.</summary>
    /// <param name="numbers">The design.</param>
    public static Drawing? Draw(DesignNumbers numbers)
    {
        var design = numbers.Design.Design;
        return design is { Misting: null, Drain: null } ? null : new PlumbingView(numbers).Drawn();
    }

    private Drawing Drawn()
    {
        Box();
        if (MistPlan.Of(numbers.Design, numbers.Box) is { } plan)
        {
            Supply(plan);
            Ways(plan);
            Nozzles(plan);
        }

        Dip();
        Feet();
        if (DrainPlan.Of(numbers.Design, numbers.Box) is { } drain)
        {
            Drain(drain);
        }

        var list = balloons.List(
            (new(ListAt, 0), Width - ListAt, Ground + 4),
            (new(0, Ground + 4), ListAt - 5)
        );
        return sketch.Done(Width, Math.Max(Ground + 3, list));
    }

    private void Box()
    {
        sketch.Line(new(0, Ground), new(ListAt - 5, Ground), new Pen(Tone.Rule, 0.4));
        sketch.Key = "floor";
        var layer = numbers.Design.Design.Floor.Drainage is null ? 0 : 10;
        if (layer > 0)
        {
            sketch.Area(
                Sketch.Corners(new(Left, Bottom - layer), Right - Left, layer),
                null,
                Tone.Water,
                0.2
            );
        }

        sketch.Area(Sketch.Corners(new(Left, Bottom - 22), Right - Left, 22 - layer), null, Tone.Earth, 0.25);
        sketch.Key = "box";
        sketch.Rectangle(new(Left, Top), Right - Left, Bottom - Top, new Pen(Tone.Glass, 0.8));
        sketch.Line(new(Left, Bottom), new(Left, Ground), new Pen(Tone.Rule, 0.4));
        sketch.Line(new(Right, Bottom), new(Right, Ground), new Pen(Tone.Rule, 0.4));
        sketch.Key = "";
    }

    /// <summary>Tank, filter, pump and check valve.</summary>
    private void Supply(MistPlan plan)
    {
        const string Key = "misting";
        sketch.Key = Key;
        sketch.Rectangle(new(2, 64), 20, Ground - 64, Pen.Strong);
        sketch.Area(Sketch.Corners(new(2.3, 70), 19.4, Ground - 70.2), null, Tone.Water, 0.25);
        sketch.Rectangle(new(15.5, 79), 3, 5, Pen.Thin, Tone.Field);
        sketch.Lines([new([new(17, 79), new(17, 54), new(29, 54)], false)], Water);
        sketch.Rectangle(new(29, 49), 10, 10, Pen.Strong, Tone.Paper);
        sketch.Lines([new([new(39, 54), new(44, 54)], false), new([new(48, 54), new(56, 54)], false)], Water);
        sketch.Area([new(44, 51.5), new(44, 56.5), new(48, 54)], Pen.Thin, Tone.Paper);
        sketch.Line(new(48, 51.5), new(48, 56.5), Pen.Strong);
        sketch.Key = "";
        Measure(new(22.5, 52.4), EquipmentPolicy.Suction.Si);
        if (!plan.IsEntered)
        {
            Measure(new(47.5, 63), EquipmentPolicy.Way.Si);
        }

        balloons.Add(new(8.5, 76), new(8.5, 76), Named(plan.Tank, "water tank"), Key);
        balloons.Add(new(8.5, 82.5), new(15.5, 81.5), Name("mist-filter"), Key);
        balloons.Add(new(34, 54), new(34, 54), Pump(plan), Key);
        balloons.Add(new(46, 46), new(46, 52), $"{Name("check-valve")}, arrow to the box", Key);
    }

    private static string Pump(MistPlan plan)
    {
        var power = plan.Pump?.Power is { } watts ? $", {NumberText.Of(watts)} by the library" : "";
        var many = plan.PumpsEach.Si > 1 ? $"{NumberText.Whole(plan.PumpsEach)} × " : "";
        return $"{many}{Named(plan.Pump, "mist pump")}: at least {NumberText.Whole(plan.Need)} mL/min{power}";
    }

    /// <summary>The tube up the back and into the row of nozzles.</summary>
    private void Ways(MistPlan plan)
    {
        const string Key = "misting";
        sketch.Key = Key;
        var row = new Contour(
            [new(56, 54), new(56, 12), new(Left + 5, 12), new(Left + 5, Row), new(RowEnd, Row)],
            false
        );
        sketch.Lines([row], Water);
        sketch.Key = "";
        sketch.Add(
            new TextMark(new(54.4, 36), Lengths.Brief(plan.Rise.Si, inches), Dimensions.Points)
            {
                Upright = true,
                Align = Align.Middle,
                Key = Key,
                Layer = Layers.Label,
            }
        );
        sketch.Text(
            new(Left + 9, 15),
            $"{Lengths.Brief(plan.Along.Si, inches)} to and along the row",
            Dimensions.Points
        );
        var shared =
            plan.Sharing.Si > 1
                ? $"; {NumberText.Whole(plan.Sharing)} boxes in a row share it, a T to each"
                : "";
        balloons.Add(new(51.5, 24), new(56, 24), $"{Bought(plan)}{shared}", Key);
        balloons.Add(
            new(51.5, 9),
            new(56, 12),
            $"{NumberText.Whole(EquipmentPolicy.ElbowsEach)} × {Name("mist-elbow")}",
            Key
        );
    }

    private string Bought(MistPlan plan)
    {
        var way = plan.IsEntered ? "" : "; the way from pump to box is assumed";
        return $"{Name(inches ? "mist-tube-quarter-inch" : "mist-tube-6")}: "
            + $"{Lengths.Way(plan.Tubing.Si, inches)} with {NumberText.Whole(EquipmentPolicy.Slack)} % for "
            + $"bends{way}";
    }

    private void Nozzles(MistPlan plan)
    {
        const string Key = "misting";
        var count = (int)plan.NozzlesEach.Si;
        var shown = Math.Min(count, MostDrawn);
        sketch.Key = "misting.nozzles";
        var first = Left + 11;
        var step = shown > 1 ? (RowEnd - 4 - first) / (shown - 1) : 0;
        for (var i = 0; i < shown; i++)
        {
            var x = first + i * step;
            sketch.Rectangle(new(x - 0.9, Row - 0.9), 1.8, 1.8, Pen.Thin, Tone.Ink);
            sketch.Area(
                [new(x - 1.2, Row + 3), new(x + 1.2, Row + 3), new(x, Row + 0.9)],
                Pen.Thin,
                Tone.Water
            );
            ImmutableArray<Contour> spray =
            [
                .. new[] { -2.6, 0.0, 2.6 }.Select(dx => new Contour(
                    [new(x + dx * 0.3, Row + 4), new(x + dx, Row + 9)],
                    false
                )),
            ];
            sketch.Lines(spray, new Pen(Tone.Water, 0.2, 0.8));
        }

        sketch.Rectangle(new(RowEnd, Row - 1.2), 1.4, 2.4, Pen.Thin, Tone.Ink);
        sketch.Key = "";
        balloons.Add(new(first, Row - 6), new(first, Row - 0.9), $"{Many(count)}{Name("mist-tee")}", Key);
        var flow = $"{NumberText.Of(MistingDay.Each(numbers.Design)!)} each, measured in a cup";
        balloons.Add(
            new(first, Row + 14),
            new(first, Row + 3),
            $"{Many(count)}{Name("mist-nozzle")}, {flow}",
            "misting.nozzles"
        );
        balloons.Add(new(RowEnd + 6, Row - 5), new(RowEnd + 1.4, Row), Name("mist-end-cap"), Key);
    }

    private void Dip()
    {
        if (numbers.Design.Design.Floor.Drainage is null)
        {
            return;
        }

        const string Key = "floor.drainage";
        sketch.Key = Key;
        sketch.Rectangle(
            new(Tube - 1.2, Top + 1.5),
            2.4,
            Bottom - Top - 1.9,
            new Pen(Tone.Ink, 0.25),
            Tone.Paper
        );
        sketch.Key = "";
        var length = Lengths.Edge(numbers.Box.InsideHeight.Si, inches);
        balloons.Add(new(91.5, 48), new(Tube - 1.2, 48), $"{Name("dip-tube")}, {length} long", Key);
    }

    private void Feet()
    {
        if (RaisedFeet.Of(numbers.Design, numbers.Box) is not { } feet)
        {
            return;
        }

        const string Key = "floor.drainage.raised";
        sketch.Key = Key;
        for (var x = Left + 3; x < Tube - 6; x += 10)
        {
            sketch.Rectangle(new(x, Bottom - 10), 2, 9.6, Pen.Thin, Tone.Field);
        }

        sketch.Key = "";
        balloons.Add(
            new(70.5, 71),
            new(65, 71),
            $"{NumberText.Whole(feet.Count)} × {Name("floor-foot")}, {Lengths.Edge(feet.Height.Si, inches)} "
                + $"high, one every {Lengths.Edge(EquipmentPolicy.FeetSpan.Si, inches)}",
            Key
        );
    }

    private void Drain(DrainPlan plan)
    {
        const string Key = "drain";
        sketch.Key = Key;
        sketch.Rectangle(new(110, 77.5), 10, Ground - 77.5, Pen.Strong);
        sketch.Area(Sketch.Corners(new(110.3, 81), 9.4, Ground - 81.2), null, Tone.Water, 0.25);
        if (plan.Kind == DrainKind.Siphon)
        {
            Siphon(plan);
        }
        else
        {
            Outlet(plan);
        }

        balloons.Add(
            new(122.8, 82.5),
            new(120, 82.5),
            "bottle below the box, emptied before it is full",
            Key
        );
    }

    private void Siphon(DrainPlan plan)
    {
        sketch.Lines([new([new(Tube, 74), new(Tube, 17), new(115, 17), new(115, 82)], false)], Water);
        sketch.Key = "";
        balloons.Add(
            new(115, 40),
            new(115, 40),
            $"{Name("siphon")}, {Lengths.Way(plan.HoseLength.Si, inches)}, taken out after use",
            "drain"
        );
    }

    private void Outlet(DrainPlan plan)
    {
        const double Level = 68;
        if (plan.Kind == DrainKind.Standpipe)
        {
            const double Pipe = 94;
            sketch.Rectangle(
                new(Pipe - 1.2, Level),
                2.4,
                Bottom - Level,
                new Pen(Tone.Ink, 0.25),
                Tone.Paper
            );
            sketch.Lines([new([new(Pipe, Bottom), new(Pipe, 80), new(113, 80)], false)], Water);
            sketch.Area(Sketch.Corners(new(Pipe - 2.5, Bottom - 1), 5, 2.4), Pen.Thin, Tone.Ink);
            sketch.Rectangle(new(Pipe + 5, 78.8), 2.4, 2.4, Pen.Thin, Tone.Paper);
            sketch.Key = "";
            var height = plan.Standing is { } tall ? $", {Lengths.Edge(tall.Si, inches)} high" : "";
            balloons.Add(
                new(86.5, 62),
                new(Pipe, Level),
                $"{Name("standpipe")}{height}, strainer on top",
                "drain"
            );
            balloons.Add(new(85, 81.5), new(Pipe - 2.5, Bottom + 0.6), Fitting(plan), "drain");
            balloons.Add(new(115, 71), new(112, 80), Hose(plan), "drain");
            return;
        }

        sketch.Lines([new([new(Right + 3, Level), new(115, Level), new(115, 82)], false)], Water);
        sketch.Rectangle(new(Right - 3, Level - 1.6), 6, 3.2, Pen.Thin, Tone.Paper);
        sketch.Rectangle(new(Right - 4.5, Level - 2.2), 1.5, 4.4, Pen.Thin, Tone.Field);
        sketch.Rectangle(new(113.8, 72), 2.4, 2.4, Pen.Thin, Tone.Paper);
        sketch.Key = "";
        balloons.Add(new(115, 60), new(Right + 1, Level - 1.6), $"{Fitting(plan)}; strainer inside", "drain");
        balloons.Add(new(121, 71), new(115, 70), Hose(plan), "drain");
    }

    private string Fitting(DrainPlan plan)
    {
        var hole = $"hole {Lengths.Edge(plan.Hole!.Si, inches)}: measure the fitting first";
        return $"bulkhead fitting with seals, {hole}";
    }

    private string Hose(DrainPlan plan) =>
        $"{plan.Hose?.Name ?? "drain hose"}, {Lengths.Way(plan.HoseLength.Si, inches)} (way assumed), "
        + "falling all the way, with tap and clips";

    private void Measure(Spot at, double meters) =>
        sketch.Text(at, Lengths.Brief(meters, inches), Dimensions.Points, Align.Middle);

    private static string Many(int count) => $"{NumberText.Integer(count)} × ";

    private string Name(string key) => Named(numbers.Design.Catalog.Find<EquipmentEntry>(key), key);

    private static string Named(EquipmentEntry? entry, string other) =>
        entry?.Name ?? other.Replace('-', ' ');
}
