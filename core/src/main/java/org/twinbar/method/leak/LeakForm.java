package org.twinbar.method.leak;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Words;

/** What the leak test asks for and yields. */
final class LeakForm {

    static final Input DRY_UNTIL = hours("dry_until", "Last seen dry, from filling");
    static final Input WET_AT = hours("wet_at", "First seen wet, from filling");
    static final Input TIME = hours("time", "Time of the leak, or of the end");
    static final Input CLAIM_TIME = hours("claim_time", "Time that the claim names");
    static final String YES = "yes";
    static final String NO = "no";
    static final Words LEAKED = new Words("leaked", "Whether it leaked", List.of(YES, NO));

    static final Input MASS_BEFORE =
            Input.of("mass_before", "Mass of the filled vessel at the start", "g", Kind.SCALE);
    static final Input MASS_AFTER =
            Input.of("mass_after", "Mass of the filled vessel at the end", "g", Kind.SCALE);
    static final Input WEIGHED_AFTER = hours("weighed_after", "Time between the weighings");
    static final Input CONTROL_LOSS = Input.of(
                    "control_loss",
                    "What a tight vessel beside it loses by evaporation",
                    "g/h",
                    Kind.NONE)
            .within(Limits.ZERO_OR_MORE);
    static final Input CONTROL_SCATTER = Input.of(
                    "control_scatter",
                    "Standard deviation of that loss between tight vessels",
                    "g/h",
                    Kind.NONE)
            .within(Limits.ZERO_OR_MORE);

    static final Input HEAD = Input.of(
                    "head", "Height of the liquid above the lowest wall", "mm", Kind.RULER)
            .plausibly(5, 5000);
    static final Input HEAD_AT_END = Input.of(
                    "head_at_end", "The same at the end", "mm", Kind.RULER)
            .within(Limits.ZERO_OR_MORE);
    static final Input WALL =
            Input.of("wall", "Thickness of the wall", "mm", Kind.CALIPER).plausibly(0.2, 20);
    static final Words LIQUID = new Words("liquid", "Which liquid it held", List.of()).apart();

    static final Property LEAK_FREE =
            Property.of("leak_free", "Dry for the time of the claim", "", Scale.YES_NO);
    static final Property TIME_TO_LEAK =
            Property.of("time_to_leak", "Time to the leak", "h", Scale.TIME_TO_EVENT);
    static final Property LEAK_RATE =
            Property.of("leak_rate", "Mass lost through the wall per hour", "g/h", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "leak",
            2,
            "Leak test under a head of liquid",
            "Common practice, no standard: a filled vessel is looked at and weighed beside a"
                    + " tight one; liquid, head, times and the way of looking are stated.",
            asks(),
            List.of(),
            List.of(),
            List.of(LEAK_FREE, TIME_TO_LEAK, LEAK_RATE),
            List.of(
                    new Caution("Stand the vessels in a tray, away from sockets and power supplies:"
                            + " some of them will leak."),
                    new Caution("Water-tight is not fit for drinking from, and not tight under"
                            + " pressure: a head of water is all that was tried.")));

    private LeakForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required(
                        "How long did it stay dry?",
                        List.of(DRY_UNTIL, WET_AT),
                        List.of(DRY_UNTIL),
                        List.of(LEAKED, TIME)),
                Ask.optional("How long should it stay dry?", List.of(CLAIM_TIME))
                        .once(),
                Ask.optional(
                        "What did it weigh?",
                        List.of(MASS_BEFORE, MASS_AFTER, WEIGHED_AFTER),
                        List.of(MASS_BEFORE, MASS_AFTER)),
                Ask.optional(
                                "What does a tight vessel lose?",
                                List.of(CONTROL_LOSS, CONTROL_SCATTER),
                                List.of(CONTROL_LOSS))
                        .once(),
                Ask.optional("Under which head?", List.of(HEAD, HEAD_AT_END), List.of(HEAD)),
                Ask.optional("How thick is the wall?", List.of(WALL)),
                Ask.optional("Which liquid?", List.of(LIQUID)).once());
    }

    private static Input hours(String name, String label) {
        return Input.of(name, label, "h", Kind.TIMER).within(Limits.ZERO_OR_MORE);
    }
}
