using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Equipping;

/// <summary>
/// Pump, tube and fittings of the misting system. Boxes planted on one bench share a pump as far as the
/// largest pump of the library feeds them; each kit has one of its own. The tube runs from the tank to the
/// pump, to the box, up its back and along its row of nozzles; each nozzle sits on a T, the last is plugged.
/// </summary>
public sealed record MistPlan
{
    private const string Pumps = "mist-pump";

    /// <summary>More than any pump gives: the largest is picked.</summary>
    private static readonly Figure Beyond = Figure.Number(1e9);

    /// <summary>Nozzles of one box.</summary>
    public required Figure NozzlesEach { get; init; }

    /// <summary>Boxes of one system, at the most.</summary>
    public required Figure Sharing { get; init; }

    /// <summary>Systems of all boxes.</summary>
    public required Figure Systems { get; init; }

    /// <summary>Flow of the nozzles of one system, m³/s.</summary>
    public required Figure NozzleFlow { get; init; }

    /// <summary>Flow asked of the pumps of one system, m³/s.</summary>
    public required Figure Need { get; init; }

    /// <summary>The pump; null when the library has none.</summary>
    public EquipmentEntry? Pump { get; init; }

    /// <summary>Pumps of one system; more than one only where the largest does not do.</summary>
    public required Figure PumpsEach { get; init; }

    /// <summary>Tube up the back of a box, m.</summary>
    public required Figure Rise { get; init; }

    /// <summary>Tube from the back edge to the row of nozzles and along it, m.</summary>
    public required Figure Along { get; init; }

    /// <summary>Tube of one system with what bends and cuts take, in whole decimeters, m.</summary>
    public required Figure Tubing { get; init; }

    /// <summary>True where the design tells the length of its hose; else the ways are assumed.</summary>
    public bool IsEntered { get; init; }

    /// <summary>T fittings of all boxes.</summary>
    public required Figure Tees { get; init; }

    /// <summary>Elbows of all boxes.</summary>
    public required Figure Elbows { get; init; }

    /// <summary>Clips of one system.</summary>
    public required Figure ClipsEach { get; init; }

    /// <summary>Water of one system until the tank is filled again, m³; null without times.</summary>
    public Figure? TankNeed { get; init; }

    /// <summary>The tank; null when the library has none.</summary>
    public EquipmentEntry? Tank { get; init; }

    /// <summary>The plan; null without a misting system.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static MistPlan? Of(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Misting is not { } misting)
        {
            return null;
        }

        var nozzles = design.Count("misting.nozzles", "nozzles of a box", misting.Nozzles);
        var boxes = design.Count("boxes", "number of boxes", design.Design.Boxes);
        var flow = (nozzles * MistingDay.Each(design)!).As(
            "flow of the nozzles of a box",
            Unit.MilliliterPerMinute
        );
        var (sharing, systems) = Shared(design, boxes, flow);
        var all = (sharing * flow).As("flow of the nozzles of one pump", Unit.MilliliterPerMinute);
        var need = (EquipmentPolicy.PumpMargin * all).As("flow asked of the pump", Unit.MilliliterPerMinute);
        var pump = EquipmentPick.Smallest(design.Catalog, Pumps, need, e => e.Flow);
        var (rise, along) = Ways(box);
        var tubing = Tube(design, box, sharing, (rise, along));
        var tank = MistingDay.Misted(design) is { Si: > 0 } day
            ? (sharing * day * EquipmentPolicy.TankDays).As(
                "water of a tank until it is filled again",
                Unit.Liter
            )
            : null;
        return new MistPlan
        {
            NozzlesEach = nozzles,
            Sharing = sharing,
            Systems = systems,
            NozzleFlow = all,
            Need = need,
            Pump = pump,
            PumpsEach = pump?.Flow is { } gives
                ? EquipmentPick.Whole("pumps of one system", need, gives)
                : Figure.Choice("pumps of one system", 1, Unit.One, "the library knows no pump"),
            Rise = rise,
            Along = along,
            Tubing = tubing,
            IsEntered = misting.Hose is not null,
            Tees = (boxes * nozzles + boxes - systems).As("T fittings, a nozzle or branch each", Unit.One),
            Elbows = (boxes * EquipmentPolicy.ElbowsEach).As("elbows", Unit.One),
            ClipsEach = EquipmentPick.Whole("clips of the tube", tubing, EquipmentPolicy.ClipSpan),
            TankNeed = tank,
            Tank = EquipmentPick.Smallest(design.Catalog, "mist-tank", tank ?? Figure.Number(0), e =>
                e.Volume
            ),
        };
    }

    private static (Figure Sharing, Figure Systems) Shared(CheckedDesign design, Figure boxes, Figure flow)
    {
        var largest = EquipmentPick.Smallest(design.Catalog, Pumps, Beyond, e => e.Flow);
        if (design.Design.Form == BuildForm.Kit || largest?.Flow is not { } most)
        {
            var one = Figure.Choice("boxes of one pump", 1, Unit.One, "each kit goes to a place of its own");
            return (one, (boxes * one).As("misting systems", Unit.One));
        }

        var fit = Math.Max(1, Math.Floor(most.Si / (EquipmentPolicy.PumpMargin.Si * flow.Si) + 1e-9));
        var systems = Figure
            .Computed(
                "boxes ÷ boxes the largest pump feeds, rounded up",
                Math.Ceiling(boxes.Si / fit - 1e-9),
                Dimension.None,
                boxes,
                most,
                flow,
                EquipmentPolicy.PumpMargin
            )
            .As("misting systems", Unit.One);
        return (EquipmentPick.Whole("boxes of one pump", boxes, systems), systems);
    }

    private static (Figure Rise, Figure Along) Ways(BoxGeometry box) =>
        (
            (box.OutsideHeight ?? box.InsideHeight).As("tube up the back", Unit.Meter),
            (
                box.InsideLength
                + (Figure.Number(1) - EquipmentPolicy.NozzleRow).As("row from the back", Unit.Percent)
                    * box.InsideDepth
            ).As("tube to and along the nozzles", Unit.Meter)
        );

    private static Figure Tube(
        CheckedDesign design,
        BoxGeometry box,
        Figure sharing,
        (Figure Rise, Figure Along) ways
    )
    {
        var next = (box.OutsideLength ?? box.InsideLength) + EquipmentPolicy.Between;
        var bare = design.Design.Misting!.Hose is { } hose
            ? EquipmentPolicy.Suction
                + design.Figure("misting.hose.length", "length of the hose", hose.Length, Unit.Meter)
            : EquipmentPolicy.Suction
                + EquipmentPolicy.Way
                + ways.Rise
                + sharing * ways.Along
                + (sharing - Figure.Number(1)) * next.As("tube from box to box", Unit.Meter);
        var run = bare.As("tube as it runs", Unit.Meter);
        var slack = (run + run * EquipmentPolicy.Slack).As("tube with bends and cuts", Unit.Meter);
        return Figure
            .Computed(
                $"{slack.Name}, up to the next decimeter",
                Math.Ceiling(slack.Si * 10 - 1e-6) / 10,
                slack.Dimension,
                slack
            )
            .As("tube of one misting system", Unit.Meter);
    }
}
