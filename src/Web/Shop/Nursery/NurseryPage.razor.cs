using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Nursery;
using Litterfall.Quantities.Measures;
using Litterfall.Store;
using Litterfall.Workshop.Nursery;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Nursery;

/// <summary>Benches and trays, quarantine, what orders need, losses and mother plants.</summary>
public sealed partial class NurseryPage
{
    private const int MostCuttings = 200;
    private readonly Dictionary<string, string> cuttings = new(StringComparer.Ordinal);
    private NurseryView? view;
    private List<LotAccount> loose = [];
    private string? told;
    private bool isGood = true;
    private IDisposable? watch;

    private static IEnumerable<string> Sources =>
        NurseryPractice.All.Select(f =>
            $"{NumberText.Capital(f.Name ?? "")}: {NumberText.Of(f)} – "
            + $"{f.Origin.Provenance.Spoken()} ({f.Origin.Place})"
        );

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        loose = [.. view.Book.Loose];
        StateHasChanged();
    }

    private async Task WrittenAsync((bool IsGood, string Told) outcome)
    {
        (isGood, told) = outcome;
        if (isGood)
        {
            await LoadAsync();
        }
    }

    private async Task ReleaseAsync(NurseryBench bench)
    {
        var to = view!.Book.Benches.FirstOrDefault(b => b.Use == BenchUse.Growing)
            ?? view.Book.Benches.FirstOrDefault(b => b.Use == BenchUse.Propagation);
        if (to is null)
        {
            await WrittenAsync((false, "Add a growing bench first: released plants go there."));
            return;
        }

        var (step, fault) = NurserySteps.Release(view.Book, bench.Key, to, await Desk.NowAsync());
        await WriteAsync(step, fault, $"Released to {to.Name}.");
    }

    private async Task AdoptAsync(LotAccount lot, NurseryBench bench) =>
        await WriteAsync(
            NurserySteps.Adopt(view!.Book, lot, bench, view.FreePlace(bench.Key), await Desk.NowAsync()),
            null,
            $"{lot.Lot.Id} stands on {bench.Name}."
        );

    private async Task CutAsync(Kept<MotherPlant> kept)
    {
        var bench = view!.Book.Benches.FirstOrDefault(b => b.Use == BenchUse.Propagation);
        var isCount = int.TryParse(
            Cuttings(kept),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var count
        );
        if (bench is null || !isCount || count is < 1 or > MostCuttings)
        {
            await WrittenAsync(
                (
                    false,
                    bench is null
                        ? "Add a propagation bench first."
                        : $"Type how many cuttings, 1 to {MostCuttings}."
                )
            );
            return;
        }

        var when = await Desk.NowAsync();
        var (step, fault) = NurserySteps.Cut(
            kept.Value,
            new PlantTray
            {
                Number = NurseryDesk.NextNumber(view, kept.Value.Plant),
                Plant = kept.Value.Plant,
                Origin = TrayOrigin.Cutting,
                Mother = kept.Value.Name,
                Since = when.Day,
                Plants = count,
                Bench = bench.Key,
                Place = view.FreePlace(bench.Key),
            },
            when
        );
        await WriteAsync(step, fault, $"{step?.Trays[0].Number} stands on {bench.Name}. Print its label.");
    }

    private async Task WriteAsync(NurseryStep? step, string? fault, string words)
    {
        var refused = step is null ? fault : await Desk.WriteAsync(view!, step);
        await WrittenAsync((refused is null, refused ?? words));
    }

    private string Cuttings(Kept<MotherPlant> kept) =>
        cuttings.TryGetValue(kept.Key, out var text) ? text : NumberText.Integer(kept.Value.CuttingsEach);

    private string MotherWords(MotherPlant mother) =>
        mother.NextCut > view!.Book.Today
            ? $"rests until {NumberText.Day(mother.NextCut)}"
            : $"gives {NumberText.Count(mother.CuttingsEach, "cutting", "cuttings")}";

    private static string Use(NurseryBench bench) =>
        bench.Use switch
        {
            BenchUse.Quarantine => "quarantine",
            BenchUse.Propagation => "cuttings",
            _ => "growing",
        };

    private string StandWords(PlantStand stand)
    {
        var left = NumberText.Count(stand.Left, "plant", "plants");
        return stand.UsableFrom > view!.Book.Today
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{left}, {stand.Low:0}–{stand.Left} usable from {NumberText.Day(stand.UsableFrom)}"
            )
            : $"{left}, usable";
    }
}
