"use strict";

// The server says how long is left; the clocks of a desk and a phone may differ.
for (const timer of document.querySelectorAll("[data-left], [data-since]")) {
    const number = timer.querySelector("b");
    const start = Date.now();
    const left = Number(timer.dataset.left);
    const since = Number(timer.dataset.since);
    const words = seconds => {
        const whole = Math.max(0, Math.floor(seconds));
        const hours = Math.floor(whole / 3600);
        const minutes = Math.floor(whole % 3600 / 60);
        if (hours >= 48) {
            return Math.floor(hours / 24) + " d " + hours % 24 + " h";
        }
        const rest = String(whole % 60).padStart(2, "0");
        return hours > 0
            ? hours + " h " + String(minutes).padStart(2, "0") + " min"
            : minutes + ":" + rest + " min";
    };
    const show = () => {
        const gone = (Date.now() - start) / 1000;
        if ("left" in timer.dataset) {
            number.textContent = left - gone > 0 ? words(left - gone) : timer.dataset.over;
            timer.classList.toggle("over", left - gone <= 0);
            timer.classList.toggle("soon", left - gone > 0 && left - gone < 300);
        } else {
            number.textContent = words(since + gone);
        }
    };
    show();
    setInterval(show, 1000);
}
