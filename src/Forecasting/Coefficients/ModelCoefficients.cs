using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>
/// The coefficients of all models for one computation. Each is an input of what is computed with it: a run
/// makes
/// its own sets, its models take what they need, and <see cref="Used"/> tells what was taken.
/// </summary>
public sealed class ModelCoefficients
{
    private readonly ImmutableArray<CoefficientList> lists;
    private readonly CoefficientList uncertainty;

    private ModelCoefficients(CoefficientChanges changes)
    {
        CoefficientList List(string model) => new(model, changes);
        CoefficientList[] all =
        [
            List("headspace"),
            List("surface"),
            List("air"),
            List("water"),
            List("light"),
            List("lightUncertainty"),
            List("life"),
            List("floorLife"),
        ];
        lists = [.. all];
        uncertainty = all[5];
        Headspace = new(all[0]);
        Surface = new(all[1]);
        Air = new(all[2]);
        Water = new(all[3]);
        Light = new(all[4]);
        LightUncertainty = new(all[5]);
        Life = new(all[6]);
        FloorLife = new(all[7]);
    }

    /// <summary>What nobody measures of a headspace, and what a design leaves open.</summary>
    public HeadspaceCoefficients Headspace { get; }

    /// <summary>Glass, ground, leaves and films.</summary>
    public SurfaceCoefficients Surface { get; }

    /// <summary>Convection, openings, drying ground.</summary>
    public AirCoefficients Air { get; }

    /// <summary>Water of the floor.</summary>
    public FloorWaterCoefficients Water { get; }

    /// <summary>Light.</summary>
    public LightCoefficients Light { get; }

    /// <summary>Uncertainty of light.</summary>
    public LightUncertaintyCoefficients LightUncertainty { get; }

    /// <summary>Life of the floor.</summary>
    public LifeCoefficients Life { get; }

    /// <summary>Rates that hold for every floor.</summary>
    public FloorLifeCoefficients FloorLife { get; }

    /// <summary>All coefficients, as cited.</summary>
    public static ImmutableArray<Coefficient> Cited => new ModelCoefficients(CoefficientChanges.None).All;

    /// <summary>New sets for a computation of a design, changed as it says.</summary>
    /// <param name="design">The design.</param>
    public static ModelCoefficients Of(CheckedDesign design) => new(design.Coefficients);

    /// <summary>All coefficients of all models.</summary>
    public ImmutableArray<Coefficient> All => [.. lists.SelectMany(l => l.All)];

    /// <summary>
    /// Those that were taken, as inputs of what was computed; without parts of an uncertainty.
    /// </summary>
    public ImmutableArray<Figure> Used => [.. lists.Where(l => l != uncertainty).SelectMany(l => l.Used)];

    /// <summary>Keys of all that were taken.</summary>
    public ImmutableHashSet<string> UsedKeys => [.. All.Where(c => c.IsUsed).Select(c => c.Key)];

    /// <summary>Notes coefficients as taken, where what they made is shared.</summary>
    /// <param name="keys">Their keys.</param>
    public void Note(ImmutableHashSet<string> keys)
    {
        foreach (var one in All.Where(c => keys.Contains(c.Key)))
        {
            one.Use();
        }
    }

    /// <summary>Parts of the uncertainty of light that were taken.</summary>
    public ImmutableArray<Figure> UsedForUncertainty => [.. uncertainty.Used];
}
