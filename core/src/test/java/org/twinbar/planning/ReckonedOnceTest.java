package org.twinbar.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.twinbar.planning.Numbers.Groups;
import org.twinbar.statistics.PlannedEffect;

class ReckonedOnceTest {

    private static final Aim FIFTEEN = new Aim.Change(new PlannedEffect.Ratio(1.15, 1.05, 0.06));

    @Test
    void saysWhatTheAimSays() {
        Aim once = new ReckonedOnce(FIFTEEN);
        assertThat(table(once)).isEqualTo(table(FIFTEEN));
        assertThat(once.groups()).isEqualTo(2);
        assertThat(once.method()).isEqualTo(FIFTEEN.method());
    }

    @Test
    void reckonsNothingTwice() {
        AtomicInteger reckoned = new AtomicInteger();
        Aim once = new ReckonedOnce(new Aim() {
            @Override
            public double power(int perGroup) {
                reckoned.incrementAndGet();
                return FIFTEEN.power(perGroup);
            }

            @Override
            public OptionalDouble smallest(int perGroup) {
                reckoned.incrementAndGet();
                return FIFTEEN.smallest(perGroup);
            }

            @Override
            public String method() {
                return FIFTEEN.method();
            }

            @Override
            public int groups() {
                return FIFTEEN.groups();
            }
        });
        Numbers first = table(once);
        int before = reckoned.get();
        assertThat(before).isPositive();
        assertThat(table(once)).isEqualTo(first);
        assertThat(reckoned).hasValue(before);
    }

    private static Numbers table(Aim aim) {
        return Numbers.of(aim, 0.8, new Groups(2, 1), Effort.NONE);
    }
}
