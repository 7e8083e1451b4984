using Litterfall.Domain.Faults;

namespace Litterfall.Domain.DesignFile;

/// <summary>Finds the line that has a key of ours and a value, but no colon between.</summary>
internal static class MissingColon
{
    private static readonly HashSet<string> Keys = AllKeys();

    /// <summary>The fault of the first such line up to a place, or null.</summary>
    /// <param name="file">Name used in messages.</param>
    /// <param name="text">The file.</param>
    /// <param name="lastLine">Line at which the reader gave up; the slip stands there or before.</param>
    public static TextFault? Find(string file, string text, int lastLine)
    {
        var lines = text.Split('\n');
        for (var i = Math.Min(lastLine, lines.Length) - 1; i >= Math.Max(0, lastLine - 3); i--)
        {
            var line = lines[i];
            var start = line.Length - line.TrimStart(' ', '-').Length;
            var end = line.IndexOf(' ', start);
            if (
                end > start
                && Keys.Contains(line[start..end])
                && line.IndexOf(':', start) is var colon
                && (colon < 0 || line.IndexOf('{', start) is >= 0 and var brace && brace < colon)
            )
            {
                return new TextFault(
                    file,
                    i + 1,
                    end + 1,
                    $"a colon is missing after '{line[start..end]}'",
                    $"{line[start..end]}: and its value"
                );
            }
        }

        return null;
    }

    private static HashSet<string> AllKeys()
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<Type>([typeof(Design)]);
        var seen = new HashSet<Type>();
        while (open.TryPop(out var type))
        {
            if (!seen.Add(type))
            {
                continue;
            }

            foreach (var member in FileShape.Of(type).Members)
            {
                keys.Add(member.Key);
                var of = member.IsList ? member.Type.GenericTypeArguments[0] : member.Type;
                if (FileTypes.IsRecord(of))
                {
                    open.Push(of);
                }
            }
        }

        return keys;
    }
}
