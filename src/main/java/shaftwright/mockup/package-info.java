/**
 * What a mock-up stick says of a planned shaft before steel is cut.
 *
 * <p>A stick is two tubes that slide in one another, or a fixed one, with pins in the place of the
 * retaining rings. At a few wheel heights it tells the race spacing at which both joints bottom and
 * the one at which they pull out, mm. Beside each stands what the joints' figures say; how they
 * differ corrects the length window on request. Geometry from {@code shaft}; the line through the
 * differences by least squares (any textbook).
 */
package shaftwright.mockup;
