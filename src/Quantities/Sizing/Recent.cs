using System.Collections.Concurrent;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// Results of a pure function that costs more than looking them up, for a hand that drags one value while all
/// others stay. It forgets all when it is full; what it gives never depends on what it remembers.
/// </summary>
/// <typeparam name="TKey">All that the result depends on, equal by value.</typeparam>
/// <typeparam name="TValue">The result.</typeparam>
/// <param name="make">The function.</param>
/// <param name="most">Results kept at most.</param>
internal sealed class Recent<TKey, TValue>(Func<TKey, TValue> make, int most)
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, TValue> known = new();

    /// <summary>The result.</summary>
    /// <param name="key">What it depends on.</param>
    public TValue Of(TKey key)
    {
        if (known.TryGetValue(key, out var value))
        {
            return value;
        }

        if (known.Count >= most)
        {
            known.Clear();
        }

        value = make(key);
        known[key] = value;
        return value;
    }
}
