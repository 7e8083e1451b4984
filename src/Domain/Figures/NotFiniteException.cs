using System.Collections.Immutable;

namespace Litterfall.Domain.Figures;

/// <summary>
/// A result that is no number: it ends the run, so that no paper and no screen can show it.
/// </summary>
#pragma warning disable CA1032 // made of what could not be computed, never of a text
public sealed class NotFiniteException : ArithmeticException
#pragma warning restore CA1032
{
    internal NotFiniteException(string equation, ImmutableArray<Figure> inputs)
        : base(
            inputs.IsEmpty
                ? $"a number does not come out: {equation}"
                : $"a number does not come out: {equation}, with "
                    + string.Join(
                        ", ",
                        inputs.Select(i =>
                            FormattableString.Invariant($"{i.Name} {i.Value:G6} {i.Unit?.Symbol}").TrimEnd()
                        )
                    )
        ) { }
}
