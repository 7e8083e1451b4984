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

/// <summary>
/// All rules, by name, in the order they are shown: what kills comes first, what only needs writing down
/// last.
/// </summary>
public static class RuleBook
{
    /// <summary>The rules.</summary>
    public static readonly ImmutableArray<Rule> All =
    [
        // Heat and cold.
        Overheats.Rule,
        RoomTooHot.Rule,
        BoxTooWarm.Rule,
        LittleHeatMargin.Rule,
        RoomTooCold.Rule,
        BoxTooCold.Rule,
        DayAndNight.ByDay,
        DayAndNight.ByNight,
        HeatMatTooStrong.Rule,
        HeatMatCoversTooMuch.Rule,
        HeatWithoutThermostat.Rule,
        // Escape, drowning and crushing.
        DoorGap.Rule,
        LidStripOpen.Rule,
        PublicBoxOpens.Rule,
        BarrierTooSmall.Rule,
        BasinNoWayOut.Rule,
        PassageGap.Rule,
        VentLetsFliesOut.Rule,
        StoneOnSoil.Rule,
        // Electricity and glass.
        NoTripDevice.Rule,
        NoDripLoop.Rule,
        LampOverMesh.Rule,
        LampRestsOnLid.Rule,
        GlassTooThin.Rule,
        LidRests.Unsupported,
        HoleNearEdge.Joint,
        HoleNearEdge.Rule,
        LidSags.Rule,
        DoorTooHeavy.Rule,
        DoorTooHeavy.Unknown,
        DoorGives.Rule,
        ShelfSags.Rule,
        GlassNotForWater.Rule,
        GlassBelowTable.Rule,
        ToughenedDrilled.Rule,
        PlasticLidSags.Rule,
        LidFit.Rule,
        VentDoesNotFit.Rule,
        PieceThroughWall.Rule,
        LidRests.Assumed,
        NoWayForHose.Rule,
        ShelfOverloaded.Rule,
        StandRatingMissing.Rule,
        TwoPersonLift.Rule,
        FoamEnclosed.Rule,
        FoamPourTooThick.Rule,
        NothingLeftInside.Rule,
        // Animals together, their health and needs.
        MixedSpecies.Rule,
        GroupRuleBroken.Rule,
        StockingEveryRuleBroken.Rule,
        StockingRuleBroken.Rule,
        SexesUnknown.Rule,
        MixedLines.Rule,
        PathogenPositive.Rule,
        QuarantineShort.Rule,
        AnimalsTooEarly.Rule,
        NeedsWaterArea.Rule,
        TooFewWaterCups.Rule,
        SoilTooShallow.Rule,
        NoCover.Rule,
        NoShadeRefuge.Rule,
        UltravioletBehindGlass.Rule,
        SpinyPlant.Rule,
        ToxicPlantInReach.Rule,
        ToxicPlantForAnimals.Rule,
        ToxicAnimal.Rule,
        Zoonosis.Rule,
        LeftUnattended.Rule,
        RawWood.Rule,
        RawLeaves.Rule,
        MetalUnderSoil.Rule,
        PlantQuarantineShort.Rule,
        DipTooWeak.Rule,
        BleachLabelOdd.Rule,
        BleachInUse.Rule,
        Dust.Rule,
        SphagnumGloves.Rule,
        // Too wet or too dry.
        OpenWaterBalance.Rule,
        WaterAtBarrier.Rule,
        LayersTooHigh.Rule,
        SoilAboveSill.Rule,
        LayersAboveVent.Rule,
        DrainAboveBarrier.Rule,
        NoDrain.Rule,
        DrainInterval.Rule,
        HoseNotFilled.Rule,
        MistStays.Rule,
        VentedMoreThanMisted.Rule,
        AirTooDry.Rule,
        AirTooDamp.Rule,
        StaleAir.Rule,
        NoFreshAir.Rule,
        LidTooOpen.Rule,
        TopVentsOnly.Rule,
        PanesFog.Rule,
        LeavesNeverDry.Rule,
        SoilWithoutAir.Rule,
        SoilTooDryForCrew.Rule,
        LitterCrust.Rule,
        MixTooWet.Rule,
        FloatingAggregate.Rule,
        NoBarrier.Rule,
        BarrierTooOpen.Rule,
        BarrierTooFine.Rule,
        DrainageTooThin.Rule,
        SoilTooThin.Rule,
        SoilTooSteep.Rule,
        VentMeshTooFine.Rule,
        PassageTooSmall.Rule,
        TapWater.Rule,
        Limestone.Rule,
        NoLevelCheck.Rule,
        // Crew.
        NoCrew.Rule,
        CrewTooFew.Rule,
        CrewTooWarm.Rule,
        CrewTooCool.Rule,
        CrewWithoutLitter.Rule,
        CrewEatenUp.Rule,
        NibblingIsopods.Rule,
        LitterTooThin.Rule,
        LitterCoversPart.Rule,
        LitterRunsLow.Rule,
        NitrogenLoad.Rule,
        DroppingsStay.Rule,
        // Plants.
        PlantBelowCompensation.Rule,
        PlantTooDark.Rule,
        PlantTooBright.Rule,
        MossTooBright.Rule,
        WrongPlace.Rule,
        NothingToMountOn.Rule,
        WetRoots.Rule,
        DryRoots.Rule,
        Crowded.Rule,
        OutsideBox.Rule,
        OutgrowsBox.Rule,
        DipBurns.Rule,
        LampHoursOdd.Rule,
        // Papers and notes.
        PapersMissing.Rule,
        PlantPapersMissing.Rule,
        WildCaught.Rule,
        WildMoss.Rule,
        NominalSize.Rule,
        RoomLogOdd.Rule,
        LampFileOdd.Rule,
        LightReadingFar.Rule,
        EntriesContradict.Rule,
        BasinAssumed.Rule,
        PriceMissing.Rule,
        Acceptances.Refused,
        Acceptances.Unknown,
        Acceptances.Idle,
    ];

