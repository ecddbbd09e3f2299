package org.twinbar.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.planning.PlannedGroup.Together;

/** One dealing of a design, from one seed. */
final class Dealing {

    /** No letters that are misread for others or for figures. */
    private static final String LETTERS = "ACEFHJKLMNPRTUVWXY";

    private final Design design;
    private final UniformRandomProvider random;

    Dealing(Design design, long seed) {
        this.design = design;
        this.random = RandomSource.XO_SHI_RO_256_PP.create(seed);
    }

    /** A specimen before it has a code and a place in the order. */
    private record Piece(String series, String group) {}

    /** All that was dealt. */
    record Dealt(List<Placed> specimens, List<Placed> pilots) {}

    Dealt dealt() {
        List<List<Piece>> runs = runs();
        List<String> codes = codes();
        List<Placed> placed = new ArrayList<>();
        for (int run = 0; run < runs.size(); run++) {
            List<Piece> places = runs.get(run);
            shuffle(places);
            for (int place = 0; place < places.size(); place++) {
                placed.add(new Placed(
                        codes.get(placed.size()),
                        places.get(place).group(),
                        places.get(place).series(),
                        run + 1,
                        place + 1,
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        placed.size() + 1));
            }
        }
        List<Placed> inBatches = dealt(dealt(placed, Together.MIX), Together.OVEN_LOAD);
        List<Placed> all = new ArrayList<>();
        design.series().forEach(series -> all.addAll(inTestOrder(series, inBatches)));
        return new Dealt(all, pilots(codes.subList(all.size(), codes.size())));
    }

    /** Pilots are untreated, and have the codes that the others left. */
    private List<Placed> pilots(List<String> codes) {
        List<Placed> pilots = new ArrayList<>();
        for (Series series : design.series()) {
            for (int number = 1; number <= series.pilots(); number++) {
                pilots.add(Placed.pilot(
                        codes.get(pilots.size()),
                        design.control().name(),
                        series.name(),
                        pilots.size() + 1,
                        number));
            }
        }
        return pilots;
    }

    private List<List<Piece>> runs() {
        List<List<Piece>> runs = new ArrayList<>();
        for (int run = 0; run < design.batches().runs(); run++) {
            runs.add(new ArrayList<>());
        }
        if (design.changes() == Design.Changes.WITHIN_RUNS) {
            design.series().forEach(series -> everyGroupInEveryRun(series, runs));
        } else {
            oneGroupInEachRun(runs);
        }
        return runs;
    }

    /** A run more or less of one group falls to runs drawn afresh for each group. */
    private void everyGroupInEveryRun(Series series, List<List<Piece>> runs) {
        for (PlannedGroup group : design.groups()) {
            List<List<Piece>> order = new ArrayList<>(runs);
            shuffle(order);
            for (int i = 0; i < series.perGroup(); i++) {
                order.get(i % order.size()).add(new Piece(series.name(), group.name()));
            }
        }
    }

    /** Rounds of one run of each group, in an order drawn afresh for each round. */
    private void oneGroupInEachRun(List<List<Piece>> runs) {
        int groups = design.groups().size();
        int rounds = runs.size() / groups;
        for (int round = 0; round < rounds; round++) {
            List<PlannedGroup> order = new ArrayList<>(design.groups());
            shuffle(order);
            for (int i = 0; i < groups; i++) {
                for (Series series : design.series()) {
                    int number = series.perGroup() / rounds
                            + (round < series.perGroup() % rounds ? 1 : 0);
                    runs.get(round * groups + i)
                            .addAll(Collections.nCopies(
                                    number,
                                    new Piece(series.name(), order.get(i).name())));
                }
            }
        }
    }

    /**
     * Gives each specimen of a group that takes it a mix or an oven load: in turn through the runs,
     * from one that is drawn afresh for each group and series, so that batches cross runs.
     */
    private List<Placed> dealt(List<Placed> placed, Together kind) {
        int batches = design.batchesOf(kind);
        Map<Piece, List<Integer>> orders = new HashMap<>();
        Map<Piece, Integer> counts = new HashMap<>();
        List<Placed> dealt = new ArrayList<>();
        for (Placed one : placed) {
            if (!design.group(one.group()).together().contains(kind)) {
                dealt.add(one);
                continue;
            }
            Piece piece = new Piece(one.series(), one.group());
            int before = counts.merge(piece, 1, Integer::sum) - 1;
            if (before % batches == 0) {
                orders.put(piece, shuffledNumbers(batches));
            }
            int batch = orders.getOrDefault(piece, List.of()).get(before % batches);
            dealt.add(inBatch(one, kind, batch));
        }
        return dealt;
    }

    private static Placed inBatch(Placed one, Together kind, int batch) {
        boolean mix = kind == Together.MIX;
        return new Placed(
                one.code(),
                one.group(),
                one.series(),
                one.run(),
                one.position(),
                mix ? OptionalInt.of(batch) : one.mix(),
                mix ? one.load() : OptionalInt.of(batch),
                one.test());
    }

    private List<Integer> shuffledNumbers(int last) {
        List<Integer> numbers = new ArrayList<>();
        for (int number = 1; number <= last; number++) {
            numbers.add(number);
        }
        shuffle(numbers);
        return numbers;
    }

    /** Where a run holds one group only, a round of runs is the block that testing is mixed in. */
    private List<Placed> inTestOrder(Series series, List<Placed> placed) {
        int runsInBlock = design.changes() == Design.Changes.WITHIN_RUNS
                ? 1
                : design.groups().size();
        List<Placed> ordered = new ArrayList<>();
        for (int first = 1; first <= design.batches().runs(); first += runsInBlock) {
            int from = first;
            List<Placed> block = new ArrayList<>(placed.stream()
                    .filter(it -> it.series().equals(series.name()))
                    .filter(it -> it.run() >= from && it.run() < from + runsInBlock)
                    .sorted(Comparator.comparing(Placed::code))
                    .toList());
            shuffle(block);
            for (Placed it : block) {
                ordered.add(it.tested(ordered.size() + 1));
            }
        }
        return ordered;
    }

    private List<String> codes() {
        List<String> all = new ArrayList<>();
        for (int letter = 0; letter < LETTERS.length(); letter++) {
            for (int figure = 100; figure < 1000; figure++) {
                all.add(LETTERS.charAt(letter) + Integer.toString(figure));
            }
        }
        shuffle(all);
        return all;
    }

    /** R. Durstenfeld's shuffle: Communications of the ACM 7 (1964), algorithm 235. */
    private <T> void shuffle(List<T> list) {
        for (int i = list.size() - 1; i > 0; i--) {
            Collections.swap(list, i, random.nextInt(i + 1));
        }
    }
}
