using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;
using static Litterfall.UnitTests.Workshop.Cutting.CuttingCases;

namespace Litterfall.UnitTests.Workshop.Cutting;

/// <summary>The checker finds every kind of fault that is put into a good plan.</summary>
public sealed class CuttingCheckTests
{
    private static readonly CuttingTask Kerfed = Task(
        Sheet(1000, 500),
        Part(400, 200, 3),
        Part(250, 100, 2, false)
    ) with
    {
        Kerf = 3,
        Trim = 5,
    };

    public static TheoryData<string> Faults =>
        [
            "overlap",
            "missing part",
            "one part more",
            "kerf left out",
            "trim left out",
            "turned against the grain",
            "wrong size",
            "cut not made",
            "cut inside a piece",
            "sheet used twice",
            "offcut that is none",
            "value",
            "bound",
            "proof",
        ];

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_seeded_fault_is_found(string fault)
    {
        var plan = Solved(Kerfed);
        var (task, wrong) = Spoiled(plan, fault);
        Assert.NotEmpty(CuttingCheck.Faults(task, wrong));
    }

    /// <summary>Five parts around a middle: they do not overlap, and no straight cut parts them.</summary>
    [Fact]
    public void A_layout_that_no_straight_cut_parts_is_found()
    {
        var task = Task(Sheet(500, 500), Part(300, 200, 4), Part(100, 100));
        PlacedPart Laid(double x, double y, bool isTurned) =>
            new("300 × 200", x, y, isTurned ? 200 : 300, isTurned ? 300 : 200, isTurned);
        var plan = new CuttingPlan
        {
            IsProved = true,
            Value = 1,
            Bound = 1,
            Sheets =
            [
                new()
                {
                    Stock = "sheet 500",
                    Length = 500,
                    Width = 500,
                    UsedLength = 500,
                    Parts =
                    [
                        Laid(0, 0, false),
                        Laid(300, 0, true),
                        Laid(200, 300, false),
                        Laid(0, 200, true),
                        new("100 × 100", 200, 200, 100, 100, false),
                    ],
                    Cuts =
                    [
                        new(1, true, 300, 0, 500),
                        new(2, false, 200, 0, 300),
                        new(3, true, 200, 200, 500),
                    ],
                    Offcuts = [],
                },
            ],
        };
        Assert.NotEmpty(CuttingCheck.Faults(task, plan));
    }

    [Fact]
    public void A_strip_that_does_not_break_is_found()
    {
        var task = Task(Sheet(600, 450), Part(295, 450, 2));
        var plan = Solved(task);
        Assert.NotEmpty(CuttingCheck.Faults(task with { NarrowestStrip = 15 }, plan));
    }

    private static (CuttingTask Task, CuttingPlan Plan) Spoiled(CuttingPlan plan, string fault)
    {
        var sheet = plan.Sheets[0];
        CuttingPlan With(CutSheet other) => plan with { Sheets = [other, .. plan.Sheets.Skip(1)] };
        CuttingPlan Parts(Func<PlacedPart, int, PlacedPart> change) =>
            With(sheet with { Parts = [.. sheet.Parts.Select(change)] });
        return fault switch
        {
            "overlap" => (
                Kerfed,
                Parts((p, i) => i == 1 ? p with { X = sheet.Parts[0].X, Y = sheet.Parts[0].Y } : p)
            ),
            "missing part" => (Kerfed, With(sheet with { Parts = [.. sheet.Parts.Skip(1)] })),
            "one part more" => (Kerfed, With(sheet with { Parts = [.. sheet.Parts, sheet.Parts[0]] })),
            "kerf left out" => (Kerfed with { Kerf = 8 }, plan),
            "trim left out" => (Kerfed with { Trim = 9 }, plan),
            "turned against the grain" => (
                Kerfed,
                Parts(
                    (p, _) =>
                        p.Part.EndsWith("lies", StringComparison.Ordinal) ? p with { IsTurned = true } : p
                )
            ),
            "wrong size" => (Kerfed, Parts((p, i) => i == 0 ? p with { Length = p.Length - 1 } : p)),
            "cut not made" => (Kerfed, With(sheet with { Cuts = [.. sheet.Cuts.SkipLast(1)] })),
            "cut inside a piece" => (
                Kerfed,
                With(
                    sheet with
                    {
                        Cuts =
                        [
                            .. sheet.Cuts.Select(
                                (c, i) => i == sheet.Cuts.Count - 1 ? c with { To = c.To - 10 } : c
                            ),
                        ],
                    }
                )
            ),
            "sheet used twice" => (Kerfed with { Stock = [Kerfed.Stock[0] with { Count = 0 }] }, plan),
            "offcut that is none" => (Kerfed, With(sheet with { Offcuts = [new(0, 0, 300, 300)] })),
            "value" => (Kerfed, plan with { Value = plan.Value + 1, Bound = plan.Value + 1 }),
            "bound" => (Kerfed, plan with { Bound = plan.Value + 1, IsProved = false }),
            _ => (Kerfed, plan with { Bound = plan.Value - 1, IsProved = true }),
        };
    }
}
