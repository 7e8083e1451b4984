using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Water;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Life;

/// <summary>What the life of a floor rests on.</summary>
/// <param name="Design">The design.</param>
/// <param name="Box">True sizes.</param>
/// <param name="Layers">Layers from the base up.</param>
/// <param name="Sealants">What cures.</param>
/// <param name="Water">Water of the floor.</param>
/// <param name="Climate">Climate of the box; null where it cannot be computed.</param>
public sealed record LifeInputs(
    CheckedDesign Design,
    BoxGeometry Box,
    ImmutableArray<FloorLayer> Layers,
    Sealants Sealants,
    FloorWater Water,
    ClimateFigures? Climate
);
