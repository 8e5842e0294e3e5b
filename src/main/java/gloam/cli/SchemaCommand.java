package gloam.cli;

import gloam.view.Schema;

/** Prints the JSON Schema of all reports. */
final class SchemaCommand extends Command {

    SchemaCommand() {
        super("schema", "Print the JSON Schema of what --format json writes.", "gloam schema");
    }

    @Override
    public Integer call() {
        out().print(Schema.text());
        return App.DONE;
    }
}
