using System.Collections.Immutable;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Shapes;

/// <summary>Plants by how they look, from the side and from above; sizes in millimeters on paper.</summary>
/// <param name="sketch">Takes them.</param>
/// <param name="low">Upper left corner of the room that leaves stay in.</param>
/// <param name="high">Its lower right corner.</param>
internal sealed class PlantMarks(Sketch sketch, Spot low, Spot high)
{
    private const string Blooms = " flower";
    private const int Pieces = 6;
    private static readonly Pen Rim = new(Tone.Leaf, 0.16);
    private static readonly Pen Stem = new(Tone.Leaf, 0.28);

    private readonly ImmutableArray<Contour>.Builder stems = ImmutableArray.CreateBuilder<Contour>();
    private readonly ImmutableArray<Contour>.Builder leaves = ImmutableArray.CreateBuilder<Contour>();
    private readonly ImmutableArray<Contour>.Builder marked = ImmutableArray.CreateBuilder<Contour>();
    private readonly ImmutableArray<Contour>.Builder flowers = ImmutableArray.CreateBuilder<Contour>();

    /// <summary>A plant from the side.</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="foot">Where it stands.</param>
    /// <param name="size">Its size.</param>
    public void Side(Specimen plant, Spot foot, double size)
    {
        Action<Specimen, Spot, double> draw = plant.Habit switch
        {
            PlantHabit.Tank => (_, f, s) => Fan(f, (0.56 * s, 0.1 * s), 9, 1.3, 0.5),
            PlantHabit.Star => (_, f, s) => Fan(f, (0.5 * s, 0.14 * s), 7, 1.45, 0.2),
            PlantHabit.Air => (_, f, s) => Fan(f, (0.55 * s, 0.035 * s), 13, 1.5, 0.9),
            PlantHabit.Nest => (_, f, s) => Fan(f, (0.66 * s, 0.13 * s), 9, 1.05, 0.35),
            PlantHabit.Grass => (_, f, s) => Fan(f, (s, 0.04 * s), 13, 0.55, 0.4),
            PlantHabit.Tuft => (_, f, s) => Fan(f, (0.85 * s, 0.2 * s), 7, 0.9, 0.2),
            PlantHabit.Fern => (_, f, s) => Fronds(f, s, 7, 0.95),
            PlantHabit.Antler => (_, f, s) => Forks(f, s),
            PlantHabit.Cane => (_, f, s) => Canes(f, s),
            PlantHabit.Bush => (_, f, s) => Bush(f, s),
            PlantHabit.Mat => (_, f, s) => Mound(f, s),
            PlantHabit.Moss => (_, f, s) => Cushions(f, s),
            PlantHabit.Creeping => (_, f, s) => Runner(f, s),
            PlantHabit.Shingling => (_, f, s) => Shingles(f, s),
            PlantHabit.Vine => (_, f, s) => Vine(f, s),
            PlantHabit.Trailing => (_, f, s) => Hanging(f, s),
            _ => Stalked,
        };
        draw(plant, foot, size);
        var rise = plant.Habit switch
        {
            PlantHabit.Trailing => -0.6,
            PlantHabit.Tank => 0.6,
            _ => 0.85,
        };
        Flower(plant, foot.Moved(0, -rise * size), Math.Clamp(0.07 * size, 0.5, 2));
        Done(plant);
    }

