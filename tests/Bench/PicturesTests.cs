using SkiaSharp;

namespace Litterfall.Tests.Bench;

/// <summary>The comparison of pictures itself: what it must see, and what it must let pass.</summary>
public sealed class PicturesTests
{
    private const string Desk = "desk.png";

    [Theory]
    [InlineData("desk.png")]
    [InlineData("desk-phone.png")]
    public void A_picture_is_like_itself(string name) =>
        Assert.Empty(Pictures.Differences(Approved.Read(name), Approved.Read(name)));

    [Theory]
    [InlineData(1, 0)]
    [InlineData(0, 1)]
    [InlineData(-1, 1)]
    public void All_may_move_by_a_pixel(int right, int down) =>
        Assert.Empty(
            Pictures.Differences(
                Approved.Read(Desk),
                Changed(
                    (canvas, picture) => canvas.DrawImage(picture, right, down, SKSamplingOptions.Default)
                )
            )
        );

    /// <summary>Boxes in pixels of the approved picture of 1440 × 950.</summary>
    [Theory]
    [InlineData("the findings", 860, 180, 1430, 950)]
    [InlineData("one finding", 860, 340, 1430, 490)]
    [InlineData("the verdict", 860, 110, 1430, 180)]
    [InlineData("the drawing", 30, 170, 830, 710)]
    [InlineData("the month of air and water", 30, 750, 830, 860)]
    [InlineData("the buttons", 740, 60, 1430, 120)]
    public void What_is_gone_is_seen(string what, int left, int top, int right, int bottom)
    {
        var blanked = Changed(
            (canvas, picture) =>
            {
                canvas.DrawImage(picture, 0, 0, SKSamplingOptions.Default);
                using var pixels = picture.PeekPixels();
                using var paint = new SKPaint { Color = pixels.GetPixelColor(left, top) };
                canvas.DrawRect(SKRect.Create(left, top, right - left, bottom - top), paint);
            }
        );
        var differences = Pictures.Differences(Approved.Read(Desk), blanked);
        Assert.True(differences.Count > 0, what);
        Assert.NotEmpty(Pictures.Differences(blanked, Approved.Read(Desk)));
    }

    [Fact]
    public void Another_size_is_seen()
    {
        var difference = Assert.Single(
            Pictures.Differences(Approved.Read(Desk), Approved.Read("desk-phone.png"))
        );
        Assert.Contains("pixels then", difference, StringComparison.Ordinal);
    }

    private static byte[] Changed(Action<SKCanvas, SKImage> draw)
    {
        using var picture = SKBitmap.Decode(Approved.Read(Desk));
        using var changed = picture.Copy();
        using var canvas = new SKCanvas(changed);
        using var image = SKImage.FromBitmap(picture);
        draw(canvas, image);
        canvas.Flush();
        return changed.Encode(SKEncodedImageFormat.Png, 100).ToArray();
    }
}
