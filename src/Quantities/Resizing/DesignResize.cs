using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Resizing;

/// <summary>A value that was changed with the size, and why.</summary>
/// <param name="Path">Its path in the design.</param>
/// <param name="From">As it was.</param>
/// <param name="To">As it is now.</param>
/// <param name="Reason">In half a sentence.</param>
public sealed record ResizedValue(string Path, string From, string To, string Reason);

/// <summary>A design for a box of another size.</summary>
/// <param name="Document">The design.</param>
/// <param name="Values">What was changed.</param>
/// <param name="Kept">What was left as it is on purpose, and why.</param>
public sealed record ResizedDesign(
    DesignDocument Document,
    ImmutableArray<ResizedValue> Values,
    ImmutableArray<string> Kept
);

/// <summary>
/// Writes a design for another size: places go with the edges, numbers of crew, plants of mats and mist with
/// the floor, vents with their side; depths stay, because roots and water do not know the size of a box.
/// </summary>
public sealed class DesignResize
{
    private readonly ImmutableArray<ResizedValue>.Builder values =
        ImmutableArray.CreateBuilder<ResizedValue>();
    private DesignDocument document;
    private TextFault? fault;

    private DesignResize(DesignDocument document) => this.document = document;

    /// <summary>The design at another size.</summary>
    /// <param name="document">The design.</param>
    /// <param name="edges">
    /// New length, depth and height as typed, of the same frame (inside or outside) as the design's.
    /// </param>
    public static Reading<ResizedDesign> To(
        DesignDocument document,
        (string Length, string Depth, string Height) edges
    )
    {
        var resize = new DesignResize(document);
        var box = document.Design.Box;
        var (frame, old) = box.Outside is { } outside ? ("outside", outside) : ("inside", box.Inside!);
        double[] before = [Least(old.Length), Least(old.Depth), Least(old.Height)];
        string[] keys = ["length", "depth", "height"];
        string[] typed = [edges.Length, edges.Depth, edges.Height];
        var ratio = new double[3];
        for (var i = 0; i < 3; i++)
        {
            if (!QuantityText.TryParse<Length>(typed[i], out var length, out var problem) || length.Si <= 0)
            {
                var message = problem.Length > 0 ? problem : $"the {keys[i]} is zero";
                return new(null, [new TextFault(document.File, 1, 1, message, "an edge such as 60 cm")]);
            }

            ratio[i] = length.Si / before[i];
            resize.Set($"box.{frame}.{keys[i]}", typed[i], "the new size");
        }

        resize.Places(ratio);
        resize.Counts(ratio[0] * ratio[1]);
        resize.Fittings(ratio);
        return resize.fault is { } wrong
            ? new(null, [wrong])
            : new(
                new ResizedDesign(
                    resize.document,
                    resize.values.ToImmutable(),
                    [
                        "depths of drainage, soil, moss and leaves: roots, fringe and crew need the same "
                            + "depth in any box",
                        "animals: look at the stocking rules for what the new floor allows",
                        "lamps: their light is checked anew; a longer box may need another lamp",
                    ]
                ),
                []
            );
    }

    private static double Least(Seq<Typed<Length>> edge) => edge.Min(e => e.Si);

    private void Places(double[] ratio)
    {
        var design = document.Design;
        for (var i = 0; i < design.Plants.Count; i++)
        {
            Place(FormattableString.Invariant($"plants[{i}].at"), design.Plants[i].At, ratio);
        }

        for (var i = 0; i < design.Hardscape.Count; i++)
        {
            Place(FormattableString.Invariant($"hardscape[{i}].at"), design.Hardscape[i].At, ratio);
        }

        for (var i = 0; i < design.Basins.Count; i++)
        {
            var path = FormattableString.Invariant($"basins[{i}]");
            Place($"{path}.at", design.Basins[i].At, ratio);
            Scale($"{path}.length", design.Basins[i].Length, ratio[0], "it goes with the length");
            Scale($"{path}.width", design.Basins[i].Width, ratio[1], "it goes with the depth");
        }

        for (var i = 0; i < design.Shelves.Count; i++)
        {
            var path = FormattableString.Invariant($"shelves[{i}]");
            Scale($"{path}.length", design.Shelves[i].Length, ratio[0], "it goes with the length");
            Scale($"{path}.depth", design.Shelves[i].Depth, ratio[1], "it goes with the depth");
            Place($"{path}.at", design.Shelves[i].At, ratio);
        }

        Scale("box.doors.height", design.Box.Doors?.Height, ratio[2], "it goes with the height");
        Scale("drain.along", design.Drain?.Along, ratio[0], "its place goes with the length");
    }

