using System.Globalization;
using Litterfall.Domain.Lists;
using Litterfall.Workshop.Pricing;

namespace Litterfall.Workshop.Quoting;

/// <summary>Which numbers move the margin, in words.</summary>
public static class MarginMoves
{
    private const int Most = 3;

    /// <summary>
    /// The three numbers that move the margin most at the charged price: what is left of it when each is a
    /// fifth higher. A cost that needs the price to rise by so much takes that much less the share of margin
    /// and fee out of a price that stays.
    /// </summary>
    /// <param name="sheet">The price.</param>
    public static Seq<string> Tell(CostSheet sheet)
    {
        if (sheet.MarginPercent is not { } margin || sheet.NetCharged <= 0)
        {
            return [];
        }

        var held = (sheet.Case.MarginPercent ?? margin) / 100m;
        var room = 1m - held - sheet.Case.FeeShare;
        return
        [
            .. sheet
                .Sensitivity()
                .Where(r => r is { High: not null, Low: not null } && Name(r.Input) is not null)
                .DistinctBy(r => Name(r.Input))
                .Take(Most)
                .Select(r =>
                {
                    var rise = (r.High!.Value - r.Low!.Value) / 2m * room;
                    var left = margin - 100m * rise / sheet.NetCharged;
                    return $"{Name(r.Input)} a fifth higher leaves a margin of {Percent(left)} % "
                        + $"instead of {Percent(margin)} %.";
                }),
        ];
    }

    /// <summary>Hours and wage move it alike, and are told as one.</summary>
    private static string? Name(string input) =>
        input switch
        {
            "hours" or "wage" => "Labor (hours or wage)",
            "materials" => "Materials",
            "waste" => "Waste",
            "overhead" => "Overhead",
            "live" => "Plants, animals and cultures",
            "packaging" => "Packaging",
            "shipping" => "Shipping",
            "lossChance" => "The chance of losses",
            "fee" => "The payment fee",
            _ => null,
        };

    private static string Percent(decimal value) =>
        Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString("0.0", CultureInfo.InvariantCulture);
}
