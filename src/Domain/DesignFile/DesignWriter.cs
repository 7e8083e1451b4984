using System.Collections;
using System.Text;

namespace Litterfall.Domain.DesignFile;

/// <summary>
/// Writes a design that has no file yet; reading the text gives an equal design, units as typed.
/// </summary>
public static class DesignWriter
{
    /// <summary>The text of a design, keys in the order of the types, defaults left out.</summary>
    public static string Write(Design design)
    {
        var text = new StringBuilder();
        WriteMembers(text, design, 0);
        return text.ToString();
    }

    private static void WriteMembers(StringBuilder text, object owner, int indent)
    {
        var shape = FileShape.Of(owner.GetType());
        var blank = Activator.CreateInstance(shape.Type)!;
        foreach (var member in shape.Members)
        {
            var value = member.Get(owner);
            if (value is null || (!member.IsRequired && Equals(value, member.Get(blank))))
            {
                continue;
            }

            text.Append(' ', indent).Append(member.Key).Append(':');
            WriteValue(text, value, indent);
        }
    }

    private static void WriteValue(StringBuilder text, object value, int indent)
    {
        if (value is IEnumerable items and not string)
        {
            WriteItems(text, items, indent);
        }
        else if (FileTypes.IsRecord(value.GetType()))
        {
            var start = text.Length;
            text.Append('\n');
            WriteMembers(text, value, indent + 2);
            if (text.Length == start + 1)
            {
                text.Length = start;
                text.Append(" {}\n");
            }
        }
        else
        {
            var quoted = value is TimeOnly || (value is string word && YamlText.ReadsAsOther(word));
            text.Append(' ').Append(YamlText.Scalar(FileTypes.Write(value), quoted)).Append('\n');
        }
    }

    private static void WriteItems(StringBuilder text, IEnumerable items, int indent)
    {
        text.Append('\n');
        foreach (var item in items)
        {
            text.Append(' ', indent + 2).Append('-');
            if (FileTypes.IsRecord(item.GetType()))
            {
                var start = text.Length;
                WriteMembers(text, item, indent + 4);
                if (text.Length == start)
                {
                    text.Append(" {}\n");
                    continue;
                }

                text.Remove(start, indent + 4).Insert(start, " ");
            }
            else
            {
                WriteValue(text, item, indent + 2);
            }
        }
    }
}
