package org.twinbar.study.picture;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.twinbar.exchange.InputException;
import org.twinbar.picture.Between;
import org.twinbar.picture.Drop;
import org.twinbar.picture.FilmClock;
import org.twinbar.picture.Sighted;
import org.twinbar.picture.Spot;
import org.twinbar.quantity.Unit;
import org.twinbar.study.table.OnPicture;

/** What a person set on a film: when its frames were taken, what was read and marked on them. */
public final class FilmSheet {

    /** A frame whose time is counted from. */
    public static final String START = "start";

    private static final Pattern TIME_OF_DAY =
            Pattern.compile("([01]?\\d|2[0-3]):([0-5]\\d)(?::([0-5]\\d(?:[.,]\\d+)?))?");
    private static final Pattern DECIMALS = Pattern.compile("\\d+(?:[.,](\\d+))?");
    private static final int DAY_S = 86_400;
    private static final Unit SECOND = Unit.of("s");
    private static final Unit CELSIUS = Unit.of("°C");

    /** Slower than this is no film, faster no camera that anybody has at home. */
    private static final double SLOWEST = 0.01;

    private static final double FASTEST = 100_000;

    private final PictureSheet sheet;
    private final JsonNode json;

    FilmSheet(PictureSheet sheet, JsonNode json) {
        this.sheet = sheet;
        this.json = json;
    }

    /**
     * Returns what tells clock time from film time.
     *
     * @throws InputException where the frames or the clock can't be understood
     */
    public FilmClock clock() {
        double frame = frameS();
        JsonNode seen = json.path("clock");
        if (seen.isEmpty()) {
            return FilmClock.asFilmed(frame);
        }
        if (seen.size() != 2) {
            throw new InputException("the clock was seen on one frame alone, which says nothing of"
                    + " how fast the film runs: note it on another");
        }
        Shown first = Shown.of(seen.path(0).path("shows").asText());
        Shown second = Shown.of(seen.path(1).path("shows").asText());
        if (first.ofDay() != second.ofDay()) {
            throw new InputException(
                    "the clock shows a time of day on one frame and a count on the other,"
                            + " must be the same on both");
        }
        double from = filmS(seen.path(0));
        double to = filmS(seen.path(1));
        boolean pastMidnight = first.ofDay() && to > from && second.seconds() < first.seconds();
        boolean pastMidnightBack = first.ofDay() && to < from && first.seconds() < second.seconds();
        return PictureSheet.sensible(
                "the clock",
                () -> new FilmClock(
                        frame,
                        new FilmClock.Seen(
                                from,
                                first.seconds() + (pastMidnightBack ? DAY_S : 0),
                                first.step()),
                        new FilmClock.Seen(
                                to, second.seconds() + (pastMidnight ? DAY_S : 0), second.step())));
    }

    /** Whether clock times are times of day, which need a start to count from. */
    public boolean isOfDay() {
        JsonNode seen = json.path("clock");
        return seen.size() == 2 && Shown.of(seen.path(0).path("shows").asText()).ofDay();
    }

    /**
     * What a clock shows.
     *
     * @param seconds since midnight, or as it counts
     * @param step of its last figure (s)
     */
    private record Shown(double seconds, double step, boolean ofDay) {

        static Shown of(String text) {
            Matcher day = TIME_OF_DAY.matcher(text.strip());
            if (day.matches()) {
                String seconds = Optional.ofNullable(day.group(3)).orElse("").replace(',', '.');
                return new Shown(
                        3600 * Integer.parseInt(day.group(1))
                                + 60 * Integer.parseInt(day.group(2))
                                + (seconds.isEmpty() ? 0 : Double.parseDouble(seconds)),
                        seconds.isEmpty() ? 60 : lastFigure(seconds),
                        true);
            }
            JsonNode typed = JsonNodeFactory.instance.textNode(text);
            double seconds = PictureSheet.number(
                    "what the clock shows, as 14:05:30 or 125 s", typed, SECOND);
            double one = seconds == 0 ? 0 : seconds / magnitude(text);
            double step = one == 0 ? lastFigure(text) : Math.abs(one) * lastFigure(text);
            return new Shown(seconds, step, false);
        }

