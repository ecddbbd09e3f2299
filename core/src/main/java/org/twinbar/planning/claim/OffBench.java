package org.twinbar.planning.claim;

import java.util.List;

/**
 * A sort of claim that no test on a home bench can settle.
 *
 * @param topic what such claims say
 * @param words beginnings of words that such a claim has, in small letters
 * @param conditions what would have to hold, and what would show it
 * @param whoDecides a sentence
 */
public record OffBench(
        String topic, List<String> words, List<Condition> conditions, String whoDecides) {

    /**
     * What would have to hold.
     *
     * @param evidence what would show it
     */
    public record Condition(String text, String evidence) {}

    public OffBench {
        words = List.copyOf(words);
        conditions = List.copyOf(conditions);
    }

    /** The sorts that are known; sources: METHODS.md G and common practice. */
    public static final List<OffBench> ALL = List.of(
            new OffBench(
                    "contact with food",
                    List.of("food", "drink", "potable", "eat", "kitchen", "dishwash", "microwav"),
                    List.of(
                            condition(
                                    "Every component of print and coat is declared for contact with food, for the cured state and this use.",
                                    "declarations of compliance by the makers, with the lot numbers used"),
                            condition(
                                    "What the finished part gives off into food or water, at the worst time and temperature of use, keeps within the limits of the rules.",
                                    "migration tests of finished parts by an accredited laboratory"),
                            condition(
                                    "The coat is cured as its data sheet asks, in the ratio that it asks.",
                                    "the record of mixes and curing of this study"),
                            condition(
                                    "The surface can be cleaned, and stays closed after washing and wear.",
                                    "photos and leak tests after washing; they support, and settle nothing")),
                    "The rules of the place where it is used and sold, and an accredited laboratory, decide; a bench at home cannot."),
            new OffBench(
                    "bearing loads that people depend on",
                    List.of(
                            "lift",
                            "load-bearing",
                            "climb",
                            "safety",
                            "certif",
                            "hoist",
                            "harness"),
                    List.of(
                            condition(
                                    "The loads of use, the shocks among them, and what happens if it breaks are written down by somebody who answers for it.",
                                    "a load case and a failure analysis by a competent person"),
                            condition(
                                    "The part itself, not only bars of its material, bore a stated multiple of the load, for as long and as often and as warm as in use.",
                                    "proof tests of parts, creep and fatigue included"),
                            condition(
                                    "Each part that is used was made and checked in the same way.",
                                    "print and treatment records of every part, and its inspection")),
                    "A competent person under the rules of the place decides; numbers of bars on a home bench support, and certify nothing."),
            new OffBench(
                    "safe in a fire",
                    List.of("fire", "flame", "flamm", "burn", "self-extinguish"),
                    List.of(condition(
                            "It burns no faster than the rules for its place allow, in the thickness that is used.",
                            "tests by an accredited laboratory, of coated parts too")),
                    "The rules of the place and an accredited laboratory decide; never try it at home."),
            new OffBench(
                    "safe on skin or in the body",
                    List.of("skin", "medic", "implant", "dental", "hypoallerg"),
                    List.of(condition(
                            "The finished part, cured and cleaned, gives off nothing that harms.",
                            "biological evaluation by an accredited laboratory")),
                    "Medical rules and an accredited laboratory decide."),
            new OffBench(
                    "safe for children",
                    List.of("child", "toy", "baby"),
                    List.of(condition(
                            "No part comes off that can be swallowed, no edge cuts, and nothing harmful comes out of it in the mouth.",
                            "tests under the rules for toys by an accredited laboratory")),
                    "The rules for toys and an accredited laboratory decide."),
            new OffBench(
                    "safe at mains voltage",
                    List.of("electric", "insulat", "voltage", "mains"),
                    List.of(condition(
                            "It insulates, and does not feed a fire, at the voltage and temperature of use.",
                            "tests by an accredited laboratory")),
                    "Electrical rules and a competent person decide; never try it at home."));

    private static Condition condition(String text, String evidence) {
        return new Condition(text, evidence);
    }
}
