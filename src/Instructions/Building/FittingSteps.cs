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
using Litterfall.Quantities.Openings;
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
        Ledges(numbers, writer);
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
            : $"{writer.Of(OpeningPolicy.LidClearance)} clear on each side";
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
            "The lid controls how fast the tank dries: changing its open share changes everything else."
        );
        OtherParts(numbers, writer);
    }

    private static void Ledges(DesignNumbers numbers, StepWriter writer)
    {
        var ledges = numbers.Cuts.Where(c => c.Part.StartsWith("ledge", StringComparison.Ordinal)).ToList();
        if (ledges.Count == 0)
        {
            return;
        }

        var below = numbers.Cuts.FirstOrDefault(c => c.Part == "lid")?.Thickness is { } thick
            ? $"{writer.Millimeters(thick)} below the upper edge"
            : "one thickness of the lid below the upper edge";
        var assumed = numbers.Design.Design.Lid!.Rests is null
            ? " The design names no support: assumed."
            : "";
        writer.Step(
            "lid.rests",
            $"Glue the ledges to the walls, {below} and level: "
                + $"{string.Join("; ", ledges.Select(l => $"{writer.Size(l.Length, l.Width)}, {Under(l)}"))}."
                + assumed,
            "The lid lies on them and on nothing else."
        );
    }

    private static string Under(CutPart ledge) =>
        ledge.Part == "ledge-side" ? "left and right" : "front and back";

    /// <summary>Further panes and strips.</summary>
    private static void OtherParts(DesignNumbers numbers, StepWriter writer)
    {
        foreach (var part in numbers.Cuts.Where(c => c.Key == "lid" && c.Part is not "lid"))
        {
            writer.Step(
                "lid",
                part.Part == "lid-front"
                    ? $"Hang the front of the lid, {writer.Size(part.Length, part.Width)}, on its hinges."
                    : $"Lay on the next pane of the lid, {writer.Size(part.Length, part.Width)}."
            );
        }

        foreach (
            var part in numbers.Cuts.Where(c => c.Part.StartsWith("vent-strip", StringComparison.Ordinal))
        )
        {
            writer.Step(
                part.Key,
                $"Lay in the strip with the mesh, {writer.Size(part.Length, part.Width)}, its edge against "
                    + "the pane. Tape or clip it so that nothing lifts it.",
                "Animals push up a loose strip."
            );
        }

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

        Tracks(numbers, writer, doors);
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

    /// <summary>What the doors run in, hang on and close with.</summary>
    private static void Tracks(DesignNumbers numbers, StepWriter writer, DoorPanes doors)
    {
        var goods = ClosureGoods
            .Of(numbers.Design, numbers.Box, doors)
            .Where(g => g.Where.StartsWith("box.doors", StringComparison.Ordinal))
            .ToList();
        var lengths = goods
            .Where(g => g.Length is not null)
            .Select(g => $"{g.Item}, {writer.Millimeters(g.Length!)}");
        var pieces = goods
            .Where(g => g.Count is not null)
            .Select(g => $"{NumberText.Whole(g.Count!)} × {g.Item}");
        writer.Step(
            "box.doors",
            $"Fix what carries and closes the doors: {string.Join("; ", lengths.Concat(pieces))}. Check that "
                + "the opening is "
                + $"{writer.Millimeters(doors.OpeningHeight)} high at both ends.",
            "A track that is not level jams."
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
        var shape = VentShape.Of(design, numbers.Box)[i];
        var key = shape.Path;
        var mesh = shape.Mesh;
        var size = vent.Diameter is null
            ? writer.Size(shape.Length, shape.Width)
            : $"{writer.Millimeters(shape.Length)} across";
        var side = shape.Side == Side.Top ? " in the lid" : $" in the {DrillSteps.Word(shape.Side)}";
        var height = shape is { Side: not Side.Top, Across: { } across }
            ? $", its middle {writer.Depth(across)} over the base"
            : "";
        var placed = shape.IsPlaced ? " (placed by the program)" : "";
        var over = mesh is null
            ? "Leave no free edge."
            : $"Cover it with {mesh.Name}{Aperture(writer, mesh)}{Wire(mesh)}.";
        writer.Step(key, $"Vent{side}, {size}{height}{placed}. {over}");
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

        foreach (var item in list.Items)
        {
            if (item.WattsEach is { } watts)
            {
                writer.Of(watts);
            }
        }

        var items = list.Items.Select(i =>
            i.WattsEach is { } w && i.Name.EndsWith(NumberText.Of(w), StringComparison.Ordinal)
                ? i.Name
                : $"{i.Name} ({i.Power})"
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
