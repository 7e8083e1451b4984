using System.Text.Json;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>One entity as ezdxf reads it.</summary>
internal sealed record DxfEntity(
    string Kind,
    string Layer,
    double[][] Points,
    bool Closed,
    double? Radius,
    string? Text
)
{
    /// <summary>
    /// Its straight edges, each written the same from either end, to a hundredth of a millimeter.
    /// </summary>
    public IEnumerable<string> Edges()
    {
        var count = Closed ? Points.Length : Points.Length - 1;
        for (var i = 0; i < count && Kind is "LINE" or "POLYLINE" && i < count; i++)
        {
            string[] ends = [Spot(Points[i]), Spot(Points[(i + 1) % Points.Length])];
            yield return string.Join(" - ", ends.Order(StringComparer.Ordinal));
        }

        if (Kind == "CIRCLE")
        {
            yield return $"circle {Spot(Points[0])} {Radius:0.00}";
        }
    }

    /// <summary>Least and greatest of x, or of y.</summary>
    public (double Low, double High) Span(int axis) => (Points.Min(p => p[axis]), Points.Max(p => p[axis]));

    private static string Spot(double[] point) => $"{point[0] + 0.0:0.00} {point[1] + 0.0:0.00}";
}

/// <summary>An exchange file as ezdxf reads it.</summary>
internal sealed record DxfFile(
    string? Fault,
    string Version,
    string[] Errors,
    string[] Fixes,
    string[] Layers,
    Dictionary<string, double[]> Extents,
    DxfEntity[] Entities
)
{
    private static readonly JsonSerializerOptions Names = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    };

    /// <summary>Reads files, by path.</summary>
    public static Dictionary<string, DxfFile> Read(IEnumerable<string> files) =>
        JsonSerializer.Deserialize<Dictionary<string, DxfFile>>(DebianTool.Audit(files), Names)!;

    /// <summary>Width and height of what lies on a layer.</summary>
    public (double Width, double Height) Size(string layer)
    {
        var box = Extents[layer];
        return (box[2] - box[0], box[3] - box[1]);
    }

    /// <summary>It opens, and the audit finds nothing to object to or to mend.</summary>
    public void IsClean(string name)
    {
        Assert.True(Fault is null, $"{name}: {Fault}");
        Assert.True(Errors.Length == 0, $"{name}: {string.Join("; ", Errors)}");
        Assert.True(Fixes.Length == 0, $"{name}: {string.Join("; ", Fixes)}");
        Assert.Equal("AC1009", Version);
    }

    /// <summary>One line of 100 mm on its own layer.</summary>
    public void HasReference(string name)
    {
        var line = Assert.Single(Entities, e => e.Layer == "REF");
        Assert.Equal("LINE", line.Kind);
        var (low, high) = line.Span(0);
        Assert.True(Math.Abs(high - low - 100) < 0.001, $"{name}: {high - low} mm");
        Assert.Equal(line.Points[0][1], line.Points[1][1]);
    }
}
