using System.Globalization;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;

namespace Litterfall.App.Commands;

/// <summary>
/// <c>litterfall library coefficient [KEY]</c>: numbers of the models that no design gives.
/// </summary>
internal static class CoefficientsText
{
    /// <summary>The word for them.</summary>
    public const string Kind = "coefficient";

    /// <summary>All of them, or those whose key begins so, e.g. "light" or "air.discharge".</summary>
    /// <param name="key">What keys begin with; null for all.</param>
    public static IReadOnlyList<Coefficient> Find(string? key) =>
        [
            .. ModelCoefficients.Cited.Where(c =>
                key is null || c.Key.StartsWith(key, StringComparison.OrdinalIgnoreCase)
            ),
        ];

    /// <summary>As a table.</summary>
    /// <param name="coefficients">Which.</param>
    public static string Table(IEnumerable<Coefficient> coefficients)
    {
        var table = new TextTable(
            "key",
            "what",
            "value",
            "from",
            "to",
            "unit",
            "provenance",
            "source",
            "place"
        );
        foreach (var one in coefficients)
        {
            table.Add(
                one.Key,
                one.Figure.Name!,
                Number(one.Number),
                one.Range is { } low ? Number(low.Low) : "",
                one.Range is { } high ? Number(high.High) : "",
                one.Unit.Symbol,
                one.Figure.Origin.Provenance.Word(),
                one.Figure.Origin.Source,
                one.Figure.Origin.Place
            );
        }

        return table.ToString();
    }

    /// <summary>As JSON.</summary>
    /// <param name="catalog">Titles of sources.</param>
    /// <param name="coefficients">Which.</param>
    public static string Json(TradeCatalog catalog, IEnumerable<Coefficient> coefficients) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("coefficients");
            foreach (var one in coefficients)
            {
                var origin = one.Figure.Origin;
                json.WriteStartObject();
                json.WriteString("key", one.Key);
                json.WriteString("name", one.Figure.Name);
                json.WriteNumber("value", one.Number);
                json.WriteString("unit", one.Unit.Symbol);
                if (one.Range is { } range)
                {
                    json.WriteNumber("low", range.Low);
                    json.WriteNumber("high", range.High);
                }

                json.WriteString("source", origin.Source);
                json.WriteString("sourceTitle", catalog.Sources.GetValueOrDefault(origin.Source)?.Title);
                json.WriteString("place", origin.Place);
                json.WriteString("provenance", origin.Provenance.Word());
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });

    private static string Number(double number) => number.ToString("G5", CultureInfo.InvariantCulture);
}
