package shaftwright.functions;

/** What a function does with its arguments, in the core's units. */
sealed interface Rule {
    /** Gives one number. */
    non-sealed interface OfNumber extends Rule {
        double number(Arguments arguments);
    }

    /** Gives a text. */
    non-sealed interface OfText extends Rule {
        String text(Arguments arguments);
    }

    /** Gives a block of numbers, row by row. */
    non-sealed interface OfBlock extends Rule {
        double[][] block(Arguments arguments);
    }
}
