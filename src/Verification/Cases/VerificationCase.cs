using Litterfall.Domain.Figures;

namespace Litterfall.Verification.Cases;

/// <summary>What kind of evidence stands behind an expected value.</summary>
public enum Evidence
{
    /// <summary>A formula solved by hand or a limit known exactly.</summary>
    ClosedForm,

    /// <summary>A number in a printed table.</summary>
    PrintedTable,

    /// <summary>A number in the text or abstract of a publication.</summary>
    PrintedText,

    /// <summary>A number taken off a published figure.</summary>
    DigitizedFigure,

    /// <summary>A number from a program that shares no code with ours.</summary>
    OtherCode,

    /// <summary>The rate at which an error falls as a grid is refined.</summary>
    OrderOfConvergence,

    /// <summary>An example worked through once, by hand or by another method.</summary>
    WorkedExample,
}

/// <summary>Words for kinds of evidence.</summary>
public static class EvidenceWords
{
    /// <summary>As printed: "closed form" for <see cref="Evidence.ClosedForm"/>.</summary>
    public static string Word(this Evidence evidence) =>
        string.Concat(
            evidence
                .ToString()
                .Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : $"{c}")
        );
}

/// <summary>One comparison of our result with a value from outside.</summary>
public sealed record VerificationCase
{
    /// <summary>Gets the publication, or "own worked example" with its subject.</summary>
    public required string Source { get; init; }

    /// <summary>Gets the subject word: the folder name in Physics, here and in docs/models.</summary>
    public required string Subject { get; init; }

    /// <summary>Gets what is compared, with its conditions; unique within the source.</summary>
    public required string Quantity { get; init; }

    /// <summary>Gets the unit of all three numbers; "1" for a ratio.</summary>
    public required string Unit { get; init; }

    /// <summary>Gets the value from outside.</summary>
    public required double Expected { get; init; }

    /// <summary>Gets the computation of our value.</summary>
    public required Func<double> Got { get; init; }

    /// <summary>Gets the largest absolute difference that counts as agreement.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Gets why the tolerance is what it is.</summary>
    public required string Reason { get; init; }

    /// <summary>Gets the kind of evidence.</summary>
    public required Evidence Evidence { get; init; }

    /// <summary>Gets how the expected value came to us.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>Gets what other sources say otherwise, where known.</summary>
    public string? KnownDisagreement { get; init; }

    /// <summary>Runs the case.</summary>
    /// <returns>Our value and whether it agrees.</returns>
    public VerificationResult Run()
    {
        double got = Got();
        return new VerificationResult(this, got, Math.Abs(got - Expected) <= Tolerance);
    }
}

/// <summary>A case with our value.</summary>
/// <param name="Case">The case.</param>
/// <param name="Got">Our value, in the unit of the case.</param>
/// <param name="Agrees">Whether it lies within the tolerance; a value that is not a number does not.</param>
public readonly record struct VerificationResult(VerificationCase Case, double Got, bool Agrees);
