/**
 * Tyres as far as they matter to a half shaft: diameter, width over the tyres, wheel speed.
 *
 * <p>Takes the size moulded on the sidewall or a diameter measured on the car; gives millimetres
 * and rpm. Metric sizes after ISO 4000-1, flotation sizes as stated, rolling circumference after
 * ETRTO practice (from memory).
 */
package shaftwright.tyre;
