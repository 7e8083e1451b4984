using System.Globalization;
using System.Text;
using Litterfall.Domain.Units;

namespace Litterfall.Web.Measuring;

/// <summary>The design of a measured tank, with a note of what was read and what was assumed.</summary>
public static class TankText
{
    private const string Plain = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 ./%-";

    // Longest text that a design takes, characters.
    private const int LongestNote = 200;
    private const int LongestWord = 150;

    // Own choice where nothing was read: the usual glass and lid of bought tanks.
    private const string UsualLid = "4 mm";
    private const string UsualOpen = "100 %";

    /// <summary>The text of the design.</summary>
    /// <param name="draft">What was read.</param>
    /// <param name="name">Name of the design.</param>
    /// <param name="today">Day of the measuring.</param>
    public static string Of(TankDraft draft, string name, DateOnly today)
    {
        var text = new StringBuilder();
        text.Append("litterfall: 1\nname: ").Append(Quoted(name)).Append('\n');
        if (Day(draft.Planted) is { } planted)
        {
            text.Append("planted: ").Append(Iso(planted)).Append('\n');
        }

        Box(text, draft);
        Floor(text, draft);
        Air(text, draft);
        Life(text, draft);
        Room(text, draft);
        if (Has(draft.Level) && !IsBare(draft))
        {
            text.Append("start: { level: ").Append(Value(draft.Level, draft.Unit)).Append(" }\n");
        }

        text.Append("notes:\n");
        foreach (var note in Notes(draft, today))
        {
            text.Append("  - ").Append(Quoted(note)).Append('\n');
        }

        if (draft.Photos.Count > 0)
        {
            text.Append("photos: [ ").Append(string.Join(", ", draft.Photos.Select(Quoted))).Append(" ]\n");
        }

        return text.ToString();
    }

    /// <summary>What was measured and what was not, each in a sentence.</summary>
    /// <param name="draft">What was read.</param>
    /// <param name="today">Day of the measuring.</param>
    public static IEnumerable<string> Notes(TankDraft draft, DateOnly today)
    {
        var edges = draft.IsOutside ? "outside" : "inside";
        (string What, bool Is)[] parts =
        [
            ($"{edges} length ({Count(draft.Length)})", draft.Length.Any(Has)),
            ($"{edges} depth ({Count(draft.Depth)})", draft.Depth.Any(Has)),
            ($"{edges} height ({Count(draft.Height)})", draft.Height.Any(Has)),
            ("glass of the walls", Has(draft.Walls)),
            ("glass of the base", Has(draft.Base)),
            ("sill", draft.IsFront && Has(draft.Sill)),
            (
                "lid",
                draft.Lid == "glass" ? Has(draft.LidThickness) : draft.Lid == "mesh" && Has(draft.LidOpen)
            ),
            ("vents", draft.Vents.Exists(v => Has(v.Length) && Has(v.Width))),
            ("drainage layer", Has(draft.Drainage)),
            ("soil", Has(draft.SoilFront)),
            ("leaves", Has(draft.Leaves)),
            ("water level", Has(draft.Level)),
            ("room temperature", Has(draft.RoomTemperature)),
            ("room humidity", Has(draft.RoomHumidity)),
        ];
        var measured = parts.Where(p => p.Is).Select(p => p.What);
        return
        [
            .. Lines(FormattableString.Invariant($"Measured on {today:d MMMM yyyy}: "), measured),
            .. Lines("Not measured, assumed: ", Assumed(draft)),
            .. Has(draft.Remark)
                ? Lines("", draft.Remark.ReplaceLineEndings(" ").Trim().Split(' '), " ", "")
                : [],
        ];
    }

