namespace Litterfall.Physics.Light;

/// <summary>What opaque things leave of the opening, along some lines.</summary>
internal ref partial struct LampView
{
    /// <summary>
    /// Share of a part of the opening that is not hidden. Each place is weighted by 1/d⁴ as Lambert's law
    /// asks, or
    /// by all of its ray where mirrors and leaves make that uneven.
    /// </summary>
    private readonly double SeenShare(in Field field, int lines)
    {
        double all = 0.0;
        double seen = 0.0;
        bool isLong = lamp.Half.X >= lamp.Half.Y;

        // The first line climbs away from the receiver, whichever side that is: a box seen in a mirror has
        // its lines mirrored too.
        int first = (isLong ? field.Left + field.Right : field.Front + field.Back) < 0.0 ? 1 : 0;
        Span<double> hidden = stackalloc double[2 * shadowCount];
        for (int k = 0; k < lines; k++)
        {
            double a = (double)k / lines;
            double b = (k + 1.0) / lines;
            if (((k + first) & 1) == 1)
            {
                (a, b) = (b, a);
            }

            var (start, end) = isLong
                ? (At(field, 0.0, a), At(field, 1.0, b))
                : (At(field, a, 0.0), At(field, b, 1.0));
            var along = end - start;
            int count = 0;
            for (int i = 0; i < shadowCount; i++)
            {
                var (from, to) = (0.0, 1.0);
                shadows[i].Clip(start.X, start.Y, along.X, along.Y, ref from, ref to);
                if (from < to)
                {
                    count = Join(hidden, count, from, to);
                }
            }

            double scale = along.Length;
            double whole = scale * Piece(start, along, 0.0, 1.0);
            all += whole;
            if (count == 0)
            {
                seen += whole;
            }
            else if (count > 2 || hidden[0] > 0.0 || hidden[1] < 1.0)
            {
                double lost = 0.0;
                for (int i = 0; i < count; i += 2)
                {
                    lost += scale * Piece(start, along, hidden[i], hidden[i + 1]);
                }

                seen += whole - lost;
            }
        }

        return all > 0.0 ? Math.Clamp(seen / all, 0.0, 1.0) : 0.0;
    }

    /// <summary>Adds a stretch to others that do not overlap.</summary>
    private static int Join(Span<double> pairs, int count, double from, double to)
    {
        int kept = 0;
        for (int i = 0; i < count; i += 2)
        {
            if (pairs[i] > to || pairs[i + 1] < from)
            {
                (pairs[kept], pairs[kept + 1]) = (pairs[i], pairs[i + 1]);
                kept += 2;
            }
            else
            {
                from = Math.Min(from, pairs[i]);
                to = Math.Max(to, pairs[i + 1]);
            }
        }

        (pairs[kept], pairs[kept + 1]) = (from, to);
        return kept + 2;
    }
}
