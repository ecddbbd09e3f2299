package org.twinbar.study.bench;

import java.time.LocalDate;
import java.util.UUID;

/**
 * What an instrument showed where it should show nothing.
 *
 * @param reading in the instrument's unit
 * @param who entered it
 */
public record ZeroCheck(UUID id, LocalDate date, double reading, String who) {}
