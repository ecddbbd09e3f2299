package org.twinbar.study.judged;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Copies of maps that keep their order: {@link Map#copyOf} shuffles from run to run. */
public final class Ordered {

    private Ordered() {}

    public static <K, V> Map<K, V> copy(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
