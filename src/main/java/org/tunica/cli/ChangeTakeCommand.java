package org.tunica.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes the files of a change that was handed in. */
@Command(
        name = "take",
        description = "Write the files of a change as they were handed in into a new folder, to replay it, to build a"
                + " release from it, or to look.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ChangeTakeCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Parameters(index = "0", paramLabel = "NUMBER")
    private String number = "";

    @Parameters(index = "1", paramLabel = "DIR", description = "The folder to make.")
    private String folder = "";

    @Spec
    private CommandSpec spec;

    ChangeTakeCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Path root = Path.of(folder);
        if (Files.exists(root)) {
            throw fault("exists already and is left as it is");
        }
        try (OpenReleases open = OpenReleases.at(data)) {
            SortedMap<String, String> files = open.changes().files(number);
            write(root, files);
            spec.commandLine()
                    .getOut()
                    .println(files.size() + " files of change " + number + " are in " + folder + ".");
        } catch (IOException e) {
            throw fault("cannot be written: " + e.getMessage());
        }
        return 0;
    }

    private static void write(Path root, SortedMap<String, String> files) throws IOException {
        for (Map.Entry<String, String> text : files.entrySet()) {
            Path file = root.resolve(text.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, text.getValue());
        }
    }

    private FaultyInput fault(String says) {
        return new FaultyInput("output", List.of(new Fault(folder, says)));
    }
}
