using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Equipping;

/// <summary>Feet of a raised floor: at both edges and no farther apart than their span.</summary>
/// <param name="Count">Feet of one box.</param>
/// <param name="Height">Height of each, m.</param>
public sealed record RaisedFeet(Figure Count, Figure Height)
{
    /// <summary>The feet; null without a raised floor.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static RaisedFeet? Of(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Floor.Drainage?.Raised is not { } raised)
        {
            return null;
        }

        var count = Row("feet along the front", box.OpenLength) * Row("feet front to back", box.OpenDepth);
        return new RaisedFeet(
            count.As("feet of the raised floor", Unit.One),
            design.Figure("floor.drainage.raised", "height of the raised floor", raised, Unit.Millimeter)
        );
    }

    private static Figure Row(string name, Figure edge) =>
        (EquipmentPick.Whole("spans", edge, EquipmentPolicy.FeetSpan) + Figure.Number(1)).As(name, Unit.One);
}
