using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Box;

/// <summary>A size typed in inches that is also the name of a metric box, or the other way round.</summary>
internal static class NominalSize
{
    public static readonly Rule Rule = new(
        "nominal-size",
        Protects.Build,
        "an edge typed in whole inches is also the name of a metric box, and was not measured",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly (int Inches, int Centimeters)[] Names =
    [
        (12, 30),
        (18, 45),
        (24, 60),
        (36, 90),
        (48, 120),
    ];

    private static readonly Citation Habit = Citation.Habit(
        "boxes come in 30, 45, 60, 90, 120 cm and in 12, 18, 24, 36, 48 in, which are not equal"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Box.Outside is not { } edges)
        {
            yield break;
        }

        var traps = new[] { ("length", edges.Length), ("depth", edges.Depth), ("height", edges.Height) }
            .Select(e => (Edge: e.Item1, Typed: e.Item2, Trap: Trap(e.Item2)))
            .Where(e => e.Trap is not null)
            .ToList();
        if (traps.Count == 0)
        {
            yield break;
        }

        var (edge, typed, trap) = traps.MaxBy(t => Math.Abs(t.Trap!.Value.Other - t.Typed[0].Si));
        var figure = n.Design.Figure(
            $"box.outside.{edge}",
            $"outside {edge} as typed",
            typed[0],
            Unit.Millimeter
        );
        var other = Figure.Given("the size of the same name", trap!.Value.Other, Unit.Millimeter, Habit);
        var pairs = traps
            .Select(t =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{t.Typed[0].Text} is {t.Typed[0].Si * 1000:0.#} mm, a box sold as {t.Trap!.Value.Name} "
                        + $"{t.Trap.Value.Other * 1000:0} mm"
                )
            )
            .Distinct();
        yield return Rule.Found(
            Severity.Note,
            $"The {Listed([.. traps.Select(t => t.Edge)])} may be a name, not a measure: "
                + $"{string.Join("; ", pairs)}.",
            (figure, other),
            "Measure each edge three times with a tape and enter all three.",
            $"box.outside.{edge}"
        );
    }

    private static string Listed(string[] words) =>
        words.Length < 2 ? words[0] : $"{string.Join(", ", words[..^1])} and {words[^1]}";

    private static (double Other, string Name)? Trap(Seq<Typed<Length>> edge)
    {
        if (edge.Count != 1)
        {
            return null;
        }

        var inInches = Imperial.IsImperial(edge);
        foreach (var (inches, centimeters) in Names)
        {
            if (inInches && Math.Abs(edge[0].Si - inches * 0.0254) < 1e-6)
            {
                return (centimeters / 100.0, $"{centimeters} cm");
            }
        }

        return null;
    }
}
