using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Xunit;

namespace Litterfall.UnitTests.Judging;

/// <summary>Designs of a few lines, posed through the reader, the checker and the main path.</summary>
internal static class Posed
{
    private static readonly Lazy<Litterfall.Domain.Catalog.TradeCatalog> Catalog = new(() =>
        Shop.Catalog(null).Value!
    );

    public static DesignResult Run(string box, string floor, string more = "")
    {
        var text = $"litterfall: 1\nname: posed\nbox: {box}\nfloor: {floor}\n{more}\n";
        var document = DesignReader.Read("posed", text);
        Assert.True(document.IsGood, string.Join("; ", document.Faults));
        var design = DesignChecker.Check(document.Value!, Catalog.Value);
        Assert.True(design.IsGood, string.Join("; ", design.Faults));
        return DesignRun.Execute(design.Value!);
    }

    public static double Number(this DesignResult result, string key) =>
        Assert.IsType<ReportNumber>(ReportPath.Find(result.Report, key)).Number;

    public static Finding? Finding(this DesignResult result, string slug) =>
        result.Findings.FirstOrDefault(f => f.Slug == slug);
}
