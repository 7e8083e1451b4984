using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Water;

/// <summary>A share of the floor tells neither depth nor place: what is assumed is said.</summary>
internal static class BasinAssumed
{
    public static readonly Rule Rule = new(
        "basin-assumed",
        Protects.Build,
        "open water is told as a share of the floor, so its basin is assumed",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design is not { WaterArea.Si: > 0, Basins.Count: 0 })
        {
            yield break;
        }

        var basins = WaterBasins.Of(n.Design, n.Box);
        yield return Rule.Found(
            Severity.Note,
            basins.IsEmpty
                ? "Open water is entered as a share of the floor, but the floor has no layer that holds a "
                    + "basin: no water is counted."
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"Open water is entered as a share of the floor; one basin is assumed for it, "
                        + $"{100 * basins[0].Length.Si:0.#} × {100 * basins[0].Width.Si:0.#} cm at the left "
                        + $"end, {basins[0].Depth.Value:0.#} cm deep, {basins[0].Volume.Value:0.#} L."
                ),
            (null, null),
            "Enter the basin instead, with its length, width and depth.",
            "waterArea"
        );
    }
}
