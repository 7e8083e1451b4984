using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Light;

/// <summary>
/// One lamp as one receiver sees it, straight or by mirrors: the integral over its luminous opening of
/// intensity ×
/// cosine ÷ distance², times what the lid, the mirrors and leaves leave of each ray, less what opaque things
/// hide.
/// A level opening is cut into lines; on each the hidden stretches are exact, and both ways Gauss and
/// Legendre
/// points stand between all places where something bends.
/// </summary>
internal ref partial struct LampView
{
    private const double LeastRise = 1e-6;
    private readonly LightScene scene;
    private readonly Luminaire lamp;
    private readonly MirrorPath path;
    private readonly Receiver receiver;
    private readonly double rise;
    private readonly double lidShare;
    private readonly bool meetsLid;
    private readonly bool isShutOut;
    private readonly ShadowOutline[] shadows;
    private readonly Canopy[] leaves;
    private readonly Point3 toMiddle;
    private int shadowCount;
    private int leafCount;

    /// <summary>The view of a lamp.</summary>
    /// <param name="scene">The box.</param>
    /// <param name="lamp">The lamp; its opening is level unless it is a line.</param>
    /// <param name="path">The way.</param>
    /// <param name="receiver">The receiver, already in the cell of the way.</param>
    /// <param name="scratch">Room to work in.</param>
    public LampView(
        LightScene scene,
        Luminaire lamp,
        MirrorPath path,
        Receiver receiver,
        LightScratch scratch
    )
    {
        this.scene = scene;
        this.lamp = lamp;
        this.path = path;
        this.receiver = receiver;
        (shadows, leaves) = scratch.For(path);
        toMiddle = lamp.Center - receiver.At;
        double height = toMiddle.Z;
        rise = Math.Abs(height) < LeastRise ? (height < 0.0 ? -LeastRise : LeastRise) : height;
        meetsLid = lamp.Center.Z > scene.Height != receiver.At.Z > scene.Height;
        lidShare = (scene.Height - receiver.At.Z) / rise;
        isShutOut =
            !path.EntersBeside
            && lamp.Center.Z < scene.Height
            && !(
                lamp.Center.X >= 0.0
                && lamp.Center.X <= scene.Length
                && lamp.Center.Y >= 0.0
                && lamp.Center.Y <= scene.Depth
            );
        shadowCount = 0;
        leafCount = 0;
        if (IsLevel)
        {
            Gather();
        }
        else
        {
            path.Canopies.CopyTo(leaves.AsSpan());
            leafCount = path.Canopies.Length;
        }
    }

    private readonly bool IsLevel =>
        lamp.Shape is LuminousShape.Rectangle or LuminousShape.Disc
        || (lamp.Shape == LuminousShape.Line && lamp.HalfLine.Z == 0.0);

    /// <summary>True where something may hide a part of the lamp.</summary>
    public readonly bool IsHidden => shadowCount > 0;

    /// <summary>Illuminance, lx, as exact as the points allow.</summary>
    public readonly double Fine(int order) =>
        isShutOut
            ? 0.0
            : lamp.Shape switch
            {
                LuminousShape.Point => IsSeen(lamp.Center) ? Ray(lamp.Center - receiver.At) : 0.0,
                LuminousShape.Line => IsLevel ? Stretch(-1.0, 1.0, lamp.HalfLine, toMiddle, order) : Tilted(),
                _ => OverArea(order),
            };

    /// <summary>
    /// Illuminance, lx, quickly: points over the part of the opening seen through each part of the lid, and
    /// where
    /// something hides a part the share left along some lines that climb in turn, so that edges along either
    /// axis are
    /// met exactly.
    /// </summary>
    public readonly double Quick(QuickRule rule)
    {
        if (isShutOut || lamp.Shape is LuminousShape.Point or LuminousShape.Line)
        {
            return Fine(rule.Along.Points.Length);
        }

        var whole = new Field(
            toMiddle.X - lamp.Half.X,
            toMiddle.X + lamp.Half.X,
            toMiddle.Y - lamp.Half.Y,
            toMiddle.Y + lamp.Half.Y
        );
        if (!meetsLid || lamp.Shape == LuminousShape.Disc)
        {
            return meetsLid && (scene.Lid.Length > 1 || path.EntersBeside)
                ? OverArea(3)
                : Quick(whole, null, rule);
        }

        double sum = path.EntersBeside ? Beside(whole, rule) : 0.0;
        foreach (var part in scene.Lid)
        {
            var seen = new Field(
                Math.Max(whole.Left, (part.Left - receiver.At.X) / lidShare),
                Math.Min(whole.Right, (part.Right - receiver.At.X) / lidShare),
                Math.Max(whole.Front, (part.Front - receiver.At.Y) / lidShare),
                Math.Min(whole.Back, (part.Back - receiver.At.Y) / lidShare)
            );
            if (part.Kind != LidKind.Opaque && seen.Left < seen.Right && seen.Front < seen.Back)
            {
                sum += Quick(seen, part, rule);
            }
        }

        return sum;
    }

    /// <summary>
    /// What is seen beside the lid, by an open side: four strips round it, so that a wall hides its own strip
    /// and nothing of the others.
    /// </summary>
    private readonly double Beside(in Field whole, QuickRule rule)
    {
        double left = Math.Clamp(-receiver.At.X / lidShare, whole.Left, whole.Right);
        double right = Math.Clamp((scene.Length - receiver.At.X) / lidShare, whole.Left, whole.Right);
        double front = Math.Clamp(-receiver.At.Y / lidShare, whole.Front, whole.Back);
        double back = Math.Clamp((scene.Depth - receiver.At.Y) / lidShare, whole.Front, whole.Back);
        ReadOnlySpan<Field> strips =
        [
            whole with
            {
                Right = left,
            },
            whole with
            {
                Left = right,
            },
            new Field(left, right, whole.Front, front),
            new Field(left, right, back, whole.Back),
        ];
        double sum = 0.0;
        foreach (ref readonly var strip in strips)
        {
            if (strip.Left < strip.Right && strip.Front < strip.Back)
            {
                sum += Quick(strip, null, rule);
            }
        }

        return sum;
    }

    /// <summary>Part of the plane of the opening, relative to the receiver, m.</summary>
    private readonly record struct Field(double Left, double Right, double Front, double Back)
    {
        public double Area => (Right - Left) * (Back - Front);
    }

    private readonly double Quick(in Field field, LidPart? part, QuickRule rule)
    {
        double seen = shadowCount == 0 ? 1.0 : SeenShare(field, rule.Lines);
        if (seen <= 0.0)
        {
            return 0.0;
        }

        bool isPlain =
            lamp.Shape == LuminousShape.Rectangle
            && lamp.Table is null
            && lamp.Exponent == 1.0
            && leafCount == 0
            && path.Order == 0
            && receiver.Normal == Point3.Up
            && rise > 0.0
            && part?.Kind is LidKind.Pane or LidKind.Open;
        return seen * (isPlain ? Plain(field, part!, rule) : Points(field, rule));
    }

    private readonly double Points(in Field field, QuickRule rule)
    {
        bool isLong = lamp.Half.X >= lamp.Half.Y;
        var (px, py) = isLong ? (rule.Along, rule.Across) : (rule.Across, rule.Along);
        double sum = 0.0;
        for (int j = 0; j < py.Points.Length; j++)
        {
            double y = field.Front + (py.Points[j] * (field.Back - field.Front));
            var (left, right) = (field.Left, field.Right);
            if (lamp.Shape == LuminousShape.Disc)
            {
                double chord = Chord(y - toMiddle.Y);
                (left, right) = (toMiddle.X - chord, toMiddle.X + chord);
            }

            double row = 0.0;
            for (int i = 0; i < px.Points.Length; i++)
            {
                double x = left + (px.Points[i] * (right - left));
                row += px.Weights[i] * Ray(new Point3(x, y, rise));
            }

            sum += py.Weights[j] * (right - left) * row;
        }

        return sum * (field.Back - field.Front);
    }

    /// <summary>
    /// A Lambertian rectangle over a level receiver, through a pane or nothing: L h² ∫ T(h/d)/d⁴ dA.
    /// </summary>
    private readonly double Plain(in Field field, LidPart part, QuickRule rule)
    {
        bool isLong = lamp.Half.X >= lamp.Half.Y;
        var (px, py) = isLong ? (rule.Along, rule.Across) : (rule.Across, rule.Along);
        var xs = px.Points.AsSpan();
        var ws = px.Weights.AsSpan();
        var pane = part.Kind == LidKind.Pane ? part.Pane : null;
        double sum = 0.0;
        for (int j = 0; j < py.Points.Length; j++)
        {
            double y = field.Front + (py.Points[j] * (field.Back - field.Front));
            double beside = (y * y) + (rise * rise);
            double row = 0.0;
            for (int i = 0; i < xs.Length; i++)
            {
                double x = field.Left + (xs[i] * (field.Right - field.Left));
                double square = beside + (x * x);
                double through = pane is null ? 1.0 : pane.Through(rise / Math.Sqrt(square));
                row += ws[i] * through / (square * square);
            }

            sum += py.Weights[j] * row;
        }

        double luminance = lamp.Lumens / (Math.PI * lamp.Measure);
        return part.Clean * luminance * rise * rise * field.Area * sum;
    }

    private void Gather()
    {
        double hx = lamp.Shape == LuminousShape.Line ? Math.Abs(lamp.HalfLine.X) : lamp.Half.X;
        double hy = lamp.Shape == LuminousShape.Line ? Math.Abs(lamp.HalfLine.Y) : lamp.Half.Y;
        foreach (ref readonly var box in path.Blocks.AsSpan())
        {
            Gather(box, hx, hy);
        }

        foreach (var canopy in path.Canopies)
        {
            if (ShadowOutline.Of(canopy.Extent, receiver.At, rise) is { } shade && Touches(shade, hx, hy))
            {
                leaves[leafCount++] = canopy;
            }
        }
    }

    private void Gather(in Box3 box, double hx, double hy)
    {
        if (ShadowOutline.Of(box, receiver.At, rise) is { } shadow && Touches(shadow, hx, hy))
        {
            shadows[shadowCount++] = shadow;
        }
    }

    private readonly bool Touches(in ShadowOutline shadow, double hx, double hy) =>
        shadow.Touches(toMiddle.X - hx, toMiddle.X + hx, toMiddle.Y - hy, toMiddle.Y + hy);

    /// <summary>Half the width of the opening along x at a distance from its middle.</summary>
    private readonly double Chord(double y) =>
        lamp.Shape == LuminousShape.Disc
            ? Math.Sqrt(Math.Max(0.0, (lamp.Half.X * lamp.Half.X) - (y * y)))
            : lamp.Half.X;

    private readonly double OverArea(int order)
    {
        var (y0, y1) = (toMiddle.Y - lamp.Half.Y, toMiddle.Y + lamp.Half.Y);
        var (x0, x1) = (toMiddle.X - lamp.Half.X, toMiddle.X + lamp.Half.X);
        var breaks = new BreakList(stackalloc double[256], y0, y1);
        breaks.AddAround(0.0, Math.Abs(rise));
        for (int i = 0; i < shadowCount; i++)
        {
            shadows[i].AddBends(ref breaks, y0, y1, x0, x1);
        }

        AddLidAndHorizon(ref breaks, x0, x1);
        foreach (var canopy in leaves.AsSpan(0, leafCount))
        {
            ShadowOutline.Of(canopy.Extent, receiver.At, rise)?.AddBends(ref breaks, y0, y1, x0, x1);
        }

        var rule = GaussLegendre.Of(order);
        var places = breaks.Places;
        double sum = 0.0;
        for (int k = 0; k + 1 < places.Length; k++)
        {
            for (int i = 0; i < order; i++)
            {
                var (y, weight) = Step(k, rule, i, places);
                double chord = Chord(y - toMiddle.Y);
                if (chord > 0.0)
                {
                    var middle = new Point3(toMiddle.X, y, rise);
                    sum += weight * Stretch(-1.0, 1.0, new Point3(chord, 0.0, 0.0), middle, order);
                }
            }
        }

        return sum;
    }

    /// <summary>
    /// A point of the rule between two places; at the ends of a disc the points crowd, where its chord has a
    /// root.
    /// </summary>
    private readonly (double Y, double Weight) Step(
        int k,
        GaussLegendre rule,
        int i,
        ReadOnlySpan<double> places
    )
    {
        var (a, b) = (places[k], places[k + 1]);
        double u = rule.Points[i];
        double w = rule.Weights[i] * (b - a);
        if (lamp.Shape != LuminousShape.Disc)
        {
            return (a + (u * (b - a)), w);
        }

        // y = r sin φ: the chord is smooth in φ.
        double r = lamp.Half.X;
        double from = Math.Asin(Math.Clamp((a - toMiddle.Y) / r, -1.0, 1.0));
        double to = Math.Asin(Math.Clamp((b - toMiddle.Y) / r, -1.0, 1.0));
        double angle = from + (u * (to - from));
        return (toMiddle.Y + (r * Math.Sin(angle)), rule.Weights[i] * (to - from) * r * Math.Cos(angle));
    }

    private readonly void AddLidAndHorizon(ref BreakList breaks, double x0, double x1)
    {
        if (meetsLid)
        {
            foreach (var part in scene.Lid)
            {
                breaks.Add((part.Front - receiver.At.Y) / lidShare);
                breaks.Add((part.Back - receiver.At.Y) / lidShare);
            }
        }

        var n = receiver.Normal;
        if (n.Y != 0.0)
        {
            breaks.Add(-((n.X * x0) + (n.Z * rise)) / n.Y);
            breaks.Add(-((n.X * x1) + (n.Z * rise)) / n.Y);
        }
    }

    /// <summary>A place of a part of the opening by its shares of width and depth.</summary>
    private readonly Point3 At(in Field field, double shareX, double shareY)
    {
        double y = field.Front + (shareY * (field.Back - field.Front));
        if (lamp.Shape != LuminousShape.Disc)
        {
            return new Point3(field.Left + (shareX * (field.Right - field.Left)), y, rise);
        }

        double chord = Chord(y - toMiddle.Y);
        return new Point3(toMiddle.X + (((2.0 * shareX) - 1.0) * chord), y, rise);
    }

    /// <summary>A line that is not level, by many points.</summary>
    private readonly double Tilted()
    {
        const int parts = 128;
        var rule = GaussLegendre.Of(3);
        double sum = 0.0;
        for (int k = 0; k < parts; k++)
        {
            for (int i = 0; i < rule.Points.Length; i++)
            {
                double t = (2.0 * (k + rule.Points[i]) / parts) - 1.0;
                var at = lamp.Center + (t * lamp.HalfLine);
                sum += IsSeen(at) ? rule.Weights[i] * Ray(at - receiver.At) : 0.0;
            }
        }

        return sum * 2.0 * lamp.HalfLine.Length / parts;
    }

    private readonly bool IsSeen(Point3 source)
    {
        var way = source - receiver.At;
        foreach (ref readonly var box in path.Blocks.AsSpan())
        {
            var (enter, leave) = box.Along(receiver.At, way);
            if (leave > enter)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// What one ray brings: cd per unit of the opening × cosine ÷ distance² × what is left.
    /// </summary>
    /// <param name="way">From the receiver to the place of the lamp, m.</param>
    private readonly double Ray(Point3 way)
    {
        double facing = way.Dot(receiver.Normal);
        if (facing <= 0.0)
        {
            return 0.0;
        }

        double square = way.Dot(way);
        double inverse = 1.0 / Math.Sqrt(square);
        var ray = -inverse * way;
        double light = lamp.Intensity(ray) * facing * inverse / square;
        if (light <= 0.0)
        {
            return 0.0;
        }

        if (meetsLid)
        {
            light *= AtLid(way, ray);
        }

        if (path.Order > 0)
        {
            light *= path.Reflected(ray);
        }

        for (int i = 0; i < leafCount; i++)
        {
            light *= leaves[i].Through(receiver.At, way);
        }

        return light;
    }

    private readonly double AtLid(Point3 way, Point3 ray)
    {
        double share = (scene.Height - receiver.At.Z) / way.Z;
        double x = receiver.At.X + (share * way.X);
        double y = receiver.At.Y + (share * way.Y);
        foreach (var part in scene.Lid)
        {
            if (part.Covers(x, y))
            {
                return part.Through(ray);
            }
        }

        // Beside the lid: only straight, and only past walls that are not there.
        return path.EntersBeside && (x < 0.0 || x > scene.Length || y < 0.0 || y > scene.Depth) ? 1.0 : 0.0;
    }
}
