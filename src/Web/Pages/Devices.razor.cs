using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Labels;
using Litterfall.Documents.Svg;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;

namespace Litterfall.Web.Pages;

/// <summary>Devices that may come in: pairing one, naming them, turning them away.</summary>
public sealed partial class Devices
{
    private const double Module = 0.8;
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private readonly CancellationTokenSource leaving = new();
    private ImmutableArray<string> addresses = [];
    private string address = "";
    private string? code;
    private DateTimeOffset until;
    private string? told;
    private string? fault;
    private string? asked;
    private string? me;
    private bool isSwitching;

    private string Address => $"{address}{DeviceGate.PairPath}/{code}";

    /// <summary>In capitals, which make a smaller code; addresses do not tell them apart.</summary>
    private string Drawn => SvgWriter.Write(QrMark.Draw(Address.ToUpperInvariant(), Module), "pairing code");

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        me = (await Who.GetAuthenticationStateAsync()).User.Identity?.Name;
        Look();
        Paired.Changed += Again;
    }

    private void Look()
    {
        // A device that is here came by an address that works.
        var came = Go.BaseUri.TrimEnd('/');
        addresses = [.. Place.Urls.Prepend(came).Skip(me is null ? 1 : 0).Distinct(StringComparer.Ordinal)];
        address = addresses.FirstOrDefault("");
    }

    private async Task SwitchAsync(bool open)
    {
        isSwitching = true;
        End();
        var isDone = false;
        fault = await Attempt.AtAsync(async () => isDone = await Place.Switch!(open));
        (isSwitching, told) = (
            false,
            isDone || fault is not null
                ? null
                : "This computer is in no network, or the network does not let it."
        );
        Look();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Paired.Changed -= Again;
        leaving.Cancel();
        leaving.Dispose();
        if (code is not null)
        {
            Paired.Forget(code);
        }
    }

    private void Begin()
    {
        End();
        told = null;
        (code, until) = Paired.NewCode(me);
        _ = ExpireAsync(code);
    }

    private void End()
    {
        if (code is not null)
        {
            Paired.Forget(code);
            code = null;
        }
    }

    private async Task ExpireAsync(string shown)
    {
        await Task.Delay(PairedDevices.CodeLife, leaving.Token)
            .ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (!leaving.IsCancellationRequested)
        {
            await InvokeAsync(() =>
            {
                if (code == shown)
                {
                    (code, told) = (null, "The code is too old now; show a new one.");
                    StateHasChanged();
                }
            });
        }
    }

    private void Again(object? sender, EventArgs e) =>
        _ = InvokeAsync(() =>
        {
            if (code is not null && !Paired.IsOpen(code))
            {
                (code, told) = (null, $"Paired: {Paired.All[0].Name}. Give it a name below.");
            }

            StateHasChanged();
        });

    private async Task NameAsync(string id, string? name) =>
        fault = await Attempt.AtAsync(() => Paired.NameAsync(id, name ?? ""));

    private async Task RemoveAsync(PairedDevice device)
    {
        fault = await Attempt.AtAsync(() => Paired.RemoveAsync(device.Id));
        (asked, told) = (null, fault is null ? $"Removed: {device.Name}." : null);
    }

    private static string Day(DateTime when) => when.ToLocalTime().ToString("d MMM yyyy", Culture);
}