        private static double magnitude(String text) {
            Matcher number = DECIMALS.matcher(text);
            return number.find() ? Double.parseDouble(number.group().replace(',', '.')) : 1;
        }
    }

    /** Returns what one step of the last figure is, such as 0.1 for {@code 61.5}. */
    private static double lastFigure(String text) {
        Matcher number = DECIMALS.matcher(text);
        int decimals =
                number.find() && number.group(1) != null ? number.group(1).length() : 0;
        return BigDecimal.ONE.movePointLeft(decimals).doubleValue();
    }

    private double frameS() {
        double rate = PictureSheet.number("how many frames a second", json.path("rate"), Unit.ONE);
        if (!(rate >= SLOWEST && rate <= FASTEST)) {
            throw new InputException(
                    "the film has %s frames a second, must be from 0.01 to 100000".formatted(rate));
        }
        return 1 / rate;
    }

    private double filmS(JsonNode at) {
        return frame(at) * frameS();
    }

    private static int frame(JsonNode at) {
        JsonNode frame = at.path("frame");
        if (!frame.isIntegralNumber() || frame.asLong() < 0 || frame.asLong() > Integer.MAX_VALUE) {
            throw new InputException(
                    "a frame is counted from 0 on, '%s' is none".formatted(frame.asText()));
        }
        return frame.asInt();
    }

    /** How many frames were marked. */
    public int marks() {
        return json.path("marks").size();
    }

    /**
     * A frame that was marked.
     *
     * @param what it shows, such as {@code last straight}
     * @param filmS its time in the film (s)
     * @param time of the clock (s)
     */
    public record Marked(String what, int frame, double filmS, FilmClock.Time time) {}

    public Marked mark(int number) {
        JsonNode mark = json.path("marks").path(number);
        double film = filmS(mark);
        return new Marked(mark.path("what").asText(), frame(mark), film, clock().at(film));
    }

    private Optional<Marked> start() {
        for (int i = 0; i < marks(); i++) {
            if (mark(i).what().equals(START)) {
                return Optional.of(mark(i));
            }
        }
        return Optional.empty();
    }

    /**
     * Returns how long after the start a marked frame was taken.
     *
     * @throws InputException where the clock shows times of day and no frame is marked as start
     */
    public PictureSheet.Measured elapsed(int number) {
        FilmClock.Time time = mark(number).time();
        Optional<Marked> start = start();
        if (start.isEmpty() && isOfDay()) {
            throw new InputException("mark the frame of the start, from which times are counted");
        }
        double from = start.map(it -> it.time().seconds()).orElse(0.0);
        double u = time.standardUncertainty();
        double v = start.map(it -> it.time().standardUncertainty()).orElse(0.0);
        return seen(number, time.seconds() - from, SECOND, Math.sqrt(u * u + v * v));
    }

    /** Returns what the thermometer showed at a marked frame, from the readings around it. */
    public Optional<Between> thermometer(int number) {
        return Between.at(mark(number).time(), noted(), step());
    }

    /**
     * Returns the thermometer's reading at a marked frame, to be kept.
     *
     * @throws InputException where the frame lies before the first reading or after the last
     */
    public PictureSheet.Measured temperature(int number) {
        Between between = thermometer(number)
                .orElseThrow(() -> new InputException(
                        "type what the thermometer showed on a frame before and on one after it"));
        return seen(number, between.value(), CELSIUS, between.standardUncertainty());
    }

    private PictureSheet.Measured seen(int number, double value, Unit unit, double own) {
        ObjectNode looks = times();
        looks.set("mark", json.path("marks").path(number));
        return new PictureSheet.Measured(
                value,
                unit,
                0,
                1,
                new OnPicture(
                        Optional.empty(),
                        unit,
                        own,
                        Double.POSITIVE_INFINITY,
                        0,
                        Double.POSITIVE_INFINITY,
                        sheet.file(),
                        looks));
    }

    private ObjectNode times() {
        ObjectNode looks = JsonNodeFactory.instance.objectNode();
        for (String part : List.of("rate", "clock", "thermometer")) {
            looks.set(part, json.path(part));
        }
        start().ifPresent(it -> looks.put("start", it.frame()));
        return looks;
    }

