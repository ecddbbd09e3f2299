/**
 * Use cases: what a person does with a study, from its readings to its verdicts.
 *
 * <p>Only the readings, claims and corrections are kept; results, comparisons and verdicts are
 * calculated from them each time, so that a corrected formula reaches every page at once. What
 * comes out is a {@link org.twinbar.study.judged.JudgedStudy}: plain records, free of store and
 * files, which the report, the pages and the command line read.
 *
 * <p>Where to begin, by what a person does:
 *
 * <ul>
 *   <li>open a workspace, keep and judge a study: {@code Workspace}, {@code Draft} (an act, checked
 *       whole and written whole), {@code State} (entries read back), {@code Judging}
 *   <li>plan, make and treat: {@code Plans}, {@code Register}, {@code Treating}
 *   <li>type readings, move marks: {@code Typing}, {@code Marking}
 *   <li>know the bench: {@code Instruments}
 *   <li>publish and be checked: {@code Packages}, {@code Recheck}
 * </ul>
 *
 * <p>What lies below it needs no store, and points one way: {@code judged} (plain records),
 * {@code file} (what people write in TOML), {@code table} (readings as they came), {@code bench}
 * (instruments), {@code calculation} (results and comparisons), {@code packed} (tables of a data
 * package). Above it lies {@code archive}, for all studies together.
 *
 * <p>The package is the only one that knows core and store together. It knows no page, no command
 * and no picture. Turned down: keeping results beside the readings (they would go stale in
 * silence), and a study object that fetches from the store while it is read (a report must be made
 * from one state).
 */
@NullMarked
package org.twinbar.study;

import org.jspecify.annotations.NullMarked;