    /// <summary>A plant from above.</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="middle">Where it stands.</param>
    /// <param name="size">Its width.</param>
    public void Above(Specimen plant, Spot middle, double size)
    {
        var r = size / 2;
        switch (plant.Habit)
        {
            case PlantHabit.Tank or PlantHabit.Nest:
                Star(middle, (r, 0.3 * r), 11, 0.35);
                break;
            case PlantHabit.Star or PlantHabit.Tuft:
                Star(middle, (r, 0.42 * r), 7, 0.5);
                break;
            case PlantHabit.Air or PlantHabit.Grass:
                Star(middle, (r, 0.12 * r), 17, 0.2);
                break;
            case PlantHabit.Fern or PlantHabit.Cane or PlantHabit.Antler:
                for (var i = 0; i < 8; i++)
                {
                    Frond(Line(middle, (i * Math.PI / 4) + 0.3, r, 0.25), 0.2 * r);
                }

                break;
            case PlantHabit.Mat or PlantHabit.Moss:
                Scallops(middle, r, plant.Habit == PlantHabit.Mat ? 9 : 13);
                break;
            case PlantHabit.Creeping or PlantHabit.Trailing:
                for (var i = 0; i < 6; i++)
                {
                    Chain(Line(middle, (i * Math.PI / 3) + 0.2, r, 0.5), 0.13 * r, 5);
                }

                break;
            default:
                for (var i = 0; i < 9; i++)
                {
                    var far = i < 6 ? 0.62 * r : 0.2 * r;
                    var turn = i * 2.4;
                    var (sin, cos) = Math.SinCos(turn);
                    Blade(middle.Moved(far * 0.35 * sin, -far * 0.35 * cos), turn, (0.72 * r, 0.42 * r), 0.2);
                }

                break;
        }

        Flower(plant, middle.Moved(0.3 * r, -0.3 * r), Math.Clamp(0.1 * r, 0.5, 2));
        Done(plant);
    }

    private void Done(Specimen plant)
    {
        var second = plant.Colors.Length > 1 ? plant.Colors[1] : plant.Colors[0];
        if (stems.Count > 0)
        {
            sketch.Lines([.. stems.Select(Kept)], Stem);
            stems.Clear();
        }

        Leaf(leaves, plant.Colors[0]);
        Leaf(marked, second.EndsWith(Blooms, StringComparison.Ordinal) ? plant.Colors[0] : second);
        Leaf(flowers, second.Replace(Blooms, "", StringComparison.Ordinal));
    }

    private void Leaf(ImmutableArray<Contour>.Builder contours, string color)
    {
        if (contours.Count > 0)
        {
            sketch.Add(
                new PathMark([.. contours.Select(Kept)], [])
                {
                    Pen = Rim,
                    Shade = NamedColors.Pale(color),
                    Key = sketch.Key,
                }
            );
            contours.Clear();
        }
    }

    /// <summary>Kept in its room: leaves press against the panes.</summary>
    private Contour Kept(Contour contour) =>
        contour with
        {
            Spots =
            [
                .. contour.Spots.Select(s => new Spot(
                    Math.Clamp(s.X, low.X, Math.Max(low.X, high.X)),
                    Math.Clamp(s.Y, low.Y, Math.Max(low.Y, high.Y))
                )),
            ],
        };

    /// <summary>Its flower, where its kind is kept for it.</summary>
    private void Flower(Specimen plant, Spot at, double size)
    {
        if (plant.Colors.Length < 2 || !plant.Colors[1].EndsWith(Blooms, StringComparison.Ordinal))
        {
            return;
        }

        for (var k = 0; k < 5; k++)
        {
            var (sin, cos) = Math.SinCos(k * 2 * Math.PI / 5);
            flowers.Add(new(Round(at.Moved(size * sin, -size * cos), size * 0.7), true));
        }
    }

    /// <summary>Blades from one foot, to both sides.</summary>
    private void Fan(Spot foot, (double Long, double Wide) blade, int count, double spread, double droop)
    {
        // From outside in, so that the upright ones lie over the others.
        foreach (
            var i in Enumerable.Range(0, count).OrderByDescending(i => Math.Abs(i - ((count - 1) / 2.0)))
        )
        {
            var lean = spread * ((2.0 * i / (count - 1)) - 1);
            Blade(
                foot,
                lean,
                blade with
                {
                    Long = blade.Long * (1 - (0.12 * (i % 2))),
                },
                droop * lean,
                i % 3 == 1
            );
        }
    }

