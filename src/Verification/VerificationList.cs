using Litterfall.Verification.Air;
using Litterfall.Verification.Air.Tables;
using Litterfall.Verification.Buying;
using Litterfall.Verification.Cases;
using Litterfall.Verification.Crew;
using Litterfall.Verification.Floor;
using Litterfall.Verification.Hygiene;
using Litterfall.Verification.Light;
using Litterfall.Verification.Parcel;
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
        [.. GlassAndLife(), .. Air(), .. Soil(), .. Rays(), .. Shop(), .. Parcel()];

    private static IEnumerable<VerificationCase> GlassAndLife() =>
        [
            .. TimoshenkoWoinowskyKrieger1959.Cases(),
            .. YoungBudynas2002.Cases(),
            .. MacNealHarder1985.Cases(),
            .. En16612.Cases(),
            .. StripLimits.Cases(),
            .. OwnPlateTables.Cases(),
            .. OwnPaneExamples.Cases(),
            .. OwnFloatCheck.Cases(),
            .. BeckerGratwicke2017.Cases(),
            .. Bryan2009.Cases(),
            .. Cdc2008.Cases(),
            .. Who2014.Cases(),
            .. ChlorineArithmetic.Cases(),
            .. BayleyHolmstrup1999.Cases(),
            .. ColemanJenkinson1996.Cases(),
            .. OwnLifeTables.Cases(),
            .. OwnBreedingWarmth.Cases(),
            .. SpottedOwl2001.Cases(),
            .. Lande1988.Cases(),
            .. Gastrophysa.Cases(),
            .. Nobel2009.Cases(),
            .. PapendickCampbell1981.Cases(),
            .. Cole1954.Cases(),
            .. LiberAbaci.Cases(),
            .. Sharov.Cases(),
            .. OwnFrogBudget.Cases(),
        ];

    private static IEnumerable<VerificationCase> Air() =>
        [
            .. HylandWexlerTable.Cases(),
            .. IapwsSaturation.Cases(),
            .. IapwsTable35.Cases(),
            .. Allen1998.Cases(),
            .. PsychrometricLibrary.Cases(),
            .. CoolPropAir.Cases(),
            .. ChemistryHandbook1992.Cases(),
            .. AirTables.Cases(),
            .. Lide2005.Cases(),
            .. List1949.Cases(),
            .. Ashrae2017.Cases(),
            .. MonteithUnsworth2013.Cases(),
            .. SmithsonianMixing.Cases(),
            .. DewPointTable.Cases(),
            .. BreathingAir.Cases(),
            .. RajputThermodynamics.Cases(),
            .. OpenStaxPhysics.Cases(),
            .. Icao1993.Cases(),
            .. MoranShapiro.Cases(),
            .. CengelBoles.Cases(),
            .. Incropera.Cases(),
            .. CibseGuideC.Cases(),
            .. Iso6946.Cases(),
            .. LopezScreens2016.Cases(),
            .. BuildingTable.Cases(),
            .. SensorConstant.Cases(),
            .. HeatPowerText.Cases(),
            .. WallaceHobbs2006.Cases(),
            .. Felder.Cases(),
            .. OwnMoistAirStates.Cases(),
            .. OwnConvection.Cases(),
            .. OwnOpenings.Cases(),
            .. OwnBoxLimits.Cases(),
            .. OwnWetSurfaces.Cases(),
            .. OwnPaneFog.Cases(),
            .. OwnReferenceRuns.Cases(),
        ];

    private static IEnumerable<VerificationCase> Soil() =>
        [
            .. Fetter1994.Cases(),
            .. Lohman1972.Cases(),
            .. GateLayers.Cases(),
            .. VanGenuchten1980.Cases(),
            .. Ippisch2006.Cases(),
            .. Durner1994.Cases(),
            .. OwnHydrostatic.Cases(),
            .. Celia1990.Cases(),
            .. Haverkamp1977.Cases(),
            .. SrivastavaYeh1991.Cases(),
            .. OwnLayeredWetting.Cases(),
            .. Philip1957.Cases(),
            .. Gardner1958.Cases(),
            .. OwnSteadyLayers.Cases(),
            .. Ross1990.Cases(),
            .. OwnCapillaryBarrier.Cases(),
            .. OwnFloodLedger.Cases(),
            .. OwnOldShowTank.Cases(),
            .. OwnMassBalance.Cases(),
            .. OwnConvergence.Cases(),
            .. Vanderborght2005.Cases(),
            .. DuMuxInfiltration.Cases(),
        ];

    private static IEnumerable<VerificationCase> Rays() =>
        [
            .. LambertPhotometria.Cases(),
            .. ConfigurationFactors.Cases(),
            .. MoonLine.Cases(),
            .. DuffieBeckmanPanes.Cases(),
            .. MonsiSaeki1953.Cases(),
            .. OwnLightBoxes.Cases(),
            .. ClosedCube.Cases(),
            .. CieIlluminants.Cases(),
            .. ThimijanHeins1983.Cases(),
            .. EspRPanes.Cases(),
            .. EesRectangles.Cases(),
            .. HamiltonMorgan1952.Cases(),
            .. Chapman1987.Cases(),
            .. SiegelHowell2002.Cases(),
            .. WindowGlass.Cases(),
            .. PhotonSums.Cases(),
            .. Faust.Cases(),
            .. TextbookLamps.Cases(),
            .. OwnLampFile.Cases(),
            .. OwnLampHeat.Cases(),
        ];

    private static IEnumerable<VerificationCase> Shop() =>
        [
            .. ReferenceBox.Cases(),
            .. OwnFloorAreas.Cases(),
            .. OwnStockingExamples.Cases(),
            .. OwnMixEstimate.Cases(),
            .. OwnPackExamples.Cases(),
        ];

    private static IEnumerable<VerificationCase> Parcel() =>
        [
            .. OwnCartons.Cases(),
            .. OwnParcelRuns.Cases(),
            .. OwnParcelSolutions.Cases(),
            .. OwnIronPack.Cases(),
            .. OwnCups.Cases(),
            .. IncroperaLump.Cases(),
            .. LienhardLump.Cases(),
            .. SchoolIcebox.Cases(),
            .. ChemistryTables.Cases(),
            .. LideDiffusion.Cases(),
            .. BrownEscombe1900.Cases(),
        ];
}
