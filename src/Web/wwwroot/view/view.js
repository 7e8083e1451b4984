// The finished box in space: draws what the bench sends, and turns under the hand. Nothing moves by itself.
import * as three from "./three.js";

const day = [0xfaf7f0, 0xece5d6];
const night = [0x242c33, 0x181e23];
const least = { rise: -15, zoom: 0.5 };
const most = { rise: 85, zoom: 2.5 };

class View {
    constructor(stand, renderer) {
        three.ColorManagement.enabled = false;
        this.stand = stand;
        this.renderer = renderer;
        this.scene = new three.Scene();
        this.camera = new three.PerspectiveCamera(26, 1, 0.01, 20);
        this.camera.up.set(0, 0, 1);
        this.usual = { turn: 24, rise: 13, field: 26 };
        this.at = { turn: 24, rise: 13, zoom: 1 };
        this.parts = [];
        this.box = null;
        this.isLit = true;
        this.fingers = new Map();
        this.times = [];
        this.listen();
    }

    listen() {
        this.leaving = new AbortController();
        const on = (name, act, options) => this.stand.addEventListener(name, act, { signal: this.leaving.signal, ...options });
        on("pointerdown", e => {
            if (e.button > 0) return;
            this.stand.setPointerCapture(e.pointerId);
            this.fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
        });
        on("pointermove", e => {
            const was = this.fingers.get(e.pointerId);
            if (!was) return;
            const before = this.spread();
            this.fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
            if (this.fingers.size > 1) {
                const after = this.spread();
                if (before > 0 && after > 0) this.move(0, 0, after / before);
                return;
            }
            this.move((was.x - e.clientX) * 0.35, (e.clientY - was.y) * 0.3, 1);
        });
        for (const name of ["pointerup", "pointercancel"]) on(name, e => this.fingers.delete(e.pointerId));
        on("wheel", e => {
            e.preventDefault();
            this.move(0, 0, Math.exp(-e.deltaY * 0.0012));
        }, { passive: false });
        on("keydown", e => {
            const step = e.shiftKey ? 15 : 5;
            const moves = {
                ArrowLeft: [-step, 0, 1], ArrowRight: [step, 0, 1], ArrowUp: [0, step, 1], ArrowDown: [0, -step, 1],
                "+": [0, 0, 1.15], "=": [0, 0, 1.15], "-": [0, 0, 1 / 1.15], PageUp: [0, 0, 1.15], PageDown: [0, 0, 1 / 1.15],
            };
            if (e.key === "Home") this.reset();
            else if (moves[e.key]) this.move(...moves[e.key]);
            else return;
            e.preventDefault();
        });
        this.sizes = new ResizeObserver(() => this.soon());
        this.sizes.observe(this.stand);
        this.renderer.domElement.addEventListener("webglcontextlost", e => e.preventDefault());
        this.renderer.domElement.addEventListener("webglcontextrestored", () => this.soon());
    }

    spread() {
        const [a, b] = [...this.fingers.values()];
        return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
    }

    move(turn, rise, nearer) {
        const { at } = this;
        at.turn = ((at.turn + turn + 540) % 360) - 180;
        at.rise = Math.min(most.rise, Math.max(least.rise, at.rise + rise));
        at.zoom = Math.min(most.zoom, Math.max(least.zoom, at.zoom * nearer));
        this.soon();
    }

    reset() {
        this.at = { turn: this.usual.turn, rise: this.usual.rise, zoom: 1 };
        this.soon();
    }

    async show(stream, isWhole) {
        const bytes = await stream.arrayBuffer();
        const { head, parts } = read(bytes);
        for (const part of this.parts.filter(p => isWhole || p.isLive)) {
            for (const thing of part.things) {
                this.scene.remove(thing);
                thing.geometry.dispose();
                thing.material.dispose();
            }
        }
        this.parts = isWhole ? [] : this.parts.filter(p => !p.isLive);
        const isFirst = this.box === null;
        this.isLit = head.isLit;
        this.box = { low: head.low, high: head.high };
        this.usual = { turn: head.turn, rise: head.rise, field: head.field };
        this.parts.push(...parts.map(part => ({ ...part, things: things(part) })));
        for (const part of this.parts) for (const thing of part.things) this.scene.add(thing);
        this.paint();
        if (isFirst) this.reset();
        this.draw();
        this.stand.dataset.light = this.isLit ? "day" : "night";
        this.stand.dataset.shown = String(+(this.stand.dataset.shown ?? 0) + 1);
    }

