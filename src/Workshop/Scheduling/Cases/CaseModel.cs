using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.Workshop.Scheduling.Cases;

/// <summary>
/// A case as jobs of two stages: planting, which takes the latest quarantine before it, and shipping. An
/// earlier quarantine only takes more places on more days, so that none is better than the latest.
/// </summary>
internal static class CaseModel
{
    /// <summary>Hours are counted in thousandths.</summary>
    public const double PerHour = 1000;

    /// <summary>Index of hours of work.</summary>
    public const int Hours = 0;

    /// <summary>Index of places in quarantine.</summary>
    public const int Quarantine = 1;

    /// <summary>Index of places on the bench.</summary>
    public const int Bench = 2;

    private const long LateDay = 100;

    /// <summary>The problem.</summary>
    public static JobProblem Create(ShopCase asked)
    {
        int[] Each(int amount) => [.. Enumerable.Repeat(amount, asked.HorizonDays)];
        int[] ships = [.. Enumerable.Range(0, asked.HorizonDays).Where(asked.IsShipDay)];
        return new JobProblem(
            [.. asked.Orders.Select(o => new Job(Name(o), [Plant(asked, o), Ship(asked, o, ships)]))],
            [Each(Units(asked.StaffHours)), Each(asked.QuarantinePlaces), Each(asked.BenchPlaces)]
        );
    }

    /// <summary>As messages call an order.</summary>
    public static string Name(CaseOrder order) => FormattableString.Invariant($"order {order.Id}");

    /// <summary>Hours in whole units.</summary>
    public static int Units(double hours) => (int)Math.Round(hours * PerHour, MidpointRounding.AwayFromZero);

    /// <summary>The days of all orders.</summary>
    public static IEnumerable<CaseDays> Days(ShopCase asked, int[][] starts) =>
        asked.Orders.Select((o, i) => Days(asked, o, starts[i]));

    /// <summary>The days of an order.</summary>
    public static CaseDays Days(ShopCase asked, CaseOrder order, int[] starts) =>
        new(order, asked.QuarantineStart(order, starts[0]), starts[0], starts[1], asked.Arrival(starts[1]));

    private static JobStage Plant(ShopCase asked, CaseOrder order)
    {
        int[] days =
        [
            .. Enumerable
                .Range(0, asked.HorizonDays)
                .Where(d =>
                    asked.IsWorkDay(d)
                    && asked.QuarantineStart(order, d) is var q
                    && q >= Math.Max(0, order.Release)
                ),
        ];
        int Start(int day) => asked.QuarantineStart(order, day);
        return new JobStage
        {
            Key = "plant",
            Days = days,
            Costs =
            [
                .. days.Select(d =>
                    ((long)order.QuarantinePlaces * (d - Start(d))) - ((long)order.BenchPlaces * d)
                ),
            ],
            Ready = [.. days.Select(d => d + order.GrowInDays)],
            Uses =
            [
                .. days.Select(d =>
                    new[]
                    {
                        new DayUse(Quarantine, Start(d), order.QuarantinePlaces, d - Start(d)),
                        new DayUse(Hours, d, Units(order.PlantHours)),
                    }
                ),
            ],
            Holds = [new DayHold(Bench, order.BenchPlaces)],
            Next = 1,
        };
    }

    private static JobStage Ship(ShopCase asked, CaseOrder order, int[] ships) =>
        new()
        {
            Key = "ship",
            Days = ships,
            Costs =
            [
                .. ships.Select(d =>
                    ((long)order.BenchPlaces * (d + 1))
                    + (LateDay * order.Weight * Math.Max(0, asked.Arrival(d) - order.Due))
                ),
            ],
            Ready = ships,
            Uses =
            [
                .. ships.Select(d =>
                    new[]
                    {
                        new DayUse(Hours, d, Units(order.PackHours)),
                        new DayUse(Bench, d, order.BenchPlaces),
                    }
                ),
            ],
        };
}
