using System.CommandLine;
using Litterfall.Workshop.Pricing;

namespace Litterfall.App.Trade;

/// <summary>The commands of the workshop that pose one case: what to charge, buy, trace and mix.</summary>
internal static class TradeCommands
{
    public static IEnumerable<Command> All() => [Quote()];

    private static Command Quote() =>
        new CaseCommand<QuoteCase, CostSheet>
        {
            Read = QuoteForm.Read,
            Solve = (asked, _, _) => new(CostSheet.From(asked.Price), []),
            Json = QuoteText.Json,
            Text = QuoteText.Sheet,
        }.Create("quote", "Price of one piece at a wanted margin, or the margin a price leaves.");
}
