using System.Collections.Immutable;

namespace Litterfall.Physics.Light;

/// <summary>
/// Light thrown to and fro between diffuse faces and the faces of blocks: patches with one factor for each
/// pair, with one
/// mirror image in each pane and in the lid. The factors depend on the box alone.
/// </summary>
/// <remarks>Radiosity by collocation: E(i) = direct(i) + Σ F(i, j) ρ(j) E(j).</remarks>
internal sealed class PatchNet
{
    private const int MostSweeps = 200;
    private const double CoarsestMeters = 1.0;
    private const double FewThings = 20.0;
    private const double Settled = 1e-7;
    private readonly LightScene scene;
    private readonly ImmutableArray<Glass> mirrors;
    private readonly (Box3[] Blocks, Canopy[] Canopies) straight;
    private readonly ImmutableArray<PatchFace> all;
    private double[]? factors;

    public PatchNet(LightScene scene, LightDetail detail, CancellationToken cancel)
    {
        this.scene = scene;
        mirrors = [.. Mirrors(scene).Select(m => m.With(scene))];
        straight = ([.. scene.Blocks.Select(b => b.Extent)], [.. scene.Canopies]);
        all = Bounded(scene, detail);
        Patches = [.. all.SelectMany(f => f.Patches)];
        factors = Among(cancel);
    }

    /// <summary>
    /// Lets go of the factors among patches, which lamps that are lit need and places do not: a usual box has
    /// 600 patches and 3 MB of them. The next lamp finds them again.
    /// </summary>
    public void Release() => factors = null;

    private double[] Among(CancellationToken cancel) =>
        GatherAll([.. Patches.Select(p => p.Receiver)], cancel);

    /// <summary>
    /// Patches no longer than asked for, or as much longer as keeps their number in bounds: the work grows
    /// with its square, and with the things that stand in the way.
    /// </summary>
    private static ImmutableArray<PatchFace> Bounded(LightScene scene, LightDetail detail)
    {
        double things = scene.Blocks.Length + scene.Canopies.Length;
        double most = detail.MostPatches / Math.Sqrt(Math.Max(1.0, things / FewThings));
        double longest = detail.PatchMeters;
        while (true)
        {
            ImmutableArray<PatchFace> faces = [.. Faces(scene, longest), .. BlockFaces(scene, longest)];
            double over = faces.Sum(f => f.Patches.Length) / most;
            if (over <= 1.0 || longest >= CoarsestMeters)
            {
                return faces;
            }

            longest *= Math.Max(1.05, Math.Sqrt(over));
        }
    }

    /// <summary>
    /// A pane as a mirror: the axis and the place of its plane; the lid has no pane of its own.
    /// </summary>
    private sealed record Glass(int Axis, double Place, PaneOptics? Pane)
    {
        /// <summary>All that stands in the way, on both sides of the plane.</summary>
        public (Box3[] Blocks, Canopy[] Canopies) Things { get; private set; } = ([], []);

        public Glass With(LightScene scene)
        {
            Things = (
                [
                    .. scene.Blocks.Select(b => b.Extent),
                    .. scene.Blocks.Select(b => PatchNet.Image(this, b.Extent)),
                ],
                [
                    .. scene.Canopies,
                    .. scene.Canopies.Select(c => c with { Extent = PatchNet.Image(this, c.Extent) }),
                ]
            );
            return this;
        }

        public Receiver Image(Receiver r) =>
            Axis switch
            {
                0 => new Receiver(
                    r.At with
                    {
                        X = (2.0 * Place) - r.At.X,
                    },
                    r.Normal with
                    {
                        X = -r.Normal.X,
                    }
                ),
                1 => new Receiver(
                    r.At with
                    {
                        Y = (2.0 * Place) - r.At.Y,
                    },
                    r.Normal with
                    {
                        Y = -r.Normal.Y,
                    }
                ),
                _ => new Receiver(
                    r.At with
                    {
                        Z = (2.0 * Place) - r.At.Z,
                    },
                    r.Normal with
                    {
                        Z = -r.Normal.Z,
                    }
                ),
            };
    }

    /// <summary>The patches.</summary>
    public ImmutableArray<Patch> Patches { get; }

    /// <summary>Factors of all patches at each receiver, row by row, on all cores.</summary>
    /// <param name="receivers">Places and where they face.</param>
    /// <param name="cancel">Ends it between two of them.</param>
    public double[] GatherAll(Receiver[] receivers, CancellationToken cancel)
    {
        double[] rows = new double[receivers.Length * Patches.Length];
        Parallel.For(
            0,
            receivers.Length,
            new ParallelOptions { CancellationToken = cancel },
            () => new Room(this),
            (i, _, room) =>
            {
                Gather(receivers[i], rows.AsSpan(i * Patches.Length, Patches.Length), room);
                return room;
            },
            static _ => { }
        );
        return rows;
    }

