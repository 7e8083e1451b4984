using System.Collections.Immutable;

namespace Litterfall.Running.Diagnosis.Matrix;

/// <summary>Something that speaks for some causes and against others.</summary>
/// <param name="Text">In one sentence.</param>
/// <param name="Factors">
/// How many times as likely it is under a cause as it is on the whole; causes that are not named: once.
/// </param>
public sealed record Clue(string Text, ImmutableDictionary<Cause, double> Factors)
{
    /// <summary>The sentence where it is another for a cause.</summary>
    public ImmutableDictionary<Cause, string> Texts { get; init; } = ImmutableDictionary<Cause, string>.Empty;

    /// <summary>The sentence for a cause.</summary>
    public string TextFor(Cause cause) => Texts.GetValueOrDefault(cause, Text);

    /// <summary>Factor of a cause.</summary>
    public double Factor(Cause cause) => Factors.GetValueOrDefault(cause, 1.0);

    /// <summary>A clue of some causes.</summary>
    public static Clue Create(string text, params ReadOnlySpan<(Cause Cause, double Factor)> factors)
    {
        var all = ImmutableDictionary.CreateBuilder<Cause, double>();
        foreach (var (cause, factor) in factors)
        {
            all[cause] = factor;
        }

        return new Clue(text, all.ToImmutable());
    }

    /// <summary>The same of several causes with one factor, with further causes added.</summary>
    public Clue With(double factor, params IEnumerable<Cause> causes) =>
        this with
        {
            Factors = causes.Aggregate(Factors, (all, cause) => all.SetItem(cause, factor)),
        };
}
