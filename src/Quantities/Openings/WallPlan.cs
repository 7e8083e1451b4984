using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Openings;

/// <summary>
/// A wall from its lower edge up: panes that end before a vent, the vent between two short panes, sill, bars
/// and doors in front. Seen from the front, or with the front edge on the left.
/// </summary>
public static class WallPlan
{
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>
    /// The plan of a wall: of the pane as it is cut, or of the inside of a box that is bought.
    /// </summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="side">The wall.</param>
    public static OpeningPlan Of(CheckedDesign design, BoxGeometry box, Side side)
    {
        var frame = FrameOf(design, box, side);
        var vents = VentShape.Of(design, box).Where(v => v.Side == side).ToList();
        var opens = side == Side.Front && design.Design.Box.Opening == Opening.Front;
        var plan = opens ? Front(design, box, frame, vents) : Closed(frame, vents);
        return plan with
        {
            Assumed =
            [
                .. plan.Assumed,
                .. vents
                    .Where(v => v.IsPlaced)
                    .Select(v => FormattableString.Invariant($"vent {v.Index + 1} placed by the program")),
            ],
        };
    }

    /// <summary>Height of the doors' opening, m; null for a box without a front opening.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static Figure? DoorOpening(CheckedDesign design, BoxGeometry box) =>
        design.Design.Box.Opening == Opening.Front
            ? Of(design, box, Side.Front).Cells.FirstOrDefault(c => c.Kind == CellKind.Doors)?.Width
            : null;

    /// <summary>Walls of a cut box that end before a vent, and the height of their lowest pane, m.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static IReadOnlyDictionary<Side, Figure> LowestPanes(CheckedDesign design, BoxGeometry box)
    {
        var parted = new Dictionary<Side, Figure>();
        if (design.Design.Box.Panes != PaneSource.Cut || design.Design.Vents.Count == 0)
        {
            return parted;
        }

        foreach (var side in new[] { Side.Front, Side.Back, Side.Left, Side.Right })
        {
            var plan = Of(design, box, side);
            if (plan.Cells is [{ Kind: CellKind.Pane } lowest, _, ..])
            {
                parted[side] = lowest.Width;
            }
        }

        return parted;
    }

    /// <summary>Height of a wall pane as it is cut, m.</summary>
    /// <param name="box">A box with glass.</param>
    public static Figure Tall(BoxGeometry box) =>
        Figure
            .NotNegative(box.OutsideHeight! - box.Base! - OpeningPolicy.Joint)
            .As("height of a wall pane", Unit.Millimeter);

    /// <summary>The rectangle of a wall, and where the inside of the box begins in it.</summary>
    private sealed record Frame(Side Side, Figure Length, Figure Height, Figure Along, Figure Up, bool IsCut);

    private static Frame FrameOf(CheckedDesign design, BoxGeometry box, Side side)
    {
        var across = side is Side.Left or Side.Right;
        if (side == Side.Top)
        {
            return GluedTop(box);
        }

        if (design.Design.Box.Panes != PaneSource.Cut || box.OutsideLength is null)
        {
            return new Frame(
                side,
                across ? box.InsideDepth : box.InsideLength,
                box.InsideHeight,
                OpeningPlan.Zero,
                OpeningPlan.Zero,
                false
            );
        }

        var joint = OpeningPolicy.Joint;
        return across
            ? new Frame(
                side,
                Figure
                    .NotNegative(box.OutsideDepth! - Two * box.Walls! - Two * joint)
                    .As("depth of a side pane", Unit.Millimeter),
                Tall(box),
                OpeningPlan.Zero - joint,
                joint,
                true
            )
            : new Frame(side, box.OutsideLength, Tall(box), box.Walls!, joint, true);
    }

    /// <summary>A top that is glued between the walls; its height is the way from front to back.</summary>
    private static Frame GluedTop(BoxGeometry box)
    {
        var joint = OpeningPolicy.Joint;
        return new Frame(
            Side.Top,
            Figure.NotNegative(box.InsideLength - Two * joint).As("length of the top pane", Unit.Millimeter),
            Figure.NotNegative(box.InsideDepth - Two * joint).As("depth of the top pane", Unit.Millimeter),
            OpeningPlan.Zero - joint,
            joint,
            true
        );
    }

