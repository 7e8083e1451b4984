using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;

namespace Litterfall.FuzzTests;

/// <summary>Finds a number that is none anywhere in what a reader gave.</summary>
internal static class FiniteNumbers
{
    private const int Deepest = 8;

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Known = new();

    /// <summary>The way to a number that is not finite, or null.</summary>
    /// <param name="value">What a reader gave.</param>
    public static string? Broken(object? value) => Broken(value, 0);

    private static string? Broken(object? value, int depth)
    {
        switch (value)
        {
            case double number:
                return double.IsFinite(number) ? null : $" is {number}";
            case null or string or Enum:
            case not null when depth > Deepest:
                return null;
            case IEnumerable items:
                var index = 0;
                foreach (var item in items)
                {
                    if (Broken(item, depth + 1) is { } inner)
                    {
                        return $"[{index}]{inner}";
                    }

                    index++;
                }

                return null;
            default:
                return IsOurs(value.GetType()) ? InProperties(value, depth) : null;
        }
    }

    private static bool IsOurs(Type type) =>
        type.Namespace?.StartsWith("Litterfall", StringComparison.Ordinal) ?? false;

    private static string? InProperties(object value, int depth)
    {
        var properties = Known.GetOrAdd(value.GetType(), type =>
            [.. type.GetProperties().Where(p => p.GetIndexParameters().Length == 0)]
        );
        foreach (var property in properties)
        {
            if (Broken(property.GetValue(value), depth + 1) is { } inner)
            {
                return $".{property.Name}{inner}";
            }
        }

        return null;
    }
}
