using System.Globalization;
using Litterfall.Documents.Perspective;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;

namespace Litterfall.Web.Desk;

/// <summary>What a still shows, and how large.</summary>
/// <param name="Width">Width, px.</param>
/// <param name="Height">Height, px.</param>
public sealed record StillWish(int Width, int Height)
{
    /// <summary>Hour of the forecast; null for the day it is built, with the lamps on.</summary>
    public int? Hour { get; init; }

    /// <summary>Months since planting.</summary>
    public int Months { get; init; } = 12;

    /// <summary>True with animals.</summary>
    public bool HasAnimals { get; init; }

    /// <summary>From the front to the right, degrees; null for the usual side.</summary>
    public double? Turn { get; init; }

    /// <summary>From level up, degrees.</summary>
    public double Rise { get; init; } = Camera.UsualRise;

    /// <summary>How many times nearer than the whole box needs.</summary>
    public double Zoom { get; init; } = 1;
}

/// <summary>
/// Stills by what they are made from; those asked for longest ago go first. A small one is drawn without the
/// computed light, which nobody would see in it.
/// </summary>
public sealed class StillShelf(BenchStore store, BenchLibrary library)
{
    private const int MostBytes = 48 * 1024 * 1024;
    private const int SmallWidth = 640;
    private readonly Lock gate = new();
    private readonly LinkedList<(string Key, byte[] Png)> kept = new();
    private int bytes;

    /// <summary>
    /// A still, and the tag it is known by; null where the design is not there or has faults.
    /// </summary>
    /// <param name="id">The design.</param>
    /// <param name="wish">What it shows.</param>
    /// <param name="cancel">Who asked has left.</param>
    public Task<(byte[] Png, string Tag)?> PngAsync(Guid id, StillWish wish, CancellationToken cancel) =>
        PngAsync(id, null, wish, cancel);

    /// <summary>The same of a version that was frozen.</summary>
    /// <param name="id">The design.</param>
    /// <param name="version">The version; null for the one that is worked on.</param>
    /// <param name="wish">What it shows.</param>
    /// <param name="cancel">Who asked has left.</param>
    public async Task<(byte[] Png, string Tag)?> PngAsync(
        Guid id,
        int? version,
        StillWish wish,
        CancellationToken cancel
    )
    {
        var found = version is { } frozen
            ? await store.DesignAsync(id, frozen, cancel)
            : await store.DesignAsync(id, cancel);
        if (
            found is not { } stored
            || DesignReader.Read(stored.Name, stored.Text).Value is not { } document
            || library.Check(document) is not { Value: { } design, IsGood: true }
        )
        {
            return null;
        }

        var key = string.Create(
            CultureInfo.InvariantCulture,
            $"{Short(stored.Text)}-{design.Catalog.GetHashCode():x}-{Short(wish.ToString())}"
        );
        if (Find(key) is { } known)
        {
            return (known, key);
        }

        var png = await Turns.OfMachine.RunAsync(
            wish.Hour is null ? WorkKind.Month : WorkKind.Whole,
            () => Drawn(design, wish, cancel),
            cancel
        );
        Keep(key, png);
        return (png, key);
    }

    private static string Short(string text) => Fingerprint.Of(text)[..16];

    private static byte[] Drawn(CheckedDesign design, StillWish wish, CancellationToken cancel)
    {
        var numbers = new DesignNumbers(design, cancel);
        var light = wish.Width > SmallWidth ? numbers.Light : null;
        var moment = wish.Hour is { } hour ? DeskMoment.Of(numbers.Upto(Reach.Month), hour) : null;
        var picture = new BoxPicture(numbers.Upto(Reach.Shape), light);
        var scene = picture.At(new PictureWish(wish.Months, wish.HasAnimals), moment);
        cancel.ThrowIfCancellationRequested();
        var camera = Camera.Fit(
            scene,
            (float)wish.Width / wish.Height,
            (float?)wish.Turn,
            (float)wish.Rise,
            (float)wish.Zoom
        );
        return StillWriter.Png(scene, wish.Width, wish.Height, camera, cancel);
    }

    private byte[]? Find(string key)
    {
        lock (gate)
        {
            for (var node = kept.First; node is not null; node = node.Next)
            {
                if (node.Value.Key == key)
                {
                    kept.Remove(node);
                    kept.AddFirst(node);
                    return node.Value.Png;
                }
            }

            return null;
        }
    }

    private void Keep(string key, byte[] png)
    {
        lock (gate)
        {
            kept.AddFirst((key, png));
            bytes += png.Length;
            while (bytes > MostBytes && kept.Last is { } oldest && oldest != kept.First)
            {
                bytes -= oldest.Value.Png.Length;
                kept.RemoveLast();
            }
        }
    }
}
