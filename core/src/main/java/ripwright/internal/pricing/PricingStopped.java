package ripwright.internal.pricing;

/** Says that a pricing was broken off, as it was told to be; what it had reckoned by then is of no use. */
public final class PricingStopped extends RuntimeException {
    private static final long serialVersionUID = 1;

    public PricingStopped() {
        super("The pricing was broken off.", null, false, false);
    }
}
