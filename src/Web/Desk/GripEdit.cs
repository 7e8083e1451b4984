using Litterfall.Documents.Views;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Web.Desk.Form;

namespace Litterfall.Web.Desk;

/// <summary>What moving a grip does to the text of a design.</summary>
public static class GripEdit
{
    /// <summary>The document with a grip moved.</summary>
    /// <param name="document">The design.</param>
    /// <param name="grip">The grip, as it stood.</param>
    /// <param name="move">Meters to the right and up.</param>
    /// <param name="usual">The user's usual unit of length.</param>
    public static Reading<DesignDocument> Moved(
        DesignDocument document,
        Grip grip,
        (double Across, double Up) move,
        string usual
    )
    {
        var reading = Placed(document, grip, usual);
        if (reading.Value is null || !reading.IsGood)
        {
            return reading;
        }

        if (grip.Across is { } across && move.Across != 0)
        {
            reading = Axis(reading.Value!, across, across.Meters + move.Across, usual);
        }

        if (grip.Up is { } up && move.Up != 0 && reading.Value is { } so && reading.IsGood)
        {
            reading = Axis(so, up, up.Meters + move.Up, usual);
        }

        return reading;
    }

    /// <summary>A place that is not written yet is written whole, as it is drawn.</summary>
    private static Reading<DesignDocument> Placed(DesignDocument document, Grip grip, string usual)
    {
        GripAxis?[] axes = [grip.Across, grip.Up, grip.Hidden];
        GripAxis? Edge(string name) =>
            axes.FirstOrDefault(a => a?.Path.EndsWith(name, StringComparison.Ordinal) == true);
        return
            Edge(".at.x") is { } x
            && Edge(".at.y") is { } y
            && Place(x.Path) is { } place
            && !document.Spans.ContainsKey(place)
            && !document.Spans.ContainsKey(x.Path)
            ? DesignEdits.SetPart(
                document,
                place,
                $"{{ x: {TypedLength.Write(Math.Max(0.0, x.Meters), "", usual)}, "
                    + $"y: {TypedLength.Write(Math.Max(0.0, y.Meters), "", usual)} }}"
            )
            : new(document, []);
    }

    /// <summary>The document with one value of a grip set, m.</summary>
    public static Reading<DesignDocument> Axis(
        DesignDocument document,
        GripAxis axis,
        double meters,
        string usual
    )
    {
        var value = Math.Clamp(meters, axis.Least, axis.Most);
        if (SoilSteps.ShareAt(axis.Path) is { } step)
        {
            // The axis runs over the length of the box, of which the step has its share now.
            var share = document.Design.Floor.Soil!.Zones[step].Share.Si;
            return axis.Meters > 0
                ? SoilSteps.Shared(document, step, share * value / axis.Meters)
                : new(document, []);
        }

        var prepared = Prepared(document, axis, usual);
        if (prepared.Value is not { } ready || !prepared.IsGood)
        {
            return prepared;
        }

        return DesignEdits.Set(
            ready,
            axis.Path,
            TypedLength.Write(value, TypedLength.TextAt(ready, axis.Path), usual)
        );
    }

    /// <summary>
    /// A place that is not written yet needs both edges; a soil that is tilted needs front and back instead
    /// of one depth.
    /// </summary>
    private static Reading<DesignDocument> Prepared(DesignDocument document, GripAxis axis, string usual)
    {
        if (
            axis.Path is "floor.soil.front" or "floor.soil.back"
            && document.Spans.ContainsKey("floor.soil.depth")
        )
        {
            var depth = TypedLength.TextAt(document, "floor.soil.depth");
            var other = axis.Path == "floor.soil.front" ? "floor.soil.back" : "floor.soil.front";
            var without = DesignEdits.Remove(document, "floor.soil.depth");
            return Both(without, document, (axis.Path, depth), (other, depth));
        }

        if (Place(axis.Path) is { } place && !document.Spans.ContainsKey(place))
        {
            var at = TypedLength.Write(Math.Max(0.0, axis.Meters), "", usual);
            return DesignEdits.SetPart(document, place, $"{{ x: {at}, y: {at} }}");
        }

        return new(document, []);
    }

    /// <summary>
    /// The two values in one step: with one of them alone the text would not read.
    /// </summary>
    private static Reading<DesignDocument> Both(
        Reading<DesignDocument> without,
        DesignDocument document,
        params ReadOnlySpan<(string Path, string Text)> values
    )
    {
        var start = without.Value ?? document;
        foreach (var (path, text) in values)
        {
            var next = DesignEdits.Set(start, path, text);
            if (next.Value is null)
            {
                return next;
            }

            start = next.Value;
        }

        return new(start, []);
    }

    private static string? Place(string path)
    {
        var at = path.IndexOf(".at.", StringComparison.Ordinal);
        return at < 0 ? null : path[..(at + 3)];
    }
}
