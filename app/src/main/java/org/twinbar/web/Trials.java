package org.twinbar.web;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/** The trials at hand; the oldest are let go of, for what matters is kept as a study. */
final class Trials implements AutoCloseable {

    private static final int MOST = 8;

    private final Map<String, Trial> trials = new LinkedHashMap<>();

    synchronized void add(Trial trial) {
        trials.put(trial.id().toString(), trial);
        Iterator<Trial> oldest = trials.values().iterator();
        while (trials.size() > MOST) {
            oldest.next().remove();
            oldest.remove();
        }
    }

    /** @throws Refusal where it isn't here */
    synchronized Trial get(String id) {
        Trial trial = trials.get(id);
        if (trial == null) {
            throw Refusal.notFound("These readings are no longer here; hand them in again.");
        }
        return trial;
    }

    synchronized void remove(Trial trial) {
        trials.remove(trial.id().toString());
        trial.remove();
    }

    @Override
    public synchronized void close() {
        trials.values().forEach(Trial::remove);
        trials.clear();
    }
}
