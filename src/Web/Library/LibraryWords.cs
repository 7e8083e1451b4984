using System.Globalization;
using System.Text;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;

namespace Litterfall.Web.Library;

/// <summary>Words of the library's pages.</summary>
public static class LibraryWords
{
    /// <summary>Kinds as heads of a list.</summary>
    public static string Kind(EntryKind kind) =>
        kind switch
        {
            EntryKind.Adhesive => "Silicone, glue and foam",
            EntryKind.Aggregate => "Drainage grains",
            EntryKind.Animal => "Animals",
            EntryKind.Background => "Backgrounds",
            EntryKind.Crew => "Springtails, isopods and other crew",
            EntryKind.Equipment => "Equipment",
            EntryKind.Feeder => "Feeder insects",
            EntryKind.Grid => "Grids of raised floors",
            EntryKind.Hardscape => "Wood and stone",
            EntryKind.Lamp => "Lamps",
            EntryKind.Litter => "Leaf litter",
            EntryKind.Mesh => "Meshes",
            EntryKind.Moss => "Mosses",
            EntryKind.Pack => "Packs",
            EntryKind.Plant => "Plants",
            EntryKind.Recipe => "Soil mixes",
            EntryKind.Sheet => "Glass and sheets",
            EntryKind.Soil => "Parts of soil mixes",
            _ => CultureInfo.InvariantCulture.TextInfo.ToTitleCase(kind.Word()),
        };

    /// <summary>How far a value can be trusted.</summary>
    public static string Trust(Provenance provenance) =>
        provenance switch
        {
            Provenance.Recalled => "from memory, source not checked",
            Provenance.CommonPractice => "common practice, no source",
            Provenance.OwnChoice => "own choice",
            _ => provenance.ToString().ToLowerInvariant(),
        };

    /// <summary>"envelopeDensity" as "Envelope density".</summary>
    public static string Plain(string name)
    {
        var words = new StringBuilder();
        for (var i = 0; i < name.Length; i++)
        {
            var begins =
                i > 0
                && (
                    (char.IsUpper(name[i]) && !char.IsUpper(name[i - 1]) && !char.IsDigit(name[i - 1]))
                    || (char.IsDigit(name[i]) && char.IsLower(name[i - 1]))
                );
            words
                .Append(begins ? " " : "")
                .Append(
                    i == 0 ? char.ToUpperInvariant(name[i])
                    : begins && i + 1 < name.Length && char.IsLower(name[i + 1])
                        ? char.ToLowerInvariant(name[i])
                    : name[i]
                );
        }

        return words.ToString();
    }
}
