using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Litterfall.Domain.Trees;

/// <summary>
/// Strict JSON with the place of every value: no comments, no trailing commas, no key twice, no number
/// beyond the range of a double, no half characters, no control characters in a text.
/// </summary>
public ref struct JsonTree
{
    private const int MostValues = 1_000_000;
    private static readonly byte[] Mark = [0xEF, 0xBB, 0xBF];
    private readonly ReadOnlySpan<byte> bytes;
    private readonly TreeFaults faults;
    private Utf8JsonReader reader;
    private int seen;
    private int offset;
    private int line = 1;
    private int column = 1;
    private int values;

    private JsonTree(ReadOnlySpan<byte> bytes, TreeFaults faults)
    {
        this.bytes = bytes;
        this.faults = faults;
        reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = 64 });
    }

    /// <summary>The tree of a text; null and a fault when it is not JSON.</summary>
    /// <param name="text">The text.</param>
    /// <param name="faults">Takes what is wrong with it.</param>
    public static TreeNode? Read(string text, TreeFaults faults)
    {
        // A lone half of a surrogate pair would come out as another sign, not as a fault.
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsSurrogate(text[i]) && i + 1 < text.Length && char.IsSurrogatePair(text, i))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                var before = text.AsSpan(0, i);
                var place = before.Length - before.LastIndexOf('\n');
                faults.Add(
                    new TextSpan(i, i, before.Count('\n') + 1, place),
                    "the text holds half a character",
                    "whole characters"
                );
                return null;
            }
        }

        return Read(Encoding.UTF8.GetBytes(text), faults);
    }

    /// <summary>The tree of the bytes of a text; null and a fault when it is not JSON.</summary>
    /// <param name="bytes">The text in UTF-8, with or without byte-order mark.</param>
    /// <param name="faults">Takes what is wrong with it.</param>
    public static TreeNode? Read(ReadOnlySpan<byte> bytes, TreeFaults faults)
    {
        if (bytes.StartsWith(Mark))
        {
            bytes = bytes[Mark.Length..];
        }

        var tree = new JsonTree(bytes, faults);
        if (tree.FirstNotText() is { } bad)
        {
            faults.Add(tree.PlaceOf(bad), "this is not UTF-8 text", "one JSON document in UTF-8");
            return null;
        }

        try
        {
            tree.reader.Read();
            var top = tree.Value();
            tree.reader.Read();
            return top;
        }
        catch (JsonException e)
        {
            tree.Broken(e);
            return null;
        }
        catch (InvalidDataException e)
        {
            faults.Add(tree.PlaceOf((int)tree.reader.TokenStartIndex), e.Message, "a smaller file");
            return null;
        }
    }

    private TreeNode Value()
    {
        if (++values > MostValues)
        {
            throw new InvalidDataException("there are more than a million values");
        }

        var start = PlaceOf((int)reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                return Map(start);
            case JsonTokenType.StartArray:
                var items = new List<TreeNode>();
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    items.Add(Value());
                }

                return new TreeList(ToHere(start), items);
            case JsonTokenType.Number:
                if (!reader.TryGetDouble(out double number) || !double.IsFinite(number))
                {
                    faults.Add(start, "the number is too large to compute with", "a finite number");
                }
                else if (double.IsSubnormal(number))
                {
                    faults.Add(start, "the number is too small to compute with", "0, or a number of use");
                }

                return Scalar(start, "", ScalarForm.Number, number);
            case JsonTokenType.String:
                return Scalar(start, Text(start), ScalarForm.Quoted);
            case JsonTokenType.True or JsonTokenType.False:
                var word = reader.TokenType == JsonTokenType.True ? "true" : "false";
                return Scalar(start, word, ScalarForm.Flag);
            default:
                return Scalar(start, "null", ScalarForm.Null);
        }
    }

    private TreeMap Map(TextSpan start)
    {
        var members = new List<(TreeScalar, TreeNode)>();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var at = PlaceOf((int)reader.TokenStartIndex);
            var key = Scalar(at, Text(at), ScalarForm.Quoted);
            reader.Read();
            var value = Value();
            if (keys.Add(key.Text))
            {
                members.Add((key, value));
            }
            else
            {
                faults.Add(at, $"the key '{TreeNode.Shown(key.Text)}' stands here twice", "every key once");
            }
        }

        return new TreeMap(ToHere(start), members) { InFlow = true };
    }

    private TreeScalar Scalar(TextSpan start, string text, ScalarForm form, double number = double.NaN) =>
        new(ToHere(start), text, form) { Number = number, InFlow = true };

    private TextSpan ToHere(TextSpan start) =>
        start with
        {
            End = PlaceOf((int)reader.BytesConsumed).Start,
        };

    /// <summary>A text; an escaped half of a surrogate pair is no text, nor is a control character.</summary>
    private readonly string Text(TextSpan at)
    {
        try
        {
            var text = reader.GetString()!;
            if (text.Any(c => char.IsControl(c) && c is not ('\t' or '\n' or '\r')))
            {
                faults.Add(at, "the text holds a control character", "letters, digits and signs");
            }

            return text;
        }
        catch (InvalidOperationException)
        {
            faults.Add(at, "the text holds half a character", "whole characters");
            return "";
        }
    }

    private void Broken(JsonException e)
    {
        int end = e.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        string said = (end < 0 ? e.Message : e.Message[..end]).TrimEnd('.', ' ');
        long row = e.LineNumber ?? 0;
        int start = 0;
        for (; row > 0; row--)
        {
            start += bytes[start..].IndexOf((byte)'\n') + 1;
        }

        int at = Math.Clamp(start + (int)(e.BytePositionInLine ?? 0), seen, bytes.Length);
        faults.Add(PlaceOf(at), $"this is not JSON: {said}", "one JSON document");
    }

    private readonly int? FirstNotText()
    {
        if (Utf8.IsValid(bytes))
        {
            return null;
        }

        int at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out int width) == System.Buffers.OperationStatus.Done)
        {
            at += width;
        }

        return at;
    }

    /// <summary>The place of a byte; asked for in rising order, so that the text is walked once.</summary>
    private TextSpan PlaceOf(int at)
    {
        for (; seen < at; seen++)
        {
            var sign = bytes[seen];
            if (sign == (byte)'\n')
            {
                line++;
                column = 1;
                offset++;
            }
            else if ((sign & 0xC0) != 0x80)
            {
                column++;
                offset += sign >= 0xF0 ? 2 : 1;
            }
        }

        return new TextSpan(offset, offset, line, column);
    }
}
