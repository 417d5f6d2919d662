package shaftwright.strength;

/** Strength class of a bolt. ISO 898-1 and SAE J429, from memory. */
public enum BoltClass {
    ISO_8_8("class 8.8", Standard.ISO, 580),
    ISO_10_9("class 10.9", Standard.ISO, 830),
    ISO_12_9("class 12.9", Standard.ISO, 970),
    /** 85 ksi proof, 1/4 to 1 inch. */
    SAE_5("grade 5", Standard.SAE, 586),
    /** 120 ksi proof. */
    SAE_8("grade 8", Standard.SAE, 827);

    /** ISO class 8.8 is quenched to {@link #LARGE_8_8_PROOF} above this diameter, mm. */
    public static final int LARGE = 16;

    /** Proof stress of large bolts of ISO class 8.8, MPa. */
    public static final int LARGE_8_8_PROOF = 600;

    private final String words;
    private final Standard standard;
    private final int proof;

    BoltClass(String words, Standard standard, int proof) {
        this.words = words;
        this.standard = standard;
        this.proof = proof;
    }

    /** Whose threads its bolts have. */
    private enum Standard {
        ISO(BoltThread.ISO_PITCHES) {
            @Override
            BoltThread thread(double diameter, double pitch) {
                return BoltThread.metric(diameter, pitch);
            }
        },
        SAE(BoltThread.INCH_PITCHES) {
            @Override
            BoltThread thread(double diameter, double pitch) {
                return BoltThread.inch(
                        diameter / BoltThread.MM_PER_INCH, BoltThread.MM_PER_INCH / pitch);
            }
        };

        private final double pitches;

        Standard(double pitches) {
            this.pitches = pitches;
        }

        abstract BoltThread thread(double diameter, double pitch);
    }

    /** As builders write it: class 8.8, grade 5. */
    public String words() {
        return words;
    }

    /** Stress that leaves no set in bolts up to {@link #LARGE}, MPa. */
    public int proofStress() {
        return proof;
    }

    /**
     * Stress that leaves no set, MPa.
     *
     * @param diameter of the bolt, mm
     */
    public double proofStress(double diameter) {
        return this == ISO_8_8 && diameter > LARGE ? LARGE_8_8_PROOF : proof;
    }

    /** Pitches that the core of its stress area is smaller than the bolt. */
    public double pitches() {
        return standard.pitches;
    }

    /**
     * The thread of a bolt of this class.
     *
     * @param diameter nominal, mm
     * @param pitch mm
     * @throws IllegalArgumentException if the pitch leaves no core
     */
    public BoltThread thread(double diameter, double pitch) {
        return standard.thread(diameter, pitch);
    }
}
