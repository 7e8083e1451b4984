using System.Text;

namespace Litterfall.Running.Loggers.Cells;

/// <summary>How the letters of a file are written.</summary>
public enum LetterCode
{
    /// <summary>Nothing but the letters that all codes share.</summary>
    Plain,

    /// <summary>UTF-8.</summary>
    Utf8,

    /// <summary>UTF-8 with a byte-order mark.</summary>
    Utf8Marked,

    /// <summary>UTF-16.</summary>
    Utf16,

    /// <summary>An old code with one byte a letter.</summary>
    OldCode,
}

/// <summary>The text of a file and its lines.</summary>
public sealed class LoggerText
{
    private readonly string text;
    private readonly List<(int Start, int Length)> lines;

    private LoggerText(string text, LetterCode code)
    {
        this.text = text;
        Code = code;
        lines = Split(text);
    }

    /// <summary>How its letters are written.</summary>
    public LetterCode Code { get; }

    /// <summary>Lines.</summary>
    public int Count => lines.Count;

    /// <summary>A line, the first is 0.</summary>
    public ReadOnlySpan<char> this[int line] => text.AsSpan(lines[line].Start, lines[line].Length);

    /// <summary>Reads the bytes in the code they are written in.</summary>
    public static LoggerText Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
        {
            return new(Encoding.UTF8.GetString(bytes[3..]), LetterCode.Utf8Marked);
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]))
        {
            return new(Encoding.Unicode.GetString(bytes[2..]), LetterCode.Utf16);
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
        {
            return new(Encoding.BigEndianUnicode.GetString(bytes[2..]), LetterCode.Utf16);
        }

        if (WithoutMark(bytes) is { } wide)
        {
            return new(wide.GetString(bytes), LetterCode.Utf16);
        }

        if (Ascii.IsValid(bytes))
        {
            return new(Encoding.ASCII.GetString(bytes), LetterCode.Plain);
        }

        return System.Text.Unicode.Utf8.IsValid(bytes)
            ? new(Encoding.UTF8.GetString(bytes), LetterCode.Utf8)
            : new(Encoding.Latin1.GetString(bytes), LetterCode.OldCode);
    }

    /// <summary>UTF-16 without a mark shows by zeros at every second byte.</summary>
    private static UnicodeEncoding? WithoutMark(ReadOnlySpan<byte> bytes)
    {
        var sample = bytes[..Math.Min(bytes.Length, 512)];
        if (sample.Length < 8)
        {
            return null;
        }

        int even = 0,
            odd = 0;
        for (var i = 0; i + 1 < sample.Length; i += 2)
        {
            even += sample[i] == 0 ? 1 : 0;
            odd += sample[i + 1] == 0 ? 1 : 0;
        }

        var most = sample.Length / 2 * 3 / 4;
        return odd > most && even == 0 ? new UnicodeEncoding(false, false)
            : even > most && odd == 0 ? new UnicodeEncoding(true, false)
            : null;
    }

    private static List<(int Start, int Length)> Split(string text)
    {
        var found = new List<(int, int)>((text.Length / 40) + 1);
        var start = 0;
        while (start < text.Length)
        {
            var rest = text.AsSpan(start);
            var end = rest.IndexOfAny('\n', '\r');
            if (end < 0)
            {
                found.Add((start, rest.Length));
                break;
            }

            found.Add((start, end));
            start += end + (rest[end] == '\r' && end + 1 < rest.Length && rest[end + 1] == '\n' ? 2 : 1);
        }

        return found;
    }
}