    private void Fronds(Spot foot, double size, int count, double spread)
    {
        for (var i = 0; i < count; i++)
        {
            var lean = spread * ((2.0 * i / (count - 1)) - 1);
            Frond(Line(foot, lean, size * (1.12 - (0.1 * (i % 2))), lean * 0.9), 0.13 * size);
        }
    }

    /// <summary>A rib with teeth on both sides.</summary>
    private void Frond(ImmutableArray<Spot> rib, double wide)
    {
        var left = new List<Spot>();
        var right = new List<Spot>();
        const int Teeth = 9;
        for (var k = 0; k <= Teeth; k++)
        {
            var t = k / (double)Teeth;
            var (at, along) = On(rib, t);
            var half = wide * Math.Sin(Math.PI * (0.1 + (0.88 * t)));
            var (nx, ny) = (-along.Y, along.X);
            left.Add(at.Moved((nx * half) + (along.X * half * 0.4), (ny * half) + (along.Y * half * 0.4)));
            right.Add(at.Moved((-nx * half) + (along.X * half * 0.4), (-ny * half) + (along.Y * half * 0.4)));
            if (k < Teeth)
            {
                var (between, _) = On(rib, t + (0.6 / Teeth));
                left.Add(between.Moved(nx * half * 0.3, ny * half * 0.3));
                right.Add(between.Moved(-nx * half * 0.3, -ny * half * 0.3));
            }
        }

        right.Reverse();
        leaves.Add(new([rib[0], .. left, rib[^1], .. right], true));
        stems.Add(new(rib, false));
    }

    private void Forks(Spot foot, double size)
    {
        foreach (var lean in new[] { -1.3, -0.6, 0.1, 0.7, 1.35 })
        {
            var arm = Line(foot, lean, 0.5 * size, lean * 0.4);
            Blade(foot, lean, (0.55 * size, 0.12 * size), lean * 0.4);
            Blade(arm[^1], lean - 0.4, (0.45 * size, 0.1 * size), 0.3);
            Blade(arm[^1], lean + 0.5, (0.45 * size, 0.1 * size), 0.3, true);
        }
    }

    private void Canes(Spot foot, double size)
    {
        foreach (var lean in new[] { -0.22, 0.05, 0.26 })
        {
            var cane = Line(foot, lean, 0.6 * size, 0);
            stems.Add(new(cane, false));
            foreach (var way in new[] { -1.2, -0.5, 0.4, 1.1 })
            {
                Frond(Line(cane[^1], lean + way, 0.42 * size, way * 0.5), 0.1 * size);
            }
        }
    }

    private void Bush(Spot foot, double size)
    {
        foreach (var lean in new[] { -0.5, -0.15, 0.2, 0.55 })
        {
            var stem = Line(foot, lean, 0.85 * size, 0);
            stems.Add(new(stem, false));
            for (var k = 1; k <= 4; k++)
            {
                var (at, _) = On(stem, k / 4.0);
                Blade(at, lean - 1.1, (0.24 * size, 0.14 * size), -0.2, k % 2 == 0);
                Blade(at, lean + 1.1, (0.24 * size, 0.14 * size), 0.2);
            }
        }
    }

    private void Stalked(Specimen plant, Spot foot, double size)
    {
        foreach (var lean in new[] { -0.95, -0.55, -0.2, 0.15, 0.5, 0.9 })
        {
            var stalk = Line(foot, lean, 0.58 * size, lean * 0.25);
            stems.Add(new(stalk, false));
            Blade(
                stalk[^1],
                lean * 1.5,
                (0.42 * size, (plant.Leaf == "lance" ? 0.16 : 0.27) * size),
                lean * 0.6,
                lean is -0.55 or 0.5
            );
        }
    }

