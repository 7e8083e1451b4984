using System.Collections.Immutable;
using Litterfall.Running.Diagnosis.Matrix;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>What to do against each cause, in words; common practice, no source.</summary>
internal static class FixTexts
{
    internal const string Frogs =
        "Move the frogs to a damp holding tub until the floor no longer smells; one set of tools "
        + "for each tank.";

    /// <summary>Changes that need no sum, and what else to know.</summary>
    public static (ImmutableArray<string> Changes, string Text) Find(Cause cause) =>
        Known.GetValueOrDefault(cause, Unknown);

    private static readonly (ImmutableArray<string> Changes, string Text) Unknown = (
        ["Do the next check, then look again"],
        "Nothing that is known here explains it well."
    );

    private const string Wet =
        $"{Frogs} Soil above the barrier goes on draining for days: siphon again when the level is back. "
        + "Replace the top of the soil, or rebuild, if it still smells after two weeks. Put springtails "
        + "back in when a squeezed fist gives only a few drops.";

    private static readonly Dictionary<Cause, (ImmutableArray<string> Changes, string Text)> Known = new()
    {
        [Cause.OverMisting] = ([], Wet),
        [Cause.VentsShut] = ([], Wet),
        [Cause.NotDrained] = (
            [],
            $"{Frogs} Mark the highest level on the dip tube, one centimeter below the barrier."
        ),
        [Cause.ThinDrainage] = (
            ["Rebuild with 4 to 5 cm of drainage, or give it an outlet below the barrier"],
            "Until then mist less and siphon often. " + Frogs
        ),
        [Cause.WaterComesIn] = (
            ["Stop the stream or basin and find where it runs over, or where the hose drips"],
            "Unplug the pump before reaching into the water. Seal edges of a stream 2 cm above its water."
        ),
        [Cause.TankLeaks] = (
            ["Empty the water, dry the seam, and seal it anew or have the glass shop do it"],
            "Never move a planted tank. Silicone cures a day for each few millimeters; animals go back when "
                + "the smell of vinegar is gone. Keep plugs and power strips out of the wet."
        ),
        [Cause.FineMix] = (
            ["Replace the soil, or at least its top 4 cm, by a mix of coarse bark and charcoal"],
            $"{Frogs} Wet old soil dries slowly: a few coarse plugs down to the barrier help until then."
        ),
        [Cause.DeadAnimal] = (
            ["Take it out with gloves, with the litter around it"],
            "Chill a dead frog, do not freeze it, and ask a vet within a day; keep its tank-mates apart from "
                + "other tanks until the cause is known."
        ),
        [Cause.Overfed] = (
            ["Take out what is moldy and feed only what is gone by the next feeding"],
            "A small pinch once a week is enough for the crew of a running tank."
        ),
        [Cause.ColdGlass] = (
            ["Warm the room at night, keep the tank off outer walls, or move air past the front pane"],
            "Fog on a cool evening harms nobody. A low front vent clears the pane; it also dries "
                + "the tank, so "
                + "watch the humidity."
        ),
        [Cause.DryAir] = ([], "Cover part of the top or close a vent before misting more."),
        [Cause.MistFails] = (
            ["Clean or replace nozzle and filter, check pump, hose and timer, then measure a cup"],
            "Mist by hand until it runs. Pull the plug before opening the pump."
        ),
        [Cause.LampTooStrong] = (
            ["Raise the lamp, dim it, or shade the burnt plants"],
            "Raise it in two steps a week apart; plants used to low light burn again. Let the lamp "
                + "cool before touching it."
        ),
        [Cause.LowLight] = (
            ["Clean the lid, then a fresh or stronger lamp, or an hour or two more of it"],
            "Ten to fourteen hours a day are the limits; raise light in steps."
        ),
        [Cause.RosetteInSoil] = (
            ["Cut the rot away and mount the bromeliad on wood, its foot free"],
            "Young shoots at its base can often be saved."
        ),
        [Cause.DipBurn] = (
            ["Cut off burnt leaves; next time a weaker or shorter dip and a long rinse"],
            "Soft leaves and ferns can't stand bleach. Wear gloves and goggles; never mix bleach "
                + "with anything."
        ),
        [Cause.NewPlants] = (
            ["Leave them: light and air as planned, no more water"],
            "Losing leaves in the first three to six weeks is usual. Take rotten leaves out."
        ),
        [Cause.HardWater] = (
            ["Mist with rain or purified water; wipe panes with a cloth and a little vinegar from outside"],
            "Keep vinegar and cleaners out of the tank."
        ),
        [Cause.NewWood] = (
            ["Leave it; add springtails if there are none"],
            "It goes within weeks. Wear a mask when brushing mold off dry wood."
        ),
        [Cause.NoCrew] = (
            ["Put in a culture of springtails, and leaf litter for it"],
            "It takes weeks to build up."
        ),
        [Cause.StillAir] = (
            ["Open a low vent and a high one, or let a small fan move the air for some minutes an hour"],
            "Watch the humidity for two days after it."
        ),
        [Cause.TooHot] = (
            ["Lamp off by noon, the room cooler, the tank lower in the rack and out of the sun"],
            "Frogs in danger: move them to a cool room now, in a damp tub. No ice in the tank."
        ),
        [Cause.TooCold] = (
            ["Warm the room; a heat mat on the back with a thermostat if need be"],
            "Warm cold frogs slowly. A mat always runs on a thermostat."
        ),
        [Cause.CrewDried] = (
            ["Wet the litter and keep one corner damp; start again from a fresh culture"],
            "Springtails dry out within hours at low humidity."
        ),
        [Cause.Mites] = (
            ["Throw the whole culture away and start from a clean one kept apart"],
            "Wash hands and tools before touching other cultures."
        ),
        [Cause.CrewEaten] = (
            ["Add a fresh culture and a pile of litter too deep for frogs; do it again every half year"],
            "It is no fault: they are food. Feed the frogs flies enough."
        ),
        [Cause.NoCover] = (
            ["Cover the whole floor with leaves, with a hiding place for each frog and two more"],
            "Bold kinds come out once they can hide."
        ),
        [Cause.Bullying] = (
            ["Take the one that chases, or the one that is chased, out today"],
            "Do not put it back into the same group without thinking sexes and space over."
        ),
        [Cause.NewAnimals] = (
            ["Leave them alone for two to four weeks; feed little and often"],
            "Weigh them or count droppings if you worry; do not dig for them."
        ),
        [Cause.OpenMesh] = (
            ["Glue steel gauze of 0.5 mm over the vent"],
            "Gnats also breed in the soil: a yellow sticky card shows it."
        ),
        [Cause.DoorGap] = (
            ["Close the gap with a thin brush or a clear strip"],
            "Mind fingers and toes of frogs at sliding doors."
        ),
        [Cause.BarrierGap] = (
            ["Look for frogs below today; then close the gap with mesh and silicone"],
            "Frogs below the barrier die there. Lift layers by hand, never with a tool."
        ),
        [Cause.Illness] = (
            ["Weigh the animals, keep them apart, and ask a vet who treats amphibians"],
            "A program cannot tell an illness. Chill a dead frog, do not freeze it."
        ),
    };
}
