namespace Litterfall.Domain.Tanks;

/// <summary>Where readings come from by themselves; nothing is on until somebody sets it.</summary>
public sealed record LoggerSources
{
    /// <summary>Its key: there is one.</summary>
    public const string Key = "sources";

    /// <summary>Folder on this machine whose new files are taken in; empty for none.</summary>
    public string Folder { get; init; } = "";

    /// <summary>Zone of files that name none; empty for that of the room.</summary>
    public string Zone { get; init; } = "";

    /// <summary>Machine that passes live readings on; empty for none.</summary>
    public string BrokerHost { get; init; } = "";

    /// <summary>Its port.</summary>
    public int BrokerPort { get; init; } = 1883;

    /// <summary>Topics that are listened to: "tanks/+/+" is place and quantity.</summary>
    public string Topic { get; init; } = "";

    /// <summary>User there; empty for none.</summary>
    public string User { get; init; } = "";

    /// <summary>Password there; kept in the file of the bench.</summary>
    public string Password { get; init; } = "";
}
