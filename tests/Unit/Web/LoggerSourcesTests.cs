using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Demo;
using Litterfall.Running.Loggers;
using Litterfall.Store;
using Litterfall.Web.Tanks.Loggers;
using Microsoft.Extensions.DependencyInjection;
using MQTTnet;

namespace Litterfall.UnitTests.Web;

/// <summary>Readings that come by themselves: a folder, the door of the bench, a broker.</summary>
public sealed class LoggerSourcesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_new_file_in_the_folder_is_taken_in_once()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        var folder = Directory.CreateTempSubdirectory("litterfall-folder").FullName;
        await SetAsync(program, new() { Folder = folder, Zone = "Europe/Berlin" });
        var log = RoomLogs.Files(new RoomAir(RoomLogs.Seed, 300)).First(f => f.Name == "B2.csv");
        await File.WriteAllBytesAsync(Path.Combine(folder, log.Name), log.Bytes, Stop);
        await File.WriteAllTextAsync(Path.Combine(folder, "letter.txt"), "no readings", Stop);
        var watch = program.App.Services.GetRequiredService<LoggerSourcesWatch>();
        for (var round = 0; round < 4; round++)
        {
            await watch.RoundAsync(Stop);
        }

        var kept = Assert.Single(await program.Store.LogFilesAsync(Stop));
        Assert.Equal(("B2.csv", 300, "folder"), (kept.Report.Name, kept.Report.Kept, kept.Who));
        Assert.Contains("letter.txt", watch.FolderState, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Readings_come_in_by_the_door_once_and_wrong_ones_are_told()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        const string two = """
            [ { "place": "A3", "quantity": "temperature", "value": 77, "unit": "°F",
                "at": "2026-03-01T09:00:00Z" },
              { "place": "A3", "quantity": "humidity", "value": 84.5, "at": "2026-03-01T10:00:00+01:00" } ]
            """;
        Assert.Equal((200, "{\"kept\":2,\"known\":0}"), await PostAsync(program, two));
        Assert.Equal((200, "{\"kept\":0,\"known\":2}"), await PostAsync(program, two));
        var latest = await program.Store.LatestReadingsAsync(Stop);
        // 77 °F is 25 °C; 10:00 an hour before UTC is 09:00 UTC.
        var at = new DateTime(2026, 3, 1, 9, 0, 0, DateTimeKind.Utc);
        Assert.Equal(
            [("°C", 25.0, at), ("%", 84.5, at)],
            latest.OrderBy(l => l.Quantity).Select(l => (l.Unit, l.Value, l.At))
        );
        var (code, told) = await PostAsync(program, """{ "place": "A3", "quantity": "smell", "value": 1 }""");
        Assert.Equal(400, code);
        Assert.Contains("quantity", told, StringComparison.Ordinal);
        Assert.Equal(400, (await PostAsync(program, "{ broken")).Code);
    }

    [Theory]
    [InlineData("tanks/A3/humidity", "84.5", "A3", LogQuantity.Humidity, 84.5)]
    [InlineData("home/room/temperature", "21,5", "room", LogQuantity.Temperature, 21.5)]
    public void A_bare_number_takes_place_and_quantity_from_its_topic(
        string topic,
        string payload,
        string place,
        LogQuantity quantity,
        double value
    )
    {
        var read = LiveForm.Read(topic, payload, DateTime.UnixEpoch)!;
        Assert.Equal((place, quantity, value), (read.Place, read.Quantity, read.Value));
        Assert.Null(LiveForm.Read(topic, "{}", DateTime.UnixEpoch));
    }

    [Fact]
    public async Task What_a_broker_passes_on_is_kept_and_a_lost_broker_is_found_again()
    {
        if (!File.Exists("/usr/sbin/mosquitto"))
        {
            Assert.Skip("The broker of the test is not installed.");
        }

        await using var program = await ProgramUnderTest.StartAsync();
        var watch = program.App.Services.GetRequiredService<LoggerSourcesWatch>();
        var port = FreePort();
        await SetAsync(
            program,
            new()
            {
                BrokerHost = "127.0.0.1",
                BrokerPort = port,
                Topic = "tanks/#",
            }
        );
        await watch.RoundAsync(Stop);
        Assert.StartsWith("No connection", watch.BrokerState, StringComparison.Ordinal);
        using var broker = Process.Start(
            new ProcessStartInfo("/usr/sbin/mosquitto", ["-p", $"{port}"])
            {
                UseShellExecute = false,
                RedirectStandardError = true,
                RedirectStandardOutput = true,
            }
        )!;
        try
        {
            await UntilAsync(async () =>
            {
                await watch.RoundAsync(Stop);
                return watch.BrokerState.StartsWith("Connected", StringComparison.Ordinal);
            });
            using var sensor = new MqttClientFactory().CreateMqttClient();
            await sensor.ConnectAsync(
                new MqttClientOptionsBuilder().WithTcpServer("127.0.0.1", port).Build(),
                Stop
            );
            await PublishAsync(sensor, "tanks/A3/temperature", "22.5");
            await PublishAsync(
                sensor,
                "tanks/all",
                """{ "place": "room", "quantity": "humidity", "value": 51, "at": "2026-03-01T09:00:00Z" }"""
            );
            await UntilAsync(async () => (await program.Store.LatestReadingsAsync(Stop)).Count == 2);
            var latest = (await program.Store.LatestReadingsAsync(Stop)).OrderBy(l => l.Place);
            Assert.Equal([("A3", 22.5), ("room", 51.0)], latest.Select(l => (l.Place, l.Value)));
        }
        finally
        {
            broker.Kill();
            await broker.WaitForExitAsync(Stop);
        }
    }

    private static async Task SetAsync(ProgramUnderTest program, LoggerSources sources) =>
        Assert.Null(await program.App.Services.GetRequiredService<LoggerDesk>().SetAsync(sources, 0));

    private static Task PublishAsync(IMqttClient sensor, string topic, string payload) =>
        sensor.PublishAsync(
            new MqttApplicationMessageBuilder().WithTopic(topic).WithPayload(payload).Build(),
            Stop
        );

    private static async Task UntilAsync(Func<Task<bool>> isDone)
    {
        for (var i = 0; i < 200; i++)
        {
            if (await isDone())
            {
                return;
            }

            await Task.Delay(25, Stop);
        }

        Assert.Fail("It did not come.");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task<(int Code, string Body)> PostAsync(ProgramUnderTest program, string json)
    {
        using var client = new HttpClient();
        using var body = new StringContent(json, Encoding.UTF8, "application/json");
        var address = new Uri($"http://127.0.0.1:{program.Port}/readings");
        var answer = await client.PostAsync(address, body, Stop);
        return ((int)answer.StatusCode, await answer.Content.ReadAsStringAsync(Stop));
    }
}
