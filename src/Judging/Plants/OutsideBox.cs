using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>A place that is not in the box.</summary>
internal static class OutsideBox
{
    public static readonly Rule Rule = new(
        "plant-outside-box",
        Protects.Build,
        "the place of a plant lies outside the inside of the box",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            finding is { Measured: { } place, Limit: { } edge }
                ? DesignFix.From(
                    $"{FixEdit.Named(design, $"{finding.About.Split('.')[0]}.plant")} inside the box",
                    FixEdit.Length(
                        design.Document,
                        finding.Where,
                        Math.Clamp(place.Si, 0, Math.Floor(edge.Si * 100) / 100)
                    )
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n))
        {
            if (plant.Entry.At is not { } at)
            {
                continue;
            }

            foreach (
                var (key, typed, edge) in new[]
                {
                    ("x", (Typed<Length>?)at.X, n.Box.InsideLength),
                    ("y", at.Y, n.Box.InsideDepth),
                    ("z", at.Z, n.Box.InsideHeight),
                }
            )
            {
                if (typed is not { } one || (one.Si >= 0 && one.Si <= edge.Si + 1e-9))
                {
                    continue;
                }

                var place = n.Design.Figure(
                    $"{plant.Path}.at.{key}",
                    $"{key} of {plant.Species.Name}",
                    one,
                    Unit.Centimeter
                );
                yield return Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{plant.Species.Name} is placed {place.Value:0.#} cm {From(key)}, outside the box: "
                            + $"{edge.Name} is {edge.Si * 100:0.#} cm."
                    ),
                    (place, edge),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Place it between zero and {edge.Si * 100:0.#} cm {From(key)}."
                    ),
                    $"{plant.Path}.at.{key}"
                );
            }
        }
    }

    private static string From(string axis) =>
        axis switch
        {
            "x" => "from the left",
            "y" => "from the front",
            _ => "above the floor",
        };
}
