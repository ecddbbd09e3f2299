package org.twinbar.decision;

import static org.twinbar.decision.Verdict.BETTER_SIZE_OPEN;
import static org.twinbar.decision.Verdict.CONTRADICTED;
import static org.twinbar.decision.Verdict.OPEN;
import static org.twinbar.decision.Verdict.SUPPORTED;
import static org.twinbar.decision.Verdict.TOO_SMALL;

import java.util.EnumSet;
import java.util.Set;

/**
 * Every sentence that a comparison says, with the verdicts under which it may be said.
 *
 * <p>A place in braces is filled by name; {@code {Label}} begins with a capital. A further language
 * is a further table of the same names.
 */
enum Sentence {
    // What was found.
    RATIO_FOUND(
            "{Label} was {change} in {treated} than in {control} {things} ({interval}, {counts})."),
    SHARE_FOUND(
            "{Label}: {yesTreated} of {nTreated} {treated} {things} against {yesControl} of {nControl}"
                    + " {control} ones ({change}, {interval})."),
    SHARE_NONE(
            "{Label}: none of {n} {group} {things}, and still it may be so of up to {share} of all such"
                    + " {things} (exact limit)."),
    SHARE_ALL(
            "{Label}: all of {n} {group} {things}, and still it may not be so of up to {share} of all such"
                    + " {things} (exact limit)."),
    SHARE_SOME(
            "{Label}: {count} of {n} {group} {things}, which may be {limits} of all such {things} (exact"
                    + " limits)."),
    LASTED_LONGER(
            "Over the {limit} that both were watched, {treated} {things} lasted {change} on average than"
                    + " {control} ones ({interval})."),
    NEVER_HAPPENED("It happened to none of {n} {things} while they were watched."),
    RATE_FOUND(
            "{Label}: it came {change} to {treated} than to {control} {things} ({interval}; {counts})."),
    RATE_NEVER(
            "{Label}: it came to none of {n} {treated} {things} while they were watched, and to {count} of {m}"
                    + " {control} ones: {limit} ({level} interval)."),
    RATE_ALONE("{Label}: it came to {treated} {things} alone ({interval}; {counts})."),
    LOG_RANK(
            "Log-rank test{within}: it came to {observed} of the {treated} {things} where {expected} would be"
                    + " expected if nothing differed (χ² {statistic}, one degree of freedom)."),
    RANK_FOUND(
            "{Label}: of a {treated} and a {control} one taken at random, the {treated} one is the higher in"
                    + " {estimate} of cases ({interval}, {counts})."),
    LEVEL_FOUND(
            "{Label}: with {confidence} confidence, {share} of such {things} reach {limit} ({counts})."),
    LEVEL_SHARE_FOUND(
            "{Label}: {count} of {n} {things} cleared {level}; with {confidence} confidence at least {limit}"
                    + " of such {things} do."),
    LEVEL_ONLY_SEEN("{Label} was {value}, with nothing to say how sure that is."),
    ONLY_SEEN(
            "{Label} was {change} in {treated} than in {control} {things} ({counts}), with nothing to say"
                    + " how sure that is."),
    NOTHING_SEEN("{Label} cannot be compared."),

    // The answer.
    CLAIM_HOLDS("The claim of at least {claimed} holds on this bench.", SUPPORTED),
    WORTH_REACHED("That is at least the {worth} worth having.", SUPPORTED),
    CHANGE_SHOWN("The change goes the way that was claimed.", SUPPORTED),
    CAME_LATER("It came more slowly: that goes the way that was claimed.", SUPPORTED),
    CAME_SOONER("It came faster: that goes the way that was claimed.", SUPPORTED),
    SIZE_OPEN(
            "There is a change for the better, but whether it reaches {worth} is open.",
            BETTER_SIZE_OPEN),
    CANNOT_TELL("These readings cannot tell.", OPEN),
    SMALLER_THAN_WORTH(
            "Whatever change there is, it is smaller than the {worth} worth having.", TOO_SMALL),
    OTHER_WAY("It went the other way: the claim doesn't hold on this bench.", CONTRADICTED),
    CAME_SOONER_INSTEAD(
            "It came faster, not more slowly: the claim doesn't hold on this bench.", CONTRADICTED),
    CAME_LATER_INSTEAD(
            "It came more slowly, not faster: the claim doesn't hold on this bench.", CONTRADICTED),
    ALIKE("Whatever change there is, it is smaller than {worth} either way.", SUPPORTED),
    ALIKE_OPEN("Whether the groups are alike within {worth} is open.", OPEN),
    NOT_ALIKE(
            "The groups differ by more than {worth}: the claim of no change doesn't hold on this bench.",
            CONTRADICTED),
    LEVEL_CLEARED("At least {share} of such {things} clear {level} on this bench.", SUPPORTED),
    LEVEL_OPEN("Whether {share} of such {things} clear {level} is open.", OPEN),
    LEVEL_MISSED(
            "Fewer than {share} of such {things} clear {level}: the claim doesn't hold on this bench.",
            CONTRADICTED),

    // The claimed size beside what is worth having.
    CLAIM_REACHED("The claimed {claimed} is reached.", SUPPORTED),
    CLAIM_OPEN(
            "Whether the claimed {claimed} is reached is open.", SUPPORTED, BETTER_SIZE_OPEN, OPEN),
    CLAIM_MISSED(
            "The claimed {claimed} is not reached.",
            SUPPORTED,
            BETTER_SIZE_OPEN,
            OPEN,
            TOO_SMALL,
            CONTRADICTED),

