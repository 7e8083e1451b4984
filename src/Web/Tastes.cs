using System.Collections.Immutable;
using Litterfall.Store;

namespace Litterfall.Web;

/// <summary>The user's units in the store.</summary>
public static class Tastes
{
    private const string Prefix = "unit.";

    /// <summary>What was chosen before.</summary>
    public static async Task<Taste> LoadAsync(BenchStore store) =>
        new(
            (await store.ChoicesAsync())
                .Where(c => c.Key.StartsWith(Prefix, StringComparison.Ordinal))
                .ToImmutableDictionary(c => c.Key[Prefix.Length..], c => c.Value)
        );

    /// <summary>Remembers a unit for a kind of quantity.</summary>
    public static Task ChooseAsync(BenchStore store, string kind, string unit) =>
        store.ChooseAsync(Prefix + kind, unit);
}
