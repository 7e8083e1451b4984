using YamlDotNet.Core;

namespace Litterfall.Domain.DesignFile;

/// <summary>
/// A stretch of text: offsets in characters, and line and column of its start, counted from 1.
/// </summary>
public readonly record struct TextSpan(int Start, int End, int Line, int Column);

/// <summary>A node of the file as written, with its place.</summary>
internal abstract record FileNode(TextSpan Span);

internal sealed record FileScalar(TextSpan Span, string Text, ScalarStyle Style, bool InFlow) : FileNode(Span)
{
    public bool IsEmpty => Style == ScalarStyle.Plain && Text is "" or "~" or "null";

    public bool IsNone => Style == ScalarStyle.Plain && Text == "none";
}

internal sealed record FileMap(
    TextSpan Span,
    IReadOnlyList<(FileScalar Key, FileNode Value)> Members,
    bool InFlow
) : FileNode(Span);

internal sealed record FileList(TextSpan Span, IReadOnlyList<FileNode> Items) : FileNode(Span);
