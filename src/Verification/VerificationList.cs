using Litterfall.Verification.Buying;
using Litterfall.Verification.Crew;
using Litterfall.Verification.Floor;
using Litterfall.Verification.Hygiene;
using Litterfall.Verification.Mixing;
using Litterfall.Verification.Plates;
using Litterfall.Verification.Sizing;
using Litterfall.Verification.Soil;
using Litterfall.Verification.Stocking;

namespace Litterfall.Verification;

/// <summary>Every published source we check against, one line each, by subject.</summary>
public static class VerificationList
{
    /// <summary>All cases in the order of the list.</summary>
    /// <returns>The cases.</returns>
    public static IReadOnlyList<VerificationCase> All() =>
        [
            .. TimoshenkoWoinowskyKrieger1959.Cases(),
            .. YoungBudynas2002.Cases(),
            .. StripLimits.Cases(),
            .. OwnPlateTables.Cases(),
            .. OwnPaneExamples.Cases(),
            .. En16612.Cases(),
            .. OwnFloatCheck.Cases(),
            .. BeckerGratwicke2017.Cases(),
            .. Bryan2009.Cases(),
            .. ChlorineArithmetic.Cases(),
            .. BayleyHolmstrup1999.Cases(),
            .. Horvathova2015.Cases(),
            .. Araujo2004.Cases(),
            .. ColemanJenkinson1996.Cases(),
            .. Olson1963.Cases(),
            .. Tuomi2009.Cases(),
            .. MoronRios2023.Cases(),
            .. OConnell1988.Cases(),
            .. Chave2010.Cases(),
            .. Emerson1975.Cases(),
            .. Gillooly2001.Cases(),
            .. VonMay2019.Cases(),
            .. DendrobatesTruncatusDiet.Cases(),
            .. Woodhead2007.Cases(),
            .. DefinedFlyMedium.Cases(),
            .. Sim2010.Cases(),
            .. ReferenceBox.Cases(),
            .. OwnFloorAreas.Cases(),
            .. OwnStockingExamples.Cases(),
            .. OwnMixExample.Cases(),
            .. OwnMixEstimate.Cases(),
            .. OwnPackExamples.Cases(),
        ];
}
