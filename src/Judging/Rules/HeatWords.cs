using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Animals;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

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
