using Xunit;

namespace Litterfall.UnitTests.House;

/// <summary>
/// The laboratory's lumped box and the forecast of a design are one model: its balances are written once, and
/// the laboratory builds them with its own coefficients.
/// </summary>
public sealed class OneRightHandSideTests
{
    private const string Equations = "src/Physics/Air/HeadspaceEquations.cs";

    /// <summary>
    /// Vapor across a surface is p over R_v T times an area and a speed: written in one place.
    /// </summary>
    [Fact]
    public void Vapor_and_latent_heat_of_surfaces_are_balanced_in_one_file()
    {
        var files = SourceTree
            .Files(["src"], ".cs")
            .Where(file => File.ReadAllText(file).Contains("FluxByKelvin =", StringComparison.Ordinal))
            .Select(SourceTree.Relative)
            .ToList();
        Assert.Equal([Equations], files);
    }

    [Fact]
    public void Only_the_run_of_a_headspace_makes_its_equations()
    {
        var makers = SourceTree
            .Files(["src"], ".cs")
            .Where(file =>
                File.ReadAllText(file).Contains("new HeadspaceEquations(", StringComparison.Ordinal)
            )
            .Select(Path.GetFileName)
            .ToList();
        Assert.Equal(["HeadspaceRun.cs"], makers);
    }

    [Fact]
    public void Laboratory_and_forecast_build_the_same_model()
    {
        string[] makers =
        [
            .. SourceTree
                .Files(["src"], ".cs")
                .Where(file => !file.Contains("Verification", StringComparison.Ordinal))
                .Where(file =>
                    File.ReadAllText(file).Contains("new HeadspaceModel(", StringComparison.Ordinal)
                )
                .Select(file => Path.GetFileName(file))
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(["BoxRun.cs", "HeadspaceForm.cs"], makers);
    }
}
