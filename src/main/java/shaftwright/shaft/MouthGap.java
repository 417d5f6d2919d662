package shaftwright.shaft;

/** The least gap of the shaft to a cup's bore or lip, mm, and which cup's it is. */
public record MouthGap(Binding gap, ShaftEnd end) {}
