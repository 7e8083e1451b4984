using System.Collections.Immutable;
using Litterfall.Domain.Nursery;

namespace Litterfall.Workshop.Nursery;

/// <summary>Plants of a need that will be there, and what can be done for the rest.</summary>
/// <param name="Need">The need.</param>
/// <param name="Ready">Plants expected to be usable by its day.</param>
/// <param name="Trays">Trays they come from.</param>
/// <param name="BuyBy">Last day on which bought plants can come in; null where nothing is missing.</param>
/// <param name="Buy">Plants to buy, losses counted.</param>
/// <param name="CutBy">Last day for cuttings; null where no mother plant is there.</param>
/// <param name="Cut">Cuttings to take, losses counted.</param>
/// <param name="CanCut">Cuttings that mother plants give by that day.</param>
public sealed record PlantCover(
    PlantNeed Need,
    int Ready,
    ImmutableArray<string> Trays,
    DateOnly? BuyBy,
    int Buy,
    DateOnly? CutBy,
    int Cut,
    int CanCut
)
{
    /// <summary>Plants that are missing.</summary>
    public int Missing => Need.Plants - Ready;

    /// <summary>Needs by their days against trays; the tray that is usable first is taken first.</summary>
    /// <param name="needs">Needs.</param>
    /// <param name="stands">Trays as they stand.</param>
    /// <param name="mothers">Mother plants.</param>
    /// <param name="learned">Losses and times.</param>
    /// <param name="today">Today.</param>
    public static ImmutableArray<PlantCover> Find(
        IEnumerable<PlantNeed> needs,
        IEnumerable<PlantStand> stands,
        IReadOnlyCollection<MotherPlant> mothers,
        PlantTimes learned,
        DateOnly today
    )
    {
        var free = stands
            .OrderBy(s => s.UsableFrom)
            .Select(s => (Stand: s, Left: Math.Floor(s.Expected + 1e-9)))
            .ToList();
        var covers = ImmutableArray.CreateBuilder<PlantCover>();
        foreach (var need in needs.OrderBy(n => n.Day).ThenBy(n => n.Order.Number))
        {
            var ready = 0;
            var trays = ImmutableArray.CreateBuilder<string>();
            for (var i = 0; i < free.Count && ready < need.Plants; i++)
            {
                var (stand, left) = free[i];
                if (stand.Tray.Plant == need.Plant && left > 0 && stand.UsableFrom <= Later(need.Day, today))
                {
                    var taken = (int)Math.Min(left, need.Plants - ready);
                    free[i] = (stand, left - taken);
                    ready += taken;
                    trays.Add(stand.Tray.Number);
                }
            }

            covers.Add(Told(need, ready, trays.ToImmutable(), mothers, learned));
        }

        return covers.ToImmutable();
    }

    private static PlantCover Told(
        PlantNeed need,
        int ready,
        ImmutableArray<string> trays,
        IReadOnlyCollection<MotherPlant> mothers,
        PlantTimes learned
    )
    {
        var missing = need.Plants - ready;
        if (missing <= 0)
        {
            return new(need, ready, trays, null, 0, null, 0, 0);
        }

        var cutBy = need.Day.AddDays(-learned.CuttingDays(need.Plant));
        var own = mothers.Where(m => m.Plant == need.Plant && m.Ended is null).ToList();
        return new(
            need,
            ready,
            trays,
            need.Day.AddDays(-learned.QuarantineDays),
            PlantTimes.ToTake(missing, learned.Bought(need.Plant)),
            own.Count > 0 ? cutBy : null,
            PlantTimes.ToTake(missing, learned.Cut(need.Plant)),
            own.Where(m => m.NextCut <= cutBy).Sum(m => m.CuttingsEach)
        );
    }

    private static DateOnly Later(DateOnly a, DateOnly b) => a > b ? a : b;
}

/// <summary>Losses and times that plants are planned with.</summary>
/// <param name="QuarantineDays">Days bought plants are kept apart.</param>
/// <param name="CuttingDays">Days from a cutting of a plant to a usable one.</param>
/// <param name="Bought">Loss of bought plants of a kind.</param>
/// <param name="Cut">Loss of cuttings of a kind.</param>
public sealed record PlantTimes(
    int QuarantineDays,
    Func<string, int> CuttingDays,
    Func<string, PlantLoss> Bought,
    Func<string, PlantLoss> Cut
)
{
    /// <summary>Plants to take so that enough are left: wanted ÷ (1 − loss), rounded up.</summary>
    /// <param name="wanted">Plants wanted.</param>
    /// <param name="loss">Loss.</param>
    public static int ToTake(int wanted, PlantLoss loss) =>
        (int)Math.Ceiling((wanted / (1 - loss.Mean)) - 1e-9);
}
