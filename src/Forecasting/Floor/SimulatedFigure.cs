using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Floor;

/// <summary>Numbers of the coupled run, as figures that name the inputs of the simulation.</summary>
public static class SimulatedFigure
{
    private static readonly Citation Engine = new(
        "own-derivation",
        "Richards' equation on the layers of the floor, day by day",
        Provenance.Recomputed
    );

    /// <summary>A simulated number.</summary>
    /// <param name="name">Its name in words.</param>
    /// <param name="si">Value in SI.</param>
    /// <param name="unit">Unit it is shown in.</param>
    /// <param name="how">What was read off the run.</param>
    /// <param name="inputs">What the run rests on.</param>
    public static Figure From(string name, double si, Unit unit, string how, ImmutableArray<Figure> inputs) =>
        Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, Engine);
}
