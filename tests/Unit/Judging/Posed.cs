using System.Collections.Concurrent;
using System.Collections.Immutable;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Water;
using Litterfall.Judging;
using Litterfall.Judging.Rules;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Judging;

/// <summary>
/// Designs of a few lines, posed through the reader, the checker and the main path. The same words give the
/// same design, computed once for all tests that ask for it.
/// </summary>
internal static class Posed
{
    private static readonly ConcurrentDictionary<string, PosedDesign> Known = new(StringComparer.Ordinal);

    private static readonly ConcurrentDictionary<string, Lazy<PosedDesign>> KnownSamples = new(
        StringComparer.Ordinal
    );

    public static PosedDesign Run(string box, string floor, string more = "") =>
        Text($"litterfall: 1\nname: posed\nbox: {box}\nfloor: {floor}\n{more}\n");

    /// <summary>A whole design file.</summary>
    public static PosedDesign Text(string text) => Known.GetOrAdd(text, t => Text(t, SampleFiles.Catalog));

    /// <summary>The same with a catalog and files of one's own.</summary>
    public static PosedDesign Text(string text, TradeCatalog catalog, DesignFiles? files = null)
    {
        var document = DesignReader.Read("posed", text);
        Assert.True(document.IsGood, string.Join("; ", document.Faults));
        var design = files is null
            ? DesignChecker.Check(document.Value!, catalog)
            : DesignChecker.Check(document.Value!, catalog, files);
        Assert.True(design.IsGood, string.Join("; ", design.Faults));
        return new PosedDesign(design.Value!);
    }

    /// <summary>A sample of the checkout, e.g. "samples/ld-201-flat.viv.yaml".</summary>
    public static PosedDesign Sample(string path) =>
        KnownSamples
            .GetOrAdd(path, p => new(() =>
                {
                    var design = Shop.Design(SourceTree.Path(p), null);
                    Assert.True(design.IsGood, string.Join("; ", design.Faults));
                    return new PosedDesign(design.Value!);
                }))
            .Value;
}

/// <summary>
/// A design judged only as far as it is asked: a rule of shape and habit without any simulation, the others
/// with all that is computed.
/// </summary>
internal sealed class PosedDesign(CheckedDesign design)
{
    private readonly Lazy<DesignNumbers> numbers = new(() => new DesignNumbers(design));
    private readonly Lazy<DesignResult> whole = new(() => DesignRun.Execute(design));

    public CheckedDesign Design => design;

    /// <summary>Everything computed and judged.</summary>
    public DesignResult Whole => whole.Value;

    /// <summary>Its numbers; each stage is computed when it is asked for.</summary>
    public DesignNumbers Numbers => whole.IsValueCreated ? Whole.Numbers : numbers.Value;

    public ImmutableArray<Finding> Findings => Whole.Findings;

    public ReportObject Report => Whole.Report;

    public bool Stops => Whole.Stops;

    /// <summary>What one rule finds; only the stages it needs are computed.</summary>
    public ImmutableArray<Finding> FindingsOf(string slug) => RuleBook.Judge(Numbers, Rule(slug));

    /// <summary>What one rule finds where the water of the floor is another.</summary>
    public ImmutableArray<Finding> FindingsOf(string slug, Func<FloorWater, FloorWater> change) =>
        RuleBook.Judge(Numbers.With(change(Numbers.Water)), Rule(slug));

    private static Rule Rule(string slug)
    {
        var rule = RuleBook.Find(slug);
        Assert.NotNull(rule);
        return rule;
    }

    /// <summary>The first finding of one rule; null where it finds nothing.</summary>
    public Finding? Finding(string slug) => FindingsOf(slug).FirstOrDefault();

    /// <summary>A number of sizes, weights, glass or stocking, by its key in the report.</summary>
    public double Number(string key) => Assert.IsType<ReportNumber>(ReportPath.Find(ShapeReport, key)).Number;

    private ReportObject ShapeReport =>
        whole.IsValueCreated ? Report : CheckReport.Write(Numbers.Upto(Reach.Shape), []);
}
