using Litterfall.Domain.Tanks;
using Litterfall.Running.Register;
using Litterfall.Running.Service;

namespace Litterfall.UnitTests.Running.Register;

/// <summary>
/// Fields and window of the register: SI 2018/486 (England), schedule 3, part 2: purchases, births, deaths
/// and sales with dates, species, numbers, source and destination; records for three years.
/// </summary>
public sealed class RegisterBookTests
{
    private static CareEntry Line(
        string tank,
        int month,
        CareKind kind,
        int count,
        string other,
        string note = ""
    ) =>
        new()
        {
            Key = $"{tank}-{month}-{kind}",
            Tank = tank,
            At = new DateTime(2026, month, 10, 9, 0, 0, DateTimeKind.Utc),
            Kind = kind,
            Amount = count,
            Species = "frog",
            Other = other,
            Note = note,
            Who = "Ilse",
        };

    private static readonly CareEntry[] Log =
    [
        Line("A1", 1, CareKind.AnimalsIn, 4, "Marsh Farm"),
        Line("A1", 2, CareKind.Born, 3, ""),
        Line("A1", 3, CareKind.AnimalsOut, 2, "A2"),
        Line("A2", 3, CareKind.AnimalsIn, 2, "A1"),
        Line("A1", 4, CareKind.Died, 1, "", "found dry"),
        Line("A1", 5, CareKind.AnimalsOut, 2, "Pernille Voss"),
    ];

    [Fact]
    public void Each_event_has_its_fields_and_three_years()
    {
        var lines = RegisterBook.Find(
            Log,
            _ => new("Rana exempli", "frog"),
            new DateOnly(2026, 1, 1),
            new DateOnly(2026, 12, 31)
        );
        Assert.Equal(
            [
                RegisterEvent.Acquired,
                RegisterEvent.Born,
                RegisterEvent.Moved,
                RegisterEvent.Moved,
                RegisterEvent.Died,
                RegisterEvent.Disposed,
            ],
            lines.Select(l => l.Event)
        );
        var sold = lines[^1];
        Assert.Equal(("A1", "Pernille Voss", 2), (sold.Source, sold.Destination, sold.Count));
        Assert.Equal("Rana exempli", sold.Species);
        Assert.Equal(new DateOnly(2029, 5, 10), sold.KeepUntil);
        Assert.All(lines, l => Assert.Equal("", RegisterBook.Gap(l)));
    }

    /// <summary>4 + 3 − 2 − 1 − 2 = 2 stay in A1, 2 in A2.</summary>
    [Fact]
    public void Counts_follow_the_lines_and_never_fall_below_zero()
    {
        Assert.Equal(4, Assert.Single(RegisterBook.Stock(Log, new DateOnly(2026, 12, 31))).Count);
        var lost = AnimalCounts.Find([Line("A3", 1, CareKind.Died, 1, "")]);
        Assert.Equal((0, 1), (lost[0].Count, lost[0].Missing));
    }

    /// <summary>
    /// Zoo guides for amphibians: 60 days as a rule, a new arrival starts again, an unexplained death keeps
    /// the tank-mates for 30 days.
    /// </summary>
    [Fact]
    public void A_new_arrival_starts_the_clock_of_quarantine_again_and_a_death_keeps_the_others()
    {
        CareEntry[] lines =
        [
            Line("Q1", 1, CareKind.AnimalsIn, 2, "Marsh Farm", "quarantine"),
            Line("Q1", 2, CareKind.AnimalsIn, 1, "Marsh Farm", ""),
        ];
        var clock = QuarantineClocks.Find("Q1", lines, new DateOnly(2026, 3, 1))!;
        Assert.Equal(new DateOnly(2026, 4, 11), clock.Ends);
        var death = Line("Q1", 4, CareKind.Died, 1, "");
        var held = QuarantineClocks.Find("Q1", [.. lines, death], new DateOnly(2026, 4, 12))!;
        Assert.Equal(new DateOnly(2026, 5, 10), held.Ends);
        Assert.True(held.IsHeldByDeath);
    }

    [Fact]
    public void A_permit_is_named_sixty_days_before_it_ends()
    {
        var permit = new Permit
        {
            Key = "1",
            Kind = PermitKind.Selling,
            Number = "S-1",
            Issued = new DateOnly(2026, 1, 1),
            Expires = new DateOnly(2026, 12, 31),
        };
        Assert.Empty(PermitWatch.Alarms([permit], new DateOnly(2026, 11, 1).AddDays(-1)));
        Assert.Single(PermitWatch.Alarms([permit], new DateOnly(2026, 11, 1)));
    }
}
