using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Photometry;
using Litterfall.Domain.Trees;
using Litterfall.Laboratory.Cases;
using Litterfall.Physics.Light;

namespace Litterfall.Laboratory.Light;

/// <summary>A lamp of <c>lab light</c>.</summary>
/// <param name="path">The case file, from which the paths of luminaire files count.</param>
/// <param name="notes">Takes what the luminaire files call for saying.</param>
/// <param name="lidMeters">Height of the lid, m.</param>
public sealed class LampForm(string path, ImmutableArray<string>.Builder notes, double lidMeters)
{
    private static readonly string[] Kinds = ["rectangle", "point", "disc", "line", "file"];
    private static readonly NumberRange Place = NumberRange.Within(100.0);
    private static readonly NumberRange Size = new(1e-6, 100.0);
    private static readonly NumberRange Flux = NumberRange.UpTo(1e9);

    /// <summary>The lamp; nothing on a fault.</summary>
    public ImmutableArray<Luminaire> Read(TreeForm f)
    {
        string[] named = [.. Kinds.Where(f.Has)];
        if (named.Length != 1)
        {
            f.Refuse(
                named.Length == 0 ? "the lamp has no form" : "the lamp has several forms",
                $"one of {string.Join(", ", Kinds)}"
            );
            return [];
        }

        var inner = f.Object(named[0], $"a {named[0]}");
        f.Close();
        if (inner is null)
        {
            return [];
        }

        var lamps = named[0] switch
        {
            "rectangle" => Rectangle(inner),
            "point" => Point(inner),
            "disc" =>
            [
                Luminaire.Disc(At(inner), inner.Number("radiusM", Size), inner.Number("lumens", Flux)),
            ],
            "line" => Line(inner),
            _ => File(inner),
        };
        inner.Close();
        return inner.IsGood ? lamps : [];
    }

    private static Point3 At(TreeForm f) => LightForm.Three(f, "centerM", Place);

    private static ImmutableArray<Luminaire> Rectangle(TreeForm f)
    {
        var center = At(f);
        var size = f.Numbers("sizeM", Size, 2);
        double lumens = f.Number("lumens", Flux);
        if (size.Length != 2)
        {
            f.Refuse("sizeM", "sizeM does not hold two numbers", "[along x, along y]");
            return [];
        }

        return [Luminaire.Rectangle(center, (size[0], size[1]), lumens)];
    }

    private static ImmutableArray<Luminaire> Point(TreeForm f)
    {
        var at = LightForm.Three(f, "positionM", Place);
        if (f.Has("candela") && f.Has("lumens"))
        {
            f.Refuse("lumens", "the point has lumens and candela", "one of both");
        }

        double lumens = f.Has("candela")
            ? 4.0 * Math.PI * f.Number("candela", Flux)
            : f.Number("lumens", Flux);
        return [Luminaire.Point(at, lumens)];
    }

    private ImmutableArray<Luminaire> Line(TreeForm f)
    {
        var from = LightForm.Three(f, "fromM", Place);
        var to = LightForm.Three(f, "toM", Place);
        double lumens = f.Number("lumens", Flux);
        if (f.IsGood && (to - from).Length <= 0.0)
        {
            f.Refuse("toM", "the line has no length", "two ends apart");
        }

        if (f.IsGood && from.Z > lidMeters != to.Z > lidMeters)
        {
            f.Refuse("toM", "the line goes through the lid", "a line wholly over or under it");
        }

        return [Luminaire.Line(from, to, lumens)];
    }

    private ImmutableArray<Luminaire> File(TreeForm f)
    {
        string? named = f.Text("path");
        var center = At(f);
        double turn = f.Number("turnDegrees", NumberRange.Within(36_000.0), 0.0);
        if (named is null || !f.IsGood)
        {
            return [];
        }

        string full = Path.Combine(Path.GetDirectoryName(path) ?? "", named);
        if (!System.IO.File.Exists(full))
        {
            f.Refuse("path", $"there is no file '{named}'", "a luminaire file seen from the case file");
            return [];
        }

        var reading = LampFile.Read(named, BoundedFile.Bytes(full, LampFile.LargestFile));
        if (!reading.IsGood)
        {
            var fault = reading.Faults[0];
            f.Refuse(
                "path",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{named}, line {fault.Line}, column {fault.Column}: {fault.Message}"
                ),
                fault.Expected
            );
            return [];
        }

        notes.AddRange(PlacedLamp.Oddities(reading.Value!).Select(n => $"{named}: {n}"));
        return PlacedLamp.Measured(reading.Value!, center, turn);
    }
}
