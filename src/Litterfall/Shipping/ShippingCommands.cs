using System.CommandLine;

namespace Litterfall.App.Shipping;

/// <summary>The commands of parcels.</summary>
internal static class ShippingCommands
{
    public static IEnumerable<Command> All() => [ShipCommand.Create()];
}
