using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Instructions.Parts;

/// <summary>Hours a lamp burns a day.</summary>
public static class LampHours
{
    /// <summary>From its switching times, over midnight where off is before on; null when not
    /// entered.</summary>
    public static Figure? Of(CheckedDesign design, int lamp)
    {
        if (design.Design.Lamps[lamp] is not { On: { } on, Off: { } off })
        {
            return null;
        }

        var path = string.Create(CultureInfo.InvariantCulture, $"lamps[{lamp}]");
        var origin = new Citation("design", $"{path}.on and off", Provenance.Entered);
        var start = Figure.Given("lamp goes on", on.ToTimeSpan().TotalSeconds, Unit.Hour, origin);
        var end = Figure.Given("lamp goes off", off.ToTimeSpan().TotalSeconds, Unit.Hour, origin);
        var over = Figure.Number(off > on ? 0 : 86400);
        return Figure
            .Computed(
                off > on ? "lamp goes off − lamp goes on" : "24 h − lamp goes on + lamp goes off",
                end.Si - start.Si + over.Si,
                Unit.Hour.Dimension,
                start,
                end
            )
            .As("lamp hours a day", Unit.Hour);
    }
}
