using Litterfall.Forecasting;

namespace Litterfall.Instructions.Parts;

/// <summary>What holds the panes of a box together, by their material (common practice, no source).</summary>
internal static class Joints
{
    /// <summary>The joint in words.</summary>
    /// <param name="numbers">The design.</param>
    /// <param name="silicone">How wide a joint of silicone is.</param>
    public static string Of(DesignNumbers numbers, string silicone) =>
        numbers.Design.Design.Box.Material is not { } material ? Glass(silicone)
        : material.StartsWith("acrylic", StringComparison.Ordinal)
            ? "a solvent cement made for acrylic, run into the closed joint from a needle: silicone hardly "
                + "bonds it"
        : material.StartsWith("polycarbonate", StringComparison.Ordinal)
            ? "a solvent cement made for polycarbonate, or screws and a gasket: silicone hardly bonds it"
        : material.StartsWith("pvc", StringComparison.Ordinal) ? "a solvent cement made for PVC"
        : material.Contains("glass", StringComparison.Ordinal) ? Glass(silicone)
        : $"the adhesive that the maker of the {numbers.Design.Find("box.material")?.Name ?? "sheet"} names";

    /// <summary>The inner seam, which only silicone has.</summary>
    /// <param name="numbers">The design.</param>
    public static string Seam(DesignNumbers numbers) =>
        numbers.Design.Design.Box.Material is not { } material
        || material.Contains("glass", StringComparison.Ordinal)
            ? ", and draw the inner seam in one go"
            : "";

    private static string Glass(string silicone) => $"{silicone} of neutral-cure silicone";
}
