"use strict";

// Draws all curves of a test over each other; the one that is pointed at says whose it is.
(function () {
    const section = document.querySelector("[data-overlay]");
    if (!section) {
        return;
    }
    const live = section.querySelector(".live");
    const readout = section.querySelector(".readout");
    const reach = 24;
    const height = () => (innerWidth < 700 ? 320 : 460);
    const colour = (name) => getComputedStyle(document.documentElement).getPropertyValue("--" + name).trim();
    let plot;
    let all;
    let at = -1;

    function extent(name) {
        let low = Infinity;
        let high = -Infinity;
        for (const curve of all.curves) {
            for (const value of curve[name]) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        return [low, high];
    }

    function name(index) {
        at = index;
        const curve = all.curves[index];
        readout.textContent = curve ? curve.code + ", " + curve.group + (curve.doubted ? ": something was noticed of it" : "") : "";
        plot.redraw(false, false);
    }

    function line(u, curve, ink, width) {
        const { ctx } = u;
        ctx.strokeStyle = ink;
        ctx.lineWidth = width * devicePixelRatio;
        ctx.setLineDash(curve.control ? [7 * devicePixelRatio, 4 * devicePixelRatio] : []);
        ctx.beginPath();
        for (let row = 0; row < curve.x.length; row++) {
            const x = u.valToPos(curve.x[row], "x", true);
            const y = u.valToPos(curve.y[row], "y", true);
            if (row === 0) {
                ctx.moveTo(x, y);
            } else {
                ctx.lineTo(x, y);
            }
        }
        ctx.stroke();
    }

    function drawCurves(u) {
        u.ctx.save();
        u.ctx.beginPath();
        u.ctx.rect(u.bbox.left, u.bbox.top, u.bbox.width, u.bbox.height);
        u.ctx.clip();
        u.ctx.globalAlpha = at < 0 ? 0.75 : 0.3;
        const inks = { control: colour("control"), treated: colour("treated") };
        all.curves.forEach((curve) => line(u, curve, curve.control ? inks.control : inks.treated, 1.25));
        u.ctx.globalAlpha = 1;
        if (all.curves[at]) {
            line(u, all.curves[at], colour("ink"), 2.5);
        }
        u.ctx.restore();
    }

    // The nearest curve within reach of the pointer, by its points and what lies between them.
    function nearest(u, left, top) {
        let best = reach;
        let found = -1;
        all.curves.forEach((curve, index) => {
            for (let row = 1; row < curve.x.length; row++) {
                const x0 = u.valToPos(curve.x[row - 1], "x");
                const x1 = u.valToPos(curve.x[row], "x");
                if (Math.max(x0, x1) < left - reach || Math.min(x0, x1) > left + reach) {
                    continue;
                }
                const y0 = u.valToPos(curve.y[row - 1], "y");
                const y1 = u.valToPos(curve.y[row], "y");
                const length = (x1 - x0) ** 2 + (y1 - y0) ** 2;
                const part = length === 0 ? 0
                    : Math.max(0, Math.min(1, ((left - x0) * (x1 - x0) + (top - y0) * (y1 - y0)) / length));
                const far = Math.hypot(x0 + part * (x1 - x0) - left, y0 + part * (y1 - y0) - top);
                if (far < best) {
                    best = far;
                    found = index;
                }
            }
        });
        return found;
    }

    function draw() {
        const ink = colour("soft");
        const axis = (channel) => ({
            label: channel.label + (channel.unit ? " in " + channel.unit : ""), stroke: ink, font: "13px Inter, sans-serif", labelFont: "13px Inter, sans-serif",
            grid: { stroke: colour("line"), width: 1 }, ticks: { stroke: colour("line"), width: 1 },
        });
        const up = axis(all.up);
        up.size = 64;
        return new uPlot({
            width: live.clientWidth || live.parentNode.clientWidth, height: height(),
            legend: { show: false },
            cursor: { drag: { x: true, y: false, setScale: true }, points: { show: false }, y: false },
            scales: { x: { time: false }, y: { range: (u, low, high) => uPlot.rangeNum(low, high, 0.05, true) } },
            axes: [axis(all.across), up],
            series: [{}, { stroke: "transparent", points: { show: false } }],
            hooks: {
                draw: [drawCurves],
                setCursor: [(u) => {
                    const index = u.cursor.left < 0 ? -1 : nearest(u, u.cursor.left, u.cursor.top);
                    if (index !== at && u.cursor.left >= 0) {
                        name(index);
                    }
                }],
            },
        }, [extent("x"), extent("y")], live);
    }

    function zoom(by) {
        const { min, max } = plot.scales.x;
        const half = ((max - min) / 2) * by;
        const [first, last] = extent("x");
        plot.setScale("x", { min: Math.max(first, (min + max) / 2 - half), max: Math.min(last, (min + max) / 2 + half) });
    }

    const actions = {
        in: () => zoom(0.5),
        out: () => zoom(2),
        all: () => { const [min, max] = extent("x"); plot.setScale("x", { min, max }); },
    };
    const open = () => { if (all.curves[at]) { location.assign(all.curves[at].link); } };
    const keys = {
        ArrowRight: () => name((at + 1) % all.curves.length),
        ArrowLeft: () => name((at - 1 + all.curves.length) % all.curves.length),
        Enter: open, "+": actions.in, "-": actions.out, 0: actions.all,
    };

    fetch(section.dataset.overlay).then((answer) => answer.json()).then((json) => {
        all = json;
        live.hidden = false;
        section.querySelector(".still").hidden = true;
        for (const more of section.querySelectorAll(".tools, .hint")) {
            more.hidden = false;
        }
        plot = draw();
        let pressed = 0;
        live.addEventListener("mousedown", (event) => { pressed = event.clientX; });
        live.addEventListener("click", (event) => {
            if (Math.abs(event.clientX - pressed) < 4) {
                open();
            }
        });
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
        addEventListener("resize", () => plot.setSize({ width: live.clientWidth, height: height() }));
        matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
            plot.destroy();
            plot = draw();
        });
    });
})();
