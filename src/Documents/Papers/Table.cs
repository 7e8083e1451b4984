using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;

namespace Litterfall.Documents.Papers;

/// <summary>A table as blocks: a heading, a head row and rows that stay together with it.</summary>
internal sealed class Table
{
    private readonly List<Block> blocks = [];
    private readonly List<TableRow> rows = [];
    private readonly ImmutableArray<TableColumn> columns;

    private Table(string title, ImmutableArray<TableColumn> columns, ImmutableArray<string> head)
    {
        this.columns = columns;
        if (title.Length > 0)
        {
            blocks.Add(new Heading(title) { KeepsWithNext = true });
        }

        if (head.Any(h => h.Length > 0))
        {
            blocks.Add(new TableRow(columns, head) { IsHead = true, KeepsWithNext = true });
        }
    }

    /// <summary>
    /// Columns as "share label", with a trailing ">" for numbers: <c>("Packs", [(0.7, "pack"), ...])</c>.
    /// </summary>
    public static Table Of(
        string title,
        params ReadOnlySpan<(double Share, string Label, bool Number)> columns
    )
    {
        var shapes = ImmutableArray.CreateBuilder<TableColumn>(columns.Length);
        var head = ImmutableArray.CreateBuilder<string>(columns.Length);
        foreach (var (share, label, number) in columns)
        {
            shapes.Add(new TableColumn(share, number ? Align.End : Align.Start));
            head.Add(label);
        }

        return new Table(title, shapes.MoveToImmutable(), head.MoveToImmutable());
    }

    /// <summary>A row that names those that follow.</summary>
    public void Group(params ReadOnlySpan<string> cells) =>
        rows.Add(
            new TableRow(columns, [.. cells])
            {
                IsGroup = true,
                KeepsWithNext = true,
                PrefersNext = true,
            }
        );

    /// <summary>One more row with a box to tick.</summary>
    public void Tick(string key, params ReadOnlySpan<string> cells) =>
        rows.Add(
            new TableRow(columns, [.. cells])
            {
                Key = key,
                HasTick = true,
                PrefersNext = true,
            }
        );

    /// <summary>One more row.</summary>
    public void Row(string key, params ReadOnlySpan<string> cells) =>
        rows.Add(new TableRow(columns, [.. cells]) { Key = key, PrefersNext = true });

    /// <summary>The blocks; none when the table has no row.</summary>
    public IReadOnlyList<Block> Blocks =>
        rows.Count > 0 ? [.. blocks, .. rows.SkipLast(1), rows[^1].Last()] : [];
}
