// Hands on the drawing, keys of the page, and the line to the bench.
const bench = { times: [] };

const Rest = 550;
const Near = 6;
const MostZoom = 8;

// Both drawings of a sheet show the same window of it.
const zooms = new WeakMap();
const windowOf = sheet => zooms.get(sheet) ?? { z: 1, x: 0, y: 0 };
const frameOf = sheet => {
    const grips = sheet.querySelector("svg.grips");
    const [, , w, h] = (grips.dataset.whole ?? grips.getAttribute("viewBox")).split(" ").map(Number);
    return { w, h };
};
const applyZoom = sheet => {
    const { z, x, y } = windowOf(sheet);
    const { w, h } = frameOf(sheet);
    const box = `${x} ${y} ${w / z} ${h / z}`;
    const grips = sheet.querySelector("svg.grips");
    grips.dataset.whole ??= `0 0 ${w} ${h}`;
    for (const svg of sheet.querySelectorAll(":scope > svg")) {
        if (svg !== grips) {
            const own = (svg.dataset.whole ??= svg.getAttribute("viewBox")).split(" ").map(Number);
            const by = own[2] / w;
            svg.setAttribute("viewBox", `${own[0] + x * by} ${own[1] + y * by} ${own[2] / z} ${own[3] / z}`);
        } else if (grips.getAttribute("viewBox") !== box) {
            grips.setAttribute("viewBox", box);
        }
    }
    sheet.style.setProperty("--still", 1 / z);
    sheet.dataset.zoomed = z > 1 ? "yes" : "no";
};
const zoomTo = (sheet, z, at) => {
    const now = windowOf(sheet);
    const { w, h } = frameOf(sheet);
    const next = Math.min(MostZoom, Math.max(1, z));
    const p = at ?? { x: now.x + w / now.z / 2, y: now.y + h / now.z / 2 };
    const x = p.x - (p.x - now.x) * now.z / next;
    const y = p.y - (p.y - now.y) * now.z / next;
    zooms.set(sheet, { z: next, x: Math.min(w - w / next, Math.max(0, x)), y: Math.min(h - h / next, Math.max(0, y)) });
    applyZoom(sheet);
};
const panBy = (sheet, dx, dy) => {
    const now = windowOf(sheet);
    const { w, h } = frameOf(sheet);
    zooms.set(sheet, {
        z: now.z,
        x: Math.min(w - w / now.z, Math.max(0, now.x - dx)),
        y: Math.min(h - h / now.z, Math.max(0, now.y - dy)),
    });
    applyZoom(sheet);
};
const spotOf = (sheet, e) => {
    const ctm = sheet.querySelector("svg.grips").getScreenCTM();
    return { x: (e.clientX - ctm.e) / ctm.a, y: (e.clientY - ctm.f) / ctm.d };
};

