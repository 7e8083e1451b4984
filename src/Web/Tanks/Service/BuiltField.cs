using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Tanks.Service;

/// <summary>Something of a design that is often built otherwise.</summary>
/// <param name="what">In words.</param>
/// <param name="path">Where it stands in the design.</param>
/// <param name="drawn">As it is drawn; empty for nothing.</param>
public sealed class BuiltField(string what, string path, string drawn)
{
    private static readonly (string What, string Path)[] All =
    [
        ("Drainage depth", "floor.drainage.depth"),
        ("Soil depth", "floor.soil.depth"),
        ("Soil at the front", "floor.soil.front"),
        ("Soil at the back", "floor.soil.back"),
        ("Moss depth", "floor.moss.depth"),
        ("Litter depth", "floor.litter.depth"),
        ("Nozzles", "misting.nozzles"),
        ("Flow per nozzle", "misting.each"),
        ("First misting lasts", "misting.times[0].for"),
        ("Lamp above the lid", "lamps[0].above"),
    ];

    /// <summary>In words.</summary>
    public string What { get; } = what;

    /// <summary>As it is drawn.</summary>
    public string Drawn { get; } = drawn;

    /// <summary>As it was built; empty as drawn.</summary>
    public string Built { get; set; } = "";

    private string Path { get; } = path;

    /// <summary>Fields that a design has.</summary>
    /// <param name="document">The design; null for none.</param>
    public static List<BuiltField> Find(DesignDocument? document) =>
        document is null
            ? []
            :
            [
                .. All.Select(f => new BuiltField(
                        f.What,
                        f.Path,
                        DesignKeys.ValueAt(document.Design, f.Path) ?? ""
                    ))
                    .Where(f => f.Drawn.Length > 0),
            ];

    /// <summary>The design as it was built, or what is wrong, in one sentence.</summary>
    /// <param name="document">As drawn.</param>
    /// <param name="changed">What differs.</param>
    public static (string? Text, string? Fault) Apply(DesignDocument document, IEnumerable<BuiltField> changed)
    {
        foreach (var field in changed)
        {
            var reading = DesignEdits.Set(document, field.Path, field.Built.Trim().Replace(',', '.'));
            if (reading.Value is not { } next || !reading.IsGood)
            {
                return (null, $"{field.What}: \"{field.Built.Trim()}\" does not read; expected a value such as {field.Drawn}.");
            }

            document = next;
        }

        return (document.Text, null);
    }
}
