"use strict";

// A film, frame by frame: where it stands, what was noted and marked on its frames, and the path of
// a tip. It uses what picture.js hands out.
const Film = (function () {
    const PLAYED_MS = 1500;
    const MARKS = { "last straight": "Straight for the last time", "first sagging": "Sags for the first time", needle: "The needle stands", start: "Time starts", other: "Marked" };
    const COLUMN_OF = { "last straight": "onset_from", "first sagging": "onset_to" };
    let video;
    let film = null;
    let frame = 0;

    const byId = (id) => document.getElementById(id);
    const rate = () => Number(byId("rate").value.replace(",", ".")) || 30;
    const last = () => Math.max(0, Math.floor(video.duration * rate() + 1e-6) - 1);
    const frameTime = (number) => number / rate();

    function fresh() {
        return { rate: "", clock: [], thermometer: [], marks: [], tips: [], line: [] };
    }

    function open(file, from) {
        video = byId("film");
        video.onerror = () => Picture.unread(file);
        video.onloadedmetadata = async () => {
            if (!Number.isFinite(video.duration)) {
                // What a browser recorded says its length only after somebody went to its end.
                video.currentTime = 1e7;
                await once(video, "durationchange");
            }
            film = null;
            frame = 0;
            Picture.sheet.film = fresh();
            Picture.opened(file, video, video.videoWidth, video.videoHeight);
            await go(0);
        };
        video.src = from;
    }

    const once = (target, event) => new Promise((done) => target.addEventListener(event, done, { once: true }));

    // The middle of a frame is asked for, so that rounding leads to no neighbour.
    async function go(to) {
        frame = Math.min(Math.max(0, to), last());
        const at = Math.min((frame + 0.5) / rate(), video.duration);
        if (Math.abs(video.currentTime - at) > 1e-6) {
            const seeked = once(video, "seeked");
            video.currentTime = at;
            await seeked;
        }
        byId("seek").max = last();
        byId("seek").value = frame;
        byId("frame").textContent = `frame ${frame}, ${frameTime(frame).toFixed(2)} s`;
        Picture.draw();
    }

    // Differences between frames that were shown one after the other; dropped ones make them longer.
    async function findRate() {
        if (!video.requestVideoFrameCallback) {
            Picture.say("This browser can't tell; look the frames a second up in the camera.");
            return;
        }
        const times = [];
        const hear = (now, data) => {
            times.push(data.mediaTime);
            video.requestVideoFrameCallback(hear);
        };
        video.requestVideoFrameCallback(hear);
        video.currentTime = 0;
        await video.play().catch(() => {});
        await new Promise((done) => setTimeout(done, PLAYED_MS));
        video.pause();
        const gaps = times.slice(1).map((time, at) => time - times[at]).filter((gap) => gap > 1e-4).sort((a, b) => a - b);
        if (gaps.length < 5) {
            Picture.say("Too few frames were played to tell; type what the camera says.");
        } else {
            byId("rate").value = String(Math.round(100 / gaps[Math.floor(gaps.length / 4)]) / 100);
            Picture.say(`${gaps.length + 1} frames were seen; ${byId("rate").value} frames a second.`);
            Picture.ask();
        }
        await go(0);
    }

    function note(kind) {
        const shows = byId(kind).value.trim();
        if (!shows) {
            byId(kind).focus();
            return;
        }
        film[kind] = film[kind].filter((it) => it.frame !== frame).concat({ frame, shows }).sort((a, b) => a.frame - b.frame);
        byId(kind).value = "";
        noted(kind);
        Picture.ask();
    }

    function noted(kind) {
        byId(kind + "-noted").replaceChildren(...film[kind].map((it) => Picture.make("li", {},
            `frame ${it.frame}: ${it.shows}${kind === "thermometer" ? " °C" : ""}`,
            Picture.button("Take it away", () => {
                film[kind] = film[kind].filter((other) => other !== it);
                noted(kind);
                Picture.ask();
            }, { ariaLabel: `Take away what was noted for frame ${it.frame}` }))));
    }

    function answered(answer) {
        if (!film) {
            return;
        }
        Picture.told(byId("clock-found"), answer.clock);
        Picture.rows(byId("marked"), film.marks, answer.marks || [], (mark, number, part) => ({
            name: `${MARKS[mark.what]}${part.at ? ", " + part.at : ""}`,
            buttons: [
                Picture.button("Show this frame", () => go(mark.frame)),
                Picture.button("Take it away", () => { film.marks.splice(number, 1); Picture.ask(); }),
            ],
        }));
        curve(answer.curve);
    }

    function curve(part) {
        const place = byId("curve");
        if (!part) {
            place.replaceChildren();
            return;
        }
        const state = Picture.make("p", { className: "found", role: "status" });
        const room = byId("columns").dataset;
        const buttons = [Picture.button("Take the last place away", () => { film.tips.pop(); Picture.draw(); Picture.ask(); })];
        if (part.ready && room.room === "yes") {
            buttons.unshift(Picture.make("button", {
                type: "button", textContent: `Keep it as the curve of ${room.specimen}`,
                onclick: () => Picture.send("curve", { column: room.curveColumn }, cell(room), state),
            }));
        }
        place.replaceChildren(
            Picture.make("p", { className: part.trouble ? "trouble" : "found", textContent: part.trouble || part.text }),
            ...(part.rows && part.rows.length > 1 ? [chart(part.rows)] : []),
            ...(part.ready && room.room !== "yes" ? [Picture.make("p", { className: "more", textContent: "The table of this test has no column curve_file, so that a curve has no place in it." })] : []),
            Picture.make("p", { className: "actions" }, ...buttons), state);
    }

    // The last entry on the curve's name is written where the page keeps it, for the next time.
    function cell(room) {
        return { get seen() { return room.curveSeen; }, set seen(entry) { room.curveSeen = entry; } };
    }

    function chart(rows) {
        const space = { width: 400, height: 220, left: 46, bottom: 26, top: 10, right: 10 };
        const range = (values) => [Math.min(...values), Math.max(...values)];
        const [x0, x1] = range(rows.map((row) => row[0]));
        const [y0, y1] = range(rows.map((row) => row[1]).concat(0));
        const x = (value) => space.left + (value - x0) / ((x1 - x0) || 1) * (space.width - space.left - space.right);
        const y = (value) => space.top + (y1 - value) / ((y1 - y0) || 1) * (space.height - space.top - space.bottom);
        const make = (name, fields, text) => {
            const element = document.createElementNS("http://www.w3.org/2000/svg", name);
            Object.entries(fields).forEach(([key, value]) => element.setAttribute(key, value));
            element.textContent = text || "";
            return element;
        };
        const svg = make("svg", { class: "drawn", viewBox: `0 0 ${space.width} ${space.height}`, role: "img", "aria-label": `Sag over temperature, ${rows.length} places` });
        const base = space.height - space.bottom;
        svg.append(
            make("path", { d: `M${space.left} ${space.top}V${base}H${space.width - space.right}` }),
            make("polyline", { points: rows.map((row) => `${x(row[0])},${y(row[1])}`).join(" ") }),
            ...rows.map((row) => make("circle", { cx: x(row[0]), cy: y(row[1]), r: 3 })),
            make("text", { x: space.left, y: space.height - 6 }, `${x0.toFixed(1)} °C`),
            make("text", { x: space.width - space.right, y: space.height - 6, "text-anchor": "end" }, `${x1.toFixed(1)} °C`),
            make("text", { x: space.left - 4, y: space.top + 8, "text-anchor": "end" }, y1.toFixed(1)),
            make("text", { x: space.left - 4, y: base, "text-anchor": "end" }, y0.toFixed(1)));
        return svg;
    }

    function placed(kind, look) {
        if (kind === "line") {
            film.line = look;
            return;
        }
        film.tips = film.tips.filter((it) => it.frame !== frame).concat({ frame, at: look[0] }).sort((a, b) => a.frame - b.frame);
        const stride = Math.max(1, parseInt(byId("stride").value, 10) || 1);
        if (frame + stride > last()) {
            Picture.end("The film ends here.");
        } else {
            Picture.say(`Frame ${frame} is set. Tap the tip on frame ${frame + stride}.`);
            go(frame + stride);
        }
    }

    function looks() {
        if (!film) {
            return [];
        }
        const tips = film.tips.filter((it) => it.frame === frame).map((it) => ({ kind: "tip", look: [it.at], name: "Tip" }));
        return film.line.length ? tips.concat({ kind: "line", look: film.line, name: "Line that stands still" }) : tips;
    }

    function listen() {
        Picture.listeners.opened.push((image) => {
            const isFilm = image === video;
            document.querySelectorAll(".frames").forEach((it) => { it.hidden = !isFilm; });
            byId("filmed").hidden = !isFilm;
            film = isFilm ? Picture.sheet.film : null;
            if (film) {
                byId("rate").value = film.rate || byId("rate").value;
                noted("clock");
                noted("thermometer");
            }
        });
        Picture.listeners.answered.push(answered);
        document.addEventListener("click", (event) => {
            const pressed = event.target.closest("[data-step], [data-note]");
            if (pressed && pressed.dataset.step) {
                go(frame + Number(pressed.dataset.step));
            } else if (pressed) {
                note(pressed.dataset.note);
            }
        });
        byId("seek").addEventListener("input", (event) => go(Number(event.target.value)));
        byId("find-rate").addEventListener("click", findRate);
        byId("rate").addEventListener("change", () => { go(Math.round(video.currentTime * rate() - 0.5)); Picture.ask(); });
        byId("mark").addEventListener("click", () => {
            film.marks.push({ frame, what: byId("what").value });
            Picture.ask();
        });
        for (const kind of ["clock", "thermometer"]) {
            byId(kind).addEventListener("keydown", (event) => event.key === "Enter" && note(kind));
        }
        byId("pane").addEventListener("keydown", (event) => {
            const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
            if (film && by && event.target === byId("pane")) {
                event.preventDefault();
                go(frame + by * (event.shiftKey ? 10 : 1));
            }
        });
    }

    if (document.getElementById("measure")) {
        addEventListener("DOMContentLoaded", listen);
    }
    return {
        open, placed, looks,
        framed: (figure) => (film ? { ...figure, frame } : figure),
        isHere: (figure) => !film || figure.frame === frame,
        typed: (sheet) => { if (film) { film.rate = byId("rate").value; } sheet.film = film; },
        suits: (what, column) => COLUMN_OF[what] !== undefined && column.startsWith(COLUMN_OF[what]),
        words: (name) => (film ? `frame ${frame} at ${frameTime(frame).toFixed(3)} s of ${name}` : `measured on ${name}`),
    };
})();
