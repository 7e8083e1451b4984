using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;

namespace Litterfall.UnitTests.House;

/// <summary>The design files of the checkout and the catalog they name.</summary>
internal static class SampleFiles
{
    private static readonly Lazy<TradeCatalog> Embedded = new(() => Shop.Catalog(null).Value!);

    public static TradeCatalog Catalog => Embedded.Value;

    /// <summary>Paths of the samples and of the handbook's example.</summary>
    public static IReadOnlyList<string> Paths { get; } =
    [.. SourceTree.Files(["samples", "tests"], ".viv.yaml").Select(SourceTree.Relative)];

    public static IReadOnlyList<string> Texts { get; } = [.. Paths.Select(SourceTree.Text)];

    public static DesignDocument Read(string path)
    {
        var reading = DesignReader.Read(path, SourceTree.Text(path));
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return reading.Value!;
    }
}
