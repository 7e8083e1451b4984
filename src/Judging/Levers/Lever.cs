using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Units;

namespace Litterfall.Judging.Levers;

/// <summary>A setting a keeper can turn: misting seconds, open vents, lamp hours.</summary>
internal abstract class Lever
{
    /// <summary>What it is called.</summary>
    public abstract string Name { get; }

    /// <summary>Name of its value, such as "misting a day".</summary>
    public abstract string ValueName { get; }

    /// <summary>Unit of its value.</summary>
    public abstract Unit Unit { get; }

    /// <summary>Least and most that it may be turned, as factors; 1 for not at all.</summary>
    public abstract (double Least, double Most) Ends { get; }

    /// <summary>Its value in a design, in SI; null where the design does not write it.</summary>
    public abstract double? Value(Design design);

    /// <summary>The changes that turn it by a factor: path and new text.</summary>
    public abstract IEnumerable<(string Path, string Text)> Turn(Design design, double factor);

    /// <summary>The design with the lever turned; null where it cannot be.</summary>
    public CheckedDesign? Turned(CheckedDesign design, double factor)
    {
        var document = design.Document;
        foreach (var (path, text) in Turn(design.Design, factor).ToList())
        {
            if (document.WithValue(path, text).Value is not { } changed)
            {
                return null;
            }

            document = changed;
        }

        return ReferenceEquals(document, design.Document)
            ? null
            : DesignChecker.Check(document, design.Catalog, design.Files).Value;
    }

    /// <summary>A number as a design writes it.</summary>
    protected static string Text(double value, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}");
}
