using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Forecasting.Light;

namespace Litterfall.Documents.Views;

/// <summary>
/// Fields, lines and plant marks of light drawings. A plant in its band is a ring, one too dark a triangle on
/// its tip,
/// one too bright a triangle on its base; filled where the uncertainty does not matter. Shapes tell it in
/// grey as well.
/// </summary>
internal sealed class LightMarks(Sketch sketch)
{
    private const double Radius = 3.0;
    private const double Apart = 9.0;
    private const double Edge = 4.5;
    private const double Overlap = 0.06;
    private const int Shades = 40;
    private readonly List<Spot> taken = [];

    /// <summary>
    /// Cells as colors. Each shade is laid over all that is as bright or brighter, so that no seam shows
    /// between cells.
    /// </summary>
    /// <param name="values">Values, row by row; not a number for cells left blank.</param>
    /// <param name="across">Cells in a row.</param>
    /// <param name="most">Value of the brightest color.</param>
    /// <param name="place">Corner of cells, by column and row.</param>
    public void Field(IReadOnlyList<double> values, int across, double most, Func<double, double, Spot> place)
    {
        int[] shades = [.. values.Select(v => Shade(v, most))];
        foreach (int shade in shades.Where(s => s >= 0).Distinct().Order())
        {
            var runs = ImmutableArray.CreateBuilder<Contour>();
            for (int j = 0; j < shades.Length / across; j++)
            {
                Runs(shades.AsSpan(j * across, across), shade, (from, to) =>
                    runs.Add(Run(place(from, j), place(to, j + 1)))
                );
            }

            sketch.Add(
                new PathMark(runs.ToImmutable(), [])
                {
                    Shade = Cividis.At((double)shade / Shades),
                    Key = sketch.Key,
                    Layer = Layers.Hatch,
                }
            );
        }
    }

    /// <summary>Stretches of a row that are as bright as a shade or brighter.</summary>
    private static void Runs(ReadOnlySpan<int> row, int shade, Action<int, int> found)
    {
        int from = -1;
        for (int i = 0; i <= row.Length; i++)
        {
            bool isIn = i < row.Length && row[i] >= shade;
            if (isIn && from < 0)
            {
                from = i;
            }
            else if (!isIn && from >= 0)
            {
                found(from, i);
                from = -1;
            }
        }
    }

    private static int Shade(double value, double most) =>
        double.IsNaN(value) || most <= 0.0
            ? -1
            : (int)Math.Round(Shades * Math.Clamp(value / most, 0.0, 1.0));

    private static Contour Run(Spot a, Spot b)
    {
        var (left, right) = (Math.Min(a.X, b.X) - Overlap, Math.Max(a.X, b.X) + Overlap);
        var (top, bottom) = (Math.Min(a.Y, b.Y) - Overlap, Math.Max(a.Y, b.Y) + Overlap);
        return new([new(left, top), new(right, top), new(right, bottom), new(left, bottom)], true);
    }

    /// <summary>Lines of equal light with their values on them.</summary>
    /// <param name="values">Values at points, row by row.</param>
    /// <param name="across">Points in a row.</param>
    /// <param name="levels">Values of the lines.</param>
    /// <param name="place">Where points lie.</param>
    public void Lines(
        IReadOnlyList<double> values,
        int across,
        ImmutableArray<double> levels,
        Func<double, double, Spot> place
    )
    {
        var lines = new Isolines(values, across, place);
        var named = new List<(ImmutableArray<Spot> Chain, string Text)>();
        foreach (double level in levels)
        {
            var chains = lines.At(level);
            ImmutableArray<Contour> contours = [.. chains.Select(c => new Contour(c, false))];
            if (contours.IsEmpty)
            {
                continue;
            }

            sketch.Lines(contours, new Pen(Tone.Paper, 0.55), Layers.Hatch);
            sketch.Lines(contours, new Pen(Tone.Ink, 0.22), Layers.Hatch);
            string text = level.ToString("0.##", CultureInfo.InvariantCulture);
            named.AddRange(
                chains.Where(c => Length(c) > Apart).OrderByDescending(Length).Take(2).Select(c => (c, text))
            );
        }

        // After all lines, so that none runs through a number.
        foreach (var (chain, text) in named)
        {
            Label(chain, text);
        }
    }

    private static double Length(ImmutableArray<Spot> chain)
    {
        double sum = 0.0;
        for (int i = 1; i < chain.Length; i++)
        {
            sum += Distance(chain[i - 1], chain[i]);
        }

        return sum;
    }

