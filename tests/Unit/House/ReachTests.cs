using System.Reflection;
using System.Runtime.CompilerServices;

namespace Litterfall.UnitTests.House;

/// <summary>
/// Nothing is kept that only checks and tests call: what a room offers is used by a command, a page or a
/// paper.
/// </summary>
public sealed class ReachTests
{
    private static readonly string[] Rooms =
    [
        "Domain",
        "Physics",
        "Quantities",
        "Forecasting",
        "Judging",
        "Instructions",
        "Documents",
        "Laboratory",
        "Workshop",
        "Running",
        "Dispatch",
    ];

    /// <summary>What starts work: the commands, the pages and the store.</summary>
    private static readonly string[] Starts = ["litterfall", "Litterfall.Web", "Litterfall.Store"];

    /// <summary>Eyes of the checks on what the engine does, and what writes their designs.</summary>
    private static readonly string[] Observers =
    [
        "Domain.DesignFile.DesignWriter",
        "Forecasting.DesignNumbers.With",
        "Instructions.Care.CarePlan.Find",
        "Physics.Light.LightModel.At",
        "Physics.Light.LightModel.Direct",
        "Physics.Plates.LevyPlate.At",
        "Physics.Plates.LevyPlate.ThrowIfOutside",
        "Physics.Plates.LevyScan.At",
        "Physics.Soil.SoilColumns.StorageMeters",
    ];

    [Fact]
    public void Everything_a_room_offers_is_reached_from_the_program()
    {
        string[] unreached = [.. Unreached()];
        string[] idle = [.. unreached.Where(u => !Observers.Any(o => IsOf(u, o)))];
        Assert.True(idle.Length == 0, string.Join('\n', idle));
        Assert.DoesNotContain(Observers, o => !unreached.Any(u => IsOf(u, o)));
    }

    private static bool IsOf(string member, string observer) =>
        (member + ".").StartsWith("Litterfall." + observer + ".", StringComparison.Ordinal);

    internal static IEnumerable<string> Unreached()
    {
        Assembly[] rooms = [.. Rooms.Select(r => Assembly.Load("Litterfall." + r))];
        var graph = new CallGraph(rooms, [.. Starts.Select(Assembly.Load)]);
        return rooms
            .SelectMany(r => r.GetTypes())
            .Where(t => !IsGenerated(t))
            .SelectMany(CallGraph.Methods)
            .Where(m => !IsGenerated(m) && m is MethodInfo { IsSpecialName: false, IsAbstract: false })
            .Where(m => m.GetMethodBody() is not null)
            .Where(m => !graph.Reaches(m))
            .Select(m => $"{m.DeclaringType!.FullName}.{m.Name}")
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);
    }

    private static bool IsGenerated(MemberInfo member) =>
        member.IsDefined(typeof(CompilerGeneratedAttribute), false)
        || member.Name.Contains('<', StringComparison.Ordinal)
        || (member.DeclaringType is { } outer && IsGenerated(outer));
}
