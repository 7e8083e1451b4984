using System.Collections.Concurrent;
using System.Text;
using Litterfall.Documents.Svg;
using Litterfall.Documents.Views;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Store;

namespace Litterfall.Web.Library;

/// <summary>Designs in small, for lists; drawn once for each text.</summary>
public sealed class SmallDrawings(BenchStore store, BenchLibrary library)
{
    private const int Most = 400;
    private static readonly (double, double) Room = (60, 48);
    private readonly ConcurrentDictionary<string, Lazy<string?>> kept = new(StringComparer.Ordinal);

    /// <summary>A design of the bench; null where it is not there or cannot be drawn.</summary>
    /// <param name="id">The design.</param>
    /// <param name="cancel">Cancels the reading.</param>
    public async Task<byte[]?> OfAsync(Guid id, CancellationToken cancel = default) =>
        await store.DesignAsync(id, cancel) is { } design && Svg(design.Name, design.Text) is { } svg
            ? Encoding.UTF8.GetBytes(svg)
            : null;

    /// <summary>A design by its text; null where it cannot be drawn.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="text">The design.</param>
    public string? Svg(string name, string text)
    {
        if (kept.Count > Most)
        {
            kept.Clear();
        }

        return kept.GetOrAdd($"{library.Mark} {Fingerprint.Of(text)}", _ =>
            new(() => Drawn(name, text))
        ).Value;
    }

    private string? Drawn(string name, string text) =>
        DesignReader.Read(name, text).Value is { } document
        && library.Check(document) is { Value: { } design, IsGood: true }
            ? SvgWriter.Write(new DesignViews(DesignNumbers.Shape(design), onScreen: true).Small(Room), name)
            : null;
}
