package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How a treatment is done, step by step.
 *
 * @param sort what it is
 * @param steps in their order
 * @param cautions dangers, to be said where the steps are done
 */
public record Procedure(Sort sort, List<Step> steps, List<String> cautions) {

    /** Sorts of treatment that have steps of their own. */
    public enum Sort {
        COATING("coating"),
        ANNEALING("annealing"),
        VAPOUR("vapour"),
        SANDING("sanding"),
        DYEING("dyeing"),
        OTHER("other");

        private final String word;

        Sort(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** @throws TreatmentException where there is no such sort */
        public static Sort parse(String text) {
            for (Sort each : values()) {
                if (each.word.equals(text.strip().toLowerCase(Locale.ROOT))) {
                    return each;
                }
            }
            throw new TreatmentException(
                    "There is no treatment '%s': coating, annealing, vapour, sanding, dyeing or other."
                            .formatted(text));
        }
    }

    /**
     * One step.
     *
     * @param what is done, as an order
     * @param minutes how long it takes, or the least; empty where it takes as long as it takes
     * @param mostMinutes how long it may take at most, where that matters
     * @param celsius at what temperature; empty where it plays no part
     */
    public record Step(
            String what,
            OptionalDouble minutes,
            OptionalDouble mostMinutes,
            OptionalDouble celsius) {

        public Step {
            if (what.isBlank()) {
                throw new TreatmentException("A step needs its words.");
            }
            minutes.ifPresent(it -> Amounts.requirePositive(it, "time of a step", "min"));
            mostMinutes.ifPresent(
                    it -> Amounts.requirePositive(it, "longest time of a step", "min"));
            celsius.ifPresent(Procedure::requireOven);
        }

        public static Step of(String what) {
            return new Step(
                    what, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        }

        public Step taking(double newMinutes) {
            return new Step(what, OptionalDouble.of(newMinutes), mostMinutes, celsius);
        }

        public Step at(double newCelsius) {
            return new Step(what, minutes, mostMinutes, OptionalDouble.of(newCelsius));
        }

        public Step atMost(double newMinutes) {
            return new Step(what, minutes, OptionalDouble.of(newMinutes), celsius);
        }
    }

    /** Past this common prints are a melt, and ovens of a kitchen end; common practice. */
    private static final double HOTTEST = 300;

    private static final double COLDEST = -30;

    /** Below this a print may be taken out without warping in the draught; common practice. */
    private static final double MAY_BE_TAKEN_OUT = 40;

    private static final double MINUTES_PER_HOUR = 60;

    private static final String BEFORE =
            "Weigh each specimen, and measure it at its places, before anything is done to it.";
    private static final String AFTER =
            "Weigh and measure each specimen again, at the same places.";

    /** @throws TreatmentException where there is no step */
    public Procedure {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
        if (steps.isEmpty()) {
            throw new TreatmentException("A treatment needs at least one step.");
        }
    }

    /** Returns how long the steps take that have a time (min). */
    public double minutes() {
        return steps.stream().flatMapToDouble(step -> step.minutes().stream()).sum();
    }

    /**
     * Returns a coating in one or more coats.
     *
     * @param coats how many
     * @param recoat after how long the next coat follows; taken from the data sheet
     * @param cureHours until the film is cured
     * @param cureCelsius where it cures
     */
    public static Procedure coating(
            int coats, RecoatWindow recoat, double cureHours, double cureCelsius) {
        if (coats < 1 || coats > 20) {
            throw new TreatmentException("A film has from 1 to 20 coats, not %s.".formatted(coats));
        }
        List<Step> steps = new ArrayList<>(List.of(
                Step.of(BEFORE), Step.of("Mix by weight, and note what the scale showed.")));
        for (int coat = 1; coat <= coats; coat++) {
            steps.add(Step.of(
                    "Spread coat %s of %s; let it drain, and turn it.".formatted(coat, coats)));
            if (coat < coats) {
                steps.add(Step.of("Wait until it is tacky and leaves no mark on the glove: %s."
                                .formatted(recoat.words()))
                        .taking(MINUTES_PER_HOUR * recoat.fromHours())
                        .atMost(MINUTES_PER_HOUR * recoat.toHours()));
            }
        }
        steps.add(Step.of("Let it cure, free of dust.")
                .taking(MINUTES_PER_HOUR * cureHours)
                .at(cureCelsius));
        steps.add(Step.of(AFTER));
        return new Procedure(Sort.COATING, steps, Cautions.MIXING);
    }

    /**
     * When the next coat bonds to the one before; past the end it is washed and abraded first.
     *
     * @param fromHours after the coat before (h)
     * @param toHours likewise
     */
    public record RecoatWindow(double fromHours, double toHours) {

        /** Wet on tacky at 20 °C; common practice, METHODS.md G. The data sheet goes before it. */
        public static final RecoatWindow USUAL = new RecoatWindow(2, 6);

        /** @throws TreatmentException unless 0 < from < to */
        public RecoatWindow {
            Amounts.requirePositive(fromHours, "beginning of the recoat window", "h");
            if (!(toHours > fromHours && toHours < Double.POSITIVE_INFINITY)) {
                throw new TreatmentException(
                        "The recoat window must end after it begins at %s h, not at %s h."
                                .formatted(Amounts.written(fromHours), Amounts.written(toHours)));
            }
        }

        String words() {
            return "from %s to %s h after the coat; later, wash it with water and abrade it first"
                    .formatted(Amounts.written(fromHours), Amounts.written(toHours));
        }
    }

    /**
     * How an oven is driven.
     *
     * @param startCelsius where it begins
     * @param holdCelsius that it is held at
     * @param holdMinutes how long
     * @param rampPerMinute how fast it heats (°C/min)
     * @param coolPerMinute how fast it cools (°C/min)
     */
    public record Annealing(
            double startCelsius,
            double holdCelsius,
            double holdMinutes,
            double rampPerMinute,
            double coolPerMinute) {

        /** @throws TreatmentException unless it heats up, holds and cools within an oven's reach */
        public Annealing {
            requireOven(startCelsius);
            requireOven(holdCelsius);
            if (!(holdCelsius > startCelsius)) {
                throw new TreatmentException(
                        "Annealing holds above where it begins at %s °C, not at %s °C."
                                .formatted(
                                        Amounts.written(startCelsius),
                                        Amounts.written(holdCelsius)));
            }
            Amounts.requirePositive(holdMinutes, "time of holding", "min");
            Amounts.requirePositive(rampPerMinute, "rate of heating", "°C/min");
            Amounts.requirePositive(coolPerMinute, "rate of cooling", "°C/min");
        }

        /** Returns how long it heats up (min): (hold − start)/ramp. */
        public double heatingMinutes() {
            return (holdCelsius - startCelsius) / rampPerMinute;
        }

        /** Returns how long it cools (min), to where a print may be taken out. */
        public double coolingMinutes() {
            return Math.max(0, holdCelsius - Math.max(startCelsius, MAY_BE_TAKEN_OUT))
                    / coolPerMinute;
        }
    }

    public static Procedure annealing(Annealing oven) {
        List<Step> steps = new ArrayList<>(List.of(
                Step.of(BEFORE),
                Step.of(
                        "Lay the specimens on a flat plate, a thermometer beside them; note the load."),
                Step.of("Heat up at %s °C/min.".formatted(Amounts.written(oven.rampPerMinute())))
                        .taking(oven.heatingMinutes()),
                Step.of("Hold; the time counts from when the specimens are warm, not the air.")
                        .taking(oven.holdMinutes())
                        .at(oven.holdCelsius())));
        Step cool = Step.of("Cool at %s °C/min, the door shut."
                .formatted(Amounts.written(oven.coolPerMinute())));
        steps.add(oven.coolingMinutes() > 0 ? cool.taking(oven.coolingMinutes()) : cool);
        steps.add(Step.of(AFTER + " The change of each dimension is a result of its own."));
        return new Procedure(
                Sort.ANNEALING,
                steps,
                List.of(
                        "Plastic that overheats gives off harmful fumes: a good thermometer, fresh"
                                + " air, and never unwatched.",
                        "An oven that anneals prints cooks no food again.",
                        "Hot plates and parts burn: gloves for heat."));
    }

    /**
     * Returns smoothing by vapour.
     *
     * @param solvent its name
     * @param minutes in the vapour
     * @param airingHours until the solvent has gone
     */
    public static Procedure vapour(String solvent, double minutes, double airingHours) {
        if (solvent.isBlank()) {
            throw new TreatmentException("Smoothing by vapour needs the name of the solvent.");
        }
        Amounts.requirePositive(airingHours, "time of airing", "h");
        return new Procedure(
                Sort.VAPOUR,
                List.of(
                        Step.of(BEFORE),
                        Step.of("Hang the specimens in the vapour of %s, none touching another."
                                        .formatted(solvent))
                                .taking(minutes),
                        Step.of("Air them until their mass no longer falls from day to day.")
                                .taking(MINUTES_PER_HOUR * airingHours),
                        Step.of(AFTER)),
                List.of(
                        "Vapour of solvents burns and explodes: outdoors, no flame, no spark, no hot"
                                + " plate, no heater; cold vapour alone.",
                        "Gloves that withstand this solvent, glasses, and no breathing over the"
                                + " vessel.",
                        "Some plastics crack in the wrong solvent; try it on a scrap."));
    }

    /**
     * Returns sanding.
     *
     * @param grits from coarse to fine, such as 220 and 400
     */
    public static Procedure sanding(List<Integer> grits) {
        if (grits.isEmpty() || grits.stream().anyMatch(it -> it < 12 || it > 5000)) {
            throw new TreatmentException("Sanding needs its grits, from 12 to 5000 each.");
        }
        List<Step> steps = new ArrayList<>(List.of(Step.of(BEFORE)));
        for (int grit : grits) {
            steps.add(Step.of(
                    "Sand every face with P%s along the specimen, the same strokes for each."
                            .formatted(grit)));
        }
        steps.add(Step.of("Wipe off the dust with a dry cloth."));
        steps.add(Step.of(AFTER));
        return new Procedure(
                Sort.SANDING,
                steps,
                List.of("Dust of plastics and resins harms the lungs: sand wet, or wear a mask and"
                        + " take the dust off at its source."));
    }

    /** Returns dyeing in a bath. */
    public static Procedure dyeing(double celsius, double minutes, double dryingHours) {
        return new Procedure(
                Sort.DYEING,
                List.of(
                        Step.of(BEFORE),
                        Step.of("Keep the specimens under in the bath, and stir.")
                                .taking(minutes)
                                .at(celsius),
                        Step.of("Rinse in cold water, and dry until the mass stands still.")
                                .taking(MINUTES_PER_HOUR * dryingHours),
                        Step.of(AFTER)),
                List.of(
                        "Hot baths scald; dyes and their helpers irritate: gloves, glasses, fresh"
                                + " air.",
                        "A pot that dyed cooks no food again."));
    }

    private static void requireOven(double celsius) {
        if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
            throw new TreatmentException("A treatment is done from %s to %s °C, not at %s °C."
                    .formatted(
                            Amounts.written(COLDEST),
                            Amounts.written(HOTTEST),
                            Amounts.written(celsius)));
        }
    }
}
