package org.twinbar.planning;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;

/**
 * An aim that reckons each of its numbers once, however often and from however many threads it is
 * asked: a page that is typed into asks for the same ones again at each key.
 */
public final class ReckonedOnce implements Aim {

    private final Aim aim;
    private final Map<Integer, Double> powers = new ConcurrentHashMap<>();
    private final Map<Integer, OptionalDouble> smallest = new ConcurrentHashMap<>();
    private final Map<Double, OptionalInt> fewest = new ConcurrentHashMap<>();

    public ReckonedOnce(Aim aim) {
        this.aim = aim;
    }

    @Override
    public double power(int perGroup) {
        return powers.computeIfAbsent(perGroup, aim::power);
    }

    @Override
    public OptionalDouble smallest(int perGroup) {
        return smallest.computeIfAbsent(perGroup, aim::smallest);
    }

    @Override
    public OptionalInt fewest(double power) {
        return fewest.computeIfAbsent(power, aim::fewest);
    }

    @Override
    public String method() {
        return aim.method();
    }

    @Override
    public int groups() {
        return aim.groups();
    }
}
