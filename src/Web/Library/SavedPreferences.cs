using System.Collections.Immutable;
using Litterfall.Store;
using Microsoft.JSInterop;

namespace Litterfall.Web.Library;

/// <summary>
/// The units of the person at this browser. A browser gets a name of its own the first time; what was
/// chosen before anybody had one counts for all who chose nothing.
/// </summary>
public sealed class SavedPreferences(BenchStore store, IJSRuntime js)
{
    private const string Prefix = "unit.";
    private string? who;

    /// <summary>What was chosen before.</summary>
    public async Task<UnitPreferences> LoadAsync()
    {
        var browser = await WhoAsync();
        return Read(await store.ChoicesAsync(), browser);
    }

    /// <summary>What a browser chose before.</summary>
    /// <param name="choices">All choices of the bench.</param>
    /// <param name="browser">Name that the browser gave itself; null where it has none.</param>
    public static UnitPreferences Read(IReadOnlyDictionary<string, string> choices, Guid? browser) =>
        Read(choices, browser is { } id ? $"{id:N}." : "");

    private static UnitPreferences Read(IReadOnlyDictionary<string, string> choices, string browser) =>
        new(
            UnitPreferences
                .Kinds.Select(k =>
                    (
                        k.Kind,
                        Unit: choices.GetValueOrDefault(Prefix + browser + k.Kind)
                            ?? choices.GetValueOrDefault(Prefix + k.Kind)
                    )
                )
                .Where(c => c.Unit is not null)
                .ToImmutableDictionary(c => c.Kind, c => c.Unit!)
        );

    /// <summary>Remembers a unit for a kind of quantity.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="unit">Symbol of the unit; empty for as each number is told.</param>
    public async Task ChooseAsync(string kind, string unit) =>
        await store.ChooseAsync(Prefix + await WhoAsync() + kind, unit);

    /// <summary>Name of the browser with a point behind it; empty where it keeps nothing.</summary>
    private async Task<string> WhoAsync()
    {
        if (who is null)
        {
            var name = await js.InvokeAsync<string?>("litterfall.who");
            who = Guid.TryParse(name, out var id) ? $"{id:N}." : "";
        }

        return who;
    }
}
