// Hands on the drawing, keys of the page, and the line to the bench.
const bench = { times: [] };

bench.grips = (sheet, desk) => {
    let hold = null;
    let busy = false;
    const send = async () => {
        if (busy || !hold || !hold.next) return;
        busy = true;
        const { grip, next } = hold;
        hold.next = null;
        const from = performance.now();
        await desk.invokeMethodAsync("Drag", grip, next.across, next.up);
        await new Promise(requestAnimationFrame);
        bench.times.push(performance.now() - from);
        busy = false;
        send();
    };
    sheet.addEventListener("pointerdown", async e => {
        const mark = e.target.closest("[data-grip]");
        if (!mark || e.button > 0) return;
        e.preventDefault();
        sheet.setPointerCapture(e.pointerId);
        const ctm = sheet.querySelector("svg.grips").getScreenCTM();
        hold = { grip: +mark.dataset.grip, way: mark.dataset.way, x: e.clientX, y: e.clientY, scale: ctm.a, moved: false, next: null };
        await desk.invokeMethodAsync("Take", hold.grip);
    });
    sheet.addEventListener("pointermove", e => {
        if (!hold) return;
        const across = hold.way === "up" ? 0 : (e.clientX - hold.x) / hold.scale;
        const up = hold.way === "across" ? 0 : -(e.clientY - hold.y) / hold.scale;
        if (!hold.moved && Math.hypot(across, up) * hold.scale < 4) return;
        hold.moved = true;
        hold.next = { across, up };
        send();
    });
    const end = async () => {
        if (!hold) return;
        const { grip, moved } = hold;
        while (busy || hold.next) {
            await new Promise(r => setTimeout(r, 8));
            send();
        }
        hold = null;
        if (moved) await desk.invokeMethodAsync("Drop", grip);
    };
    sheet.addEventListener("pointerup", end);
    sheet.addEventListener("pointercancel", end);
    return sheet.clientWidth;
};

let keyed = null;
bench.keys = desk => { keyed = desk; };
document.addEventListener("keydown", e => {
    if (!keyed || !(e.ctrlKey || e.metaKey) || e.altKey) return;
    if (e.target.matches("input, textarea, select")) return;
    const key = e.key.toLowerCase();
    if (key === "z" || key === "y") {
        e.preventDefault();
        keyed.invokeMethodAsync("Step", key === "y" || e.shiftKey);
    }
});

bench.open = dialog => { if (dialog && !dialog.open) dialog.showModal(); };
bench.close = dialog => { if (dialog && dialog.open) dialog.close(); };
bench.print = () => window.print();

window.litterfall = bench;

const away = document.getElementById("away");
Blazor.start({
    circuit: {
        reconnectionHandler: {
            onConnectionDown: () => {
                away.hidden = false;
                const again = async () => {
                    try {
                        if (await Blazor.reconnect()) {
                            away.hidden = true;
                            return;
                        }
                        location.reload();
                    } catch {
                        setTimeout(again, 1000);
                    }
                };
                setTimeout(again, 500);
            },
            onConnectionUp: () => { away.hidden = true; },
        },
    },
});
