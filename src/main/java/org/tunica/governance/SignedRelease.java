package org.tunica.governance;

import java.nio.file.Path;
import java.util.List;
import org.tunica.knowledge.Bundle;

/** The files of a release and the signatures under it; nothing of it is verified yet. */
public record SignedRelease(ReleaseFiles files, Signatures signatures) {
    /**
     * The release in an archive.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of the archive
     */
    public static SignedRelease in(Path zip) {
        String signatures = Bundle.everyTextIn(zip).get(ReleaseFiles.SIGNATURES);
        return new SignedRelease(
                ReleaseFiles.in(zip),
                signatures == null ? new Signatures(List.of()) : Signatures.read(ReleaseFiles.SIGNATURES, signatures));
    }

    /** As an archive; the same release gives the same bytes. */
    public byte[] archive() {
        return files.archive(signatures.toJson());
    }
}
