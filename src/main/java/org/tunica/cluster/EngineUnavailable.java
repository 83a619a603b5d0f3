package org.tunica.cluster;

/** The search engine cannot answer now: not reached, overloaded, half of it gone. Asking again later may help. */
public final class EngineUnavailable extends RuntimeException {
    EngineUnavailable(String message) {
        super(message);
    }

    EngineUnavailable(String message, Throwable cause) {
        super(message, cause);
    }
}
