using CsCheck;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Keys;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Domain;

/// <summary>
/// What is written is read back equal; whatever is read can be computed and its sums close.
/// </summary>
public sealed class RoundTripTests
{
    private static readonly string[] Litres = ["finishedLitres", "mixedLitres", "looseLitres", "toBuyLitres"];

    [Fact]
    public void A_written_design_reads_back_equal() =>
        RandomDesigns.All.Sample(
            design =>
            {
                var text = DesignWriter.Write(design);
                var reading = DesignReader.Read("random", text);
                Assert.True(reading.IsGood, $"{string.Join('\n', reading.Faults)}\n{text}");
                Assert.Equal(design, reading.Value!.Design);
            },
            iter: LongRun.Cases(300, 2000)
        );

    [Fact]
    public void Every_valid_design_can_be_computed_and_its_sums_close() =>
        RandomDesigns.All.Sample(design => Closes(Run(design)), iter: LongRun.Cases(12, 900));

    /// <summary>The same sums where nothing is simulated, on many more.</summary>
    [Fact]
    public void The_quantities_of_every_valid_design_close() =>
        RandomDesigns.All.Sample(
            design =>
            {
                var shape = DesignNumbers.Shape(Checked(design));
                Closes(new DesignResult(shape, [], CheckReport.Write(shape, [])));
            },
            iter: LongRun.Cases(200, 5000)
        );

    [Fact]
    public void The_samples_close_too() =>
        Assert.All(SampleFiles.Paths, path => Closes(Posed.Sample(path).Whole));

    private static DesignResult Run(Design design) => DesignRun.Execute(Checked(design));

    private static CheckedDesign Checked(Design design)
    {
        var reading = DesignReader.Read("random", DesignWriter.Write(design));
        var check = DesignChecker.Check(reading.Value!, SampleFiles.Catalog);
        Assert.True(check.IsGood, $"{string.Join('\n', check.Faults)}\n{reading.Value!.Text}");
        return check.Value!;
    }

    private static void Closes(DesignResult result)
    {
        foreach (var (path, node) in result.Report.Leaves())
        {
            if (node is ReportNumber number)
            {
                Assert.True(double.IsFinite(number.Number), path);
                Assert.True(
                    number.Number >= 0 || !path.EndsWith("Litres", StringComparison.Ordinal),
                    $"{path} = {number.Number}\n{result.Numbers.Design.Document.Text}"
                );
            }
        }

        foreach (var layer in result.Numbers.Layers.Where(l => !l.Components.IsDefaultOrEmpty))
        {
            var parts = layer.Components;
            Adds("finished", layer.Finished, parts.Select(p => p.Finished));
            Adds("mixed", layer.Mixed, parts.Select(p => p.Mixed));
            Adds("loose", layer.Loose, parts.Select(p => p.Loose));
            Adds("to buy", layer.ToBuy, parts.Select(p => p.ToBuy));
        }

        RowsAdd(result.Report);
        var weights = result.Numbers.Weights;
        Assert.True(weights.Dry.Si <= weights.Planted.Si + 1e-9, result.Numbers.Design.Document.Text);
        Assert.True(weights.Planted.Si <= weights.Wet.Si + 1e-9, result.Numbers.Design.Document.Text);
    }

    /// <summary>The same in the printed report, whose numbers have ten digits.</summary>
    private static void RowsAdd(ReportObject report)
    {
        var rows = ((ReportList)report.Find("quantities")!).Items.Cast<ReportObject>().ToList();
        foreach (var layer in rows.Where(r => Word(r, "row") == "layer"))
        {
            var parts = rows.Where(r =>
                    Word(r, "row") == "component" && Word(r, "layer") == Word(layer, "layer")
                )
                .ToList();
            foreach (var key in parts.Count == 0 ? [] : Litres)
            {
                var whole = Number(layer, key);
                Assert.Equal(whole, parts.Sum(p => Number(p, key)), Math.Abs(whole) * 1e-9 + 1e-12);
            }
        }
    }

    private static void Adds(string what, Figure whole, IEnumerable<Figure> parts)
    {
        var sum = parts.Sum(p => p.Si);
        Assert.True(
            Math.Abs(sum - whole.Si) <= Math.Abs(whole.Si) * 1e-12 + 1e-18,
            $"{what}: {sum}, {whole.Si}"
        );
    }

    private static string Word(ReportObject row, string key) => ((ReportText)row.Find(key)!).Text;

    private static double Number(ReportObject row, string key) => ((ReportNumber)row.Find(key)!).Number;
}
