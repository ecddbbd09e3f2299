/**
 * Files as they are handed in, and the table of specimens among them: which column is what to a
 * method, what each row says, which curve belongs to it, what was typed or corrected after it came.
 *
 * <p>Begin with {@link org.twinbar.study.table.Columns} and
 * {@link org.twinbar.study.table.SpecimenRow}. A table stands as it came: corrections lie beside
 * it. The package knows no result and no store.
 */
@NullMarked
package org.twinbar.study.table;

import org.jspecify.annotations.NullMarked;
