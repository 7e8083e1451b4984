using System.Collections.Frozen;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trees;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.DesignFile;

/// <summary>Single values of the design file: how each type is read, named and written.</summary>
internal static class FileTypes
{
    private delegate bool QuantityReader(string text, out object? value, out string problem);

    private static readonly FrozenDictionary<Type, (QuantityKind Kind, QuantityReader Read)> Quantities =
        new[]
        {
            Quantity<Length>(),
            Quantity<Area>(),
            Quantity<Volume>(),
            Quantity<Mass>(),
            Quantity<Temperature>(),
            Quantity<TemperatureDifference>(),
            Quantity<Share>(),
            Quantity<Flow>(),
            Quantity<Elevation>(),
            Quantity<Duration>(),
            Quantity<Power>(),
            Quantity<LuminousFlux>(),
            Quantity<AirChangeRate>(),
            Quantity<ElectricCurrent>(),
            Quantity<Angle>(),
            Quantity<Illuminance>(),
            Quantity<PhotonFlux>(),
        }.ToFrozenDictionary(pair => pair.Type, pair => (pair.Kind, pair.Read));

    public static bool IsRecord(Type type) =>
        type.IsClass && type != typeof(string) && type.Namespace == typeof(Design).Namespace;

    public static QuantityKind? KindOf(Type type) =>
        Quantities.TryGetValue(type, out var entry) ? entry.Kind : null;

    public static string Expected(Type type, FileMember member)
    {
        if (KindOf(type) is { } kind)
        {
            return kind.Expected;
        }

        if (type.IsEnum)
        {
            return "one of " + string.Join(", ", FileMember.EnumValues(type).Select(FileMember.EnumWord));
        }

        if (member.Kinds.Length > 0)
        {
            return $"a {string.Join(" or ", member.Kinds.Select(k => k.Word()))} (see "
                + $"`litterfall library {member.Kinds[0].Word()}`)";
        }

        return type == typeof(DateOnly) ? "a date such as 2026-08-14"
            : type == typeof(TimeOnly) ? "a time of day such as \"07:30\""
            : type == typeof(bool) ? "true or false"
            : type == typeof(int)
                ? $"a whole number from {member.Whole?.From ?? 0} to {member.Whole?.To ?? int.MaxValue}"
            : type == typeof(string) ? "a text of 1 to 200 characters"
            : "keys below it: " + string.Join(", ", FileShape.Of(type).Members.Select(m => m.Key));
    }

    public static bool TryParse(
        Type type,
        FileMember member,
        string text,
        out object? value,
        out string problem
    )
    {
        if (Quantities.TryGetValue(type, out var quantity))
        {
            return quantity.Read(text, out value, out problem);
        }

        value =
            type.IsEnum ? EnumValue(type, text)
            : type == typeof(string) ? TextValue(text)
            : type == typeof(int) ? WholeValue(member, text)
            : type == typeof(bool) ? BoolValue(text)
            : type == typeof(DateOnly) ? DateValue(text)
            : TimeValue(text);
        problem = value is null ? $"'{TreeNode.Shown(text)}' cannot be used" : "";
        return value is not null;
    }

    public static string Write(object value) =>
        value switch
        {
            string text => text,
            bool flag => flag ? "true" : "false",
            int number => number.ToString(CultureInfo.InvariantCulture),
            DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            TimeOnly time => time.ToString("HH:mm", CultureInfo.InvariantCulture),
            Enum word => FileMember.EnumWord(word),
            _ => value.ToString()!,
        };

    private static string? TextValue(string text) =>
        text.Length is > 0 and <= 200 && !text.Any(char.IsControl) ? text : null;

    private static object? EnumValue(Type type, string text)
    {
        var word = text.ToLowerInvariant().Replace(' ', '-');
        return FileMember.EnumValues(type).FirstOrDefault(v => FileMember.EnumWord(v) == word);
    }

    private static object? WholeValue(FileMember member, string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && number >= (member.Whole?.From ?? 0)
        && number <= (member.Whole?.To ?? int.MaxValue)
            ? number
            : null;

    private static object? BoolValue(string text) =>
        text switch
        {
            "true" or "yes" => true,
            "false" or "no" => false,
            _ => null,
        };

    private static object? DateValue(string text) =>
        DateOnly.TryParseExact(
            text,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var date
        )
            ? date
            : null;

    private static object? TimeValue(string text) =>
        TimeOnly.TryParseExact(
            text,
            ["HH:mm", "H:mm"],
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var time
        )
            ? time
            : null;

    private static (Type Type, QuantityKind Kind, QuantityReader Read) Quantity<T>()
        where T : struct, IQuantity<T>
    {
        return (typeof(Typed<T>), T.Kind, Read);

        static bool Read(string text, out object? value, out string problem)
        {
            var good = QuantityText.TryParse<T>(text, out var typed, out problem);
            value = good ? typed : null;
            return good;
        }
    }
}
