using Litterfall.App.Files;
using Litterfall.Documents.Dxf;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.Quantities.Openings;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// The files a shop cuts, read back by ezdxf and put together again: panes, strips, mesh and play of each
/// wall and lid make its opening. The sums are written here from the sizes of the box alone.
/// </summary>
public sealed class AssemblyTests
{
    private const double Joint = 1.5;

    private static readonly int Boxes =
        Environment.GetEnvironmentVariable("LITTERFALL_LONG") == "1" ? 1000 : 30;

    [Fact]
    public void Cut_files_make_the_walls_and_the_lid_again()
    {
        using var scratch = new Scratch();
        var boxes = Enumerable.Range(0, Boxes).Select(seed => Made.Of(scratch, seed)).ToList();
        var files = DxfFile.Read(boxes.SelectMany(b => b.Files.Values));
        var walls = 0;
        var lids = 0;
        foreach (var box in boxes)
        {
            var sizes = box.Files.ToDictionary(f => f.Key, f => Measured.From(files[f.Value]));
            walls += Walls(box, sizes);
            lids += Lid(box, sizes);
        }

        Assert.InRange(walls, Boxes, 5 * Boxes);
        Assert.InRange(lids, Boxes / 3, Boxes);
    }

    /// <summary>Area of a wall: its panes, its vents, and a joint over and under each short pane.</summary>
    private static int Walls(Made box, Dictionary<string, Measured> sizes)
    {
        var design = box.Design.Design;
        if (design.Box.Panes != PaneSource.Cut)
        {
            return 0;
        }

        var (l, d, h) = Outside(design);
        var (t, b) = (
            design.Box.Glass!.Walls.Si * 1000,
            (design.Box.Glass.Base ?? design.Box.Glass.Walls).Si * 1000
        );
        var tall = h - b - Joint;
        var count = 0;
        foreach (var side in new[] { Side.Front, Side.Back, Side.Left, Side.Right })
        {
            var word = side.ToString().ToLowerInvariant();
            if (side == Side.Front && design.Box.Opening == Opening.Front)
            {
                continue;
            }

            var wide = side is Side.Front or Side.Back ? l : d - (2 * t) - (2 * Joint);
            var panes = sizes.Where(s => s.Key.StartsWith($"pane-{word}", StringComparison.Ordinal)).ToList();
            var joints = panes
                .Where(p => p.Key.Contains("beside", StringComparison.Ordinal))
                .Sum(p => 2 * Joint * p.Value.Width);
            // A round or cut-out vent is a hole of its pane; a strip lies between panes.
            var strips = WallPlan
                .Of(box.Design, box.Box, side)
                .Cells.Where(c => c.Kind == CellKind.Mesh)
                .SelectMany(c => c.Openings)
                .Sum(o => Area(design.Vents[o.Vent.Index]));
            var whole = panes.Sum(p => p.Value.Area + p.Value.Cut) + joints + strips;
            Assert.True(
                Down((wide * tall - whole) / (wide + tall), panes.Count),
                $"{word}: {whole} and {wide * tall}\n{box.Text}"
            );
            count++;
        }

        return count;
    }

