using System.Text;

namespace Litterfall.App.Cases;

/// <summary>Finds line and column of a byte in a UTF-8 text; asked in rising order it walks only once.</summary>
internal sealed class TextPlaces(byte[] bytes)
{
    private int line = 1;
    private int lineStart;
    private int walked;

    /// <summary>Line and column of a byte, both from 1; the column counts characters.</summary>
    public (int Line, int Column) Of(long offset)
    {
        int end = (int)Math.Min(offset, bytes.Length);
        if (end < walked)
        {
            (line, lineStart, walked) = (1, 0, 0);
        }

        for (; walked < end; walked++)
        {
            if (bytes[walked] == (byte)'\n')
            {
                line++;
                lineStart = walked + 1;
            }
        }

        return (line, Encoding.UTF8.GetCharCount(bytes, lineStart, end - lineStart) + 1);
    }
}
