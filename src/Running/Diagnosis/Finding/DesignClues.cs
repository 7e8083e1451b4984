using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Running.Diagnosis.Matrix;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>What the design itself says; only where it was not told otherwise.</summary>
public static class DesignClues
{
    // Meshes: feeder flies pass over 0.6 mm (common practice, no source).
    private const double FlyMeters = 0.6e-3;

    /// <summary>Clues of a design on the day of the report.</summary>
    public static IEnumerable<Clue> From(FaultCase of, DateOnly reported)
    {
        var design = of.Design.Design;
        bool Silent(TankFact fact) => of.Facts.All(f => f.Fact != fact);
        if (design.Planted is { } planted)
        {
            foreach (var clue in Age(reported.DayNumber - planted.DayNumber, Silent))
            {
                yield return clue;
            }
        }

        if (Silent(TankFact.BromeliadInSoil) && RosetteInSoil(of.Design) is { } rosette)
        {
            yield return Clue.Create(
                $"{rosette} is planted in the soil, by the design",
                (Cause.RosetteInSoil, 2.5)
            );
        }
        else if (Silent(TankFact.BromeliadInSoil) && design.Plants.Count > 0)
        {
            yield return Clue.Create(
                "No bromeliad stands in the soil, by the design",
                (Cause.RosetteInSoil, 0.15)
            );
        }

        if (Silent(TankFact.NoCrew))
        {
            yield return design.Crew.Count == 0
                ? Clue.Create("The design has no clean-up crew", (Cause.NoCrew, 1.8), (Cause.CrewEaten, 0.8))
                : Clue.Create("The design has a clean-up crew", (Cause.NoCrew, 0.4));
        }

        if (Silent(TankFact.TapWater) && design.Habits?.Water is { } water)
        {
            yield return water == MistWater.Tap
                ? Clue.Create("Tap water is entered for misting", (Cause.HardWater, 4.0))
                : Clue.Create("Soft water is entered for misting", (Cause.HardWater, 0.2));
        }

        foreach (var clue in Openings(of.Design, Silent))
        {
            yield return clue;
        }

        foreach (var clue in Animals(design))
        {
            yield return clue;
        }
    }

    private static IEnumerable<Clue> Animals(Design design)
    {
        if (design.Animals.Count == 0 && design.RatedFor.Count == 0)
        {
            yield return Clue.Create(
                "No animals live in it",
                (Cause.CrewEaten, 0.05),
                (Cause.Bullying, 0.05),
                (Cause.NewAnimals, 0.05),
                (Cause.Illness, 0.1)
            );
        }
        else if (design.Animals.Sum(a => a.Count) == 1)
        {
            yield return Clue.Create("One animal lives in it", (Cause.Bullying, 0.05));
        }
    }

    private static IEnumerable<Clue> Age(int days, Func<TankFact, bool> silent)
    {
        if (days < 0)
        {
            yield break;
        }

        var text = days < 60 ? $"Planted {days} days before" : $"Planted {days / 30} months before";
        if (silent(TankFact.WoodNew))
        {
            yield return days <= 35
                ? Clue.Create($"{text}: mold of new wood is usual in the first weeks", (Cause.NewWood, 3.0))
                : Clue.Create($"{text}: mold of new wood is past", (Cause.NewWood, days > 70 ? 0.1 : 0.5));
        }

        if (silent(TankFact.PlantsNew))
        {
            yield return days <= 45
                ? Clue.Create($"{text}: plants settle in", (Cause.NewPlants, 3.0), (Cause.DipBurn, 1.5))
                : Clue.Create($"{text}: plants have settled", (Cause.NewPlants, 0.3), (Cause.DipBurn, 0.4));
        }

        if (silent(TankFact.SoilYears) && silent(TankFact.SoilOld))
        {
            yield return days >= 3 * 365
                ? Clue.Create($"{text}: soil breaks down in two to five years", (Cause.FineMix, 2.5))
                : Clue.Create($"{text}: the soil is not old", (Cause.FineMix, days < 365 ? 0.5 : 1.0));
        }
    }

    private static string? RosetteInSoil(CheckedDesign design)
    {
        for (var i = 0; i < design.Design.Plants.Count; i++)
        {
            var plant = design.Design.Plants[i];
            if (
                !plant.Mounted
                && design.Find<PlantEntry>($"plants[{i}].plant") is { } entry
                && entry.RootPlace?.Text.Contains("epiphyte", StringComparison.Ordinal) == true
            )
            {
                return entry.Name;
            }
        }

        return null;
    }

    private static IEnumerable<Clue> Openings(CheckedDesign design, Func<TankFact, bool> silent)
    {
        var wide = design
            .Design.Vents.Select((_, i) => design.Find<MeshEntry>($"vents[{i}].mesh"))
            .Append(design.Find<MeshEntry>("lid.material"))
            .Any(m => m?.Aperture is { } aperture && aperture.Si > FlyMeters);
        if (silent(TankFact.MeshOpen) && wide)
        {
            yield return Clue.Create("A mesh of the design has openings over 0.6 mm", (Cause.OpenMesh, 4.0));
        }

        if (silent(TankFact.DoorGap) && design.Design.Box.Doors?.Gap is { } gap)
        {
            yield return gap.Si > FlyMeters
                ? Clue.Create("The doors of the design leave a gap that flies pass", (Cause.DoorGap, 2.5))
                : Clue.Create("The doors of the design are tight", (Cause.DoorGap, 0.5));
        }
    }
}
