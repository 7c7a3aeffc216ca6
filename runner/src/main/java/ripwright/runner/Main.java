package ripwright.runner;

/** Where the executable jar starts. */
public final class Main {
    private Main() {}

    /** Prints the version. */
    public static void main(String[] args) {
        System.out.println("ripwright " + version());
    }

    /** The version that the jar's manifest tells, or "development" outside of a jar. */
    static String version() {
        String told = Main.class.getPackage().getImplementationVersion();
        return told == null ? "development" : told;
    }
}
