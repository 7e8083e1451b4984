using Litterfall.Physics.Light;

namespace Litterfall.UnitTests.Physics.Light;

/// <summary>
/// What coarser patches cost in a large box, against patches of 5 cm: a box of 1.2 x 0.8 x 1 m with five
/// diffuse faces, of which a quarter as many patches are kept.
/// </summary>
public sealed class PatchBoundTests
{
    [Theory]
    [InlineData(500)]
    [InlineData(250)]
    public void Fewer_patches_change_light_by_less_than_2_percent(int most)
    {
        var scene = new LightScene
        {
            Length = 1.2,
            Depth = 0.8,
            Height = 1.0,
            Faces = [.. Enumerable.Repeat(FaceFinish.Diffuse(0.5), 5)],
            Blocks = [],
            Canopies = [],
        };
        scene = scene with { Lid = [scene.WholeLid(LidKind.Open)] };
        var lamp = Luminaire.Rectangle(new Point3(0.6, 0.4, 1.05), (0.4, 0.1), 2000);
        var detail = LightDetail.Live with { MostPatches = 100_000 };
        var (fine, coarse) = (Lux(detail), Lux(detail with { MostPatches = most }));
        Assert.All(fine.Zip(coarse), pair => Assert.Equal(1, pair.Second / pair.First, 0.02));

        double[] Lux(LightDetail with)
        {
            var model = new LightModel(scene, with);
            var lit = model.Light(lamp);
            return
            [
                .. from x in new[] { 0.2, 0.6, 0.9 }
                from z in new[] { 0.05, 0.5 }
                select model.At(new Receiver(new Point3(x, 0.3, z), Point3.Up), lit),
            ];
        }
    }
}
