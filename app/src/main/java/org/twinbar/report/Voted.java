package org.twinbar.report;

import org.twinbar.study.Votes;

/** What votes on stills say, in words. */
public final class Voted {

    private static final double SELDOM = 0.05;

    private Voted() {}

    /** Returns what was voted, how sure, on what, and what it says nothing of. */
    public static String sentence(Votes votes) {
        boolean second = votes.secondHigher() * 2 >= votes.pairs();
        String higher = (second ? votes.second() : votes.first()).group();
        double won = second ? votes.secondHigher() : votes.pairs() - votes.secondHigher();
        String found = won * 2 == votes.pairs()
                ? "Neither group was rated higher: %s of %s pairs of specimens each."
                        .formatted(Written.number(won, 4), votes.pairs())
                : "'%s' was rated higher in %s of %s pairs of specimens (alike ones count half)."
                        .formatted(higher, Written.number(won, 4), votes.pairs());
        return found
                + " Specimens dealt out by chance would lie as far apart in %s of cases (exact)%s."
                        .formatted(Written.percent(votes.p()), judged(votes))
                + " It rests on %s and %s specimens: each counts once, by the median of its votes (%s%s)."
                        .formatted(
                                votes.first().medians().size(),
                                votes.second().medians().size(),
                                count(votes.votes(), "vote"),
                                votes.voters() > 0 ? " of " + count(votes.voters(), "voter") : "")
                + " It tells what viewers like on these photos, and nothing of what the parts carry.";
    }

    private static String judged(Votes votes) {
        if (votes.smallestP() > SELDOM) {
            return "; with so few specimens no votes could tell the groups apart, however many vote:"
                    + " photograph 4 of each or more";
        }
        return votes.p() <= SELDOM
                ? ", so viewers tell the groups apart"
                : ", so the votes don't tell the groups apart";
    }

    private static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
