using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Electrical protection.</summary>
[Means("How the electrical parts are protected.")]
public sealed record Electrics
{
    /// <summary>Trip current of the residual-current device.</summary>
    [Means("Trip current of the residual-current (ground-fault) device, such as 30 mA.")]
    public Typed<ElectricCurrent>? Trip { get; init; }

    /// <summary>Drip loops.</summary>
    [Means("true when every cable hangs in a drip loop below its socket.")]
    public bool DripLoops { get; init; }
}
