using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Papers;

namespace Litterfall.Web.Library;

/// <summary>A drawing to look at, with the files that machines and programs take.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Scale">"1:1", or as the drawing is; empty where it has none.</param>
/// <param name="Svg">Name of the picture.</param>
/// <param name="Dxf">Name of the same for machines; null where there is none.</param>
public sealed record DrawnFile(string Title, string Scale, string Svg, string? Dxf)
{
    /// <summary>Drawings of a folder.</summary>
    /// <param name="files">All files.</param>
    /// <param name="folder">Such as "cut/".</param>
    public static ImmutableArray<DrawnFile> Of(IReadOnlyList<PaperFile> files, string folder)
    {
        var here = files.Where(f => f.Name.StartsWith(folder, StringComparison.Ordinal)).ToList();
        return
        [
            .. here.Where(f => f.Name.EndsWith(".svg", StringComparison.Ordinal))
                .Select(svg =>
                {
                    var stem = svg.Name[..^".svg".Length];
                    var dxf = here.Find(f => f.Name == stem + ".dxf" || f.Name == stem + "-mm.dxf");
                    return new DrawnFile(svg.Title, Told(svg.Scale), svg.Name, dxf?.Name);
                }),
        ];
    }

    private static string Told(double? scale) =>
        scale switch
        {
            null or <= 0 => "",
            1 => "1:1",
            < 1 => string.Create(CultureInfo.InvariantCulture, $"1:{1 / scale.Value:0.##}"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{scale.Value:0.##}:1"),
        };
}
