using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Tanks;
using Litterfall.Instructions.Care;
using Litterfall.Running.Rounds;
using Litterfall.Running.Service;
using Litterfall.Store;

namespace Litterfall.Web.Tanks.Rounds;

/// <summary>The tanks with their round.</summary>
/// <param name="Tanks">The tanks.</param>
/// <param name="Book">Who needs what.</param>
public sealed record RoundView(TankView Tanks, RoundBook Book);

/// <summary>Makes the round of this bench and writes what was done on it.</summary>
public sealed class RoundDesk(
    TankDesk desk,
    TankForecasts forecasts,
    RoundFindings found,
    RoomReadings readings,
    BenchStore store
)
{
    /// <summary>The round of today.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<RoundView> LoadAsync(CancellationToken cancel = default)
    {
        var view = await desk.LoadAsync(cancel);
        var tanks = await TanksAsync(view, view.Running.Where(t => t.Customer.Length == 0), cancel);
        return new(view, new(tanks, await found.FindAsync(view, cancel), view.Today));
    }

    /// <summary>Tanks with all that a round looks at.</summary>
    /// <param name="view">The tanks.</param>
    /// <param name="some">Those that are looked at, in walking order.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ImmutableArray<RoundTank>> TanksAsync(
        TankView view,
        IEnumerable<Tank> some,
        CancellationToken cancel = default
    )
    {
        var tanks = ImmutableArray.CreateBuilder<RoundTank>();
        foreach (var tank in some)
        {
            var lines = view.Care[tank.Code].ToImmutableArray();
            var numbers = await forecasts.FindAsync(tank, cancel);
            tanks.Add(
                new(tank, lines, await forecasts.OutlookAsync(tank, cancel))
                {
                    LevelCheckDays = numbers is null
                        ? 7
                        : (int)Math.Max(1, CareIntervals.LevelCheck(numbers.Design).Value),
                    QuarantineEnds = QuarantineClocks.Find(tank.Code, lines, view.Today)?.Ends,
                }
            );
        }

        return tanks.ToImmutable();
    }

    /// <summary>What the rooms could do better, by their loggers.</summary>
    /// <param name="view">The round.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<IReadOnlyList<string>> AdviceAsync(RoundView view, CancellationToken cancel = default)
    {
        var series = await readings.FindAsync(cancel);
        return
        [
            .. view.Tanks.Places.SelectMany(room =>
                RoomAdvice.Find(
                    room,
                    [
                        .. view
                            .Tanks.Running.Where(t => t.Place.Room == room.Key)
                            .Select(t => Wish(view.Tanks, t))
                            .OfType<TankWish>(),
                    ],
                    series
                )
            ),
        ];
    }

    /// <summary>What the animals of a tank want; null where nobody lives in it.</summary>
    private static TankWish? Wish(TankView view, Tank tank)
    {
        var there = AnimalCounts.Find(view.Care[tank.Code]).FirstOrDefault(c => c.Count > 0);
        return
            there is not null
            && view.Catalog.Find<AnimalEntry>(there.Species) is { } entry
            && entry
                is
            {
                CoolestDay: { } dayLow,
                WarmestDay: { } dayHigh,
                CoolestNight: { } nightLow,
                WarmestNight: { } nightHigh
            }
            ? new(
                tank,
                view.NameOf(there.Species),
                (dayLow.Value + nightLow.Value) / 2,
                (dayHigh.Value + nightHigh.Value) / 2,
                entry.AvoidAbove?.Value
            )
            : null;
    }

    /// <summary>Writes that something of the round is done; null where it is kept, else why not.</summary>
    /// <param name="item">What was done.</param>
    /// <param name="amount">Amount in the unit of its kind; null for none.</param>
    public async Task<string?> DoneAsync(RoundItem item, double? amount)
    {
        if (item.AsksAmount && amount is null)
        {
            return "Type the number that you read or drew off, such as 1.2.";
        }

        var line = new CareEntry
        {
            Key = Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture),
            Tank = item.Tank,
            At = desk.Now,
            Kind = item.Writes,
            Amount = amount,
            Note = item.AsksAmount ? "" : item.What.ToLowerInvariant(),
            Task = item.Task,
            Who = await desk.WhoAsync(),
        };
        return CareLines.Refusal(line, desk.Now)
            ?? await Library.Attempt.AtAsync(() => store.AddCareAsync([line]));
    }
}
