package org.tunica.replay;

import java.util.Optional;

/** Where finished batches wait for the others, so that a replay that ends early goes on where it was. */
interface BatchStore {
    /** Keeps nothing. */
    BatchStore NONE = new BatchStore() {
        @Override
        public Optional<BatchResult> find(int batch, String cases) {
            return Optional.empty();
        }

        @Override
        public void keep(BatchResult result) {}
    };

    /** The result of a batch of the same cases, if it is there whole. */
    Optional<BatchResult> find(int batch, String cases);

    /** Whether this program is to do a batch that is not there; if not, another program is at it or just finished it. */
    default boolean take(int batch, String cases) {
        return true;
    }

    /** Keeps a result. */
    void keep(BatchResult result);

    /** Whether other programs work at the same batches. */
    default boolean shared() {
        return false;
    }
}
