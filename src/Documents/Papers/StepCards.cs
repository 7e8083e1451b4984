using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Views;
using Litterfall.Instructions.Building;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Documents.Papers;

/// <summary>
/// Step cards: one side for each group of steps, with the build as far as that group in section, to be read
/// at arm's length and ticked with a pencil.
/// </summary>
internal sealed class StepCards
{
    private const double PictureHeight = 104;
    private readonly PaperJob job;
    private readonly StepGroup group;
    private readonly int number;

    private StepCards(PaperJob job, StepGroup group, int number)
    {
        this.job = job;
        this.group = group;
        this.number = number;
    }

    public static PaperFile Write(PaperJob job) =>
        job.Pdf(
            "02-step-cards.pdf",
            "Step cards",
            job.Steps.SelectMany((group, i) => new StepCards(job, group, i + 1).Sides())
        );

    private IReadOnlyList<Drawing> Sides() =>
        PageFrame.Sides(
            job.Wish.Size,
            job.Head(group.Title, FormattableString.Invariant($"Step card {number} of {job.Steps.Length}")),
            Blocks,
            Rooms,
            Style.LargeToTight
        );

    private Room Inside => PageFrame.Inside(job.Wish.Size);

    private bool HasPicture => group.Key is not ("clean" or "pack" or "weeks");

    private Drawing? Picture(Style style) =>
        HasPicture
            ? job.Views.Section((Inside.Width * 0.64, PictureHeight * (0.55 + 0.45 * style.Air)), Shown)
            : null;

    /// <summary>The build as far as this group.</summary>
    private Parts Shown =>
        group.Key switch
        {
            "glue" or "stand" => Parts.Box,
            "box" => Parts.Background,
            "drainage" => Parts.Background | Parts.Drainage,
            "soil" => Parts.Background | Parts.Drainage | Parts.Soil,
            "plants" => Parts.Background | Parts.Drainage | Parts.Soil | Parts.Life,
            _ => Parts.All,
        };

    private IReadOnlyList<Room> Rooms(Style style)
    {
        var used = Picture(style) is { } picture ? picture.Height + 5 : 0;
        return [Inside with { Y = Inside.Y + used, Height = Inside.Height - used }];
    }

    private IReadOnlyList<Block> Blocks(Style style, Sketch? sketch)
    {
        if (sketch is not null && Picture(style) is { } picture)
        {
            sketch.Place(picture, new(Inside.X, Inside.Y));
            var caption = $"Section, {ViewScale.Words(picture.Scale)}";
            sketch.Text(new(Inside.X, Inside.Y + picture.Height + 3), caption, 9, Align.Start, Tone.Quiet);
            Dimensions.ScaleBar(
                sketch,
                new(Inside.X + Lettering.Width(caption, 9) + 4, Inside.Y + picture.Height + 1.4),
                picture.Scale,
                job.IsUs
            );
            var left = Inside.X + picture.Width + 4;
            Flow.Set(
                Beside(),
                [new Room(left, Inside.Y, Inside.X + Inside.Width - left, picture.Height + 2)],
                new Style(9, 0.6) { IsUs = style.IsUs },
                sketch
            );
        }

        return [.. Zones(), .. group.Steps.SelectMany(Step)];
    }

    /// <summary>Steps of the soil from above, with their edges and depths, on the card that pours them.
    /// </summary>
    private IEnumerable<Block> Zones() =>
        group.Key == "soil" && ZoneView.Of(job.Numbers, job.IsUs, (Inside.Width, 46)) is { } zones
            ? [.. Pictures.Grid([("Steps of the soil from above", zones)], 1), new Air(1.5)]
            : [];

    /// <summary>Depths at the corners beside the picture, for the groups that pour.</summary>
    private List<Block> Beside()
    {
        var layers = group.Key switch
        {
            "drainage" => job.Corners.Where(c => c.Kind == LayerKind.Drainage),
            "soil" => job.Corners.Where(c => c.Kind == LayerKind.Soil),
            "plants" => job.Corners.Where(c => c.Kind is LayerKind.Moss or LayerKind.Litter),
            _ => [],
        };
        var blocks = new List<Block>();
        foreach (var layer in layers)
        {
            var table = Table.Of(
                $"{layer.Layer} at the corners",
                (0.36, "", false),
                (0.32, "left", true),
                (0.32, "right", true)
            );
            table.Row("floor", "back", Depth(layer.Depth.BackLeft.Si), Depth(layer.Depth.BackRight.Si));
            table.Row("floor", "front", Depth(layer.Depth.FrontLeft.Si), Depth(layer.Depth.FrontRight.Si));
            if (layer.Poured is { } poured)
            {
                table.Row("floor", "pour back", Depth(poured.BackLeft.Si), Depth(poured.BackRight.Si));
                table.Row("floor", "pour front", Depth(poured.FrontLeft.Si), Depth(poured.FrontRight.Si));
            }

            table.Row("floor", "top, back", Depth(layer.Top.BackLeft.Si), Depth(layer.Top.BackRight.Si));
            table.Row("floor", "top, front", Depth(layer.Top.FrontLeft.Si), Depth(layer.Top.FrontRight.Si));
            blocks.AddRange(table.Blocks);
        }

        if (blocks.Count > 0)
        {
            blocks.Add(
                new Words("“top” counts from the base glass; the soil is poured higher and settles in weeks.")
                {
                    Tone = Tone.Quiet,
                }
            );
        }

        return blocks;
    }

    private string Depth(double meters) => Lengths.Short(meters, job.Inches);

    private static IEnumerable<Block> Step(BuildStep step)
    {
        var more = step.Why is not null || step.Cautions.Length > 0;
        yield return new Words(step.Text)
        {
            Sign = Sign.Tick,
            Key = step.Key,
            After = more ? 0.3 : 2.2,
            KeepsWithNext = more,
        };
        foreach (var (caution, i) in step.Cautions.Select((c, i) => (c, i)))
        {
            yield return new Words(caution)
            {
                Sign = Sign.Caution,
                Tone = Tone.Caution,
                Key = step.Key,
                After = i + 1 < step.Cautions.Length || step.Why is not null ? 0.3 : 2.2,
            };
        }

        if (step.Why is { } why)
        {
            yield return new Words(why)
            {
                Sign = Sign.Dash,
                Tone = Tone.Quiet,
                Key = step.Key,
                After = 2.2,
            };
        }
    }
}
