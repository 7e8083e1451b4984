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
    const size = () => [sheet.clientWidth - 16, Math.max(320, window.innerHeight * 0.56)];
    let told = size();
    let later = 0;
    new ResizeObserver(() => {
        clearTimeout(later);
        later = setTimeout(() => {
            const now = size();
            if (hold || (Math.abs(now[0] - told[0]) < 8 && Math.abs(now[1] - told[1]) < 24)) return;
            told = now;
            desk.invokeMethodAsync("Fit", now[0], now[1]).catch(() => { });
        }, 150);
    }).observe(sheet);
    return told;
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

// A value under the pointer, the finger or the arrow keys: read from the table under the chart.
const read = (svg, share) => {
    const figure = svg.closest("figure");
    const rows = figure.querySelectorAll("tbody tr");
    if (!rows.length) return;
    const i = Math.round(Math.min(1, Math.max(0, share)) * (rows.length - 1));
    svg.dataset.at = i;
    const [x, y] = [...rows[i].children].map(c => c.textContent);
    figure.querySelector(".read").textContent = `${svg.dataset.along} ${x}: ${y} ${svg.dataset.unit}`;
    const [from, to] = [+svg.dataset.from, +svg.dataset.to];
    const hair = svg.querySelector(".hair");
    hair.setAttribute("transform", `translate(${from + (to - from) * i / Math.max(1, rows.length - 1)} 0)`);
    hair.classList.add("on");
};
const unread = svg => {
    svg.closest("figure").querySelector(".read").textContent = "";
    svg.querySelector(".hair").classList.remove("on");
};
const chart = e => e.target.closest ? e.target.closest(".chart svg[data-from]") : null;
for (const kind of ["pointermove", "pointerdown"]) {
    document.addEventListener(kind, e => {
        const svg = chart(e);
        if (!svg) return;
        const x = (e.clientX - svg.getBoundingClientRect().left) / svg.getScreenCTM().a;
        read(svg, (x - svg.dataset.from) / (svg.dataset.to - svg.dataset.from));
    });
}
document.addEventListener("pointerout", e => { const svg = chart(e); if (svg && !svg.contains(e.relatedTarget)) unread(svg); });
document.addEventListener("focusout", e => { const svg = chart(e); if (svg) unread(svg); });
document.addEventListener("keydown", e => {
    const svg = chart(e);
    if (!svg || (e.key !== "ArrowLeft" && e.key !== "ArrowRight")) return;
    e.preventDefault();
    const rows = svg.closest("figure").querySelectorAll("tbody tr").length;
    const at = +(svg.dataset.at ?? 0) + (e.key === "ArrowRight" ? 1 : -1);
    read(svg, at / Math.max(1, rows - 1));
});

// A name for this browser, so that each person keeps their own units.
bench.who = () => {
    try {
        let name = localStorage.getItem("litterfall.who");
        if (!name) {
            name = "10000000-1000-4000-8000-100000000000".replace(/[018]/g, c =>
                (+c ^ crypto.getRandomValues(new Uint8Array(1))[0] & 15 >> +c / 4).toString(16));
            localStorage.setItem("litterfall.who", name);
        }
        return name;
    } catch {
        return null;
    }
};

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