    private void Mound(Spot foot, double size)
    {
        for (var row = 0; row < 3; row++)
        {
            var count = 6 - row;
            for (var i = 0; i < count; i++)
            {
                var share = count == 1 ? 0 : (2.0 * i / (count - 1)) - 1;
                var at = foot.Moved(share * size * (0.75 - (0.18 * row)), -size * 0.3 * row);
                Blade(at, share * 1.1, (0.42 * size, 0.24 * size), share * 0.5, (i + row) % 3 == 0);
            }
        }
    }

    private void Cushions(Spot foot, double size)
    {
        foreach (var (x, r) in new[] { (-0.95, 0.6), (0.0, 1.0), (0.9, 0.7) })
        {
            leaves.Add(new(Dome(foot.Moved(x * size, 0), (0.62 * size * r, size * r)), true));
        }
    }

    private void Runner(Spot foot, double size)
    {
        var reach = Math.Max(2.2 * size, 4);
        stems.Add(new([foot.Moved(-reach, -0.3), foot.Moved(0, -0.8), foot.Moved(reach, -0.3)], false));
        Chain(
            [foot.Moved(-reach, -0.4), foot.Moved(0, -0.9), foot.Moved(reach, -0.4)],
            Math.Max(0.7, 0.2 * size),
            9
        );
    }

    /// <summary>Round leaves on both sides of a line.</summary>
    private void Chain(ImmutableArray<Spot> line, double leaf, int count)
    {
        for (var k = 0; k < count; k++)
        {
            var (at, along) = On(line, (k + 0.5) / count);
            var side = k % 2 == 0 ? 1 : -1;
            var middle = at.Moved(-along.Y * leaf * side, along.X * leaf * side);
            (k % 3 == 2 ? marked : leaves).Add(new(Round(middle, leaf), true));
        }
    }

    /// <summary>Leaves flat on a wall in two rows.</summary>
    private void Shingles(Spot foot, double size)
    {
        var leaf = Math.Clamp(0.11 * size, 1.1, 3.2);
        stems.Add(new([foot, foot.Moved(0, -size)], false));
        for (var up = leaf * 0.4; up < size; up += leaf * 0.8)
        {
            foreach (var hand in new[] { -1, 1 })
            {
                Blade(foot.Moved(0, -up), hand * 1.15, (leaf * 1.25, leaf), hand * 0.2, false);
            }
        }
    }

    private void Vine(Spot foot, double size)
    {
        var line = ImmutableArray.CreateBuilder<Spot>(13);
        for (var k = 0; k <= 12; k++)
        {
            var t = k / 12.0;
            line.Add(foot.Moved(size * 0.07 * Math.Sin(t * 8), -size * t));
        }

        var stem = line.MoveToImmutable();
        stems.Add(new(stem, false));
        var leaf = Math.Clamp(0.2 * size, 1.8, 7);
        var count = Math.Clamp((int)(size / leaf * 1.6), 4, 12);
        for (var k = 1; k <= count; k++)
        {
            var hand = k % 2 == 0 ? 1 : -1;
            Blade(On(stem, k / (double)count).At, hand * 1.75, (leaf, 0.72 * leaf), hand * 0.5, k % 3 == 0);
        }
    }

    private void Hanging(Spot foot, double size)
    {
        foreach (var out_ in new[] { -0.34, -0.16, 0.02, 0.18, 0.36 })
        {
            var end = foot.Moved(out_ * size, size * (0.92 - Math.Abs(out_)));
            ImmutableArray<Spot> stem =
            [
                foot,
                foot.Moved(out_ * size * 0.7, -0.06 * size),
                foot.Moved(out_ * size, 0.3 * size),
                end,
            ];
            stems.Add(new(stem, false));
            Chain(stem, Math.Clamp(0.045 * size, 0.6, 1.6), 8);
        }
    }

    /// <summary>Blades around a middle, each turned a little.</summary>
    private void Star(Spot middle, (double Long, double Wide) blade, int count, double bend)
    {
        for (var i = 0; i < count; i++)
        {
            Blade(
                middle,
                (i * 2 * Math.PI / count) + 0.2,
                blade with
                {
                    Long = blade.Long * (i % 2 == 0 ? 1 : 0.8),
                },
                bend,
                i % 3 == 1
            );
        }
    }

