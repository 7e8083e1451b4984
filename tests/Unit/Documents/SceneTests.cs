using System.Numerics;
using Litterfall.Documents.Perspective;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Documents;

/// <summary>
/// The finished box in space: its layers, its plants, and that all of it is where it must be.
/// </summary>
public sealed class SceneTests
{
    private const string Meadow =
        "litterfall: 1\nname: meadow\nbox: { inside: { length: 3 m, depth: 3 m, height: 2.5 m } }\n"
        + "floor: { drainage: none, barrier: none, soil: { recipe: standard-rainforest, depth: 1 cm } }\n";

    public static TheoryData<string> Samples =>
        [.. SampleFiles.Paths.Where(p => p.StartsWith("samples/", StringComparison.Ordinal))];

    /// <summary>Plants that stand on their own, with what is measured of them.</summary>
    public static TheoryData<string, bool> Standing =>
        [
            ("fittonia-albivenis", false),
            ("nephrolepis-cordifolia", false),
            ("adiantum-raddianum", false),
            ("spathiphyllum-wallisii", false),
            ("pilea-cadierei", false),
            ("chamaedorea-elegans", false),
            ("acorus-gramineus", false),
            ("phalaenopsis-mini", false),
            ("leucobryum", false),
            ("neoregelia-small", true),
            ("cryptanthus-bivittatus", true),
            ("tillandsia-bulbosa", true),
            ("asplenium-nidus", true),
        ];

    /// <summary>
    /// Liters of the quantities with what wood and stone displace added again: a body keeps its whole
    /// shape, and
    /// the wood lies in it.
    /// </summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_layer_holds_the_liters_of_its_quantity(string sample)
    {
        var numbers = Shape(sample);
        var parts = Picture(numbers).At(new PictureWish(12, false), null).Parts;
        var below = Layer(numbers, LayerKind.Drainage)?.Depth;
        var displaced = Displacement.Of(numbers.Design, below, Layer(numbers, LayerKind.Soil)?.Depth);
        foreach (
            var (kind, name, more) in new[]
            {
                (LayerKind.Drainage, "drainage", displaced.FromDrainage.Si),
                (LayerKind.Soil, "soil", displaced.FromSoil.Si),
                (LayerKind.Moss, "moss", 0.0),
                (LayerKind.Litter, "litter", 0.0),
            }
        )
        {
            if (
                Layer(numbers, kind) is { } layer
                && (kind != LayerKind.Drainage || layer.Material is not null)
            )
            {
                var whole = layer.Finished.Si + more;
                Assert.InRange(Volume(parts, name), 0.99 * whole, 1.01 * whole);
            }
        }
    }

