package gloam.cli;

import picocli.CommandLine.Model.OptionSpec;

/** What every command has. */
final class StandardOptions extends OptionGroup {

    StandardOptions() {
        declare(spec -> spec
                .addOption(OptionSpec.builder("-h", "--help").usageHelp(true)
                        .description("Show this help message and exit.").build())
                .addOption(OptionSpec.builder("-V", "--version").versionHelp(true)
                        .description("Print version information and exit.").build()));
    }
}
