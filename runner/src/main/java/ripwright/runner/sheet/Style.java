package ripwright.runner.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Objects;

/**
 * The sheet's style, and the hash by which the page's security policy lets in this style and no other.
 *
 * @param text the style
 */
record Style(String text) {
    static Style ofSheet() {
        try (InputStream in = Objects.requireNonNull(Style.class.getResourceAsStream("sheet.css"), "sheet.css")) {
            return new Style(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As Content Security Policy (W3C, level 2) names it. */
    String hash() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
