package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.twinbar.decision.LeftOut;
import org.twinbar.finding.Finding;
import org.twinbar.planning.Placed;
import org.twinbar.store.Entry;
import org.twinbar.study.file.PlanKeys;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.MixMade;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Done;
import org.twinbar.study.judged.Registered.Fate;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Moment;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.treatment.Batch;
import org.twinbar.treatment.Coated;
import org.twinbar.treatment.MixFindings;
import org.twinbar.treatment.Recipe;
import org.twinbar.treatment.Waiting;

/** What the entries say of how specimens came to be. */
final class MakingState {

    private Optional<Plan> plan = Optional.empty();
    private Optional<UUID> planEntry = Optional.empty();
    private Optional<ZonedDateTime> plannedAt = Optional.empty();
    private Optional<Making.Seal> seal = Optional.empty();
    private Optional<Waiting> sealedWaiting = Optional.empty();
    private Optional<Change> keyOpened = Optional.empty();
    private final List<Claim> claims = new ArrayList<>();
    private final Map<String, List<Done>> done = new HashMap<>();
    private final Map<String, Map<List<Object>, Measured>> measured = new HashMap<>();
    private final Map<List<Object>, UUID> lastMeasured = new HashMap<>();
    private final PhotosTaken photos;
    private final Map<String, Fate> fates = new HashMap<>();
    private final List<Making.Pilots> pilots = new ArrayList<>();
    private final Map<Integer, MixMade> mixes = new TreeMap<>();
    private final Map<Integer, UUID> lastMix = new HashMap<>();
    private final Set<List<Object>> cells = new HashSet<>();
    private final Map<String, ZonedDateTime> lastRead = new HashMap<>();
    private final Map<String, ZonedDateTime> tests = new HashMap<>();
    private final TreatingState treating = new TreatingState();
    private final Departing departing = new Departing();

    /** @param photos of all specimens, which another reads from the entries */
    MakingState(PhotosTaken photos) {
        this.photos = photos;
    }

    /** Every entry is shown to it: what came before the seal is told by the order. */
    void take(Entry entry, JsonNode value) {
        ZonedDateTime when = entry.at().atZone(entry.zone());
        treating.take(entry, value);
        if (entry.aspect().equals(Aspect.PLAN.word())) {
            Plan now = PlanKeys.read("workspace", value);
            departing.planned(change("the plan was changed", entry), seal, plan, now);
            plan = Optional.of(now);
            plannedAt = Optional.of(when);
            planEntry = Optional.of(entry.id());
        } else if (entry.aspect().equals(Aspect.SEAL.word())) {
            sealedWaiting = Optional.of(treating.waiting());
            seal = Optional.of(new Making.Seal(
                    plan.orElseThrow(),
                    value.path("text").asText(),
                    value.path("sha256").asText(),
                    when,
                    entry.who()));
        } else if (entry.aspect().equals(Aspect.KEY.word())) {
            keyOpened = Optional.of(change("the key was opened", entry));
            departing.opened(value.path("waiting").asInt(), change("", entry));
        } else if (entry.aspect().equals(Aspect.CLAIM.word())) {
            Claim claim = Claim.read("workspace", value);
            claims.add(claim);
            departing.claimed(claim, change("", entry), seal);
        } else if (entry.aspect().equals(Aspect.RECIPE.word())) {
            departing.treated(value.path("group").asText(), change("", entry), seal);
        } else if (entry.aspect().equals(Aspect.WAITING.word())) {
            departing.waits(treating.waiting(), change("", entry), seal);
        } else if (entry.aspect().equals(Aspect.DONE.word())) {
            done(entry, value);
        } else if (entry.aspect().equals(Aspect.MEASURED.word())) {
            measured(entry, value);
        } else if (entry.aspect().equals(Aspect.FATE.word())) {
            fates.put(
                    value.path("specimen").asText(),
                    new Fate(
                            Fate.Kind.valueOf(value.path("fate").asText()),
                            entry.reason().orElse("")));
        } else if (entry.aspect().equals(Aspect.PILOT.word())) {
            List<Double> values = new ArrayList<>();
            value.path("values").forEach(each -> values.add(each.asDouble()));
            pilots.add(new Making.Pilots(
                    value.path("series").asText(),
                    value.path("what").asText(),
                    values,
                    when,
                    entry.who()));
        } else if (entry.aspect().equals(Aspect.MIX.word())) {
            mix(entry, value);
        } else if (entry.aspect().equals(Aspect.READING.word())) {
            if (cells.add(List.of(
                    value.path("test").asText(),
                    value.path("line").asInt(),
                    value.path("column").asText()))) {
                lastRead.put(value.path("specimen").asText(), when);
            }
        } else if (entry.aspect().equals(Aspect.TEST.word())) {
            tests.put(value.path("method").asText(), when);
        } else if (entry.aspect().equals(Aspect.LEFT_OUT.word())) {
            departing.leftOut(value, entry, seal);
        }
    }

