using System.Globalization;
using Litterfall.Documents.Perspective;
using Litterfall.Documents.Views;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Web.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Litterfall.Web.Parts;

/// <summary>
/// The finished box in space: turns under the hand, follows the hour of the ribbon and each change of the
/// design. Where the browser draws nothing in space, a still of the server stands in its place.
/// </summary>
public sealed partial class BoxView
{
    private static readonly int[] Months = [0, 3, 6, 12, BoxPicture.OldestMonths];
    private readonly SemaphoreSlim sending = new(1);
    private ElementReference stand;
    private IJSObjectReference? module;
    private IJSObjectReference? view;
    private BoxPicture? picture;
    private (DesignNumbers? Shape, LightFigures? Light) pictureOf;
    private (object? Picture, PictureWish Wish) sent;
    private (object? Picture, DesignNumbers? Month, int Hour) live;
    private string words = "The finished box.";
    private bool? hasSpace;
    private bool isOld;
    private bool isLeft;
    private int months = 12;
    private bool hasAnimals;

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>Hour of the forecast that is shown.</summary>
    [Parameter]
    public int Hour { get; set; }

    private PictureWish Wish => new(months, hasAnimals);

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => hasSpace is null ? Task.CompletedTask : ShowAsync();

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        try
        {
            module = await Js.InvokeAsync<IJSObjectReference>(
                "import",
                "./_content/Litterfall.Web/view/view.js"
            );
            view = await module.InvokeAsync<IJSObjectReference?>("open", stand);
            hasSpace = view is not null;
            await ShowAsync();
            StateHasChanged();
        }
        catch (JSDisconnectedException)
        {
            // The page was left while it opened.
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        isLeft = true;
        try
        {
            if (view is not null)
            {
                await view.InvokeVoidAsync("close");
                await view.DisposeAsync();
            }

            if (module is not null)
            {
                await module.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and the picture with it.
        }
    }

    /// <summary>Sends what has changed; while it is on its way, only the newest waits.</summary>
    private async Task ShowAsync()
    {
        if (Work.Look.Shape is not { } shape)
        {
            return;
        }

        if (picture is null || pictureOf != (shape, Work.Look.Light))
        {
            pictureOf = (shape, Work.Look.Light);
            picture = new BoxPicture(
                shape,
                Work.Look.LightIsOld && Work.Look.Light is null ? null : Work.Look.Light
            );
        }

        isOld = Work.Look.MonthIsOld;
        var moment = DeskMoment.Of(Work.Look.Month, Hour);
        words = picture.Words(Wish, moment);
        if (view is null || !await sending.WaitAsync(0))
        {
            return;
        }

        try
        {
            while (!isLeft && await SendAsync())
            {
                await Task.Yield();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page was left.
        }
        finally
        {
            sending.Release();
        }
    }

    /// <summary>True where something was sent.</summary>
    private async Task<bool> SendAsync()
    {
        var (now, wish, hour, month) = (picture!, Wish, Hour, Work.Look.Month);
        var isWhole = sent != (now, wish);
        if (!isWhole && live == (now, month, hour))
        {
            return false;
        }

        var bytes = await Task.Run(() =>
            SceneBytes.Write(now.At(wish, DeskMoment.Of(month, hour)), isLiveOnly: !isWhole)
        );
        using var stream = new DotNetStreamReference(new MemoryStream(bytes));
        await view!.InvokeVoidAsync("show", stream, isWhole);
        (sent, live) = ((now, wish), (now, month, hour));
        return true;
    }

    private Task AgeAsync(ChangeEventArgs e)
    {
        if (
            int.TryParse(e.Value as string, NumberStyles.None, CultureInfo.InvariantCulture, out var month)
            && Months.Contains(month)
        )
        {
            months = month;
        }

        return ShowAsync();
    }

    private Task AnimalsAsync(ChangeEventArgs e)
    {
        hasAnimals = e.Value is true;
        return ShowAsync();
    }

    private async Task ResetAsync()
    {
        if (view is not null)
        {
            await view.InvokeVoidAsync("reset");
        }
    }

    private static string Word(bool isSo) => isSo ? "true" : "false";

    private string StillAddress(int width, bool isSaved = false) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"/design/{Work.Id}/still.png?width={width}&hour={Hour}&month={months}"
                + $"&animals={Word(hasAnimals)}&save={Word(isSaved)}&version={Work.Version}"
        );
}
