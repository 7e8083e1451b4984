using Litterfall.Running.Demo;
using Litterfall.Running.Loggers;
using Litterfall.Store;
using Litterfall.Workshop.Demo;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>The logger files of the invented breeding room, taken in as anybody would.</summary>
internal static class DemoLoggers
{
    public static async Task FillAsync(BenchStore store, CancellationToken cancel)
    {
        foreach (var file in RoomLogs.Files())
        {
            var read = LoggerFile.Read(file.Name, file.Bytes, new LoggerWish { Zone = RoomAir.Zone });
            await store.KeepLogAsync(
                read.Value!.Report,
                read.Value.Series,
                file.Bytes,
                DemoShop.Bookkeeper,
                cancel
            );
        }
    }
}
