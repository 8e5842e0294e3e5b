package gloam.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.tools.DocumentationTool;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The documentation builds without a warning. */
class JavadocTest {

    @TempDir
    private Path folder;

    /** All of doclint but its group {@code missing}: a comment here says only what the signature cannot. */
    @Tag("search")
    @Test
    void javadocHasNothingToComplainOf() throws Exception {
        DocumentationTool javadoc = ToolProvider.getSystemDocumentationTool();
        StringWriter complaints = new StringWriter();
        List<String> options = List.of("-quiet", "-package", "-Xdoclint:all,-missing", "-Xmaxwarns", "2000",
                "-locale",
                "en", "-encoding", "UTF-8", "-d", folder.toString(), "-sourcepath", "src/main/java",
                "-subpackages", "gloam", "-classpath", System.getProperty("java.class.path"));
        try (StandardJavaFileManager files =
                javadoc.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            javadoc.getTask(complaints, files, null, null, options, null).call();
        }
        assertEquals("", complaints.toString());
    }
}
