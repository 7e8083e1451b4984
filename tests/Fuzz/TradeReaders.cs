using System.Collections.Immutable;
using Litterfall.App.Trade;
using Litterfall.Domain.Trees;
using Litterfall.Laboratory.Cases;
using Litterfall.Workshop.Pricing;

namespace Litterfall.FuzzTests;

/// <summary>The cases of the workshop's commands; what is read is computed, but for purchases.</summary>
internal static class TradeReaders
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Reader> All { get; } =
    [
        new("quote-cases", Seeds("quote"), input => Read(input, QuoteForm.Read, Priced)),
        new("trace-cases", Seeds("trace"), input => Read(input, TraceForm.Read, _ => null)),
        new("mix-cases", Seeds("mix"), input => Read(input, MixForm.Read, FiniteNumbers.Broken)),
        new("buy-cases", Seeds("buy"), input => Read(input, BuyForm.Read, _ => null)),
        new("schedule-cases", Seeds("schedule"), input => Read(input, ScheduleForm.Read, _ => null)),
    ];

    private static ImmutableArray<byte[]> Seeds(string name) =>
        Readers.Files("samples/workshop", $"{name}.json");

    private static string? Read<T>(byte[] input, Func<TreeForm, T?> read, Func<T, string?> trouble)
        where T : class
    {
        var reading = CaseFile.Read("case.json", input, read);
        return reading.IsGood ? trouble(reading.Value!) : Readers.Told(reading.Faults);
    }

    private static string? Priced(QuoteCase asked)
    {
        try
        {
            var sheet = CostSheet.From(asked.Price);
            _ = sheet.Sensitivity();
            return sheet.Breakdown().Sum(p => p.Amount) == sheet.Charged.Net
                ? null
                : "what the price pays for does not add up to it";
        }
        catch (OverflowException)
        {
            // The command says that the amounts grow beyond what is computed with.
            return null;
        }
    }
}
