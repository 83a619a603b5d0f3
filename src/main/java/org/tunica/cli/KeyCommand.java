package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.Advice;
import org.tunica.signing.KeyFile;
import org.tunica.signing.Purpose;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;
import org.tunica.signing.Withdrawal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keys with which people sign releases. */
@Command(
        name = "key",
        description = "Make a key to sign releases with, add its public half, end it, list them.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class KeyCommand {
    @Spec
    private CommandSpec spec;

    KeyCommand() {
        this.spec = CommandSpec.create();
    }

    @Command(
            name = "create",
            description = "Make a key of your own, sealed under a passphrase. Nobody else may ever have the file or the"
                    + " passphrase; without them the key is lost.",
            mixinStandardHelpOptions = true)
    int create(
            @Option(names = "--person", required = true, paramLabel = "NAME", description = "Your user name.")
                    String person,
            @Option(
                            names = "--key",
                            defaultValue = "k1",
                            paramLabel = "ID",
                            description = "Name of the key among yours (default: k1).")
                    String keyId,
            @Option(
                            names = "--to",
                            required = true,
                            paramLabel = "FILE.json",
                            description = "The key file; never written over.")
                    String to,
            @Mixin Passphrase passphrase) {
        OutputFile file = OutputFile.fresh(to).ownerOnly();
        SigningKey key = SigningKey.fresh(person, keyId);
        file.write(KeyFile.seal(key, passphrase.read()).toJson().getBytes(StandardCharsets.UTF_8));
        print("Key " + keyId + " of " + person + " is in " + to + ". Its public half: " + key.publicKey());
        return 0;
    }

    @Command(
            name = "sign",
            description =
                    "Sign at a machine of your own and print the signature, to hand it in to a server within minutes."
                            + " Take the digest from the page or the archive you looked at.",
            mixinStandardHelpOptions = true)
    int sign(
            @Option(names = "--key", required = true, paramLabel = "KEY.json", description = "Your key file.")
                    String file,
            @Option(names = "--release", required = true, paramLabel = "VERSION") String version,
            @Option(
                            names = "--as",
                            required = true,
                            paramLabel = "POST",
                            description = "clinical-lead or safety-officer for the release, reviewer for its replay.")
                    String post,
            @Option(
                            names = "--digest",
                            required = true,
                            paramLabel = "sha256:...",
                            description = "Of the manifest, or for a reviewer of the replay.")
                    String digest,
            @Mixin Passphrase passphrase) {
        KeyFile key = KeyFile.read(file, InputFile.read(file));
        SigningRole role = WordOption.of("--as", post, SigningRole.class);
        Purpose purpose = role == SigningRole.REVIEWER ? Purpose.ACKNOWLEDGE_REPLAY : Purpose.SIGN_OFF;
        Statement statement = statement(purpose, version, digest, key, role);
        spec.commandLine().getErr().println("Signed:\n" + statement.text().indent(2));
        print(key.open(passphrase.read()).sign(statement).tree().toString());
        return 0;
    }

    private static Statement statement(Purpose purpose, String version, String digest, KeyFile key, SigningRole role) {
        try {
            Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
            return new Statement(purpose, version, digest, key.person(), role, key.keyId(), now);
        } catch (IllegalArgumentException e) {
            throw new FaultyInput("input", List.of(new Fault("signature", e.getMessage())));
        }
    }

    @Command(
            name = "add",
            description =
                    "Let the public half of a key count here. As what it may sign follows from the posts its person"
                            + " holds now.",
            mixinStandardHelpOptions = true)
    int add(
            @Mixin DataPlace data,
            @Parameters(paramLabel = "KEY.json", description = "The key file; its private half stays in it.")
                    String file) {
        KeyFile key = KeyFile.read(file, InputFile.read(file));
        try (OpenReleases open = OpenReleases.at(data)) {
            open.keys().add(open.by(), key.person(), key.keyId(), key.publicKey());
            print(KeyText.one(open.records().keys(), key.person(), key.keyId()));
        }
        return 0;
    }

    @Command(
            name = "withdraw",
            description = "End a key. What it signed before stays valid, unless it is compromised.",
            mixinStandardHelpOptions = true)
    int withdraw(
            @Mixin DataPlace data,
            @Option(names = "--person", required = true, paramLabel = "NAME", description = "Its person.")
                    String person,
            @Option(names = "--key", required = true, paramLabel = "ID", description = "Its name.") String keyId,
            @Option(
                            names = "--because",
                            required = true,
                            paramLabel = "WORD",
                            description = "no-longer-used, lost or compromised.")
                    String because) {
        Withdrawal.Reason reason = WordOption.of("--because", because, Withdrawal.Reason.class);
        try (OpenReleases open = OpenReleases.at(data)) {
            open.keys().withdraw(open.by(), person, keyId, reason);
            print(KeyText.one(open.records().keys(), person, keyId));
        }
        return 0;
    }

    @Command(
            name = "list",
            description = "Show every key that counts or counted here.",
            mixinStandardHelpOptions = true)
    int list(
            @Mixin DataPlace data,
            @Option(
                            names = "--json",
                            description = "As a file of public keys (tunica-keys/1), with which release verify works"
                                    + " elsewhere.")
                    boolean json) {
        try (OpenReleases open = OpenReleases.at(data)) {
            print(
                    json
                            ? open.records().keys().toJson().stripTrailing()
                            : KeyText.all(open.records().keys()));
        }
        return 0;
    }

    private void print(String line) {
        spec.commandLine().getOut().println(line);
    }
}