    /// <summary>
    /// Judges a design: stops first, then by what is at stake. A stop that rests on a recalled value or on
    /// common practice is lowered to a caution unless it protects an animal or a person.
    /// </summary>
    /// <param name="numbers">Numbers of the design.</param>
    /// <param name="cancel">Cancels between rules.</param>
    public static ImmutableArray<Finding> Judge(DesignNumbers numbers, CancellationToken cancel = default) =>
        [
            .. Acceptances
                .Mark(
                    All.SelectMany(rule =>
                    {
                        cancel.ThrowIfCancellationRequested();
                        return Judge(numbers, rule);
                    }),
                    numbers.Design.Design
                )
                .OrderBy(f => !f.IsOpen)
                .ThenByDescending(f => f.Severity),
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

    /// <summary>What a rule is called on screens and papers: "Crew eaten up".</summary>
    /// <param name="slug">Name of the rule.</param>
    public static string Title(string slug)
    {
        var words = Words(slug);
        return words.Length == 0 ? "" : $"{char.ToUpperInvariant(words[0])}{words[1..]}";
    }

    /// <summary>The name of a rule as words: "crew eaten up".</summary>
    /// <param name="slug">Name of the rule.</param>
    public static string Words(string slug) =>
        slug.Replace('-', ' ').Replace("uvb", "UV-B", StringComparison.Ordinal);

    /// <summary>
    /// Changes that may answer a finding, the best first, where its rule has any that change the design and
    /// still read. None is checked yet.
    /// </summary>
    /// <param name="finding">The finding.</param>
    /// <param name="design">The design it was found in.</param>
    public static IEnumerable<DesignFix> Fixes(Finding finding, CheckedDesign design) =>
        Find(finding.Slug) is { } rule
            ? (rule.Fixes?.Invoke(finding, design) ?? [])
                .Prepend(rule.Fix?.Invoke(finding, design))
                .OfType<DesignFix>()
                .Where(fix =>
                    fix.Document.Text != design.Document.Text
                    && DesignChecker.Check(fix.Document, design.Catalog, design.Files).IsGood
                )
            : [];

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
