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

    /** Keeps a result. */
    void keep(BatchResult result);
}