    private List<Between.Noted> noted() {
        FilmClock clock = clock();
        List<Between.Noted> noted = new ArrayList<>();
        for (JsonNode reading : json.path("thermometer")) {
            noted.add(new Between.Noted(
                    clock.at(filmS(reading)).seconds(),
                    PictureSheet.number(
                            "what the thermometer shows", reading.path("shows"), CELSIUS)));
        }
        return noted;
    }

    private double step() {
        double step = 0;
        for (JsonNode reading : json.path("thermometer")) {
            step = Math.max(step, lastFigure(reading.path("shows").asText()));
        }
        return step;
    }

    /**
     * A curve that was followed on the film.
     *
     * @param rows in the order of their frames
     * @param without how many places lie where nothing says what the thermometer showed
     * @param how it is read
     */
    public record Followed(List<Row> rows, int without, Unit unit, OnPicture how) {

        /** One frame: time since the first (s), how far it sagged, the thermometer (°C). */
        public record Row(int frame, double seconds, double deflection, double celsius) {}

        public Followed {
            rows = List.copyOf(rows);
        }

        /** Returns it as a table, the columns named as any curve's. */
        public byte[] csv() {
            StringBuilder csv = new StringBuilder(
                    "time_s,deflection_%s,temperature_C\n".formatted(unit.code()));
            for (Row row : rows) {
                csv.append(plain(row.seconds()))
                        .append(',')
                        .append(plain(row.deflection()))
                        .append(',')
                        .append(plain(row.celsius()))
                        .append('\n');
            }
            return csv.toString().getBytes(StandardCharsets.UTF_8);
        }

        /** Far finer than anything on a film, so that rounding is no error of its own. */
        private static String plain(double value) {
            return BigDecimal.valueOf(value)
                    .setScale(6, java.math.RoundingMode.HALF_EVEN)
                    .stripTrailingZeros()
                    .toPlainString();
        }
    }

    /** How many places of a tip were set. */
    public int tips() {
        return json.path("tips").size();
    }

    /**
     * Returns the curve that a tip drew.
     *
     * @throws InputException where there is no scale, or fewer than two places
     */
    public Followed followed() {
        PictureSheet.Set scale = sheet.scale()
                .orElseThrow(() ->
                        new InputException("set the scale first: a path in pixels says nothing"));
        List<JsonNode> tips = new ArrayList<>();
        json.path("tips").forEach(tips::add);
        tips.sort(Comparator.comparingInt(FilmSheet::frame));
        if (tips.size() < 2) {
            throw new InputException("set the tip on two frames at least");
        }
        return PictureSheet.sensible("the tip", () -> followed(scale, tips));
    }

    private Followed followed(PictureSheet.Set scale, List<JsonNode> tips) {
        FilmClock clock = clock();
        List<Between.Noted> noted = noted();
        Drop drop = across();
        Spot first = PictureSheet.spot(tips.get(0).path("at"));
        double begin = clock.at(filmS(tips.get(0))).seconds();
        double largest = 0;
        List<Followed.Row> rows = new ArrayList<>();
        for (JsonNode tip : tips) {
            Sighted sighted = drop.of(first, PictureSheet.spot(tip.path("at")));
            largest = Math.max(largest, sighted.standardUncertainty());
            FilmClock.Time time = clock.at(filmS(tip));
            Between.at(time, noted, step())
                    .ifPresent(shown -> rows.add(new Followed.Row(
                            frame(tip),
                            time.seconds() - begin,
                            scale.scale().perPx() * sighted.value(),
                            shown.value())));
        }
        ObjectNode looks = times();
        looks.set("scale", sheet.scaleSet());
        looks.set("tips", json.path("tips"));
        looks.set("line", json.path("line"));
        return new Followed(
                rows,
                tips.size() - rows.size(),
                scale.unit(),
                new OnPicture(
                        Optional.of(scale.name()),
                        scale.unit(),
                        scale.scale().perPx() * largest,
                        Double.POSITIVE_INFINITY,
                        scale.scale().standardShare(),
                        scale.scale().degreesOfFreedom(),
                        sheet.file(),
                        looks));
    }

    private Drop across() {
        JsonNode line = json.path("line");
        return line.size() == 2
                ? Drop.across(PictureSheet.spot(line.path(0)), PictureSheet.spot(line.path(1)))
                : Drop.DOWN;
    }
}
