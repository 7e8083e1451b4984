using CsCheck;

namespace Litterfall.UnitTests.Domain;

/// <summary>Random choices.</summary>
internal static class Pick
{
    /// <summary>One of the given items.</summary>
    public static Gen<T> From<T>(params IReadOnlyList<T> items) =>
        Gen.Int[0, items.Count - 1].Select(i => items[i]);

    /// <summary>The value, or null in about half the cases.</summary>
    public static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen, (there, value) => there ? value : (T?)null);

    /// <summary>The object, or null in about half the cases.</summary>
    public static Gen<T?> Perhaps<T>(Gen<T> gen)
        where T : class => Gen.Select(Gen.Bool, gen, (there, value) => there ? value : null);
}
