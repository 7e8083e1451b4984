namespace Litterfall.Dispatch.Routes;

/// <summary>
/// What the journeys vary that nobody publishes for parcels: own choices, each with its reason. A logger in
/// one parcel of each batch is what replaces them.
/// </summary>
public static class RouteChoices
{
    /// <summary>Middle of the contents when the parcel is closed, °C: a packing room.</summary>
    public const double StartCelsius = 21;

    /// <summary>Its standard error, K: rooms differ, cups come from tanks.</summary>
    public const double StartErrorKelvin = 0.7;

    /// <summary>Standard error of the conductance of a carton, share: gaping lids, tape, corners.</summary>
    public const double WallError = 0.10;

    /// <summary>Standard error of latent heat, share: the usual spread of fillings.</summary>
    public const double LatentError = 0.06;

    /// <summary>Standard error of a heat pack's power, share: air, age, wrapping.</summary>
    public const double HeatError = 0.15;

    /// <summary>Standard errors beyond which a tolerance does not go: such a piece is thrown away.</summary>
    public const double MostErrors = 2.5;

    /// <summary>Hours over which a forecast stays wrong the same way: weather passes in a day.</summary>
    public const double ErrorMemoryHours = 24;

    /// <summary>Hours between the drawn points of a forecast's error; straight lines between.</summary>
    public const double ErrorStepHours = 6;

    /// <summary>Longest wait in the depot until it is picked up, h.</summary>
    public const double DepotHours = 8;

    /// <summary>Share of late parcels that wait in the hub; the others wait on the van.</summary>
    public const double LateInHubShare = 0.5;

    /// <summary>Hour of the day at which the sun begins to warm vans and doorsteps.</summary>
    public const double SunFromHour = 6;

    /// <summary>Hours of sun.</summary>
    public const double SunHours = 12;
}
