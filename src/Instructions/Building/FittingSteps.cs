using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Buying;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Building;

/// <summary>Lid, vents, misting, lamps and everything that is plugged in.</summary>
internal static class FittingSteps
{
    public static StepGroup? Of(DesignNumbers numbers, MistingPlan? mist)
    {
        var writer = new StepWriter(numbers);
        Shelves(numbers, writer);
        Doors(numbers, writer);
        Lid(numbers, writer);
        for (var i = 0; i < numbers.Design.Design.Vents.Count; i++)
        {
            Vent(numbers, writer, i);
        }

        Passages(numbers, writer);
        Misting(numbers, mist, writer);
        for (var i = 0; i < numbers.Design.Design.Lamps.Count; i++)
        {
            Lamp(numbers, writer, i);
        }

        Electrics(numbers, writer);
        Crew(numbers, writer);
        return writer.Group(
            numbers.Design.Design.Crew.Count > 0 ? "Lid, air, water, light, crew" : "Lid, air, water, light",
            "fittings",
            "lid"
        );
    }

    /// <summary>The crew comes last: nobody works over it any more.</summary>
    private static void Crew(DesignNumbers numbers, StepWriter writer)
    {
        var under = numbers.Layers.Any(l => l.Kind == LayerKind.Litter) ? "under the leaves" : "on the soil";
        foreach (var starter in CrewStarters.Of(numbers))
        {
            var packs = starter.Pack is { } pack
                ? $" ({writer.Whole(starter.CupsPerBox)} × {pack.Name})"
                : "";
            writer.Step(
                starter.Key,
                $"Seed {writer.Whole(starter.CountPerBox)} {starter.Crew.Name}{packs} {under}, a "
                    + "little in each corner.",
                starter.Crew.Note is { } note ? Goods.Degrees(note) : null
            );
        }
    }

    private static void Lid(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Cuts.FirstOrDefault(c => c.Part == "lid") is not { } part)
        {
            return;
        }

