using System.Collections;
using System.Runtime.CompilerServices;

namespace Litterfall.Domain.Lists;

/// <summary>
/// An immutable list that is equal when its items are equal, so that records holding it are too.
/// </summary>
[CollectionBuilder(typeof(Seq), nameof(Seq.Create))]
public sealed class Seq<T> : IReadOnlyList<T>, IEquatable<Seq<T>>
{
    private readonly T[] items;

    internal Seq(T[] items) => this.items = items;

    /// <summary>The empty list.</summary>
    public static Seq<T> Empty { get; } = new([]);

    /// <inheritdoc/>
    public int Count => items.Length;

    /// <inheritdoc/>
    public T this[int index] => items[index];

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(Seq<T>? other) => other is not null && items.AsSpan().SequenceEqual(other.items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Seq<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }
}

/// <summary>Makes <see cref="Seq{T}"/>.</summary>
public static class Seq
{
    /// <summary>A list of the given items.</summary>
    public static Seq<T> Create<T>(ReadOnlySpan<T> items) =>
        items.Length == 0 ? Seq<T>.Empty : new(items.ToArray());
}
