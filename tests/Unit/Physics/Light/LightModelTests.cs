using System.Collections.Immutable;
using CsCheck;
using Litterfall.Physics.Light;
using Xunit;

namespace Litterfall.UnitTests.Physics.Light;

/// <summary>
/// What holds for any box and lamp, whatever the numbers: symmetry, sums, bounds, the same bits.
/// </summary>
public sealed class LightModelTests
{
    private static readonly FaceFinish Pane = FaceFinish.Glass(PaneOptics.Single(0.004, 1.52, 5.0));

    private static readonly Gen<FaceFinish> Finish = Gen.OneOf(
        Gen.Const(FaceFinish.Black),
        Gen.Const(Pane),
        Gen.Const(FaceFinish.Open),
        Gen.Double[0.05, 0.6].Select(FaceFinish.Diffuse)
    );

    private static readonly Gen<LightScene> Scenes =
        from length in Gen.Double[0.3, 0.9]
        from depth in Gen.Double[0.3, 0.6]
        from height in Gen.Double[0.3, 0.6]
        from sides in Finish.Array[4]
        from floor in Gen.Double[0.0, 0.3]
        from lid in Gen.Int[0, 2]
        from blocks in Blocks(length, depth, height).Array[0, 3]
        from leaves in Blocks(length, depth, height).Array[0, 2]
        select Scene((length, depth, height), sides, floor, lid) with
        {
            Blocks = [.. blocks.Select(b => new LightBlock(b, 0.2))],
            Canopies = [.. leaves.Select(b => new Canopy(b, 15.0) { IsRound = true })],
        };

    private static Gen<Box3> Blocks(double length, double depth, double height) =>
        from x in Gen.Double[0.0, 0.7]
        from y in Gen.Double[0.0, 0.7]
        from z in Gen.Double[0.0, 0.5]
        from size in Gen.Double[0.05, 0.25]
        select new Box3(
            new Point3(x * length, y * depth, z * height),
            new Point3((x + size) * length, (y + size) * depth, (z + size) * height)
        );

    private static readonly Gen<(double X, double Y, double Up, double Along, double Across)> Places =
        from x in Gen.Double[0.2, 0.8]
        from y in Gen.Double[0.2, 0.8]
        from up in Gen.Double[0.01, 0.15]
        from along in Gen.Double[0.02, 0.4]
        from across in Gen.Double[0.01, 0.2]
        select (x, y, up, along, across);

    private static LightScene Scene(
        (double Length, double Depth, double Height) size,
        FaceFinish[] sides,
        double floor,
        int lid
    )
    {
        var scene = new LightScene
        {
            Length = size.Length,
            Depth = size.Depth,
            Height = size.Height,
            Faces = [.. sides, FaceFinish.Diffuse(floor)],
        };
        return scene with
        {
            Lid =
            [
                lid switch
                {
                    0 => scene.WholeLid(LidKind.Open),
                    1 => scene.WholeLid(LidKind.Pane, Pane.Pane),
                    _ => scene.WholeLid(LidKind.Mesh, null, 0.2),
                },
            ],
        };
    }

    private static Luminaire Lamp(
        LightScene scene,
        (double X, double Y, double Up, double Along, double Across) p
    ) =>
        Luminaire.Rectangle(
            new Point3(p.X * scene.Length, p.Y * scene.Depth, scene.Height + p.Up),
            (p.Along, p.Across),
            1000.0
        );

    [Fact]
    public void All_light_ends_somewhere() =>
        Gen.Select(Scenes, Places)
            .Sample(
                (scene, place) =>
                {
                    var ends = LightTracer.Of(scene, Lamp(scene, place), 2048);
                    double sum =
                        ends.Faces.Sum() + ends.Lid + ends.Blocks.Sum() + ends.Canopies.Sum() + ends.Lost;
                    Assert.Equal(1.0, sum, 1e-9);
                    Assert.All([.. ends.Faces, ends.Lid, ends.Missed, ends.BackUp, ends.OutSides], s =>
                        Assert.InRange(s, -1e-12, 1.0)
                    );
                },
                iter: 40
            );

    [Fact]
    public void The_same_box_and_lamp_give_the_same_bits() =>
        Gen.Select(Scenes, Places)
            .Sample(
                (scene, place) =>
                {
                    double[] Map()
                    {
                        var model = new LightModel(scene, LightDetail.Live);
                        return model.Map(new MapGrid(0.0, 20, 15), model.Light(Lamp(scene, place)));
                    }

                    Assert.Equal(Map(), Map());
                },
                iter: 8
            );

