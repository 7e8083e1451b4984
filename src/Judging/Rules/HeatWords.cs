using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Climate;

namespace Litterfall.Judging.Rules;

/// <summary>What the rules on warmth say in common.</summary>
internal static class HeatWords
{
    /// <summary>Lamps are not in the room's own figures, nor is what holds the air of the box.</summary>
    /// <param name="day">The day.</param>
    /// <param name="design">The design.</param>
    public static string Lamps(RoomHours day, CheckedDesign design) =>
        day.IsHeld ? ""
        : design.Design.Headspace is not null
            ? " The design holds the air of the box, but the room it stands in is this warm: only cooling "
                + "keeps a box cooler than its room, and it fails with the power."
        : " These are the room's own figures: lamps make the box warmer than its room, so look at the "
            + "climate in the box as well.";

    /// <summary>The key that says how warm it is on such a day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="design">The design.</param>
    public static string Where(RoomHours day, CheckedDesign design) =>
        day.IsHeld ? "headspace.hold.air" : Controls.Room(design.Design, day.Name);
}
