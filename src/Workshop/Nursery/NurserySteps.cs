using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Nursery;

/// <summary>A step of work in the nursery: trays as they are from then on, with lots and lines.</summary>
/// <param name="Trays">Trays that change.</param>
/// <param name="Stock">Lots and lines.</param>
/// <param name="Note">What was done.</param>
public sealed record NurseryStep(ImmutableArray<PlantTray> Trays, StockStep Stock, string Note)
{
    /// <summary>A mother plant that changes with it; null for none.</summary>
    public MotherPlant? Mother { get; init; }
}

/// <summary>Steps of work in the nursery, or why they cannot be taken.</summary>
public static class NurserySteps
{
    private static readonly StockStep Nothing = new([], []);

    /// <summary>Puts plants on a bench as a new tray with its lot.</summary>
    /// <param name="book">The nursery.</param>
    /// <param name="tray">The tray.</param>
    /// <param name="cost">What the plants cost, net.</param>
    /// <param name="when">Day, and who does it.</param>
    public static NurseryStep Start(
        NurseryBook book,
        PlantTray tray,
        decimal cost,
        (DateOnly Day, string Who) when
    )
    {
        var lot = new Lot
        {
            Id = tray.Number,
            Good = tray.Plant,
            Since = tray.Since,
            Supplier = tray.Supplier,
            Amount = tray.Plants,
            Cost = cost,
            QuarantinedUntil = tray.QuarantineDays > 0 ? tray.Since.AddDays(tray.QuarantineDays) : null,
            Line = tray.Mother,
        };
        var kind = tray.Supplier is null ? MovementKind.Made : MovementKind.Received;
        Movement[] lines =
        [
            Line(tray, kind, tray.Plants, when, "") with
            {
                Day = tray.Since,
            },
            .. Restarted(book, tray, when),
        ];
        return new([tray], new StockStep([lot], [.. lines]), $"{tray.Number} put on its bench");
    }

    /// <summary>Puts plants that are in the book of stock already on a bench.</summary>
    /// <param name="book">The nursery.</param>
    /// <param name="lot">Their lot.</param>
    /// <param name="bench">The bench.</param>
    /// <param name="place">Place on it.</param>
    /// <param name="when">Day, and who does it.</param>
    public static NurseryStep Adopt(
        NurseryBook book,
        LotAccount lot,
        NurseryBench bench,
        int place,
        (DateOnly Day, string Who) when
    )
    {
        var tray = new PlantTray
        {
            Number = lot.Lot.Id,
            Plant = lot.Lot.Good,
            Origin = lot.Lot.Supplier is null ? TrayOrigin.Cutting : TrayOrigin.Bought,
            Supplier = lot.Lot.Supplier,
            Mother = lot.Lot.Line,
            Since = lot.Lot.Since,
            Plants = (int)Math.Round(lot.OnHand),
            Bench = bench.Key,
            Place = place,
            QuarantineDays =
                bench.Use == BenchUse.Quarantine && lot.Lot.QuarantinedUntil is { } until
                    ? Math.Max(0, until.DayNumber - lot.Lot.Since.DayNumber)
                    : 0,
        };
        return new(
            [tray],
            new StockStep([], [.. Restarted(book, tray, when)]),
            $"{tray.Number} put on {bench.Name}"
        );
    }

    /// <summary>Cuttings of a mother plant as a new tray.</summary>
    /// <param name="mother">The mother plant.</param>
    /// <param name="tray">The tray.</param>
    /// <param name="when">Day, and who cuts.</param>
    public static (NurseryStep? Step, string? Fault) Cut(
        MotherPlant mother,
        PlantTray tray,
        (DateOnly Day, string Who) when
    )
    {
        if (when.Day < mother.NextCut)
        {
            return (null, $"{mother.Name} rests until {Day(mother.NextCut)}. Cutting it now weakens it.");
        }

        var lot = new Lot
        {
            Id = tray.Number,
            Good = tray.Plant,
            Since = tray.Since,
            Amount = tray.Plants,
            Line = mother.Name,
        };
        return (
            new(
                [tray],
                new StockStep(
                    [lot],
                    [Line(tray, MovementKind.Made, tray.Plants, when, $"cut from {mother.Name}")]
                ),
                $"{tray.Number} cut from {mother.Name}"
            )
            {
                Mother = mother with { LastCut = when.Day },
            },
            null
        );
    }