    paint() {
        for (const part of this.parts) {
            for (const thing of part.things) thing.geometry.setAttribute("color", thing.userData[this.isLit ? "lit" : "dark"]);
        }
        const [top, foot] = this.isLit ? day : night;
        const css = color => `#${color.toString(16).padStart(6, "0")}`;
        this.stand.style.background = `linear-gradient(${css(top)}, ${css(foot)})`;
    }

    soon() {
        if (this.waits || !this.box) return;
        this.waits = requestAnimationFrame(() => {
            this.waits = 0;
            this.draw();
        });
    }

    draw() {
        const { clientWidth: width, clientHeight: height } = this.stand;
        if (!width || !height) return;
        const from = performance.now();
        const ratio = Math.min(window.devicePixelRatio || 1, 2);
        const size = `${width} ${height} ${ratio}`;
        if (size !== this.size) {
            this.size = size;
            this.renderer.setPixelRatio(ratio);
            this.renderer.setSize(width, height, false);
        }
        fit(this.camera, this.box, this.at, this.usual.field, width / height);
        this.renderer.render(this.scene, this.camera);
        this.times.push(performance.now() - from);
        const { turn, rise, zoom } = this.at;
        this.stand.dataset.turn = turn.toFixed(1);
        this.stand.dataset.rise = rise.toFixed(1);
        this.stand.dataset.zoom = zoom.toFixed(2);
        const save = this.stand.parentElement?.querySelector("[data-save]");
        if (save) {
            const address = new URL(save.getAttribute("href"), location.href);
            address.searchParams.set("turn", turn.toFixed(1));
            address.searchParams.set("rise", rise.toFixed(1));
            address.searchParams.set("zoom", zoom.toFixed(2));
            save.setAttribute("href", address.pathname + address.search);
        }
    }

    // What it takes to draw: for the eyes of tests.
    cost() {
        const { calls, triangles, lines } = this.renderer.info.render;
        return { calls, triangles, lines, times: this.times.splice(0) };
    }

    close() {
        this.leaving.abort();
        this.sizes.disconnect();
        cancelAnimationFrame(this.waits);
        for (const part of this.parts) for (const thing of part.things) { thing.geometry.dispose(); thing.material.dispose(); }
        this.renderer.dispose();
        this.renderer.domElement.remove();
    }
}

// The camera has the whole box in its picture, as the stills of the bench have.
function fit(camera, box, at, field, aspect) {
    const radians = degrees => degrees * Math.PI / 180;
    const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    const [ts, tc, rs, rc] = [Math.sin(radians(at.turn)), Math.cos(radians(at.turn)), Math.sin(radians(at.rise)), Math.cos(radians(at.rise))];
    const back = [ts * rc, -tc * rc, rs];
    const right = [tc, ts, 0];
    const up = [back[1] * right[2] - back[2] * right[1], back[2] * right[0] - back[0] * right[2], back[0] * right[1] - back[1] * right[0]];
    const corners = [];
    for (const x of [box.low[0], box.high[0]]) for (const y of [box.low[1], box.high[1]]) for (const z of [box.low[2], box.high[2]]) corners.push([x, y, z]);
    const tall = Math.tan(radians(field) / 2) * 0.93;
    const wide = tall * aspect;
    let target = [0, 1, 2].map(k => (box.low[k] + box.high[k]) / 2);
    let far = 1;
    for (let pass = 0; pass < 8; pass++) {
        const seen = corners.map(c => c.map((v, k) => v - target[k])).map(c => [dot(c, right), dot(c, up), dot(c, back)]);
        far = Math.max(...seen.map(([x, y, z]) => z + Math.max(Math.abs(x) / wide, Math.abs(y) / tall)));
        const across = seen.map(([x, , z]) => x / (far - z));
        const upward = seen.map(([, y, z]) => y / (far - z));
        const [dx, dy] = [across, upward].map(all => (Math.max(...all) + Math.min(...all)) / 2 * far);
        target = target.map((v, k) => v + right[k] * dx + up[k] * dy);
    }
    far /= at.zoom;
    camera.fov = field;
    camera.aspect = aspect;
    camera.near = Math.max(0.02, far * 0.1);
    camera.far = far * 4 + 4;
    camera.position.set(...target.map((v, k) => v + back[k] * far));
    camera.lookAt(...target);
    camera.updateProjectionMatrix();
}

