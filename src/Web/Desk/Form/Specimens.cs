using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Forecasting;
using Litterfall.Quantities.Placing;

namespace Litterfall.Web.Desk.Form;

/// <summary>Plants, pieces and lamps as things of their own, each with its own place.</summary>
public static class Specimens
{
    private const double Apartness = 0.08;
    private const double Rim = 0.04;
    private const int Tries = 12;

    /// <summary>The number in a path such as "plants[2].at"; null where there is none.</summary>
    /// <param name="path">A path of the design.</param>
    public static int? Index(string path)
    {
        var open = path.IndexOf('[', StringComparison.Ordinal);
        var close = path.IndexOf(']', StringComparison.Ordinal);
        return
            open > 0
            && close > open
            && int.TryParse(
                path.AsSpan(open + 1, close - open - 1),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out var i
            )
            ? i
            : null;
    }

    /// <summary>Path of the last of a list.</summary>
    /// <param name="document">The design.</param>
    /// <param name="list">The list, such as "plants".</param>
    public static string LastOf(DesignDocument document, string list)
    {
        var i = 0;
        while (document.Spans.ContainsKey(At(list, i + 1)))
        {
            i++;
        }

        return At(list, i);
    }

    /// <summary>One more of a part, a hand beside it where it has a place.</summary>
    /// <param name="document">The design.</param>
    /// <param name="key">The part, such as "plants[0]".</param>
    public static Reading<DesignDocument> Again(DesignDocument document, string key)
    {
        var list = key[..key.IndexOf('[', StringComparison.Ordinal)];
        if (DesignEdits.FlowOf(document, key) is not { } flow)
        {
            return new(document, []);
        }

        var with = DesignEdits.Add(document, list, flow);
        if (with.Value is not { } so || !with.IsGood)
        {
            return with;
        }

        var last = LastOf(so, list);
        var x = $"{last}.at.x";
        return so.Spans.ContainsKey(x) && DesignKeys.ValueAt(so.Design, x) is { } text
            ? DesignEdits.Set(so, x, Beside(so, text))
            : with;
    }

    /// <summary>The plants of a line as lines of one, side by side.</summary>
    /// <param name="document">The design.</param>
    /// <param name="line">Number of the line.</param>
    public static Reading<DesignDocument> Apart(DesignDocument document, int line)
    {
        var key = At("plants", line);
        var plant = document.Design.Plants[line];
        var (length, depth) = Edges(document);
        var at = plant.At;
        var single = DesignEdits.FlowOf(document, key, "count", "at")!.TrimEnd('}', ' ');
        var with = DesignEdits.Remove(document, key);
        for (var i = 0; i < plant.Count && with.Value is { } so && with.IsGood; i++)
        {
            var x = at is null
                ? length * (i + 0.5) / plant.Count
                : Inside(at.X.Si + (Apartness * (i - ((plant.Count - 1) / 2.0))), length);
            var y = at?.Y.Si ?? 0.6 * depth;
            var like = at?.X.Text ?? "";
            var z = at?.Z is { } height ? $", z: {height.Text}" : "";
            with = DesignEdits.Add(
                so,
                "plants",
                $"{single}, at: {{ x: {TypedLength.Write(x, like, "cm")}, "
                    + $"y: {TypedLength.Write(y, like, "cm")}{z} }} }}"
            );
        }

        return with;
    }

    /// <summary>The place of a new plant or piece where there is most room, in flow form.</summary>
    /// <param name="shape">The box as it is laid out.</param>
    /// <param name="usual">The reader's unit of length.</param>
    public static string FreePlace(DesignNumbers shape, string usual)
    {
        var terrain = new Terrain(shape.Design, shape.Box, shape.Layers);
        var taken = PlantSpot
            .Of(shape.Design, terrain)
            .Select(p => (p.X, p.Y))
            .Concat(PieceSpot.Of(shape.Design, terrain).Select(p => (p.X, p.Y)))
            .ToList();
        var (length, depth) = Edges(shape.Design.Document);
        var best = (X: length / 2, Y: depth / 2, Room: -1.0);
        for (var i = 0; i < Tries; i++)
        {
            for (var j = 0; j < Tries; j++)
            {
                var (x, y) = (length * (i + 0.5) / Tries, depth * (j + 0.5) / Tries);
                var wall = Math.Min(Math.Min(x, length - x), Math.Min(y, depth - y));
                var room = taken
                    .Select(t => Math.Sqrt(((t.X - x) * (t.X - x)) + ((t.Y - y) * (t.Y - y))))
                    .Append(2 * wall)
                    .Min();
                best = room > best.Room + 1e-9 ? (x, y, room) : best;
            }
        }

        return $"{{ x: {TypedLength.Write(best.X, "", usual)}, y: {TypedLength.Write(best.Y, "", usual)} }}";
    }

    /// <summary>A hand further along, back at the other end where the wall is.</summary>
    private static string Beside(DesignDocument document, string text)
    {
        var (length, _) = Edges(document);
        return Domain.Units.QuantityText.TryParse(Domain.Units.QuantityKinds.Length, text, out var x, out _)
            ? TypedLength.Write(Inside(x + Apartness, length), text, "cm")
            : text;
    }

    private static double Inside(double x, double length)
    {
        var room = Math.Max(0.01, length - (2 * Rim));
        var over = (x - Rim) % room;
        return Rim + (over < 0 ? over + room : over);
    }

    private static (double Length, double Depth) Edges(DesignDocument document)
    {
        var box = document.Design.Box;
        var edges = (box.Inside ?? box.Outside)!;
        return (edges.Length.Min(e => e.Si), edges.Depth.Min(e => e.Si));
    }

    private static string At(string list, int i) =>
        string.Create(CultureInfo.InvariantCulture, $"{list}[{i}]");
}