    private static OpeningPlan Closed(Frame frame, List<VentShape> vents)
    {
        var column = new Column(frame);
        column.Add(vents.Where(v => v.Make == VentMake.Strip), CellKind.Pane, Word(frame.Side));
        column.Top(CellKind.Pane, Word(frame.Side), frame.Height);
        column.CutOut(vents.Where(v => v.Make == VentMake.Cutout));
        return column.Done();
    }

    private static OpeningPlan Front(
        CheckedDesign design,
        BoxGeometry box,
        Frame frame,
        List<VentShape> vents
    )
    {
        var column = new Column(frame);
        var typed = design.Design.Box.Sill is { } s
            ? design.Figure("box.sill", "height of the front sill", s, Unit.Millimeter)
            : null;
        var sill = typed is null
            ? OpeningPlan.Zero
            : Figure.NotNegative(typed - frame.Up).As("upper edge of the sill pane", Unit.Millimeter);
        var doors = design.Design.Box.Doors;
        var known = doors?.Kind is not null;
        var header = frame.IsCut && known && doors!.Height is null ? OpeningPolicy.Header : OpeningPlan.Zero;
        var half = box.InsideHeight.Si / 2;
        var strips = vents.Where(v => v.Make == VentMake.Strip).ToList();
        var low = strips.Where(v => v.Across!.Si < half).ToList();
        if (sill.Si > 0)
        {
            column.Top(CellKind.Sill, "front-sill", sill);
        }

        if (column.Add(low, CellKind.Bar, "front-bar") && known)
        {
            column.Top(CellKind.Bar, "front-bar", column.At + OpeningPolicy.Bar);
        }

        var most = Figure.NotNegative(frame.Height - header);
        if (doors?.Height is { } tall && known)
        {
            var high = design.Figure(
                "box.doors.height",
                "height of the front opening",
                tall,
                Unit.Millimeter
            );
            most = Figure.Min(most, column.At + high);
        }

        var above = strips.Except(low).ToList();
        if (above.Count > 0)
        {
            most = Figure.Min(
                most,
                above.Select(v => column.Bottom(v)).MinBy(f => f.Si)! - OpeningPolicy.Bar
            );
        }

        column.Top(CellKind.Doors, "door", most);
        column.Add(above, CellKind.Bar, "front-header");
        column.Top(CellKind.Bar, "front-header", frame.Height);
        column.CutOut(vents.Where(v => v.Make == VentMake.Cutout));
        return column.Done();
    }

    private static string Word(Side side) => side.ToString().ToLowerInvariant();

    /// <summary>A wall that is filled from below.</summary>
    private sealed class Column(Frame frame)
    {
        private readonly List<OpeningCell> cells = [];
        private readonly List<VentShape> outside = [];
        private readonly Dictionary<string, int> names = new(StringComparer.Ordinal);

        /// <summary>How high it is filled, m.</summary>
        public Figure At { get; private set; } = OpeningPlan.Zero;

        /// <summary>Lower edge of a vent in this frame.</summary>
        public Figure Bottom(VentShape vent) =>
            (
                vent.Across is { } middle
                    ? middle - frame.Up - vent.Width / Two
                    : frame.Height - OpeningPolicy.Sliver - vent.Width
            ).As("lower edge of the vent", Unit.Millimeter);

        /// <summary>Fills up to a height; nothing where that is filled already.</summary>
        public void Top(CellKind kind, string name, Figure to)
        {
            if (to.Si - At.Si <= 1e-9)
            {
                return;
            }

            cells.Add(Cell(kind, name, (OpeningPlan.Zero, frame.Length), (At, to)));
            At = to;
        }