    /// <summary>A look at a tray; what was found holds all trays of its bench.</summary>
    /// <param name="book">The nursery.</param>
    /// <param name="tray">The tray.</param>
    /// <param name="found">What was found; empty for nothing.</param>
    /// <param name="when">Day, and who looked.</param>
    public static NurseryStep Inspect(
        NurseryBook book,
        PlantTray tray,
        string found,
        (DateOnly Day, string Who) when
    )
    {
        var seen = tray with { Inspections = [.. tray.Inspections, new(when.Day, found, when.Who)] };
        var lines =
            found.Length == 0 || !tray.IsInQuarantine
                ? []
                : book
                    .Trays.Where(t => t.Bench == tray.Bench && t.IsInQuarantine)
                    .Where(t => book.Stock.Find(t.Number) is { IsHeld: false, HasSome: true })
                    .Select(t => Line(t, MovementKind.Held, 0, when, $"{tray.Number}: {found}"));
        return new(
            [seen],
            new StockStep([], [.. lines]),
            found.Length == 0 ? $"{tray.Number}: nothing found" : $"{tray.Number}: {found}"
        );
    }

    /// <summary>Releases all trays of a bench together.</summary>
    /// <param name="book">The nursery.</param>
    /// <param name="bench">Key of the quarantine bench.</param>
    /// <param name="to">Bench they go to.</param>
    /// <param name="when">Day, and who releases them.</param>
    public static (NurseryStep? Step, string? Fault) Release(
        NurseryBook book,
        string bench,
        NurseryBench to,
        (DateOnly Day, string Who) when
    )
    {
        if (book.Clock(bench) is not { } clock)
        {
            return (null, "Nothing is kept apart on this bench.");
        }

        if (clock.Bar(when.Day) is { } bar)
        {
            return (null, bar);
        }

        var lines = new List<Movement>();
        foreach (var tray in clock.Trays)
        {
            if (book.Stock.Find(tray.Number) is not { } lot)
            {
                continue;
            }

            if (lot.IsHeld)
            {
                lines.Add(Line(tray, MovementKind.Released, 0, when, "out of quarantine"));
            }

            lines.Add(
                Line(tray, MovementKind.Moved, lot.OnHand, when, "out of quarantine") with
                {
                    Place = to.Name,
                }
            );
        }

        return (
            new(
                [.. clock.Trays.Select(t => t with { Released = when.Day, Bench = to.Key })],
                new StockStep([], [.. lines]),
                $"{clock.Bench.Name} released"
            ),
            null
        );
    }

    /// <summary>Plants that died.</summary>
    /// <param name="book">The nursery.</param>
    /// <param name="tray">The tray.</param>
    /// <param name="plants">How many.</param>
    /// <param name="why">In words.</param>
    /// <param name="when">Day, and who took them out.</param>
    public static (NurseryStep? Step, string? Fault) Die(
        NurseryBook book,
        PlantTray tray,
        int plants,
        string why,
        (DateOnly Day, string Who) when
    )
    {
        var left = book.Stand(tray).Left;
        if (plants < 1 || plants > left)
        {
            return (
                null,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{tray.Number} has {left} plants; type how many of them died."
                )
            );
        }

        return (
            new(
                [tray with { Deaths = [.. tray.Deaths, new(when.Day, plants, why, when.Who)] }],
                book.Stock.Find(tray.Number) is null
                    ? Nothing
                    : new StockStep([], [Line(tray, MovementKind.Died, plants, when, why)]),
                string.Create(CultureInfo.InvariantCulture, $"{tray.Number}: {plants} died")
            ),
            null
        );
    }

    /// <summary>
    /// Plants that join others in quarantine start the clock of all anew: those whose days would end earlier
    /// are put on hold until all are released together.
    /// </summary>
    private static IEnumerable<Movement> Restarted(
        NurseryBook book,
        PlantTray tray,
        (DateOnly Day, string Who) when
    ) =>
        tray.QuarantineDays == 0
            ? []
            : book
                .Trays.Where(t => t.Bench == tray.Bench && t.IsInQuarantine && t.Since < tray.Since)
                .Where(t => book.Stock.Find(t.Number) is { IsHeld: false, HasSome: true })
                .Select(t =>
                    Line(t, MovementKind.Held, 0, when, $"{tray.Number} joined: quarantine starts again")
                );

    private static Movement Line(
        PlantTray tray,
        MovementKind kind,
        double amount,
        (DateOnly Day, string Who) when,
        string note
    ) =>
        new()
        {
            Lot = tray.Number,
            Kind = kind,
            Amount = amount,
            Day = when.Day,
            Who = when.Who,
            Note = note,
        };

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