    private static Change change(String what, Entry entry) {
        return new Change(
                what,
                entry.at().atZone(entry.zone()),
                entry.who(),
                entry.reason().orElse("no reason was given"));
    }

    private void done(Entry entry, JsonNode value) {
        Step step = Step.valueOf(value.path("step").asText());
        ZonedDateTime when = ZonedDateTime.parse(value.path("when").asText());
        for (JsonNode code : value.path("specimens")) {
            done.computeIfAbsent(code.asText(), it -> new ArrayList<>())
                    .add(new Done(step, when, value.path("what").asText(), entry.who()));
            if (step == Step.TESTED) {
                fates.putIfAbsent(code.asText(), new Fate(Fate.Kind.TESTED, ""));
                departing.testedInOrder(code.asText(), when, change("", entry), seal);
            }
        }
    }

    private void measured(Entry entry, JsonNode value) {
        List<Double> values = new ArrayList<>();
        value.path("values").forEach(each -> values.add(each.asDouble()));
        Measured taken = new Measured(
                value.path("quantity").asText(),
                Moment.valueOf(value.path("moment").asText()),
                values);
        String code = value.path("specimen").asText();
        measured.computeIfAbsent(code, it -> new LinkedHashMap<>())
                .put(List.of(taken.quantity(), taken.moment()), taken);
        lastMeasured.put(List.of(code, taken.quantity(), taken.moment()), entry.id());
    }

    /** Returns the last entry on a quantity of a specimen. */
    Optional<UUID> lastMeasured(String code, String quantity, Moment moment) {
        return Optional.ofNullable(lastMeasured.get(List.of(code, quantity, moment)));
    }

    private void mix(Entry entry, JsonNode value) {
        List<Double> parts = new ArrayList<>();
        List<Double> densities = new ArrayList<>();
        List<Double> weighed = new ArrayList<>();
        value.path("parts").forEach(each -> parts.add(each.asDouble()));
        value.path("densities").forEach(each -> densities.add(each.asDouble()));
        value.path("weighed_g").forEach(each -> weighed.add(each.asDouble()));
        Batch meant = Recipe.of(Recipe.By.valueOf(value.path("by").asText()), parts, densities)
                .ofTotal(value.path("total_g").asDouble());
        int number = value.path("number").asInt();
        mixes.put(
                number,
                new MixMade(
                        number,
                        meant,
                        weighed,
                        number(value, "celsius"),
                        number(value, "life_min"),
                        value.path("what").asText(),
                        ZonedDateTime.parse(value.path("when").asText()),
                        entry.who()));
        lastMix.put(number, entry.id());
    }

    private static OptionalDouble number(JsonNode value, String key) {
        return value.has(key)
                ? OptionalDouble.of(value.path(key).asDouble())
                : OptionalDouble.empty();
    }

    Optional<UUID> lastMix(int number) {
        return Optional.ofNullable(lastMix.get(number));
    }