    // What would settle it.
    MORE_SPECIMENS("About {number} would settle it, {assuming}.", OPEN, BETTER_SIZE_OPEN),
    SIMULATED_TOO(
            "So do {share} of {studies} studies drawn from the scatter that was seen.",
            OPEN,
            BETTER_SIZE_OPEN),
    SIMULATED_MORE(
            "Of {studies} studies drawn from the scatter that was seen only {share} do, and {enough}: the rule"
                    + " allows for unequal spread, and a few deviations make no bell curve.",
            OPEN,
            BETTER_SIZE_OPEN),
    IF_CLAIM_HOLDS(
            "If the claimed size were the true one, about {number} would show what is worth having in"
                    + " four studies of five.",
            OPEN,
            BETTER_SIZE_OPEN),
    IF_NO_CHANGE(
            "If there were no change at all, about {number} would show it in four studies of five.",
            OPEN),
    LEVEL_MORE("About {n} specimens would settle it, {assuming}.", OPEN),
    NO_NUMBER_SETTLES("{reason}", OPEN, BETTER_SIZE_OPEN),

    // Among other comparisons.
    AMONG_SEVERAL(
            "{n} treatments were held against the same {control}: judged so that all of them hold together,"
                    + " the verdict would be \"{verdict}\" ({interval})."),
    ACTS_DIFFERENTLY(
            "{Label} of {treated} against {control} was {one} ({here}) and {other} ({there}): the treatment"
                    + " acts differently in the two (the first {scale}is {contrast} than the second, {interval})."),
    ACTS_ALIKE(
            "{Label} of {treated} against {control} was {one} ({here}) and {other} ({there}): the treatment"
                    + " acts alike in the two within {worth} (the first {scale}is {contrast} than the second, {interval})."),
    MAY_ACT_ALIKE(
            "{Label} of {treated} against {control} was {one} ({here}) and {other} ({there}): whether the"
                    + " treatment acts alike in the two is open (the first {scale}is {contrast} than the second, {interval})."),
    ALIKE_UNKNOWN(
            "{Label}: whether {treated} acts alike in {here} and {there} can't be told: {reason}."),

    // A line over amounts.
    LINE_FOUND(
            "{Label} {moved} by {change} from {from} to {to} of {amount} ({interval}, {n} specimens at {k}"
                    + " amounts)."),
    LINE_SHOWN("It goes {direction} with {amount}.", SUPPORTED),
    LINE_OTHER_WAY("It goes {direction} with {amount}, not {expected}.", CONTRADICTED),
    LINE_NOT_FLAT("It goes {direction} with {amount} and does not stay the same.", CONTRADICTED),
    LINE_OPEN("Whether it goes with {amount} is open.", OPEN),
    SLOPE("The slope is {slope} ({interval})."),
    NO_LINE("{Label} has no line over {amount}: {reason}.", OPEN),

    // Part against material.
    ON_BASIS("{Basis}: {gain}."),
    SECTION_EXPLAINS("The added section alone explains {gain}, if it carries as the part does."),
    BEYOND_SECTION(
            "The gain goes beyond it by {interval}: the material does more than its section."),
    NOTHING_BEYOND_SECTION("Beyond it there are {interval}: no gain of the material is shown."),
    SHORT_OF_SECTION(
            "The gain falls short of it by {interval}: the section was added, its strength was not."),

    // What limits it.
    ONE_SPECIMEN(
            "{group} has one specimen, and one specimen shows no scatter: nothing tells a change from"
                    + " chance.",
            OPEN),
    NO_VALUE("No specimen of {group} has a value.", OPEN),
    WEAKER(
            "Specimens were left out after their values were seen ({names}): with them the verdict would be"
                    + " \"{with}\", without them \"{without}\", and the weaker one is given."),
    CONFOUNDED(
            "No {block} holds both {treated} and {control}, and one of them comes from a single one, so that what"
                    + " the treatment did can't be told from what the {block} did.",
            OPEN),
    ONE_BLOCK(
            "All {treated} {things} come from one {block} ({name}): this holds for this {block}, and says"
                    + " nothing of the next one.");

    private final String pattern;
    private final Set<Verdict> verdicts;

    Sentence(String pattern, Verdict... verdicts) {
        this.pattern = pattern;
        this.verdicts = verdicts.length == 0
                ? EnumSet.of(SUPPORTED, BETTER_SIZE_OPEN, OPEN, TOO_SMALL, CONTRADICTED)
                : EnumSet.of(verdicts[0], verdicts);
    }

    String pattern() {
        return pattern;
    }

    boolean fits(Verdict verdict) {
        return verdicts.contains(verdict);
    }

    /** Returns the sentence with its places filled: a name and its words, in turn. */
    String with(Object... namesAndWords) {
        String text = pattern;
        for (int i = 0; i < namesAndWords.length; i += 2) {
            String words = String.valueOf(namesAndWords[i + 1]);
            text = text.replace("{" + namesAndWords[i] + "}", words);
            text = text.replace(
                    "{" + capital(String.valueOf(namesAndWords[i])) + "}", capital(words));
        }
        if (text.contains("{")) {
            throw new IllegalStateException("a place was left empty in '" + text + "'");
        }
        return text;
    }

    static String capital(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
