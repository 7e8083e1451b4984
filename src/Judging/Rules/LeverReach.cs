namespace Litterfall.Judging.Rules;

/// <summary>Whether turning mist, vents or lamps may clear a finding.</summary>
public enum LeverReach
{
    /// <summary>No lever reaches it.</summary>
    None,

    /// <summary>It rests on the air of the box.</summary>
    Air,

    /// <summary>It rests on the forecast of the floor.</summary>
    Floor,
}
