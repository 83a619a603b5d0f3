package org.tunica.web;

/** Which addresses are pages for people; whoever asks for another one is a program, which wants no page. */
final class PagePaths {
    private PagePaths() {}

    static boolean holds(String path) {
        return path.equals("/")
                || path.equals("/cases")
                || path.startsWith("/cases/")
                || path.equals("/meeting")
                || path.startsWith("/meeting/")
                || path.equals("/governance")
                || path.startsWith("/governance/")
                || path.startsWith("/sign")
                || path.startsWith("/my-")
                || path.startsWith("/first-start/")
                || path.startsWith("/password/")
                || path.startsWith("/login/")
                || path.startsWith("/oauth2/");
    }
}
