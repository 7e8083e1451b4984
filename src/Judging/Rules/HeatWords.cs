using System.Globalization;
using Litterfall.Forecasting.Climate;

namespace Litterfall.Judging.Rules;

/// <summary>What the rules on warmth say in common.</summary>
internal static class HeatWords
{
    /// <summary>Lamps are not in the room's own figures.</summary>
    public static string Lamps(RoomHours day) =>
        day.IsHeld
            ? ""
            : " These are the room's own figures: lamps make the box warmer than its room, so look at the "
                + "climate in the box as well.";

    public static string Where(RoomHours day) => day.IsHeld ? "headspace.hold.air" : Room;

    /// <summary>Where the design says how warm the room is.</summary>
    public const string Room = "room";
}
