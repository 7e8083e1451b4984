// Lets the log page of a tank open without a network, after it was opened once on this device.
"use strict";
importScripts("/_content/Litterfall.Web/tank-queue.js");
const shelf = "litterfall-log-1";
const shell = "/tanks/-/log";
const files = [
    "/_content/Litterfall.Web/bench.css",
    "/_content/Litterfall.Web/tank-log.css",
    "/_content/Litterfall.Web/tank-queue.js",
    "/_content/Litterfall.Web/tank-log.js",
    "/_content/Litterfall.Web/fonts/Inter-Regular.ttf",
    "/_content/Litterfall.Web/fonts/Inter-SemiBold.ttf",
];
const patience = 4000;

self.addEventListener("install", event => event.waitUntil((async () => {
    const kept = await caches.open(shelf);
    await kept.addAll([shell, ...files]);
    await self.skipWaiting();
})()));

self.addEventListener("activate", event => event.waitUntil((async () => {
    for (const name of await caches.keys()) {
        if (name.startsWith("litterfall-log-") && name !== shelf) {
            await caches.delete(name);
        }
    }
    await self.clients.claim();
})()));

self.addEventListener("sync", event => {
    if (event.tag === "lines") {
        event.waitUntil(self.tankQueue.send());
    }
});

// The newest from the bench where it answers in time; else what was kept.
const newest = async (request, as) => {
    const kept = await caches.open(shelf);
    const late = new AbortController();
    const timer = setTimeout(() => late.abort(), patience);
    try {
        const answer = await fetch(request, { signal: late.signal });
        if (answer.ok && !answer.redirected) {
            await kept.put(as, answer.clone());
        }
        return answer;
    } catch {
        return await kept.match(as) ?? Response.error();
    } finally {
        clearTimeout(timer);
    }
};

// Other pages of a tank are drawn by the bench; without it, its log is what can be written.
const orLog = async request => {
    try {
        return await fetch(request);
    } catch {
        const tank = new URL(request.url).pathname.split("/")[2];
        return tank ? Response.redirect(`/tanks/${tank}/log`) : Response.error();
    }
};

self.addEventListener("fetch", event => {
    const { request } = event;
    const path = new URL(request.url).pathname;
    if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) {
        return;
    }
    if (request.mode === "navigate" && /^\/tanks\/[^/]+\/log$/.test(path)) {
        event.respondWith(newest(request, shell));
    } else if (request.mode === "navigate" && /^\/tanks\/[^/]+$/.test(path)) {
        event.respondWith(orLog(request));
    } else if (files.includes(path)) {
        event.respondWith(newest(request, path));
    }
});
