using System.Globalization;
using System.Text;

namespace Litterfall.UnitTests.Quantities.Openings;

/// <summary>Random boxes with lids, vents and doors of every kind a maker builds, as design files.</summary>
internal static class RandomBoxes
{
    /// <summary>A design file; the same for the same number.</summary>
    public static string Text(int seed)
    {
        var random = new Random(seed);
        var (length, depth, height) = (random.Next(300, 1600), random.Next(250, 800), random.Next(300, 1000));
        var front = random.Next(2) == 0;
        var cut = random.Next(4) > 0;
        var walls = random.Next(4, 9);
        var text = new StringBuilder("litterfall: 1\nname: random box\n");
        text.Append("box: { outside: { ")
            .Append(Line($"length: {length} mm, depth: {depth} mm, height: {height} mm }}, "))
            .Append(Line($"glass: {{ walls: {walls} mm, base: {random.Next(walls, 11)} mm }}, "))
            .Append(cut ? "panes: cut, " : "");
        if (front)
        {
            text.Append(Line($"opening: front, sill: {random.Next(60, 200)} mm, "));
            text.Append(Doors(random));
        }

        if (random.Next(5) == 0)
        {
            text.Append("material: acrylic-sheet, ");
        }

        text.Append("locked: false }\n");
        text.Append("floor: { soil: { recipe: ready-rainforest, depth: 4 cm } }\n");
        if (random.Next(6) > 0)
        {
            text.Append(Lid(random, depth));
        }

        text.Append(Vents(random, (length, depth, height)));
        return text.ToString();
    }

    private static string Doors(Random random) =>
        random.Next(4) switch
        {
            0 => "",
            1 => Line(
                $"doors: {{ kind: sliding, count: {random.Next(2, 4)}, overlap: {random.Next(20, 31)} mm }}, "
            ),
            2 => Line($"doors: {{ kind: hinged, count: {random.Next(1, 3)} }}, "),
            _ => "doors: { kind: lift-out }, ",
        };

    private static string Lid(Random random, int depth)
    {
        var fit =
            random.Next(2) == 0
                ? Line($"gap: {random.Next(1, 4)} mm")
                : Line($"overlap: {random.Next(3, 9)} mm");
        var sheet = random.Next(3) == 0 ? "acrylic-sheet" : "glass";
        var strip = random.Next(2) == 0 ? Line($", strip: {random.Next(20, 45)} mm, latched: true") : "";
        var panes = random.Next(3) == 0 ? Line($", panes: {random.Next(2, 4)}") : "";
        var flap = random.Next(4) == 0 ? Line($", hinged: {Math.Min(120, depth / 4)} mm") : "";
        var thick = random.Next(3, 7);
        return $"lid: {{ material: {sheet}, thickness: {thick} mm, {fit}{strip}{panes}{flap} }}\n";
    }

    private static string Vents(Random random, (int Length, int Depth, int Height) box)
    {
        var list = new List<string>();
        for (var i = random.Next(0, 4); i > 0; i--)
        {
            var side = new[] { "top", "front", "back", "left", "right" }[random.Next(5)];
            var run = side is "left" or "right" ? box.Depth : box.Length;
            var size = random.Next(4) switch
            {
                0 => Line($"area: {random.Next(20, 120)} cm2"),
                1 => Line($"diameter: {random.Next(30, 70)} mm"),
                _ => Line($"length: {random.Next(60, run)} mm, width: {random.Next(10, 60)} mm"),
            };
            var height =
                side == "top" || random.Next(3) == 0
                    ? ""
                    : Line($", height: {random.Next(40, box.Height)} mm");
            var along = random.Next(2) == 0 ? Line($", along: {random.Next(40, run)} mm") : "";
            var behind =
                side == "top" && random.Next(2) == 0
                    ? Line($", behind: {random.Next(40, box.Depth)} mm")
                    : "";
            list.Add($"{{ {size}{height}{along}{behind}, mesh: steel-gauze-0.5, side: {side} }}");
        }

        return list.Count == 0 ? "" : $"vents: [ {string.Join(", ", list)} ]\n";
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
