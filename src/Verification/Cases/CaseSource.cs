using System.Globalization;
using Litterfall.Domain.Figures;

namespace Litterfall.Verification.Cases;

/// <summary>Makes the cases of one source.</summary>
/// <param name="Subject">Subject word: the folder name in Physics, here and in docs/models.</param>
/// <param name="Name">The publication, or "Own worked example" with its subject.</param>
/// <param name="Evidence">Kind of evidence.</param>
/// <param name="Provenance">How the expected values came to us.</param>
internal sealed record CaseSource(string Subject, string Name, Evidence Evidence, Provenance Provenance)
{
    /// <summary>A case whose tolerance is absolute.</summary>
    /// <param name="quantity">What is compared.</param>
    /// <param name="unit">Unit of all three numbers.</param>
    /// <param name="expected">The value and its tolerance.</param>
    /// <param name="reason">Why this tolerance.</param>
    /// <param name="got">Our value.</param>
    public VerificationCase Case(
        FormattableString quantity,
        string unit,
        (double Value, double Tolerance) expected,
        string reason,
        Func<double> got
    ) =>
        new()
        {
            Source = Name,
            Subject = Subject,
            Quantity = quantity.ToString(CultureInfo.InvariantCulture),
            Unit = unit,
            Expected = expected.Value,
            Got = got,
            Tolerance = expected.Tolerance,
            Reason = reason,
            Evidence = Evidence,
            Provenance = Provenance,
        };

    /// <summary>A value with a tolerance that is a share of it.</summary>
    public static (double Value, double Tolerance) Within(double share, double value) =>
        (value, share * Math.Abs(value));
}
