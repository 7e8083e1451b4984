using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Litterfall.Laboratory.Cases;

/// <summary>
/// Strict JSON with the place of every value: no comments, no trailing commas, no key twice, no number
/// beyond the range of a double.
/// </summary>
public ref struct CaseParser
{
    private const int MostValues = 1_000_000;
    private static readonly byte[] Mark = [0xEF, 0xBB, 0xBF];
    private readonly ReadOnlySpan<byte> bytes;
    private readonly CaseFaults faults;
    private Utf8JsonReader reader;
    private int seen;
    private int line = 1;
    private int column = 1;
    private int values;

    private CaseParser(ReadOnlySpan<byte> bytes, CaseFaults faults)
    {
        this.bytes = bytes;
        this.faults = faults;
        reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = 64 });
    }

    /// <summary>The tree of a file; null and a fault when it is not JSON.</summary>
    public static CaseNode? Parse(ReadOnlySpan<byte> bytes, CaseFaults faults)
    {
        if (bytes.StartsWith(Mark))
        {
            bytes = bytes[Mark.Length..];
        }

        var parser = new CaseParser(bytes, faults);
        if (parser.FirstNotText() is { } bad)
        {
            faults.Add(parser.PlaceOf(bad), "this is not UTF-8 text", "one JSON document in UTF-8");
            return null;
        }

        try
        {
            parser.reader.Read();
            var top = parser.Value(null, null, 0);
            parser.reader.Read();
            return top;
        }
        catch (JsonException e)
        {
            parser.Broken(e);
            return null;
        }
        catch (InvalidDataException e)
        {
            faults.Add(parser.PlaceOf((int)parser.reader.TokenStartIndex), e.Message, "a smaller case");
            return null;
        }
    }

    private CaseNode Value(CaseNode? parent, string? key, int index)
    {
        if (++values > MostValues)
        {
            throw new InvalidDataException("there are more than a million values");
        }

        var place = PlaceOf((int)reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                return Object(new CaseObject(place, parent, key, index));
            case JsonTokenType.StartArray:
                var list = new CaseList(place, parent, key, index);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Add(Value(list, null, list.Items.Count));
                }

                return list;
            case JsonTokenType.Number:
                if (!reader.TryGetDouble(out double number) || !double.IsFinite(number))
                {
                    faults.Add(place, "the number is too large to compute with", "a finite number");
                }

                return new CaseNumber(place, parent, key, index, number);
            case JsonTokenType.String:
                return new CaseText(place, parent, key, index, Text(place));
            case JsonTokenType.True or JsonTokenType.False:
                return new CaseFlag(place, parent, key, index, reader.TokenType == JsonTokenType.True);
            default:
                return new CaseNull(place, parent, key, index);
        }
    }

    private CaseObject Object(CaseObject branch)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var place = PlaceOf((int)reader.TokenStartIndex);
            string key = Text(place);
            reader.Read();
            if (!branch.TryAdd(new CaseMember(key, place, Value(branch, key, 0))))
            {
                faults.Add(place, $"the key '{key}' stands here twice", "every key once");
            }
        }

        return branch;
    }

    /// <summary>A text; an escaped half of a surrogate pair is no text.</summary>
    private readonly string Text(TextPlace place)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            faults.Add(place, "the text holds half a character", "whole characters");
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
    private TextPlace PlaceOf(int offset)
    {
        for (; seen < offset; seen++)
        {
            if (bytes[seen] == (byte)'\n')
            {
                line++;
                column = 1;
            }
            else if ((bytes[seen] & 0xC0) != 0x80)
            {
                column++;
            }
        }

        return new TextPlace(line, column);
    }
}
