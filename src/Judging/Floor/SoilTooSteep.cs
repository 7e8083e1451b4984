using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>A steep slope slides to the front as it is misted.</summary>
internal static class SoilTooSteep
{
    private static readonly Figure Steepest = Figure.Given(
        "steepest slope without a retainer",
        25 * Math.PI / 180,
        Unit.Degree,
        Citation.Habit("steeper than about 25 to 30 degrees needs a retainer")
    );

    public static readonly Rule Rule = new(
        "soil-too-steep",
        Protects.Build,
        FormattableString.Invariant(
            $"the soil rises by more than {Steepest.Value:0} degrees from front to back "
        ) + "without a retainer",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Floor.Soil is not { Retainer: false } || !n.Box.IsBuildable)
        {
            yield break;
        }

        var slopes = Slopes(n).ToList();
        if (
            slopes.Count == 0
            || slopes.MaxBy(s => s.Angle.Si) is var (angle, path) && angle.Si <= Steepest.Si + 1e-9
        )
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The soil rises by {angle.Value:0} degrees from front to back; over {Steepest.Value:0} it "
                    + $"can slide without a retainer."
            ),
            (angle, Steepest),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Let it rise by {Math.Tan(Steepest.Si) * n.Box.OpenDepth.Si * 100:0.#} cm at most, "
                    + $"or hold it with wood, stone or grid and enter that."
            ),
            $"{path}.back"
        );
    }

    private static IEnumerable<(Figure Angle, string Path)> Slopes(DesignNumbers n)
    {
        var soil = n.Design.Design.Floor.Soil!;
        if (soil is { Front: { } front, Back: { } back })
        {
            yield return (Slope(n, "floor.soil", front, back), "floor.soil");
        }

        for (var i = 0; i < soil.Zones.Count; i++)
        {
            if (soil.Zones[i] is { Front: { } low, Back: { } high })
            {
                yield return (Slope(n, $"floor.soil.zones[{i}]", low, high), $"floor.soil.zones[{i}]");
            }
        }
    }

    private static Figure Slope(DesignNumbers n, string path, Typed<Length> front, Typed<Length> back)
    {
        var low = n.Design.Figure($"{path}.front", "soil depth at the front", front, Unit.Centimeter);
        var high = n.Design.Figure($"{path}.back", "soil depth at the back", back, Unit.Centimeter);
        return Figure
            .Computed(
                "arc tangent of (soil at the back − soil at the front) ÷ depth between backgrounds",
                Math.Atan(Math.Abs(high.Si - low.Si) / n.Box.OpenDepth.Si),
                Dimension.None,
                low,
                high,
                n.Box.OpenDepth
            )
            .As("slope of the soil", Unit.Degree);
    }
}
