package ripwright.replay;

/**
 * One thing in a plan that does not hold.
 *
 * @param piece the id of the piece it is about, or the name of a part or group; {@code plan} when it is about the whole
 * @param what what was found, what was due and why: one sentence
 * @param rule where the contract says so: the number of its section and the paragraph, as in {@code 3.strips}
 */
public record Fault(String piece, String what, String rule) {
    /** As one line: {@code ash-2/1: strip S7 starts at 4 1/2 in; ... 4 5/8 in is due. [3.strips]}. */
    public String message() {
        return piece + ": " + what + " [" + rule + "]";
    }

    @Override
    public String toString() {
        return message();
    }
}
