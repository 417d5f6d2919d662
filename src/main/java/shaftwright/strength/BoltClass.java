package shaftwright.strength;

/** Strength class of a bolt. ISO 898-1 and SAE J429, from memory. */
public enum BoltClass {
    ISO_8_8("8.8", 580, 800),
    ISO_10_9("10.9", 830, 1040),
    ISO_12_9("12.9", 970, 1220),
    /** 85 ksi proof, 120 ksi tensile, 1/4 to 1 inch. */
    SAE_5("grade 5", 586, 827),
    /** 120 ksi proof, 150 ksi tensile. */
    SAE_8("grade 8", 827, 1034);

    /** ISO class 8.8 is quenched to other figures above this diameter, mm. */
    private static final double LARGE = 16;

    private static final double LARGE_8_8_PROOF = 600;

    private final String mark;
    private final double proof;
    private final double tensile;

    BoltClass(String mark, double proof, double tensile) {
        this.mark = mark;
        this.proof = proof;
        this.tensile = tensile;
    }

    /** As builders write it. */
    public String mark() {
        return mark;
    }

    /**
     * Stress that leaves no set, MPa.
     *
     * @param diameter of the bolt, mm
     */
    public double proofStress(double diameter) {
        return this == ISO_8_8 && diameter > LARGE ? LARGE_8_8_PROOF : proof;
    }

    /** Least tensile strength, MPa. */
    public double tensileStrength() {
        return tensile;
    }
}
