using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// Heat of 4 Fe + 3 O2 → 2 Fe2O3 from the standard heat of formation of hematite, as pages on chemistry quote
/// the tables of NIST: 1648.4 kJ, 412.1 kJ for a mole of iron, 549.5 kJ for a mole of oxygen (read).
/// </summary>
public static class ChemistryTables
{
    private const double IronKilogramsPerMole = 0.055845;
    private static readonly CaseSource Source = new(
        "Parcel",
        "NIST chemistry tables, heat of formation of hematite",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Heats.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Four digits.";
        const string Other = "Another compilation has 825.5 kJ/mol of oxide, textbooks 826: 0.2 % more.";
        var mole = new IronPack(IronKilogramsPerMole, 3600.0);
        yield return Source.Case($"heat of a mole of iron", "kJ/mol", (412.1, 0.06), Reason, () =>
            mole.Joules / 1e3
        ) with
        {
            KnownDisagreement = Other,
        };
        yield return Source.Case($"heat of a mole of oxygen", "kJ/mol", (549.5, 0.06), Reason, () =>
            mole.Joules / mole.OxygenMoles / 1e3
        );
        yield return Source.Case($"heat of four moles of iron", "kJ", (1648.4, 0.06), "Five digits.", () =>
            new IronPack(4.0 * IronKilogramsPerMole, 3600.0).Joules / 1e3
        );
    }
}
