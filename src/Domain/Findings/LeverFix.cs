using System.Collections.Immutable;
using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Findings;

/// <summary>
/// A value of the design at which a finding disappears, found by checking changed designs; the last such
/// check was
/// made with this very value.
/// </summary>
/// <param name="Lever">What is turned: "misting", "vents", "lamp hours".</param>
/// <param name="From">Its value in the design.</param>
/// <param name="To">The nearest value found at which the finding is gone.</param>
/// <param name="Brings">Findings the changed design has and this one has not, by name.</param>
public sealed record LeverFix(string Lever, Figure From, Figure To, ImmutableArray<string> Brings);