    /// <summary>A box seen in a mirror: left and right change places, and so does the light.</summary>
    [Fact]
    public void A_mirrored_box_has_mirrored_light() =>
        Gen.Select(Scenes, Places)
            .Sample(
                (scene, place) =>
                {
                    var other = Mirrored(scene);
                    var mirrored = place with { X = 1.0 - place.X };
                    var model = new LightModel(scene, LightDetail.Live);
                    var twin = new LightModel(other, LightDetail.Live);
                    var lit = model.Light(Lamp(scene, place));
                    var same = twin.Light(Lamp(other, mirrored));
                    foreach (double share in new[] { 0.11, 0.37, 0.73 })
                    {
                        var at = new Point3(share * scene.Length, 0.41 * scene.Depth, 0.003);
                        double a = model.At(new Receiver(at, Point3.Up), lit);
                        double b = twin.At(
                            new Receiver(at with { X = scene.Length - at.X }, Point3.Up),
                            same
                        );
                        Assert.Equal(a, b, 1e-3 * (a + 1.0));
                    }
                },
                iter: 20
            );

    private static LightScene Mirrored(LightScene scene)
    {
        Box3 Flip(Box3 b) =>
            new(b.From with { X = scene.Length - b.To.X }, b.To with { X = scene.Length - b.From.X });
        return scene with
        {
            Faces = [scene.Faces[1], scene.Faces[0], .. scene.Faces[2..]],
            Blocks = [.. scene.Blocks.Select(b => b with { Extent = Flip(b.Extent) })],
            Canopies = [.. scene.Canopies.Select(c => c with { Extent = Flip(c.Extent) })],
        };
    }

    /// <summary>Two halves of a panel give the light of the whole.</summary>
    [Fact]
    public void Light_adds_up() =>
        Gen.Select(Scenes, Places)
            .Sample(
                (scene, place) =>
                {
                    var whole = Lamp(scene, place);
                    var step = new Point3(0.5 * whole.Half.X, 0.0, 0.0);
                    Luminaire Part(Point3 at) =>
                        whole with
                        {
                            Center = at,
                            Half = (0.5 * whole.Half.X, whole.Half.Y),
                            Lumens = 500.0,
                        };
                    var model = new LightModel(scene, LightDetail.Fine);
                    var at = new Receiver(
                        new Point3(0.31 * scene.Length, 0.57 * scene.Depth, 0.002),
                        Point3.Up
                    );
                    double halves =
                        model.At(at, model.Light(Part(whole.Center - step)))
                        + model.At(at, model.Light(Part(whole.Center + step)));
                    double all = model.At(at, model.Light(whole));
                    // Shadows of pieces are worked out to 1.7 % of the mean (half-shadow case), and each half
                    // has its own.
                    Assert.Equal(all, halves, (1e-2 * all) + 0.5);
                },
                iter: 12
            );

    /// <summary>
    /// Forward rays and backward sums share no code: the flux on the floor by both, within what the rays
    /// leave open.
    /// </summary>
    [Fact]
    public void Rays_and_sums_agree_on_the_floor() =>
        Gen.Select(Scenes, Places)
            .Sample(
                (scene, place) =>
                {
                    var clear = scene with { Blocks = [], Canopies = [] };
                    var lamp = Lamp(clear, place);
                    double rays = 1000.0 * LightTracer.Of(clear, lamp, 65_536).On(BoxFace.Floor);
                    var model = new LightModel(clear, LightDetail.Live);
                    double[] map = model.Map(new MapGrid(0.0, 40, 30), model.Light(lamp));
                    double sums =
                        map.Average()
                        * clear.Length
                        * clear.Depth
                        * (1.0 - clear.Face(BoxFace.Floor).Reflectance);
                    Assert.Equal(rays, sums, 2.5 + (0.012 * rays));
                },
                iter: 20
            );

    /// <summary>
    /// A lamp that hangs over the left wall of a box with an open front: nothing comes in by the front, since
    /// the lamp is behind it, so the floor gets what it gets with a closed one.
    /// </summary>
    [Fact]
    public void A_wall_beside_an_open_side_hides_its_own_light()
    {
        FaceFinish[] Faces(FaceFinish front) => [FaceFinish.Black, FaceFinish.Black, front, FaceFinish.Black];
        var lamp = Luminaire.Rectangle(new Point3(0.08, 0.13, 0.45), (0.25, 0.12), 1000.0);
        double Floor(FaceFinish front)
        {
            var scene = Scene((0.4, 0.3, 0.42), Faces(front), 0.0, 0);
            var model = new LightModel(scene, LightDetail.Live);
            return model.Map(new MapGrid(0.0, 40, 30), model.Light(lamp)).Average();
        }

        Assert.Equal(Floor(FaceFinish.Black), Floor(FaceFinish.Open), 0.5);
    }

