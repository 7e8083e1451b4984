using Litterfall.Judging.Levers;
using System.Reflection;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Judging;
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

    /// <summary>Papers of a design file.</summary>
    public static IReadOnlyList<PaperFile> Papers(string design, PaperWish wish)
    {
        var reading = Shop.Design(design, null);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        var result = DesignRun.Execute(reading.Value!);
        return [.. PaperList.Write(new PaperJob(result, wish, SettingsCard.Of(result.Numbers)))];
    }
}
