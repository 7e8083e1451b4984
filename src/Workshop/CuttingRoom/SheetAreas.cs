using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>
/// Where the area of one sheet goes, mm². All five together are the sheet; of a roll, what is taken off.
/// </summary>
/// <param name="Parts">Parts.</param>
/// <param name="Offcuts">Rectangles that are kept.</param>
/// <param name="Trim">Trimmed off the edges.</param>
/// <param name="Kerf">Width of the cuts.</param>
/// <param name="Waste">What is thrown away besides.</param>
public sealed record SheetAreas(double Parts, double Offcuts, double Trim, double Kerf, double Waste)
{
    /// <summary>The whole sheet.</summary>
    public double Whole => Parts + Offcuts + Trim + Kerf + Waste;

    /// <summary>What is lost: trim, kerf and waste.</summary>
    public double Lost => Trim + Kerf + Waste;

    /// <summary>The areas of one sheet of a plan.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="task">How it is cut.</param>
    /// <param name="isRoll">True for a roll, which is trimmed at its long edges alone.</param>
    public static SheetAreas Read(CutSheet sheet, CuttingTask task, bool isRoll)
    {
        var length = isRoll ? sheet.UsedLength : sheet.Length;
        var whole = length * sheet.Width;
        var side = isRoll ? 0 : task.Trim;
        var inside = new Rect(side, task.Trim, length - side, sheet.Width - task.Trim);
        var parts = sheet.Parts.Sum(p => p.Length * p.Width);
        var offcuts = sheet.Offcuts.Sum(o => o.Length * o.Width);
        var solid = sheet
            .Parts.Select(p => new Rect(p.X, p.Y, p.X + p.Length, p.Y + p.Width))
            .Concat(sheet.Offcuts.Select(o => new Rect(o.X, o.Y, o.X + o.Length, o.Y + o.Width)))
            .ToList();
        var sawn = sheet
            .Cuts.Where(c => c.Stage > 0)
            .Select(c =>
                c.IsUpright
                    ? new Rect(c.At, c.From, c.At + task.Kerf, c.To)
                    : new Rect(c.From, c.At, c.To, c.At + task.Kerf)
            )
            .Select(inside.Meet)
            .Where(r => r.Area > 0)
            .ToList();
        var kerf = Covered([.. sawn, .. solid]) - Covered(solid);
        var trim = whole - Math.Max(0, inside.Area);
        return new(parts, offcuts, trim, kerf, whole - parts - offcuts - trim - kerf);
    }

    /// <summary>Area that rectangles cover together: swept in strips along x.</summary>
    private static double Covered(List<Rect> all)
    {
        var edges = all.SelectMany(r => new[] { r.Left, r.Right }).Distinct().Order().ToList();
        var area = 0.0;
        for (var i = 0; i + 1 < edges.Count; i++)
        {
            var (left, right) = (edges[i], edges[i + 1]);
            var (covered, upto) = (0.0, double.NegativeInfinity);
            foreach (var r in all.Where(r => r.Left <= left && r.Right >= right).OrderBy(r => r.Low))
            {
                covered += Math.Max(0, r.High - Math.Max(r.Low, upto));
                upto = Math.Max(upto, r.High);
            }

            area += covered * (right - left);
        }

        return area;
    }

    private readonly record struct Rect(double Left, double Low, double Right, double High)
    {
        public double Area => Right > Left && High > Low ? (Right - Left) * (High - Low) : 0;

        public Rect Meet(Rect other) =>
            new(
                Math.Max(Left, other.Left),
                Math.Max(Low, other.Low),
                Math.Min(Right, other.Right),
                Math.Min(High, other.High)
            );
    }
}
