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
        try {
            await desk.invokeMethodAsync("Drag", grip, next.across, next.up);
            await new Promise(requestAnimationFrame);
            bench.times.push(performance.now() - from);
        } catch {
            // The line is down, or this step failed: the design is as it was before the hand took it.
            hold = null;
        } finally {
            busy = false;
        }
        send();
    };
    sheet.addEventListener("pointerdown", async e => {
        const mark = e.target.closest("[data-grip]");
        if (!mark || e.button > 0) return;
        e.preventDefault();
        sheet.setPointerCapture(e.pointerId);
        const ctm = sheet.querySelector("svg.grips").getScreenCTM();
        hold = { grip: +mark.dataset.grip, way: mark.dataset.way, x: e.clientX, y: e.clientY, scale: ctm.a, moved: false, next: null };
        await desk.invokeMethodAsync("Take", hold.grip).catch(() => { });
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
        while (hold && (busy || hold.next)) {
            await new Promise(r => setTimeout(r, 8));
            send();
        }
        hold = null;
        if (moved) await desk.invokeMethodAsync("Drop", grip).catch(() => { });
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
    // From here on a hand on the drawing is felt; handles show only then.
    sheet.dataset.live = "yes";
    putBack();
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
        keyed.invokeMethodAsync("Step", key === "y" || e.shiftKey).catch(() => { });
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

// A change that the bench could not save stays in this browser until it is saved.
const shelf = {
    read: key => { try { return localStorage.getItem(key); } catch { return null; } },
    write: (key, text) => {
        try {
            if (text === null) localStorage.removeItem(key); else localStorage.setItem(key, text);
        } catch { /* A browser that keeps nothing: the page itself still shows it. */ }
    },
};
bench.keep = (design, text) => shelf.write(`litterfall.change ${design}`, text);
bench.keptText = design => new TextEncoder().encode(shelf.read(`litterfall.change ${design}`) ?? "\n");

// What is being typed stays in this browser until the bench has it.
const Longest = 256 * 1024;
const Day = 24 * 3600 * 1000;
let live = true;
const typedKey = () => `litterfall.typed ${location.pathname}`;
const typed = () => { try { return JSON.parse(shelf.read(typedKey()) ?? "{}"); } catch { return {}; } };
const setTyped = all => shelf.write(typedKey(), Object.keys(all).length ? JSON.stringify(all) : null);
const isTyped = e => e.id && e.matches?.("main input:not([type=file]):not([type=checkbox]):not([type=radio]):not([type=range]), main textarea");
document.addEventListener("input", e => {
    if (!isTyped(e.target)) return;
    const all = typed();
    all[e.target.id] = { text: e.target.value, part: e.target.closest("[data-part]")?.dataset.part ?? null, at: Date.now() };
    setTyped(all);
}, true);
const forget = (id, text) => {
    const all = typed();
    if (all[id] && (text === undefined || all[id].text === text)) { delete all[id]; setTyped(all); }
};
// Too long for the line is told while it still stands in its field; nothing is sent, and no button sends the text before it.
const isTooLong = field => {
    const over = new Blob([field.value]).size > Longest;
    field.setCustomValidity?.(over ? `At most ${Longest / 1024} kB fit here; this has ${Math.ceil(new Blob([field.value]).size / 1024)} kB. It is not sent.` : "");
    return over;
};
document.addEventListener("change", e => {
    if (!isTyped(e.target)) return;
    if (isTooLong(e.target)) {
        e.stopImmediatePropagation();
        e.target.reportValidity();
        return;
    }
    const { id, value } = e.target;
    delete e.target.dataset.kept;
    // On the desk the field is saved by itself; elsewhere its form is sent.
    if (live && keyed) setTimeout(() => keyed?.invokeMethodAsync("IsSaved").then(is => { if (is) forget(id, value); }).catch(() => { }), 0);
}, true);
document.addEventListener("submit", e => {
    const fields = [...e.target.elements].filter(isTyped);
    const long = fields.find(isTooLong);
    if (long || !live) {
        e.stopImmediatePropagation();
        e.preventDefault();
        long?.reportValidity();
        return;
    }
    fields.forEach(f => forget(f.id));
}, true);
// A field into which something was put back sends it when it is left, as if it had been typed just now.
document.addEventListener("focusout", e => {
    if (e.target.dataset?.kept && live) e.target.dispatchEvent(new Event("change", { bubbles: true }));
}, true);

const found = async id => {
    for (let i = 0; i < 100; i++) {
        const field = document.getElementById(id);
        if (field) return field;
        await new Promise(r => setTimeout(r, 100));
    }
    return null;
};
const putBack = async () => {
    const all = typed();
    const fresh = Object.entries(all).filter(([, t]) => Date.now() - t.at < Day).sort((a, b) => a[1].at - b[1].at);
    setTyped(Object.fromEntries(fresh));
    for (const [id, { text, part }] of fresh) {
        if (part && !document.getElementById(id)) await keyed?.invokeMethodAsync("Show", part).catch(() => { });
        const field = await found(id);
        if (!field) continue;
        if (field.value === text) { forget(id); continue; }
        field.value = text;
        field.dataset.kept = "yes";
        field.focus();
        const kept = document.getElementById("kept");
        if (kept) {
            kept.textContent = `What you were typing is back in its field: ${text.length > 80 ? text.slice(0, 80) + "…" : text}`;
            kept.hidden = false;
        }
    }
};

window.litterfall = bench;

const away = document.getElementById("away");
const words = away.textContent;
const down = () => {
    live = false;
    away.hidden = false;
    const again = async () => {
        try {
            if (await Blazor.reconnect()) {
                up();
                return;
            }
            // The bench was started anew and knows this page no more; what was typed comes back after loading.
            location.reload();
        } catch {
            setTimeout(again, 1000);
        }
    };
    setTimeout(again, 500);
};
const up = () => {
    live = true;
    away.hidden = true;
};
Blazor.start({
    circuit: { reconnectionHandler: { onConnectionDown: down, onConnectionUp: up } },
}).then(() => {
    // The desk says by itself when its fields are there.
    if (!/^\/design\/[^/]+$/.test(location.pathname)) putBack();
}).catch(async () => {
    // Too many pages, or the bench is gone: its own sentence, where it has one.
    const said = await fetch("/_blazor/negotiate?negotiateVersion=1", { method: "POST" }).then(r => r.ok ? "" : r.text()).catch(() => "");
    away.textContent = said.trim() || words;
    away.hidden = false;
    setTimeout(() => location.reload(), 5000);
});
