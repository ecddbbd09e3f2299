package org.twinbar.planning;

import java.util.List;
import java.util.Locale;
import org.twinbar.planning.PlannedGroup.Together;

/** Controls that people forget, and what each tells. Source: METHODS.md G, H and L. */
public final class Controls {

    private Controls() {}

    /** Sorts of treatment. */
    public enum Treatment {
        COATING("coating"),
        ANNEALING("annealing"),
        VAPOUR("vapour"),
        SANDING("sanding"),
        DYEING("dyeing"),
        PRINT_SETTING("print setting"),
        MATERIAL("material");

        private final String word;

        Treatment(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** @throws PlanException where there is no such treatment */
        public static Treatment parse(String text) {
            for (Treatment each : values()) {
                if (each.word.equals(text.strip().toLowerCase(Locale.ROOT))) {
                    return each;
                }
            }
            throw new PlanException("There is no sort of treatment '%s' among %s."
                    .formatted(
                            text,
                            String.join(
                                    ", ",
                                    java.util.Arrays.stream(values())
                                            .map(Treatment::word)
                                            .toList())));
        }

        /** Returns where it can be changed. */
        public Design.Changes changes() {
            return this == PRINT_SETTING || this == MATERIAL
                    ? Design.Changes.BETWEEN_RUNS
                    : Design.Changes.WITHIN_RUNS;
        }
    }

    /**
     * A control that is offered.
     *
     * @param group as it would stand in the plan
     * @param when the case in which it matters
     * @param why what only it can tell
     */
    public record Offered(PlannedGroup group, String when, String why) {}

    private static final Offered SAME_HEAT = new Offered(
            PlannedGroup.further(
                    "warmed", "same heat as the treated, nothing else", Together.OVEN_LOAD),
            "where the treated are warmed, to cure or dry",
            "Heat anneals the print by itself: without it the gain may be the oven's, not the coat's.");
    private static final Offered SANDED = new Offered(
            PlannedGroup.further("sanded", "sanded as the treated are, nothing else"),
            "where the treated are sanded first",
            "Sanding takes off the ridges that cracks begin at: it can make a part stronger alone.");
    private static final Offered THINNER = new Offered(
            PlannedGroup.further("thinner only", "the thinner or solvent without the resin"),
            "where the resin is thinned, or parts are wiped with solvent",
            "Solvent softens and welds some plastics: it can be what made the difference.");
    private static final Offered ADDED_WALL = new Offered(
            PlannedGroup.further(
                    "added wall", "a wall more instead of the coat, of the same grams"),
            "where the claim is about the part",
            "A coat makes the part thicker: the same grams printed as wall may do as much for less.");
    private static final Offered DRIED = new Offered(
            PlannedGroup.further("dried", "kept as dry and as warm as the treated, not annealed"),
            "where the material takes up water",
            "An oven also dries: a dry nylon is stiffer whatever became of its crystals.");
    private static final Offered AGED = new Offered(
            PlannedGroup.further("aged", "as old as the treated when it is tested, nothing else"),
            "where the treatment takes days",
            "Prints change with age and moisture while the others cure.");
    private static final Offered HOT_BATH = new Offered(
            PlannedGroup.further("hot bath", "the same bath without the dye"),
            "where the bath is warm",
            "A warm bath anneals and wets the print whether it has dye in it or not.");
    private static final Offered AIRED = new Offered(
            PlannedGroup.further("aired", "handled and aired as the treated are, without vapour"),
            "where parts are heated or kept for days to let the solvent go",
            "What stays of the solvent softens a part for weeks; waiting and warmth change it too.");
    private static final Offered LIGHTER = new Offered(
            PlannedGroup.further("printed thinner", "printed as much thinner as sanding takes off"),
            "where the claim is about the material",
            "Sanding takes section away: less may carry less without being worse.");

    /** Returns what is offered for a treatment, what matters most first. */
    public static List<Offered> offeredFor(Treatment treatment) {
        return switch (treatment) {
            case COATING -> List.of(SAME_HEAT, SANDED, THINNER, ADDED_WALL, AGED);
            case ANNEALING -> List.of(DRIED, AGED);
            case VAPOUR -> List.of(AIRED, AGED);
            case SANDING -> List.of(LIGHTER);
            case DYEING -> List.of(HOT_BATH, AGED);
            case PRINT_SETTING, MATERIAL -> List.of();
        };
    }
}
