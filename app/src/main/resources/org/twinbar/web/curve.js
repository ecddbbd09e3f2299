"use strict";

// Puts a drawing that can be zoomed and read in place of the still one.
(function () {
    const section = document.querySelector("[data-curve]");
    const live = section.querySelector(".live");
    const readout = section.querySelector(".readout");
    const height = () => (innerWidth < 700 ? 280 : 380);
    const colour = (name) => getComputedStyle(document.documentElement).getPropertyValue("--" + name).trim();
    const number = (value) => Number(value.toPrecision(4)).toString().replace("-", "\u2212");
    let plot;
    let curve;
    let nextMark = 0;

    function say(at, name) {
        if (curve.y[at] === null) {
            readout.textContent = "no reading here";
            return;
        }
        const words = (channel, value) => channel.label.toLowerCase() + " " + number(value)
            + (channel.unit ? "\u202f" + channel.unit : "");
        const sentence = words(curve.up, curve.y[at]) + " at " + words(curve.across, curve.x[at]);
        readout.textContent = name ? name + ": " + sentence
            : sentence.charAt(0).toUpperCase() + sentence.slice(1);
    }

    function draw() {
        const ink = colour("soft");
        const axis = (channel) => ({
            label: channel.label + (channel.unit ? " in " + channel.unit : ""), stroke: ink, font: "13px Inter, sans-serif", labelFont: "13px Inter, sans-serif",
            grid: { stroke: colour("line"), width: 1 }, ticks: { stroke: colour("line"), width: 1 },
        });
        const up = axis(curve.up);
        up.size = 64;
        const line = curve.control ? colour("control") : colour("treated");
        return new uPlot({
            width: live.clientWidth || live.parentNode.clientWidth, height: height(),
            legend: { show: false },
            cursor: { drag: { x: true, y: false, setScale: true }, points: { size: 9 } },
            scales: { x: { time: false } },
            axes: [axis(curve.across), up],
            series: [{}, { stroke: line, width: 1.75, dash: curve.control ? [7, 4] : [], points: { show: false } }],
            hooks: {
                setCursor: [(u) => { if (u.cursor.idx !== null && u.cursor.idx !== undefined) { say(u.cursor.idx); } }],
                draw: [drawMarks],
            },
        }, [curve.x, curve.y], live);
    }

    // Marks carry their number in the list below; those that lie together share a label.
    function drawMarks(u) {
        const pixels = devicePixelRatio;
        const labels = [];
        u.ctx.save();
        u.ctx.beginPath();
        u.ctx.rect(u.bbox.left, u.bbox.top, u.bbox.width, u.bbox.height);
        u.ctx.clip();
        u.ctx.setLineDash([]);
        u.ctx.lineWidth = 2 * pixels;
        u.ctx.strokeStyle = u.ctx.fillStyle = colour("ink");
        u.ctx.font = "600 " + 13 * pixels + "px Inter, sans-serif";
        u.ctx.textAlign = "center";
        curve.marks.forEach((mark) => {
            const x = u.valToPos(mark.x, "x", true);
            const y = u.valToPos(mark.y, "y", true);
            u.ctx.beginPath();
            u.ctx.arc(x, y, 5 * pixels, 0, 2 * Math.PI);
            u.ctx.stroke();
            const near = labels.find((label) => Math.hypot(label.x - x, label.y - y) < 16 * pixels);
            if (near) {
                near.numbers.push(mark.number);
            } else {
                labels.push({ x, y, numbers: [mark.number] });
            }
        });
        for (const label of labels) {
            const words = label.numbers.join(", ");
            const half = u.ctx.measureText(words).width / 2;
            const x = Math.max(u.bbox.left + half, Math.min(u.bbox.left + u.bbox.width - half, label.x));
            const above = label.y - u.bbox.top > 26 * pixels;
            u.ctx.fillText(words, x, label.y + (above ? -11 : 22) * pixels);
        }
        u.ctx.restore();
    }

    function moveTo(at) {
        const inside = Math.max(0, Math.min(curve.x.length - 1, at));
        const { min, max } = plot.scales.x;
        if (curve.x[inside] < min || curve.x[inside] > max) {
            const half = (max - min) / 2;
            plot.setScale("x", { min: curve.x[inside] - half, max: curve.x[inside] + half });
        }
        plot.setCursor({ left: plot.valToPos(curve.x[inside], "x"), top: plot.valToPos(curve.y[inside] ?? 0, "y") });
        say(inside);
        return inside;
    }

    let at = 0;

    function zoom(by) {
        const { min, max } = plot.scales.x;
        const middle = curve.x[at] >= min && curve.x[at] <= max && at > 0 ? curve.x[at] : (min + max) / 2;
        const half = ((max - min) / 2) * by;
        const first = curve.x[0];
        const last = curve.x[curve.x.length - 1];
        plot.setScale("x", { min: Math.max(first, middle - half), max: Math.min(last, middle + half) });
    }

    const actions = {
        in: () => zoom(0.5),
        out: () => zoom(2),
        left: () => pan(-0.5),
        right: () => pan(0.5),
        all: () => plot.setScale("x", { min: curve.x[0], max: curve.x[curve.x.length - 1] }),
        mark: () => {
            if (curve.marks.length > 0) {
                const mark = curve.marks[nextMark++ % curve.marks.length];
                at = moveTo(curve.x.findIndex((x, row) => x === mark.x && curve.y[row] === mark.y));
                say(at, mark.label);
            }
        },
    };
    const keys = {
        ArrowRight: () => { at = moveTo(at + 1); }, ArrowLeft: () => { at = moveTo(at - 1); },
        PageUp: () => { at = moveTo(at + 25); }, PageDown: () => { at = moveTo(at - 25); },
        Home: () => { at = moveTo(0); }, End: () => { at = moveTo(curve.x.length - 1); },
        "+": actions.in, "-": actions.out, 0: actions.all, m: actions.mark, M: actions.mark,
    };

    // Pans by a share of what is shown, and zooms about a place; neither leaves the curve.
    function view(min, max) {
        const first = curve.x[0];
        const last = curve.x[curve.x.length - 1];
        const width = Math.min(last - first, max - min);
        const from = Math.max(first, Math.min(last - width, min));
        plot.setScale("x", { min: from, max: from + width });
    }

    function pan(share) {
        const { min, max } = plot.scales.x;
        view(min + share * (max - min), max + share * (max - min));
    }

    function wheel(event) {
        if (document.activeElement !== live && !event.ctrlKey && !event.shiftKey) {
            return;
        }
        event.preventDefault();
        const { min, max } = plot.scales.x;
        if (event.shiftKey || Math.abs(event.deltaX) > Math.abs(event.deltaY)) {
            pan((event.deltaX || event.deltaY) / plot.over.clientWidth);
        } else {
            const by = event.deltaY > 0 ? 1.25 : 0.8;
            const held = plot.posToVal(event.clientX - plot.over.getBoundingClientRect().left, "x");
            view(held - (held - min) * by, held + (max - held) * by);
        }
    }

    // A page comes with a thinned curve; all rows follow, so that a closer look shows more.
    function fetchAll() {
        fetch(section.dataset.curve + "&rows=all").then((answer) => answer.json()).then((json) => {
            const { min, max } = plot.scales.x;
            curve = json;
            plot.setData([curve.x, curve.y], false);
            plot.setScale("x", { min, max });
            section.dataset.rows = curve.x.length;
        });
    }

    fetch(section.dataset.curve).then((answer) => answer.json()).then((json) => {
        curve = json;
        live.hidden = false;
        section.querySelector(".still").hidden = true;
        for (const more of section.querySelectorAll(".tools, .hint")) {
            more.hidden = false;
        }
        plot = draw();
        if (curve.rows > curve.x.length) {
            fetchAll();
        }
        live.addEventListener("wheel", wheel, { passive: false });
        live.addEventListener("keydown", (event) => {
            const act = keys[event.key];
            if (act && !event.ctrlKey && !event.metaKey && !event.altKey) {
                event.preventDefault();
                act();
            }
        });
        section.querySelector(".tools").addEventListener("click", (event) => {
            const act = actions[event.target.dataset.do];
            if (act) {
                act();
            }
        });
        live.addEventListener("click", () => {
            const open = section.querySelector(".marks details[open] [data-along]");
            const row = plot.cursor.idx;
            if (open && row !== null && row !== undefined) {
                open.value = Number(curve.x[row].toPrecision(6)) + " " + curve.across.unit;
            }
        });
        addEventListener("resize", () => plot.setSize({ width: live.clientWidth, height: height() }));
        matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
            plot.destroy();
            plot = draw();
        });
    });
})();
