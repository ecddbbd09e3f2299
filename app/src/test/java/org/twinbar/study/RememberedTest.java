package org.twinbar.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class RememberedTest {

    private final AtomicInteger made = new AtomicInteger();

    @Test
    void makesAThingOnceForEachState() {
        Remembered<String, Integer, String> remembered = new Remembered<>(1000, String::length);
        assertThat(get(remembered, "bars", 1)).isEqualTo("bars in state 1");
        assertThat(get(remembered, "bars", 1)).isEqualTo("bars in state 1");
        assertThat(made).hasValue(1);
        assertThat(get(remembered, "bars", 2)).isEqualTo("bars in state 2");
        assertThat(remembered.find("bars", 1)).isEmpty();
        assertThat(remembered.find("bars", 2)).contains("bars in state 2");
    }

    @Test
    void letsGoOfWhatWasAskedForLongestAgo() {
        Remembered<String, Integer, String> remembered = new Remembered<>(35, String::length);
        get(remembered, "bars", 1);
        get(remembered, "cups", 1);
        get(remembered, "bars", 1);
        get(remembered, "pins", 1);
        assertThat(remembered.find("bars", 1)).isPresent();
        assertThat(remembered.find("cups", 1)).isEmpty();
        assertThat(remembered.find("pins", 1)).isPresent();
    }

    @Test
    void countsAThingOnceThatPassedThroughManyStates() {
        Remembered<String, Integer, String> remembered = new Remembered<>(35, String::length);
        get(remembered, "cups", 1);
        for (int state = 1; state < 9; state++) {
            get(remembered, "bars", state);
        }
        assertThat(remembered.find("cups", 1)).isPresent();
    }

    @Test
    void keepsOneThingHoweverLargeItIs() {
        Remembered<String, Integer, String> remembered = new Remembered<>(3, String::length);
        get(remembered, "bars", 1);
        assertThat(remembered.find("bars", 1)).isPresent();
    }

    @Test
    void makesAThingOnceForTwoThatAskAtOnce() throws InterruptedException {
        Remembered<String, Integer, String> remembered = new Remembered<>(1000, String::length);
        CountDownLatch begun = new CountDownLatch(1);
        Thread first = new Thread(() -> remembered.get("bars", 1, () -> {
            begun.countDown();
            return made();
        }));
        first.start();
        begun.await();
        remembered.get("bars", 1, this::made);
        first.join();
        assertThat(made).hasValue(1);
    }

    private String made() {
        return "made " + made.incrementAndGet();
    }

    private String get(Remembered<String, Integer, String> from, String thing, int state) {
        return from.get(thing, state, () -> {
            made.incrementAndGet();
            return thing + " in state " + state;
        });
    }
}