    private static double Distance(Spot a, Spot b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    /// <summary>A value on a line where it crowds nothing: as near its middle as can be.</summary>
    private void Label(ImmutableArray<Spot> chain, string text)
    {
        int middle = chain.Length / 2;
        foreach (int i in Enumerable.Range(0, chain.Length).OrderBy(i => Math.Abs(i - middle)))
        {
            bool isEnd = Distance(chain[i], chain[0]) < Edge || Distance(chain[i], chain[^1]) < Edge;
            if (
                taken.Exists(t => Distance(t, chain[i]) < Apart)
                || (isEnd && Distance(chain[0], chain[^1]) > 1e-6)
            )
            {
                continue;
            }

            double half = (0.5 * Lettering.Width(text, 9)) + 0.7;
            sketch.Add(
                new PathMark(
                    [new Contour(Sketch.Corners(chain[i].Moved(-half, -1.9), 2.0 * half, 3.8), true)],
                    []
                )
                {
                    Fill = Tone.Paper,
                    Key = sketch.Key,
                    Layer = Layers.Label,
                }
            );
            sketch.Text(chain[i].Moved(0.0, 1.15), text, 9, Align.Middle);
            taken.Add(chain[i]);
            return;
        }
    }

    /// <summary>Height of the key of colors, mm.</summary>
    public const double KeyTall = 12;

    private const double MostKey = 70;
    private const double FineKey = 42;
    private const int KeySteps = 24;
    private const string KeyUnit = "µmol/m²/s";
    private const string KeyWords = "plant light, " + KeyUnit;

    /// <summary>The colors with their values, under a map.</summary>
    /// <param name="corner">Its upper left corner.</param>
    /// <param name="width">Room, mm.</param>
    /// <param name="most">Value of the brightest color, µmol/(m² s).</param>
    public void Key(Spot corner, double width, double most)
    {
        if (most <= 0)
        {
            return;
        }

        // What the colors tell is changed at the lamps.
        sketch.Key = "lamps";
        double beside = Lettering.Width(KeyWords, 9) + 3;
        bool isBeside = width > beside + 40;
        double wide = Math.Min(MostKey, isBeside ? width - beside : width);
        for (int i = 0; i < KeySteps; i++)
        {
            sketch.Add(
                new PathMark(
                    [
                        new(
                            Sketch.Corners(
                                corner.Moved(wide * i / KeySteps, 0),
                                (wide / KeySteps) + Overlap,
                                3
                            ),
                            true
                        ),
                    ],
                    []
                )
                {
                    Shade = Cividis.At((i + 0.5) / KeySteps),
                    Layer = Layers.Hatch,
                    Key = sketch.Key,
                }
            );
        }

        sketch.Rectangle(corner, wide, 3, Pen.Fine);
        foreach (double share in wide < FineKey ? new[] { 0, 0.5, 1 } : [0, 0.25, 0.5, 0.75, 1])
        {
            var align =
                share == 0 ? Align.Start
                : share == 1 ? Align.End
                : Align.Middle;
            sketch.Line(corner.Moved(wide * share, 3), corner.Moved(wide * share, 4), Pen.Fine);
            sketch.Text(
                corner.Moved(wide * share, 7.2),
                (share * most).ToString(most < 20 ? "0.#" : "0", CultureInfo.InvariantCulture),
                9,
                align
            );
        }

        sketch.Text(
            isBeside ? corner.Moved(wide + 3, 2.6) : corner.Moved(0, 11),
            isBeside ? KeyWords : KeyUnit,
            9,
            Align.Start,
            Tone.Quiet
        );
    }

    /// <summary>Keeps labels of lines away from a place.</summary>
    public void Keep(Spot at) => taken.Add(at);

    /// <summary>A plant by how its light stands to its band, with its number.</summary>
    public void Plant(Spot at, PlantLight plant)
    {
        var (tone, isFull, turn) = Form(plant.Verdict);
        var pen = new Pen(isFull ? Tone.Paper : tone, isFull ? 0.4 : 0.6);
        if (turn == 0)
        {
            sketch.Rings([new Ring(at, Radius)], pen, isFull ? tone : Tone.Paper, Layers.Label);
        }
        else
        {
            double r = Radius * 1.45;
            sketch.Area(
                [
                    at.Moved(0.0, -turn * r),
                    at.Moved(0.9 * r, turn * 0.62 * r),
                    at.Moved(-0.9 * r, turn * 0.62 * r),
                ],
                pen,
                isFull ? tone : Tone.Paper
            );
        }

        sketch.Text(
            at.Moved(
                0.0,
                1.15
                    - (
                        turn < 0 ? 0.9
                        : turn > 0 ? -0.5
                        : 0.0
                    )
            ),
            plant.Spot.Number.ToString(CultureInfo.InvariantCulture),
            9,
            Align.Middle,
            isFull ? Tone.Paper : Tone.Ink
        );
    }

    /// <summary>Tone, filled or not, and 1 for a triangle on its base, -1 on its tip, 0 for a ring.</summary>
    private static (Tone Tone, bool IsFull, int Turn) Form(LightVerdict verdict) =>
        verdict switch
        {
            LightVerdict.BelowSurvival => (Tone.Stop, true, -1),
            LightVerdict.TooDark => (Tone.Note, true, -1),
            LightVerdict.PerhapsDark => (Tone.Note, false, -1),
            LightVerdict.PerhapsBright => (Tone.Caution, false, 1),
            LightVerdict.TooBright => (Tone.Caution, true, 1),
            LightVerdict.Within or LightVerdict.Colored => (Tone.Well, true, 0),
            _ => (Tone.Ink, false, 0),
        };
}
