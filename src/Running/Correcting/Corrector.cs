using System.Collections.Immutable;
using Litterfall.Forecasting.Climate;

namespace Litterfall.Running.Correcting;

/// <summary>
/// Corrects the forecast of a tank by its readings: members drawn from what is known of the inputs are run
/// with the engine that designed the tank, moved by <see cref="EnsembleSmoother"/> to where they fit the
/// readings, and run again.
/// </summary>
public sealed class Corrector
{
    private const int LongestDays = 1200;
    private const int UsualDays = 60;
    private const int Moves = 2;
    private readonly TankCase tank;
    private readonly CorrectionWish wish;
    private readonly ImmutableArray<UncertainInput> inputs;
    private readonly ReadingSights sights;
    private readonly CancellationToken cancel;
    private readonly Action<double>? progress;
    private double tareCenter;
    private int done;
    private double all = 1;

    private Corrector(
        TankCase tank,
        BoxRun plain,
        CorrectionWish wish,
        Action<double>? progress,
        CancellationToken cancel
    )
    {
        (this.tank, this.wish, this.progress, this.cancel) = (tank, wish, progress, cancel);
        inputs = UncertainInputs.From(tank.Design, plain.Floor.DrainageMeters > 0);
        sights = new ReadingSights(tank, plain);
    }

    /// <summary>Days that are run for a wish.</summary>
    public static int Days(TankCase tank, CorrectionWish wish)
    {
        var last = (tank.LastHour / 24) + 1;
        return Math.Min(LongestDays, wish.Days > 0 ? Math.Max(wish.Days, last) : last + UsualDays);
    }

    /// <summary>
    /// The corrected forecast; null where the floor has no water curve, or no two members came out.
    /// </summary>
    /// <param name="tank">The tank.</param>
    /// <param name="wish">What is asked.</param>
    /// <param name="progress">Told the share done; may be called from any thread.</param>
    /// <param name="cancel">Cancels.</param>
    public static TankCorrection? Run(
        TankCase tank,
        CorrectionWish wish,
        Action<double>? progress = null,
        CancellationToken cancel = default
    ) =>
        BoxRun.From(tank.Spans[0].Setup, tank.First, null, tank.Pace) is { } plain
            ? new Corrector(tank, plain, wish, progress, cancel).Run()
            : null;

    private sealed record Member(int Place, double[] Standard, MemberInputs Inputs, TankRun? Run);

    private TankCorrection? Run()
    {
        var days = Days(tank, wish);
        var until = Math.Max(1, tank.LastHour + 1);
        all = wish.Members * ((24.0 * days * 2) + ((Moves - 1) * until));
        var rows = inputs.Length + 2;
        var dealt = Enumerable
            .Range(0, rows)
            .Select(r => NormalDraws.Deal(wish.Members, wish.Seed, r))
            .ToArray();
        var prior = Enumerable
            .Range(0, wish.Members)
            .Select(m => dealt.Select(row => row[m]).ToArray())
            .ToArray();
        var before = Pass(prior, 24 * days);
        if (before.Count < 2)
        {
            return null;
        }

        Anchor(before);
        var after = sights.All.IsEmpty ? before : Moved(before, prior, (24 * days, until));
        if (after.Count < 2)
        {
            return null;
        }

        progress?.Invoke(1);
        return Told(days, before, after);
    }

    /// <summary>Members moved by the readings, and run to the end.</summary>
    private List<Member> Moved(List<Member> before, double[][] prior, (int All, int Last) hours)
    {
        var counted = Counted(before);
        var errors = Enumerable
            .Range(0, counted.Length)
            .Select(j => NormalDraws.Deal(wish.Members, wish.Seed, ErrorRows + j))
            .ToArray();
        var now = before;
        for (var move = 0; move < Moves && now.Count > 1; move++)
        {
            var smoother = new EnsembleSmoother(
                [.. now.Select(m => prior[m.Place])],
                [.. sights.All.Select(s => s.Value)],
                counted,
                [.. now.Select(m => errors.Select(row => row[m.Place]).ToArray())]
            );
            var moved = smoother.Move(
                [.. now.Select(m => m.Standard)],
                [.. now.Select(m => sights.Predict(m.Run!, m.Inputs))]
            );
            now = Pass(moved, move == Moves - 1 ? hours.All : hours.Last, [.. now.Select(m => m.Place)]);
        }

        return now;
    }

    // Rows of draws of readings' errors begin behind those of the inputs.
    private const int ErrorRows = 1000;

    /// <summary>
    /// Standard errors; a reading that is far from all that was expected counts as if it were read as badly.
    /// </summary>
    private double[] Counted(List<Member> before)
    {
        var predicted = before.Select(m => sights.Predict(m.Run!, m.Inputs)).ToList();
        return
        [
            .. sights.All.Select(
                (sight, j) =>
                {
                    var mean = predicted.Average(p => p[j]);
                    var variance = predicted.Sum(p => (p[j] - mean) * (p[j] - mean)) / (predicted.Count - 1);
                    var off =
                        Math.Abs(sight.Value - mean) / Math.Sqrt(variance + (sight.Spread * sight.Spread));
                    var far = off / CorrectionPolicy.Far.Value;
                    return far > 1
                        ? Math.Sqrt((far * far * (variance + (sight.Spread * sight.Spread))) - variance)
                        : sight.Spread;
                }
            ),
        ];
    }

