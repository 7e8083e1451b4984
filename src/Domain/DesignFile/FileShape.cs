using System.Collections.Concurrent;
using System.Reflection;
using System.Runtime.CompilerServices;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;

namespace Litterfall.Domain.DesignFile;

/// <summary>
/// What the file form says about one record type, read once from its properties. Reader, writer and JSON
/// Schema
/// all work from this, so they cannot drift apart.
/// </summary>
internal sealed class FileShape
{
    private static readonly ConcurrentDictionary<Type, FileShape> Known = new();

    private FileShape(Type type)
    {
        Type = type;
        Means = type.GetCustomAttribute<MeansAttribute>()?.Text ?? "";
        Members =
        [
            .. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(p => p.CanWrite)
                .Select(p => new FileMember(p)),
        ];
    }

    public Type Type { get; }

    public string Means { get; }

    public FileMember[] Members { get; }

    public static FileShape Of(Type type) => Known.GetOrAdd(type, static t => new FileShape(t));

    public FileMember? Find(string key) => Array.Find(Members, m => m.Key == key || m.Also.Contains(key));
}

/// <summary>One key of a record type.</summary>
internal sealed class FileMember(PropertyInfo property)
{
    public string Key { get; } =
        property.GetCustomAttribute<KeyAttribute>()?.Key
        ?? char.ToLowerInvariant(property.Name[0]) + property.Name[1..];

    public Type Type { get; } = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;

    public bool IsRequired { get; } = property.IsDefined(typeof(RequiredMemberAttribute));

    public string Means { get; } = property.GetCustomAttribute<MeansAttribute>()?.Text ?? "";

    public string[] Also { get; } = property.GetCustomAttribute<AlsoAttribute>()?.Keys ?? [];

    public EntryKind[] Kinds { get; } = property.GetCustomAttribute<NamesAttribute>()?.Kinds ?? [];

    public int MostItems { get; } = property.GetCustomAttribute<AtMostAttribute>()?.Count ?? 1000;

    public WholeAttribute? Whole { get; } = property.GetCustomAttribute<WholeAttribute>();

    public bool IsList => Type.IsGenericType && Type.GetGenericTypeDefinition() == typeof(Seq<>);

    /// <summary>Optional keys accept the word none; a name may not, since it could be a name.</summary>
    public bool AcceptsNone => !IsRequired && Key != "name";

    public object? Get(object owner) => property.GetValue(owner);

    public void Set(object owner, object? value) => property.SetValue(owner, value);

    /// <summary>
    /// Values of an enumeration; without an array of its type, which programs compiled ahead lack.
    /// </summary>
    public static IEnumerable<object> EnumValues(Type type)
    {
        foreach (var number in Enum.GetValuesAsUnderlyingType(type))
        {
            yield return Enum.ToObject(type, number);
        }
    }

    /// <summary>Spelling of an enumeration value in files: outer-wall for OuterWall.</summary>
    public static string EnumWord(object value)
    {
        var name = value.ToString()!;
        return string.Concat(
            name.Select(
                (c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()
            )
        );
    }
}
