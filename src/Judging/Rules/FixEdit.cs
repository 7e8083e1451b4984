using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Judging.Rules;

/// <summary>Edits that fixes of several rules share.</summary>
internal static class FixEdit
{
    private const double LeavesCentimeters = 3;
    private const double MistSeconds = 20;
    private const string Flat = "{ material: cork-bark, mass: 0.3 kg }";

    private static string Pump =>
        "{ nozzles: 2, each: 90 mL/min, times: [ "
        + FormattableString.Invariant($"{{ at: \"08:00\", for: {MistSeconds:0} s }}, ")
        + FormattableString.Invariant($"{{ at: \"17:00\", for: {MistSeconds:0} s }} ] }}");

    /// <summary>A length at a path, in the unit typed there before.</summary>
    public static Reading<DesignDocument> Length(DesignDocument document, string path, double meters) =>
        DesignEdits.Set(document, path, Written(document, path, meters));

    /// <summary>The same as text, for the words of a fix.</summary>
    public static string Written(DesignDocument document, string path, double meters) =>
        TypedLength.Write(meters, TypedLength.TextAt(document, path), "cm");

    /// <summary>The soil thicker or thinner by as much throughout.</summary>
    /// <param name="document">The design.</param>
    /// <param name="by">By how much, m.</param>
    /// <param name="atFront">At the front alone, where a slope has its own depth there.</param>
    public static Reading<DesignDocument> Soil(DesignDocument document, double by, bool atFront = false)
    {
        var soil = document.Design.Floor.Soil;
        (string Path, double? Now)[] places =
        [
            ("floor.soil.depth", soil?.Depth?.Si),
            ("floor.soil.front", soil?.Front?.Si),
            ("floor.soil.back", atFront ? null : soil?.Back?.Si),
        ];
        var with = new Reading<DesignDocument>(document, []);
        foreach (var (path, now) in places)
        {
            if (now is { } meters && with.Value is { } so)
            {
                with = Length(so, path, Rounded(meters + by));
            }
        }

        return with;
    }

    /// <summary>As much more soil as a finding misses; null where it misses none.</summary>
    public static DesignFix? MoreSoil(Finding finding, DesignDocument document) =>
        Short(finding) is > 0 and var by
            ? DesignFix.From(
                string.Create(CultureInfo.InvariantCulture, $"{Rounded(by) * 100:0.#} cm more soil"),
                Soil(document, by)
            )
            : null;

    /// <summary>A usual layer of leaves.</summary>
    public static DesignFix? OakLeaves(DesignDocument document) =>
        DesignFix.From(
            FormattableString.Invariant($"{LeavesCentimeters:0} cm of oak leaves"),
            DesignEdits.SetPart(
                document,
                "floor.litter",
                FormattableString.Invariant($"{{ material: oak-leaves, depth: {LeavesCentimeters:0} cm }}")
            )
        );

    /// <summary>A barrier of glass-fiber screen.</summary>
    public static DesignFix? Screen(DesignDocument document) =>
        DesignFix.From(
            "a barrier of glass-fiber screen",
            DesignEdits.Set(document, "floor.barrier.material", "glass-fibre-screen")
        );

    /// <summary>Two flats of cork bark to hide under.</summary>
    public static DesignFix? CorkFlats(DesignDocument document)
    {
        var one = DesignEdits.Add(document, "hardscape", Flat);
        return DesignFix.From(
            "two more flats of cork bark",
            one.Value is { } so ? DesignEdits.Add(so, "hardscape", Flat) : one
        );
    }

    /// <summary>A misting pump where nothing mists yet; null where something does.</summary>
    public static DesignFix? MistingPump(DesignDocument document) =>
        document.Design is { Misting: null, Fogger: null, Habits: not { HandMist: not null } }
            ? DesignFix.From(
                FormattableString.Invariant(
                    $"a misting pump, {MistSeconds:0} s in the morning and the evening"
                ),
                DesignEdits.SetPart(document, "misting", Pump)
            )
            : null;

    /// <summary>Strips of mesh along most of the box, where they usually go.</summary>
    /// <param name="words">What it does.</param>
    /// <param name="document">The design.</param>
    /// <param name="sides">"front" for low in front, "top" for on top.</param>
    public static DesignFix? Vents(string words, DesignDocument document, params string[] sides)
    {
        var box = document.Design.Box;
        if ((box.Inside ?? box.Outside) is not { } edges)
        {
            return null;
        }

        var floor = document.Design.Floor;
        var layers =
            (floor.Drainage?.Depth?.Si ?? floor.Drainage?.Raised?.Si ?? 0)
            + (floor.Soil?.Front?.Si ?? floor.Soil?.Depth?.Si ?? 0);
        var low = Math.Max((box.Sill?.Si ?? -0.02) + 0.02, layers + 0.03);
        var with = new Reading<DesignDocument>(document, []);
        foreach (var side in sides)
        {
            if (with.Value is not { } so)
            {
                break;
            }

            var height = side == "top" ? Mean(edges.Height) - 0.01 : low;
            with = DesignEdits.Add(
                so,
                "vents",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{{ length: {Mean(edges.Length) * 80:0} cm, width: 10 mm, "
                        + $"height: {height * 100:0.#} cm, mesh: steel-gauze-0.5, side: {side} }}"
                )
            );
        }

        return DesignFix.From(words, with);
    }

    /// <summary>An edge that was measured once or more, m.</summary>
    public static double Mean(Seq<Typed<Length>> edge) => edge.Average(e => e.Si);

    /// <summary>
    /// What the library calls the thing at a key, such as "plants[2].plant"; "it" where none is.
    /// </summary>
    public static string Named(CheckedDesign design, string key) => design.Find(key)?.Name ?? "it";

    /// <summary>Up to the next 5 mm: nobody lays soil finer.</summary>
    public static double Rounded(double meters) => Math.Ceiling((meters * 200.0) - 1e-6) / 200.0;

    /// <summary>How much the limit is above what is there; null where either is missing.</summary>
    public static double? Short(Finding finding) =>
        finding is { Measured: { } measured, Limit: { } limit } ? limit.Si - measured.Si : null;

    /// <summary>How many times what is there the limit is; null where either is missing or nothing.</summary>
    public static double? Times(Finding finding) =>
        finding is { Measured.Si: > 0 and var measured, Limit.Si: > 0 and var limit }
            ? limit / measured
            : null;

    /// <summary>
    /// The number of the part it speaks of, such as <c>plants[2]</c>; null where there is none.
    /// </summary>
    public static int? Index(Finding finding)
    {
        var path = finding.About;
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
}
