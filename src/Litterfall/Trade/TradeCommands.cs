using System.CommandLine;
using Litterfall.App.Files;
using Litterfall.Workshop.Mixing;
using Litterfall.Workshop.Pricing;

namespace Litterfall.App.Trade;

/// <summary>The commands of the workshop that pose one case, and the one that keeps its folder.</summary>
internal static class TradeCommands
{
    public static IEnumerable<Command> All() =>
        [
            Quote(),
            BuyCommand.Create(),
            CutCommand.Create(),
            ScheduleCommand.Create(),
            Trace(),
            Mix(),
            Cultures(),
            ShopCommand.Create(),
        ];

    private static Command Quote() =>
        new CaseCommand<QuoteCase, CostSheet>
        {
            Read = QuoteForm.Read,
            Solve = (asked, _) => CostSheet.From(asked.Price),
            Json = QuoteText.Json,
            Text = QuoteText.Sheet,
        }.Create("quote", "Price of one piece at a wanted margin, or the margin a price leaves.");

    private static Command Trace() =>
        new CaseCommand<TraceCase, List<TraceAnswer>>
        {
            Read = TraceForm.Read,
            Solve = TraceText.Answer,
            Json = (_, answers, milliseconds) => TraceText.Json(answers, milliseconds),
            Text = (_, answers) => TraceText.Lines(answers),
            LargestFile = TraceForm.LargestFile,
        }.Create("trace", "Which lot went into what, what went into it, and what is left of it.");

    private static Command Mix() =>
        new CaseCommand<MixPlan, MixPlan>
        {
            Read = MixForm.Read,
            Solve = (plan, _) => plan,
            Json = (_, plan, milliseconds) => MixText.Json(plan, milliseconds),
            Text = (_, plan) => MixText.Card(plan),
        }.Create("mix", "Batches of a soil mix: liters by component, tubs, water.");

    private static Command Cultures() =>
        new CaseCommand<CulturesCase, CulturesOutcome>
        {
            Read = form => new CulturesForm(Shop.Embedded).Read(form),
            Solve = CulturesText.Solve,
            Json = CulturesText.Json,
            Text = CulturesText.Lines,
        }.Create(
            "cultures",
            "When to split mother cultures so that cups are ready on their days, or why not."
        );
}
