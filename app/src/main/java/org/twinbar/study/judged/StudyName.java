package org.twinbar.study.judged;

import java.time.Instant;
import java.util.UUID;

/** A study as a list shows it. */
public record StudyName(
        UUID id, String name, String question, JudgedStudy.Origin origin, Instant created) {}
