using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Views;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>The way of the water and of the plugs, as two sketches.</summary>
internal static class EquipmentPaper
{
    /// <summary>One side; nothing for a box without water fittings and plugs.</summary>
    public static IEnumerable<PaperFile> Write(PaperJob job)
    {
        var plumbing = PlumbingView.Draw(job.Numbers);
        var wiring = WiringView.Draw(job.Numbers);
        if (plumbing is null && wiring is null)
        {
            yield break;
        }

        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Equipment"), _ => Blocks(job, plumbing, wiring));
        yield return job.Pdf("12-equipment.pdf", "Equipment", sides);
    }

    private static List<Block> Blocks(PaperJob job, Drawing? plumbing, Drawing? wiring)
    {
        var blocks = new List<Block>();
        if (plumbing is not null)
        {
            blocks.Add(new Heading("Water, a sketch not to scale") { KeepsWithNext = true });
            blocks.Add(new Sketched(plumbing));
            if (job.Boxes > 1)
            {
                blocks.Add(
                    new Words($"Drawn for one box of {NumberText.Integer(job.Boxes)}.") { Tone = Tone.Quiet }
                );
            }
        }

        if (wiring is not null)
        {
            blocks.Add(new Heading("Plugs, a sketch") { KeepsWithNext = true });
            blocks.Add(new Sketched(wiring));
            foreach (var line in ElectricalList.Protection(job.Numbers.Design.Design))
            {
                blocks.Add(new Words(line) { Sign = Sign.Caution });
            }
        }

        blocks.Add(
            new Words(
                "Sizes, flows and watts of pumps, tubes and devices are from memory, source not checked: "
                    + "what stands on the part you buy comes first."
                    + (job.Told.IsRunning ? "" : " How many to buy stands in the shopping list.")
            )
            {
                Tone = Tone.Quiet,
            }
        );
        return blocks;
    }

    private sealed class Sketched(Drawing drawing) : Block
    {
        private const double Above = 2;

        public override double Height(double width, Style style) => Above + drawing.Height + style.Gap(1);

        public override void Draw(Sketch sketch, Spot at, double width, Style style) =>
            sketch.Place(drawing, at.Moved(0, Above));
    }
}
