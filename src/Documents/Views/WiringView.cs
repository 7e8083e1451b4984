using Litterfall.Documents.Drawings;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Views;

/// <summary>
/// Which plug goes where, as a sketch: socket, the device that protects people, the strip, and each part with
/// its timer, its drip loop and its watts.
/// </summary>
public sealed class WiringView
{
    private const double Width = 190;
    private const double Strip = 9;
    private const double First = 52;
    private const double Line = 3.9;
    private const double Loop = 41;
    private const double Part = 50;
    private const double Labels = 65;
    private const double Shift = 4.5;
    private const int MostLamps = 2;
    private static readonly Pen Cable = new(Tone.Ink, 0.35);
    private readonly DesignNumbers numbers;
    private readonly Sketch sketch = new();
    private double lowest = Labels;

    private WiringView(DesignNumbers numbers) => this.numbers = numbers;

    /// <summary>The sketch; null where nothing is plugged in.</summary>
    /// <param name="numbers">The design.</param>
    public static Drawing? Draw(DesignNumbers numbers) =>
        ElectricalList.Of(numbers) is { Any: true } list ? new WiringView(numbers).Drawn(list) : null;

    private Drawing Drawn(ElectricalList list)
    {
        Feed();
        var columns = Columns(list);
        var room = (Width - First) / columns.Count;
        for (var i = 0; i < columns.Count; i++)
        {
            Column(columns[i], First + room * i, room, i == 0);
        }

        return sketch.Done(Width, lowest + 1);
    }

    /// <summary>The socket, the device and the strip.</summary>
    private void Feed()
    {
        const double Middle = Strip + 3.5;
        sketch.Key = "electrics";
        sketch.Rectangle(new(1, Strip - 1.5), 10, 10, Pen.Strong);
        sketch.Rings([new Ring(new(4, Middle), 0.8), new Ring(new(8, Middle), 0.8)], Pen.Thin, Tone.Ink);
        sketch.Line(new(11, Middle), new(20, Middle), Cable);
        sketch.Rectangle(new(20, Strip - 3.5), 16, 14, Pen.Strong, Tone.Field);
        sketch.Rings([new Ring(new(28, Middle), 2.2)], Pen.Thin, Tone.Paper);
        sketch.Line(new(28, Middle - 1.3), new(28, Middle + 1.3), Pen.Thin);
        sketch.Lines(
            [new([new(36, Middle), new(39, Middle), new(41, 26), new(45, 26), new(47, Middle)], false)],
            Cable
        );
        sketch.Rectangle(new(47, Strip), Width - 47, 7, Pen.Strong, Tone.Paper);
        sketch.Text(new(6, Strip + 13), "socket", Dimensions.Points, Align.Middle);
        var protection = PowerPlan.Of(numbers.Design).Protection;
        var trip = protection?.Trip is { } current ? $" Trips at {NumberText.Of(current)} or less." : "";
        Write(
            new(1, Strip + 19),
            37,
            $"{protection?.Name ?? "ground-fault device"}.{trip} Protects all that follows."
        );
        sketch.Text(
            new(47, Strip - 3),
            numbers.Design.Catalog.Find<EquipmentEntry>("socket-strip")?.Name ?? "socket strip",
            Dimensions.Points
        );
        sketch.Key = "";
    }

    private static List<(string Key, string Text, string Through)> Columns(ElectricalList list)
    {
        var lamps = list.Items.Where(i => IsLamp(i.Key)).ToList();
        const string day = "on a day timer";
        var columns = new List<(string, string, string)>();
        if (lamps.Count > MostLamps)
        {
            columns.Add(("lamps", $"{NumberText.Integer(lamps.Count)} lamps, watts on the build sheet", day));
        }
        else
        {
            columns.AddRange(lamps.Select(l => (l.Key, $"{l.Name}: {l.Power}", day)));
        }

        foreach (var item in list.Items.Where(i => !IsLamp(i.Key)))
        {
            var through = item.Key switch
            {
                "misting" => "on a timer of seconds",
                "heating" => "on its thermostat",
                "fan" => "on its low-voltage supply",
                _ => day,
            };
            var name = item.Key switch
            {
                "misting" => "mist pump",
                "fogger" => "fogger",
                "fan" => "fan",
                "heating" => "heat mat or cable",
                _ => item.Name,
            };
            columns.Add((item.Key, $"{name}: {item.Power}", through));
        }

        return columns;
    }

