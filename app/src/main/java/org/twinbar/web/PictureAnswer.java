package org.twinbar.web;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.picture.Between;
import org.twinbar.picture.FilmClock;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.study.picture.FilmSheet;
import org.twinbar.study.picture.PictureSheet;

/**
 * What the places that were set on a picture come to, in sentences, as the page's script puts them
 * beside each; what can't be reckoned says why in its own place.
 */
final class PictureAnswer {

    private static final JsonMapper JSON = new JsonMapper();
    private static final int DAY_S = 86_400;

    private final PictureSheet sheet;
    private final ObjectNode answer = JSON.createObjectNode();

    private PictureAnswer(PictureSheet sheet) {
        this.sheet = sheet;
    }

    static String of(PictureSheet sheet) {
        PictureAnswer answer = new PictureAnswer(sheet);
        answer.scale();
        answer.figures();
        sheet.film().ifPresent(answer::film);
        return answer.answer.toString();
    }

    /** What may be refused in its own place. */
    private interface Part {
        void into(ObjectNode json);
    }

    private static void say(ObjectNode json, Part part) {
        try {
            part.into(json);
        } catch (InputException e) {
            json.put("trouble", Words.sentence(e));
        }
    }

    private void scale() {
        say(
                answer.putObject("scale"),
                json -> sheet.scale().ifPresent(set -> json.put("text", scale(set))));
    }

    private static String scale(PictureSheet.Set set) {
        String share = percent(set.scale().standardShare());
        String looks = set.looks().n() == 1
                ? "one look"
                : set.looks().n() + " looks, which scatter by "
                        + Written.number(set.looks().sd(), 2) + " px";
        return "One pixel shows %s %s, from %s. All lengths on this scale are known to %s together (standard uncertainty)%s."
                .formatted(
                        Written.number(set.scale().perPx(), 3),
                        set.unit().symbol(),
                        looks,
                        share,
                        set.exact() ? "; the known distance counts as exact" : "");
    }

    private static String percent(double share) {
        return Written.number(100 * share, 2) + " %";
    }

    private void figures() {
        ArrayNode figures = answer.putArray("figures");
        for (int i = 0; i < sheet.figures(); i++) {
            int number = i;
            say(figures.addObject(), json -> {
                PictureSheet.Measured measured = sheet.figure(number);
                json.put("text", text(measured));
                json.put("more", more(measured));
                keep(json.putArray("keep"), "figure:" + number, measured);
            });
        }
    }

    private static String text(PictureSheet.Measured measured) {
        return Written.value(
                measured.value(),
                measured.standardUncertainty(),
                measured.unit().symbol());
    }

    private static String more(PictureSheet.Measured measured) {
        String unit = " " + measured.unit().symbol();
        String own = Written.uncertainty(measured.how().own()) + unit;
        double shared = measured.how().share() * measured.value();
        String scale = shared > 0
                ? ", %s from the scale, which all on it share"
                        .formatted(Written.uncertainty(shared) + unit)
                : "";
        return measured.looks() == 1
                ? "One look: %s from its places%s. Look again to see how much your eye scatters."
                        .formatted(own, scale)
                : "Mean of %s looks, which scatter by %s (standard deviation): %s from the looks%s."
                        .formatted(
                                measured.looks(),
                                Written.number(measured.sd(), 2) + unit,
                                own,
                                scale);
    }

    private static void keep(ArrayNode offers, String which, PictureSheet.Measured measured) {
        offers.addObject()
                .put("which", which)
                .put("measures", PictureColumns.measures(measured.unit()))
                .put("text", text(measured));
    }