    /// <summary>A panel turned askew against Lambert's polygon formula, which needs no strips.</summary>
    [Theory]
    [InlineData(0.0)]
    [InlineData(30.0)]
    [InlineData(45.0)]
    [InlineData(90.0)]
    [InlineData(215.0)]
    public void A_turned_panel_is_the_polygon_of_its_corners(double degrees)
    {
        var scene = Scene(
            (2.0, 2.0, 1.0),
            [FaceFinish.Open, FaceFinish.Open, FaceFinish.Open, FaceFinish.Open],
            0.0,
            0
        );
        var center = new Point3(1.0, 1.0, 0.5);
        var lamp = Luminaire.Rectangle(center, (0.4, 0.1), 2000.0);
        var parts = PlacedLamp.Rectangle(lamp, (0.4, 0.1), degrees);
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180.0);
        Point3 Corner(double a, double b) =>
            center + new Point3((a * cos) - (b * sin), (a * sin) + (b * cos), 0.0);
        Point3[] corners = [Corner(-0.2, -0.05), Corner(-0.2, 0.05), Corner(0.2, 0.05), Corner(0.2, -0.05)];
        var model = new LightModel(scene, LightDetail.Fine);
        foreach (
            var at in new[]
            {
                new Point3(1.0, 1.0, 0.0),
                new Point3(1.2, 0.9, 0.1),
                new Point3(0.7, 1.3, 0.0),
            }
        )
        {
            double got = parts.Sum(p => model.At(new Receiver(at, Point3.Up), model.Light(p)));
            Point3[] seen = [.. corners.Select(c => c - at)];
            double factor = Math.Abs(RectangleFactor.Polygon(seen, Point3.Up));
            Assert.Equal(50_000.0 * factor, got, 2e-3 * got);
        }
    }

    /// <summary>Square weave by plain geometry: d/p = 0.2 along one set of wires.</summary>
    [Theory]
    [InlineData(0.0, 0.640)]
    [InlineData(30.0, 0.615)]
    [InlineData(60.0, 0.480)]
    [InlineData(75.0, 0.182)]
    [InlineData(85.0, 0.0)]
    public void Mesh_shuts_as_light_slants(double degrees, double share)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180.0);
        Assert.Equal(share, LidPart.ThroughMesh(0.2, new Point3(sin, 0.0, -cos)), 1e-3);
    }

    /// <summary>
    /// A ball of leaves takes its diameter of the way through its middle: exp(−0.5 √0.8 × 20 × 0.2).
    /// </summary>
    [Fact]
    public void Round_crowns_are_crossed_by_their_chord()
    {
        var ball = new Canopy(new Box3(new Point3(-0.1, -0.1, -0.1), new Point3(0.1, 0.1, 0.1)), 20.0)
        {
            IsRound = true,
        };
        Assert.Equal(
            Math.Exp(-0.5 * Math.Sqrt(0.8) * 20.0 * 0.2),
            ball.Through(new Point3(0.0, 0.0, 1.0), new Point3(0.0, 0.0, -2.0)),
            1e-12
        );
        Assert.Equal(1.0, ball.Through(new Point3(0.11, 0.0, 1.0), new Point3(0.0, 0.0, -2.0)));
    }

    [Theory]
    [InlineData(8.0, 20.0, 12.0)]
    [InlineData(20.0, 8.0, 12.0)]
    [InlineData(8.0, 8.0, 24.0)]
    public void Hours_run_past_midnight(double on, double off, double hours) =>
        Assert.Equal(hours * 3600.0, DailyLight.OnSeconds(on * 3600.0, off * 3600.0));

    [Fact]
    public void Ramps_longer_than_the_day_count_half_of_it() =>
        Assert.Equal(3600.0, DailyLight.FullSeconds(7200.0, 1e6));

    /// <summary>ln 0.8 / ln 0.7 = 0.223144 / 0.356675 = 0.625622; one law forward and back.</summary>
    [Fact]
    public void A_lamp_ages_by_one_law()
    {
        Assert.Equal(6256.22, DailyLight.HoursTo(0.8, 10000.0), 0.01);
        Assert.Equal(0.8, DailyLight.FluxLeft(DailyLight.HoursTo(0.8, 10000.0), 10000.0), 1e-12);
    }

    [Fact]
    public void A_spectrum_of_other_length_is_our_own_mistake() =>
        Assert.Throws<ArgumentException>(() => Spectrum.MicromolesPerKilolumen([400.0, 700.0], [1.0]));
}
