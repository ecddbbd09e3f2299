package org.twinbar.study.packed;

import static org.twinbar.exchange.datapackage.Field.Type.DATETIME;
import static org.twinbar.exchange.datapackage.Field.Type.INTEGER;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.exchange.datapackage.DataTable.Reference;
import org.twinbar.exchange.datapackage.Field;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Exact;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;

/** How the specimens came to be, as tables of a package; empty ones where nothing was planned. */
final class PlanAsTables {

    private static final Field SPECIMEN =
            Field.text("specimen", "Code that the plan gave it.").required();
    private static final Reference TO_PLANNED = Reference.to("planned", "specimen");

    private final Making making;

    private PlanAsTables(Making making) {
        this.making = making;
    }

    static List<DataTable> of(Making making) {
        PlanAsTables tables = new PlanAsTables(making);
        return List.of(tables.planned(), tables.steps(), tables.measured(), tables.departures());
    }

    private DataTable planned() {
        List<List<String>> rows = new ArrayList<>();
        for (Registered each : making.made()) {
            boolean open = !making.keyClosed();
            rows.add(List.of(
                    each.code(),
                    each.series().method(),
                    each.series().name(),
                    each.group().map(it -> it.name()).orElse(""),
                    each.placed().isPilot()
                            ? "pilot"
                            : each.group().map(it -> it.role().word()).orElse(""),
                    each.series().orientation().word(),
                    Integer.toString(each.placed().run()),
                    Integer.toString(each.placed().position()),
                    open ? text(each.placed().mix()) : "",
                    open ? text(each.placed().load()) : "",
                    Integer.toString(each.placed().test()),
                    each.fate().kind().word(),
                    each.fate().why()));
        }
        return new DataTable(
                "planned",
                "Every specimen of the plan, in the order of testing, and what became of it.",
                List.of(
                        SPECIMEN,
                        Field.text("method", "The test that it is for.").required(),
                        Field.text("series", "What it is alike with but for its group."),
                        Field.text("group", "Its group; empty while the key is closed."),
                        Field.text("role", "What the group is compared as; a pilot never is."),
                        Field.text("orientation", "How it stands on the bed."),
                        Field.of("print_run", INTEGER, "Its print run; 0 for pilots.")
                                .atLeast(0),
                        Field.of("position", INTEGER, "Its place in the run.").atLeast(1),
                        Field.of("mix", INTEGER, "The mix that it is coated from.")
                                .atLeast(1),
                        Field.of("oven_load", INTEGER, "The oven load that it is heated in.")
                                .atLeast(1),
                        Field.of("test_order", INTEGER, "When it is tested in its series."),
                        Field.text("fate", "What became of it."),
                        Field.text("fate_why", "Why, where somebody said.")),
                List.of("specimen"),
                List.of(),
                rows);
    }

    private static String text(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private DataTable steps() {
        List<List<String>> rows = new ArrayList<>();
        for (Registered each : making.made()) {
            int number = 0;
            for (Registered.Done done : each.done()) {
                number++;
                rows.add(List.of(
                        each.code(),
                        Integer.toString(number),
                        done.step().word(),
                        done.when().toOffsetDateTime().toString(),
                        done.who(),
                        done.what()));
            }
        }
        return new DataTable(
                "steps",
                "What was done to each specimen, and when.",
                List.of(
                        SPECIMEN,
                        Field.of("number", INTEGER, "Counts the steps of a specimen.")
                                .required(),
                        Field.text("step", "What was done.").required(),
                        Field.of("at", DATETIME, "When it was done, or ended, with the zone."),
                        Field.text("who", "Who did it."),
                        Field.text("what", "What really happened.")),
                List.of("specimen", "number"),
                List.of(TO_PLANNED),
                rows);
    }

    private DataTable measured() {
        List<List<String>> rows = new ArrayList<>();
        for (Registered each : making.made()) {
            for (Registered.Measured measured : each.measured()) {
                int number = 0;
                for (double value : measured.values()) {
                    number++;
                    rows.add(List.of(
                            each.code(),
                            measured.quantity(),
                            measured.moment().word(),
                            Integer.toString(number),
                            Exact.of(value),
                            measured.unit()));
                }
            }
        }
        return new DataTable(
                "measured",
                "Dimensions and masses of planned specimens, before and after treatment.",
                List.of(
                        SPECIMEN,
                        Field.text("quantity", "What was measured.").required(),
                        Field.text("moment", "Before or after treatment.")
                                .required()
                                .oneOf(List.of("before", "after")),
                        Field.of("number", INTEGER, "Counts the places.").required(),
                        Field.number("value", "What was read there.").required(),
                        Field.text("unit", "Its unit.")),
                List.of("specimen", "quantity", "moment", "number"),
                List.of(TO_PLANNED),
                rows);
    }

    private DataTable departures() {
        List<List<String>> rows = new ArrayList<>();
        for (Change change : making.departures()) {
            rows.add(List.of(
                    Integer.toString(rows.size() + 1),
                    change.what(),
                    change.when().toOffsetDateTime().toString(),
                    change.who(),
                    change.why()));
        }
        return new DataTable(
                "departures",
                "What departed from the plan after it was sealed, the oldest first.",
                List.of(
                        Field.of("number", INTEGER, "Counts the departures.").required(),
                        Field.text("what", "What departed.").required(),
                        Field.of("at", DATETIME, "When, with the zone."),
                        Field.text("who", "Who entered it."),
                        Field.text("why", "Their reason.")),
                List.of("number"),
                List.of(),
                rows);
    }
}
