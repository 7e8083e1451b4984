using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Air;
using Litterfall.Judging.Animals;
using Litterfall.Judging.Box;
using Litterfall.Judging.Crew;
using Litterfall.Judging.Fittings;
using Litterfall.Judging.Floor;
using Litterfall.Judging.Light;
using Litterfall.Judging.Load;
using Litterfall.Judging.People;
using Litterfall.Judging.Plants;
using Litterfall.Judging.Rules;
using Litterfall.Judging.Water;

namespace Litterfall.Judging;

/// <summary>All rules, by name, in the order they are shown.</summary>
public static class RuleBook
{
    /// <summary>The rules.</summary>
    public static readonly ImmutableArray<Rule> All =
    [
        NothingLeftInside.Rule,
        LayersTooHigh.Rule,
        SoilAboveSill.Rule,
        NominalSize.Rule,
        BarrierTooSmall.Rule,
        LidFit.Rule,
        EntriesContradict.Rule,
        GlassTooThin.Rule,
        LidSags.Rule,
        GlassNotForWater.Rule,
        GlassBelowTable.Rule,
        ShelfOverloaded.Rule,
        FloatingAggregate.Rule,
        MixTooWet.Rule,
        PriceMissing.Rule,
        StockingRuleBroken.Rule,
        StockingEveryRuleBroken.Rule,
        GroupRuleBroken.Rule,
        SexesUnknown.Rule,
        MixedSpecies.Rule,
        MixedLines.Rule,
        Overheats.Rule,
        RoomTooHot.Rule,
        RoomTooCold.Rule,
        BoxTooWarm.Rule,
        BoxTooCold.Rule,
        LittleHeatMargin.Rule,
        DayAndNight.ByDay,
        DayAndNight.ByNight,
        AirTooDry.Rule,
        StaleAir.Rule,
        RoomLogOdd.Rule,
        PanesFog.Rule,
        VentedMoreThanMisted.Rule,
        MistStays.Rule,
        LeavesNeverDry.Rule,
        PapersMissing.Rule,
        QuarantineShort.Rule,
        PathogenPositive.Rule,
        WildCaught.Rule,
        AnimalsTooEarly.Rule,
        TooFewWaterCups.Rule,
        NeedsWaterArea.Rule,
        BasinNoWayOut.Rule,
        SoilTooShallow.Rule,
        ToxicAnimal.Rule,
        NoCover.Rule,
        LeftUnattended.Rule,
        WrongPlace.Rule,
        WetRoots.Rule,
        DryRoots.Rule,
        Crowded.Rule,
        OutsideBox.Rule,
        OutgrowsBox.Rule,
        SpinyPlant.Rule,
        ToxicPlantInReach.Rule,
        ToxicPlantForAnimals.Rule,
        PlantQuarantineShort.Rule,
        DipBurns.Rule,
        WildMoss.Rule,
        NoCrew.Rule,
        CrewTooFew.Rule,
        CrewTooWarm.Rule,
        CrewWithoutLitter.Rule,
        NibblingIsopods.Rule,
        CrewEatenUp.Rule,
        LitterRunsLow.Rule,
        NitrogenLoad.Rule,
        DroppingsStay.Rule,
        PlasticLidSags.Rule,
        LidStripOpen.Rule,
        NoFreshAir.Rule,
        LidTooOpen.Rule,
        DoorGap.Rule,
        FoamEnclosed.Rule,
        FoamPourTooThick.Rule,
        LampRestsOnLid.Rule,
        LampHoursOdd.Rule,
        PlantBelowCompensation.Rule,
        PlantTooDark.Rule,
        PlantTooBright.Rule,
        MossTooBright.Rule,
        NoShadeRefuge.Rule,
        LampOverMesh.Rule,
        UltravioletBehindGlass.Rule,
        LampFileOdd.Rule,
        LightReadingFar.Rule,
        NoDrain.Rule,
        DrainAboveBarrier.Rule,
        OpenWaterBalance.Rule,
        BasinAssumed.Rule,
        WaterAtBarrier.Rule,
        DrainInterval.Rule,
        SoilWithoutAir.Rule,
        SoilTooDryForCrew.Rule,
        LitterCrust.Rule,
        NoBarrier.Rule,
        MetalUnderSoil.Rule,
        BarrierTooOpen.Rule,
        BarrierTooFine.Rule,
        DrainageTooThin.Rule,
        SoilTooThin.Rule,
        SoilTooSteep.Rule,
        LitterTooThin.Rule,
        LitterCoversPart.Rule,
        StoneOnSoil.Rule,
        Limestone.Rule,
        RawWood.Rule,
        RawLeaves.Rule,
        LayersAboveVent.Rule,
        VentLetsFliesOut.Rule,
        VentMeshTooFine.Rule,
        PassageGap.Rule,
        PassageTooSmall.Rule,
        TopVentsOnly.Rule,
        TapWater.Rule,
        NoLevelCheck.Rule,
        HeatMatTooStrong.Rule,
        HeatMatCoversTooMuch.Rule,
        HeatWithoutThermostat.Rule,
        ToughenedDrilled.Rule,
        NoTripDevice.Rule,
        NoDripLoop.Rule,
        Dust.Rule,
        BleachLabelOdd.Rule,
        DipTooWeak.Rule,
        BleachInUse.Rule,
        TwoPersonLift.Rule,
        StandRatingMissing.Rule,
        GlassEdges.Rule,
        NeverRelease.Rule,
        Zoonosis.Rule,
        SphagnumGloves.Rule,
    ];

