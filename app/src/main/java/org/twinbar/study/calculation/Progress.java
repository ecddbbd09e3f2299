package org.twinbar.study.calculation;

/** Hears how far long work has come; called from several threads, one at a time. */
@FunctionalInterface
public interface Progress {

    Progress SILENT = (done, of) -> {};

    /** Says that so many specimens of so many are done. */
    void done(int done, int of);
}
