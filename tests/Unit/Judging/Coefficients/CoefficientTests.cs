using System.Collections.Concurrent;
using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;
using Xunit;

namespace Litterfall.UnitTests.Judging.Coefficients;

/// <summary>Coefficients are cited, and each is an input of every number that it moves.</summary>
public sealed class CoefficientTests
{
    private static readonly Dictionary<string, PosedModel[]> Shown = new(StringComparer.Ordinal)
    {
        ["headspace"] = PosedModels.Air,
        ["surface"] = PosedModels.Air,
        ["air"] = PosedModels.Air,
        ["water"] = PosedModels.Water,
        ["light"] = PosedModels.Light,
        ["lightUncertainty"] = PosedModels.Light,
        ["life"] = PosedModels.Life,
        ["floorLife"] = PosedModels.Life,
    };

    /// <summary>
    /// They are of lamps with a laboratory's file, spectrum or photon flux beside the design.
    /// </summary>
    private static readonly string[] OfFiles =
    [
        "lightUncertainty.fluxOfFile",
        "lightUncertainty.spreadOfFile",
        "lightUncertainty.photonsOfSpectrum",
        "lightUncertainty.readWithSpectrum",
    ];

    [Fact]
    public void Each_has_its_own_key_and_name()
    {
        var cited = ModelCoefficients.Cited;
        Assert.Equal(cited.Length, cited.DistinctBy(c => c.Key).Count());
        Assert.Equal(cited.Length, cited.DistinctBy(c => c.Figure.Identity).Count());
    }

    [Fact]
    public void Each_stands_in_a_listed_source_and_is_read_only_where_that_was()
    {
        var sources = Shop.Embedded().Sources;
        Assert.Empty(
            ModelCoefficients
                .Cited.Where(c =>
                    sources.GetValueOrDefault(c.Figure.Origin.Source) is not { } source
                    || string.IsNullOrWhiteSpace(c.Figure.Origin.Place)
                    || (c.Figure.Origin.Provenance == Provenance.Read && source.Read is "none" or "title")
                )
                .Select(c => $"{c.Key}: {c.Figure.Origin}")
        );
    }

    [Fact]
    public void Each_lies_within_its_range() =>
        Assert.Empty(
            ModelCoefficients
                .Cited.Where(c =>
                    c.Range is { } range
                    && !(range.Low <= c.Number && c.Number <= range.High && range.Low < range.High)
                )
                .Select(c => c.Key)
        );

    /// <summary>
    /// Falsified, each moves a number of some small design, and every number it moves names it with the false
    /// value among its inputs: what is told and what is computed cannot part.
    /// </summary>
    [Fact]
    public void Each_moves_numbers_that_name_it()
    {
        var bases = Shown
            .Values.SelectMany(p => p)
            .Distinct()
            .ToDictionary(p => p, p => new Lazy<Shower>(() => Shower.Of(p)));
        Assert.All(bases.Values, b => Assert.NotEmpty(b.Value.Numbers));
        var faults = new ConcurrentBag<string>();
        Parallel.ForEach(ModelCoefficients.Cited.Where(c => !OfFiles.Contains(c.Key)), one =>
        {
            if (Fault(one, Shown[one.Key.Split('.')[0]], p => bases[p].Value) is { } fault)
            {
                faults.Add(fault);
            }
        });
        Assert.True(faults.IsEmpty, string.Join("\n", faults.Order(StringComparer.Ordinal)));
    }

    /// <summary>By how much the books of a run miss is round-off and rests on no coefficient.</summary>
    private const string Books = "ledgerErrorGrams";

    /// <summary>Designs whose numbers name it come first: one of them mostly shows it at once.</summary>
    private static string? Fault(Coefficient one, PosedModel[] models, Func<PosedModel, Shower> of)
    {
        foreach (var model in models.OrderByDescending(m => of(m).Named.Contains(one.Figure.Name!)))
        {
            var (design, before, _) = of(model);
            foreach (var other in Others(one))
            {
                var after = model.Numbers(design.With(design.Coefficients.With(one.Key, other)));
                string[] moved =
                [
                    .. after
                        .Where(n => !before.TryGetValue(n.Key, out var old) || old.Number != n.Value.Number)
                        .Select(n => n.Key),
                ];
                if (moved.Length > 0)
                {
                    string[] silent =
                    [
                        .. moved.Where(k => k != Books && !Names(after[k].Figure, one, other)),
                    ];
                    return silent.Length == 0 ? null : $"{one.Key} moves {string.Join(", ", silent)} unnamed";
                }
            }
        }

        return $"{one.Key} moves nothing";
    }

    /// <summary>A small design with its numbers, and the names of all they rest on.</summary>
    private sealed record Shower(
        CheckedDesign Design,
        Dictionary<string, ReportNumber> Numbers,
        HashSet<string> Named
    )
    {
        public static Shower Of(PosedModel model)
        {
            var design = model.Design();
            var numbers = model.Numbers(design);
            var seen = new HashSet<Figure>();
            return new(
                design,
                numbers,
                [
                    .. numbers
                        .Values.SelectMany(n => Leaves(n.Figure, seen))
                        .Select(l => l.Name)
                        .OfType<string>(),
                ]
            );
        }
    }

    private static double[] Others(Coefficient one) =>
        one.Range is { } range
            ? [range.High == one.Number ? range.Low : range.High, range.Low]
            : [one.Number * 1.3];

    private static bool Names(Figure figure, Coefficient one, double other) =>
        Leaves(figure, []).Any(l => l.Name == one.Figure.Name && l.Value == one.At(other).Figure.Value);

    private static IEnumerable<Figure> Leaves(Figure of, HashSet<Figure> seen) =>
        !seen.Add(of) ? []
        : of.IsGiven ? [of]
        : of.Inputs.SelectMany(i => Leaves(i, seen));
}
