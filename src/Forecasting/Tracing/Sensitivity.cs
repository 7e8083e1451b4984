using System.Collections.Immutable;
using Litterfall.Domain.Figures;

namespace Litterfall.Forecasting.Tracing;

/// <summary>How far a result moves as one of its inputs goes over its range.</summary>
/// <param name="Input">The input.</param>
/// <param name="Low">Least it may be, in its unit.</param>
/// <param name="High">Most.</param>
/// <param name="ResultLow">The result at its least, in the result's unit; null where it has none
/// there.</param>
/// <param name="ResultHigh">The same at its most.</param>
/// <param name="SharePercent">Its share of the spread of the result.</param>
public sealed record SensitivityRow(
    Figure Input,
    double Low,
    double High,
    double? ResultLow,
    double? ResultHigh,
    double SharePercent
);

/// <summary>
/// What a simulated number rests on by weight: each input below it is set to the least and to the most it
/// may be,
/// one at a time, and the models are run again. Inputs without a range are asked for a tenth less and more.
/// Spreads of independent inputs add by squares, so shares are those of the squares. The number of runs is
/// bounded: all inputs are tried once, to their most and over few days; those that move most are then run
/// in full.
/// </summary>
/// <param name="Rows">Inputs that were run in full, the heaviest first.</param>
/// <param name="RestPercent">Share of all others together, from the first round.</param>
/// <param name="Tried">How many inputs were tried.</param>
public sealed record Sensitivity(ImmutableArray<SensitivityRow> Rows, double RestPercent, int Tried)
{
    /// <summary>Identities of inputs that were tried and carry no weight.</summary>
    public ImmutableHashSet<string> Light { get; private init; } = [];

    /// <summary>Inputs run in full.</summary>
    public const int MostRows = 8;

    /// <summary>Inputs tried at all; further ones are left out, the last in the derivation first.</summary>
    public const int MostTried = 200;

    /// <summary>From this share on an input carries weight, percent.</summary>
    public const double Weighs = 1;

    /// <summary>The weakest provenance of what carries weight; that of all where nothing moves it.</summary>
    public Provenance Provenance =>
        Rows.Where(r => r.SharePercent >= Weighs)
            .Select(r => r.Input.Trust)
            .DefaultIfEmpty(Provenance.Recomputed)
            .Max();

    /// <summary>
    /// What a number rests on; null where it is not simulated, or nothing below it can be varied.
    /// </summary>
    /// <param name="numbers">The design, computed.</param>
    /// <param name="key">Key of the number in the report, e.g. "headspace.airCMax".</param>
    /// <param name="number">The number.</param>
    /// <param name="cancel">Cancels between runs.</param>
    public static Sensitivity? Of(
        DesignNumbers numbers,
        string key,
        ReportNumber number,
        CancellationToken cancel = default
    )
    {
        if (NumberRun.Of(numbers, key) is not { } run)
        {
            return null;
        }

        VariedFigure[] inputs =
        [
            .. VariedFigure.Below(numbers.Design, number.Figure).Where(run.Reaches).Take(MostTried),
        ];
        if (inputs.Length == 0 || run.Briefly(numbers.Design, "") is not { } middle)
        {
            return null;
        }

        var first = Each(
            inputs.Length,
            i => run.Briefly(inputs[i].Set(inputs[i].High), inputs[i].Key),
            cancel
        );
        double Moved(int i) => first[i] is { } at ? 2 * Math.Abs(at - middle) : 0;
        int[] order = [.. Enumerable.Range(0, inputs.Length).OrderByDescending(Moved).ThenBy(i => i)];
        int[] heavy = [.. order.Take(MostRows).Where(i => Moved(i) > 0)];
        var ends = Each(
            2 * heavy.Length,
            k =>
            {
                var one = inputs[heavy[k / 2]];
                return run.InFull(one.Set(k % 2 == 0 ? one.Low : one.High), one.Key);
            },
            cancel
        );
        return Shared(
                [.. heavy.Select((i, k) => (inputs[i], ends[2 * k], ends[(2 * k) + 1]))],
                order.Skip(heavy.Length).Sum(i => Moved(i) * Moved(i)),
                (number.Number, inputs.Length)
            )
            .WithLight(inputs);
    }

    private Sensitivity WithLight(VariedFigure[] inputs)
    {
        var heavy = Rows.Where(r => r.SharePercent >= Weighs)
            .Select(r => r.Input.Identity)
            .ToHashSet(StringComparer.Ordinal);
        return this with
        {
            Light = [.. inputs.Select(i => i.Figure.Identity).Where(i => !heavy.Contains(i))],
        };
    }

    private static Sensitivity Shared(
        (VariedFigure Input, double? Low, double? High)[] runs,
        double rest,
        (double Middle, int Tried) of
    )
    {
        double Spread((VariedFigure Input, double? Low, double? High) r) =>
            Math.Abs((r.High ?? of.Middle) - (r.Low ?? of.Middle));
        var all = runs.Sum(r => Spread(r) * Spread(r)) + rest;
        double Share(double square) => all > 0 ? 100 * square / all : 0;
        return new(
            [
                .. runs.Select(r => new SensitivityRow(
                        r.Input.Figure,
                        r.Input.Low,
                        r.Input.High,
                        r.Low,
                        r.High,
                        Share(Spread(r) * Spread(r))
                    ))
                    .OrderByDescending(r => r.SharePercent),
            ],
            Share(rest),
            of.Tried
        );
    }

    /// <summary>Runs that do not know of each other, on all cores; the same in any order.</summary>
    private static double?[] Each(int count, Func<int, double?> run, CancellationToken cancel)
    {
        var results = new double?[count];
        Parallel.For(0, count, new ParallelOptions { CancellationToken = cancel }, i => results[i] = run(i));
        return results;
    }
}