    /// <summary>Words after a beginning, on as many lines as notes of a design need.</summary>
    private static IEnumerable<string> Lines(
        string begin,
        IEnumerable<string> words,
        string between = ", ",
        string end = "."
    )
    {
        var line = new StringBuilder(begin);
        var isFirst = true;
        foreach (var word in words.Select(w => w.Length > LongestWord ? w[..LongestWord] : w))
        {
            if (!isFirst && line.Length + between.Length + word.Length + end.Length > LongestNote)
            {
                yield return line + end;
                line.Clear().Append(begin);
                isFirst = true;
            }

            line.Append(isFirst ? "" : between).Append(word);
            isFirst = false;
        }

        if (!isFirst)
        {
            yield return line + end;
        }
    }

    private static IEnumerable<string> Assumed(TankDraft draft)
    {
        if (draft.Lid == "glass" && !Has(draft.LidThickness))
        {
            yield return $"a lid of {UsualLid} glass";
        }

        if (draft.Lid == "mesh" && !Has(draft.LidOpen))
        {
            yield return "a lid all of mesh";
        }

        if (IsBare(draft))
        {
            yield return "all layers, for the tank is bare";
        }

        if (Has(draft.Drainage))
        {
            yield return "kind of drainage grains, plastic mesh over them";
        }

        if (Has(draft.SoilFront))
        {
            yield return "soil mix";
        }

        if (Has(draft.Leaves))
        {
            yield return "kind of leaves";
        }

        if (draft.Plants.Count > 0)
        {
            yield return "places of plants";
        }
    }

    private static void Box(StringBuilder text, TankDraft draft)
    {
        text.Append("box:\n  ").Append(draft.IsOutside ? "outside" : "inside").Append(":\n");
        foreach (
            var (key, readings) in new[]
            {
                ("length", draft.Length),
                ("depth", draft.Depth),
                ("height", draft.Height),
            }
        )
        {
            var values = readings.Where(Has).Select(r => Value(r, draft.Unit));
            text.Append("    ").Append(key).Append(": [ ").Append(string.Join(", ", values)).Append(" ]\n");
        }

        if (Has(draft.Walls))
        {
            var (walls, under) = (
                Glass(draft.Walls),
                Has(draft.Base) ? Glass(draft.Base) : Glass(draft.Walls)
            );
            text.Append("  glass: { walls: ").Append(walls).Append(", base: ").Append(under).Append(" }\n");
        }

        text.Append("  opening: ").Append(draft.IsFront ? "front" : "top").Append('\n');
        if (draft.IsFront && Has(draft.Sill))
        {
            text.Append("  sill: ").Append(Value(draft.Sill, draft.Unit)).Append('\n');
        }
    }

    private static void Floor(StringBuilder text, TankDraft draft)
    {
        text.Append("floor:\n");
        if (IsBare(draft))
        {
            text.Append("  drainage: { material: ").Append(Quoted(draft.Grains)).Append(", depth: 4 cm }\n");
            text.Append("  barrier: { material: plastic-fly-screen }\n");
            text.Append("  soil: { recipe: ").Append(Quoted(draft.Mix)).Append(", depth: 6 cm }\n");
            text.Append("  litter: { material: oak-leaves, depth: 2 cm }\n");
            return;
        }

        if (Has(draft.Drainage))
        {
            text.Append("  drainage: { material: ").Append(Quoted(draft.Grains)).Append(", depth: ");
            text.Append(Value(draft.Drainage, draft.Unit)).Append(" }\n");
            text.Append("  barrier: { material: plastic-fly-screen }\n");
        }

        if (Has(draft.SoilFront))
        {
            var front = Value(draft.SoilFront, draft.Unit);
            var depth = Has(draft.SoilBack)
                ? $"front: {front}, back: {Value(draft.SoilBack, draft.Unit)}"
                : $"depth: {front}";
            text.Append("  soil: { recipe: ")
                .Append(Quoted(draft.Mix))
                .Append(", ")
                .Append(depth)
                .Append(" }\n");
        }

        if (Has(draft.Leaves))
        {
            text.Append("  litter: { material: oak-leaves, depth: ");
            text.Append(Value(draft.Leaves, draft.Unit)).Append(" }\n");
        }
    }