    /// <summary>Factors of all patches at a receiver, ready to be multiplied by their exitance.</summary>
    public void Gather(Receiver receiver, Span<double> into) => Gather(receiver, into, new Room(this));

    private void Gather(Receiver receiver, Span<double> into, Room room)
    {
        Open(receiver, into, room);
        for (int j = 0; j < into.Length; j++)
        {
            if (into[j] > 0.0)
            {
                into[j] *= Seen(receiver.At, Patches[j], null);
            }
        }

        foreach (var mirror in mirrors)
        {
            var image = mirror.Image(receiver);
            Open(image, room.Factors, room);
            for (int j = 0; j < into.Length; j++)
            {
                if (room.Factors[j] > 0.0)
                {
                    into[j] +=
                        room.Factors[j]
                        * Reflected(mirror, image.At, Patches[j])
                        * Seen(image.At, Patches[j], mirror);
                }
            }
        }
    }

    /// <summary>Factors with nothing between.</summary>
    private void Open(Receiver receiver, Span<double> into, Room room)
    {
        int from = 0;
        foreach (var face in all)
        {
            face.Factors(receiver, into.Slice(from, face.Patches.Length), room.Scratch);
            from += face.Patches.Length;
        }
    }

    /// <summary>Room to work in, for one thread.</summary>
    private sealed class Room(PatchNet net)
    {
        public double[] Factors { get; } = new double[net.Patches.Length];

        public double[] Scratch { get; } =
            new double[net.all.IsEmpty ? 0 : net.all.Max(f => f.ScratchLength)];
    }

    /// <summary>Exitance of each patch, lm/m², from the direct light on it, lx.</summary>
    public double[] Exitance(ReadOnlySpan<double> direct)
    {
        int n = Patches.Length;
        double[] light = direct.ToArray();
        double[] exitance = new double[n];
        double[] known = factors ??= Among(CancellationToken.None);
        for (int i = 0; i < n; i++)
        {
            exitance[i] = Patches[i].Reflectance * light[i];
        }

        for (int sweep = 0; sweep < MostSweeps; sweep++)
        {
            double change = 0.0;
            double most = 0.0;
            for (int i = 0; i < n; i++)
            {
                double sum = direct[i] + Dot(known.AsSpan(i * n, n), exitance);
                double next = Patches[i].Reflectance * sum;
                change = Math.Max(change, Math.Abs(next - exitance[i]));
                most = Math.Max(most, next);
                exitance[i] = next;
            }

            if (change <= Settled * most)
            {
                break;
            }
        }

        return exitance;
    }

    /// <summary>Sum of products, in the order of the list.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0.0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private static IEnumerable<Glass> Mirrors(LightScene scene)
    {
        foreach (
            var (face, axis, place) in new[]
            {
                (BoxFace.Left, 0, 0.0),
                (BoxFace.Right, 0, scene.Length),
                (BoxFace.Front, 1, 0.0),
                (BoxFace.Back, 1, scene.Depth),
                (BoxFace.Floor, 2, 0.0),
            }
        )
        {
            if (scene.Face(face) is { Kind: FaceKind.Glass, Pane: { } pane })
            {
                yield return new Glass(axis, place, pane);
            }
        }

        if (scene.Ceiling is null && scene.Lid.Any(p => p.Kind == LidKind.Pane))
        {
            yield return new Glass(2, scene.Height, null);
        }
    }

    private static IEnumerable<PatchFace> Faces(LightScene scene, double longest)
    {
        var (l, d, h) = (scene.Length, scene.Depth, scene.Height);
        var sides = new[]
        {
            (BoxFace.Left, 0, 1.0, new Box3(new Point3(0, 0, 0), new Point3(0, d, h))),
            (BoxFace.Right, 0, -1.0, new Box3(new Point3(l, 0, 0), new Point3(l, d, h))),
            (BoxFace.Front, 1, 1.0, new Box3(new Point3(0, 0, 0), new Point3(l, 0, h))),
            (BoxFace.Back, 1, -1.0, new Box3(new Point3(0, d, 0), new Point3(l, d, h))),
            (BoxFace.Floor, 2, 1.0, new Box3(new Point3(0, 0, 0), new Point3(l, d, 0))),
            (BoxFace.Top, 2, -1.0, new Box3(new Point3(0, 0, h), new Point3(l, d, h))),
        };
        foreach (var (face, axis, sign, extent) in sides)
        {
            var finish = scene.Face(face);
            if (finish is { Kind: FaceKind.Diffuse, Reflectance: > 0.0 })
            {
                var whole = new Patch(axis, sign, extent.From, extent.To, finish.Reflectance);
                yield return new PatchFace(whole, longest);
            }
        }
    }

