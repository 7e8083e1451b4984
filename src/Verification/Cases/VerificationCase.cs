using System.Globalization;
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

/// <summary>What a comparison proves.</summary>
public enum CaseClass
{
    /// <summary>A printed number of a publication that tests live code.</summary>
    PublishedValue,

    /// <summary>A formula of a publication, solved a second time by us or another program.</summary>
    PublishedFormula,

    /// <summary>An example of our own, worked out apart from the code it tests.</summary>
    OwnExample,
}

/// <summary>What came of a comparison.</summary>
public enum Outcome
{
    /// <summary>Our value lies within the tolerance.</summary>
    Agrees,

    /// <summary>It does not, and a second independent solution of the repository sides with it.</summary>
    SourceInError,

    /// <summary>It does not.</summary>
    Disagrees,
}

/// <summary>Words for classes and outcomes.</summary>
public static class CaseWords
{
    /// <summary>As written for other programs: "published-value".</summary>
    public static string Key(this CaseClass one) => Dashed(one.ToString());

    /// <summary>As written for other programs: "source-in-error".</summary>
    public static string Key(this Outcome outcome) => Dashed(outcome.ToString());

    /// <summary>As printed.</summary>
    public static string Words(this CaseClass one) =>
        one switch
        {
            CaseClass.PublishedValue => "published value",
            CaseClass.PublishedFormula => "published formula, own second solution",
            _ => "own worked example",
        };

    /// <summary>As printed.</summary>
    public static string Words(this Outcome outcome) =>
        outcome switch
        {
            Outcome.Agrees => "agrees",
            Outcome.SourceInError => "source in error or coarsely rounded",
            _ => "disagrees",
        };

    private static string Dashed(string name) =>
        string.Concat(
            name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : $"{c}")
        );
}

/// <summary>An independent solution of the repository that stands beside a printed value.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Got">Its value, in the unit of the case.</param>
/// <param name="Tolerance">Largest difference from ours that counts as siding with us.</param>
public sealed record SecondSolution(string Name, Func<double> Got, double Tolerance);

/// <summary>One comparison of our result with a value from outside.</summary>
public sealed record VerificationCase
{
    /// <summary>Share of the value from which on a tolerance needs the published spread.</summary>
    public const double WideShare = 0.25;

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

    /// <summary>Gets the scatter the source itself reports; needed where the tolerance is wide.</summary>
    public string? Spread { get; init; }

    /// <summary>Gets a second solution, where a printed value may be wrong.</summary>
    public SecondSolution? Second { get; init; }

    /// <summary>Gets what the comparison proves: by its source, and by the kind of evidence.</summary>
    public CaseClass Class =>
        Source.StartsWith("own ", StringComparison.OrdinalIgnoreCase) ? CaseClass.OwnExample
        : Evidence is Evidence.PrintedTable or Evidence.PrintedText or Evidence.DigitizedFigure
            ? CaseClass.PublishedValue
        : CaseClass.PublishedFormula;

    /// <summary>Gets whether the number was read, in its publication or as another quotes it.</summary>
    public bool IsRead => Provenance != Provenance.Recalled;

    /// <summary>Gets whether the tolerance is so wide that the spread must be told.</summary>
    public bool IsWide => Expected != 0.0 && Tolerance > WideShare * Math.Abs(Expected);

    /// <summary>Runs the case.</summary>
    /// <returns>Our value and what came of it.</returns>
    public VerificationResult Run()
    {
        double got = Got();
        if (Math.Abs(got - Expected) <= Tolerance)
        {
            return new VerificationResult(this, got, Outcome.Agrees);
        }

        bool sides = false;
        if (Second is { } second)
        {
            double other = second.Got();
            sides =
                Math.Abs(other - got) <= second.Tolerance
                && Math.Abs(other - got) < Math.Abs(other - Expected);
        }

        return new VerificationResult(this, got, sides ? Outcome.SourceInError : Outcome.Disagrees);
    }
}

/// <summary>A case with our value.</summary>
/// <param name="Case">The case.</param>
/// <param name="Got">Our value, in the unit of the case.</param>
/// <param name="Outcome">What came of it; a value that is not a number disagrees.</param>
public readonly record struct VerificationResult(VerificationCase Case, double Got, Outcome Outcome);

/// <summary>Counts of one class, as printed at the end of a run.</summary>
/// <param name="Class">The class.</param>
/// <param name="Sources">Sources with a case of it.</param>
/// <param name="ReadSources">Sources of which at least one such number was read.</param>
/// <param name="Agree">Cases that agree.</param>
/// <param name="InError">Cases whose source is in error or coarse.</param>
/// <param name="Disagree">Cases that disagree.</param>
public sealed record ClassCount(
    CaseClass Class,
    int Sources,
    int ReadSources,
    int Agree,
    int InError,
    int Disagree
)
{
    /// <summary>The three classes, counted apart.</summary>
    /// <param name="results">All results.</param>
    public static IReadOnlyList<ClassCount> Of(IReadOnlyCollection<VerificationResult> results) =>
        [
            .. Enum.GetValues<CaseClass>()
                .Select(one =>
                {
                    var those = results.Where(r => r.Case.Class == one).ToArray();
                    return new ClassCount(
                        one,
                        those.Select(r => r.Case.Source).Distinct(StringComparer.Ordinal).Count(),
                        those
                            .Where(r => r.Case.IsRead)
                            .Select(r => r.Case.Source)
                            .Distinct(StringComparer.Ordinal)
                            .Count(),
                        those.Count(r => r.Outcome == Outcome.Agrees),
                        those.Count(r => r.Outcome == Outcome.SourceInError),
                        those.Count(r => r.Outcome == Outcome.Disagrees)
                    );
                }),
        ];

    /// <summary>One line.</summary>
    public string Line()
    {
        string read =
            Class != CaseClass.PublishedValue ? ""
            : string.Create(CultureInfo.InvariantCulture, $" ({ReadSources} read, the others from memory)");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Class.Words()}: {Agree + InError + Disagree} cases of {Sources} sources{read}: "
                + $"{Agree} agree, {InError} source in error or coarsely rounded, {Disagree} disagree"
        );
    }
}