    private void Column(
        (string Key, string Text, string Through) column,
        double left,
        double room,
        bool isFirst
    )
    {
        var x = left + room / 2 - Shift;
        sketch.Key = column.Key;
        sketch.Rectangle(new(x - 4, Strip + 1.2), 8, 4.6, Pen.Thin, Tone.Field);
        sketch.Rectangle(new(x - 4, Strip + 7), 8, 7, Pen.Thin, Tone.Paper);
        sketch.Rings([new Ring(new(x, Strip + 10.5), 2.3)], Pen.Thin);
        sketch.Lines(
            [new([new(x, Strip + 8.9), new(x, Strip + 10.5), new(x + 1.4, Strip + 10.5)], false)],
            Pen.Thin
        );
        sketch.Lines(
            [
                new(
                    [
                        new(x, Strip + 14),
                        new(x, Loop - 2),
                        new(x + 1, Loop),
                        new(x + 4, Loop),
                        new(x + 5, Loop - 2),
                        new(x + 5, Loop - 8),
                        new(x + 6, Loop - 10),
                        new(x + 8, Loop - 10),
                        new(x + 9, Loop - 8),
                        new(x + 9, Part),
                    ],
                    false
                ),
            ],
            Cable
        );
        Symbol(column.Key, new(x + 9, Part + 4.5));
        if (isFirst)
        {
            sketch.Text(new(x - 1.5, Loop + 1), "drip loop", Dimensions.Points, Align.End, Tone.Quiet);
        }

        var wide = Math.Min(room - 3, 60);
        var words = new Spot(left + (room - wide) / 2, Labels);
        Write(words, wide, $"{column.Text}, {column.Through}");
        sketch.Key = "";
    }

    private void Symbol(string key, Spot at)
    {
        if (IsLamp(key))
        {
            sketch.Rectangle(at.Moved(-8, -4.5), 16, 3, Pen.Strong, Tone.Field);
            foreach (var dx in new[] { -5.0, 0.0, 5.0 })
            {
                sketch.Line(at.Moved(dx, -0.5), at.Moved(dx, 3), new Pen(Tone.Caution, 0.25));
            }

            return;
        }

        sketch.Rings([new Ring(at, 4.5)], Pen.Strong, Tone.Paper);
        switch (key)
        {
            case "misting":
                sketch.Area([at.Moved(-2, -3), at.Moved(-2, 3), at.Moved(3.4, 0)], Pen.Thin, Tone.Water, 0.4);
                break;
            case "heating":
                sketch.Lines(
                    [
                        new(
                            [at.Moved(-3, 1.5), at.Moved(-1, -1.5), at.Moved(1, 1.5), at.Moved(3, -1.5)],
                            false
                        ),
                    ],
                    new Pen(Tone.Stop, 0.4)
                );
                break;
            default:
                sketch.Line(at.Moved(-2.6, -2.6), at.Moved(2.6, 2.6), Pen.Strong);
                sketch.Line(at.Moved(-2.6, 2.6), at.Moved(2.6, -2.6), Pen.Strong);
                break;
        }
    }

    private void Write(Spot at, double width, string text)
    {
        var y = at.Y;
        foreach (var line in Lettering.Wrap(text, width, Dimensions.Points))
        {
            sketch.Text(new(at.X, y), line, Dimensions.Points);
            y += Line;
        }

        lowest = Math.Max(lowest, y);
    }

    private static bool IsLamp(string key) => key.StartsWith("lamps", StringComparison.Ordinal);
}
