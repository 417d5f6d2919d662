package shaftwright.calc;

/**
 * What a menu command has to say.
 *
 * @param isDone whether it did what was asked
 * @param text for the builder
 */
record Answer(boolean isDone, String text) {
    static Answer done(String text) {
        return new Answer(true, text);
    }

    static Answer refused(String text) {
        return new Answer(false, text);
    }
}