    /// <summary>
    /// The tare is centered so that the first weighing fits: only later ones tell.
    /// </summary>
    private void Anchor(List<Member> before)
    {
        var first = sights.All.FirstOrDefault(s => s.Kind == SightKind.Weight);
        if (first is null)
        {
            return;
        }

        tareCenter =
            first.Value
            - before.Average(m =>
            {
                var content = ReadingSights.Contents(m.Run!);
                return content[Math.Min(first.Hour, content.Length - 1)];
            });
        for (var i = 0; i < before.Count; i++)
        {
            before[i] = before[i] with { Inputs = InputsOf(before[i].Standard) };
        }
    }

    private MemberInputs InputsOf(double[] standard)
    {
        var change = ClimateChange.None;
        for (var i = 0; i < inputs.Length; i++)
        {
            change = inputs[i].Put(change, inputs[i].Value(standard[i]));
        }

        return new(
            change,
            Math.Max(0.5, 1 + (CorrectionPolicy.Jug.Value * standard[inputs.Length])),
            tareCenter + (CorrectionPolicy.Tare.Value * standard[inputs.Length + 1])
        );
    }

    private List<Member> Pass(double[][] standard, int hours, ImmutableArray<int> places = default)
    {
        var members = new Member?[standard.Length];
        Parallel.For(0, standard.Length, new ParallelOptions { CancellationToken = cancel }, m =>
        {
            var assumed = InputsOf(standard[m]);
            var run = tank.History(assumed.Change, assumed.Jug).Run(hours, null, cancel);
            members[m] = new(places.IsDefault ? m : places[m], standard[m], assumed, run);
            progress?.Invoke(Math.Min(1, Interlocked.Add(ref done, hours) / all));
        });
        return [.. members.OfType<Member>().Where(m => m.Run is { StoppedEarly: null })];
    }

    private TankCorrection Told(int days, List<Member> before, List<Member> after)
    {
        var (was, now) = (Side(before, days), Side(after, days));
        return new()
        {
            Wish = wish,
            First = tank.First,
            Days = days,
            Before = was,
            After = now,
            Sights = sights.All,
            Readings = tank.Readings.Length,
            Members = after.Count,
            Next = MeasurementAdvice.Best(
                tank,
                [.. after.Select(m => new AdviceMember(m.Run!, m.Inputs, NextDrain(m.Run!)))],
                days
            ),
            Learned = LearnedWords.From(was, now),
            Ignored = [.. sights.Ignored, .. Far(before)],
        };
    }

    private IEnumerable<string> Far(List<Member> before)
    {
        if (sights.All.IsEmpty)
        {
            yield break;
        }

        var counted = Counted(before);
        for (var j = 0; j < counted.Length; j++)
        {
            if (counted[j] > sights.All[j].Spread * 1.5)
            {
                yield return LearnedWords.Far(sights.All[j]);
            }
        }
    }

    private double NextDrain(TankRun run)
    {
        foreach (var happened in run.Events)
        {
            if (happened.Kind == "drain" && happened.Hour >= tank.LastHour)
            {
                return happened.Hour / 24;
            }
        }

        return double.PositiveInfinity;
    }

    private CorrectedSide Side(List<Member> members, int days)
    {
        var parameters = inputs.Select(
            (input, i) =>
            {
                double Scaled(double standard) => input.Scale * input.Value(standard);
                var mean = members.Average(m => m.Standard[i]);
                var spread = Math.Sqrt(
                    members.Sum(m => (m.Standard[i] - mean) * (m.Standard[i] - mean)) / (members.Count - 1)
                );
                return new ParameterBand(
                    input.Key,
                    input.Name,
                    input.Unit,
                    members.Average(m => Scaled(m.Standard[i])),
                    Scaled(mean - (Ninety * spread)),
                    Scaled(mean + (Ninety * spread))
                );
            }
        );
        return new([.. parameters], Drain(members), Level(members, days));
    }

    private const double Ninety = 1.6448536269514722;

    private DayBand? Drain(List<Member> members)
    {
        var sorted = members.Select(m => NextDrain(m.Run!)).Order().ToArray();
        var (low, middle, high) = (
            MemberBand.At(sorted, 0.05),
            MemberBand.At(sorted, 0.5),
            MemberBand.At(sorted, 0.95)
        );
        return double.IsFinite(middle) ? new DayBand(middle, low, double.IsFinite(high) ? high : null) : null;
    }

    private static LevelBand Level(List<Member> members, int days)
    {
        var count = (24 * days) + 1;
        var (mean, low, high) = (new double[count], new double[count], new double[count]);
        var sorted = new double[members.Count];
        for (var h = 0; h < count; h++)
        {
            for (var m = 0; m < sorted.Length; m++)
            {
                sorted[m] = 1000 * members[m].Run!.Hours[h].LevelMeters;
            }

            Array.Sort(sorted);
            mean[h] = sorted.Average();
            low[h] = MemberBand.At(sorted, 0.05);
            high[h] = MemberBand.At(sorted, 0.95);
        }

        return new([.. mean], [.. low], [.. high]);
    }
}