    static ObjectNode json(MixMade mix) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("number", mix.number());
        json.put("by", mix.meant().recipe().by().name());
        json.putArray("parts");
        json.putArray("densities");
        json.putArray("weighed_g");
        mix.meant().recipe().components().forEach(each -> {
            json.withArray("parts").add(each.parts());
            each.density().ifPresent(json.withArray("densities")::add);
        });
        json.put("total_g", mix.meant().total());
        mix.weighed().forEach(json.withArray("weighed_g")::add);
        mix.celsius().ifPresent(celsius -> json.put("celsius", celsius));
        mix.lifeMinutes().ifPresent(minutes -> json.put("life_min", minutes));
        json.put("what", mix.what());
        json.put("when", mix.when().toString());
        return json;
    }

    Optional<Plan> plan() {
        return plan;
    }

    Optional<UUID> planEntry() {
        return planEntry;
    }

    TreatingState treating() {
        return treating;
    }

    Waiting waiting() {
        return treating.waiting();
    }

    /**
     * Returns why a pilot doesn't count, whatever table its readings came in by: it is never
     * compared. Empty for all others.
     */
    Optional<LeftOut> pilot(String code) {
        return plan.flatMap(it -> it.pilot(code))
                .flatMap(it -> plannedAt)
                .map(at -> new LeftOut(
                        "the plan",
                        at,
                        "a pilot: it tells the scatter and is never compared",
                        LeftOut.Sight.BEFORE_VALUE_WAS_SEEN));
    }

    /** Returns the text that a seal of the plan as it stands would be taken of. */
    String canonicalText(Plan of) {
        return of.canonicalText(claims, treating.recipes(), treating.waiting());
    }

    boolean sealed() {
        return seal.isPresent();
    }

    List<Claim> claims() {
        return claims;
    }

    boolean keyClosed() {
        return plan.filter(Plan::blind).isPresent() && keyOpened.isEmpty();
    }

    /** Whom the groups of a blind plan are shown to while its key is closed. */
    enum For {
        WHOEVER_READS,
        WHOEVER_TREATS
    }

    /**
     * Returns how the specimens came to be.
     *
     * @param withReadings codes that readings are known of beside what was typed
     */
    Making making(For whom, Set<String> withReadings) {
        boolean shown = whom == For.WHOEVER_TREATS || !keyClosed();
        List<Registered> specimens = new ArrayList<>();
        List<Registered> pilotSpecimens = new ArrayList<>();
        plan.ifPresent(it -> {
            it.allocation()
                    .specimens()
                    .forEach(one -> specimens.add(registered(it, one, shown, withReadings)));
            it.allocation()
                    .pilots()
                    .forEach(one -> pilotSpecimens.add(registered(it, one, true, Set.of())));
        });
        Optional<Coated> coated = shown ? treating.coated(specimens) : Optional.empty();
        return new Making(
                plan,
                seal,
                keyOpened,
                specimens,
                pilotSpecimens,
                pilots,
                treating.recipes(),
                sealedWaiting.orElseGet(treating::waiting),
                shown ? treating.steps() : List.of(),
                List.copyOf(mixes.values()),
                coated,
                departures(withReadings),
                findings(coated, shown));
    }

    private List<Finding> findings(Optional<Coated> coated, boolean shown) {
        List<Finding> findings = new ArrayList<>(
                plan.map(it -> it.allocation().design().limits()).orElse(List.of()));
        mixes.values().forEach(mix -> findings.addAll(MixFindings.weighed(mix.cup())));
        coated.ifPresent(it -> findings.addAll(it.findings()));
        if (shown) {
            findings.addAll(treating.differences());
        }
        return findings;
    }

    /** A correction does not make a reading a later one. */
    private List<Change> departures(Set<String> withReadings) {
        List<Change> departures = new ArrayList<>();
        List<String> early = new ArrayList<>();
        if (seal.isPresent()) {
            for (Placed one : seal.get().plan().allocation().specimens()) {
                String method = seal.get()
                        .plan()
                        .allocation()
                        .design()
                        .series(one.series())
                        .method();
                Optional<ZonedDateTime> read = Optional.ofNullable(lastRead.get(one.code()))
                        .or(() -> Optional.ofNullable(tests.get(method)));
                if (withReadings.contains(one.code())
                        && read.filter(seal.get().when()::isAfter).isPresent()) {
                    early.add(one.code());
                }
            }
            if (!early.isEmpty()) {
                departures.add(new Change(
                        "%s had been tested before the plan was sealed"
                                .formatted(String.join(", ", early)),
                        seal.get().when(),
                        seal.get().who(),
                        "the plan was sealed late"));
            }
        }
        departures.addAll(departing.found());
        return departures;
    }

    /** What only the treated have done to them tells them apart, and so does what they gained. */
    private static boolean tellsGroup(Step step) {
        return step == Step.TREATED || step == Step.CURED;
    }

    private Registered registered(Plan from, Placed one, boolean shown, Set<String> withReadings) {
        List<Done> steps = done.getOrDefault(one.code(), List.of()).stream()
                .filter(step -> shown || !tellsGroup(step.step()))
                .toList();
        List<Measured> sizes = measured.getOrDefault(one.code(), Map.of()).values().stream()
                .filter(each -> shown || each.moment() == Moment.BEFORE)
                .toList();
        Fate otherwise = withReadings.contains(one.code())
                ? new Fate(Fate.Kind.TESTED, "")
                : new Fate(steps.isEmpty() ? Fate.Kind.TO_BE_MADE : Fate.Kind.MADE, "");
        var design = from.allocation().design();
        return new Registered(
                one,
                design.series(one.series()),
                shown ? Optional.of(design.group(one.group())) : Optional.empty(),
                steps,
                sizes,
                photos.of(one.code()),
                fates.getOrDefault(one.code(), otherwise));
    }
}