    /// <summary>
    /// Judges a design: stops first. A stop that rests on a recalled value or on common practice is lowered
    /// to a caution unless it protects an animal or a person.
    /// </summary>
    /// <param name="numbers">Numbers of the design.</param>
    /// <param name="cancel">Cancels between rules.</param>
    public static ImmutableArray<Finding> Judge(DesignNumbers numbers, CancellationToken cancel = default) =>
        [
            .. All.SelectMany(rule =>
                {
                    cancel.ThrowIfCancellationRequested();
                    return Judge(numbers, rule);
                })
                .OrderByDescending(f => f.Severity),
        ];

    /// <summary>What one rule finds; only the stages it needs are computed.</summary>
    /// <param name="numbers">Numbers of the design.</param>
    /// <param name="rule">The rule.</param>
    public static ImmutableArray<Finding> Judge(DesignNumbers numbers, Rule rule) =>
        [.. rule.Judge(numbers.Within(rule.Needs)).Select(Held)];

    /// <summary>The rule behind a finding; null where none has its name.</summary>
    /// <param name="slug">Name of the rule.</param>
    public static Rule? Find(string slug) =>
        All.FirstOrDefault(rule => string.Equals(rule.Slug, slug, StringComparison.Ordinal));

    /// <summary>
    /// A change that answers a finding, where its rule has one that changes the design and still reads; null
    /// otherwise.
    /// </summary>
    /// <param name="finding">The finding.</param>
    /// <param name="design">The design it was found in.</param>
    public static DesignFix? Fix(Finding finding, CheckedDesign design) =>
        Find(finding.Slug)?.Fix?.Invoke(finding, design) is { } fix
        && fix.Document.Text != design.Document.Text
        && DesignChecker.Check(fix.Document, design.Catalog, design.Files).IsGood
            ? fix
            : null;

    /// <summary>
    /// The finding as it is shown: a stop for the build's sake that rests on a recalled value or on common
    /// practice alone is a caution; one that protects an animal or a person stays.
    /// </summary>
    /// <param name="finding">What a rule found.</param>
    public static Finding Held(Finding finding) =>
        finding is { Severity: Severity.Stop, Protects: Protects.Build } && finding.Provenance.IsWeak()
            ? finding with
            {
                Severity = Severity.Caution,
            }
            : finding;
}
