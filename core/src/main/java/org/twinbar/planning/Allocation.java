package org.twinbar.planning;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Which specimen is in which print run, at which place of it, and when it is tested.
 *
 * <p>Everything is dealt by a seeded shuffle within blocks: specimens of a group over the runs as
 * evenly as can be, places within a run, and the order of testing run by run, so that what drifts
 * over the day meets all groups alike. Codes say nothing of the group. Source: METHODS.md L.
 *
 * @param design what was dealt
 * @param seed of the shuffles
 * @param specimens in the order in which they are tested
 */
public record Allocation(Design design, long seed, List<Placed> specimens) {

    /** No letters that are misread for others or for figures. */
    private static final String LETTERS = "ACEFHJKLMNPRTUVWXY";

    public Allocation {
        specimens = List.copyOf(specimens);
    }

    /**
     * One specimen of the plan.
     *
     * @param code blind: a letter and three figures, drawn at random
     * @param group which it belongs to; kept from whoever reads the instruments
     * @param run print run, counted from 1
     * @param position place in the run, counted from 1
     * @param test when it is tested, counted from 1
     */
    public record Placed(String code, String group, int run, int position, int test) {}

    /** Deals a design; the same seed deals the same. */
    public static Allocation of(Design design, long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        List<List<String>> runs = design.changes() == Design.Changes.WITHIN_RUNS
                ? everyGroupInEveryRun(design, random)
                : oneGroupInEachRun(design, random);
        List<String> codes = codes(design.groups().size() * design.perGroup(), random);
        List<Placed> specimens = new ArrayList<>();
        for (int run = 0; run < runs.size(); run++) {
            List<String> places = runs.get(run);
            shuffle(places, random);
            for (int place = 0; place < places.size(); place++) {
                int number = specimens.size();
                specimens.add(new Placed(
                        codes.get(number), places.get(place), run + 1, place + 1, number + 1));
            }
        }
        return new Allocation(design, seed, inTestOrder(design, specimens, random));
    }

    /** Returns the specimens as they are made: run by run, place by place. */
    public List<Placed> inPrintOrder() {
        return specimens.stream()
                .sorted(Comparator.comparingInt(Placed::run).thenComparingInt(Placed::position))
                .toList();
    }

    /**
     * Returns the plan as text that is the same for the same plan everywhere: a line for what was
     * dealt, one for each specimen in the order of testing, fields parted by tabs, each line ended
     * by a line feed.
     */
    public String canonicalText() {
        StringBuilder text = new StringBuilder("twinbar plan 1\n");
        text.append("groups\t").append(String.join("\t", design.groups())).append('\n');
        text.append("per group\t").append(design.perGroup()).append('\n');
        text.append("runs\t").append(design.runs()).append('\n');
        text.append("changes\t")
                .append(
                        design.changes() == Design.Changes.WITHIN_RUNS
                                ? "within runs"
                                : "between runs")
                .append('\n');
        text.append("seed\t").append(seed).append('\n');
        for (Placed one : specimens) {
            text.append(one.test()).append('\t');
            text.append(one.code()).append('\t');
            text.append(one.group()).append('\t');
            text.append(one.run()).append('\t');
            text.append(one.position()).append('\n');
        }
        return text.toString();
    }

    /** Returns the SHA-256 of {@link #canonicalText} in UTF-8, as 64 hexadecimal figures. */
    public String seal() {
        return sealOf(canonicalText());
    }

    /** Returns the SHA-256 of a text in UTF-8, for sealing a plan with more than the allocation. */
    public static String sealOf(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }

    /** A run more or less of one group falls to runs drawn afresh for each group. */
    private static List<List<String>> everyGroupInEveryRun(
            Design design, UniformRandomProvider random) {
        List<List<String>> runs = new ArrayList<>();
        for (int run = 0; run < design.runs(); run++) {
            runs.add(new ArrayList<>());
        }
        for (String group : design.groups()) {
            List<List<String>> order = new ArrayList<>(runs);
            shuffle(order, random);
            for (int i = 0; i < design.perGroup(); i++) {
                order.get(i % order.size()).add(group);
            }
        }
        return runs;
    }

    /** Rounds of one run of each group, in an order drawn afresh for each round. */
    private static List<List<String>> oneGroupInEachRun(
            Design design, UniformRandomProvider random) {
        List<List<String>> runs = new ArrayList<>();
        int rounds = design.runs() / design.groups().size();
        for (int round = 0; round < rounds; round++) {
            List<String> order = new ArrayList<>(design.groups());
            shuffle(order, random);
            for (String group : order) {
                int specimens =
                        design.perGroup() / rounds + (round < design.perGroup() % rounds ? 1 : 0);
                runs.add(new ArrayList<>(java.util.Collections.nCopies(specimens, group)));
            }
        }
        return runs;
    }

    /** Where a run holds one group only, a round of runs is the block that testing is mixed in. */
    private static List<Placed> inTestOrder(
            Design design, List<Placed> specimens, UniformRandomProvider random) {
        int runsInBlock = design.changes() == Design.Changes.WITHIN_RUNS
                ? 1
                : design.groups().size();
        List<Placed> ordered = new ArrayList<>();
        for (int first = 1; first <= design.runs(); first += runsInBlock) {
            int from = first;
            List<Placed> block = new ArrayList<>(specimens.stream()
                    .filter(it -> it.run() >= from && it.run() < from + runsInBlock)
                    .toList());
            shuffle(block, random);
            for (Placed it : block) {
                ordered.add(new Placed(
                        it.code(), it.group(), it.run(), it.position(), ordered.size() + 1));
            }
        }
        return ordered;
    }

    private static List<String> codes(int number, UniformRandomProvider random) {
        List<String> all = new ArrayList<>();
        for (int letter = 0; letter < LETTERS.length(); letter++) {
            for (int figure = 100; figure < 1000; figure++) {
                all.add(LETTERS.charAt(letter) + Integer.toString(figure));
            }
        }
        shuffle(all, random);
        return all.subList(0, number);
    }

    /** R. Durstenfeld's shuffle: Communications of the ACM 7 (1964), algorithm 235. */
    private static <T> void shuffle(List<T> list, UniformRandomProvider random) {
        for (int i = list.size() - 1; i > 0; i--) {
            java.util.Collections.swap(list, i, random.nextInt(i + 1));
        }
    }
}
