using System.Collections.Immutable;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Physics.Coupling;

namespace Litterfall.Forecasting.Climate;

/// <summary>An input that nobody measures, and the range it is varied over.</summary>
/// <param name="Name">Name.</param>
/// <param name="Low">Least.</param>
/// <param name="High">Most.</param>
/// <param name="IsFactor">True for a factor, spread evenly in its logarithm.</param>
public sealed record VariedInput(string Name, double Low, double High, bool IsFactor);

/// <summary>
/// Runs of one box over what nobody measures: each input is cut into as many equal parts as there are
/// members, and each member takes one part of each, dealt out by a seed (Latin hypercube, McKay and others
/// 1979, recalled). The same seed gives the same members.
/// </summary>
public static class ClimateEnsemble
{
    /// <summary>The inputs, in the order they are dealt.</summary>
    public static readonly ImmutableArray<VariedInput> Inputs = Ranges();

    private static ImmutableArray<VariedInput> Ranges()
    {
        var cited = ModelCoefficients.Cited.ToDictionary(c => c.Key, StringComparer.Ordinal);
        VariedInput Factor(string name, string key) =>
            new(name, cited[key].Range!.Value.Low, cited[key].Range!.Value.High, true);
        var squeeze = cited["water.squeeze"].Range!.Value;
        return
        [
            Factor("air exchanged", "headspace.airFlow"),
            Factor("convection inside", "headspace.convection"),
            Factor("heat of the lamps", "headspace.lampHeat"),
            new("temperature of the room, K", -0.5, 0.5, false),
            new("vapor of the room", 0.9, 1.1, true),
            new("flow of the nozzles", 0.93, 1.07, true),
            Factor("conductivity of the soil", "water.conductivity"),
            Factor("alpha of the soil", "water.alpha"),
            new(
                "wetness of the fresh soil",
                Unit.Percent.ToSiValue(squeeze.Low),
                Unit.Percent.ToSiValue(squeeze.High),
                false
            ),
        ];
    }

    /// <summary>The changes of each member.</summary>
    /// <param name="members">How many.</param>
    /// <param name="seed">Seed.</param>
    public static ImmutableArray<ClimateChange> Members(int members, int seed)
    {
        var dealt = Inputs.Select((input, i) => Deal(input, members, Mixed((ulong)seed, (ulong)i))).ToArray();
        return
        [
            .. Enumerable
                .Range(0, members)
                .Select(m => new ClimateChange(
                    dealt[0][m],
                    dealt[1][m],
                    dealt[2][m],
                    dealt[3][m],
                    dealt[4][m],
                    dealt[5][m],
                    new CurveChange(dealt[6][m], dealt[7][m], dealt[8][m])
                )),
        ];
    }

    /// <summary>Runs all members, several at once.</summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="span">First day, and days.</param>
    /// <param name="changes">Members.</param>
    /// <param name="done">Told each finished member; may be called from any thread.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>Runs in the order of the members; those that stopped early are left out.</returns>
    public static ImmutableArray<SimulationResult> Run(
        BoxSetup setup,
        (DateOnly First, int Days) span,
        ImmutableArray<ClimateChange> changes,
        Action? done,
        CancellationToken cancel
    )
    {
        var results = new SimulationResult?[changes.Length];
        Parallel.For(0, changes.Length, new ParallelOptions { CancellationToken = cancel }, m =>
        {
            var run = BoxRun.From(setup, span.First, changes[m]);
            results[m] = run?.Through(span.Days, null, cancel);
            done?.Invoke();
        });
        return [.. results.OfType<SimulationResult>().Where(r => r.StoppedEarly is null)];
    }

    private static double[] Deal(VariedInput input, int members, ulong seed)
    {
        var state = seed;
        var order = Enumerable.Range(0, members).ToArray();
        for (var i = members - 1; i > 0; i--)
        {
            var j = (int)(Next(ref state) * (i + 1));
            (order[i], order[j]) = (order[j], order[i]);
        }

        return
        [
            .. order.Select(part =>
            {
                var share = (part + Next(ref state)) / members;
                return input.IsFactor
                    ? input.Low * Math.Pow(input.High / input.Low, share)
                    : input.Low + (share * (input.High - input.Low));
            }),
        ];
    }

    private static ulong Mixed(ulong seed, ulong place) =>
        (seed * 0x9E3779B97F4A7C15UL) + (place * 0xD1B54A32D192ED03UL);

    /// <summary>A number from 0 to 1 by the mixing function of Steele and others 2014 (recalled).</summary>
    private static double Next(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        z ^= z >> 31;
        return (z >> 11) * (1.0 / (1UL << 53));
    }
}
