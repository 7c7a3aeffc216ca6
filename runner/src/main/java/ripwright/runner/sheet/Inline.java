package ripwright.runner.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Objects;

/**
 * What stands in the page as it is, its style or its script, and the hash by which the page's security policy lets in this
 * and no other.
 *
 * @param text the style or the script
 */
record Inline(String text) {
    static Inline style() {
        return new Inline(resource("sheet.css"));
    }

    /** Marked as character data, behind comments of its own: a reader of XML finds no markup in it, a browser the script. */
    static Inline script() {
        return new Inline("// <![CDATA[\n" + resource("sheet.js") + "// ]]>\n");
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(Inline.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As Content Security Policy (W3C, level 2) names it. */
    String hash() {
        return "sha256-" + Base64.getEncoder().encodeToString(Digest.sha256(text));
    }
}
