using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>As many animals as a rule allows, where one kind lives in the box.</summary>
internal static class FewerAnimals
{
    /// <summary>The fix; null where it is the keeper's choice who goes, or none may stay.</summary>
    public static DesignFix? Fix(Finding finding, DesignDocument document)
    {
        if (finding.Limit is not { Si: >= 1 } limit)
        {
            return null;
        }

        var most = Math.Floor(limit.Si);
        var path =
            document.Design.Animals.Count == 1 ? "animals[0].count"
            : document.Design.Animals.Count == 0 && document.Design.RatedFor.Count == 1 ? "ratedFor[0].count"
            : null;
        return path is null
            ? null
            : DesignFix.From(
                string.Create(CultureInfo.InvariantCulture, $"{most:0} {(most == 1 ? "animal" : "animals")}"),
                DesignEdits.Set(document, path, most.ToString("0", CultureInfo.InvariantCulture))
            );
    }
}