    private void Scallops(Spot middle, double r, int count)
    {
        var rim = ImmutableArray.CreateBuilder<Spot>(count * 4);
        for (var k = 0; k < count * 4; k++)
        {
            var far = r * (0.84 + (0.16 * Math.Sin(k * Math.PI / 2)));
            var (sin, cos) = Math.SinCos(k * 2 * Math.PI / (count * 4));
            rim.Add(middle.Moved(far * sin, -far * cos));
        }

        leaves.Add(new(rim.MoveToImmutable(), true));
        for (var k = 0; k < count - 2; k++)
        {
            var (sin, cos) = Math.SinCos(k * 2.4);
            var far = r * 0.72 * Math.Sqrt((k + 0.5) / count);
            marked.Add(new(Round(middle.Moved(far * sin, -far * cos), r * 0.12), true));
        }
    }

    /// <summary>A leaf from its foot; its lean is from straight up, to the right, radians.</summary>
    private void Blade(
        Spot foot,
        double lean,
        (double Long, double Wide) size,
        double bend,
        bool isMarked = false
    )
    {
        var spine = Line(foot, lean, size.Long, bend);
        var left = new Spot[Pieces - 1];
        var right = new Spot[Pieces - 1];
        for (var i = 1; i < Pieces; i++)
        {
            var (_, along) = On(spine, i / (double)Pieces);
            var half = 0.5 * size.Wide * Math.Sin(Math.PI * Math.Pow(i / (double)Pieces, 0.8));
            left[i - 1] = spine[i].Moved(-along.Y * half, along.X * half);
            right[Pieces - 1 - i] = spine[i].Moved(along.Y * half, -along.X * half);
        }

        (isMarked ? marked : leaves).Add(new([foot, .. left, spine[^1], .. right], true));
    }

    /// <summary>A line that begins at a lean from straight up and bends as far again.</summary>
    private static ImmutableArray<Spot> Line(Spot foot, double lean, double length, double bend)
    {
        var spots = ImmutableArray.CreateBuilder<Spot>(Pieces + 1);
        spots.Add(foot);
        for (var i = 1; i <= Pieces; i++)
        {
            var (sin, cos) = Math.SinCos(lean + (bend * (i - 0.5) / Pieces));
            spots.Add(spots[^1].Moved(sin * length / Pieces, -cos * length / Pieces));
        }

        return spots.MoveToImmutable();
    }

    private static (Spot At, Spot Along) On(ImmutableArray<Spot> line, double share)
    {
        var at = Math.Clamp(share, 0, 1) * (line.Length - 1);
        var i = Math.Min((int)at, line.Length - 2);
        var (a, b) = (line[i], line[i + 1]);
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
        return (a.Moved(dx * (at - i), dy * (at - i)), new(dx / length, dy / length));
    }

    private static ImmutableArray<Spot> Round(Spot middle, double r)
    {
        const int Sides = 8;
        var spots = ImmutableArray.CreateBuilder<Spot>(Sides);
        for (var k = 0; k < Sides; k++)
        {
            var (sin, cos) = Math.SinCos(k * 2 * Math.PI / Sides);
            spots.Add(middle.Moved(r * sin, -r * cos));
        }

        return spots.MoveToImmutable();
    }

    private static ImmutableArray<Spot> Dome(Spot foot, (double Half, double Tall) size)
    {
        const int Steps = 9;
        var spots = ImmutableArray.CreateBuilder<Spot>(Steps + 1);
        for (var k = 0; k <= Steps; k++)
        {
            var (sin, cos) = Math.SinCos(Math.PI * k / Steps);
            var bump = k % 2 == 0 ? 1 : 0.9;
            spots.Add(foot.Moved(-size.Half * cos * bump, -size.Tall * sin * bump));
        }

        return spots.MoveToImmutable();
    }
}
