using System.Collections.Concurrent;
using System.Reflection;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>The papers without a process of their own, for many designs in little time.</summary>
internal static class InProcess
{
    private static readonly string Version = typeof(Shop)
        .Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!
        .InformationalVersion;

    public static PaperWish A4 => new(PaperSize.A4, null, Version, false);

    public static PaperWish Letter => new(PaperSize.Letter, null, Version, false);

    /// <summary>The day on which the tank in service was read: 21 March 2026.</summary>
    public static DateOnly Today { get; } = new(2026, 3, 21);

    private static readonly ConcurrentDictionary<string, Lazy<DesignResult>> Known = new(
        StringComparer.Ordinal
    );

    /// <summary>A sample of the checkout, computed once for all tests.</summary>
    public static DesignResult Sample(string sample) =>
        Known.GetOrAdd(sample, s => new(() => Compute(Path.Combine(Cli.Root, s)))).Value;

    /// <summary>Papers of a sample.</summary>
    public static IReadOnlyList<PaperFile> OfSample(string sample, PaperWish wish) =>
        Papers(Sample(sample), wish);

    /// <summary>Papers of a design file.</summary>
    public static IReadOnlyList<PaperFile> Papers(string design, PaperWish wish) =>
        Papers(Compute(design), wish);

    private static IReadOnlyList<PaperFile> Papers(DesignResult result, PaperWish wish) =>
        [
            .. PaperList.Write(
                new PaperJob(
                    result,
                    result.Numbers.Design.Design.Start is null
                        ? wish
                        : wish with
                        {
                            From = wish.From ?? Today,
                        },
                    SettingsCard.Of(result.Numbers)
                )
            ),
        ];

    private static DesignResult Compute(string design)
    {
        var reading = Shop.Design(design, null);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return DesignRun.Execute(reading.Value!);
    }
}
