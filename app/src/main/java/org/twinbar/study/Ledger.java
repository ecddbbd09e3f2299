package org.twinbar.study;

import java.util.List;
import org.twinbar.store.Digest;
import org.twinbar.store.Entry;
import org.twinbar.store.Store;
import org.twinbar.study.judged.KeptFile;

/** Where entries and files are read from: a workspace, or a package. */
interface Ledger {

    /** Returns all entries of an aspect, in the order in which they arrived. */
    List<Entry> of(Aspect aspect);

    /** Returns all entries on a subject, in the order in which they arrived. */
    List<Entry> about(String subject);

    /** Returns what a file holds. */
    byte[] bytes(KeptFile file);

    static Ledger of(Store store) {
        return new Ledger() {
            @Override
            public List<Entry> of(Aspect aspect) {
                return store.of(aspect.word());
            }

            @Override
            public List<Entry> about(String subject) {
                return store.about(subject);
            }

            @Override
            public byte[] bytes(KeptFile file) {
                return store.files().read(new Digest(file.sha256()));
            }
        };
    }
}