    private void Place(string path, Place? at, double[] ratio)
    {
        if (at is null)
        {
            return;
        }

        Scale($"{path}.x", at.X, ratio[0], "its place goes with the length");
        Scale($"{path}.y", at.Y, ratio[1], "its place goes with the depth");
        Scale($"{path}.z", at.Z, ratio[2], "its place goes with the height");
    }

    private void Counts(double floor)
    {
        var design = document.Design;
        for (var i = 0; i < design.Crew.Count; i++)
        {
            var count = (int)Math.Max(1, Math.Round(design.Crew[i].Count * floor));
            Set(
                FormattableString.Invariant($"crew[{i}].count"),
                count.ToString(CultureInfo.InvariantCulture),
                "as many for each square meter of floor"
            );
        }

        for (var i = 0; i < (design.Misting?.Times.Count ?? 0); i++)
        {
            var span = design.Misting!.Times[i].For;
            Set(
                FormattableString.Invariant($"misting.times[{i}].for"),
                FormattableString.Invariant($"{Math.Max(1, Math.Round(span.Si * floor)):0} s"),
                "as much mist for each square meter of floor"
            );
        }

        if (design.Habits?.HandMist is { } hand)
        {
            Set(
                "habits.handMist",
                FormattableString.Invariant($"{Math.Max(1, Math.Round(hand.Si * 1e6 * floor)):0} mL"),
                "as much mist for each square meter of floor"
            );
        }

        for (var i = 0; i < design.Hardscape.Count; i++)
        {
            if (design.Hardscape[i].Mass is { } mass)
            {
                Set(
                    FormattableString.Invariant($"hardscape[{i}].mass"),
                    FormattableString.Invariant($"{Math.Round(mass.Si * floor, 2):0.##} kg"),
                    "as much wood and stone for each square meter of floor"
                );
            }
        }
    }

    private void Fittings(double[] ratio)
    {
        var design = document.Design;
        for (var i = 0; i < design.Vents.Count; i++)
        {
            var vent = design.Vents[i];
            var along = vent.Side is Side.Left or Side.Right ? ratio[1] : ratio[0];
            var at = FormattableString.Invariant($"vents[{i}]");
            Scale($"{at}.length", vent.Length, along, "a vent goes with the side it is in");
            Scale($"{at}.height", vent.Height, ratio[2], "its height goes with the box");
            if (vent.Area is { } area)
            {
                Set(
                    $"{at}.area",
                    FormattableString.Invariant($"{Math.Round(area.Si * 1e4 * along, 1):0.#} cm2"),
                    "a vent goes with the side it is in"
                );
            }
        }

        for (var i = 0; i < design.Lamps.Count; i++)
        {
            Scale(
                FormattableString.Invariant($"lamps[{i}].at.x"),
                design.Lamps[i].At?.X,
                ratio[0],
                "its place goes with the length"
            );
            Scale(
                FormattableString.Invariant($"lamps[{i}].at.y"),
                design.Lamps[i].At?.Y,
                ratio[1],
                "its place goes with the depth"
            );
        }
    }

    private void Scale(string path, Typed<Length>? length, double ratio, string reason)
    {
        if (length is { } typed && document.Spans.ContainsKey(path))
        {
            Set(path, Like(typed.Si * ratio, path), reason);
        }
    }

    /// <summary>
    /// A length in the unit its old text has: to the millimeter, or the sixteenth of an inch.
    /// </summary>
    private string Like(double meters, string path)
    {
        var text = Text(path);
        return text.EndsWith("mm", StringComparison.Ordinal)
                ? FormattableString.Invariant($"{Math.Round(meters * 1000):0} mm")
            : text.EndsWith("in", StringComparison.Ordinal) || text.Contains('"', StringComparison.Ordinal)
                ? FormattableString.Invariant($"{Math.Round(meters / 0.0254 * 16) / 16:0.####} in")
            : FormattableString.Invariant($"{Math.Round(meters * 100, 1):0.#} cm");
    }

    private string Text(string path) =>
        document.Spans.TryGetValue(path, out var span) ? document.Text[span.Start..span.End] : "";

    private void Set(string path, string value, string reason)
    {
        var before = Text(path).Trim('"', '\'');
        if (fault is not null || before == value)
        {
            return;
        }

        var edit = DesignEdits.Set(document, path, value);
        if (edit.Value is { } next && edit.IsGood)
        {
            document = next;
            values.Add(new ResizedValue(path, before, value, reason));
        }
        else
        {
            fault = edit.Faults[0];
        }
    }
}