    /// <summary>A basin of 20 × 15 × 4 cm with 1 cm of edge takes 1.5 L of a soil 5 cm deep.</summary>
    [Fact]
    public void A_basin_takes_the_soil_it_stands_in()
    {
        const string Box =
            "litterfall: 1\nname: pond\nbox: { inside: { length: 60 cm, depth: 40 cm, height: 40 cm } }\n"
            + "floor: { drainage: none, barrier: none, soil: { recipe: standard-rainforest, depth: 5 cm } }\n"
            + "basins: [ { length: 20 cm, width: 15 cm, depth: 4 cm, at: { x: 30 cm, y: 20 cm } } ]\n";
        var numbers = Shape(Text(Box));
        var soil = Volume(Picture(numbers).At(new PictureWish(0, false), null).Parts, "soil");
        Assert.InRange(soil, 0.99 * (0.012 - 0.0015), 1.01 * (0.012 - 0.0015));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Nothing_leaves_the_box(string sample)
    {
        var numbers = Shape(sample);
        var wall = (float)(numbers.Box.Walls?.Si ?? 0.004) + 0.03f;
        foreach (var months in new[] { 0, 12, 24 })
        {
            var scene = Picture(numbers).At(new PictureWish(months, true), null);
            foreach (var part in scene.Parts.Where(p => p.Name != "around" && p.Name != "lamps"))
            {
                Assert.All(part.Points, p =>
                {
                    Assert.InRange(p.X, -wall, (float)numbers.Box.InsideLength.Si + wall);
                    Assert.InRange(p.Y, -wall, (float)numbers.Box.InsideDepth.Si + wall);
                    Assert.InRange(p.Z, -wall, (float)numbers.Box.InsideHeight.Si + 0.012f);
                });
            }

            Assert.All(scene.Parts, p =>
            {
                Assert.All(p.Triangles, t => Assert.InRange(t, 0, p.Points.Length - 1));
                Assert.Equal(p.Points.Length, p.Lit.Length);
                Assert.Equal(p.Points.Length, p.Dark.Length);
                Assert.Equal(p.Edges.Length, p.LitInks.Length);
            });
        }
    }

    /// <summary>
    /// After two years a plant is as large as the library has it: as high, or for rosettes the larger of
    /// height
    /// and width.
    /// </summary>
    [Theory]
    [MemberData(nameof(Standing))]
    public void A_grown_plant_is_as_large_as_the_library_has_it(string plant, bool isRosette)
    {
        var numbers = Shape(
            Text($"{Meadow}plants: [ {{ plant: {plant}, at: {{ x: 150 cm, y: 150 cm }} }} ]\n")
        );
        var grown = SampleFiles.Catalog.Of<PlantEntry>().Single(e => e.Key == plant).LargestGrown!.Si;
        var sizes = new List<double>();
        foreach (var months in new[] { 0, 12, 24 })
        {
            var points = Picture(numbers)
                .At(new PictureWish(months, false), null)
                .Parts.Single(p => p.Name == "inside")
                .Points;
            var tall = points.Max(p => p.Z) - 0.01;
            var wide =
                2 * points.Max(p => Math.Sqrt(((p.X - 1.5) * (p.X - 1.5)) + ((p.Y - 1.5) * (p.Y - 1.5))));
            sizes.Add(isRosette ? Math.Max(tall, wide) : tall);
        }

        Assert.InRange(sizes[2], 0.99 * grown, 1.01 * grown);
        Assert.True(sizes[0] < sizes[1] && sizes[1] < sizes[2], string.Join(" ", sizes));
    }

    [Fact]
    public void Each_plant_of_a_line_stands_by_itself()
    {
        static int Triangles(int count) =>
            Picture(
                    Shape(
                        Text(
                            $"{Meadow}plants: [ {{ plant: acorus-gramineus, count: {count}, "
                                + "at: { x: 1 m, y: 1 m } } ]\n"
                        )
                    )
                )
                .At(new PictureWish(12, false), null)
                .Parts.Single(p => p.Name == "inside")
                .Triangles.Length;
        Assert.Equal(3 * Triangles(1), Triangles(3));
    }

    [Fact]
    public void The_same_design_is_the_same_picture()
    {
        var document = SampleFiles.Read("samples/ld-203-museum-foyer.viv.yaml");
        var one = SceneBytes.Write(Picture(Shape(document)).At(new PictureWish(12, true), null));
        var other = SceneBytes.Write(Picture(Shape(document)).At(new PictureWish(12, true), null));
        Assert.Equal(one, other);
    }

    [Fact]
    public void Its_words_name_plants_and_age()
    {
        var words = Picture(Shape(SampleFiles.Read("samples/ld-201-flat.viv.yaml")))
            .Words(new PictureWish(6, false), null);
        Assert.StartsWith(
            "Picture of LD-201 flat tenant, 6 months after planting, by day",
            words,
            StringComparison.Ordinal
        );
        Assert.Contains("Fittonia albivenis", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_dark_is_darker()
    {
        var scene = Picture(Shape(SampleFiles.Read("samples/ld-203-museum-foyer.viv.yaml")))
            .At(new PictureWish(12, false), null);
        static double Light(IEnumerable<uint> colors) =>
            colors.Average(c => (c & 255) + ((c >> 8) & 255) + ((c >> 16) & 255));
        var inside = scene.Parts.Single(p => p.Name == "inside");
        Assert.True(Light(inside.Dark) < 0.75 * Light(inside.Lit));
        Assert.True(scene.IsLit);
    }

    /// <summary>
    /// A browser reads what is written: points to the step of their part, at most a fiftieth of a
    /// millimeter on
    /// a box of 1.3 m.
    /// </summary>
    [Fact]
    public void A_scene_is_written_as_it_is()
    {
        var scene = Picture(Shape(SampleFiles.Read("samples/ld-201-flat.viv.yaml")))
            .At(new PictureWish(12, false), null);
        using var reader = new BinaryReader(new MemoryStream(SceneBytes.Write(scene)));
        Assert.Equal(SceneBytes.Mark, reader.ReadInt32());
        Assert.Equal(scene.Parts.Length, reader.ReadInt32());
        Assert.Equal(1, reader.ReadInt32());
        reader.BaseStream.Seek(9 * 4, SeekOrigin.Current);
        var part = scene.Parts[0];
        Assert.Equal((int)part.Kind, reader.ReadInt32());
        Assert.Equal(0, reader.ReadInt32());
        Assert.Equal(part.Points.Length, reader.ReadInt32());
        Assert.Equal(part.Triangles.Length, reader.ReadInt32());
        Assert.Equal(part.Edges.Length, reader.ReadInt32());
        var letters = reader.ReadInt32();
        Assert.Equal(part.Name, new string(reader.ReadChars(letters)));
        reader.BaseStream.Seek((4 - (letters % 4)) % 4, SeekOrigin.Current);
        var origin = new Vector3(reader.ReadSingle(), reader.ReadSingle(), reader.ReadSingle());
        var step = new Vector3(reader.ReadSingle(), reader.ReadSingle(), reader.ReadSingle());
        foreach (var point in part.Points)
        {
            var read =
                origin + (step * new Vector3(reader.ReadInt16(), reader.ReadInt16(), reader.ReadInt16()));
            reader.ReadInt16();
            Assert.True(Vector3.Distance(read, point) < 2e-5f, $"{read} {point}");
        }
    }

    /// <summary>A sample with the entries of its workshop.</summary>
    private static DesignNumbers Shape(string sample) => DesignNumbers.Shape(Posed.Sample(sample).Design);

    private static DesignDocument Text(string text) => DesignReader.Read("posed", text).Value!;

    private static DesignNumbers Shape(DesignDocument document) =>
        DesignNumbers.Shape(DesignChecker.Check(document, SampleFiles.Catalog).Value!);

    private static BoxPicture Picture(DesignNumbers numbers) => new(numbers, null);

    private static FloorLayer? Layer(DesignNumbers numbers, LayerKind kind) =>
        numbers.Layers.FirstOrDefault(l => l.Kind == kind);

    /// <summary>
    /// By the divergence theorem: a sixth of the triple product of each triangle, turned outward.
    /// </summary>
    private static double Volume(IEnumerable<ScenePart> parts, string name)
    {
        var part = parts.Single(p => p.Name == name);
        var sum = 0.0;
        for (var i = 0; i < part.Triangles.Length; i += 3)
        {
            var (a, b, c) = (
                part.Points[part.Triangles[i]],
                part.Points[part.Triangles[i + 1]],
                part.Points[part.Triangles[i + 2]]
            );
            sum += Vector3.Dot(a, Vector3.Cross(b, c)) / 6.0;
        }

        return sum;
    }
}