bench.grips = (sheet, desk) => {
    let hold = null;
    let pan = null;
    let rest = 0;
    let busy = false;
    const fingers = new Map();
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
    const waitForRest = e => {
        clearTimeout(rest);
        const at = spotOf(sheet, e);
        rest = setTimeout(() => {
            if (hold?.moved || pan?.moved || fingers.size > 1) return;
            hold = pan = null;
            desk.invokeMethodAsync("Under", at.x, at.y).catch(() => { });
        }, Rest);
    };
    sheet.addEventListener("pointerdown", async e => {
        if (e.button > 0 || e.target.closest(".underlist") || sheet.dataset.shown === "view") return;
        fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
        if (fingers.size === 2) {
            const [a, b] = [...fingers.values()];
            hold = null;
            pan = { pinch: Math.hypot(a.x - b.x, a.y - b.y), z: windowOf(sheet).z, moved: true };
            return;
        }
        waitForRest(e);
        const mark = e.target.closest("[data-grip]");
        if (!mark) {
            pan = { x: e.clientX, y: e.clientY, moved: false };
            return;
        }
        e.preventDefault();
        mark.focus?.({ preventScroll: true });
        sheet.setPointerCapture(e.pointerId);
        const ctm = sheet.querySelector("svg.grips").getScreenCTM();
        hold = { grip: +mark.dataset.grip, way: mark.dataset.way, x: e.clientX, y: e.clientY, scale: ctm.a, moved: false, next: null };
        await desk.invokeMethodAsync("Take", hold.grip).catch(() => { });
    });
    sheet.addEventListener("pointermove", e => {
        if (fingers.has(e.pointerId)) fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
        if (pan?.pinch && fingers.size === 2) {
            const [a, b] = [...fingers.values()];
            const at = spotOf(sheet, { clientX: (a.x + b.x) / 2, clientY: (a.y + b.y) / 2 });
            zoomTo(sheet, pan.z * Math.hypot(a.x - b.x, a.y - b.y) / pan.pinch, at);
            return;
        }
        if (pan && windowOf(sheet).z > 1) {
            const ctm = sheet.querySelector("svg.grips").getScreenCTM();
            if (!pan.moved && Math.hypot(e.clientX - pan.x, e.clientY - pan.y) < Near) return;
            pan.moved = true;
            panBy(sheet, (e.clientX - pan.x) / ctm.a, (e.clientY - pan.y) / ctm.d);
            [pan.x, pan.y] = [e.clientX, e.clientY];
            return;
        }
        if (!hold) return;
        const across = hold.way === "up" ? 0 : (e.clientX - hold.x) / hold.scale;
        const up = hold.way === "across" ? 0 : -(e.clientY - hold.y) / hold.scale;
        if (!hold.moved && Math.hypot(across, up) * hold.scale < 4) return;
        hold.moved = true;
        hold.next = { across, up };
        send();
    });
    const end = async e => {
        fingers.delete(e.pointerId);
        clearTimeout(rest);
        pan = fingers.size ? pan : null;
        if (!hold) return;
        const { grip, moved } = hold;
        while (hold && (busy || hold.next)) {
            await new Promise(r => setTimeout(r, 8));
            send();
        }
        hold = null;
        await desk.invokeMethodAsync(moved ? "Drop" : "Release", ...(moved ? [grip] : [])).catch(() => { });
    };
    sheet.addEventListener("pointerup", end);
    sheet.addEventListener("pointercancel", end);
    sheet.addEventListener("wheel", e => {
        if (sheet.dataset.shown === "view") return;
        // Where the page itself scrolls, the wheel is the page's.
        if (!e.ctrlKey && document.documentElement.scrollHeight > window.innerHeight + 4) return;
        e.preventDefault();
        zoomTo(sheet, windowOf(sheet).z * Math.exp(-e.deltaY / 400), spotOf(sheet, e));
    }, { passive: false });
    sheet.addEventListener("keydown", e => {
        if (e.target !== sheet || sheet.dataset.shown === "view") return;
        const { w } = frameOf(sheet);
        const step = w / windowOf(sheet).z / 10;
        const keys = {
            "+": () => zoomTo(sheet, windowOf(sheet).z * 1.25), "=": () => zoomTo(sheet, windowOf(sheet).z * 1.25),
            "-": () => zoomTo(sheet, windowOf(sheet).z / 1.25), "0": () => zoomTo(sheet, 1),
            ArrowLeft: () => panBy(sheet, step, 0), ArrowRight: () => panBy(sheet, -step, 0),
            ArrowUp: () => panBy(sheet, 0, step), ArrowDown: () => panBy(sheet, 0, -step),
        };
        if (!keys[e.key] || e.ctrlKey || e.metaKey) return;
        e.preventDefault();
        keys[e.key]();
    });
    document.addEventListener("click", e => {
        const to = e.target.closest?.("[data-zoom]")?.dataset.zoom;
        if (to && sheet.isConnected) zoomTo(sheet, to === "in" ? windowOf(sheet).z * 1.5 : to === "out" ? windowOf(sheet).z / 1.5 : 1);
    });
    // A drawing that comes anew is shown through the same window; another view begins whole.
    let shown = sheet.dataset.shown;
    new MutationObserver(() => {
        const grips = sheet.querySelector("svg.grips");
        if (!grips) return;
        if (shown !== sheet.dataset.shown) {
            shown = sheet.dataset.shown;
            zooms.delete(sheet);
        }
        const z = windowOf(sheet).z;
        if (z > 1 || sheet.dataset.zoomed === "yes") applyZoom(sheet);
    }).observe(sheet, { childList: true, attributes: true, attributeFilter: ["data-shown"] });
    drops = { sheet, desk };
    const size = () => [sheet.clientWidth - 16, sheet.clientHeight - 16];
    let told = size();
    let later = 0;
    new ResizeObserver(() => {
        clearTimeout(later);
        later = setTimeout(() => {
            const now = size();
            if (hold || (Math.abs(now[0] - told[0]) < 8 && Math.abs(now[1] - told[1]) < 8)) return;
            told = now;
            desk.invokeMethodAsync("Fit", now[0], now[1]).catch(() => { });
        }, 150);
    }).observe(sheet);
    // From here on a hand on the drawing is felt; handles show only then.
    sheet.dataset.live = "yes";
    putBack();
    return told;
};

// An entry of the library is dragged onto the drawing.
let drops = null;
let carried = null;
document.addEventListener("pointerdown", e => {
    const entry = e.target.closest?.("[data-add]");
    if (entry && e.button === 0) carried = { entry, x: e.clientX, y: e.clientY, id: e.pointerId, ghost: null };
});
document.addEventListener("pointermove", e => {
    if (!carried || e.pointerId !== carried.id) return;
    if (!carried.ghost) {
        if (Math.hypot(e.clientX - carried.x, e.clientY - carried.y) < 10) return;
        carried.ghost = carried.entry.querySelector(".entrypic")?.cloneNode(true) ?? document.createElement("span");
        carried.ghost.className = "ghost";
        document.body.append(carried.ghost);
    }
    carried.ghost.style.transform = `translate(${e.clientX - 24}px, ${e.clientY - 24}px)`;
});
for (const kind of ["pointerup", "pointercancel"]) {
    document.addEventListener(kind, e => {
        if (!carried) return;
        const { entry, ghost } = carried;
        carried = null;
        if (!ghost) return;
        ghost.remove();
        entry.addEventListener("click", c => { c.stopImmediatePropagation(); c.preventDefault(); }, { capture: true, once: true });
        const box = drops?.sheet.getBoundingClientRect();
        const isOver = box && e.clientX > box.left && e.clientX < box.right && e.clientY > box.top && e.clientY < box.bottom;
        if (kind === "pointerup" && isOver) {
            const at = spotOf(drops.sheet, e);
            drops.desk.invokeMethodAsync("PutDown", entry.dataset.list, entry.dataset.add, at.x, at.y).catch(() => { });
        }
    });
}

bench.focus = id => document.getElementById(id)?.focus({ preventScroll: true });
// To a field of the card: what hides it is opened; taken by hand it gets the focus too.
bench.toField = (id, isTaken) => {
    const field = document.getElementById(id);
    if (!field) return;
    for (let d = field.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
    field.closest(".field")?.scrollIntoView({ block: "nearest" });
    if (!isTaken) return;
    field.focus({ preventScroll: true });
    field.select?.();
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
