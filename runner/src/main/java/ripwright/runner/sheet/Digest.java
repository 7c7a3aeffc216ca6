package ripwright.runner.sheet;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import ripwright.plan.Plan;

/** Digests of texts. */
final class Digest {
    private Digest() {}

    /** Tells a plan from every other one: the ticks of a sheet are kept under this name. */
    static String of(Plan plan) {
        return HexFormat.of().formatHex(sha256(plan.toString()));
    }

    static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
