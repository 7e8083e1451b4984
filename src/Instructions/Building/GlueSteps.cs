using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Openings;

namespace Litterfall.Instructions.Building;

/// <summary>Gluing a box whose panes are cut for this build, at the bench.</summary>
internal static class GlueSteps
{
    private const string Edge = "Glass cuts: gloves and goggles, dry hands, no lifting by the rim.";

    /// <summary>The group; null for a box that is bought.</summary>
    /// <param name="numbers">The design.</param>
    public static StepGroup? Of(DesignNumbers numbers)
    {
        if (!numbers.Cuts.Any(c => c.Part.StartsWith("pane-", StringComparison.Ordinal)))
        {
            return null;
        }

        var writer = new StepWriter(numbers);
        writer.Step(
            "box.panes",
            $"Check each pane against the glass drawing: size, thickness, edges{Hole(numbers)}. Wipe the "
                + "edges with alcohol and mask them with tape.",
            "Nothing bonds to grease, and a pane that is too large cannot be recut.",
            Edge
        );
        writer.Step(
            "box.panes",
            "Glue with two people: base flat, back pane on the base, the sides between back and front, "
                + $"{Front(numbers)} last, in each joint "
                + $"{Joints.Of(numbers, writer.Millimeters(OpeningPolicy.Joint))}. Tape the corners and "
                + $"check both diagonals{Joints.Seam(numbers)}.",
            "Unequal diagonals show that it stands askew: the lid may not fit.",
            "Open window. Panes that hold water go to a glazier if you have not glued one before."
        );
        Further(numbers, writer);
        if (numbers.Sealants.CureBeforePlanting is { } cure)
        {
            writer.Of(cure);
            var days = NumberText.Count((int)Math.Ceiling(cure.Value - 1e-9), "day", "days");
            writer.Step("box.panes", $"Let it stand untouched for {days} before water or soil goes in.");
        }

        return writer.Group("Glue the box", "glue", "box");
    }

    /// <summary>What stands on the lower panes: short panes beside vents, bars, and a glued top.</summary>
    private static void Further(DesignNumbers numbers, StepWriter writer)
    {
        var parts = numbers.Cuts.Where(c => IsFurther(c.Part)).ToList();
        if (parts.Count == 0)
        {
            return;
        }

        var list = parts.Select(p => $"{Name(p.Part)}, {writer.Size(p.Length, p.Width)}");
        writer.Step(
            "box.panes",
            $"When these hold, glue in from below up: {string.Join("; ", list)}. Check that each vent stays "
                + "open at its full height.",
            "The openings are what is left between them."
        );
    }

    private static bool IsFurther(string part) =>
        part.StartsWith("pane-", StringComparison.Ordinal)
        && (
            part.Contains("beside", StringComparison.Ordinal)
            || part is "pane-top"
            || part.StartsWith("pane-front-bar", StringComparison.Ordinal)
            || part.StartsWith("pane-front-header", StringComparison.Ordinal)
            || char.IsAsciiDigit(part[^1])
        );

    private static string Name(string part) => part["pane-".Length..].Replace('-', ' ');

    private static string Front(DesignNumbers numbers) =>
        numbers.Cuts.Any(c => c.Part == "pane-front-sill") ? "the front sill" : "front pane";

    private static string Hole(DesignNumbers numbers) =>
        numbers.Cuts.Any(c => c.Holes.Length > 0 && c.Part.StartsWith("pane-", StringComparison.Ordinal))
            ? " and the hole"
            : "";
}
