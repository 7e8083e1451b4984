using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Views;

namespace Litterfall.Web.Desk;

/// <summary>
/// Handles that lie too near to each other move apart along leaders, so that a finger takes the one it means.
/// </summary>
public static class GripFan
{
    /// <summary>Least distance of two handles, mm in the drawing: their reach of 44 px.</summary>
    public const double Apart = 10.1;

    private const int Rounds = 400;
    private const double Golden = 2.399963229728653;

    /// <summary>Where each handle is shown.</summary>
    /// <param name="grips">The handles.</param>
    /// <param name="room">Width and height of the sheet they stay on, mm.</param>
    public static ImmutableArray<Spot> Spread(IReadOnlyList<Grip> grips, (double Width, double Height) room)
    {
        var (x, y) = (new double[grips.Count], new double[grips.Count]);
        for (var i = 0; i < grips.Count; i++)
        {
            (x[i], y[i]) = Held(grips[i].At.X, grips[i].At.Y, room);
        }

        for (var round = 0; round < Rounds && Part(x, y, room, round); round++)
        {
            // Until none is too near.
        }

        return [.. x.Select((across, i) => new Spot(across, y[i]))];
    }

    private static bool Part(double[] x, double[] y, (double, double) room, int round)
    {
        var moved = false;
        for (var i = 0; i < x.Length; i++)
        {
            for (var j = i + 1; j < x.Length; j++)
            {
                var (dx, dy) = (x[j] - x[i], y[j] - y[i]);
                var far = Math.Sqrt((dx * dx) + (dy * dy));
                if (far >= Apart - 1e-6)
                {
                    continue;
                }

                if (far < 1e-3)
                {
                    // Two in one place part in a direction of their own, the same each time.
                    var angle = Golden * (i + (2 * j) + round);
                    (dx, dy, far) = (Math.Cos(angle), Math.Sin(angle), 1);
                }

                // A little further than needed: else a crowd creeps for ever.
                var push = ((Apart * 1.02) - Math.Min(far, Apart)) / 2 / far;
                (x[i], y[i]) = Held(x[i] - (dx * push), y[i] - (dy * push), room);
                (x[j], y[j]) = Held(x[j] + (dx * push), y[j] + (dy * push), room);
                moved = true;
            }
        }

        return moved;
    }

    private static (double X, double Y) Held(double x, double y, (double Width, double Height) room)
    {
        const double rim = Apart / 2;
        return (
            Math.Clamp(x, Math.Min(rim, room.Width / 2), Math.Max(room.Width - rim, room.Width / 2)),
            Math.Clamp(y, Math.Min(rim, room.Height / 2), Math.Max(room.Height - rim, room.Height / 2))
        );
    }
}
