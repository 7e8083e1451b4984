using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk.Form;

/// <summary>What typing into a field does to the text of a design.</summary>
public static class FieldEdit
{
    private const string RangeHelp = "one temperature or a range, e.g. 19–24 °C";

    /// <summary>The document with what is typed; taken out where nothing is.</summary>
    /// <param name="document">The design.</param>
    /// <param name="field">The field.</param>
    /// <param name="text">As typed.</param>
    /// <param name="preferences">The reader's units.</param>
    public static Reading<DesignDocument> Set(
        DesignDocument document,
        PartField field,
        string text,
        UnitPreferences preferences
    )
    {
        var typed = text.Trim();
        if (field.Switch is { } way)
        {
            return way.Turn(document, typed);
        }

        if (typed.Length == 0)
        {
            return document.Spans.ContainsKey(field.Path)
                ? DesignEdits.Remove(document, field.Path)
                : new(document, []);
        }

        var key = field.Key!;
        return field.Form switch
        {
            FieldForm.Readings => Readings(document, field, typed, preferences),
            FieldForm.Lines or FieldForm.Photos or FieldForm.Checks => DesignEdits.SetList(
                document,
                field.Path,
                [.. typed.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)]
            ),
            FieldForm.Quantity => Quantity(document, field, typed, preferences),
            _ => At(document, field.Path, typed),
        };
    }

    /// <summary>What stands in a field, one value to a line where it takes several.</summary>
    /// <param name="document">The design.</param>
    /// <param name="field">The field.</param>
    public static string TextOf(DesignDocument document, PartField field)
    {
        if (field.Switch is { } way)
        {
            return way.Now(document);
        }

        if (field.Key!.IsList)
        {
            var apart = field.Form == FieldForm.Readings ? ", " : "\n";
            return string.Join(apart, Several(document, field.Path));
        }

        var written = TypedLength.TextAt(document, field.Path);
        return written is "none"
            ? ""
            : Shown(DesignKeys.ValueAt(document.Design, field.Path) ?? written, field);
    }

    /// <summary>Degrees as people write them.</summary>
    private static string Shown(string text, PartField field) =>
        field.Key!.Quantity == QuantityKinds.Temperature
        && text.Length > 2
        && text[^1] is 'C' or 'F'
        && text[^2] == ' '
            ? $"{text[..^1]}°{text[^1]}"
            : text;

    private static IEnumerable<string> Several(DesignDocument document, string path)
    {
        for (
            var i = 0;
            DesignKeys.ValueAt(document.Design, FormattableString.Invariant($"{path}[{i}]")) is { } one;
            i++
        )
        {
            yield return one;
        }
    }

    private static Reading<DesignDocument> Readings(
        DesignDocument document,
        PartField field,
        string typed,
        UnitPreferences preferences
    )
    {
        // The unit may stand behind the last reading only.
        var apart = FieldUnits.Readings(typed);
        var before = apart.Select(FieldUnits.UnitOf).LastOrDefault(u => u.Length > 0) is { } unit
            ? $"1 {unit}"
            : TextOf(document, field);
        return DesignEdits.SetList(
            document,
            field.Path,
            [.. apart.Select(r => FieldUnits.WithUnit(r, before, field.Key!, preferences))]
        );
    }

    private static Reading<DesignDocument> Quantity(
        DesignDocument document,
        PartField field,
        string typed,
        UnitPreferences preferences
    )
    {
        var key = field.Key!;
        if (key.Name == "temperature" && FieldUnits.Range(typed, preferences) is var (middle, half))
        {
            var with = At(document, field.Path, middle);
            var swing = field.Path[..^"temperature".Length] + "swing";
            return with.Value is { } so && with.IsGood ? DesignEdits.Set(so, swing, half) : with;
        }

        var value = FieldUnits.WithUnit(typed, TextOf(document, field), key, preferences);
        if (
            SoilSteps.ShareAt(field.Path) is { } step
            && QuantityText.TryParse(key.Quantity!, value, out var share, out _)
        )
        {
            return SoilSteps.Shared(document, step, share);
        }

        var reading = At(Freed(document, field), field.Path, value);
        return key.Name == "temperature" && !reading.IsGood
            ? new(null, [reading.Faults[0] with { Expected = RangeHelp }])
            : reading;
    }

    /// <summary>
    /// A step is level or slopes: what is typed of one way takes the other out, the slope's far end takes
    /// the depth that was.
    /// </summary>
    private static DesignDocument Freed(DesignDocument document, PartField field)
    {
        var key = field.Key!;
        if (key.Owner != typeof(Domain.SoilZone))
        {
            return document;
        }

        var step = field.Path[..^key.Name.Length];
        if (key.Name == "depth")
        {
            return Without(Without(document, step + "front"), step + "back");
        }

        var depth = TypedLength.TextAt(document, step + "depth");
        var other = step + (key.Name == "front" ? "back" : "front");
        return
            depth.Length > 0 && DesignEdits.Set(document, other, depth) is { Value: { } with, IsGood: true }
            ? Without(with, step + "depth")
            : document;
    }

    private static DesignDocument Without(DesignDocument document, string path) =>
        document.Spans.ContainsKey(path) ? DesignEdits.Remove(document, path).Value ?? document : document;

    /// <summary>A place is written whole: with one of its edges alone it would not read.</summary>
    private static Reading<DesignDocument> At(DesignDocument document, string path, string text)
    {
        var at = path.IndexOf(".at.", StringComparison.Ordinal);
        if (at < 0 || document.Spans.ContainsKey(path[..(at + 3)]))
        {
            return DesignEdits.Set(document, path, text);
        }

        var place = DesignEdits.SetPart(document, path[..(at + 3)], "{ x: 10 cm, y: 10 cm }");
        return place.Value is { } with && place.IsGood ? DesignEdits.Set(with, path, text) : place;
    }
}