    /// <summary>From front to back: each part, its play or its overlap.</summary>
    private static int Lid(Made box, Dictionary<string, Measured> sizes)
    {
        if (box.Design.Design.Lid is not { } lid)
        {
            return 0;
        }

        var (l, d, _) = Outside(box.Design.Design);
        var t = box.Design.Design.Box.Glass!.Walls.Si * 1000;
        var (play, over) = ((lid.Gap?.Si ?? 0.002) * 1000, (lid.Overlap?.Si ?? 0) * 1000);
        var cells = LidPlan
            .Of(box.Design, box.Box)!
            .Cells.Where(c => c.Left.Si < 1e-9)
            .OrderBy(c => c.Low.Si)
            .ToList();
        var sum = 0.0;
        for (var i = 0; i < cells.Count; i++)
        {
            var part = sizes[cells[i].Name];
            var isPane = cells[i].Kind == CellKind.Pane;
            sum +=
                part.Height + (isPane ? Gap(i == 0) + Gap(i == cells.Count - 1) : Lies(i == cells.Count - 1));
        }

        Assert.True(Down(d - (2 * t) - sum, cells.Count), $"{sum} and {d - (2 * t)}\n{box.Text}");
        var row = sizes
            .Where(s => s.Key.StartsWith("lid", StringComparison.Ordinal) && s.Key != "lid-front")
            .Take(lid.Panes)
            .ToList();
        if (row.Count == lid.Panes)
        {
            var wide = row.Select((p, i) => p.Value.Width + Gap(i == 0) + Gap(i == lid.Panes - 1)).Sum();
            Assert.True(Down(l - (2 * t) - wide, lid.Panes), $"{wide} and {l - (2 * t)}\n{box.Text}");
        }

        return 1;

        double Gap(bool outer) => outer && lid.Overlap is not null ? -over : play;

        double Lies(bool last) => last && lid.Overlap is not null ? -over : 0;
    }

    /// <summary>Each part is marked down to half a millimeter, and never up.</summary>
    private static bool Down(double missing, int parts) => missing > -0.05 && missing < (0.5 * parts) + 0.05;

    private static double Area(Vent vent) =>
        1e6 * (vent.Area?.Si ?? (vent.Length!.Value.Si * vent.Width!.Value.Si));

    private static (double Length, double Depth, double Height) Outside(Design design)
    {
        var edges = design.Box.Outside!;
        return (edges.Length[0].Si * 1000, edges.Depth[0].Si * 1000, edges.Height[0].Si * 1000);
    }

    /// <summary>Width and height of a part, its area, and what is cut out of it; millimeters.</summary>
    private sealed record Measured(double Width, double Height, double Area, double Cut)
    {
        public static Measured From(DxfFile file)
        {
            file.IsClean("a part");
            var (width, height) = file.Size("CUT");
            var outlines = file
                .Entities.Where(e => e.Layer == "CUT")
                .Select(Shoelace)
                .OrderDescending()
                .ToList();
            var holes =
                outlines.Skip(1).Sum()
                + file.Entities.Where(e => e.Layer == "DRILL")
                    .Sum(e => Math.PI * e.Radius!.Value * e.Radius.Value);
            // A notch leaves the outline; the rest of the rectangle is cut away.
            return new Measured(width, height, outlines[0] - holes, (width * height) - outlines[0] + holes);
        }

        private static double Shoelace(DxfEntity outline)
        {
            var sum = 0.0;
            for (var i = 0; i < outline.Points.Length; i++)
            {
                var (a, b) = (outline.Points[i], outline.Points[(i + 1) % outline.Points.Length]);
                sum += (a[0] * b[1]) - (b[0] * a[1]);
            }

            return Math.Abs(sum) / 2;
        }
    }

    /// <summary>A random box with the files of its parts.</summary>
    private sealed record Made(
        string Text,
        CheckedDesign Design,
        BoxGeometry Box,
        Dictionary<string, string> Files
    )
    {
        public static Made Of(Scratch scratch, int seed)
        {
            var text = RandomBoxes.Text(seed);
            var design = Shop.Design(scratch.Write($"box-{seed}.viv.yaml", text), null);
            Assert.True(design.IsGood, string.Join("; ", design.Faults));
            var box = BoxGeometry.Of(design.Value!);
            var files = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (
                var part in CutList
                    .Of(design.Value!, box)
                    .Where(p => p.Key is not "vents" and not "floor.barrier")
            )
            {
                var path = scratch.At($"box-{seed}-{part.Part}.dxf");
                File.WriteAllBytes(
                    path,
                    System.Text.Encoding.ASCII.GetBytes(
                        DxfWriter.Write(CutView.TrueSize(part), withText: false)
                    )
                );
                files[part.Part] = path;
            }

            return new Made(text, design.Value!, box, files);
        }
    }
}
