using System.Text.Json;
using System.Text.Unicode;

namespace Litterfall.App.Cases;

/// <summary>
/// Reads JSON strictly (no comments, no trailing commas, no key twice, no number out of range) into a tree
/// that knows the place of everything.
/// </summary>
public static class CaseParser
{
    /// <summary>Largest case file in bytes.</summary>
    public const int LargestFile = 4 * 1024 * 1024;

    private static readonly JsonReaderOptions Strict = new()
    {
        CommentHandling = JsonCommentHandling.Disallow,
        AllowTrailingCommas = false,
        MaxDepth = 64,
    };

    /// <summary>Reads the bytes of a file: UTF-8, with or without byte-order mark.</summary>
    /// <returns>The whole case, or null when <paramref name="faults"/> got a fault.</returns>
    public static CaseValue? Read(byte[] bytes, CaseFaults faults)
    {
        if (bytes.Length > LargestFile)
        {
            faults.Add(1, 1, "the file is too large", "a case of at most 4 MB");
            return null;
        }

        var text = bytes.AsSpan().StartsWith<byte>([0xEF, 0xBB, 0xBF]) ? bytes[3..] : bytes;
        if (!Utf8.IsValid(text))
        {
            faults.Add(1, 1, "the file is not UTF-8", "a JSON file saved in UTF-8");
            return null;
        }

        if (text.AsSpan().IndexOfAnyExcept(" \t\r\n"u8) < 0)
        {
            faults.Add(1, 1, "the file is empty", "a case in JSON");
            return null;
        }

        var node = new Parse(text, faults).Whole();
        return node is not null && faults.IsEmpty ? new CaseValue(node, "", faults) : null;
    }

    private sealed class Parse(byte[] text, CaseFaults faults)
    {
        private readonly TextPlaces places = new(text);

        public CaseNode? Whole()
        {
            try
            {
                var reader = new Utf8JsonReader(text, Strict);
                reader.Read();
                var node = Value(ref reader);
                reader.Read();
                return node;
            }
            catch (JsonException e)
            {
                int line = (int)(e.LineNumber ?? 0) + 1;
                faults.Add(line, Column(line, (int)(e.BytePositionInLine ?? 0)), Sentence(e), "valid JSON");
                return null;
            }
        }

        private CaseNode Value(ref Utf8JsonReader reader)
        {
            var (line, column) = places.Of(reader.TokenStartIndex);
            return reader.TokenType switch
            {
                JsonTokenType.StartObject => Members(ref reader, new CaseMembers(line, column)),
                JsonTokenType.StartArray => Items(ref reader, new CaseItems(line, column)),
                JsonTokenType.String => new CaseText(line, column, Text(ref reader)),
                JsonTokenType.Number => Number(ref reader, line, column),
                JsonTokenType.True or JsonTokenType.False => new CaseTruth(
                    line,
                    column,
                    reader.GetBoolean()
                ),
                _ => new CaseNull(line, column),
            };
        }

        private CaseMembers Members(ref Utf8JsonReader reader, CaseMembers members)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
            {
                var (line, column) = places.Of(reader.TokenStartIndex);
                string key = Text(ref reader);
                reader.Read();
                if (!members.TryAdd(new CaseMember(key, line, column, Value(ref reader))))
                {
                    faults.Add(
                        line,
                        column,
                        $"the key '{CaseText.Shown(key)}' is there twice",
                        "each key once"
                    );
                }
            }

            return members;
        }

        private CaseItems Items(ref Utf8JsonReader reader, CaseItems items)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            {
                items.Add(Value(ref reader));
            }

            return items;
        }

        private CaseNumber Number(ref Utf8JsonReader reader, int line, int column)
        {
            if (!reader.TryGetDouble(out double value) || !double.IsFinite(value))
            {
                faults.Add(line, column, "the number is too large", "a number below 1e308");
                value = 0.0;
            }

            return new CaseNumber(line, column, value);
        }

        private string Text(ref Utf8JsonReader reader)
        {
            try
            {
                return reader.GetString()!;
            }
            catch (InvalidOperationException)
            {
                var (line, column) = places.Of(reader.TokenStartIndex);
                faults.Add(line, column, "the text holds half a character (a lone surrogate)", "whole text");
                return "";
            }
        }

        private int Column(int line, int byteInLine)
        {
            int start = 0;
            for (int i = 1; i < line && start < text.Length; i++)
            {
                start += text.AsSpan(start).IndexOf((byte)'\n') + 1;
            }

            return places.Of(start + byteInLine).Column;
        }

        /// <summary>The reader's own sentence without its places and hints for programmers.</summary>
        private static string Sentence(JsonException e)
        {
            string text = e.Message.Split(" LineNumber:", 2)[0].Split(" Change the reader", 2)[0];
            return $"this is not JSON: {text.TrimEnd('.', ' ')}";
        }
    }
}
