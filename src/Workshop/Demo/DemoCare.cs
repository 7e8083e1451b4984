using System.Globalization;
using Litterfall.Domain.Tanks;

namespace Litterfall.Workshop.Demo;

/// <summary>Logs of the demo: the same lines for the same tanks and day on every machine.</summary>
/// <param name="today">Day the demo is filled; the last round was some days before it.</param>
internal sealed class DemoCare(DateOnly today)
{
    private const uint Seed = 4021;
    private const int RoundDays = 7;
    private const double DrainAtMillimeters = 28;
    private const double LeftMillimeters = 10;

    // 0.1521 m² of floor, 42 % voids between the clay: 64 mL for a millimeter of level.
    private const double MillilitersPerMillimeter = 64;
    private readonly DemoDice dice = new(Seed);
    private int written;

    /// <summary>The log of a tank up to the last round.</summary>
    /// <param name="tank">The tank.</param>
    public IEnumerable<CareEntry> Write(Tank tank) =>
        tank.Code == DemoTanks.OldTank ? Old(tank)
        : tank.Place.Room.Length > 0 ? Breeding(tank)
        : Sold(tank);

    private IEnumerable<CareEntry> Breeding(Tank tank)
    {
        var (species, count) = Lives(tank);
        var arrived = tank.Since.AddDays(56);
        var level = LeftMillimeters;
        var gain = Gain(tank);
        for (var (day, week) = (tank.Since, 1); day <= today.AddDays(-2); day = day.AddDays(RoundDays), week++)
        {
            if (day == arrived)
            {
                yield return Line(tank, day, CareKind.AnimalsIn, count) with
                {
                    Species = species,
                    Other = "own stock",
                };
            }

            level += gain * RoundDays * dice.Between(0.85, 1.15);
            yield return Line(tank, day, CareKind.Level, Math.Round(level));
            if (level >= DrainAtMillimeters)
            {
                var out_ = Math.Round((level - LeftMillimeters) * MillilitersPerMillimeter / 50) * 50;
                yield return Line(tank, day, CareKind.Drained, out_);
                level = LeftMillimeters;
            }

            foreach (var line in Now(tank, day, week))
            {
                yield return line;
            }
        }
    }

    /// <summary>What is done every some weeks.</summary>
    private IEnumerable<CareEntry> Now(Tank tank, DateOnly day, int week)
    {
        if (week % 6 == 0)
        {
            yield return Line(tank, day, CareKind.Tended, null) with { Note = "trimmed, glass wiped" };
        }

        if (week % 18 == 0)
        {
            yield return Line(tank, day, CareKind.Added, null) with { Note = "oak leaves, two handfuls" };
        }

        if (week % 37 == 0)
        {
            yield return Line(tank, day, CareKind.Tended, null) with { Note = "lamp wiped, light measured" };
        }

        if (week % 30 == 0)
        {
            yield return Line(tank, day, CareKind.Added, null) with { Note = "springtails, half a cup" };
        }

        if (week > 20 && dice.Below(22) == 0)
        {
            yield return Line(tank, day, CareKind.Born, 1 + dice.Below(2)) with { Species = Lives(tank).Species };
        }
    }

    private IEnumerable<CareEntry> Sold(Tank tank)
    {
        var due = tank.Since.AddDays(28);
        if (due <= today.AddDays(-2))
        {
            yield return Line(tank, due, CareKind.Level, 22) with { Note = "told by telephone" };
        }
    }

    /// <summary>What the keeper of the old show tank wrote down.</summary>
    private IEnumerable<CareEntry> Old(Tank tank)
    {
        DateOnly Day(int month, int day) => new(2026, month, day);
        yield return Line(tank, Day(1, 12), CareKind.Changed, null) with
        {
            Note = "front vent taped, to keep it humid",
        };
        yield return Line(tank, Day(1, 12), CareKind.AnimalsIn, 3) with
        {
            Species = "epipedobates-anthonyi",
            Other = "own stock",
        };
        yield return Line(tank, Day(2, 28), CareKind.Level, 40);
        yield return Line(tank, Day(2, 28), CareKind.Drained, 2450) with { Note = "down to 1 cm" };
        yield return Line(tank, Day(2, 28), CareKind.NozzleFlow, 90);
        yield return Line(tank, Day(3, 1), CareKind.Changed, null) with
        {
            Note = "misting from 2 × 15 s to 4 × 20 s",
        };
        yield return Line(tank, Day(3, 21), CareKind.Level, 90) with
        {
            Note = "5 cm above the barrier, 2 cm below the soil's surface; smells like a ditch",
        };
        yield return Line(tank, Day(3, 21), CareKind.Air, 24) with { HumidityPercent = 99.9 };
    }

    private static (string Species, int Count) Lives(Tank tank) =>
        (tank.Place.Rack, tank.Place.Shelf) switch
        {
            ("A", _) => ("epipedobates-anthonyi", 4),
            ("B", 1) => ("ranitomeya-variabilis", 2),
            ("B", _) => ("ranitomeya-imitator", 2),
            ("C", 1) => ("dendrobates-leucomelas", 3),
            (_, _) when tank.Code == "C7" => ("phyllobates-terribilis", 3),
            _ => ("ranitomeya-imitator", 2),
        };

    /// <summary>Millimeters of level that come in a day: warm racks dry faster.</summary>
    private static double Gain(Tank tank) =>
        tank.Place.Rack switch
        {
            "A" => 0.75,
            "B" => 0.62,
            _ => 0.41,
        };

    private CareEntry Line(Tank tank, DateOnly day, CareKind kind, double? amount)
    {
        var minute = written++ % 120;
        return new()
        {
            Key = string.Create(CultureInfo.InvariantCulture, $"demo-{tank.Code}-{written}"),
            Tank = tank.Code,
            At = day.ToDateTime(new TimeOnly(7, 0), DateTimeKind.Utc).AddMinutes(minute),
            Kind = kind,
            Amount = amount,
            Who = DemoShop.Builder,
        };
    }
}
