using Litterfall.Domain.Dispatch;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>One order, from the first message to the last payment.</summary>
public sealed partial class OrderPage
{
    private readonly CancellationTokenSource leaving = new();
    private OrderWork? work;
    private IReadOnlyList<Parcel> parcels = [];
    private string? fault;
    private bool isLoaded;
    private bool isJudging;

    /// <summary>Number of the order.</summary>
    [Parameter]
    public int Number { get; set; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (work?.Order.Number == Number)
        {
            return;
        }

        work = await OrderWork.OpenAsync(Store, Library, Clock, Shelf, Number);
        parcels =
        [
            .. (await Store.RecordsAsync<Parcel>()).Select(p => p.Value).Where(p => p.Order == Number),
        ];
        isLoaded = true;
        _ = JudgeAsync();
    }

    /// <summary>The whole check takes seconds; the page does not wait for it.</summary>
    private async Task JudgeAsync()
    {
        if (isJudging || work?.Order.Items.Any(i => i is { Harm: null, Design: not null }) != true)
        {
            return;
        }

        isJudging = true;
        try
        {
            await work.JudgeAsync(leaving.Token);
        }
        catch (OperationCanceledException)
        {
            return;
        }
        finally
        {
            isJudging = false;
        }

        await InvokeAsync(StateHasChanged);
    }

    /// <summary>Something was written, or refused with a sentence.</summary>
    private void DoneAsync(string? refusal)
    {
        fault = refusal;
        _ = JudgeAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        leaving.Cancel();
        leaving.Dispose();
    }
}
