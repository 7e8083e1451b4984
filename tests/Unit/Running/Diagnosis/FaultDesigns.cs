using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;

namespace Litterfall.UnitTests.Running.Diagnosis;

/// <summary>
/// Boxes of 45 × 45 × 60 cm in 5 mm glass. By hand: inside 44 × 44 cm, 81 mL of water for each mm of level in
/// clay of 42 % voids; 86 L of air at 24 °C and 92 % against a room of 21 °C and 50 % lose 45 mL a day at 2
/// air
/// changes an hour, 11 at 0.5.
/// </summary>
internal sealed record FaultDesign
{
    public double DrainageCm { get; init; } = 5;

    public double AirC { get; init; } = 24;

    public double HumidityPercent { get; init; } = 92;

    public double AirChanges { get; init; } = 2;

    public int Mistings { get; init; } = 3;

    public double MistSeconds { get; init; } = 20;

    public string Planted { get; init; } = "2025-09-01";

    public string Plants { get; init; } = "{ plant: ficus-pumila, count: 3 }";

    public int Crew { get; init; } = 400;

    public int Animals { get; init; } = 3;

    public CheckedDesign Check(TradeCatalog catalog)
    {
        var reading = DesignReader.Read("tank.viv.yaml", Text());
        if (!reading.IsGood)
        {
            throw new InvalidOperationException(string.Join('\n', reading.Faults));
        }

        var good = DesignChecker.Check(reading.Value!, catalog);
        return good.Value ?? throw new InvalidOperationException(string.Join('\n', good.Faults));
    }

    private string Text()
    {
        var c = CultureInfo.InvariantCulture;
        var times = string.Join(
            ", ",
            Enumerable
                .Range(0, Mistings)
                .Select(i => string.Create(c, $"{{ at: \"{7 + (3 * i):00}:00\", for: {MistSeconds:0.#} s }}"))
        );
        return string.Create(
            c,
            $$"""
            litterfall: 1
            name: tank
            planted: {{Planted}}
            box:
              outside: { length: 45 cm, depth: 45 cm, height: 60 cm }
              glass: { walls: 5 mm, base: 5 mm }
              opening: front
              sill: 14 cm
            floor:
              drainage: { material: expanded-clay-8-16, depth: {{DrainageCm}} cm }
              barrier: { material: plastic-fly-screen, upturn: 15 mm }
              soil: { recipe: standard-rainforest, depth: 7 cm, settling: 15 % }
              litter: { material: oak-leaves, depth: 3 cm }
            drain: { kind: siphon }
            misting: { nozzles: 2, each: 90 mL/min, times: [ {{times}} ] }
            plants: [ {{Plants}} ]
            crew: [ { animal: folsomia-candida, count: {{Crew}} } ]
            animals: [ { animal: dendrobates-auratus, count: {{Animals}} } ]
            room: { temperature: 21 C, humidity: 50 % }
            headspace:
              hold: { air: {{AirC}} C, humidity: {{HumidityPercent}} %, airChanges: {{AirChanges}} }
            """
        );
    }
}
