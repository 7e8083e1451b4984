using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Pricing;

/// <summary>The price when one input is a fifth lower or higher.</summary>
/// <param name="Input">The input, in a word.</param>
/// <param name="Low">Price without tax with the input 20 % lower, currency units.</param>
/// <param name="High">The same 20 % higher; null when no price would do.</param>
/// <param name="Elasticity">Percent of price for each percent of the input, over that range.</param>
public sealed record SensitivityRow(string Input, decimal? Low, decimal? High, decimal? Elasticity);

/// <summary>One input at a time, a fifth down and up.</summary>
internal static class PriceSensitivity
{
    private const decimal Fifth = 0.2m;

    private static readonly (
        string Name,
        Func<CostCase, decimal> Read,
        Func<CostCase, decimal, CostCase?> Scale
    )[] Inputs =
    [
        (
            "hours",
            c => c.Hours,
            (c, f) => c with { Labor = [.. c.Labor.Select(l => l with { Hours = l.Hours * f })] }
        ),
        (
            "wage",
            c => c.Labor.Sum(l => l.Hours * l.WagePerHour),
            (c, f) => c with { Labor = [.. c.Labor.Select(l => l with { WagePerHour = l.WagePerHour * f })] }
        ),
        ("materials", c => c.Materials, (c, f) => c with { Materials = c.Materials * f }),
        ("waste", c => c.Materials * c.WastePercent, (c, f) => c with { WastePercent = c.WastePercent * f }),
        (
            "overhead",
            c => (c.OverheadPerHour * c.Hours) + c.OverheadPercent,
            (c, f) =>
                c with
                {
                    OverheadPerHour = c.OverheadPerHour * f,
                    OverheadPercent = c.OverheadPercent * f,
                }
        ),
        ("machine", c => c.Machine, (c, f) => c with { Machine = c.Machine * f }),
        ("live", c => c.Live, (c, f) => c with { Live = c.Live * f }),
        ("packaging", c => c.Packaging, (c, f) => c with { Packaging = c.Packaging * f }),
        ("shipping", c => c.Shipping, (c, f) => c with { Shipping = c.Shipping * f }),
        ("lossChance", c => LossReserve.Mean(c), Chance),
        (
            "fee",
            c => (c.Fee?.Percent ?? 0m) + c.FeeFixed,
            (c, f) => c with { Fee = c.Fee! with { Percent = c.Fee.Percent * f, Fixed = c.Fee.Fixed * f } }
        ),
    ];

    /// <summary>The rows of all inputs that are in play, widest range first, then by name.</summary>
    public static Seq<SensitivityRow> Rows(CostCase asked, decimal price, Func<CostCase, decimal?> priceOf)
    {
        decimal? Price(CostCase? varied) => varied is null ? null : priceOf(varied);
        return
        [
            .. Inputs
                .Where(i => i.Read(asked) > 0m)
                .Select(i =>
                {
                    var low = Price(i.Scale(asked, 1m - Fifth));
                    var high = Price(i.Scale(asked, 1m + Fifth));
                    return new SensitivityRow(i.Name, low, high, (high - low) / (2m * Fifth * price));
                })
                .OrderByDescending(r => r.High - r.Low ?? decimal.MaxValue)
                .ThenBy(r => r.Input, StringComparer.Ordinal),
        ];
    }

    private static CostCase? Chance(CostCase asked, decimal factor)
    {
        var chance = asked.Loss!.ChancePercent * factor;
        return chance < 100m || (chance == 100m && !asked.Loss.IsReplacedAgain)
            ? asked with
            {
                Loss = asked.Loss with { ChancePercent = chance },
            }
            : null;
    }
}
