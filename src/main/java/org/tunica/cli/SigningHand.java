package org.tunica.cli;

import org.tunica.signing.KeyFile;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;

/** A person at the machine who opens a key and signs. */
final class SigningHand {
    private SigningHand() {}

    /**
     * Signs what the release asks for.
     *
     * @return what was signed, and who signed so far
     * @throws org.tunica.casefile.FaultyInput when the key does not open, or the signature does not count
     */
    static String sign(OpenReleases open, String version, SigningRole role, String keyFile, Passphrase passphrase) {
        KeyFile file = KeyFile.read(keyFile, InputFile.read(keyFile));
        Statement statement = open.signing().statement(version, role, file.person(), file.keyId());
        SigningKey key = file.open(passphrase.read());
        return "Signed:\n" + statement.text().indent(2)
                + ReleaseText.signatures(open.signing().sign(key.sign(statement)));
    }
}