    /**
     * Returns the reading as it would be typed into a field: with the digits that its uncertainty
     * allows.
     */
    static String typed(PictureSheet.Measured measured, Unit unit) {
        double value = measured.unit().to(unit).apply(measured.value());
        double u = measured.unit().differenceTo(unit).apply(measured.standardUncertainty());
        int decimals = u > 0
                ? 1 - (int) Math.floor(StrictMath.log10(u))
                : new BigDecimal(Double.toString(value)).scale();
        return BigDecimal.valueOf(value)
                .setScale(Math.max(0, decimals), RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private void film(FilmSheet film) {
        say(answer.putObject("clock"), json -> json.put("text", clock(film.clock())));
        ArrayNode marks = answer.putArray("marks");
        for (int i = 0; i < film.marks(); i++) {
            int number = i;
            say(marks.addObject(), json -> mark(json, film, number));
        }
        if (film.tips() > 0) {
            say(answer.putObject("curve"), json -> curve(json, film.followed()));
        }
    }

    private static String clock(FilmClock clock) {
        double rate = clock.rate();
        String frames = Written.number(1 / clock.frameS(), 3) + " frames a second";
        double frame = rate * clock.frameS() / Math.sqrt(12);
        String known =
                "A frame tells clock time to %s s at best.".formatted(Written.number(frame, 2));
        if (Math.abs(rate - 1) < 1e-9) {
            return "%s; the film runs as fast as the clock. %s".formatted(frames, known);
        }
        return rate > 1
                ? "%s; one second of film is %s s of the clock. %s"
                        .formatted(frames, Written.number(rate, 3), known)
                : "%s; one second of the clock is %s s of film. %s"
                        .formatted(frames, Written.number(1 / rate, 3), known);
    }

    private static void mark(ObjectNode json, FilmSheet film, int number) {
        FilmSheet.Marked mark = film.mark(number);
        String when = film.isOfDay()
                ? ofDay(mark.time())
                : Written.value(mark.time().seconds(), mark.time().standardUncertainty(), "s");
        json.put("text", when);
        json.put(
                "at",
                "frame %s, %s s of film".formatted(mark.frame(), Written.number(mark.filmS(), 4)));
        ArrayNode offers = json.putArray("keep");
        Optional<Between> shown = film.thermometer(number);
        shown.ifPresent(between -> {
            PictureSheet.Measured measured = film.temperature(number);
            json.put(
                    "more",
                    "The thermometer went from %s to %s °C around it, read between them as %s."
                            .formatted(
                                    Written.number(between.before(), 4),
                                    Written.number(between.after(), 4),
                                    text(measured)));
            keep(offers, "temperature:" + number, measured);
        });
        if (!mark.what().equals(FilmSheet.START)) {
            try {
                keep(offers, "time:" + number, film.elapsed(number));
            } catch (InputException e) {
                json.put("hint", Words.sentence(e));
            }
        }
    }

    private static String ofDay(FilmClock.Time time) {
        long second = Math.floorMod(Math.round(time.seconds()), DAY_S);
        return String.format(
                        Locale.ROOT, "%02d:%02d:%02d", second / 3600, second / 60 % 60, second % 60)
                + " ± " + Written.uncertainty(time.standardUncertainty()) + " s";
    }

    private static void curve(ObjectNode json, FilmSheet.Followed followed) {
        List<FilmSheet.Followed.Row> rows = followed.rows();
        String without = followed.without() == 0
                ? ""
                : " %s of the places lie before the first reading of the thermometer or after the last, and are left out."
                        .formatted(followed.without());
        if (rows.isEmpty()) {
            json.put(
                    "trouble",
                    "No place has a temperature yet: type what the thermometer showed"
                            + " on a frame before the first place and on one after the last.");
            return;
        }
        FilmSheet.Followed.Row last = rows.get(rows.size() - 1);
        json.put(
                "text",
                "%s rows, from %s to %s °C; on the last frame it had sagged %s.%s"
                        .formatted(
                                rows.size(),
                                Written.number(rows.get(0).celsius(), 4),
                                Written.number(last.celsius(), 4),
                                Written.value(
                                        last.deflection(),
                                        followed.how().own(),
                                        followed.unit().symbol()),
                                without));
        json.put("ready", rows.size() > 1);
        ArrayNode points = json.putArray("rows");
        rows.forEach(row -> points.addArray().add(row.celsius()).add(row.deflection()));
    }
}
