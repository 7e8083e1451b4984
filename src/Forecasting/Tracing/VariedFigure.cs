using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;

namespace Litterfall.Forecasting.Tracing;

/// <summary>
/// A given figure at the bottom of a derivation that can be set to another value: a coefficient, a value
/// that the
/// design writes, or a value of the library.
/// </summary>
/// <param name="Figure">The figure.</param>
/// <param name="Low">Least it may be, in its unit.</param>
/// <param name="High">Most it may be.</param>
/// <param name="Set">The design with the value, in its unit; null where that is no design.</param>
internal sealed record VariedFigure(Figure Figure, double Low, double High, Func<double, CheckedDesign?> Set)
{
    /// <summary>
    /// A temperature is asked for a kelvin less and more: where and with what it is measured.
    /// </summary>
    private const double Kelvins = 1;

    /// <summary>What has no range is asked for a tenth less and more.</summary>
    private const double Tenth = 0.1;

    /// <summary>Edges of a box are read off a tape, over corners of silicone: 5 mm, in meters.</summary>
    private const double Tape = 0.005;

    /// <summary>So many can be counted without a mistake.</summary>
    private const double Countable = 20;

    /// <summary>Key of a coefficient; else empty.</summary>
    public string Key { get; private init; } = "";

    /// <summary>Place in the design; else empty.</summary>
    public string Path { get; private init; } = "";

    /// <summary>
    /// All figures of a derivation that can be varied, each once, in the order they are met.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="of">The figure derived.</param>
    public static IReadOnlyList<VariedFigure> Below(CheckedDesign design, Figure of)
    {
        var coefficients = ModelCoefficients
            .Of(design)
            .All.GroupBy(c => c.Figure.Identity, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var values = new Dictionary<string, (CatalogEntry Entry, CatalogValue Value)>(StringComparer.Ordinal);
        foreach (var entry in design.Entries)
        {
            foreach (var value in entry.Values.Where(v => v is { Number: not null, Unit: not null }))
            {
                values[entry.FigureOf(value)!.Identity] = (entry, value);
            }
        }

        var found = new List<VariedFigure>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var leaf in Leaves(of, seen))
        {
            var one =
                coefficients.TryGetValue(leaf.Identity, out var c) ? Coefficient(design, c)
                : values.TryGetValue(leaf.Identity, out var v) ? Value(design, leaf, v.Entry, v.Value)
                : leaf.Origin.Source == "design" ? Typed(design, leaf)
                : null;
            if (one is not null)
            {
                found.Add(one);
            }
        }

        return found;
    }

    private static IEnumerable<Figure> Leaves(Figure of, HashSet<string> seen) =>
        !seen.Add(of.Identity) ? []
        : of.IsGiven ? [of]
        : of.Inputs.SelectMany(i => Leaves(i, seen));

    private static VariedFigure Coefficient(CheckedDesign design, Coefficient one)
    {
        var (low, high) = one.Range ?? Around(one.Number);
        return new VariedFigure(one.Figure, low, high, number =>
        {
            var changed = design.With(design.Coefficients.With(one.Key, number));
            return changed;
        })
        { Key = one.Key };
    }

    private static VariedFigure Value(
        CheckedDesign design,
        Figure figure,
        CatalogEntry entry,
        CatalogValue value
    )
    {
        var (low, high) = value is { Low: { } least, High: { } most }
            ? (least, most)
            : Around(value.Number!.Value, value.Unit!);
        return new VariedFigure(figure, low, high, number =>
            design.With(entry.With(value with { Number = number }))
        );
    }

    /// <summary>A value that the design writes, written anew, read and checked.</summary>
    private static VariedFigure? Typed(CheckedDesign design, Figure figure)
    {
        var path = figure.Origin.Place.Split(',')[0];
        var unit = figure.Unit!;
        var isCount = unit == Unit.One;
        if (
            !design.Document.Spans.ContainsKey(path)
            || figure.Value == 0
            || (isCount && figure.Value <= Countable)
        )
        {
            return null;
        }

        var (low, high) =
            isCount ? Counts(figure.Value)
            : IsEdge(path) ? (unit.FromSi(figure.Si - Tape), unit.FromSi(figure.Si + Tape))
            : Around(figure.Value, unit);
        return new VariedFigure(figure, low, high, number =>
        {
            var text = number.ToString(isCount ? "0" : "0.######", CultureInfo.InvariantCulture);
            var document = design.Document.WithValue(path, isCount ? text : $"{text} {unit.Symbol}");
            return document.IsGood
                ? DesignChecker
                    .Check(document.Value!, design.Catalog, design.Files)
                    .Value?.With(design.Coefficients)
                : null;
        })
        { Path = path };
    }

    private static bool IsEdge(string path) =>
        path.StartsWith("box.outside", StringComparison.Ordinal)
        || path.StartsWith("box.inside", StringComparison.Ordinal);

    private static (double Low, double High) Counts(double number) =>
        (Math.Max(1, Math.Floor(number * (1 - Tenth))), Math.Ceiling(number * (1 + Tenth)));

    private static (double Low, double High) Around(double number, Unit? unit = null)
    {
        var off = unit?.Offset > 0 ? Kelvins : Tenth * Math.Abs(number);
        var most = unit == Unit.Percent && number <= 100 ? Math.Min(100, number + off) : number + off;
        return (number - off, most);
    }
}