        var design = numbers.Design;
        var entry = design.Entry("lid.material");
        var lid = design.Design.Lid!;
        var thick = part.Thickness is { } t ? $", {writer.Millimeters(t)} thick" : "";
        var fit =
            lid.Overlap is { } o
                ? $"{writer.Of(design.Figure("lid.overlap", "overlap", o, Unit.Millimeter))} over the rim "
                    + $"on "
                    + "each side"
            : lid.Gap is { } g
                ? $"{writer.Of(design.Figure("lid.gap", "lid clearance", g, Unit.Millimeter))} clear on "
                    + $"each "
                    + "side"
            : $"{writer.Of(CutList.LidClearance)} clear on each side";
        var share = lid.Share is { } typed
            ? design.Figure("lid.share", "open share", typed, Unit.Percent)
            : null;
        var open =
            share is null ? ""
            : share.Si < 1 ? $" {writer.Of(share)} of it stays open; cover the rest."
            : " All of it stays open.";
        writer.Step(
            "lid",
            $"Lay on the lid of {entry.Name}, {writer.Size(part.Length, part.Width)}{thick}: {fit}.{open}",
            "The lid decides the water: a change of its open share changes everything else."
        );
        if (numbers.Cuts.FirstOrDefault(c => c.Part == "strip") is { } strip)
        {
            writer.Step(
                "lid.strip",
                $"Fit the strip for hoses and cables, {writer.Size(strip.Length, strip.Width)}, at the back. "
                    + "Tape or latch it.",
                "Animals push up a loose strip."
            );
        }
    }

    private static void Doors(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Doors is not { } doors)
        {
            return;
        }

        var (many, what) =
            doors.Count == 1
                ? ("the door pane", "it")
                : ($"{NumberText.Integer(doors.Count)} door panes", "each");
        var mass = doors.Mass is { } m ? $", {what} weighs {writer.Kilograms(m)}" : "";
        var how = doors.Kind switch
        {
            DoorKind.Sliding => "Lift them into the upper track, then let them down into the lower one.",
            DoorKind.Hinged => "Hang them on their hinges; closed, their free side rests on catches.",
            _ => "Let it down into its channels.",
        };
        writer.Step(
            "box.doors",
            $"Fit {many}, {writer.Size(doors.Width, doors.Height)}, {writer.Millimeters(doors.Thickness)} "
                + $"thick{mass}. {how}",
            "Gloves on: a door pane that slips cuts. A glazier decides on hinges, tracks and thickness."
        );
    }

    private static void Shelves(DesignNumbers numbers, StepWriter writer)
    {
        foreach (var shelf in ShelfPanes.Of(numbers.Design, numbers.Box))
        {
            var held = shelf.Held switch
            {
                ShelfHold.Ends => "on its two ends",
                ShelfHold.ThreeEdges => "on its ends and its back edge",
                _ => "on clips at its corners",
            };
            var height = shelf.Height is { } h ? $", its upper face {writer.Depth(h)} over the base" : "";
            writer.Step(
                shelf.Path,
                $"Set in the shelf of {shelf.Sheet.Name}, {writer.Size(shelf.Length, shelf.Depth)}, "
                    + $"{writer.Millimeters(shelf.Thickness)} thick, {held}{height}. It is meant for "
                    + $"{writer.Kilograms(shelf.Load)}, spread evenly.",
                "Clips or silicone under it are not checked: ask a glazier."
            );
        }
    }

    private static void Vent(DesignNumbers numbers, StepWriter writer, int i)
    {
        var design = numbers.Design;
        var vent = design.Design.Vents[i];
        var key = $"vents[{NumberText.Integer(i)}]";
        var mesh = design.Find<MeshEntry>($"{key}.mesh");
        var size = vent switch
        {
            { Length: { } l, Width: { } w } => writer.Size(
                design.Figure($"{key}.length", "vent length", l, Unit.Millimeter),
                design.Figure($"{key}.width", "vent width", w, Unit.Millimeter)
            ),
            { Area: { } a } => writer.Of(design.Figure($"{key}.area", "vent area", a, Unit.SquareCentimeter)),
            _ => "as drawn",
        };
        var side = vent.Side is { } s ? $" in the {s.ToString().ToLowerInvariant()}" : "";
        var height = vent is { Height: { } h, Side: not Side.Top }
            ? $", its middle "
                + $"{writer.Depth(design.Figure($"{key}.height", "vent height", h, Unit.Centimeter))}"
                + " over the base"
            : "";
        var over = mesh is null
            ? "Leave no free edge."
            : $"Cover it with {mesh.Name}{Aperture(writer, mesh)}{Wire(mesh)}.";
        writer.Step(key, $"Vent{side}, {size}{height}. {over}");
    }

    private static string Wire(MeshEntry mesh) => mesh.Metal?.Text == "yes" ? "; no wire ends inside" : "";

    /// <summary>" (holes 0.5 mm)", unless the name already says so.</summary>
    private static string Aperture(StepWriter writer, MeshEntry mesh)
    {
        if (mesh.Aperture is not { } aperture)
        {
            return "";
        }

        writer.Of(aperture);
        var millimeters = Math.Round(aperture.Si * 1000, 3);
        var size = $"{millimeters.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture)} mm";
        return mesh.Name.Contains(size, StringComparison.Ordinal) ? "" : $" (holes {size})";
    }

    private static void Passages(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        for (var i = 0; i < design.Design.Passages.Count; i++)
        {
            var passage = design.Design.Passages[i];
            var key = $"passages[{NumberText.Integer(i)}]";
            var hole = design.Figure($"{key}.hole", "width of the hole", passage.Hole, Unit.Millimeter);
            writer.Step(
                key,
                $"Lead {passage.For} through its {writer.Of(hole)} hole in the "
                    + $"{passage.In.ToString().ToLowerInvariant()} and close the gap with a grommet, sponge "
                    + $"or "
                    + "silicone.",
                $"Flies and small animals can leave by a gap of {writer.Of(Gaps.Froglet)}."
            );
        }
    }

    private static void Misting(DesignNumbers numbers, MistingPlan? mist, StepWriter writer)
    {
        var design = numbers.Design;
        if (design.Design.Misting is not { } misting)
        {
            return;
        }

        writer.Step(
            "misting",
            $"Fit {NumberText.Count(misting.Nozzles, "nozzle", "nozzles")}, aimed at leaves and not at the "
                + "front pane. Run each into a cup for one minute: "
                + $"{writer.Of(MistingDay.Each(design)!)} was entered. Enter what you measure.",
            "Every water forecast hangs on this number."
        );
        if (misting.Times.Count == 0)
        {
            writer.Step(
                "misting.times",
                "No misting times are entered: enter them and print this card again."
            );
            return;
        }

        foreach (var burst in mist!.Bursts)
        {
            writer.Of(burst.Entered);
        }

        writer.Milliliters(mist.Entered);
        writer.Step(
            "misting.times",
            $"Set the timer: {mist.Times}. Together {mist.PerDay}. Use water low in minerals.",
            "Hard water spots the glass and clogs nozzles."
        );
    }

    private static void Lamp(DesignNumbers numbers, StepWriter writer, int i)
    {
        var design = numbers.Design;
        var lamp = design.Design.Lamps[i];
        var key = $"lamps[{NumberText.Integer(i)}]";
        var entry = design.Entry<LampEntry>($"{key}.lamp");
        var over = design.Design.Lid is null ? "above the box" : "above the lid";
        var above = lamp.Above is { } a
            ? $" {writer.Depth(design.Figure($"{key}.above", "height above the lid", a, Unit.Centimeter))} "
                + over
            : $" {over}";
        var hours = LampHours.Of(design, i) is { } h
            ? $" On {NumberText.Clock(lamp.On!.Value)}, off {NumberText.Clock(lamp.Off!.Value)}: "
                + $"{writer.Of(h)} a day."
            : " Put it on a timer.";
        writer.Step(
            key,
            $"Fix {entry.Name}{above}, so that it cannot fall.{hours}",
            design.Find("lid.material") is SheetEntry
                ? "A lamp that lies on the lid can crack it and heats the air below."
                : null
        );
    }

    private static void Electrics(DesignNumbers numbers, StepWriter writer)
    {
        var list = ElectricalList.Of(numbers);
        if (!list.Any)
        {
            return;
        }

        var items = list.Items.Select(i =>
            i.WattsEach is not { } w ? $"{i.Name} (watts on its plate)"
            : i.Name.EndsWith(NumberText.Of(w), StringComparison.Ordinal) ? i.Name
            : $"{i.Name} {writer.Of(w)}"
        );
        var total = list.TotalWatts is { } sum ? $" Known total: {writer.Of(sum)}." : "";
        writer.Cite(
            (
                TripLimits.IsUnitedStates(numbers.Design.Design) ? TripLimits.UnitedStates : TripLimits.Europe
            ).Origin
        );
        writer.Step(
            "electrics",
            $"Plugged in: {string.Join("; ", items)}.{total}",
            null,
            [.. ElectricalList.Protection(numbers.Design.Design)]
        );
    }
}
