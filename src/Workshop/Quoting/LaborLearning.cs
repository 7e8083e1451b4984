using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Quoting;

/// <summary>What one finished order says of one stage.</summary>
/// <param name="Stage">Key of the stage.</param>
/// <param name="Minutes">Minutes that were worked for one of what the stage counts, above 0.</param>
public readonly record struct StageSample(string Stage, double Minutes);

/// <summary>What finished orders say of a stage of the table; a person takes it or leaves it.</summary>
/// <param name="Stage">The stage as it stands.</param>
/// <param name="Minutes">Minutes it should have.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="High">Upper end of the band.</param>
/// <param name="Orders">Finished orders it rests on.</param>
public sealed record LaborProposal(LaborStage Stage, double Minutes, double Low, double High, int Orders)
{
    /// <summary>The stage with the proposed minutes, to a tenth.</summary>
    public LaborStage Taken => Stage with { Minutes = Math.Round(Minutes, 1, MidpointRounding.AwayFromZero) };
}

/// <summary>
/// The labor table learns: for each finished order the ratio of worked minutes to those of the table,
/// blended with the
/// table as it stands, which counts for as many orders as <see cref="Prior"/>. Ratios are blended as
/// logarithms, so that twice and half weigh alike. Own choices: a table counts for three orders, and single
/// orders are taken to scatter by 30 % until they show how much they do.
/// </summary>
public static class LaborLearning
{
    /// <summary>Orders that the table as it stands counts for.</summary>
    public const int Prior = 3;

    /// <summary>Scatter of the logarithm of a ratio before any is seen.</summary>
    public const double Scatter = 0.3;

    /// <summary>Quantile of 90 % of a normal distribution.</summary>
    private const double Ninety = 1.645;

    /// <summary>Samples of finished orders whose hours were written.</summary>
    /// <param name="orders">Orders with their accepted quote, which holds the table of its day.</param>
    public static IEnumerable<StageSample> Samples(IEnumerable<(Order Order, Quote Quote)> orders) =>
        orders
            .Where(o => o.Order.State is OrderState.Delivered or OrderState.Closed)
            .SelectMany(o =>
            {
                var worked = o.Order.Worked.ToLookup(w => w.Stage, w => w.Minutes, StringComparer.Ordinal);
                var then = o.Quote.Shop.Labor.ToDictionary(
                    s => s.Key,
                    s => s.Minutes,
                    StringComparer.Ordinal
                );
                return o
                    .Quote.Options[o.Order.AcceptedOption]
                    .Minutes.Where(m => m.Minutes > 0 && then.ContainsKey(m.Stage))
                    .Select(m => new StageSample(m.Stage, worked[m.Stage].Sum() / m.Minutes * then[m.Stage]))
                    .Where(s => s.Minutes > 0);
            });

    /// <summary>Proposals for stages that finished orders say something of, most orders first.</summary>
    /// <param name="table">The table as it stands.</param>
    /// <param name="samples">Finished orders.</param>
    public static Seq<LaborProposal> Propose(IEnumerable<LaborStage> table, IEnumerable<StageSample> samples)
    {
        var seen = samples.ToLookup(s => s.Stage, s => s.Minutes, StringComparer.Ordinal);
        return
        [
            .. table
                .Where(s => seen.Contains(s.Key) && s.Minutes > 0)
                .Select(s => One(s, [.. seen[s.Key].Select(m => Math.Log(m / s.Minutes))]))
                .OrderByDescending(p => p.Orders)
                .ThenBy(p => p.Stage.Name, StringComparer.Ordinal),
        ];
    }

    private static LaborProposal One(LaborStage stage, double[] logs)
    {
        var n = logs.Length;
        var mean = logs.Sum() / (n + Prior);
        var spread =
            (Prior * (Scatter * Scatter + mean * mean) + logs.Sum(l => (l - mean) * (l - mean)))
            / (n + Prior);
        var error = Ninety * Math.Sqrt(spread / (n + Prior));
        return new(
            stage,
            stage.Minutes * Math.Exp(mean),
            stage.Minutes * Math.Exp(mean - error),
            stage.Minutes * Math.Exp(mean + error),
            n
        );
    }
}
