using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Photometry;
using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Light;

/// <summary>Lamps set in their place: measured ones, and rectangles turned by any angle.</summary>
public static class PlacedLamp
{
    private const int Strips = 6;
    private const double Square = 1e-9;

    /// <summary>From the first to the last strip of a turned rectangle, as a share of its width.</summary>
    public static double StripSpan
    {
        get
        {
            var rule = GaussLegendre.Of(Strips);
            return rule.Points[^1] - rule.Points[0];
        }
    }

    private const double MostOut = 1.05;
    private const double LeastPerWatt = 20.0;
    private const double MostPerWatt = 220.0;

    /// <summary>What is odd about a file, its reader's notes included, as sentences.</summary>
    /// <param name="file">The file.</param>
    public static ImmutableArray<string> Oddities(LampFile file)
    {
        double flux = Table(file).Lumens;
        var notes = file.Notes.ToBuilder();
        if (file.LampLumens is { } lamps && flux > MostOut * lamps)
        {
            notes.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Its intensities sum to {flux:0} lm, more than its lamps of {lamps:0} lm send out."
                )
            );
        }

        if (file.Watts is { } watts && flux / watts is < LeastPerWatt or > MostPerWatt)
        {
            notes.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Its {flux:0} lm from {watts:0.#} W are {flux / watts:0} lm/W; 20 to 220 can be "
                        + $"believed."
                )
            );
        }

        return notes.ToImmutable();
    }

    private static CandelaTable Table(LampFile file) =>
        CandelaTable.Of(
            file.VerticalDegrees.AsSpan(),
            file.HorizontalDegrees.AsSpan(),
            file.Candela.AsSpan()
        );

    /// <summary>A measured luminaire; its flux is the integral of its intensities.</summary>
    /// <param name="file">The file.</param>
    /// <param name="center">Middle of its opening, m.</param>
    /// <param name="turnDegrees">Angle of its 0° plane from +x, counter-clockwise from above, °.</param>
    /// <returns>One luminaire, or strips of one that is turned askew.</returns>
    /// <exception cref="ArgumentException">
    /// The angles of the file do not fit; its reader lets none such pass.
    /// </exception>
    public static ImmutableArray<Luminaire> Measured(LampFile file, Point3 center, double turnDegrees)
    {
        var table = Table(file);
        var opening = file.Opening;
        var lamp = new Luminaire
        {
            Shape = LuminousShape.Point,
            Center = center,
            Lumens = table.Lumens,
            Table = table,
            TurnDegrees = turnDegrees,
        };
        switch (opening.Form)
        {
            case OpeningForm.Disc:
                double radius = 0.5 * opening.Along;
                return [lamp with { Shape = LuminousShape.Disc, Half = (radius, radius) }];
            case OpeningForm.Line:
                bool isAlong = opening.Along > 0.0;
                var half = Turned(
                    0.5 * Math.Max(opening.Along, opening.Across),
                    turnDegrees + (isAlong ? 0.0 : 90.0)
                );
                return [lamp with { Shape = LuminousShape.Line, HalfLine = half }];
            case OpeningForm.Rectangle:
                return Rectangle(lamp, (opening.Along, opening.Across), turnDegrees);
            default:
                return [lamp];
        }
    }

    /// <summary>A level rectangle turned about the vertical.</summary>
    /// <param name="lamp">What shines: center, flux, table or exponent.</param>
    /// <param name="size">Along and across before it is turned, m.</param>
    /// <param name="turnDegrees">Angle, counter-clockwise from above, °.</param>
    /// <returns>One rectangle where it lies along the axes, else strips.</returns>
    public static ImmutableArray<Luminaire> Rectangle(
        Luminaire lamp,
        (double Along, double Across) size,
        double turnDegrees
    )
    {
        var along = Turned(0.5 * size.Along, turnDegrees);
        var across = Turned(0.5 * size.Across, turnDegrees + 90.0);
        if (Math.Abs(along.X) < Square || Math.Abs(along.Y) < Square)
        {
            return
            [
                lamp with
                {
                    Shape = LuminousShape.Rectangle,
                    Half = (Math.Abs(along.X) + Math.Abs(across.X), Math.Abs(along.Y) + Math.Abs(across.Y)),
                },
            ];
        }

        var rule = GaussLegendre.Of(Strips);
        return
        [
            .. rule.Points.Select(
                (p, i) =>
                    lamp with
                    {
                        Shape = LuminousShape.Line,
                        IsStrip = true,
                        Center = lamp.Center + (((2.0 * p) - 1.0) * across),
                        HalfLine = along,
                        Lumens = rule.Weights[i] * lamp.Lumens,
                        Table = lamp.Table?.Times(rule.Weights[i]),
                    }
            ),
        ];
    }

    private static Point3 Turned(double length, double degrees)
    {
        double angle = degrees * Math.PI / 180.0;
        return new Point3(length * Math.Cos(angle), length * Math.Sin(angle), 0.0);
    }
}
