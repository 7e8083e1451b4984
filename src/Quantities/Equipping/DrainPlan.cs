using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Equipping;

/// <summary>Fitting, hose and tube that take water out of one box.</summary>
public sealed record DrainPlan
{
    /// <summary>The kind of drain.</summary>
    public required DrainKind Kind { get; init; }

    /// <summary>The hole, m; null for a siphon.</summary>
    public Figure? Hole { get; init; }

    /// <summary>The fitting for the hole; null for a siphon, and where the library has none for it.</summary>
    public EquipmentEntry? Fitting { get; init; }

    /// <summary>The hose for its tail; null for a siphon, and where the library has none.</summary>
    public EquipmentEntry? Hose { get; init; }

    /// <summary>The hose from outlet, or from the base over the rim, to the bottle, m.</summary>
    public required Figure HoseLength { get; init; }

    /// <summary>Standing tube up to the outlet, m; null for other kinds.</summary>
    public Figure? Standing { get; init; }

    /// <summary>The plan; null without a drain.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static DrainPlan? Of(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Drain is not { } drain)
        {
            return null;
        }

        if (drain.Kind == DrainKind.Siphon)
        {
            return new DrainPlan
            {
                Kind = drain.Kind,
                HoseLength = (box.InsideHeight + EquipmentPolicy.HoseWay).As("siphon hose", Unit.Meter),
            };
        }

        var hole = drain.Diameter is { } typed
            ? design.Figure("drain.diameter", "hole of the outlet", typed, Unit.Millimeter)
            : EquipmentPolicy.UsualHole;
        var fitting = EquipmentPick.Largest(design.Catalog, "bulkhead", hole, e => e.Hole);
        if (fitting?.Hole is { } its && hole.Si - its.Si > EquipmentPolicy.HolePlay.Si + 1e-9)
        {
            fitting = null;
        }

        return new DrainPlan
        {
            Kind = drain.Kind,
            Hole = hole,
            Fitting = fitting,
            Hose = fitting?.Inner is { } tail
                ? EquipmentPick.Nearest(design.Catalog, ["drain-hose"], tail, e => e.Inner)
                : null,
            HoseLength = EquipmentPolicy.HoseWay,
            Standing = drain is { Kind: DrainKind.Standpipe, Height: { } height }
                ? design.Figure("drain.height", "height of the standpipe", height, Unit.Millimeter)
                : null,
        };
    }
}
