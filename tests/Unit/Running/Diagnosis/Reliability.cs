using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Running.Diagnosis.Finding;
using Litterfall.Running.Diagnosis.Matrix;

namespace Litterfall.UnitTests.Running.Diagnosis;

/// <summary>Stated chances against how often they came true, in bins of a tenth.</summary>
internal sealed class Reliability
{
    private const int Bins = 10;
    private readonly (double Stated, int True, int Count)[] bins = new (double, int, int)[Bins];

    public int Tanks { get; private set; }

    public int First { get; private set; }

    public int FirstThree { get; private set; }

    /// <summary>Mean of the squared miss of the stated chance of the first cause (Brier 1950).</summary>
    public double Brier { get; private set; }

    public IEnumerable<(double Stated, double Came, int Count)> Rows =>
        bins.Where(b => b.Count > 0).Select(b => (b.Stated / b.Count, (double)b.True / b.Count, b.Count));

    /// <summary>Count-weighted mean of the distance between stated and came true.</summary>
    public double MeanMiss =>
        Rows.Sum(r => r.Count * Math.Abs(r.Stated - r.Came)) / Math.Max(1, Rows.Sum(r => r.Count));

    public void Add(Cause truth, FaultAnswer answer)
    {
        Tanks++;
        var place = answer.Causes.Select(c => c.Row.Cause).ToList().IndexOf(truth);
        First += place == 0 ? 1 : 0;
        FirstThree += place < 3 ? 1 : 0;
        var top = answer.Causes[0];
        Brier += Math.Pow(top.Probability - (place == 0 ? 1 : 0), 2);
        foreach (var cause in answer.Causes.Take(3))
        {
            var bin = Math.Min(Bins - 1, (int)(Bins * cause.Probability));
            var (stated, came, count) = bins[bin];
            bins[bin] = (stated + cause.Probability, came + (cause.Row.Cause == truth ? 1 : 0), count + 1);
        }
    }

    public string Table()
    {
        var text = new StringBuilder();
        foreach (var (stated, came, count) in Rows)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"stated {100 * stated,3:0} %  came true {100 * came,3:0} %  of {count}\n"
            );
        }

        return text.ToString();
    }

    /// <summary>
    /// The plot as SVG: a dot for each bin, its area by the count, against the line of equal.
    /// </summary>
    public string Plot()
    {
        var c = CultureInfo.InvariantCulture;
        var text = new StringBuilder(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 420 420\" font-family=\"Inter, "
                + "sans-serif\" "
                + "font-size=\"14\">\n<rect width=\"420\" height=\"420\" fill=\"#FBF8F2\"/>\n"
                + "<path d=\"M60 360H380M60 360V40\" stroke=\"#B9B2A2\" fill=\"none\"/>\n"
                + "<path d=\"M60 360L380 40\" stroke=\"#56645D\" stroke-dasharray=\"4 4\" fill=\"none\"/>\n"
        );
        for (var i = 0; i <= 100; i += 25)
        {
            var (x, y) = (60 + (3.2 * i), 360 - (3.2 * i));
            text.Append(
                c,
                $"<text x=\"{x:0}\" y=\"380\" text-anchor=\"middle\" fill=\"#22302B\">{i}</text>\n"
            );
            text.Append(
                c,
                $"<text x=\"52\" y=\"{y + 5:0}\" text-anchor=\"end\" fill=\"#22302B\">{i}</text>\n"
            );
        }

        foreach (var (stated, came, count) in Rows)
        {
            var (x, y) = (60 + (320 * stated), 360 - (320 * came));
            text.Append(
                c,
                $"<circle cx=\"{x:0.0}\" cy=\"{y:0.0}\" r=\"{2 + Math.Sqrt(count) / 2.5:0.0}\" "
                    + $"fill=\"#1F5F5B\" fill-opacity=\"0.7\"/>\n"
            );
        }

        text.Append(
            "<text x=\"220\" y=\"405\" text-anchor=\"middle\" fill=\"#22302B\">stated chance, %</text>\n"
        );
        text.Append("<text x=\"60\" y=\"26\" fill=\"#22302B\">came true, %</text>\n</svg>\n");
        return text.ToString();
    }
}
