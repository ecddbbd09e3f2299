/**
 * Sheets of paper for the bench: run sheets, print sheets, treatment sheets and labels, as PDF.
 *
 * <p>What is asked comes from the description of the test method, where it is measured from the
 * shape, which specimens there are from a plan or a table. The package knows no store, clock or
 * file. A sheet for whoever tests never tells groups; the sheet for whoever treats has to, and says
 * so. Turned down: sheets as pages of the report, since they are needed before there is anything to
 * report; the study's name inside the codes of squares, since a code is typed into a field as it is
 * read.
 */
@NullMarked
package org.twinbar.report.paper;

import org.jspecify.annotations.NullMarked;
