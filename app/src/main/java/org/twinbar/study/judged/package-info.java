/**
 * A judged study as plain records: what was claimed and planned, what was read and found, what was
 * published. The report, the pages and the command line show these.
 *
 * <p>Begin with {@link org.twinbar.study.judged.JudgedStudy}. Nothing here calculates a result or
 * reads a file, and nothing fetches from the store while it is read, so that a report is made from
 * one state. Turned down: a study that loads its parts when they are asked for.
 */
@NullMarked
package org.twinbar.study.judged;

import org.jspecify.annotations.NullMarked;