    /// <summary>True for a tank with nothing in it yet: it gets usual layers (own choice).</summary>
    private static bool IsBare(TankDraft draft) =>
        !Has(draft.Drainage) && !Has(draft.SoilFront) && !Has(draft.Leaves);

    private static void Air(StringBuilder text, TankDraft draft)
    {
        if (draft.Lid == "glass")
        {
            var thick = Has(draft.LidThickness) ? Glass(draft.LidThickness) : UsualLid;
            text.Append("lid: { material: float-glass, thickness: ").Append(thick).Append(" }\n");
        }
        else if (draft.Lid == "mesh")
        {
            var open = Has(draft.LidOpen) ? Value(draft.LidOpen, "%") : UsualOpen;
            text.Append("lid: { material: steel-gauze-1.0, share: ").Append(open).Append(" }\n");
        }

        var vents = draft
            .Vents.Where(v => Has(v.Length) && Has(v.Width))
            .Select(v =>
                $"{{ side: {v.Side}, length: {Value(v.Length, draft.Unit)}, "
                + $"width: {Value(v.Width, draft.Unit)}, mesh: steel-gauze-0.5 }}"
            )
            .ToList();
        if (vents.Count > 0)
        {
            text.Append("vents: [ ").Append(string.Join(", ", vents)).Append(" ]\n");
        }
    }

    private static void Life(StringBuilder text, TankDraft draft)
    {
        List(text, "plants", "plant", draft.Plants);
        List(text, "animals", "animal", draft.Animals);
    }

    private static void List(StringBuilder text, string list, string key, List<CountDraft> all)
    {
        if (all.Count > 0)
        {
            var items = all.Select(one =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{{ {key}: {Quoted(one.Key)}, count: {one.Count} }}"
                )
            );
            text.Append(list).Append(": [ ").Append(string.Join(", ", items)).Append(" ]\n");
        }
    }

    private static void Room(StringBuilder text, TankDraft draft)
    {
        var inches = draft.Unit == Unit.InchUnit.Symbol;
        var parts = new List<string>();
        if (Has(draft.RoomTemperature))
        {
            parts.Add($"temperature: {Value(draft.RoomTemperature, inches ? "F" : "C")}");
        }

        if (Has(draft.RoomHumidity))
        {
            parts.Add($"humidity: {Value(draft.RoomHumidity, "%")}");
        }

        if (parts.Count > 0)
        {
            text.Append("room: { ").Append(string.Join(", ", parts)).Append(" }\n");
        }
    }

    /// <summary>A day as typed by the browser; null where there is none.</summary>
    /// <param name="text">Such as "2026-03-01".</param>
    public static DateOnly? Day(string text) =>
        DateOnly.TryParseExact(
            text,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var day
        )
            ? day
            : null;

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Count(string[] readings) =>
        readings.Count(Has) == 1
            ? "1 reading"
            : FormattableString.Invariant($"{readings.Count(Has)} readings");

    private static bool Has(string text) => text.Trim().Length > 0;

    /// <summary>Panes are told in millimeters where nothing else is typed, by makers of inches too.</summary>
    private static string Glass(string text) => Value(text, Unit.Millimeter.Symbol);

    private static string Value(string text, string unit) => Quoted(TypedReading.Whole(text, unit));

    private static string Quoted(string text) =>
        text.Length > 0
        && char.IsAsciiLetterOrDigit(text[0])
        && text.All(Plain.Contains)
        && text == text.Trim()
        && text.Any(char.IsAsciiLetter)
        && text is not ("null" or "none" or "true" or "false" or "yes" or "no")
            ? text
            : "\""
                + string.Concat(text.Where(c => !char.IsControl(c)))
                    .Replace("\\", "\\\\", StringComparison.Ordinal)
                    .Replace("\"", "\\\"", StringComparison.Ordinal)
                + "\"";
}
