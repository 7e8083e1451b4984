using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;

namespace Litterfall.Web.Desk.Form;

/// <summary>Several ways to write the same thing, of which a design uses one.</summary>
/// <param name="Ways">The ways, by what people call them.</param>
/// <param name="Now">The way of a design.</param>
/// <param name="Turn">The design written in another way.</param>
public sealed record FormSwitch(
    ImmutableArray<string> Ways,
    Func<DesignDocument, string> Now,
    Func<DesignDocument, string, Reading<DesignDocument>> Turn
)
{
    private const string Inside = "inside the glass";
    private const string Outside = "outside the glass";
    private const string Level = "level";
    private const string Slope = "slope";
    private const string Steps = "steps";
    private const string Grains = "layer of grains";
    private const string Raised = "raised floor";

    /// <summary>Whether the edges were measured inside or outside; the readings stay.</summary>
    public static readonly FormSwitch Frame = new(
        [Inside, Outside],
        d => d.Design.Box.Outside is null ? Inside : Outside,
        (d, way) => way == Inside ? Framed(d, "outside", "inside") : Framed(d, "inside", "outside")
    );

    /// <summary>Whether the soil is level, slopes or goes in steps.</summary>
    public static readonly FormSwitch Soil = new(
        [Level, Slope, Steps],
        d =>
            d.Design.Floor.Soil switch
            {
                { Zones.Count: > 0 } => Steps,
                { Front: not null } or { Back: not null } => Slope,
                _ => Level,
            },
        Shaped
    );

    /// <summary>Whether water stands in grains or under a raised floor.</summary>
    public static readonly FormSwitch Drainage = new(
        [Grains, Raised],
        d => d.Design.Floor.Drainage?.Raised is null ? Grains : Raised,
        (d, way) =>
            DesignEdits.SetPart(
                d,
                "floor.drainage",
                way == Raised
                    ? $"{{ raised: {Text(d, "floor.drainage.depth", "6 cm")} }}"
                    : $"{{ material: expanded-clay-8-16, depth: {Text(d, "floor.drainage.raised", "5 cm")} }}"
            )
    );

    private static string Text(DesignDocument document, string path, string otherwise) =>
        TypedLength.TextAt(document, path) is { Length: > 0 } text ? text : otherwise;

    /// <summary>The same readings as the other kind of edges; outside needs the glass as well.</summary>
    private static Reading<DesignDocument> Framed(DesignDocument document, string from, string to)
    {
        if (!document.Spans.TryGetValue($"box.{from}", out _))
        {
            return new(document, []);
        }

        string Edge(string edge) =>
            document.Spans.TryGetValue($"box.{from}.{edge}", out var span)
                ? document.Text[span.Start..span.End]
                : "45 cm";
        var with = DesignEdits.SetPart(
            document,
            $"box.{to}",
            $"{{ length: {Edge("length")}, depth: {Edge("depth")}, height: {Edge("height")} }}"
        );
        if (with.Value is { } both && to == "outside" && both.Design.Box.Glass is null)
        {
            with = DesignEdits.SetPart(both, "box.glass", "{ walls: 5 mm }");
        }

        return with.Value is { } so && with.IsGood ? DesignEdits.Remove(so, $"box.{from}") : with;
    }

    private static Reading<DesignDocument> Shaped(DesignDocument document, string way)
    {
        var mean = Mean(document);
        var depth = mean.Length > 0 ? mean : "7 cm";
        string[] gone = ["floor.soil.depth", "floor.soil.front", "floor.soil.back", "floor.soil.zones"];
        var with = new Reading<DesignDocument>(document, []);
        foreach (var path in gone.Where(p => document.Spans.ContainsKey(p)))
        {
            with = with.Value is { } so ? DesignEdits.Remove(so, path) : with;
        }

        if (with.Value is not { } bare || !with.IsGood)
        {
            return with;
        }

        return way switch
        {
            Slope => Slopes(bare, document, depth),
            Steps => DesignEdits.SetPart(
                bare,
                "floor.soil.zones",
                $"[ {{ share: 50 %, depth: {depth} }}, {{ share: 50 %, depth: {depth} }} ]"
            ),
            _ => DesignEdits.Set(bare, "floor.soil.depth", depth),
        };
    }

    /// <summary>From a little below the mean to a little above, so that it is seen to slope.</summary>
    private static Reading<DesignDocument> Slopes(DesignDocument bare, DesignDocument document, string like)
    {
        var meters = MeanMeters(document.Design.Floor.Soil) ?? 0.07;
        var front = DesignEdits.Set(bare, "floor.soil.front", TypedLength.Write(0.8 * meters, like, "cm"));
        return front.Value is { } so && front.IsGood
            ? DesignEdits.Set(so, "floor.soil.back", TypedLength.Write(1.2 * meters, like, "cm"))
            : front;
    }

    private static string Mean(DesignDocument document)
    {
        var soil = document.Design.Floor.Soil;
        var like = soil is null
            ? ""
            : new[] { soil.Depth?.Text, soil.Front?.Text, soil.Back?.Text }
                .Concat(soil.Zones.SelectMany(z => new[] { z.Depth?.Text, z.Front?.Text }))
                .FirstOrDefault(t => t is not null)
                ?? "";
        return MeanMeters(soil) is { } meters ? TypedLength.Write(meters, like, "cm") : "";
    }

    private static double? MeanMeters(Domain.SoilLayer? soil) =>
        soil switch
        {
            null => null,
            { Zones.Count: > 0 } => soil.Zones.Average(z => Middle(z.Depth?.Si, z.Front?.Si, z.Back?.Si)),
            _ => Middle(soil.Depth?.Si, soil.Front?.Si, soil.Back?.Si),
        };

    private static double Middle(double? depth, double? front, double? back) =>
        depth ?? (((front ?? back ?? 0.07) + (back ?? front ?? 0.07)) / 2);
}
