package org.tunica.cli;

import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.tunica.Contract;
import org.tunica.Tunica;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Prints the JSON Schema of a contract. */
@Command(
        name = "schema",
        description = "Print the JSON Schema (2020-12) of what goes in and out.",
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    /** Reads the name of a contract as it stands in the help. */
    static final class ContractName implements ITypeConverter<Contract> {
        @Override
        public Contract convert(String name) {
            return Contract.named(name)
                    .orElseThrow(
                            () -> new TypeConversionException("must be one of " + names() + ", is \"" + name + "\""));
        }

        private static String names() {
            return Arrays.stream(Contract.values()).map(Contract::word).collect(Collectors.joining(", "));
        }
    }

    @Parameters(
            paramLabel = "CONTRACT",
            description = "One of: ${COMPLETION-CANDIDATES}.",
            converter = ContractName.class)
    private Contract contract = Contract.CASE;

    @Spec
    private CommandSpec spec;

    SchemaCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(Tunica.shipped().schema(contract));
        return 0;
    }
}
