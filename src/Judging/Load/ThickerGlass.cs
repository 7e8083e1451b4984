using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Load;

/// <summary>The next sheets that glass is sold in.</summary>
internal static class ThickerGlass
{
    /// <summary>Nominal thicknesses of float glass, mm: common practice, no source.</summary>
    private static readonly double[] Sheets = [3, 4, 5, 6, 8, 10, 12, 15, 19];

    /// <summary>Thicker panes where the finding stands at a thickness, the thinnest first.</summary>
    public static IEnumerable<DesignFix?> Fixes(Finding finding, DesignDocument document)
    {
        if (Now(document, finding.Where) is not { } now)
        {
            yield break;
        }

        foreach (var sheet in Sheets.Where(s => s / 1000 > now + 1e-4))
        {
            var text = string.Create(CultureInfo.InvariantCulture, $"{sheet:0} mm");
            yield return DesignFix.From(
                $"glass of {text} for {Pane(finding.Where)}",
                DesignEdits.Set(document, finding.Where, text)
            );
        }
    }

    private static double? Now(DesignDocument document, string path) =>
        path switch
        {
            "box.glass.walls" => document.Design.Box.Glass?.Walls.Si,
            "lid.thickness" => document.Design.Lid?.Thickness?.Si,
            "box.doors.thickness" => document.Design.Box.Doors?.Thickness?.Si
                ?? document.Design.Box.Glass?.Walls.Si,
            _ => null,
        };

    private static string Pane(string path) =>
        path switch
        {
            "lid.thickness" => "the lid",
            "box.doors.thickness" => "the doors",
            _ => "the walls",
        };
}
