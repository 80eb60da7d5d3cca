package counterpull.engine;

/**
 * A refusal of the engine: what was asked lies outside what can be computed. Carries the stable code, the value, its
 * unit and the limit (all SI) so that a view can say it again in a person's own units; the message is a plain sentence.
 */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Fault fault;
    private final String quantity;
    private final double value;
    private final double limit;
    private final String unit;

    /**
     * @param fault what kind of refusal
     * @param quantity what is refused, in words ("knee flexion at the bottom")
     * @param value the refused value, SI
     * @param limit the limit it passes, SI; NaN where there is none
     * @param unit SI unit of both ("m", "rad", "N"); empty for a pure number
     * @param sentence what is wrong and what to do, ending without a full stop
     */
    public Refusal(Fault fault, String quantity, double value, double limit, String unit, String sentence) {
        super(sentence);
        this.fault = fault;
        this.quantity = quantity;
        this.value = value;
        this.limit = limit;
        this.unit = unit;
    }

    /** The same refusal, saying of which of several things it is; itself where that is said already. */
    public Refusal of(String thing) {
        boolean said = getMessage().contains(thing) || quantity.contains(thing);
        if (said) {
            return this;
        }
        String named = fault == Fault.OUTSIDE_LIMITS ? thing + ": " + quantity : quantity;
        return new Refusal(fault, named, value, limit, unit, thing + ": " + getMessage());
    }

    /** The kind of refusal. */
    public Fault fault() {
        return fault;
    }

    /** What is refused, in words. */
    public String quantity() {
        return quantity;
    }

    /** The refused value, SI. */
    public double value() {
        return value;
    }

    /** The limit it passes, SI; NaN where there is none. */
    public double limit() {
        return limit;
    }

    /** SI unit of value and limit. */
    public String unit() {
        return unit;
    }
}
