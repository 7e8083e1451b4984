using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Judging.Floor;

/// <summary>Light aggregate under thin soil floats when the reservoir fills.</summary>
internal static class FloatingAggregate
{
    public static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Float is not { Lifts: true } f)
        {
            yield break;
        }

        yield return new Finding(
            "aggregate-floats",
            Severity.Caution,
            Protects.Build,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Water {f.LiftHeight.Value:0.#} cm deep lifts the drainage aggregate and the soil on "
                    + $"it; the layer is {f.Depth.Value:0.#} cm deep."
            ),
            f.LiftHeight,
            f.Depth,
            "Put more soil on it, take a heavier aggregate, or drain below that level."
        )
        {
            Where = "floor.drainage",
        };
    }
}
