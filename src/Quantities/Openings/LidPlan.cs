using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Openings;

/// <summary>
/// The top opening under its lid, from the front edge back: a part that folds up, panes, strips that carry
/// mesh, a strip for hoses. Panes end where a strip begins, so that the parts fill the opening once.
/// </summary>
public static class LidPlan
{
    private static readonly Figure Two = Figure.Number(2);

    /// <summary>The plan; null without a lid.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static OpeningPlan? Of(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Lid is not { } lid)
        {
            return null;
        }

        var (length, depth) = (box.OpeningLength, box.OpeningDepth);
        var vents = VentShape.Of(design, box).Where(v => v.Side == Side.Top).ToList();
        if (design.Find("lid.material") is MeshEntry)
        {
            var whole = new OpeningCell(CellKind.Mesh, "lid")
            {
                Left = OpeningPlan.Zero,
                Low = OpeningPlan.Zero,
                Length = length,
                Width = depth,
            };
            return new OpeningPlan(Side.Top, length, depth) { Cells = [whole], Outside = [.. vents] };
        }

        var strip = lid.Strip is { } s
            ? design.Figure("lid.strip", "strip for hoses and cables", s, Unit.Millimeter)
            : OpeningPlan.Zero;
        var flap = lid.Hinged is { } h
            ? design.Figure("lid.hinged", "front part that folds up", h, Unit.Millimeter)
            : OpeningPlan.Zero;
        var back = (depth - strip).As("front edge of the strip for hoses", Unit.Millimeter);
        var (bands, beyond) = Bands(box, (flap, back), vents.Where(v => v.Make == VentMake.Strip));
        var layout = new Layout(design, box, length, depth) { Vents = vents };
        layout.Fill((flap, back), bands, strip);
        layout.CutOut(vents.Where(v => v.Make == VentMake.Cutout));
        return new OpeningPlan(Side.Top, length, depth)
        {
            Cells = [.. layout.Cells],
            Assumed = [.. Told(design, vents)],
            Outside = [.. beyond, .. layout.Outside],
        };
    }

    /// <summary>Shift from the inside of the box to its opening, m.</summary>
    internal static Figure Rim(BoxGeometry box) =>
        ((box.InsideLength - box.OpeningLength) / Two).As("rim beside the opening", Unit.Millimeter);

    private static (ImmutableArray<VentBand> Bands, List<VentShape> Beyond) Bands(
        BoxGeometry box,
        (Figure From, Figure To) room,
        IEnumerable<VentShape> vents
    )
    {
        var wanted = new List<VentBand>();
        var beyond = new List<VentShape>();
        var free = room.To;
        foreach (var vent in vents)
        {
            var half = (vent.Width / Two + OpeningPolicy.VentMargin).As(
                "half the strip of the vent",
                Unit.Millimeter
            );
            var (low, high) = vent.Across is { } middle
                ? (middle - Rim(box) - half, middle - Rim(box) + half)
                : (free - Two * half, free);
            var margin = OpeningPolicy.VentMargin.Si - 1e-9;
            var left = vent.Along.Si - Rim(box).Si - (vent.Length.Si / 2);
            if (
                low.Si < room.From.Si - 1e-9
                || high.Si > room.To.Si + 1e-9
                || left < margin
                || left + vent.Length.Si > box.OpeningLength.Si - margin
            )
            {
                beyond.Add(vent);
                continue;
            }

            var named = (
                Low: low.As("front edge of the vent strip", Unit.Millimeter),
                High: high.As("back edge of the vent strip", Unit.Millimeter)
            );
            wanted.Add(new VentBand(named.Low, named.High, [vent]));
            free = vent.Across is null ? named.Low : free;
        }

        var kept = wanted.Where((w, i) => !wanted.Take(i).Any(o => Overlap(o.Vents[0], w.Vents[0], o, w)));
        var list = kept.ToList();
        beyond.AddRange(wanted.Except(list).SelectMany(w => w.Vents));
        return (VentBand.Joined(list, OpeningPolicy.Sliver), beyond);
    }

    private static bool Overlap(VentShape one, VentShape other, VentBand first, VentBand second) =>
        Math.Abs(one.Along.Si - other.Along.Si) < (one.Length.Si + other.Length.Si) / 2
        && first.Low.Si < second.High.Si - 2 * OpeningPolicy.VentMargin.Si
        && second.Low.Si < first.High.Si - 2 * OpeningPolicy.VentMargin.Si;

    private static IEnumerable<string> Told(CheckedDesign design, List<VentShape> vents)
    {
        var lid = design.Design.Lid!;
        if (lid is { Rests: null, Overlap: null } && design.Design.Box.Rim is null)
        {
            yield return "the lid rests on ledges glued to the walls";
        }

        foreach (var vent in vents.Where(v => v.IsPlaced))
        {
            yield return FormattableString.Invariant($"vent {vent.Index + 1} placed by the program");
        }
    }

    /// <summary>Cells of a lid while they are laid out.</summary>
    private sealed class Layout(CheckedDesign design, BoxGeometry box, Figure length, Figure depth)
    {
        private int panes;
        private int strips;

        public List<OpeningCell> Cells { get; } = [];

        public List<VentShape> Outside { get; } = [];

        public required List<VentShape> Vents { get; init; }

        public void Fill((Figure From, Figure To) room, ImmutableArray<VentBand> bands, Figure strip)
        {
            if (room.From.Si > 0)
            {
                Cells.Add(
                    Cell(
                        CellKind.Pane,
                        "lid-front",
                        (OpeningPlan.Zero, length),
                        (OpeningPlan.Zero, room.From)
                    )
                );
            }

            var at = room.From;
            foreach (var band in bands)
            {
                var (low, high) = (band.Low, band.High);
                if (low.Si - at.Si < OpeningPolicy.Sliver.Si)
                {
                    low = at;
                }

                if (room.To.Si - high.Si < OpeningPolicy.Sliver.Si)
                {
                    high = room.To;
                }

                AddPanes(at, low);
                strips++;
                Cells.Add(
                    Cell(
                        CellKind.VentStrip,
                        Numbered("vent-strip", strips),
                        (OpeningPlan.Zero, length),
                        (low, high)
                    ) with
                    {
                        Openings = [.. band.Vents.Select(v => Hole(v, low, high))],
                    }
                );
                at = high;
            }

            AddPanes(at, room.To);
            if (strip.Si > 0)
            {
                Cells.Add(Cell(CellKind.HoseStrip, "strip", (OpeningPlan.Zero, length), (room.To, depth)));
            }
        }

        /// <summary>Openings cut into panes; those that no pane holds stay outside.</summary>
        public void CutOut(IEnumerable<VentShape> vents)
        {
            foreach (var vent in vents)
            {
                var index = Cells.FindLastIndex(c => c.Kind == CellKind.Pane && Holds(c, vent));
                if (index < 0)
                {
                    Outside.Add(vent);
                    continue;
                }

                var cell = Cells[index];
                Cells[index] = cell with { Openings = [.. cell.Openings, Hole(vent, cell)] };
            }
        }

        private bool Holds(OpeningCell cell, VentShape vent)
        {
            var hole = Hole(vent, cell);
            var margin = OpeningPolicy.VentMargin.Si - 1e-9;
            return hole.Left.Si >= cell.Left.Si + margin
                && hole.Left.Si + vent.Length.Si <= cell.RightSi - margin
                && hole.Low.Si >= cell.Low.Si + margin
                && hole.Low.Si + vent.Width.Si <= cell.HighSi - margin
                && cell.Openings.All(o => o.IsClearOf(hole));
        }

        private CellOpening Hole(VentShape vent, OpeningCell cell) =>
            vent.Across is null
                ? Hole(
                    vent,
                    (cell.Low + cell.Width - vent.Width - Two * OpeningPolicy.VentMargin),
                    cell.Low + cell.Width
                )
                : Hole(vent, cell.Low, cell.Low + cell.Width);

        /// <summary>In the middle of its strip, or where the design has it.</summary>
        private CellOpening Hole(VentShape vent, Figure low, Figure high)
        {
            var middle = vent.Across is { } typed ? typed - Rim(box) : (low + high) / Two;
            return new CellOpening(
                vent,
                (vent.Along - Rim(box) - vent.Length / Two).As("left edge of the vent", Unit.Millimeter),
                (middle - vent.Width / Two).As("front edge of the vent", Unit.Millimeter)
            );
        }

        private void AddPanes(Figure low, Figure high)
        {
            if (high.Si - low.Si <= 1e-9)
            {
                return;
            }

            var count = design.Design.Lid!.Panes;
            var each =
                count == 1 ? length : (length / Figure.Number(count)).As("one of the panes", Unit.Millimeter);
            for (var i = 0; i < count; i++)
            {
                panes++;
                var left = i == 0 ? OpeningPlan.Zero : Figure.Number(i) * each;
                Cells.Add(Cell(CellKind.Pane, Numbered("lid", panes), (left, left + each), (low, high)));
            }
        }

        private OpeningCell Cell(
            CellKind kind,
            string name,
            (Figure From, Figure To) along,
            (Figure From, Figure To) across
        ) =>
            new(kind, name)
            {
                Left = along.From,
                Low = across.From,
                Length = (along.To - along.From).As($"length for the {name}", Unit.Millimeter),
                Width = (across.To - across.From).As($"depth for the {name}", Unit.Millimeter),
                LowHangs = across.From.Si > 0,
                HighHangs = across.To.Si < depth.Si - 1e-9,
            };

        private static string Numbered(string name, int number) =>
            number == 1 ? name : FormattableString.Invariant($"{name}-{number}");
    }
}
