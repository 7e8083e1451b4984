using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Litterfall.Bench.Correct;
using Litterfall.Forecasting.Climate;
using Litterfall.Running.Correcting;
using Litterfall.UnitTests.Running.Correcting;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var root = args.Length > 1 ? args[1] : ".";
switch (args.Length > 0 ? args[0] : "all")
{
    case "pace":
        PaceRuns.Print(root);
        break;
    case "parts":
        PartRuns.Print(root);
        break;
    case "cover":
        Cover(root, args.Length > 2 ? int.Parse(args[2]) : 200);
        break;
    default:
        Time(root);
        break;
}

static void Cover(string root, int tanks)
{
    (string Name, BoxSetup Setup)[] designs =
    [
        ("held", new BoxSetup(Designs.Pose(root, Designs.Held))),
        ("reference", new BoxSetup(Designs.Pose(root, Designs.Reference))),
        ("ld-202", new BoxSetup(Designs.Read(root, "ld-202-waiting-room.viv.yaml"))),
        ("ld-201", new BoxSetup(Designs.Read(root, "ld-201-flat.viv.yaml"))),
    ];
    int[][] looks =
    [
        [6, 11, 16],
        [10, 20, 30],
        [8, 12, 20, 27],
    ];
    var scores = new List<(string Design, SyntheticScore Score)>();
    for (var i = 0; i < tanks; i++)
    {
        var (name, setup) = designs[i % designs.Length];
        var look = looks[i / designs.Length % looks.Length];
        var tank = new SyntheticTank(setup, 4021 + i)
        {
            LookDays = look,
            IsDrainedBetween = look.Length == 4,
            HasMore = i % 5 == 0,
        };
        scores.Add((name, tank.Score(new CorrectionWish { Seed = 1 + i })));
        if (scores.Count % 20 == 0 && scores.Count < tanks)
        {
            Told("so far", [.. scores.Select(s => s.Score)]);
        }
    }

    foreach (var group in scores.GroupBy(s => s.Design).Append(scores.GroupBy(_ => "all").First()))
    {
        Told(group.Key, [.. group.Select(g => g.Score)]);
    }
}

static void Told(string name, ImmutableArray<SyntheticScore> of)
{
    double Share(Func<SyntheticScore, bool> held) => 100.0 * of.Count(held) / of.Length;
    double Median(Func<SyntheticScore, double?> get)
    {
        var sorted = of.Select(get).OfType<double>().Order().ToArray();
        return sorted.Length == 0 ? double.NaN : sorted[sorted.Length / 2];
    }

    var told = of.Count(s => s.DrainMiss is not null);
    Console.WriteLine(
        $"{name, -10} {of.Length, 4}: level held {Share(s => s.LevelHeld[0]):0.0} "
            + $"{Share(s => s.LevelHeld[1]):0.0} {Share(s => s.LevelHeld[2]):0.0} % (now, +7 d, +14 d); "
            + $"drain held {Share(s => s.DrainHeld):0.0} %; "
            + $"level miss median {Median(s => s.LevelMiss):0.00} mm "
            + $"(before {Median(s => s.LevelMissBefore):0.00}), within a day's gain or 1.7 mm "
            + $"{Share(s => s.LevelMiss <= Math.Max(1.7, s.DayGain)):0} %; "
            + $"drain miss median {Median(s => s.DrainMiss):0.0} d "
            + $"(before {Median(s => s.DrainMissBefore):0.0}), within 2 d "
            + $"{100.0 * of.Count(s => s.DrainMiss <= 2) / Math.Max(1, told):0} % of {told}; "
            + $"inputs held {100.0 * of.Sum(Hits) / of.Sum(s => s.InputHeld.Length):0.0} %; "
            + $"width {Median(s => s.Width.Before):0} -> {Median(s => s.Width.After):0} d"
    );
    static int Hits(SyntheticScore score) => score.InputHeld.Count(h => h);
}

static void Time(string root)
{
    foreach (
        var (name, design) in new[]
        {
            ("held", Designs.Pose(root, Designs.Held)),
            ("reference", Designs.Pose(root, Designs.Reference)),
            ("ld-202", Designs.Read(root, "ld-202-waiting-room.viv.yaml")),
        }
    )
    {
        var first = BoxRun.FirstDay(design).ToDateTime(new TimeOnly(9, 0));
        ImmutableArray<Litterfall.Domain.Tanks.TankReading> readings =
        [
            .. new[] { (10, 12.0), (20, 25.0), (30, 38.0) }.Select(
                r => new Litterfall.Domain.Tanks.TankReading
                {
                    At = first.AddDays(r.Item1),
                    Kind = Litterfall.Domain.Tanks.ReadingKind.Level,
                    Amount = r.Item2,
                }
            ),
        ];
        for (var again = 0; again < 4; again++)
        {
            var watch = Stopwatch.StartNew();
            var setup = new BoxSetup(design);
            var corrected = Corrector.Run(TankCase.From(setup, readings), new CorrectionWish(Days: 60))!;
            Console.WriteLine(
                $"{name}: 64 members, 60 days in {watch.Elapsed.TotalMilliseconds:0} ms; next drain "
                    + $"{corrected.Before.NextDrain} -> {corrected.After.NextDrain}; {corrected.Next?.Why}"
            );
            if (again == 3)
            {
                Console.WriteLine("  " + string.Join("\n  ", corrected.Learned));
            }
        }
    }
}