        /// <summary>
        /// Bands with mesh between two short panes, a pane below each; true when one was laid.
        /// </summary>
        public bool Add(IEnumerable<VentShape> vents, CellKind below, string name)
        {
            var wanted = new List<VentBand>();
            foreach (var vent in vents)
            {
                var low = Bottom(vent);
                var high = (low + vent.Width).As("upper edge of the vent", Unit.Millimeter);
                if (Fits(vent, low, high))
                {
                    wanted.Add(new VentBand(low, high, [vent]));
                }
                else
                {
                    outside.Add(vent);
                }
            }

            var laid = VentBand.Level(wanted, OpeningPolicy.WallSliver, vent => Left(vent).Si);
            outside.AddRange(wanted.SelectMany(w => w.Vents).Except(laid.SelectMany(b => b.Vents)));
            foreach (var band in laid)
            {
                if (band.Low.Si - At.Si < OpeningPolicy.WallSliver.Si && cells.Count > 0)
                {
                    // The pane below ends at the vent: nothing narrower than a strip is left between.
                    Stretch(band.Low);
                }
                else
                {
                    Top(below, name, band.Low);
                }

                Lay(band);
                At = band.High;
            }

            return laid.Length > 0;
        }

        /// <summary>Openings cut into the panes that hold them.</summary>
        public void CutOut(IEnumerable<VentShape> vents)
        {
            foreach (var vent in vents)
            {
                var low = Bottom(vent);
                var margin = OpeningPolicy.WallSliver.Si - 1e-9;
                var index = cells.FindIndex(c =>
                    c.Kind is CellKind.Pane or CellKind.Sill or CellKind.Bar
                    && low.Si >= c.Low.Si + margin
                    && low.Si + vent.Width.Si <= c.HighSi - margin
                    && Left(vent).Si >= c.Left.Si + margin
                    && Left(vent).Si + vent.Length.Si <= c.RightSi - margin
                    && c.Openings.All(o => o.IsClearOf(new CellOpening(vent, Left(vent), low)))
                );
                if (index < 0)
                {
                    outside.Add(vent);
                    continue;
                }

                cells[index] = cells[index] with
                {
                    Openings = [.. cells[index].Openings, new CellOpening(vent, Left(vent), low)],
                };
            }
        }

        public OpeningPlan Done() =>
            new(frame.Side, frame.Length, frame.Height) { Cells = [.. cells], Outside = [.. outside] };

        private Figure Left(VentShape vent) =>
            (vent.Along + frame.Along - vent.Length / Two).As("left edge of the vent", Unit.Millimeter);

        private bool Fits(VentShape vent, Figure low, Figure high) =>
            low.Si >= Math.Max(At.Si, 0) - 1e-9
            && high.Si <= frame.Height.Si + 1e-9
            && Left(vent).Si >= -1e-9
            && Left(vent).Si + vent.Length.Si <= frame.Length.Si + 1e-9
            && vent.Length.Si > 0;

        private void Stretch(Figure to)
        {
            cells[^1] = cells[^1] with
            {
                Width = (to - cells[^1].Low).As($"height for the {cells[^1].Name}", Unit.Millimeter),
            };
        }

        /// <summary>Mesh over each vent of a band, short panes beside them.</summary>
        private void Lay(VentBand band)
        {
            var from = OpeningPlan.Zero;
            foreach (var vent in band.Vents.OrderBy(v => Left(v).Si))
            {
                var left = Left(vent);
                Filler(from, left, band);
                var right = (left + vent.Length).As("right edge of the vent", Unit.Millimeter);
                cells.Add(
                    Cell(CellKind.Mesh, "vent", (left, right), (band.Low, band.High)) with
                    {
                        Openings = [new CellOpening(vent, left, band.Low)],
                    }
                );
                from = right;
            }

            Filler(from, frame.Length, band);
        }

        private void Filler(Figure from, Figure to, VentBand band)
        {
            if (to.Si - from.Si > 1e-9)
            {
                cells.Add(
                    Cell(CellKind.Pane, $"{Word(frame.Side)}-beside-vent", (from, to), (band.Low, band.High))
                );
            }
        }

        private OpeningCell Cell(
            CellKind kind,
            string name,
            (Figure From, Figure To) along,
            (Figure From, Figure To) across
        )
        {
            var number = names[name] = names.GetValueOrDefault(name) + 1;
            return new OpeningCell(kind, number == 1 ? name : FormattableString.Invariant($"{name}-{number}"))
            {
                Left = along.From,
                Low = across.From,
                Length = (along.To - along.From).As($"length for the {name}", Unit.Millimeter),
                Width = (across.To - across.From).As($"height for the {name}", Unit.Millimeter),
            };
        }
    }
}