// What the bench sends; see SceneBytes for the order.
function read(bytes) {
    const view = new DataView(bytes);
    let at = 0;
    const whole = () => view.getInt32((at += 4) - 4, true);
    const real = () => view.getFloat32((at += 4) - 4, true);
    const point = () => [real(), real(), real()];
    const take = (type, count, size) => {
        const taken = new type(bytes, at, count);
        at += count * size;
        return taken;
    };
    if (whole() !== 0x3157464c) throw new Error("this is no picture of the bench");
    const count = whole();
    const head = { isLit: whole() === 1, low: point(), high: point(), turn: real(), rise: real(), field: real() };
    const parts = [];
    for (let i = 0; i < count; i++) {
        const [kind, isLive, points, corners, ends, letters] = [whole(), whole() === 1, whole(), whole(), whole(), whole()];
        const name = String.fromCharCode(...take(Uint8Array, letters, 1));
        at += (4 - letters % 4) % 4;
        parts.push({
            kind, isLive, name, origin: point(), step: point(),
            points: take(Int16Array, points * 4, 2), lit: take(Uint8Array, points * 4, 1), dark: take(Uint8Array, points * 4, 1),
            corners: take(Uint32Array, corners, 4),
            ends: take(Int16Array, ends * 4, 2), litInks: take(Uint8Array, ends * 4, 1), darkInks: take(Uint8Array, ends * 4, 1),
        });
    }
    return { head, parts };
}

function things(part) {
    const [solid, , film] = [0, 1, 2];
    const made = [];
    if (part.corners.length) {
        const material = new three.MeshBasicMaterial({
            vertexColors: true, side: part.kind === 1 ? three.FrontSide : three.DoubleSide, transparent: part.kind === film,
            depthWrite: part.kind !== film, polygonOffset: part.kind === solid, polygonOffsetFactor: 1, polygonOffsetUnits: 1,
        });
        made.push(placed(new three.Mesh(geometry(part.points, part.corners), material), part, part.lit, part.dark));
    }
    if (part.ends.length) {
        const material = new three.LineBasicMaterial({ vertexColors: true, transparent: true, depthWrite: false });
        const lines = placed(new three.LineSegments(geometry(part.ends), material), part, part.litInks, part.darkInks);
        // Lines of bodies come before films, which lie over them; lines of films come last.
        lines.renderOrder = part.kind === film ? 2 : -1;
        made.push(lines);
    }
    return made;
}

function geometry(points, corners) {
    const made = new three.BufferGeometry();
    made.setAttribute("position", new three.InterleavedBufferAttribute(new three.InterleavedBuffer(points, 4), 3, 0, false));
    if (corners) made.setIndex(new three.BufferAttribute(corners, 1));
    return made;
}

function placed(thing, part, lit, dark) {
    thing.scale.set(...part.step);
    thing.position.set(...part.origin);
    thing.geometry.computeBoundingSphere();
    thing.userData.lit = new three.BufferAttribute(lit, 4, true);
    thing.userData.dark = new three.BufferAttribute(dark, 4, true);
    return thing;
}

// Opens the view in its stand; null where this browser draws nothing in space.
export function open(stand) {
    try {
        const renderer = new three.WebGLRenderer({ antialias: true, alpha: true, preserveDrawingBuffer: true });
        renderer.outputColorSpace = three.LinearSRGBColorSpace;
        renderer.setClearColor(0x000000, 0);
        stand.append(renderer.domElement);
        const view = new View(stand, renderer);
        stand.view = view;
        return view;
    } catch {
        return null;
    }
}
