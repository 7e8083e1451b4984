using System.Text;
using Litterfall.App.Files;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Units;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Measuring;
using SkiaSharp;

namespace Litterfall.UnitTests.Web;

/// <summary>What is read of a tank that stands there, and the design it becomes.</summary>
public sealed class MeasuringTests
{
    private static readonly DateOnly Today = new(2026, 12, 1);

    /// <summary>An inch is 25.4 mm (international inch of 1959).</summary>
    [Theory]
    [InlineData("60", "cm", 600)]
    [InlineData("60,2", "cm", 602)]
    [InlineData("602", "mm", 602)]
    [InlineData("35 7/16", "in", 900.1125)]
    [InlineData("35½", "in", 901.7)]
    [InlineData("24\"", "cm", 609.6)]
    [InlineData("18 in", "cm", 457.2)]
    public void A_reading_is_taken_in_any_unit(string typed, string unit, double millimeters)
    {
        Assert.Null(TypedReading.Fault<Length>(typed, unit));
        Assert.True(QuantityText.TryParse<Length>(TypedReading.Whole(typed, unit), out var read, out _));
        Assert.Equal(millimeters, 1000 * read.Si, 6);
    }

    [Theory]
    [InlineData("sixty")]
    [InlineData("60 kg")]
    [InlineData("-3")]
    [InlineData("7 cm")]
    public void What_does_not_read_is_told(string typed) =>
        Assert.NotNull(TypedReading.Fault<Length>(typed, "cm", "5 cm"));

    [Fact]
    public void What_is_left_out_is_no_fault() => Assert.Null(TypedReading.Fault<Length>("  ", "cm"));

    private static TankDraft Full() =>
        new()
        {
            Name = "hall",
            Unit = "in",
            IsOutside = true,
            Length = ["35 7/16", "35 1/2", "90 cm"],
            Depth = ["18", "", ""],
            Height = ["24", "", ""],
            Walls = "6",
            Base = "8",
            IsFront = true,
            Sill = "6",
            Vents =
            [
                new()
                {
                    Side = "top",
                    Length = "20",
                    Width = "1 1/2",
                },
            ],
            Drainage = "2",
            SoilFront = "2 1/2",
            SoilBack = "4",
            Leaves = "1",
            Level = "1/2",
            Planted = "2026-03-01",
            Animals = [new() { Key = "dendrobates-tinctorius", Count = 2 }],
            Plants = [new() { Key = "fittonia-albivenis", Count = 3 }],
            RoomTemperature = "71",
            RoomHumidity = "45",
            Remark = "cracked \"left\" pane: taped # twice, " + new string('x', 500),
        };

    [Fact]
    public void A_measured_tank_becomes_a_design_that_can_be_computed()
    {
        var text = TankText.Of(Full(), "hall: the \"big\" one", Today);
        var reading = DesignReader.Read("hall", text);
        Assert.True(reading.IsGood, reading.IsGood ? "" : reading.Faults[0].Message);
        var design = reading.Value!.Design;
        Assert.Equal("hall: the \"big\" one", design.Name);
        Assert.Equal(3, design.Box.Outside!.Length.Count);
        Assert.Equal(0.5 * 0.0254, design.Start!.Level.Si, 9);
        Assert.Equal(0.006, design.Box.Glass!.Walls.Si, 9);
        Assert.Equal(Opening.Front, design.Box.Opening);
        Assert.Equal(3, design.Plants[0].Count);
        Assert.Contains(design.Notes, note => note.Contains("water level", StringComparison.Ordinal));
        Assert.Contains(design.Notes, note => note.Contains("assumed", StringComparison.Ordinal));
        Assert.True(DesignChecker.Check(reading.Value, Shop.Embedded()).IsGood);
    }

    [Fact]
    public void Three_edges_alone_are_a_design_too()
    {
        var draft = new TankDraft
        {
            Length = ["60", "", ""],
            Depth = ["45", "", ""],
            Height = ["45", "", ""],
            Lid = "none",
        };
        var reading = DesignReader.Read("bare", TankText.Of(draft, "bare", Today));
        Assert.True(reading.IsGood);
        Assert.True(DesignChecker.Check(reading.Value!, Shop.Embedded()).IsGood);
        Assert.Null(reading.Value!.Design.Start);
    }

    /// <summary>Readings of 602, 600 and 605 mm differ by 5 mm.</summary>
    [Fact]
    public void How_far_readings_differ_is_told()
    {
        Assert.Equal(0.005, TypedReading.Spread(["60.2", "600 mm", "60,5"], "cm"), 9);
        Assert.Equal(0, TypedReading.Spread(["60.2", "", "none"], "cm"));
        Assert.Equal("5 mm", UnitPreferences.Of("mm", 0.005));
    }

    /// <summary>
    /// A camera held upright stores the picture lying and tells the turn in its Exif (Orientation 6: turn
    /// by 90° clockwise; Exif 2.32, 4.6.4, from memory), and where it was. What is kept tells neither.
    /// </summary>
    [Fact]
    public void A_photo_is_kept_small_upright_and_without_its_place()
    {
        using var bitmap = new SKBitmap(2000, 1000);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.Blue);
            using var red = new SKPaint { Color = SKColors.Red };
            // The left half as stored is the upper half as seen.
            canvas.DrawRect(0, 0, 1000, 1000, red);
        }

        using var plain = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        var kept = Photos.Drawn(WithExif(plain.ToArray()))!;
        Assert.DoesNotContain("SECRETPLACE", Encoding.Latin1.GetString(kept), StringComparison.Ordinal);
        Assert.DoesNotContain("Exif", Encoding.Latin1.GetString(kept), StringComparison.Ordinal);
        using var seen = SKBitmap.Decode(kept);
        Assert.Equal((Photos.LongestEdge / 2, Photos.LongestEdge), (seen.Width, seen.Height));
        Assert.True(seen.GetPixel(400, 200).Red > 200);
        Assert.True(seen.GetPixel(400, 1400).Blue > 200);
    }

    [Fact]
    public void What_is_no_picture_is_refused()
    {
        Assert.Null(Photos.Drawn("no picture"u8.ToArray()));
        Assert.Null(Photos.Drawn([]));
        Assert.True(PhotoName.Is(PhotoName.New()));
        Assert.False(PhotoName.Is("photo-../../etc/passwd.jpg"));
    }

    /// <summary>Puts an Exif block with orientation 6 and a place behind the start of a JPEG.</summary>
    private static byte[] WithExif(byte[] jpeg)
    {
        byte[] tiff =
        [
            .. "MM"u8,
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            2,
            0x01,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            6,
            0,
            0,
            0x01,
            0x0E,
            0,
            2,
            0,
            0,
            0,
            12,
            0,
            0,
            0,
            38,
            0,
            0,
            0,
            0,
            .. "SECRETPLACE\0"u8,
        ];
        byte[] exif = [.. "Exif\0\0"u8, .. tiff];
        var length = exif.Length + 2;
        return [.. jpeg[..2], 0xFF, 0xE1, (byte)(length >> 8), (byte)length, .. exif, .. jpeg[2..]];
    }
}