    private static IEnumerable<PatchFace> BlockFaces(LightScene scene, double longest)
    {
        const double flush = 1e-6;
        var (l, d, h) = (scene.Length, scene.Depth, scene.Height);
        foreach (var block in scene.Blocks.Where(b => b.Reflectance > 0.0))
        {
            var low = new Point3(
                Math.Max(block.Extent.From.X, 0.0),
                Math.Max(block.Extent.From.Y, 0.0),
                Math.Max(block.Extent.From.Z, 0.0)
            );
            var high = new Point3(
                Math.Min(block.Extent.To.X, l),
                Math.Min(block.Extent.To.Y, d),
                Math.Min(block.Extent.To.Z, h)
            );
            if (high.X - low.X < flush || high.Y - low.Y < flush || high.Z - low.Z < flush)
            {
                continue;
            }

            var faces = new List<Patch>();
            Add(faces, low.X > flush, new Patch(0, -1.0, low, high with { X = low.X }, block.Reflectance));
            Add(
                faces,
                high.X < l - flush,
                new Patch(0, 1.0, low with { X = high.X }, high, block.Reflectance)
            );
            Add(faces, low.Y > flush, new Patch(1, -1.0, low, high with { Y = low.Y }, block.Reflectance));
            Add(
                faces,
                high.Y < d - flush,
                new Patch(1, 1.0, low with { Y = high.Y }, high, block.Reflectance)
            );
            Add(faces, low.Z > flush, new Patch(2, -1.0, low, high with { Z = low.Z }, block.Reflectance));
            Add(
                faces,
                high.Z < h - flush,
                new Patch(2, 1.0, low with { Z = high.Z }, high, block.Reflectance)
            );
            foreach (var face in faces)
            {
                yield return new PatchFace(face, 2.0 * longest);
            }
        }
    }

    private static void Add(List<Patch> faces, bool isSeen, Patch face)
    {
        if (isSeen)
        {
            faces.Add(face);
        }
    }

    private double Reflected(Glass mirror, Point3 image, Patch patch)
    {
        var way = patch.Middle - image;
        double cosine =
            Math.Abs(
                mirror.Axis switch
                {
                    0 => way.X,
                    1 => way.Y,
                    _ => way.Z,
                }
            ) / way.Length;
        if (mirror.Pane is { } pane)
        {
            return pane.Back(cosine);
        }

        double share = (scene.Height - image.Z) / way.Z;
        double x = image.X + (share * way.X);
        double y = image.Y + (share * way.Y);
        return scene.Lid.FirstOrDefault(p => p.Covers(x, y))?.ThrownBack(cosine) ?? 0.0;
    }

    /// <summary>
    /// Share of a patch that is seen, times what leaves let through to its middle: four points straight, its
    /// middle
    /// by a mirror.
    /// </summary>
    private double Seen(Point3 from, Patch patch, Glass? mirror)
    {
        var things = mirror?.Things ?? straight;
        double seen = 1.0;
        if (things.Blocks.Length > 0)
        {
            seen =
                mirror is null ? FourSeen(from, patch)
                : IsFree(from, patch.Middle, things.Blocks) ? 1.0
                : 0.0;
        }

        if (seen > 0.0 && things.Canopies.Length > 0)
        {
            var way = patch.Middle - from;
            foreach (var canopy in things.Canopies)
            {
                seen *= canopy.Through(from, way);
            }
        }

        return seen;
    }

    private double FourSeen(Point3 from, Patch patch)
    {
        var size = patch.High - patch.Low;
        double seen = 0.0;
        for (int i = 0; i < 4; i++)
        {
            double a = (i & 1) == 0 ? 0.25 : 0.75;
            double b = (i & 2) == 0 ? 0.25 : 0.75;
            var to = patch.Low + new Point3(size.X * a, size.Y * (patch.Axis == 0 ? a : b), size.Z * b);
            seen += IsFree(from, to, straight.Blocks) ? 0.25 : 0.0;
        }

        return seen;
    }

    private static bool IsFree(Point3 from, Point3 to, Box3[] blocks)
    {
        const double touch = 1e-7;
        var way = to - from;
        var (lowX, highX) = (Math.Min(from.X, to.X), Math.Max(from.X, to.X));
        var (lowY, highY) = (Math.Min(from.Y, to.Y), Math.Max(from.Y, to.Y));
        var (lowZ, highZ) = (Math.Min(from.Z, to.Z), Math.Max(from.Z, to.Z));
        foreach (ref readonly var block in blocks.AsSpan())
        {
            if (
                block.To.X < lowX
                || block.From.X > highX
                || block.To.Y < lowY
                || block.From.Y > highY
                || block.To.Z < lowZ
                || block.From.Z > highZ
            )
            {
                continue;
            }

            var (enter, leave) = block.Along(from, way);
            if (leave - enter > touch)
            {
                return false;
            }
        }

        return true;
    }

    private static Box3 Image(Glass mirror, Box3 box)
    {
        var a = mirror.Image(new Receiver(box.From, Point3.Up)).At;
        var b = mirror.Image(new Receiver(box.To, Point3.Up)).At;
        return new Box3(
            new Point3(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z)),
            new Point3(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z))
        );
    }
}
