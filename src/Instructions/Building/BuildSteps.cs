using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Instructions.Care;

namespace Litterfall.Instructions.Building;

/// <summary>
/// The step cards of one build: what to do, in working order, with this design's own numbers. A group that a
/// design does not need is left out.
/// </summary>
public static class BuildSteps
{
    /// <summary>
    /// The groups in working order; for a kit the first two are done in the workshop and say what is packed
    /// in which bag, and the later ones are written for the person who builds it.
    /// </summary>
    /// <param name="tank">The tank; one in service is not built again and has none.</param>
    public static ImmutableArray<StepGroup> Of(TankPlan tank)
    {
        if (tank.IsRunning)
        {
            return [];
        }

        var numbers = tank.Numbers;
        var bags = numbers.Design.Design.Form == BuildForm.Kit ? KitBags.Of(numbers) : [];
        StepGroup?[] groups =
        [
            CleanSteps.Of(numbers),
            KitSteps.Of(numbers, bags),
            GlueSteps.Of(numbers),
            LiftSteps.Of(numbers),
            BoxSteps.Of(numbers),
            DrainageSteps.Of(numbers, bags),
            SoilSteps.Of(numbers, bags),
            PlantSteps.Of(numbers, bags),
            FittingSteps.Of(numbers, tank.Mist),
            WeekSteps.Of(tank),
        ];
        return
        [
            .. groups
                .OfType<StepGroup>()
                .Select(g =>
                    g with
                    {
                        Steps = [.. g.Steps.Select(s => s with { Needs = StepOrder.Needs(g, s) })],
                    }
                ),
        ];
    }
}
