using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;

namespace Litterfall.Workshop.Quoting;

/// <summary>What the minutes of a design grow with, for all its boxes.</summary>
/// <param name="Boxes">Boxes.</param>
/// <param name="Cuts">Panes and parts that are cut.</param>
/// <param name="Plants">Plants that are planted here; 0 for kits.</param>
/// <param name="Liters">Liters of soil, loose.</param>
/// <param name="Background">Area of the background, m².</param>
public readonly record struct LaborCounts(
    double Boxes,
    double Cuts,
    double Plants,
    double Liters,
    double Background
)
{
    /// <summary>Counts a design.</summary>
    /// <param name="numbers">Its numbers.</param>
    /// <param name="kind">Kits are planted by the customer.</param>
    /// <param name="boxes">Boxes that are ordered.</param>
    public static LaborCounts Read(DesignNumbers numbers, OrderItemKind kind, double boxes)
    {
        var design = numbers.Design.Design;
        var factor = boxes / design.Boxes;
        return new(
            boxes,
            numbers.Cuts.Sum(c => c.Count.Si) * factor,
            kind == OrderItemKind.Build ? design.Plants.Sum(p => p.Count) * boxes : 0,
            numbers.Layers.Where(l => l.Layer == "soil").Sum(l => Unit.Liter.FromSi(l.Loose.Si)) * boxes,
            numbers.Cuts.Where(c => c.Part == "background").Sum(c => (c.Count * c.Length * c.Width).Si)
                * factor
        );
    }

    /// <summary>How many of what a stage counts.</summary>
    public double Of(LaborPer per) =>
        per switch
        {
            LaborPer.Order => 1,
            LaborPer.Box => Boxes,
            LaborPer.Cut => Cuts,
            LaborPer.Plant => Plants,
            LaborPer.Liter => Liters,
            LaborPer.BackgroundSquareMeter => Background,
            _ => 0,
        };

    /// <summary>Two designs of one order.</summary>
    public static LaborCounts operator +(LaborCounts a, LaborCounts b) =>
        new(
            a.Boxes + b.Boxes,
            a.Cuts + b.Cuts,
            a.Plants + b.Plants,
            a.Liters + b.Liters,
            a.Background + b.Background
        );
}

/// <summary>Working minutes of an order from the shop's own table.</summary>
public static class LaborPlan
{
    /// <summary>Key of the stage of visits where the table has none.</summary>
    public const string Visit = "visit";

    /// <summary>
    /// Minutes of a visit until the table has a stage for visits: half an hour there and half an hour on the
    /// way. Own choice; never counted as nothing.
    /// </summary>
    public const double UsualVisit = 60;

    /// <summary>Minutes of each stage that an option has; stages without work are left out.</summary>
    /// <param name="stages">The table.</param>
    /// <param name="kits">Counts of what goes out as kits.</param>
    /// <param name="builds">Counts of what is built and planted here.</param>
    /// <param name="visits">Visits after delivery.</param>
    public static Seq<WorkedMinutes> Minutes(
        IReadOnlyCollection<LaborStage> stages,
        LaborCounts kits,
        LaborCounts builds,
        int visits
    ) =>
        [
            .. stages
                .Select(s => new WorkedMinutes(s.Key, s.Minutes * Count(s, kits, builds, visits)))
                .Append(
                    new WorkedMinutes(
                        Visit,
                        stages.Any(s => s.For == LaborFor.Visits) ? 0 : UsualVisit * visits
                    )
                )
                .Where(m => m.Minutes > 0),
        ];

    private static double Count(LaborStage stage, LaborCounts kits, LaborCounts builds, int visits) =>
        stage.For switch
        {
            LaborFor.Visits => visits,
            LaborFor.Kits => kits.Boxes > 0 ? kits.Of(stage.Per) : 0,
            LaborFor.Builds => builds.Boxes > 0 ? builds.Of(stage.Per) : 0,
            _ => (kits + builds).Of(stage.Per),
        };
}
